using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"Dark choc 500" over "Cream 500": on a sheet of names with a figure alone behind each, the first is a food as the others are, and no name over them. "Menu 2" over "Cream 500" stays one.</summary>
internal static class FigureSheets
{
    /// <summary>A part's number has one digit or two.</summary>
    private const int FewestDigits = 3;

    /// <summary>True for a line of such a sheet.</summary>
    public static bool Line(List<RawLine> lines, int i, string body, string lang) =>
        Figured(body, lang) && (Kin(lines, i, i + 1, lang) || Kin(lines, i, i - 1, lang));

    private static bool Kin(List<RawLine> lines, int i, int k, string lang) =>
        k >= 0 && k < lines.Count && lines[k].Block == lines[i].Block && Folding.Line(lines[k].Text) is { Length: > 3 } other && Figured(other, lang) && Looks.Amounted(other, lang);

    /// <summary>Words, and behind them a figure alone of three digits or more.</summary>
    private static bool Figured(string s, string lang)
    {
        int space = s.Length < 50 ? s.LastIndexOf(' ') : -1;
        return space > 2 && s.Length - space > FewestDigits && char.IsLetter(s[0]) && s.AsSpan(space + 1).IndexOfAnyExceptInRange('0', '9') < 0 && s.AsSpan(0, space).IndexOfAnyInRange('0', '9') < 0 && s.AsSpan(0, space).IndexOfAny(",:") < 0
            && BackAmount.Count(s, lang, new Draft(why: false)) is not null;
    }
}
