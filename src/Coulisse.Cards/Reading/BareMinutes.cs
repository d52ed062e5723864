using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Oven 160 fan, 35-40.", "180C, 12-14": figures that close a clause right behind the heat of an oven are minutes.</summary>
internal static class BareMinutes
{
    private const double Fewest = 4;
    private const double Most = 240;

    /// <summary>The minutes at a place; null when the figure there is none.</summary>
    public static (double Min, double Max, int Start, int End)? At(string s, int at, string lang, List<StepTemperature> temperatures)
    {
        if (!char.IsAsciiDigit(s[at]) || !temperatures.Exists(t => t.Of == TemperatureOf.Oven && !t.Inherited) || Numbers.Range(s, at, lang) is not { InWords: false, Max: { } max } n || n.Min < Fewest || max > Most || n.Min >= max)
        {
            return null;
        }

        int behind = Places.Skip(s, n.End);
        string before = s[..at].TrimEnd();
        bool closes = behind >= s.Length || s[behind] is ',' or ';' || s[behind] == '.' && (behind + 1 == s.Length || s[behind + 1] == ' ');
        return closes && before.Length > 1 && before[^1] is ',' or '/' && Heated(before[..^1].TrimEnd(), temperatures[^1]) ? (n.Min, max, at, n.End) : null;
    }

    /// <summary>True when nothing but the heat and its "fan" stands before.</summary>
    private static bool Heated(string before, StepTemperature last)
    {
        foreach (string word in (ReadOnlySpan<string>)[.. Heat.Fans, "C", "F", "°"])
        {
            before = before.EndsWith(word, StringComparison.OrdinalIgnoreCase) ? before[..^word.Length].TrimEnd() : before;
        }

        int figure = before.Length;
        while (figure > 0 && char.IsAsciiDigit(before[figure - 1]))
        {
            figure--;
        }

        return figure < before.Length && last.Words.StartsWith(before[figure..], StringComparison.Ordinal);
    }
}
