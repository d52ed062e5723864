using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Holds on semolina 4 hours.", "Tient 2 heures au frais.": a sentence that says how long a thing stays good, and orders no wait. "Hold on ice 4 hours." orders one.</summary>
internal static class Stored
{
    private static readonly string[] Openers = ["holds", "keeps", "it holds", "it keeps", "they hold", "they keep", "will hold", "will keep", "se garde", "se gardent", "se conserve", "se conservent", "tient", "tiennent", "hält", "hält sich", "halten sich", "aguanta", "aguantan", "se conserva", "se conservan", "si conserva", "si conservano", "si mantiene", "si mantengono", "regge", "reggono"];
    private static readonly Beginnings First = new(Openers);

    /// <summary>True when the sentence a time stands in opens so; "holds its shape after 2 hours" says when, not how long.</summary>
    public static bool Said(string s, int at, string before)
    {
        int stop = at > 0 ? s.LastIndexOf(". ", at - 1, StringComparison.Ordinal) : -1;
        int from = stop < 0 ? 0 : Places.Skip(s, stop + 2);
        if (!First.May(s, from) || before.EndsWith("after", StringComparison.Ordinal) || before.EndsWith("après", StringComparison.Ordinal) || before.EndsWith("nach", StringComparison.Ordinal) || before.EndsWith("dopo", StringComparison.Ordinal) || before.EndsWith("después de", StringComparison.Ordinal))
        {
            return false;
        }

        foreach (string w in Openers)
        {
            if (Places.WordAt(s, from, w))
            {
                return true;
            }
        }

        return false;
    }
}
