namespace Coulisse.Cards.Words;

/// <summary>Where words begin and end.</summary>
internal static class Places
{
    /// <summary>The letters that stand at a place in a row; none when another sign stands there.</summary>
    public static string Letters(string s, int from)
    {
        int end = from;
        while (end < s.Length && char.IsLetter(s[end]))
        {
            end++;
        }

        return s[from..end];
    }

    /// <summary>End of the word that begins here: letters, digits, hyphen and apostrophe inside; a single mark is its own word.</summary>
    public static int WordEnd(string s, int i)
    {
        int start = i;
        while (i < s.Length && (char.IsLetterOrDigit(s[i]) || char.GetUnicodeCategory(s[i]) == System.Globalization.UnicodeCategory.NonSpacingMark || (i > start && s[i] is '-' or '\'' && i + 1 < s.Length && char.IsLetter(s[i + 1]))))
        {
            i++;
        }

        return i == start && i < s.Length ? i + 1 : i;
    }

    /// <summary>First place from here that is not a space.</summary>
    public static int Skip(string s, int i)
    {
        while (i < s.Length && s[i] == ' ')
        {
            i++;
        }

        return i;
    }

    /// <summary>The words without the marks around them; "38 % m.g." keeps the stop of its abbreviation.</summary>
    public static string Bare(string s)
    {
        ReadOnlySpan<char> t = s.AsSpan().Trim(" ,:;-");
        bool abbreviation = t.Length > 3 && t[^1] == '.' && t[^3] == '.';
        t = abbreviation ? t : t.Trim(" ,.:;-");
        return t.Length == s.Length ? s : t.ToString();
    }

    /// <summary>The words without any of these signs around them; the same string when it has none.</summary>
    public static string Trimmed(this string s, string signs) => s.AsSpan().Trim(signs) is var t && t.Length == s.Length ? s : t.ToString();

    /// <summary>The words without any of these signs behind them.</summary>
    public static string TrimmedEnd(this string s, string signs) => s.AsSpan().TrimEnd(signs) is var t && t.Length == s.Length ? s : t.ToString();

    /// <summary>The words without any of these signs before them.</summary>
    public static string TrimmedStart(this string s, string signs) => s.AsSpan().TrimStart(signs) is var t && t.Length == s.Length ? s : t.ToString();

    /// <summary>True for kana, kanji and their marks.</summary>
    public static bool IsJapanese(char c) => c is (>= '\u3040' and <= '\u30FF') or (>= '\u4E00' and <= '\u9FFF') or '々' or '〆';

    /// <summary>True when the text begins like one of these.</summary>
    public static bool Begins(ReadOnlySpan<char> s, ReadOnlySpan<string> words)
    {
        foreach (string w in words)
        {
            if (s.StartsWith(w, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True when the text ends with one of these, as words of their own.</summary>
    public static bool Ends(string s, params ReadOnlySpan<string> words)
    {
        foreach (string w in s.Length > 0 ? words : [])
        {
            if (s[^1] == w[^1] && s.EndsWith(w, StringComparison.Ordinal) && (s.Length == w.Length || !char.IsLetter(s[s.Length - w.Length - 1])))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True when the text ends with this word, on its own and in whatever case.</summary>
    public static bool EndsIn(ReadOnlySpan<char> s, string word) =>
        s.EndsWith(word, StringComparison.OrdinalIgnoreCase) && (s.Length == word.Length || !char.IsLetter(s[s.Length - word.Length - 1]));

    /// <summary>True when the text ends with one of these words, on its own and in whatever case.</summary>
    public static bool EndsIn(ReadOnlySpan<char> s, ReadOnlySpan<string> words)
    {
        foreach (string w in words)
        {
            if (EndsIn(s, w))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True where the text opens with a word: a Japanese one need not end there.</summary>
    public static bool Opens(string s, string word) => IsJapanese(word[0]) ? s.StartsWith(word, StringComparison.Ordinal) : WordAt(s, 0, word);

    /// <summary>True when a word stands at a place on its own.</summary>
    public static bool WordAt(string s, int i, string word) =>
        i + word.Length <= s.Length
        && (s[i] | word[0]) is var both && (both >= 128 || ((s[i] ^ word[0]) & ~0x20) == 0)
        && string.Compare(s, i, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) == 0
        && (i + word.Length == s.Length || !char.IsLetterOrDigit(s[i + word.Length]))
        && (i == 0 || !char.IsLetterOrDigit(s[i - 1]));

    /// <summary>The place right behind the first of these words that stands at a place on its own; 0 when none does.</summary>
    public static int Behind(string s, int i, params ReadOnlySpan<string> words)
    {
        foreach (string w in words)
        {
            if (WordAt(s, i, w))
            {
                return i + w.Length;
            }
        }

        return 0;
    }

    /// <summary>Place of a whole word; -1 when it is not there.</summary>
    public static int FindWord(string s, string word, int from = 0)
    {
        int at = from;
        while (at < s.Length && (at = s.IndexOf(word, at, StringComparison.OrdinalIgnoreCase)) >= 0)
        {
            if (WordAt(s, at, word) || IsJapanese(word[0]) || IsJapanese(word[^1]))
            {
                return at;
            }

            at++;
        }

        return -1;
    }

    /// <summary>True when any of the words stands in the text.</summary>
    public static bool HasAny(string s, params ReadOnlySpan<string> words)
    {
        foreach (string w in words)
        {
            if (FindWord(s, w) >= 0)
            {
                return true;
            }
        }

        return false;
    }
}
