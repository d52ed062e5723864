using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>What is done to a food, told behind its amount without a comma, as kitchens jot it: "onions 3 diced", "parsley 1 bunch chopped", "Butter 200 g zerlassen", "cream 1 l whipped".</summary>
internal static class WorkBehind
{
    private const int MostLoose = 3;
    private const int MostCounted = 36;

    // Behind these stands another amount, another food, or what the food is for.
    private static readonly WordSet Joints = new(anyCase: true, "and or plus per for to of with in as at from each und oder je pro für zu von mit aus et ou par pour de du des avec en y o u por para con da di e a al".Split(' '));

    /// <summary>True when the food before the amount is known and the words behind it say how it is worked, whatever the unit; of weighed and measured foods, also when they are a few loose words that name no food ("whipped", "full fat").</summary>
    public static bool Is(string food, ReadOnlySpan<char> rest, Measure m, string lang)
    {
        if (m.Unit is null || rest.Length < 3 || !char.IsLetter(rest[0]) || rest.IndexOfAnyInRange('0', '9') >= 0 || rest.ContainsAny(",;(/%:"))
        {
            return false;
        }

        string words = rest.ToString();
        return (Only(words, lang) || m.Unit.Kind is "mass" or "volume" && Loose(words, lang)) && FoodIds.Match(food, lang) is not null;
    }

    /// <summary>"onions 3 diced": takes the count and leaves the food with its work behind a comma; null for any other line.</summary>
    public static string? Count(string s, string lang, Draft d)
    {
        int at = s.AsSpan().IndexOfAnyInRange('1', '9');
        if (at < 4 || s[at - 1] != ' ' || !char.IsLetter(s[at - 2]))
        {
            return null;
        }

        int end = at + 1 < s.Length && char.IsAsciiDigit(s[at + 1]) ? at + 2 : at + 1;
        int n = int.Parse(s.AsSpan(at, end - at), System.Globalization.CultureInfo.InvariantCulture);
        string food = s[..(at - 1)];
        if (n > MostCounted || end + 3 > s.Length || s[end] != ' ' || !Only(s[(end + 1)..], lang) || BackAmount.Typed(food) || FoodIds.Match(food, lang) is not { } match || NeverCounted.Is(match, n) || NeverCounted.Poured(food, lang))
        {
            return null;
        }

        d.Amount = n;
        d.Tokens?.Add(new ReadToken(s[at..end], "amount", s[at..end]));
        return $"{food}, {s[(end + 1)..]}";
    }

    /// <summary>Nothing but work, how finely, and what joins two of them.</summary>
    private static bool Only(string words, string lang)
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
            else if (i > 0 && word.Equals(Conjunction.Of(lang), StringComparison.OrdinalIgnoreCase) || How(word, lang))
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
        "de" => word.Length > 6 && word.StartsWith("ge", StringComparison.Ordinal) && word is [.., 't'] or ['g', 'e', .., 'e', 'n'],
        "es" => word is [.., 'a' or 'i', 'd', 'o' or 'a'] or [.., 'a' or 'i', 'd', 'o' or 'a', 's'],
        "it" => word is [.., 'a' or 'i' or 'u', 't', 'o' or 'a' or 'i' or 'e'],
        _ => false,
    };

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
