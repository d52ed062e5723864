using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>The unit before the figure, at the end of the line, as Italian cards print it: "latte intero ml 250", "farina \"00\" g 500".</summary>
internal static class UnitFirst
{
    /// <summary>True for a line that ends so, or that goes on with how the food is prepared: "ceci secchi g 500, ammollati 12 ore". "Aggiungere latte ml 250, mescolare" is work.</summary>
    public static bool Told(string body, string lang)
    {
        if (lang == "ja")
        {
            return false;
        }

        if (char.IsAsciiDigit(body[^1]) && Take(body, lang, new Draft(why: false)).Length < body.Length)
        {
            return true;
        }

        return body[^1] != '.' && body.IndexOf(", ", StringComparison.Ordinal) is > 3 and var cut && char.IsAsciiDigit(body[cut - 1]) && body[..cut] is var led && Take(led, lang, new Draft(why: false)).Length < cut && !Layout.Looks.Work(led, lang);
    }

    /// <summary>Takes the amount off the end; the line itself when it has none.</summary>
    public static string Take(string s, string lang, Draft d)
    {
        if (lang == "ja" || s.Length < 5)
        {
            return s;
        }

        // "panna g 250 semimontata": a word or two behind the figure are what is done to it
        int digits = s.AsSpan().LastIndexOfAnyInRange('0', '9');
        string tail = digits > 3 ? s[(digits + 1)..] : "";
        if (tail.Length > 1 && tail[0] == ' ' && lang != "en" && tail.Length < 24 && FoodWords.IsPreparation(tail.Trim(), lang) && Take(s[..(digits + 1)], lang, d) is var taken && taken.Length <= digits)
        {
            d.Prepare(tail.Trim());
            return taken;
        }

        if (s.IndexOf(", ", StringComparison.Ordinal) is > 4 and var comma && char.IsAsciiDigit(s[comma - 1]) && Take(s[..comma], lang, d) is var cut && cut.Length < comma)
        {
            // "burro gr. 125, morbido"
            return cut + s[comma..];
        }

        if (!char.IsAsciiDigit(s[^1]))
        {
            return s;
        }

        int figure = s.LastIndexOf(' ') + 1;
        int unit = figure > 2 ? s.LastIndexOf(' ', figure - 2) + 1 : 0;
        if (unit < 2 || s[unit..(figure - 1)].TrimEnd('.').ToLowerInvariant() is not ("g" or "gr" or "kg" or "ml" or "cl" or "dl" or "l" or "lt") || Numbers.Single(s, figure, lang) is not { InWords: false } n || n.End != s.Length)
        {
            return s;
        }

        d.Amount = n.Min;
        d.Unit = Lexicon.LongestUnit(s, unit, lang, out _);
        d.Tokens?.Add(new ReadToken(s[unit..], "amount", System.FormattableString.Invariant($"{n.Min} {d.Unit?.Unit}")));
        return s[..unit].TrimmedEnd(" ,:");
    }
}
