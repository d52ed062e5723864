namespace Coulisse.Cards.Reading;

/// <summary>"170/6min", "160 fan 12 min", "180C 25'": heat and time and no word of a food. It sets an oven and weighs nothing.</summary>
internal static class BareSettings
{
    private const int Longest = 24;

    /// <summary>True when a line is nothing else.</summary>
    public static bool Is(string s, string lang)
    {
        if (s.Length is < 4 or > Longest || !char.IsAsciiDigit(s[0]))
        {
            return false;
        }

        bool timed = false;
        int from = -1;
        for (int i = 0; i <= s.Length; i++)
        {
            if (i < s.Length && char.IsLetter(s[i]))
            {
                from = from < 0 ? i : from;
                continue;
            }

            if (from >= 0)
            {
                string word = s[from..i].ToLowerInvariant();
                bool time = word is "min" or "mins" or "minutes" or "minuten" or "minutos" or "minuti" or "std" or "hrs" or "hr" or "分";
                if (!time && word is not ("c" or "f" or "fan" or "h" or "umluft" or "at"))
                {
                    return false;
                }

                timed |= time;
                from = -1;
            }
        }

        // "6 min" alone may be a time of anything; a heat beside it makes it a setting.
        return timed && Clock.Tells(s, 0, lang) && s.AsSpan(1).IndexOfAny("/ °") >= 0 && s.AsSpan(s.AsSpan().IndexOfAnyExceptInRange('0', '9')).IndexOfAnyInRange('0', '9') > 0;
    }
}
