using System.Collections.Immutable;
using Coulisse.Cards.Words;
using Coulisse.Matter.Reference;

namespace Coulisse.Cards.Reading;

/// <summary>Finds the verbs of work in a sentence and the operation each names; a word of several rows goes to the row whose foods the sentence names.</summary>
internal static class Operations
{
    private const int MostWords = 5;
    // No word of our table is nearly as long.
    private const int LongestKey = 256;
    private const string NoWork = "-";
    private static readonly WordSet Small = new(anyCase: false, "add", "set_aside", "mix", "serve", "carry", "cook_unsaid", "label");
    // Rows of one kind of food only: "open the bags" is no oyster.
    private static readonly WordSet Narrow = new(anyCase: false, "open_oysters", "open_scallops", "clean_mussels", "pick_crab", "peel_prawns", "shell_pods", "shell_boiled_eggs", "shell_lobster", "scale_and_gut", "joint_bird", "debone_bird", "stuff", "turn_vegetables", "crack_eggs", "top_and_tail", "rest_meat");
    private static readonly Lazy<WordTable<Row>> Words = new(LoadWords);

    /// <summary>Words of work in the order of the sentence, with their places, whether they are verbs there or names.</summary>
    public static List<(int At, string Id)> In(string s, string lang) => Found(s, lang, null);

    /// <summary>The verbs among them, and where each word ends.</summary>
    public static List<(int At, string Id)> Verbs(string s, string lang, List<int> ends)
    {
        List<(int At, string Id)> all = Found(s, lang, ends);
        int verbEnd = -1;
        for (int k = all.Count - 1; k >= 0; k--)
        {
            if (Undone.At(s, all[k].At, lang))
            {
                all.RemoveAt(k);
                ends.RemoveAt(k);
            }
        }

        for (int k = 0; lang == "en" && k < all.Count; k++)
        {
            if (NounSense.Is(s, all[k].At, ends[k], verbEnd) || all[k].Id is "set_gel" or "prove_bulk" && SetSense.Other(s, all[k].At))
            {
                all.RemoveAt(k);
                ends.RemoveAt(k--);
            }
            else
            {
                verbEnd = ends[k];
            }
        }

        return all;
    }

    private static List<(int At, string Id)> Found(string s, string lang, List<int>? ends)
    {
        List<(int, string)> found = [];
        Span<char> buffer = stackalloc char[160];
        WordTable<Row> words = Words.Value;
        int i = 0;
        while (i < s.Length && found.Count < 40)
        {
            if (!char.IsLetter(s[i]))
            {
                i++;
                continue;
            }

            string? best = null;
            int bestEnd = Places.IsJapanese(s[i]) ? i + 1 : Places.WordEnd(s, i);
            if (lang == "ja" && !Places.IsJapanese(s[i]))
            {
                // "170 °Cの油で": no blank parts the letter from the words.
                int latin = i;
                while (latin < bestEnd && !Places.IsJapanese(s[latin]))
                {
                    latin++;
                }

                bestEnd = latin;
            }

            int next = bestEnd;
            if (Places.IsJapanese(s[i]))
            {
                for (int n = Math.Min(8, s.Length - i); n > 1 && best is null; n--)
                {
                    if (Pick(words.Find(s.AsSpan(i, n)), s, lang) is { } id)
                    {
                        best = id;
                        next = i + n;
                    }
                }
            }
            else if (words.MayBegin(s, i))
            {
                int e = i;
                int told = i;
                int n = 0;
                for (int w = 0; w < MostWords && e < s.Length && e - i < 60; w++)
                {
                    e = Places.WordEnd(s, e);
                    int to = Math.Min(e, i + 70);
                    n = Folding.Key(s.AsSpan(told, to - told), buffer, n);
                    told = to;
                    if (n > 0 && Pick(words.Find(buffer[..n]), s, lang) is { } id)
                    {
                        best = id;
                        next = e;
                    }

                    e = Places.Skip(s, e);
                }
            }

            if (best is not null and not NoWork)
            {
                found.Add((i, best));
                ends?.Add(next);
            }

            i = Math.Max(next, i + 1);
        }

        return found;
    }

    /// <summary>The last operation told at or before a place; null when none is.</summary>
    public static string? Before(List<(int At, string Id)> all, int place)
    {
        for (int k = all.Count - 1; k >= 0; k--)
        {
            if (all[k].At <= place)
            {
                return all[k].Id;
            }
        }

        return null;
    }

    /// <summary>In German and Japanese the verb closes the clause: the first that follows a time in its clause; null elsewhere, or where none does.</summary>
    public static string? Behind(List<(int At, string Id)> all, string s, int end, string lang)
    {
        if (lang is not ("de" or "ja"))
        {
            return null;
        }

        int stop = end;
        while (stop < s.Length && s[stop] is not (',' or ';' or '、' or '。' or '(') && !(s[stop] == '.' && stop > end))
        {
            stop++;
        }

        foreach ((int at, string id) in all)
        {
            if (at >= end && at < stop)
            {
                return Small.Contains(id) && id != "cook_unsaid" ? null : id;
            }
        }

        return null;
    }

    /// <summary>True when one of these operations is among them.</summary>
    public static bool Any(List<(int At, string Id)> all, params ReadOnlySpan<string> ids)
    {
        foreach ((int _, string id) in all)
        {
            if (ids.Contains(id))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Each operation once, in order.</summary>
    public static ImmutableArray<string> Ids(List<(int At, string Id)> all)
    {
        ImmutableArray<string>.Builder ids = ImmutableArray.CreateBuilder<string>(all.Count);
        foreach ((int _, string id) in all)
        {
            if (!ids.Contains(id))
            {
                ids.Add(id);
            }
        }

        return ids.DrainToImmutable();
    }

    /// <summary>The main operation: the first that is not a mere "add" or "mix"; those only when nothing else is there.</summary>
    public static string? Main(List<(int At, string Id)> all)
    {
        foreach ((int _, string id) in all)
        {
            if (!Small.Contains(id))
            {
                return id;
            }
        }

        return all.Count > 0 ? all[0].Id : null;
    }

    /// <summary>True for a mere "add" or "mix".</summary>
    public static bool IsSmall(string id) => Small.Contains(id);

    /// <summary>The operation of a verb, and the foods that bind the verb to it.</summary>
    private sealed class Row(string id, string foods)
    {
        private string[]? _foods;

        public string Id => id;

        /// <summary>The foods, told apart when a text first has the verb: most verbs of the table are in no card.</summary>
        public string[] Foods => _foods ??= Apart(foods);

        private static string[] Apart(string foods)
        {
            string[] apart = foods.Split(", ", StringSplitOptions.RemoveEmptyEntries);
            for (int i = 0; i < apart.Length; i++)
            {
                apart[i] = apart[i].TrimEnd('s');
            }

            return apart;
        }
    }

    private static WordTable<Row> LoadWords()
    {
        WordTable<Row> words = new();
        Span<char> key = stackalloc char[LongestKey];
        foreach (string[] r in ReferenceTable.Load("reading/operations.tsv").Rows)
        {
            words.Add(Places.IsJapanese(r[0][0]) ? r[0] : key[..Folding.Key(r[0], key)], r[0], r[1], new Row(r[2], r[3]));
        }

        return words;
    }

    private static string? Pick(Meaning<Row>? meanings, string s, string lang)
    {
        string? first = null;
        for (Meaning<Row>? m = meanings; m is not null; m = m.Next)
        {
            if (m.Lang != lang)
            {
                continue;
            }

            Row r = m.Value;
            first ??= Narrow.Contains(r.Id) ? null : r.Id;
            foreach (string food in r.Foods)
            {
                if (s.Contains(food, StringComparison.OrdinalIgnoreCase))
                {
                    return r.Id;
                }
            }
        }

        return first;
    }
}
