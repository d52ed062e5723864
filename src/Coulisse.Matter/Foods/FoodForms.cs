namespace Coulisse.Matter.Foods;

/// <summary>Sends the forms of a name in one language to the same key: plurals and the endings of adjectives. Rough on purpose; a key that two foods share names neither.</summary>
public static class FoodForms
{
    private const int ShortestWord = 4;

    /// <summary>The key of a folded name; the name itself in a language without forms here.</summary>
    /// <param name="folded">Folded by <see cref="FoodName.Fold"/>.</param>
    /// <param name="language">ISO 639-1 code.</param>
    public static string Key(string folded, string language)
    {
        if (language == "ja")
        {
            return Hiragana(folded);
        }

        if (language is not ("fr" or "de" or "es" or "it"))
        {
            return folded;
        }

        string[] words = folded.Split(' ');
        for (int i = 0; i < words.Length; i++)
        {
            words[i] = language switch
            {
                "fr" => French(words[i], i == 0),
                "de" => German(words[i], i == words.Length - 1),
                "es" => Spanish(words[i], i == 0),
                _ => Italian(words[i]),
            };
        }

        return string.Join(' ', words);
    }

    /// <summary>"poireaux", "pommes": s and x go; behind the first word, which keeps its gender, so does the e of the feminine.</summary>
    private static string French(string w, bool first)
    {
        if (w.Length < ShortestWord)
        {
            return w;
        }

        w = w[^1] is 's' or 'x' && w[^2] != 's' ? w[..^1] : w;
        w = w switch { "blanche" => "blanc", "fraiche" => "frai", "seche" => "sec", "douce" => "doux", "grosse" => "gro", "nouvelle" => "nouveau", "mur" or "mure" => "mur", _ => w };
        return !first && w.Length > ShortestWord && w[^1] == 'e' ? w[..^1] : w;
    }

    /// <summary>"Zwiebeln", "rote Zwiebeln", "roter Zwiebel", "Eier": the plural n behind e, l and r; the endings of what stands before the noun.</summary>
    private static string German(string w, bool last)
    {
        if (w.EndsWith("eier", StringComparison.Ordinal))
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
    private static string Spanish(string w, bool first)
    {
        if (w.Length < ShortestWord)
        {
            return w;
        }

        if (w.EndsWith("ces", StringComparison.Ordinal))
        {
            return w[..^3] + "z";
        }

        if (w.EndsWith("es", StringComparison.Ordinal) && w[^3] is 'n' or 'l' or 'r' or 'd' or 'j')
        {
            w = w[..^2];
        }
        else if (w[^1] == 's')
        {
            w = w[..^1];
        }

        // "carne" and "tomate" keep their e only where no plural could have put it there.
        w = w.Length > 3 && w[^1] == 'e' && w[^2] is 'n' or 'l' or 'r' or 'd' or 'j' ? w[..^1] : w;
        return !first && w.Length > ShortestWord && w[^1] is 'a' or 'o' ? w[..^1] : w;
    }

    /// <summary>"cipolle rosse", "tuorli", "acciughe": the last vowel goes; a c or g that sounds hard stays apart from a soft one ("pesca", "pesce").</summary>
    private static string Italian(string w)
    {
        if (w.Length < 3 || w[^1] is not ('a' or 'e' or 'i' or 'o'))
        {
            return w;
        }

        bool hard = w[^1] is 'a' or 'o' && w[^2] is 'c' or 'g';
        string stem = w[..^1];
        stem = stem.Length > 2 && stem[^1] == 'i' ? stem[..^1] : stem;
        return stem[^1] == 'h' && stem[^2] is 'c' or 'g' ? stem[..^1] + "k" : hard ? stem + "k" : stem;
    }

    /// <summary>ニンジン and にんじん are one word.</summary>
    private static string Hiragana(string folded)
    {
        Span<char> kana = folded.Length <= 80 ? stackalloc char[folded.Length] : new char[folded.Length];
        int n = 0;
        foreach (char c in folded)
        {
            if (c != ' ')
            {
                kana[n++] = c is >= '\u30A1' and <= '\u30F6' ? (char)(c - 0x60) : c;
            }
        }

        return new string(kana[..n]);
    }
}
