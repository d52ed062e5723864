using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Layout;

/// <summary>"6  Hold above 63 °C" under "5  Bake …": a number without a stop that goes on from the step right over it is the number of a step, and counts nothing.</summary>
internal static class Numbering
{
    /// <summary>True for the line of the next number.</summary>
    public static bool GoesOn(List<RawLine> lines, int i, string lang) =>
        i > 0 && Of(lines[i].Text) is > 1 and var number && Of(lines[i - 1].Text) == number - 1 && (lines[i - 1].Block == lines[i].Block || !Food(lines[i].Text, lang));

    /// <summary>"5 Eggs, beaten" behind a blank line may open another list.</summary>
    private static bool Food(string s, string lang)
    {
        string name = Words.Places.TrimmedStart(s, "0123456789 ");
        return FoodIds.Match(name.IndexOf(',') is > 0 and var comma ? name[..comma] : name, lang) is not null;
    }

    private static int Of(string s)
    {
        int i = 0;
        while (i < s.Length && i < 2 && char.IsAsciiDigit(s[i]))
        {
            i++;
        }

        return i > 0 && i + 2 < s.Length && s[i] == ' ' && s.AsSpan(i).TrimStart() is { Length: > 2 } rest && (char.IsUpper(rest[0]) || Words.Places.IsJapanese(rest[0])) ? int.Parse(s.AsSpan(0, i), System.Globalization.CultureInfo.InvariantCulture) : 0;
    }
}
