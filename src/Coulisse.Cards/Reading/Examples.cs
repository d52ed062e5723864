using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"floury potatoes such as Maris Piper", "Käse, z. B. Bergkäse": an example of the food is no part of its name; it is kept as its kind.</summary>
internal static class Examples
{
    private static readonly string[] Openers = ["such as", "e.g.", "eg.", "for example", "wie z. B.", "wie z.B.", "z. B.", "z.B.", "zum Beispiel", "par exemple", "p. ex.", "por ejemplo", "p. ej.", "ad esempio", "ad es."];
    private static readonly Beginnings First = new(Openers);

    /// <summary>Takes the example off the end of the food.</summary>
    public static void Take(Draft d)
    {
        foreach (string o in First.MayIn(d.Food) ? Openers : [])
        {
            int at = d.Food.IndexOf(" " + o + " ", StringComparison.OrdinalIgnoreCase);
            if (at > 2 && at + o.Length + 3 < d.Food.Length)
            {
                d.Graded(d.Food[(at + o.Length + 2)..].Trim());
                d.Food = d.Food[..at].TrimEnd(' ', ',');
                return;
            }
        }
    }
}
