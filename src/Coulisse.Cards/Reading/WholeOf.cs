using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"all of the dough", "tutto il burro", "remaining sugar", "primo impasto tutto": the whole of something told before.</summary>
internal static class WholeOf
{
    private static readonly string[] Openers = ["all of the ", "all the ", "tutto il ", "tutta la ", "tout le ", "toute la ", "toda la ", "todo el ", "tutto l'", "tutta l'", "die gesamte ", "der gesamte ", "den gesamten ", "das gesamte ", "die ganze ", "der ganze ", "den ganzen ", "das ganze ", "la totalité du ", "la totalité de la ", "rest of the ", "remaining "];
    private static readonly Beginnings First = new(Openers);
    private static readonly string[] Closers = [" all of it", " tutto", " tutta", " todo", " toda", " tout", " en entier", " en totalité", " al completo", " gesamt", " komplett", " 全量", " 全部"];
    private const int LongestClosed = 50;

    /// <summary>Where the name before such words ends; the whole length when the line closes with none. "todo", "tutto" behind a comma is a pointer, and read there.</summary>
    public static int Before(string s) =>
        s.Length is > 6 and <= LongestClosed && !s.Contains(',') && s.AsSpan().IndexOfAnyInRange('0', '9') < 0 && Array.Find(Closers, w => s.EndsWith(w, StringComparison.OrdinalIgnoreCase)) is { } closer && s.Length > closer.Length + 3 ? s.AsSpan(0, s.Length - closer.Length).TrimEnd().Length : s.Length;

    /// <summary>Where the name behind such words begins; 0 when the line opens with none.</summary>
    public static int Behind(string s) => First.May(s, 0) && Array.Find(Openers, w => s.StartsWith(w, StringComparison.OrdinalIgnoreCase)) is { } opener && opener.Length < s.Length ? opener.Length : 0;

    /// <summary>Takes the words off; the line itself when it has none.</summary>
    public static string Take(string s, Draft d)
    {
        foreach (string w in First.May(s, 0) ? Openers : [])
        {
            if (s.StartsWith(w, StringComparison.OrdinalIgnoreCase))
            {
                d.Whole = true;
                d.Reference = "whole amount";
                return s[w.Length..];
            }
        }

        if (Before(s) is var end && end < s.Length)
        {
            d.Whole = true;
            d.Reference = "whole amount";
            return s[..end];
        }

        return s;
    }
}
