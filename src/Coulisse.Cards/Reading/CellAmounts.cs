using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Flour, strong white | 12.5 | kg", "| kg | 3 | Kartoffeln |": a row of a table that stands alone, its figure and its unit in cells of their own. Said as a line says it: "12.5 kg Flour, strong white". A row whose figure has its unit beside it stays as it is.</summary>
internal static class CellAmounts
{
    private const int Most = 8;

    /// <summary>The row as a line; the line itself where it is no such row.</summary>
    public static string Line(string s, string lang)
    {
        if (!s.Contains('|') || s.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) is not { Length: > 2 and <= Most } cells)
        {
            return s;
        }

        int figure = Array.FindIndex(cells, c => char.IsAsciiDigit(c[0]) && Numbers.Range(c, 0, lang) is { } n && n.End == c.Length);
        int unit = Array.FindIndex(cells, c => Lexicon.LongestUnit(c, 0, lang, out int end) is { Kind: not "length" } && end == c.Length);
        if (figure < 0 || Math.Abs(unit - figure) != 1 || unit < 0 || Array.Exists(cells, c => c != cells[figure] && char.IsAsciiDigit(c[0])))
        {
            return s;
        }

        string[] names = [.. cells.Where((_, i) => i != figure && i != unit)];
        return names.Length > 0 && char.IsLetter(names[0][0]) ? $"{cells[figure]} {cells[unit]} {string.Join(", ", names)}" : s;
    }
}
