namespace Coulisse.Web;

/// <summary>Starts the bench in a browser.</summary>
public static class Program
{
    /// <summary>Entry point when the web project is started by itself.</summary>
    public static void Main(string[] args)
    {
        WebApplicationBuilder builder = WebApplication.CreateBuilder(args);
        WebApplication app = builder.Build();
        app.MapGet("/healthz", () => "ok");
        app.Run();
    }
}
