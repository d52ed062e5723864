using Coulisse.Web.Pages;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Coulisse.Web.Hosting;

/// <summary>A person whose browser asks for a page is told a refusal as a page in words; a program gets the problem as JSON, as ever.</summary>
internal sealed class TroublePages : IProblemDetailsWriter
{
    public bool CanWrite(ProblemDetailsContext context) => AsksForAPage(context.HttpContext.Request);

    public async ValueTask WriteAsync(ProblemDetailsContext context) => await WriteAsync(context.HttpContext, context.ProblemDetails.Detail);

    /// <summary>Writes the page for the status that is set.</summary>
    public static Task WriteAsync(HttpContext context, string? detail)
    {
        int status = context.Response.StatusCode;
        return new RazorComponentResult<TroublePage>(new { Title = Title(status), Says = detail ?? Says(status) }) { StatusCode = status }.ExecuteAsync(context);
    }

    // a script's own fetch takes anything (*/*); only a browser that goes to a page names this type
    public static bool AsksForAPage(HttpRequest request) => request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase);

    private static string Title(int status) => status switch
    {
        StatusCodes.Status404NotFound => "Nothing is here",
        StatusCodes.Status401Unauthorized or StatusCodes.Status403Forbidden => "Not open to you",
        >= 500 => "Something went wrong",
        _ => "That was not done",
    };

    private static string Says(int status) => status switch
    {
        StatusCodes.Status404NotFound => "There is no page at this address. It may have been cut short when it was copied, or belong to another kitchen.",
        StatusCodes.Status401Unauthorized or StatusCodes.Status403Forbidden => "Your role does not open this page. Ask whoever owns the bench.",
        StatusCodes.Status413PayloadTooLarge => "That is more than the bench takes at once; nothing was kept.",
        StatusCodes.Status429TooManyRequests => "That was asked too often in a short time. Wait a minute, then try again.",
        >= 500 => "The fault is the bench's, not yours. Go back and try again; if it comes back, start the bench again: what was kept is there.",
        _ => "The bench could not make anything of it. Go back and try again.",
    };
}
