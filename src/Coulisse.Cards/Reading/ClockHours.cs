using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"À six heures du matin", "à sept heures et demie": an hour of the day in a language whose hours by the clock and by the length are one word. "Jusqu'à deux heures" and "de deux à trois heures" are lengths.</summary>
internal static class ClockHours
{
    private static readonly string[] OfDay = ["du matin", "du soir", "de l'après-midi", "précises", "pile", "et demie du matin", "et demie du soir"];

    /// <summary>True for an hour of the day.</summary>
    /// <param name="s">The step.</param>
    /// <param name="start">Where the hours begin.</param>
    /// <param name="end">Where they end.</param>
    /// <param name="minutes">What they would be as a length.</param>
    /// <param name="lang">Language.</param>
    public static bool Is(string s, int start, int end, double minutes, string lang)
    {
        if (lang != "fr" || minutes is < 60 or > 1440)
        {
            return false;
        }

        if (Places.Behind(s, Places.Skip(s, end), OfDay) > 0)
        {
            return true;
        }

        if (s.AsSpan(start, end - start).ContainsAnyInRange('0', '9'))
        {
            // "Rabats à 1 h et 2 h" are moments of a stretch.
            return false;
        }

        ReadOnlySpan<char> before = s.AsSpan(0, start).TrimEnd();
        return (before.EndsWith(" à", StringComparison.OrdinalIgnoreCase) || before.Equals("à", StringComparison.OrdinalIgnoreCase) || Places.EndsIn(before, "dès") || Places.EndsIn(before, "vers"))
            && !(before.Length > 2 && char.IsAsciiDigit(before[..^1].TrimEnd()[^1])) && !Places.EndsIn(before[..^1].TrimEnd(), "heures") && !Places.EndsIn(before[..^1].TrimEnd(), "minutes");
    }
}
