namespace Coulisse.Cards.Words;

/// <summary>The first three letters of a set of words: says without a look-up that none of them begins at a place, as is so at nearly every place of a text.</summary>
internal sealed class Beginnings
{
    /// <summary>How many first letters are looked at.</summary>
    public const int Letters = 3;
    private readonly ulong[] _known = new ulong[(1 << (5 * Letters)) / 64];
    private readonly bool _folded;
    private readonly string _firsts;
    private readonly bool _later;
    private readonly uint _letters;
    // Letters are 1 to 26; the figures 1, 2 and the others have a number each, so that "1 night" is not looked for wherever a figure stands.
    private static readonly byte[] Codes = [.. Enumerable.Range(0, 128).Select(c => char.IsAsciiLetter((char)c) ? (byte)((c | 0x20) - 'a' + 1) : char.IsAsciiDigit((char)c) ? (byte)(c switch { '1' => 27, '2' => 28, _ => 29 }) : (byte)0)];

    /// <param name="words">The words.</param>
    /// <param name="folded">They are keys: accents and stops of a text are let go where it is compared with them. Otherwise they are compared as they stand, but for case.</param>
    public Beginnings(IEnumerable<string> words, bool folded = false)
    {
        _folded = folded;
        string firsts = "";
        uint letters = 0;
        foreach (string w in words)
        {
            letters |= w[0] < 128 ? 1U << Codes[w[0]] : 0;
            switch (Code(w, 0, folded, out int sure))
            {
                case var code when sure == Letters: _known[code >> 6] |= 1UL << (code & 63); break;
                case var _ when sure == 0: firsts += $"{w[0]}{char.ToUpperInvariant(w[0])}"; break;
                default: _later = true; break;
            }
        }

        (_firsts, _letters) = (firsts, letters);
    }

    /// <summary>False only when no word begins at a place. In a text compared by its key what is no ASCII letter may always begin one.</summary>
    public bool May(string s, int at)
    {
        if (at >= s.Length || s[at] < 128 && (_letters & (1U << Codes[s[at]])) == 0 && !(_folded && s[at] == '.'))
        {
            return false;
        }

        int code = Code(s, at, _folded, out int sure);
        return sure == Letters ? (_known[code >> 6] & (1UL << (code & 63))) != 0 : _folded || (sure == 0 ? _firsts.Contains(s[at], StringComparison.Ordinal) : _later);
    }

    /// <summary>False only when no word begins where a word of the text does.</summary>
    public bool MayIn(string s)
    {
        if (!_folded && s.Length <= WordStarts.Longest)
        {
            foreach (int mark in WordStarts.Of(s))
            {
                if (mark < WordStarts.Unsure ? (_known[mark >> 6] & (1UL << (mark & 63))) != 0 : mark < WordStarts.Other ? _later && (_letters & (1U << (mark & 31))) != 0 : _firsts.Contains((char)(mark & 0xFFFF), StringComparison.Ordinal))
                {
                    return true;
                }
            }

            return false;
        }

        bool inside = false;
        for (int i = 0; i < s.Length; i++)
        {
            char c = s[i];
            if (c >= 128)
            {
                if (_folded || _firsts.Contains(c, StringComparison.Ordinal))
                {
                    return true;
                }

                inside = false;
            }
            else
            {
                if (!inside && May(s, i))
                {
                    return true;
                }

                inside = char.IsAsciiLetterOrDigit(c);
            }
        }

        return false;
    }

    /// <summary>The number of a character: 1 to 26 for letters, 0 for signs.</summary>
    internal static int Small(char c) => c < 128 ? Codes[c] : 0;

    /// <summary>The letters at a place as a number; <paramref name="sure"/> is how many of them could be told, all of them where nothing stands against it.</summary>
    internal static int Code(string s, int at, bool folded, out int sure)
    {
        int code = 0;
        bool letters = true;
        sure = Letters;
        for (int k = at; k < at + Letters; k++)
        {
            char c = k < s.Length ? s[k] : ' ';
            if (letters && (c >= 128 && (folded || k == at || char.IsLetter(c)) || folded && c == '.'))
            {
                sure = k - at;
                return code;
            }

            int letter = letters && c < 128 ? Codes[c] : 0;
            letters = letter > 0;
            code = (code << 5) | letter;
        }

        return code;
    }
}
