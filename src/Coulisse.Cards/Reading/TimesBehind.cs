using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"100 g salmon fillet x 6", "cod 140-160g portions x 10": how many stands behind what one weighs. Said in the order in which it is read elsewhere: "6 x 100 g salmon fillet". "tin coconut milk x2" is two tins. "eggs x 6" and "2 x 400 g tins" stay as they are.</summary>
internal static class TimesBehind
{
    private const int Longest = 90;
    private static readonly WordList Pieces = new("portion", "portions", "piece", "pieces", "pcs", "fillet", "fillets", "steak", "steaks", "pavé", "pavés", "filet", "filets", "Stück", "Portionen", "piezas", "raciones", "lomos", "pezzi", "porzioni", "tranci", "filetti");

    /// <summary>The line with its count in front; the line itself when no count closes it.</summary>
    public static string Front(string s, string lang)
    {
        string t = s.Length is < 8 or > Longest || lang == "ja" ? "" : s.TrimmedEnd(" .,");
        int digits = t.Length;
        while (digits > 0 && char.IsAsciiDigit(t[digits - 1]))
        {
            digits--;
        }

        if (digits == t.Length || t.Length - digits > 3 || t[digits] == '0')
        {
            return s;
        }

        int sign = digits - 1;
        while (sign > 0 && t[sign] == ' ')
        {
            sign--;
        }

        if (sign < 5 || t[sign] is not ('x' or 'X' or '×') || t[sign - 1] != ' ')
        {
            return s;
        }

        string front = t[..sign].TrimEnd();
        string count = t[digits..];
        // "250 g flour, sifted x2": what is done twice
        if (front.Contains(',') || front.Contains('×') || front.Contains(" x ", StringComparison.OrdinalIgnoreCase) || front.Contains('('))
        {
            return s;
        }

        if (char.IsAsciiDigit(front[0]))
        {
            return Amounts.At(front, 0, lang) is { Unit.Kind: "mass" or "volume", Number.InWords: false } m && Places.Skip(front, m.End) is var food && food < front.Length && char.IsLetter(front[food]) ? $"{count} x {front}" : s;
        }

        int figure = front.AsSpan().IndexOfAnyInRange('0', '9');
        if (figure < 0 && Lexicon.LongestUnit(front, 0, lang, out int pack) is { Kind: "container" or "count" or "word", Unit: not "piece" } && pack + 2 < front.Length && front[pack] == ' ' && FoodIds.Match(front[PartReader.Of(front, Places.Skip(front, pack), lang)..], lang) is not null)
        {
            // "tin coconut milk x2": what it is sold in stands first
            return $"{count} {front}";
        }

        if (figure < 3 || front[figure - 1] != ' ' || Amounts.At(front, figure, lang) is not { Unit.Kind: "mass", Number.InWords: false } each)
        {
            return s;
        }

        // With nothing between the weight and the sign the line is read where amounts stand behind their food.
        string noun = front[each.End..].Trim();
        return Pieces.In(noun) && noun.IndexOf(' ') < 0 ? $"{count} x {front[figure..each.End].Trim()} {front[..figure].TrimmedEnd(" ,:-–")} {noun}" : s;
    }
}
