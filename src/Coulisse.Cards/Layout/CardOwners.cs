using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Whose card it is, as printed cards ask over the name of the dish: "From the kitchen of: Grandma". It names no dish and no part.</summary>
internal static class CardOwners
{
    private const int Longest = 60;
    private static readonly string[] Printed = ["from the kitchen of", "recipe from the kitchen of", "de la cuisine de", "aus der küche von", "de la cocina de", "dalla cucina di"];
    private static readonly string[] Asked = ["recipe from", "recipe by", "recipe of", "submitted by", "contributed by", "recette de", "recette donnée par", "rezept von", "receta de", "ricetta di"];
    private static readonly Beginnings First = new([.. Printed, .. Asked]);

    /// <summary>True for such a line; "Recette de crêpes" names a dish, "Recette de : Mamie" its cook.</summary>
    public static bool Is(string s)
    {
        if (s.Length > Longest || !First.May(s, 0) || s.AsSpan().IndexOfAnyInRange('0', '9') >= 0)
        {
            return false;
        }

        foreach (string w in Printed)
        {
            if (Places.WordAt(s, 0, w))
            {
                return true;
            }
        }

        foreach (string w in Asked)
        {
            if (Places.WordAt(s, 0, w) && Places.Skip(s, w.Length) is var colon && colon < s.Length && s[colon] == ':')
            {
                return true;
            }
        }

        return false;
    }
}
