using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>What is done to a food, told behind its amount without a comma, as kitchens jot it: "onions 3 diced", "parsley 1 bunch chopped", "Butter 200 g zerlassen", "cream 1 l whipped".</summary>
internal static class WorkBehind
{
    private static readonly System.Buffers.SearchValues<char> Parting = System.Buffers.SearchValues.Create(",:;(+/");

    private const int MostLoose = 3;
    private static readonly System.Buffers.SearchValues<char> Marks = System.Buffers.SearchValues.Create(",;(/%:");

    // What keeps a food makes another of it, whether or not our table holds that one.
    private static readonly WordList Kept = new("smoked", "dried", "cured", "salted", "candied", "pickled", "tinned", "canned", "frozen", "geräuchert", "getrocknet", "gepökelt", "gesalzen", "kandiert", "eingelegt", "gefroren", "tiefgekühlt");

    // Behind these stands another amount, another food, or what the food is for.
    private static readonly WordSet Joints = new(anyCase: true, "and or plus per for to of with in as at from each und oder je pro für zu von mit aus et ou par pour de du des avec en y o u por para con da di e a al".Split(' '));

    /// <summary>True when the words behind an amount say how its food is worked, whatever the unit; of what is weighed and measured, also when they are a few loose words that name no food ("whipped", "full fat"). Of a food nobody knows they may be anything.</summary>
    public static bool Tells(ReadOnlySpan<char> rest, Measure m, string lang)
    {
        if (m.Unit is null || rest.Length < 3 || !char.IsLetter(rest[0]) || rest.IndexOfAnyInRange('0', '9') >= 0 || rest.ContainsAny(Marks))
        {
            return false;
        }

        string words = rest.ToString();
        return Only(words, lang) || m.Unit.Kind is "mass" or "volume" && Loose(words, lang);
    }

    /// <summary>"bauch 10kg schwarte einschneiden": in the small letters of a note, a weight glued to its unit, and behind it a verb of work, whatever the food. "add 200g gruyere" opens with one, and "then 12g salt" ends with a food.</summary>
    public static bool Jotted(string t, int at, Measure m, ReadOnlySpan<char> rest, string lang) =>
        m.Unit is { Kind: "mass" or "volume" } && at > 3 && char.IsLower(t[0]) && m.Number.End < t.Length && char.IsLetter(t[m.Number.End]) && rest.Length is > 3 and < 32 && rest.Count(' ') < 3 && char.IsLower(rest[0]) && rest.IndexOfAnyInRange('0', '9') < 0 && !rest.ContainsAny(Marks)
        && t.AsSpan(0, at).Trim() is var food && food.Count(' ') < 2 && food.IndexOfAny(Parting) < 0 && !Joints.Contains(food[..(food.IndexOf(' ') is > 0 and var gap ? gap : food.Length)]) && !Joints.Contains(rest[..(rest.IndexOf(' ') is > 0 and var word ? word : rest.Length)])
        && rest.ToString() is var told && FoodIds.Match(told, lang) is null && FoodIds.Match(told[(told.LastIndexOf(' ') + 1)..], lang) is null && Operations.In(told, lang).Count > 0 && Operations.In(food.ToString(), lang).Count == 0;

    /// <summary>"onions 3 diced": takes the count and leaves the food with its work behind a comma; null for any other line.</summary>
    public static string? Count(string s, string lang, Draft d)
    {
        int at = CountBehind.At(s);
        int from = at < 0 ? s.Length : at;
        while (from < s.Length && !char.IsLetter(s[from]))
        {
            from++;
        }

        // "2 to 3 diced": the letters of a range are no work.
        if (at > 0 && from < s.Length && !Only(s[from..], lang) && Numbers.Range(s, at, lang) is { } n)
        {
            from = Places.Skip(s, n.End);
        }

        return at > 0 && from + 2 < s.Length && s[from - 1] == ' ' && Only(s[from..], lang) && CountBehind.Of(s, at, lang) is { } count && Places.Skip(s, count.End) == from ? $"{CountBehind.Set(s, at, count, d)}, {s[from..]}" : null;
    }

    /// <summary>"250 ml milk warmed", "Zwiebeln gehackt": work behind the name of a food, where the two together are no other food ("salmon smoked" is no salmon).</summary>
    public static void OffName(Draft d, string lang)
    {
        if (lang is not ("en" or "de") || d.Food.Length < 7)
        {
            return;
        }

        for (int at = d.Food.IndexOf(' '); at > 2; at = d.Food.IndexOf(' ', at + 1))
        {
            string tail = d.Food[(at + 1)..];
            if (!Only(tail, lang) || FoodIds.Match(d.Food[..at], lang) is not { } bare)
            {
                continue;
            }

            bool other = FoodIds.Match(d.Food, lang) is { } whole && whole.Id != bare.Id || FoodIds.Match($"{tail} {d.Food[..at]}", lang) is { } turned && turned.Id != bare.Id;
            if (!other && !Kept.In(tail))
            {
                d.Food = d.Food[..at];
                d.Preparation = d.Preparation is null ? tail : tail + ", " + d.Preparation;
                d.Tokens?.Add(new ReadToken(tail, "preparation", tail));
            }

            return;
        }
    }

    /// <summary>Nothing but work, how finely, and what joins two of them.</summary>
    internal static bool Only(string words, string lang)
    {
        bool worked = false;
        for (int i = 0; i < words.Length; i = Places.Skip(words, i))
        {
            int end = Places.WordEnd(words, i);
            string word = words[i..end];
            if (Lexicon.Longest("prep", words, i, 3, lang, out int behind) is not null)
            {
                worked = true;
                i = behind;
            }
            else if (Done(word, lang) && FoodIds.Match(word, lang) is null)
            {
                worked = true;
                i = end;
            }
            else if (i > 0 && (word is "&" or "+" || word.Equals(Conjunction.Of(lang), StringComparison.OrdinalIgnoreCase)) || How(word, lang))
            {
                i = end;
            }
            else
            {
                return false;
            }
        }

        return worked;
    }

    /// <summary>A word in the form of work done: "separated", "blanchis", "gerebelt", "trinchado", "sbollentati".</summary>
    private static bool Done(string word, string lang) => word.Length > 4 && lang switch
    {
        "en" => word is [.., not 'e', 'e', 'd'],
        "fr" => word is [.., 'é'] or [.., 'é', 'e' or 's'] or [.., 'é', 'e', 's'],
        "de" => word.Length > 6 && word is [.., 't'] or [.., 'e', 'n'] && (word.StartsWith("ge", StringComparison.Ordinal) || Array.Exists(Parted, p => word.StartsWith(p, StringComparison.Ordinal))),
        "es" => word is [.., 'a' or 'i', 'd', 'o' or 'a'] or [.., 'a' or 'i', 'd', 'o' or 'a', 's'],
        "it" => word is [.., 'a' or 'i' or 'u', 't', 'o' or 'a' or 'i' or 'e'],
        _ => false,
    };

    private static readonly string[] Parted = ["ausge", "abge", "ange", "aufge", "einge", "durchge", "vorge", "kleinge", "entkern", "enthäut", "verquirl"];

    private static bool How(string word, string lang) => lang switch
    {
        "en" => word.EndsWith("ly", StringComparison.Ordinal),
        "fr" => word.EndsWith("ment", StringComparison.Ordinal),
        "de" => Manner.Is(word),
        "es" or "it" => word.EndsWith("mente", StringComparison.Ordinal),
        _ => false,
    };

    private static bool Loose(string words, string lang) =>
        words.AsSpan().Count(' ') < MostLoose && words.Length < 32 && !words.EndsWith('.') && !Joints.Contains(words.AsSpan(0, Places.WordEnd(words, 0))) && FoodIds.Match(words, lang) is null && words.AsSpan().LastIndexOf(' ') is var last && FoodIds.Match(words[(last + 1)..], lang) is null;
}
