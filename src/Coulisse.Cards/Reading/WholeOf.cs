using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"all of the dough", "tutto il burro", "remaining sugar": the whole of something told before.</summary>
internal static class WholeOf
{
    private static readonly string[] Openers = ["all of the ", "all the ", "tutto il ", "tutta la ", "tout le ", "toute la ", "toda la ", "todo el ", "tutto l'", "tutta l'", "die gesamte ", "der gesamte ", "den gesamten ", "das gesamte ", "die ganze ", "der ganze ", "den ganzen ", "das ganze ", "la totalité du ", "la totalité de la ", "rest of the ", "remaining "];
    private static readonly Beginnings First = new(Openers);

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

        return s;
    }
}
