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
        int length = TryFold(name, room);
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
        int length = TryFold(name, room);
        return length < 0 ? FoldAny(new string(name)) : room[..length];
    }

    /// <summary>A folded name's singular without a string of its own; what was given, as long as it was, when no word has a plural ending.</summary>
    /// <param name="folded">Folded name.</param>
    /// <param name="room">As long as the name.</param>
    internal static ReadOnlySpan<char> Singular(ReadOnlySpan<char> folded, Span<char> room)
    {
        if (!AnyEndsInS(folded))
        {
            return folded;
        }

        int length = 0;
        for (int start = 0; start <= folded.Length; start++)
        {
            int blank = folded[start..].IndexOf(' ');
            int end = blank < 0 ? folded.Length : start + blank;
            length += One(folded[start..end], room[length..]);
            if (blank >= 0)
            {
                room[length++] = ' ';
            }

            start = end;
        }

        // Every change makes it shorter.
        return length == folded.Length ? folded : room[..length];
    }

    private static bool AnyEndsInS(ReadOnlySpan<char> folded)
    {
        for (int i = 0; i < folded.Length; i++)
        {
            if (folded[i] == 's' && (i == folded.Length - 1 || folded[i + 1] == ' '))
            {
                return true;
            }
        }

        return false;
    }

    private static int One(ReadOnlySpan<char> w, Span<char> to)
    {
        w.CopyTo(to);
        if (w.Length <= 3 || w[^1] != 's' || w[^2] == 's')
        {
            return w.Length;
        }

        if (w.EndsWith("ies") && w.Length > 5)
        {
            to[w.Length - 3] = 'y';
            return w.Length - 2;
        }

        if (w.EndsWith("oes"))
        {
            return w.Length - 2;
        }

        if (w.EndsWith("ves") && !w.EndsWith("ives") && !w.EndsWith("oves"))
        {
            to[w.Length - 3] = 'f';
            return w.Length - 2;
        }

        return w.Length - 1;
    }

    /// <summary>Folds letter by letter; -1 when a character is of a script that <see cref="FoldedLetters"/> lacks.</summary>
    private static int TryFold(ReadOnlySpan<char> name, Span<char> room)
    {
        // Held here, as all names of the table pass through this loop at each start.
        string latin = FoldedLetters.Latin;
        int length = 0;
        bool blank = false;
        for (int i = 0; i < name.Length; i++)
        {
            char raw = name[i];
            char c = raw < latin.Length ? latin[raw] : FoldedLetters.Of(raw);
            if (c > FoldedLetters.Opens)
            {
                if (blank)
                {
                    room[length++] = ' ';
                    blank = false;
                }

                room[length++] = c;
            }
            else if (c == FoldedLetters.Break)
            {
                blank = length > 0;
            }
            else if (c == '%')
            {
                // "70 %" is "70%".
                if (blank && !char.IsDigit(room[length - 1]))
                {
                    room[length++] = ' ';
                }

                room[length++] = c;
                blank = false;
            }
            else if (c == FoldedLetters.Opens && !TryOpen(raw, room, ref length, ref blank))
            {
                return -1;
            }
        }

        return length;
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
