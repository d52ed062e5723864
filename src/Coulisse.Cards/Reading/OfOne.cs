namespace Coulisse.Cards.Reading;

/// <summary>Words behind a weight that say it is what one piece weighs: "80-90 g apiece", "180 g l'una", "140 g pièce".</summary>
internal static class OfOne
{
    private static readonly string[] Words = ["each", "apiece", "a piece", "pièce", "la pièce", "chacun", "chacune", "l'unité", "cada", "cada uno", "cada una", "c/u", "l'una", "l'uno", "ciascuno", "ciascuna", "cad.", "cad", "cadauno", "pro Stück", "das Stück", "je Stück", "pro Person"];

    /// <summary>True when the words stand anywhere in what is left of a bracket.</summary>
    public static bool In(string rest) => Coulisse.Cards.Words.Places.HasAny(rest, Words);

    /// <summary>True when a part of a line ends with them, a space before.</summary>
    public static bool Closes(string w)
    {
        foreach (string one in Words)
        {
            if (w.Length > one.Length && w[w.Length - one.Length - 1] == ' ' && w.EndsWith(one, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }
}
