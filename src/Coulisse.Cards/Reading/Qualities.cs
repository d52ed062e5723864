using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>The class a food is sold in, which is no part of its name: "grade A maple syrup", "Äpfel Handelsklasse I", "cigalas del nº 2", "huîtres n° 3", "gélatine or 200 blooms".</summary>
internal static class Qualities
{
    private static readonly string[] Classes = ["grade", "class", "Handelsklasse", "Güteklasse", "Klasse", "Hkl.", "catégorie", "categoría", "categoria", "calibre", "size", "taille", "talla", "calibro", "pezzatura", "Größe"];
    private static readonly string[] Numbers = ["nº", "n°", "n.", "no.", "nr.", "№", "#"];
    private static readonly string[] Golds = ["or", "argent", "bronze", "oro", "plata", "bronce", "argento", "bronzo", "platino", "gold", "silver", "Silber", "platinum", "Platin"];
    private static readonly Beginnings First = new([.. Classes, .. Numbers]);

    /// <summary>Takes them from the name.</summary>
    public static void Take(Draft d, string lang)
    {
        if (d.Food.Length < 8 || lang == "ja")
        {
            return;
        }

        if (First.MayIn(d.Food))
        {
            Front(d);
            Back(d, lang);
        }

        Bloom(d);
    }

    /// <summary>"grade A maple syrup", "Handelsklasse I Äpfel".</summary>
    private static void Front(Draft d)
    {
        foreach (string word in Classes)
        {
            if (Places.WordAt(d.Food, 0, word) && Mark(d.Food, Places.Skip(d.Food, word.Length)) is var end and > 0 && Places.Skip(d.Food, end) is var food && food + 2 < d.Food.Length && char.IsLetter(d.Food[food]))
            {
                d.Graded(d.Food[..end]);
                d.Food = d.Food[food..];
                return;
            }
        }
    }

    /// <summary>"maple syrup grade A", "cigalas del nº 2": the class closes the name.</summary>
    private static void Back(Draft d, string lang)
    {
        for (int at = d.Food.IndexOf(' '); at > 2; at = d.Food.IndexOf(' ', at + 1))
        {
            int word = PartReader.Of(d.Food, at + 1, lang);
            if (Named(d.Food, word) is var figure and > 0 && Mark(d.Food, Places.Skip(d.Food, figure)) >= d.Food.Length)
            {
                d.Graded(d.Food[word..]);
                d.Food = d.Food[..at];
                return;
            }
        }
    }

    private static int Named(string s, int at)
    {
        if (Places.Behind(s, at, Classes) is > 0 and var end)
        {
            return end;
        }

        foreach (string sign in Numbers)
        {
            if (s.AsSpan(at).StartsWith(sign, StringComparison.OrdinalIgnoreCase))
            {
                return at + sign.Length;
            }
        }

        return 0;
    }

    /// <summary>End of the sign of a class, "A", "AA", "II", "2", "extra"; 0 when none stands there.</summary>
    private static int Mark(string s, int at)
    {
        int end = Places.WordEnd(s, Math.Min(at, s.Length));
        ReadOnlySpan<char> w = s.AsSpan(Math.Min(at, s.Length), Math.Max(0, end - at));
        return w is "A" or "AA" or "AAA" or "B" or "C" or "I" or "II" or "III" or "S" or "M" or "L" or "XL" || w.Equals("extra", StringComparison.OrdinalIgnoreCase) || w.Length is 1 or 2 && w.IndexOfAnyExceptInRange('0', '9') < 0 ? end : 0;
    }

    /// <summary>"gélatine or 200 blooms", "gelatina oro": the grade of leaves, which French and Italian name like a metal; before a figure of bloom "or" is one.</summary>
    private static void Bloom(Draft d)
    {
        int leaf = d.Food.IndexOf("latin", StringComparison.OrdinalIgnoreCase);
        int space = leaf < 0 ? -1 : d.Food.IndexOf(' ', leaf);
        foreach (string gold in space > 0 ? Golds : [])
        {
            if (Places.WordAt(d.Food, space + 1, gold) && (space + 1 + gold.Length == d.Food.Length || Places.HasAny(d.Food[(space + 1)..], "bloom", "blooms")))
            {
                d.Graded(d.Food[(space + 1)..]);
                d.Food = d.Food[..space];
                return;
            }
        }
    }
}
