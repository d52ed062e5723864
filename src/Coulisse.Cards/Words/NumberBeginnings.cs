namespace Coulisse.Cards.Words;

/// <summary>Says from its first letters that a word begins no number and no time in words, as is so at nearly every word of a text.</summary>
internal static class NumberBeginnings
{
    // Hundreds in one word begin with the count of them, which is a number itself, or with one of these; a range may be led by the others.
    private static readonly string[] Leads = ["hundert", "cento", "ciento", "trescientos", "cuatrocientos", "quinientos", "seiscientos", "setecientos", "ochocientos", "novecientos", "doscientos", "between", "entre", "zwischen", "from", "de", "da"];
    private static readonly Lazy<Beginnings> First = new(() => new Beginnings([.. Lexicon.Keys("num"), .. TimeWords.All.Select(w => Folding.Key(w)), .. Leads], folded: true));

    /// <summary>False only when no number, no time and no word that leads one begins at a place. What is no plain letter, and a letter that may be printed for a figure, may always begin one.</summary>
    public static bool May(string s, int at)
    {
        if (at >= s.Length)
        {
            return false;
        }

        char c = s[at];
        return !char.IsAsciiLetter(c) || at + 1 >= s.Length || !char.IsAsciiLetter(s[at + 1]) || c is 'O' or 'o' or 'l' or 'I' or 'S' && s[at + 1] is 'O' or 'o' || First.Value.May(s, at);
    }
}
