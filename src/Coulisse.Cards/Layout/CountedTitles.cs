using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"焼き餃子 40個", "食パン 2斤", "Gyoza 40 pieces" over a card: the name of the dish and how many it makes, which looks like the first line of its list. A food everybody knows stays one.</summary>
internal static class CountedTitles
{
    private const int Longest = 40;
    private static readonly string[] Counters = ["個", "枚", "本", "斤", "台", "切れ", "皿", "丁", "玉", "串", "杯", "組"];

    // "鶏もも肉 2枚", "鯛の切り身 4切れ": what is bought, whatever stands under it.
    private static readonly string[] Foods = ["肉", "魚", "卵", "菜", "切り身", "豆", "芋", "いも", "きのこ", "貝", "ねぎ", "骨", "皮", "豆腐", "のり"];

    /// <summary>The yield such a title tells; null for any other.</summary>
    public static CardYield? Yield(string title, Span span, string lang) => Parted(title, lang) is { } told ? new CardYield(told.Count, told.Unit, title, span) : null;

    /// <summary>True for the first line of a card where it stands alone or right over the head of its list.</summary>
    public static bool Is(List<RawLine> lines, int i, string body, string lang) =>
        i == 0 && lines.Count > 2 && Parted(body, lang) is { } told && (lines[1].Block != lines[0].Block || Sections.Of(Folding.Line(lines[1].Text).TrimmedEnd(": "), lang) is "ingredients") && FoodIds.Match(told.Name, lang) is null;

    /// <summary>True for a line that may as well be the first of a list: no blank line under it, or a food everybody knows.</summary>
    public static bool Listed(string s, string lang, bool alone) => Parted(s, lang) is { } told && (!alone || FoodIds.Match(told.Name, lang) is not null);

    private static (string Name, double Count, string Unit)? Parted(string s, string lang)
    {
        int gap = s.IndexOf(' ');
        if (s.Length is < 4 or > Longest || gap < 1 || !char.IsLetter(s[0]))
        {
            return null;
        }

        int figure = s.AsSpan().IndexOfAnyInRange('0', '9');
        if (figure < 2 || s[figure - 1] != ' ' || Numbers.Range(s, figure, lang) is not { InWords: false, Max: null, Min: > 1 } n)
        {
            return null;
        }

        string noun = s[Places.Skip(s, n.End)..];
        string name = s[..figure].TrimEnd();
        if (lang == "ja" && Array.Exists(Foods, f => name.EndsWith(f, StringComparison.Ordinal)))
        {
            return null;
        }

        return lang == "ja" ? Array.IndexOf(Counters, noun) >= 0 ? (name, n.Min, noun) : null
            : YieldWords.PiecesOf(s[figure..], lang) is not null ? (name, n.Min, "pieces") : null;
    }
}
