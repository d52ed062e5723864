using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using System.Text.Json;

namespace Coulisse.Views.Papers;

/// <summary>Fixed phrases of a brief in one language, one file a language. Only English was written by a person who speaks it; the others say so.</summary>
public sealed class BriefPhrases
{
    private static readonly ImmutableSortedDictionary<string, BriefPhrases> All = Read();

    private static readonly ImmutableArray<(string Word, string Code)> Names = [("english", "en"), ("french", "fr"), ("german", "de"), ("spanish", "es"), ("italian", "it"), ("polish", "pl"), ("japanese", "ja")];

    private readonly ImmutableDictionary<string, string> _words;

    private BriefPhrases(string language, ImmutableDictionary<string, string> words) => (Language, _words) = (language, words);

    /// <summary>Language (BCP 47).</summary>
    public string Language { get; }

    /// <summary>A phrase by its name.</summary>
    /// <exception cref="KeyNotFoundException">No file has it: a fault of ours.</exception>
    public string this[string name] => _words[name];

    /// <summary>True when no speaker has read the phrases.</summary>
    public bool MachineMade => _words["marked"].Length > 0;

    /// <summary>Culture of days.</summary>
    public CultureInfo Culture => CultureInfo.GetCultureInfo(Language == "en" ? "en-GB" : Language);

    /// <summary>Names of all phrases.</summary>
    public IEnumerable<string> Keys => _words.Keys.Order(StringComparer.Ordinal);

    /// <summary>Languages held.</summary>
    public static IEnumerable<string> Languages => All.Keys;

    /// <summary>A phrase with what stands in its places.</summary>
    public string Say(string name, params object[] places) => string.Format(CultureInfo.InvariantCulture, _words[name], places);

    /// <summary>Phrases for a language by code or English name; English for others.</summary>
    public static BriefPhrases For(string language) => Held(language) ?? All["en"];

    /// <summary>Phrases for the first of a person's languages that is held; English when none is.</summary>
    /// <param name="languages">Languages, the preferred first.</param>
    public static BriefPhrases For(IEnumerable<string> languages) => languages.Select(Held).FirstOrDefault(p => p is not null) ?? All["en"];

    /// <summary>Phrases for a language; null when none are held.</summary>
    public static BriefPhrases? Held(string language)
    {
        ArgumentNullException.ThrowIfNull(language);
        return All.GetValueOrDefault(CodeOf(language));
    }

    /// <summary>Code of a language named by code or by its English name ("Polish": "pl"); other names as they are, in small letters.</summary>
    public static string CodeOf(string language)
    {
        ArgumentNullException.ThrowIfNull(language);
        string folded = language.Trim().ToLowerInvariant();
        return Names.FirstOrDefault(n => n.Word == folded).Code ?? folded.Split('-')[0];
    }

    private static ImmutableSortedDictionary<string, BriefPhrases> Read()
    {
        Assembly here = typeof(BriefPhrases).Assembly;
        return here.GetManifestResourceNames().Where(n => n.StartsWith("words/brief-", StringComparison.Ordinal)).Select(n =>
        {
            using Stream stream = here.GetManifestResourceStream(n)!;
            string language = n["words/brief-".Length..^".json".Length];
            return new BriefPhrases(language, JsonSerializer.Deserialize<ImmutableDictionary<string, string>>(stream)!);
        }).ToImmutableSortedDictionary(p => p.Language, p => p, StringComparer.Ordinal);
    }
}
