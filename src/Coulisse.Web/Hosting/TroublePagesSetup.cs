namespace Coulisse.Web.Hosting;

/// <summary>Puts the pages of trouble into the server.</summary>
internal static class TroublePagesSetup
{
    /// <summary>Goes before the framework's own writer, which takes everything.</summary>
    public static void AddTroublePages(this IServiceCollection services) => services.AddSingleton<IProblemDetailsWriter, TroublePages>();

    /// <summary>Answers without a word (an unknown address) become pages, too.</summary>
    public static void UseTroublePages(this WebApplication app) => app.UseStatusCodePages(trouble =>
        TroublePages.AsksForAPage(trouble.HttpContext.Request) ? TroublePages.WriteAsync(trouble.HttpContext, null) : Task.CompletedTask);
}
