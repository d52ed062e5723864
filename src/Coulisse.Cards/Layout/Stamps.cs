using System.Text.RegularExpressions;

namespace Coulisse.Cards.Layout;

/// <summary>"[21:14] Ana: 400 g sugar", "FRI 08:00 - mix 6 min": when a line was sent or is to be done stands before three lines or more. The line without it is read; the stamps are kept as remarks.</summary>
internal static partial class Stamps
{
    private const int Fewest = 3;
    // "[12:04]": a clock in brackets at the front of a line is nothing else, however many lines a message has.
    private const int FewestBoxed = 2;

    /// <summary>The lines without their stamps.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="asides">Takes the stamps.</param>
    /// <param name="chat">True where the stamps are those of a chat, and not the hours of a plan.</param>
    public static List<RawLine> Off(List<RawLine> lines, List<RawLine> asides, out bool chat)
    {
        int[] ends = new int[lines.Count];
        int stamped = 0;
        int boxed = 0;
        for (int i = 0; i < lines.Count; i++)
        {
            if (lines[i].Text.Length < 400 && MayOpen(lines[i].Text) && Stamp().Match(lines[i].Text) is { Success: true } stamp)
            {
                ends[i] = stamp.Length;
                stamped++;
                boxed += lines[i].Text[0] == '[' ? 1 : 0;
            }
        }

        if (boxed < FewestBoxed && (stamped < Fewest || stamped * 2 < lines.Count))
        {
            int[]? told = ChatStamps.Of(lines);
            chat = told is not null;
            return told is null ? lines : Off(lines, asides, told);
        }

        chat = boxed >= FewestBoxed;
        return Off(lines, asides, ends);
    }

    /// <summary>False only where no stamp opens the line, as is so on nearly every card: the pattern is not even made for it.</summary>
    private static bool MayOpen(string s)
    {
        if (s.Length < 5)
        {
            return false;
        }

        if (s[0] == '[' || char.IsDigit(s[0]))
        {
            return s[0] == '[' ? char.IsDigit(s[1]) : s.AsSpan(1, 2).ContainsAny(':', '/');
        }

        int space = char.IsUpper(s[0]) && char.IsLetter(s[1]) ? s.AsSpan(2, 3).IndexOf(' ') : -1;
        return space >= 0 && 3 + space < s.Length && char.IsDigit(s[3 + space]);
    }

    private static List<RawLine> Off(List<RawLine> lines, List<RawLine> asides, int[] ends)
    {
        HashSet<string> kept = new(StringComparer.Ordinal);
        List<RawLine> bare = new(lines.Count);
        for (int i = 0; i < lines.Count; i++)
        {
            string stamp = lines[i].Text[..ends[i]];
            bare.Add(stamp.Length > 0 ? lines[i] with { Text = lines[i].Text[stamp.Length..].Trim() } : lines[i]);
            if (stamp.Length > 0 && kept.Add(stamp))
            {
                asides.Add(lines[i] with { Text = stamp.Trim().TrimEnd(':', '-', '–').Trim() });
            }
        }

        bare.RemoveAll(l => l.Text.Length == 0);
        return bare;
    }

    [GeneratedRegex(@"^(?:\[\d{1,2}[:.]\d{2}(?::\d{2})?\]|\[?\d{1,2}/\d{1,2}/\d{2,4},? \d{1,2}:\d{2}\]?(?: -)?|\p{Lu}\p{L}{1,2}\.? \d{1,2}[:.]\d{2}(?= )|\d{1,2}:\d{2}(?= [-–] ))\s*(?:[-–]\s+)?(?:\p{Lu}\p{Ll}{1,15}:\s+)?", RegexOptions.None, matchTimeoutMilliseconds: 200)]
    private static partial Regex Stamp();
}
