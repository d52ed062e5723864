using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A label before a line: "Zum Bestreuen: 20 g Mandeln", "Brine: water 50 g". It says what the food is for; the food stands behind it.</summary>
internal static class Labels
{
    private const int Longest = 30;

    /// <summary>Takes the label off; the line itself when it has none.</summary>
    public static string Take(string s, string lang, Draft d)
    {
        int colon = s.IndexOf(':');
        if (colon is < 2 or > Longest || colon + 2 >= s.Length || !char.IsLetter(s[0]) || s.AsSpan(0, colon).IndexOfAnyInRange('0', '9') is var figure && figure >= 0 && !(figure == colon - 1 && s[figure - 1] == ' '))
        {
            return s;
        }

        string label = s[..colon].Trim();
        string rest = s[(colon + 1)..].Trim();
        if (Lexicon.Longest("optional", label, 0, 3, lang, out int whole) is not null && whole >= label.Length && rest.Length > 1)
        {
            // "Optional: 1 tsp chilli flakes"
            d.Optional = true;
            d.Tokens?.Add(new ReadToken(label, "optional", "may be left out"));
            return rest;
        }

        if (Also(label))
        {
            // "Also: 30 g trout roe": one more food, and no name
            return rest;
        }

        bool purpose = (Uses.Begins(label, lang) || Serving(label)) && rest.Length > 1 && (Amounts.At(rest, 0, lang) is not null || rest.AsSpan().IndexOfAnyInRange('0', '9') < 0);
        // "Lieu jaune : 4 pavés": an amount right behind the colon is of what stands before it.
        bool named = !purpose && rest.Length > 2 && char.IsLetter(rest[0]) && Amounts.At(rest, 0, lang) is null && Behind(rest, lang);
        named |= !purpose && Over(label, rest, lang);
        if (!purpose && !named)
        {
            return s;
        }

        d.Use = label;
        d.Tokens?.Add(new ReadToken(label, "use", label));
        return rest;
    }

    /// <summary>"Layer 1: 200 g sponge", "Fisch: 10 Forellen": a label that is no food, and behind it an amount of a food everybody knows. "Lieu jaune : 4 pavés" tells the amount of its label.</summary>
    private static bool Over(string label, string rest, string lang)
    {
        if (rest.Length < 4 || !char.IsAsciiDigit(rest[0]) || Amounts.At(rest, 0, lang) is not { } m || Lexicon.Longest("total", label, 0, 2, lang, out _) is not null || FoodIds.Match(label, lang) is not null)
        {
            return false;
        }

        string food = rest[Math.Min(PartReader.Of(rest, Places.Skip(rest, m.End), lang), rest.Length)..];
        food = food.AsSpan().IndexOfAny(",(;") is > 0 and var stop ? food[..stop].TrimEnd() : food;
        // "Layer 3: 500 ml custard": a numbered label is none, whatever stands behind it.
        return food.Length > 2 && char.IsLetter(food[0]) && !FoodWords.IsPreparation(food, lang) && (char.IsAsciiDigit(label[^1]) && m.Unit is { Kind: "mass" or "volume" } && !BackAmount.Typed(label) || FoodIds.Match(food, lang) is not null || food.IndexOf(' ') is > 2 and var gap && FoodIds.Match(food[..gap], lang) is not null);
    }

    private static readonly HashSet<string> Alsos = new(StringComparer.OrdinalIgnoreCase) { "also", "and", "plus", "in addition", "additionally", "extra", "extras", "aussi", "également", "en plus", "de plus", "et", "außerdem", "zusätzlich", "sowie", "ferner", "und", "además", "también", "más", "inoltre", "anche", "in più", "più" };

    private static bool Also(string label) => Alsos.Contains(label);

    /// <summary>"Plus 40 g parmesan", "Und 20 g Butter": the word that joins a line to the one before, where an amount follows. The line itself when none opens it.</summary>
    public static string Joined(string s)
    {
        int gap = s.Length > 6 ? s.IndexOf(' ') : -1;
        return gap is > 1 and < 12 && char.IsAsciiDigit(s[gap + 1]) && Also(s[..gap]) ? s[(gap + 1)..] : s;
    }

    /// <summary>"For garnish - chopped peanuts", "serve with bread and butter": the label with its colon, so that what stands behind is read as a food and not as a name over a list. The line itself when no such label opens it.</summary>
    public static string Coloned(string s, string lang)
    {
        if (s.Length is < 12 or > 90 || !char.IsLetter(s[0]) || s.Contains(':'))
        {
            return s;
        }

        int dash = s.IndexOf(" - ", StringComparison.Ordinal) is var hyphen and > 0 ? hyphen : s.IndexOf(" – ", StringComparison.Ordinal);
        if (dash is > 1 and < Longest && Serving(s[..dash].Trim()) && char.IsLetterOrDigit(s[dash + 3]))
        {
            return $"{s[..dash].Trim()}: {s[(dash + 3)..]}";
        }

        foreach (string with in lang == "en" ? With : [])
        {
            if (s.StartsWith(with, StringComparison.OrdinalIgnoreCase) && s.AsSpan().IndexOfAnyInRange('0', '9') < 0 && Joins.Split(s[with.Length..].TrimmedEnd("."), lang) is var foods && foods.TrueForAll(f => FoodIds.Match(f, lang) is not null))
            {
                return $"{s[..(with.Length - 1)]}: {s[with.Length..]}";
            }
        }

        return s;
    }

    private static readonly string[] With = ["serve with ", "served with "];

    /// <summary>"To serve: bread, butter", "PM : huile, sel": several foods behind one label.</summary>
    public static List<string>? Several(string s, string lang, ref string? whole)
    {
        int colon = s.IndexOf(':');
        if (colon is < 2 or > Longest || colon + 4 > s.Length || lang == "ja" || !Serving(s[..colon].Trim()))
        {
            return null;
        }

        List<string> parts = Joins.Split(s[(colon + 1)..].Trim(), lang);
        whole = parts.Count > 1 ? s[..colon].Trim() : whole;
        return parts.Count > 1 ? parts : null;
    }

    /// <summary>"To serve", "Garnish", "Zum Servieren", "Pour servir": what the line is for, with or without an amount.</summary>
    private static bool Serving(string label) => label.ToLowerInvariant() is "to serve" or "serve with" or "served with" or "for garnish" or "for the garnish" or "for serving" or "for decoration" or "as garnish" or "to finish" or "to garnish" or "garnish" or "garniture" or "finition" or "finitions" or "finish" or "finitura" or "decorazione" or "guarnizione" or "decoración" or "acabado" or "to decorate" or "decoration" or "topping" or "alongside" or "on the side" or "dazu" or "als beilage" or "beilage" or "zum servieren" or "zum garnieren" or "deko" or "garnitur" or "pour servir" or "pour accompagner" or "accompagnement" or "pm" or "p.m." or "pour la décoration" or "décor" or "décoration" or "para servir" or "para acompañar" or "acompañamiento" or "guarnición" or "para decorar" or "per servire" or "per accompagnare" or "contorno" or "per decorare" or "per guarnire";

    private static bool Behind(string rest, string lang)
    {
        Draft tried = new(why: false);
        return BackAmount.Take(rest, lang, tried) is { Length: > 1 } && tried is { Amount: not null, Unit: not null };
    }
}
