namespace Coulisse.Cards.Layout;

/// <summary>"Dan 12:41: onion in the oil", "12:41 Dan: lid on", "Dan (12:41)": who wrote a line of a chat, and when. The minutes of the clock weigh nothing.</summary>
internal static class ChatStamps
{
    private const int LongestName = 24;
    private const int Fewest = 2;

    /// <summary>The end of each such stamp, 0 for a line without one; null for a text that is no chat.</summary>
    public static int[]? Of(List<RawLine> lines)
    {
        int[]? ends = null;
        Dictionary<string, int> names = new(StringComparer.Ordinal);
        for (int i = 0; i < lines.Count; i++)
        {
            int end = End(lines[i].Text, out string name);
            if (end > 0)
            {
                ends ??= new int[lines.Count];
                ends[i] = end;
                names[name] = names.GetValueOrDefault(name) + 1;
            }
        }

        // One who writes twice, or three of them: "Oven 12:30: in" alone is a line of a plan.
        return ends is not null && (names.Count > 2 || names.Values.Any(n => n >= Fewest)) ? ends : null;
    }

    private static int End(string s, out string name)
    {
        name = "";
        if (s.Length < 6 || s.AsSpan(0, Math.Min(s.Length, LongestName + 12)).IndexOfAny(':', '.') < 1)
        {
            return 0;
        }

        if (char.IsAsciiDigit(s[0]))
        {
            int from = Clock(s, 0);
            int gap = from > 0 && from < s.Length && s[from] is ' ' or '\t' ? from + 1 : 0;
            int to = gap > 0 ? Name(s, gap) : 0;
            name = to > 0 ? s[gap..to] : "";
            return to > 0 && to + 1 < s.Length && (s[to] == ':' && s[to + 1] == ' ' || s[from] == '\t' && s[to] == '\t') ? Past(s, to + 1) : 0;
        }

        int named = Name(s, 0);
        int at = named > 0 && named + 1 < s.Length ? s[named] == ',' && s[named + 1] == ' ' ? named + 2 : s[named] is ' ' or '\t' ? named + 1 : 0 : 0;
        bool boxed = at > 0 && at < s.Length && s[at] is '(' or '[';
        int clock = at > 0 ? Clock(s, boxed ? at + 1 : at) : 0;
        if (clock == 0 || boxed && !(clock < s.Length && s[clock] is ')' or ']'))
        {
            return 0;
        }

        name = s[..named];
        clock += boxed ? 1 : 0;
        return clock == s.Length ? clock : s[clock] == ':' && clock + 1 < s.Length && s[clock + 1] == ' ' ? Past(s, clock + 1) : s.AsSpan(clock).StartsWith(" - ") || s.AsSpan(clock).StartsWith(" – ") ? clock + 3 : s.AsSpan(clock).StartsWith(" > ") ? clock + 3 : 0;
    }

    private static int Past(string s, int i)
    {
        while (i < s.Length && s[i] is ' ' or '\t')
        {
            i++;
        }

        return i;
    }

    /// <summary>End of one or two words in capitals; 0 when none stands there.</summary>
    private static int Name(string s, int at)
    {
        int i = at;
        for (int words = 0; words < 2 && i < s.Length && (char.IsUpper(s[i]) || char.GetUnicodeCategory(s[i]) == System.Globalization.UnicodeCategory.OtherLetter); words++)
        {
            int from = i;
            while (i < s.Length && i - at < LongestName && (char.IsLetter(s[i]) || s[i] is '\'' or '-'))
            {
                i++;
            }

            if (i - from < (words == 0 ? 2 : 1) || i - at >= LongestName)
            {
                return 0;
            }

            if (words == 1 || i + 1 >= s.Length || s[i] != ' ' || !char.IsUpper(s[i + 1]))
            {
                return i;
            }

            i++;
        }

        return 0;
    }

    /// <summary>End of "12:41", "9.05", "12:41:07 PM", "18:20 Uhr"; 0 when no hour stands there.</summary>
    private static int Clock(string s, int at)
    {
        int i = at;
        while (i < s.Length && i - at < 2 && char.IsAsciiDigit(s[i]))
        {
            i++;
        }

        if (i == at || i + 2 >= s.Length || s[i] is not (':' or '.') || s[i + 1] is < '0' or > '5' || !char.IsAsciiDigit(s[i + 2]) || i - at == 2 && (s[at] > '2' || s[at] == '2' && s[at + 1] > '3'))
        {
            return 0;
        }

        i += 3;
        i = i + 2 < s.Length && s[i] == ':' && char.IsAsciiDigit(s[i + 1]) && char.IsAsciiDigit(s[i + 2]) ? i + 3 : i;
        foreach (string half in (ReadOnlySpan<string>)[" am", " pm", "am", "pm", " uhr"])
        {
            if (s.AsSpan(i).StartsWith(half, StringComparison.OrdinalIgnoreCase) && (i + half.Length == s.Length || !char.IsLetter(s[i + half.Length])))
            {
                return i + half.Length;
            }
        }

        return i < s.Length && char.IsLetterOrDigit(s[i]) ? 0 : i;
    }
}
