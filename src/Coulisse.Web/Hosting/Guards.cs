using System.Net;

namespace Coulisse.Web.Hosting;

/// <summary>What every answer carries and what no request may do: nothing is loaded from elsewhere, nothing is posted from elsewhere.</summary>
internal static class Guards
{
    // a picture may come from what the page itself drew (blob:), so that a drawing can be saved as PNG; scripts and all else only from here
    private const string Policy = "default-src 'self'; img-src 'self' blob:; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    public static void UseGuards(this WebApplication app, bool secure) => app.Use(async (context, next) =>
    {
        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        if (context.Request.IsHttps || IPAddress.TryParse(context.Request.Host.Host.Trim('[', ']'), out IPAddress? address) && IPAddress.IsLoopback(address) || context.Request.Host.Host == "localhost")
        {
            // a browser complains of it where the page is not a secure context
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
        }

        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=(), payment=(), usb=()";
        headers.XFrameOptions = "DENY";
        if (secure)
        {
            headers.StrictTransportSecurity = "max-age=31536000";
        }

        if (!HttpMethods.IsGet(context.Request.Method) && !HttpMethods.IsHead(context.Request.Method) && ComesFromElsewhere(context.Request))
        {
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
            await context.Response.WriteAsync("This was sent from another site and was not done.");
            return;
        }

        await next(context);
    });

    /// <summary>A browser names the page's origin on every post; one that is not ours is refused. No origin at all is a script on the kitchen's own machine.</summary>
    private static bool ComesFromElsewhere(HttpRequest request)
    {
        string origin = request.Headers.Origin.ToString();
        return request.Headers["Sec-Fetch-Site"].ToString() is "cross-site" or "same-site"
            || (origin.Length > 0 && !(Uri.TryCreate(origin, UriKind.Absolute, out Uri? from) && from.Authority.Equals(request.Host.Value, StringComparison.OrdinalIgnoreCase)));
    }
}
