using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>What hangs on a food without a comma and is no part of its name: "filet de cabillaud sans peau", "Schulter mit Schwarte", "nuts of your choice". "Beurre sans sel" and "harina sin gluten" are names.</summary>
internal static class Attached
{
    private static readonly (string Lang, string[] Words, string[] Of)[] Kinds =
    [
        ("en", ["without", "with the"], ["skin", "bone", "bones", "rind", "seeds", "stones"]),
        ("en", ["skin", "bone", "rind", "head", "shell", "sinew", "crust", "crusts"], ["on", "off", "in", "removed"]),
        ("fr", ["sans", "avec"], ["peau", "arête", "arêtes", "os", "pépins", "noyau", "noyaux", "couenne", "coquille", "la peau", "os ni peau", "peau ni arêtes"]),
        ("de", ["ohne", "mit"], ["Haut", "Knochen", "Gräten", "Kerne", "Schwarte", "Stein", "Rinde", "Kopf", "Schale", "Haut und Knochen", "Haut und Gräten", "Grün"]),
        ("en", ["in"], ["one piece", "a single piece", "the piece"]),
        ("de", ["am", "im"], ["Stück", "Ganzen", "Knochen"]),
        ("fr", ["en"], ["un seul morceau", "un morceau"]),
        ("es", ["en"], ["un trozo", "una pieza", "una sola pieza"]),
        ("it", ["in"], ["un pezzo", "un unico pezzo", "un pezzo solo"]),
        ("es", ["sin", "con"], ["piel", "hueso", "huesos", "espinas", "pepitas", "corteza", "piel ni espinas", "cabeza", "cáscara"]),
        ("it", ["senza", "con"], ["pelle", "osso", "ossa", "lische", "semi", "cotenna", "testa", "guscio", "la pelle", "pelle e lische"]),
    ];

    private static readonly string[] Choices = ["of your choice", "of choice", "nach Wahl", "au choix", "de votre choix", "a elegir", "al gusto", "a scelta", "a piacere"];
    private static readonly Beginnings First = new(Firsts());

    /// <summary>Takes it off the end of the food.</summary>
    public static void Take(Draft d, string lang)
    {
        if (d.Food.Length < 10 || !First.MayIn(d.Food))
        {
            return;
        }

        foreach (string choice in Choices)
        {
            if (d.Food.Length > choice.Length + 3 && d.Food.EndsWith(" " + choice, StringComparison.OrdinalIgnoreCase))
            {
                d.Tokens?.Add(new ReadToken(choice, "note", choice));
                d.Food = d.Food[..^(choice.Length + 1)].TrimEnd();
                return;
            }
        }

        foreach ((string of, string[] words, string[] things) in Kinds)
        {
            foreach (string w in of == lang ? words : [])
            {
                if (Places.FindWord(d.Food, w, 2) is var at and > 2 && things.Contains(d.Food[(at + w.Length)..].Trim(' ', '-'), StringComparer.OrdinalIgnoreCase))
                {
                    d.Prepare(d.Food[at..]);
                    d.Food = d.Food[..at].TrimEnd(' ', ',');
                    return;
                }
            }
        }
    }

    private static List<string> Firsts()
    {
        List<string> all = [.. Choices];
        foreach ((string _, string[] words, string[] _) in Kinds)
        {
            all.AddRange(words);
        }

        return all;
    }
}
