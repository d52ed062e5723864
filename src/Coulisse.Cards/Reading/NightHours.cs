using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A night that is told in hours beside it: "Retard o/n (12-16 hrs)", "overnight in the fridge. 12 h". In "cook 24 hours. Press overnight" it is a wait of its own.</summary>
internal static class NightHours
{
    private const double Shortest = 480;
    private const double LongestNight = 1440;

    /// <summary>True when one of the times of a step is how long its night lasts: no other sentence begins between the two.</summary>
    public static bool Told(string s, int at, int end, List<StepTime> times, List<(int At, string Id)> operations)
    {
        int from = 0;
        foreach (StepTime t in times)
        {
            int told = t.Words.Length == 0 ? -1 : s.IndexOf(t.Words, from, StringComparison.Ordinal);
            if (told < 0)
            {
                continue;
            }

            from = told + t.Words.Length;
            int behind = from;
            if (told < at && operations.Exists(o => o.At >= behind && o.At < at))
            {
                // "Simmer 8 h, strain, chill overnight": the night is of other work.
                continue;
            }

            if (t.MinutesMin is >= Shortest and <= LongestNight && !Parted(told > at ? s.AsSpan(end, Math.Max(0, told - end)) : s.AsSpan(from, Math.Max(0, at - from))))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"半日(5〜6時間)", "half an hour (30 to 40 minutes)": true where the words of a time are followed by its figures in a bracket, which then tell it.</summary>
    /// <param name="s">The step.</param>
    /// <param name="start">Where the words begin.</param>
    /// <param name="end">Where they end.</param>
    /// <param name="lang">Language.</param>
    public static bool Figured(string s, int start, int end, string lang)
    {
        int open = Places.Skip(s, end);
        return open < s.Length && s[open] == '(' && !s.AsSpan(start, end - start).ContainsAnyInRange('0', '9') && Clock.At(s, Places.Skip(s, open + 1), lang) is { } told && told.End < s.Length && s[told.End] == ')';
    }

    /// <summary>True when a full stop and further words stand between.</summary>
    private static bool Parted(ReadOnlySpan<char> between)
    {
        int stop = between.IndexOf(". ") is var at and >= 0 ? at : between.IndexOf('。');
        for (int i = stop < 0 ? between.Length : stop; i < between.Length; i++)
        {
            if (char.IsLetter(between[i]))
            {
                return true;
            }
        }

        return false;
    }
}
