using System.Text.Json;
using System.Text.RegularExpressions;
using Coulisse.Views.Papers;
using Coulisse.Web;

namespace Coulisse.Web.Tests;

/// <summary>The phrases of the live page, one file a language.</summary>
internal static partial class Words
{
    public static string Of(string language)
    {
        using Stream file = typeof(WebBench).Assembly.GetManifestResourceStream($"wwwroot/words/live-{language}.json") ?? throw new FileNotFoundException(language);
        using StreamReader reader = new(file);
        return reader.ReadToEnd();
    }

    public static Dictionary<string, string> Read(string language) => JsonSerializer.Deserialize<Dictionary<string, string>>(Of(language))!;

    public static string[] Holes(string phrase) => [.. Hole().Matches(phrase).Select(m => m.Value).Order()];

    public static IEnumerable<string> Languages => BriefPhrases.Languages;

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Hole();
}
