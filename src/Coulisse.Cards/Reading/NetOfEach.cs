using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Abtropfgewicht je 350 g", "peso escurrido: 240 g cada uno", "drained weight each 240 g": a bracket that says how its contents were weighed, and then of which one. The weight alone is left for whoever reads brackets; "Abtropfgewicht 350 g" says nothing of each and stays as it is.</summary>
internal static class NetOfEach
{
    private static readonly string[] Weighings = ["Abtropfgewicht", "Füllmenge", "Einwaage", "drained weight", "drained", "net weight", "poids égoutté", "poids net", "peso escurrido", "peso neto", "peso sgocciolato", "peso netto"];
    private static readonly string[] Ones = ["je", "jeweils", "pro Dose", "pro Glas", "each", "per tin", "per can", "per jar", "chacun", "chacune", "par boîte", "cada uno", "cada una", "por lata", "por bote", "ciascuno", "ciascuna", "cadauno", "l'uno", "l'una"];
    private static readonly Beginnings First = new(Weighings);

    /// <summary>The words from "each" on; the words themselves where no such weighing opens them.</summary>
    public static string Of(string w)
    {
        if (!First.May(w, 0))
        {
            return w;
        }

        foreach (string weighing in Weighings)
        {
            if (!Places.WordAt(w, 0, weighing))
            {
                continue;
            }

            string rest = w[weighing.Length..].TrimStart(' ', ':');
            foreach (string one in Ones)
            {
                if (Places.WordAt(rest, 0, one) && rest.Length > one.Length + 2)
                {
                    return "je " + rest[one.Length..].TrimStart(' ', ':');
                }
            }

            return w;
        }

        return w;
    }
}
