namespace Coulisse.Cards.Reading;

/// <summary>Words behind a weight that say it is what one piece weighs: "80-90 g apiece", "180 g l'una", "140 g pièce".</summary>
internal static class OfOne
{
    private static readonly string[] Words = ["each", "apiece", "a piece", "pièce", "la pièce", "chacun", "chacune", "l'unité", "cada", "cada uno", "cada una", "c/u", "l'una", "l'uno", "ciascuno", "ciascuna", "cad.", "cad", "cadauno", "pro Stück", "das Stück", "je Stück", "pro Person"];

    private static readonly string[] Slashed = ["pc", "pce", "pcs", "p", "pp", "piece", "ea", "each", "person", "pers", "pièce", "unité", "u", "ud", "unidad", "pieza", "pz", "pezzo", "Stk", "St", "Stück", "個", "枚", "本"];

    /// <summary>True when the words stand anywhere in what is left of a bracket.</summary>
    public static bool In(string rest) => Coulisse.Cards.Words.Places.HasAny(rest, Words) || Short(rest);

    /// <summary>"150 g/pc", "35 g / Stk.", "55 g pp": the same behind a stroke or cut short, and nothing behind it.</summary>
    private static bool Short(string rest)
    {
        ReadOnlySpan<char> w = rest.AsSpan().Trim().TrimEnd('.');
        if (w.Length < 2 || w[0] != '/')
        {
            return w is "pp" or "p.p";
        }

        w = w[1..].TrimStart();
        foreach (string one in Slashed)
        {
            if (w.Equals(one, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

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
