namespace Coulisse.Cards.Words;

/// <summary>The first three letters of a set of words: says without a look-up that none of them begins at a place, as is so at nearly every place of a text.</summary>
internal sealed class Beginnings
{
    private const int Letters = 3;
    private const int Unsure = -1;
    private readonly ulong[] _known = new ulong[(1 << (5 * Letters)) / 64];

    /// <summary>Of words by their folded key, or as they are compared without case.</summary>
    public Beginnings(IEnumerable<string> words)
    {
        foreach (string w in words)
        {
            // What begins outside ASCII is never ruled out.
            if (Code(w, 0) is var code and not Unsure)
            {
                _known[code >> 6] |= 1UL << (code & 63);
            }
        }
    }

    /// <summary>False only when no word begins at a place. Letters outside ASCII and the stop, which no key keeps, may always.</summary>
    public bool May(string s, int at) => at < s.Length && (Code(s, at) is var code && code == Unsure || (_known[code >> 6] & (1UL << (code & 63))) != 0);

    /// <summary>False only when no word begins where a word of the text does.</summary>
    public bool MayIn(string s)
    {
        bool inside = false;
        for (int i = 0; i < s.Length; i++)
        {
            char c = s[i];
            if (c >= 128 || !inside && May(s, i))
            {
                return true;
            }

            inside = char.IsAsciiLetterOrDigit(c);
        }

        return false;
    }

    private static int Code(string s, int at)
    {
        int code = 0;
        bool letters = true;
        for (int k = at; k < at + Letters; k++)
        {
            char c = k < s.Length ? s[k] : ' ';
            if (letters && (c >= 128 || c == '.'))
            {
                return Unsure;
            }

            letters = letters && char.IsAsciiLetter(c);
            code = (code << 5) | (letters ? (c | 0x20) - 'a' + 1 : 0);
        }

        return code;
    }
}
