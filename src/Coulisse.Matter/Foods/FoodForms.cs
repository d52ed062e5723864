namespace Coulisse.Matter.Foods;

/// <summary>Sends the forms of a name in one language to the same key: plurals and the endings of adjectives. Rough on purpose; a key that two foods share names neither.</summary>
public static class FoodForms
{
    private const int ShortestWord = 4;

    // Longer than nearly all names, so that the form of one needs no array.
    private const int Short = 128;

    /// <summary>The key of a folded name; the name itself in a language without forms here.</summary>
    /// <param name="folded">Folded by <see cref="FoodName.Fold(string)"/>.</param>
    /// <param name="language">ISO 639-1 code.</param>
    public static string Key(string folded, string language)
    {
        ReadOnlySpan<char> key = Key(folded, language, folded.Length <= Short ? stackalloc char[Short] : new char[folded.Length]);
        return key.SequenceEqual(folded) ? folded : new string(key);
    }

    /// <summary>The key of a folded name without a string of its own.</summary>
    /// <param name="folded">Folded name.</param>
    /// <param name="language">ISO 639-1 code.</param>
    /// <param name="room">As long as the name: no form is longer.</param>
    internal static ReadOnlySpan<char> Key(ReadOnlySpan<char> folded, string language, Span<char> room)
    {
        if (language == "ja")
        {
            return Hiragana(folded, room);
        }

        if (language is not ("fr" or "de" or "es" or "it"))
        {
            return folded;
        }

        int length = 0;
        for (int start = 0; start <= folded.Length; start++)
        {
            int blank = folded[start..].IndexOf(' ');
            int end = blank < 0 ? folded.Length : start + blank;
            ReadOnlySpan<char> word = folded[start..end];
            Span<char> to = room[length..];
            length += language switch
            {
                "fr" => French(word, start == 0, to),
                "de" => Put(German(word, blank < 0), to),
                "es" => Spanish(word, start == 0, to),
                _ => Italian(word, to),
            };
            if (blank >= 0)
            {
                room[length++] = ' ';
            }

            start = end;
        }

        return room[..length];
    }

    /// <summary>"poireaux", "pommes": s and x go; behind the first word, which keeps its gender, so does the e of the feminine.</summary>
    private static int French(ReadOnlySpan<char> w, bool first, Span<char> to)
    {
        if (w.Length < ShortestWord)
        {
            return Put(w, to);
        }

        w = w[^1] is 's' or 'x' && w[^2] != 's' ? w[..^1] : w;
        w = w switch { "blanche" => "blanc", "fraiche" => "frai", "seche" => "sec", "douce" => "doux", "grosse" => "gro", "nouvelle" => "nouveau", "mur" or "mure" => "mur", _ => w };
        return Put(!first && w.Length > ShortestWord && w[^1] == 'e' ? w[..^1] : w, to);
    }

    /// <summary>"Zwiebeln", "rote Zwiebeln", "roter Zwiebel", "Eier": the plural n behind e, l and r; the endings of what stands before the noun.</summary>
    private static ReadOnlySpan<char> German(ReadOnlySpan<char> w, bool last)
    {
        if (w.EndsWith("eier"))
        {
            return w[..^2];
        }

        if (w.Length < ShortestWord)
        {
            return w;
        }

        if (last)
        {
            return w.Length > ShortestWord && w[^1] == 'n' && (w[^2] == 'e' || w[^3..] is "eln" or "ern") ? w[..^1] : w;
        }

        return w.Length > ShortestWord && w[^2..] is "er" or "es" or "en" or "em" ? w[..^2] : w[^1] == 'e' ? w[..^1] : w;
    }

    /// <summary>"limones", "nueces", "cebollas rojas".</summary>
    private static int Spanish(ReadOnlySpan<char> w, bool first, Span<char> to)
    {
        if (w.Length < ShortestWord)
        {
            return Put(w, to);
        }

        if (w.EndsWith("ces"))
        {
            return Put(w[..^3], 'z', to);
        }

        if (w.EndsWith("es") && w[^3] is 'n' or 'l' or 'r' or 'd' or 'j')
        {
            w = w[..^2];
        }
        else if (w[^1] == 's')
        {
            w = w[..^1];
        }

        // "carne" and "tomate" keep their e only where no plural could have put it there.
        w = w.Length > 3 && w[^1] == 'e' && w[^2] is 'n' or 'l' or 'r' or 'd' or 'j' ? w[..^1] : w;
        return Put(!first && w.Length > ShortestWord && w[^1] is 'a' or 'o' ? w[..^1] : w, to);
    }

    /// <summary>"cipolle rosse", "tuorli", "acciughe": the last vowel goes; a c or g that sounds hard stays apart from a soft one ("pesca", "pesce").</summary>
    private static int Italian(ReadOnlySpan<char> w, Span<char> to)
    {
        if (w.Length < 3 || w[^1] is not ('a' or 'e' or 'i' or 'o'))
        {
            return Put(w, to);
        }

        bool hard = w[^1] is 'a' or 'o' && w[^2] is 'c' or 'g';
        ReadOnlySpan<char> stem = w[..^1];
        stem = stem.Length > 2 && stem[^1] == 'i' ? stem[..^1] : stem;
        return stem[^1] == 'h' && stem[^2] is 'c' or 'g' ? Put(stem[..^1], 'k', to) : hard ? Put(stem, 'k', to) : Put(stem, to);
    }

    /// <summary>ニンジン and にんじん are one word.</summary>
    private static ReadOnlySpan<char> Hiragana(ReadOnlySpan<char> folded, Span<char> room)
    {
        int n = 0;
        foreach (char c in folded)
        {
            if (c != ' ')
            {
                room[n++] = c is >= '\u30A1' and <= '\u30F6' ? (char)(c - 0x60) : c;
            }
        }

        return room[..n];
    }

    private static int Put(ReadOnlySpan<char> stem, Span<char> to)
    {
        stem.CopyTo(to);
        return stem.Length;
    }

    private static int Put(ReadOnlySpan<char> stem, char ending, Span<char> to)
    {
        to[stem.Length] = ending;
        return Put(stem, to) + 1;
    }
}
