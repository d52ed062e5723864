using System.Text;

namespace Coulisse.Matter.Foods;

/// <summary>Makes names comparable: case, accents, hyphens, plurals.</summary>
public static class FoodName
{
    // Longer than nearly all names, so that folding one needs no array.
    private const int Short = 128;

    /// <summary>Lower case, no accents, hyphens as blanks, œ and ß opened, one blank between words.</summary>
    public static string Fold(string name)
    {
        Span<char> room = name.Length <= Short ? stackalloc char[Room(Short)] : new char[Room(name.Length)];
        int length = TryFold(name, room, out _, out _);
        return length < 0 ? FoldAny(name) : name.AsSpan().SequenceEqual(room[..length]) ? name : new string(room[..length]);
    }

    /// <summary>Folded, each word without its plural ending. Rough on purpose: it only has to send both forms to the same key.</summary>
    public static string Singular(string folded)
    {
        Span<char> room = folded.Length <= Short ? stackalloc char[Short] : new char[folded.Length];
        ReadOnlySpan<char> singular = Singular(folded, room);
        return singular.Length == folded.Length ? folded : new string(singular);
    }

    /// <summary>Characters that folding a name of a length may need: ½ becomes two digits and a blank.</summary>
    internal static int Room(int length) => 3 * length;

    /// <summary>A name folded without a string of its own.</summary>
    /// <param name="name">Name as written.</param>
    /// <param name="room">As long as <see cref="Room"/> says.</param>
    internal static ReadOnlySpan<char> Fold(ReadOnlySpan<char> name, Span<char> room)
    {
        int length = TryFold(name, room, out _, out _);
        return length < 0 ? FoldAny(new string(name)) : room[..length];
    }

    /// <summary>A name folded, with what an index asks of it, in one pass.</summary>
    /// <param name="name">Name as written.</param>
    /// <param name="room">As long as <see cref="Room"/> says.</param>
    /// <param name="hash">Its <see cref="NameHash"/>.</param>
    /// <param name="plural">False when no word ends in s, so that its singular is itself.</param>
    internal static ReadOnlySpan<char> Fold(ReadOnlySpan<char> name, Span<char> room, out int hash, out bool plural)
    {
        int length = TryFold(name, room, out hash, out plural);
        if (length >= 0)
        {
            return room[..length];
        }

        string folded = FoldAny(new string(name));
        hash = NameHash.Of(folded);
        plural = true;
        return folded;
    }

    /// <summary>A folded name's singular without a string of its own; what was given, as long as it was, when no word has a plural ending.</summary>
    /// <param name="folded">Folded name.</param>
    /// <param name="room">As long as the name.</param>
    internal static ReadOnlySpan<char> Singular(ReadOnlySpan<char> folded, Span<char> room)
    {
        int length = 0;
        int start = 0;
        for (int i = 0; i <= folded.Length; i++)
        {
            if (i < folded.Length && folded[i] != ' ')
            {
                room[length++] = folded[i];
                continue;
            }

            length = start + One(room[start..length]);
            if (i < folded.Length)
            {
                room[length++] = ' ';
            }

            start = length;
        }

        // Every change makes it shorter.
        return length == folded.Length ? folded : room[..length];
    }

    /// <summary>Takes the plural ending from a word, in its place; gives what is left of its length.</summary>
    private static int One(Span<char> w)
    {
        int n = w.Length;
        if (n <= 3 || w[n - 1] != 's' || w[n - 2] == 's')
        {
            return n;
        }

        if (w[n - 2] != 'e')
        {
            return n - 1;
        }

        switch (w[n - 3])
        {
            case 'i' when n > 5:
                w[n - 3] = 'y';
                return n - 2;
            case 'o':
                return n - 2;
            case 'v' when w[n - 4] is not ('i' or 'o'):
                w[n - 3] = 'f';
                return n - 2;
            default:
                return n - 1;
        }
    }

    /// <summary>Folds letter by letter; -1 when a character is of a script that <see cref="FoldedLetters"/> lacks.</summary>
    private static int TryFold(ReadOnlySpan<char> name, Span<char> room, out int hash, out bool plural)
    {
        // Held here, as all names of the table pass through this loop at each start.
        string latin = FoldedLetters.Latin;
        uint mixed = NameHash.Start;
        int length = 0;
        bool blank = false;
        (hash, plural) = (0, false);
        for (int i = 0; i < name.Length; i++)
        {
            char raw = name[i];
            char c = raw < latin.Length ? latin[raw] : FoldedLetters.Of(raw);
            if (c > FoldedLetters.Opens)
            {
                if (blank)
                {
                    plural |= room[length - 1] == 's';
                    room[length++] = ' ';
                    mixed = NameHash.Add(mixed, ' ');
                    blank = false;
                }

                room[length++] = c;
                mixed = NameHash.Add(mixed, c);
            }
            else if (c == FoldedLetters.Break)
            {
                blank = length > 0;
            }
            else if (c != FoldedLetters.Gone)
            {
                // Too few to be quick about: more than one letter, or a %.
                int before = length;
                plural |= length > 0 && room[length - 1] == 's';
                if (c == '%')
                {
                    PutPercent(room, ref length, ref blank);
                }
                else if (!TryOpen(raw, room, ref length, ref blank))
                {
                    return -1;
                }

                for (int at = before; at < length; at++)
                {
                    mixed = NameHash.Add(mixed, room[at]);
                }
            }
        }

        plural |= length > 0 && room[length - 1] == 's';
        hash = NameHash.End(mixed);
        return length;
    }

    /// <summary>Adds a %: "70 %" is "70%".</summary>
    private static void PutPercent(Span<char> room, ref int length, ref bool blank)
    {
        if (blank && !char.IsDigit(room[length - 1]))
        {
            room[length++] = ' ';
        }

        room[length++] = '%';
        blank = false;
    }

    /// <summary>Adds the letters of one that opens; false when it is of no script here.</summary>
    private static bool TryOpen(char raw, Span<char> room, ref int length, ref bool blank)
    {
        Span<char> several = stackalloc char[3];
        int letters = FoldedLetters.Several(raw, several);
        for (int i = 0; i < letters; i++)
        {
            if (several[i] == FoldedLetters.Break)
            {
                blank = true;
                continue;
            }

            if (blank)
            {
                room[length++] = ' ';
            }

            room[length++] = several[i];
            blank = false;
        }

        return letters > 0;
    }

    /// <summary>Folds any script.</summary>
    private static string FoldAny(string name)
    {
        StringBuilder b = new(name.Length);
        bool blank = false;
        foreach (char raw in name.Normalize(NormalizationForm.FormKD))
        {
            // Only Latin accents go: the marks of kana make another letter.
            if (raw is >= '\u0300' and <= '\u036F' or '\u2019' or '\'')
            {
                continue;
            }

            char c = char.ToLowerInvariant(raw);
            if (!char.IsLetterOrDigit(c) && c is not ('%' or '\u3099' or '\u309A' or 'ー'))
            {
                blank = b.Length > 0;
                continue;
            }

            if (blank)
            {
                // "70 %" is "70%".
                _ = c == '%' && char.IsDigit(b[^1]) ? b : b.Append(' ');
                blank = false;
            }

            _ = c switch
            {
                'œ' => b.Append("oe"),
                'æ' => b.Append("ae"),
                'ß' => b.Append("ss"),
                _ => b.Append(c),
            };
        }

        return b.ToString();
    }
}
