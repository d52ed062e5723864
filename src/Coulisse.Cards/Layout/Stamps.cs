using System.Text.RegularExpressions;

namespace Coulisse.Cards.Layout;

/// <summary>"[21:14] Ana: 400 g sugar", "FRI 08:00 - mix 6 min": when a line was sent or is to be done stands before three lines or more. The line without it is read; the stamps are kept as remarks.</summary>
internal static partial class Stamps
{
    private const int Fewest = 3;

    /// <summary>The lines without their stamps.</summary>
    public static List<RawLine> Off(List<RawLine> lines, List<RawLine> asides)
    {
        Match[] found = [.. lines.Select(l => l.Text.Length < 400 ? Stamp().Match(l.Text) : Match.Empty)];
        if (found.Count(m => m.Success) is var n && (n < Fewest || n * 2 < lines.Count))
        {
            return ChatStamps.Of(lines) is { } chat ? Off(lines, asides, chat) : lines;
        }

        return Off(lines, asides, [.. found.Select(m => m.Length)]);
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
