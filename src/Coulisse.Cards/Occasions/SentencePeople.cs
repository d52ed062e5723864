using System.Collections.Immutable;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Occasions;

/// <summary>Who works, of what a sentence says besides its figures: "Ada and two others", "Ada, Ben and Cy", "three cooks", and lower-case names where only a name can stand.</summary>
/// <param name="Names">Everybody; those without a name are numbered.</param>
/// <param name="Named">False where nobody is spoken of and one chef was taken.</param>
/// <param name="Guests">People who can only be guests; null for none.</param>
/// <param name="Unread">What was not understood, as written.</param>
internal sealed record SentencePeople(ImmutableArray<string> Names, bool Named, int? Guests, ImmutableArray<string> Unread)
{
    private const int Most = 50;
    private static readonly HashSet<string> Hands = new(StringComparer.OrdinalIgnoreCase) { "others", "other", "helpers", "helper", "hands", "cooks", "cook", "chefs", "staff", "assistants", "assistant", "commis", "colleagues", "more" };
    private static readonly HashSet<string> Folk = new(StringComparer.OrdinalIgnoreCase) { "people", "persons" };
    private static readonly HashSet<string> Empty = new(StringComparer.OrdinalIgnoreCase)
    {
        "a", "an", "the", "at", "on", "for", "from", "to", "till", "until", "with", "and", "plus", "of", "in", "by", "live", "service", "serve", "served", "serving", "start", "starts", "starting", "is", "are", "us", "we", "cook", "cooks", "cooking", "work", "works", "working", "sharp", "long", "each", "only", "all",
        "guests", "plates", "people", "persons", "sitting", "seated", "around", "about", "next", "this", "coming", "day", "am", "pm", "both", "plated", "there", "will", "be", "help", "helps", "helping",
    };

    private static readonly HashSet<string> Occasions = new(StringComparer.OrdinalIgnoreCase) { "dinner", "lunch", "breakfast", "brunch", "supper", "tea", "wedding", "party", "birthday", "tasting", "event", "class", "demo", "show", "banquet", "reception", "buffet", "menu", "service", "evening", "afternoon", "morning", "night", "noon" };
    private static readonly HashSet<string> Pronouns = new(StringComparer.OrdinalIgnoreCase) { "her", "his", "my", "our", "their", "your", "its", "it", "time", "site", "least", "most", "total", "once", "all", "about", "day", "a", "an", "reserve", "advance", "addition" };
    private static readonly HashSet<string> Particles = new(StringComparer.Ordinal) { "de", "la", "van", "von", "der", "den", "di", "da", "del", "le", "bin", "al", "ter", "ten", "du", "el", "y" };

    /// <summary>True for a word behind "on" or "in" that is no place.</summary>
    public static bool Nobodys(string word) => Pronouns.Contains(word) || Occasions.Contains(word) || Empty.Contains(word);

    /// <summary>The people of a sentence.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="read">Characters that were read as something else.</param>
    /// <param name="counted">The guests are known.</param>
    /// <param name="problems">Where what cannot be goes.</param>
    public static SentencePeople Of(string s, bool[] read, bool counted, List<Problem> problems)
    {
        List<Word> words = Words(s, read);
        List<string> names = [];
        List<string> unread = [];
        int? guests = null;
        int numbered = 0;
        bool follows = false; // the word before was not understood either
        for (int w = 0; w < words.Count; w++)
        {
            Word word = words[w];
            string text = word.Text;
            bool us = w + 2 < words.Count && words[w + 1].Text == "of" && words[w + 2].Text == "us"; // "three of us"
            int? count = char.IsDigit(text[0]) || (!Empty.Contains(text) && char.IsLetter(text[0])) ? Numbers.Single(s, word.Start, "en") is { } n && n.End >= word.End && n.Min == Math.Floor(n.Min) ? n.Count : null : null;
            string next = w + 1 < words.Count && !words[w + 1].Apart ? words[w + 1].Text : "";
            if (count is { } people && (us || Hands.Contains(next) || Folk.Contains(next) || (!char.IsDigit(text[0]) && next.Length == 0 && names.Count > 0 && !word.Apart)))
            {
                w += next.Length > 0 ? 1 : 0;
                if (Folk.Contains(next) && !counted && guests is null)
                {
                    guests = people;
                    continue;
                }

                if (people > Most)
                {
                    problems.Add(new Problem("OCC030", 1, $"{text} {next} are more hands than a kitchen holds.", $"At most {Most} are taken; write who works, for example “Ada and two others”."));
                    continue;
                }

                numbered += people;
                for (int i = 0; i < people; i++)
                {
                    names.Add(FormattableString.Invariant($"Hand {names.Count + 1}"));
                }

                follows = false;
            }
            else if (Empty.Contains(text) || Occasions.Contains(text))
            {
                follows = false;
            }
            else if (count is null && (char.IsUpper(text[0]) || Alone(words, w)))
            {
                string name = text;
                while (w + 1 < words.Count && !words[w + 1].Apart && words[w + 1].Start == words[w].End + 1 && (char.IsUpper(words[w + 1].Text[0]) ? !Occasions.Contains(words[w + 1].Text) : Surname(words, w + 1)))
                {
                    name += " " + words[++w].Text;
                }

                names.Add(name);
                follows = false;
            }
            else
            {
                string one = s[word.Start..word.End];
                if (follows)
                {
                    unread[^1] += " " + one;
                }
                else
                {
                    unread.Add(one);
                }

                follows = true;
            }
        }

        return new SentencePeople(names.Count > 0 ? [.. names] : ["Chef"], names.Count > 0, guests, [.. unread]);
    }

    // "de la Tour": small words before a name that begins with a capital
    private static bool Surname(List<Word> words, int w)
    {
        while (w < words.Count && !words[w].Apart && Particles.Contains(words[w].Text))
        {
            w++;
        }

        return w < words.Count && !words[w].Apart && w > 0 && Particles.Contains(words[w - 1].Text) && char.IsUpper(words[w].Text[0]);
    }

    /// <summary>A lower-case word that only a name can be: alone between two commas or at the end, or joined to so many others.</summary>
    private static bool Alone(List<Word> words, int w)
    {
        if (!words[w].Text.All(c => char.IsLetter(c) || c is '-' or '\''))
        {
            return false;
        }

        bool last = w + 1 == words.Count || words[w + 1].Apart;
        bool first = w == 0 || words[w].Apart || words[w - 1].Text is "and" or "with" or "&" or "plus";
        bool joined = w + 2 < words.Count && words[w + 1].Text is "and" or "plus" or "with" && words[w + 1].Start == words[w].End + 1;
        return first && words[w].Start > 0 && (last || joined);
    }

    private static List<Word> Words(string s, bool[] read)
    {
        List<Word> words = [];
        bool apart = false;
        for (int i = 0; i < s.Length;)
        {
            if (read[i])
            {
                apart = true;
                i++;
            }
            else if (char.IsLetterOrDigit(s[i]))
            {
                int end = Places.WordEnd(s, i);
                words.Add(new Word(s[i..end], i, end, apart));
                apart = false;
                i = end;
            }
            else
            {
                apart |= s[i] is ',' or ';' or '.' or ':' or '(' or ')';
                i++;
            }
        }

        return words;
    }

    private readonly record struct Word(string Text, int Start, int End, bool Apart);
}
