using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A whole list on one line, some of its foods told by a measure without a figure: "2 shallots, glass of white wine, 250 g butter (diced), pinch of salt". Read as one line, the wine would be what is done to the shallots. "finely chopped" stays with its food.</summary>
internal static class ListLine
{
    private const int Longest = 400;
    private static readonly string[] Leads = ["a few ", "few ", "half an ", "half a ", "a ", "an ", "une ", "un ", "una ", "eine ", "ein "];
    private static readonly string[] Ofs = ["of the ", "of ", "de ", "d'", "di ", "del ", "della "];

    /// <summary>Adds the foods; false for any other line.</summary>
    public static bool Cut(RawLine raw, string lang, List<Piece> into)
    {
        ReadOnlySpan<char> typed = raw.Text;
        // Nearly no line is such a list: nothing is made of the others.
        if (typed.Length is < 20 or > Longest || typed.Count(',') < 2 || typed[..6].IndexOfAnyInRange('0', '9') < 0)
        {
            return false;
        }

        string s = Marks.Strip(Folding.Line(raw.Text));
        if (lang == "ja" || s.Length is < 20 or > Longest || s.Count(c => c == ',') < 2 || Amounts.At(s, 0, lang) is null || s.Contains(". ", StringComparison.Ordinal) || Looks.Timed(s, lang))
        {
            return false;
        }

        List<string> foods = [];
        int weighed = 0;
        int measured = 0;
        foreach (string piece in Pieces(s))
        {
            bool front = Amounts.At(piece, 0, lang) is { } m && Places.Skip(piece, m.End) is var at && at < piece.Length && char.IsLetter(piece[at]) && !ManyAmounts.Said(piece[PartReader.Of(piece, at, lang)..], lang) && (!FoodWords.IsPreparation(piece[at..], lang) || Ends(piece, lang));
            bool told = !front && Measured(piece, lang);
            weighed += front ? 1 : 0;
            measured += told ? 1 : 0;
            if (foods.Count == 0 || front || told || Known(piece, lang))
            {
                foods.Add(piece);
            }
            else
            {
                foods[^1] += ", " + piece;
            }
        }

        if (weighed < 2 || measured == 0)
        {
            return false;
        }

        into.AddRange(foods.Select(f => new Piece(PieceKind.Item, f, raw.Span)));
        return true;
    }

    /// <summary>The pieces between commas outside brackets; the comma of "1,5 kg" parts nothing.</summary>
    internal static IEnumerable<string> Pieces(string s)
    {
        int depth = 0;
        int start = 0;
        for (int i = 0; i < s.Length; i++)
        {
            depth += s[i] == '(' ? 1 : s[i] == ')' && depth > 0 ? -1 : 0;
            if (s[i] == ',' && depth == 0 && i + 1 < s.Length && s[i + 1] == ' ')
            {
                if (s[start..i].Trim() is { Length: > 0 } piece)
                {
                    yield return piece;
                }

                start = i + 1;
            }
        }

        if (s[start..].Trim() is { Length: > 0 } last)
        {
            yield return last;
        }
    }

    /// <summary>"glass of white wine", "pinch salt", "few drops lemon", "half an egg": a measure without a figure, and a food everybody knows.</summary>
    private static bool Measured(string piece, string lang)
    {
        string? lead = Array.Find(Leads, l => piece.StartsWith(l, StringComparison.OrdinalIgnoreCase));
        string rest = lead is null ? piece : piece[lead.Length..];
        if (lead?.StartsWith("half", StringComparison.OrdinalIgnoreCase) == true && FoodIds.Match(rest, lang) is not null)
        {
            return true;
        }

        if (Lexicon.LongestUnit(rest, 0, lang, out int end) is null || end >= rest.Length || rest[end] != ' ')
        {
            return false;
        }

        string food = rest[(end + 1)..];
        string? of = Array.Find(Ofs, o => food.StartsWith(o, StringComparison.OrdinalIgnoreCase));
        return FoodIds.Match(of is null ? food : food[of.Length..], lang) is not null;
    }

    /// <summary>"200 g cold butter (diced)": words of preparation, and a food behind them.</summary>
    private static bool Ends(string piece, string lang)
    {
        string words = piece.IndexOf('(') is > 0 and var open ? piece[..open].TrimEnd() : piece;
        return FoodIds.Match(words[(words.LastIndexOf(' ') + 1)..], lang) is not null;
    }

    private static bool Known(string piece, string lang) =>
        piece.Length < 40 && !FoodWords.IsPreparation(piece, lang) && Array.TrueForAll(piece.Replace(" & ", ", ", StringComparison.Ordinal).Replace(Conjunction.Spaced(lang), ", ", StringComparison.OrdinalIgnoreCase).Split(", "), f => FoodIds.Match(f, lang) is not null);
}
