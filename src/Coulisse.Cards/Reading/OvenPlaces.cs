namespace Coulisse.Cards.Reading;

/// <summary>"In the middle of the oven", "on the middle shelf", "au centre du four": where a tray stands, and not the middle of a food. A heat beside it is the oven's; taken for the core it would say of the food what it never reached.</summary>
internal static class OvenPlaces
{
    private static readonly string[] Middles = ["middle", "centre", "center", "milieu", "mitte", "centro", "medio", "mezzo"];
    private static readonly string[] Ovens = [" of the oven", " of a hot oven", " of oven", " of the rack", " of the shelf", " of the smoker", " shelf", " rack", " oven", " du four", " de la grille", " des ofens", " des backofens", " des rohrs", " vom ofen", " im ofen", " del horno", " del forno"];
    private static readonly string[] Others = [" of the tray", " of the grill", " of the plate", " of the pan", " of the hob", " of the dish", " of the fridge", " of the table", " runner", " de la plaque", " de l'assiette", " de la table", " des blechs", " de la bandeja", " del plato", " della teglia", " del piatto"];

    private static readonly string[] Set = ["oven at", "oven", "ofen auf", "ofen bei", "four à", "horno a", "forno a"];

    /// <summary>True where the words in small letters name a middle that is a place.</summary>
    public static bool In(string words) => Any(words, Others) || Oven(words);

    /// <summary>True where that place is in the oven, whose heat is told beside it.</summary>
    public static bool Oven(string words) => Any(words, Ovens) || words.Contains("mittlere", StringComparison.Ordinal) && words.Contains("schiene", StringComparison.Ordinal);

    /// <summary>True where what goes on behind "in the middle" names the oven or the tray.</summary>
    public static bool Whole(ReadOnlySpan<char> after) => Begins(after, Ovens) || Begins(after, Others);

    private static bool Any(string words, string[] wholes)
    {
        foreach (string middle in Middles)
        {
            int at = words.IndexOf(middle, StringComparison.Ordinal);
            if (at >= 0 && Begins(words.AsSpan(at + middle.Length), wholes))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Begins(ReadOnlySpan<char> after, string[] wholes)
    {
        foreach (string whole in wholes)
        {
            if (after.StartsWith(whole, StringComparison.OrdinalIgnoreCase) && (after.Length == whole.Length || !char.IsLetter(after[whole.Length])))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True where the oven itself is set: "tray in the middle, oven at 90".</summary>
    public static bool Sets(string before) => BareHeat.Ends(before.TrimEnd(), Set);
}
