using System.Text;

namespace Coulisse.Views.Papers;

/// <summary>Names made fit for files, in any script.</summary>
internal static class Slug
{
    private const int Longest = 60;
    private static readonly string[] Hanging = ["with", "without", "no", "not", "for", "of", "and", "on", "in", "sans", "ohne", "sin", "senza"];

    public static string Of(string text)
    {
        StringBuilder b = new();
        foreach (Rune rune in text.ToLowerInvariant().EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune))
            {
                b.Append(rune.ToString());
            }
            else if (b.Length > 0 && b[^1] != '-')
            {
                b.Append('-');
            }
        }

        return Short(b.ToString().Trim('-'), Longest) is { Length: > 0 } slug ? slug : "sheet";
    }

    /// <summary>Whole words of a slug up to a length. A word is never cut: "without gluten" must not become "with", nor end in the "without" of what it is without.</summary>
    /// <param name="slug">As <see cref="Of"/> makes it.</param>
    /// <param name="most">Most letters; a single longer word is cut all the same.</param>
    public static string Short(string slug, int most)
    {
        if (slug.Length <= most)
        {
            return slug;
        }

        List<string> words = [];
        foreach (string word in slug.Split('-'))
        {
            if (string.Join('-', words.Append(word)).Length > most)
            {
                break;
            }

            words.Add(word);
        }

        while (words.Count > 1 && Hanging.Contains(words[^1]))
        {
            words.RemoveAt(words.Count - 1);
        }

        return words.Count == 0 ? slug[..most] : string.Join('-', words);
    }
}
