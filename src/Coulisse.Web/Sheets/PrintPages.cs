using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Coulisse.Web.Hosting;

namespace Coulisse.Web.Sheets;

/// <summary>Serves print pages: they carry their own style inside, so the policy names the hash of each, and nothing else gets through.</summary>
internal static partial class PrintPages
{
    /// <summary>The document as an answer.</summary>
    /// <param name="context">Request.</param>
    /// <param name="html">Print pages.</param>
    /// <param name="back">Where the link above them leads.</param>
    /// <param name="word">What that link says.</param>
    public static IResult Serve(HttpContext context, string html, string back, string word = "Back to the papers")
    {
        IEnumerable<string> inside = Sheet().Matches(html).Select(m => m.Groups["css"].Value).Concat(Attribute().Matches(html).Select(m => WebUtility.HtmlDecode(m.Groups["css"].Value)));
        string hashes = string.Join(' ', inside.Distinct(StringComparer.Ordinal).Select(s => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(s)))}'"));
        context.Response.Headers.ContentSecurityPolicy = $"default-src 'self'; style-src 'self' 'unsafe-hashes' {hashes}; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";
        string head = $"<link rel=\"icon\" href=\"{EmbeddedFiles.Of.At("mark.svg")}\" type=\"image/svg+xml\">\n<link rel=\"stylesheet\" href=\"{EmbeddedFiles.Of.At("css/print.css")}\">\n<script type=\"module\" src=\"{EmbeddedFiles.Of.At("js/print.js")}\"></script>\n<style>";
        string bar = $"<body>\n<nav class=\"print-bar\"><button type=\"button\" data-print>Print</button> <a href=\"{WebUtility.HtmlEncode(back)}\">{word}</a></nav>";
        return Results.Content(First(First(html, "<style>", head), "<body>", bar), "text/html; charset=utf-8");
    }

    private static string First(string text, string what, string by)
    {
        int at = text.IndexOf(what, StringComparison.Ordinal);
        return at < 0 ? text : text[..at] + by + text[(at + what.Length)..];
    }

    [GeneratedRegex("<style>(?<css>[^<]*)</style>", RegexOptions.ExplicitCapture)]
    private static partial Regex Sheet();

    // text is encoded, so a quoted style can only be one of the writer's own
    [GeneratedRegex(" style=\"(?<css>[^\"]*)\"", RegexOptions.ExplicitCapture)]
    private static partial Regex Attribute();
}
