namespace Coulisse.Cards.Words;

/// <summary>The first three letters of a set of words: says without a look-up that none of them begins at a place, as is so at nearly every place of a text.</summary>
internal sealed class Beginnings
{
    /// <summary>How many first letters are looked at.</summary>
    public const int Letters = 3;
    private readonly ulong[] _known = new ulong[(1 << (5 * Letters)) / 64];
    private readonly bool _folded;
    private string _firsts = "";
    private bool _later;
    private uint _letters;
    // Letters are 1 to 26; the figures 1, 2 and the others have a number each, so that "1 night" is not looked for wherever a figure stands.
    private static readonly byte[] Codes = NewCodes();

    /// <param name="words">The words.</param>
    /// <param name="folded">They are keys: accents and stops of a text are let go where it is compared with them. Otherwise they are compared as they stand, but for case.</param>
    public Beginnings(IEnumerable<string> words, bool folded = false)
    {
        _folded = folded;
        foreach (string w in words)
        {
            Add(w);
        }
    }

    /// <summary>Takes one more word.</summary>
    public void Add(ReadOnlySpan<char> word)
    {
        char first = word[0];
        _letters |= first < 128 ? 1U << Codes[first] : 0;
        int code = Code(word, 0, _folded, out int sure);
        if (sure == Letters)
        {
            _known[code >> 6] |= 1UL << (code & 63);
        }
        else if (sure > 0)
        {
            _later = true;
        }
        else if (!_folded && !_firsts.Contains(first))
        {
            // In a text compared by its key such a letter is never asked for: it may always begin a word.
            _firsts += $"{first}{char.ToUpperInvariant(first)}";
        }
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
    internal static int Code(ReadOnlySpan<char> s, int at, bool folded, out int sure)
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

    private static byte[] NewCodes()
    {
        byte[] codes = new byte[128];
        for (int c = 0; c < codes.Length; c++)
        {
            codes[c] = char.IsAsciiLetter((char)c) ? (byte)((c | 0x20) - 'a' + 1) : char.IsAsciiDigit((char)c) ? (byte)(c switch { '1' => 27, '2' => 28, _ => 29 }) : (byte)0;
        }

        return codes;
    }
}
