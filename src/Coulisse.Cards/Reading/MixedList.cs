using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Salt, pepper, 2 bay leaves, thyme", "2 feuilles de laurier, thym, sel": foods in one line, some counted and some not. Only where the table knows every one of them: "1 lemon, zest, juice" is one.</summary>
internal static class MixedList
{
    private const int Longest = 100;
    private const int Fewest = 3;
    private const int Most = 8;

    /// <summary>Two foods everybody knows between the first commas: such a line is a list, though its first word is a verb as well.</summary>
    public static bool Opens(string s, string lang) =>
        s.IndexOf(',') is > 2 and < 20 and var comma && s.IndexOf(',', comma + 1) is > 0 and var next && next - comma < 20 && FoodIds.Match(s[..comma], lang) is not null && FoodIds.Match(s[(comma + 1)..next].Trim(), lang) is not null;

    /// <summary>The foods with their amounts; null when the line is no such list.</summary>
    public static List<string>? Of(string s, string lang)
    {
        if (s.Length > Longest || lang == "ja" || s.IndexOf(',') < 2 || s.AsSpan().Count(", ") < Fewest - 1 || s.AsSpan().IndexOfAnyInRange('0', '9') < 0 || s.AsSpan().IndexOfAny("(:;/") >= 0)
        {
            return null;
        }

        string[] pieces = s.Replace(Conjunction.Spaced(lang), ", ", StringComparison.OrdinalIgnoreCase).Split(", ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        int told = 0;
        foreach (string piece in pieces)
        {
            Measure? amount = Amounts.At(piece, 0, lang);
            int from = amount is { } m ? PartReader.Of(piece, Places.Skip(piece, m.End), lang) : 0;
            told += amount is null ? 0 : 1;
            if (from >= piece.Length || Lexicon.Longest("part", piece, from, 3, lang, out _) is not null || FoodWords.IsPreparation(piece[from..], lang) || FoodIds.Match(piece[from..], lang) is not { Confidence: >= 0.95 })
            {
                return null;
            }
        }

        return pieces.Length is >= Fewest and <= Most && told > 0 && pieces.Length - told > 1 ? [.. pieces] : null;
    }
}
