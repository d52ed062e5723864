using System.Buffers;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Raised figures behind a food and the words they lead to at the foot of the card: "8 g leaf gelatine¹ … ¹ or 4 g agar".</summary>
internal sealed class Footnotes
{
    private static readonly SearchValues<char> Marks = SearchValues.Create("¹²³⁴⁵⁶⁷⁸⁹");
    // Few cards have any.
    private Dictionary<int, char>? _lines;
    private Dictionary<char, string>? _words;

    /// <summary>True when no footnote was found.</summary>
    public bool IsEmpty => _words is null || _lines is null;

    /// <summary>A line of a list without its raised figure, which is remembered.</summary>
    public static string Strip(string s, int line, Footnotes notes)
    {
        int at = Mark(s);
        if (at < 0)
        {
            return s;
        }

        (notes._lines ??= []).TryAdd(line, s[at]);
        return Bare(s);
    }

    /// <summary>The line without its raised figures: all at once, so that a card read again has none left.</summary>
    public static string Bare(string s)
    {
        for (int at = Mark(s); at >= 0; at = Mark(s))
        {
            s = s.Remove(at, 1);
        }

        return s;
    }

    private static int Mark(string s)
    {
        int at = s.AsSpan().IndexOfAny(Marks);
        while (at >= 0 && Front(s, at))
        {
            at = s.AsSpan(at + 1).IndexOfAny(Marks) is var next and >= 0 ? at + 1 + next : -1;
        }

        if (at < 1 || !char.IsLetter(s[at - 1]) && s[at - 1] is not (')' or ' '))
        {
            return -1;
        }

        // "100 cm³" is a measure, and a figure inside a word is no mark.
        bool ends = at + 1 >= s.Length || !char.IsLetterOrDigit(s[at + 1]) && s[at + 1] is not ('/' or '\u2044');
        return !ends || at > 1 && s[at - 1] == 'm' && s[at - 2] is 'c' or 'd' or ' ' or 'm' ? -1 : at;
    }

    /// <summary>"- ¹ 2 g": a figure before the first word stands behind no food.</summary>
    private static bool Front(string s, int at)
    {
        while (at > 0 && !char.IsLetterOrDigit(s[at - 1]))
        {
            at--;
        }

        return at == 0;
    }

    /// <summary>Takes a footnote that names another food; false for any other sentence.</summary>
    public static bool Take(string s, Footnotes notes)
    {
        // Words that no line leads to stay a sentence.
        if (!Marks.Contains(s[0]) || notes._lines?.ContainsValue(s[0]) != true)
        {
            return false;
        }

        string words = s[1..].Trimmed(" ).:");
        foreach (string or in (ReadOnlySpan<string>)["or ", "ou ", "oder ", "o ", "oppure "])
        {
            if (words.StartsWith(or, StringComparison.OrdinalIgnoreCase))
            {
                return (notes._words ??= []).TryAdd(s[0], words[or.Length..].Trim());
            }
        }

        return false;
    }

    /// <summary>The other food a line's figure leads to; null when none.</summary>
    public string? For(int line) => _lines is not null && _words is not null && _lines.TryGetValue(line, out char mark) ? _words.GetValueOrDefault(mark) : null;
}
