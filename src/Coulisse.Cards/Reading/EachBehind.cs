using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"onion, carrot, celery 500 g each", "Möhren, Sellerie, Lauch (je 100 g)", "carottes, céleri : 100 g de chaque": foods first, and behind them the amount that each of them has. Read as one food with a preparation, the others are lost. "4 fillets, 150 g each" and "chicken, skinless, 150 g each" name one food.</summary>
internal static class EachBehind
{
    private const int Longest = 160;
    private const int MostFoods = 8;
    private static readonly string[] English = ["of each", "each"];
    private static readonly string[] French = ["de chaque", "de chacun", "de chacune", "chacun", "chacune", "chaque"];
    private static readonly string[] German = ["jeweils", "pro Sorte", "je Sorte"];
    private static readonly string[] Spanish = ["de cada uno", "de cada una", "de cada", "cada uno", "cada una", "c/u"];
    private static readonly string[] Italian = ["di ciascuno", "di ciascuna", "ciascuno", "ciascuna", "per ciascuno", "cadauno", "cad.", "cad"];

    /// <summary>One line of its own for each food; null when the line does not share an amount out so.</summary>
    public static List<string>? Parts(string s, string lang)
    {
        int figure = s.Length is < 12 or > Longest || !char.IsLetter(s[0]) || lang == "ja" ? -1 : Figure(s);
        if (figure < 6 || Amounts.At(s, figure, lang) is not { Unit: null or { Kind: not "length" } } m)
        {
            return null;
        }

        string names = s[..figure].TrimmedEnd(" (:,-–");
        bool before = lang == "de" && (Ends(ref names, "je") || Ends(ref names, "jeweils"));
        string amount = s[figure..m.End].Trim();
        // "2 each": the word may have been read as the unit of a count.
        int counted = amount.EndsWith(" each", StringComparison.OrdinalIgnoreCase) ? amount.Length - "each".Length : -1;
        string tail = s[m.End..].Trim(' ', ')', '.', ',');
        tail = counted < 0 ? tail : tail.Length == 0 ? amount[counted..] : $"{amount[counted..]}, {tail}";
        amount = counted < 0 ? amount : amount[..counted].TrimEnd();
        string done = "";
        if (tail.IndexOf(", ", StringComparison.Ordinal) is var comma and > 0)
        {
            (tail, done) = (tail[..comma], tail[(comma + 2)..]);
        }

        tail = tail.TrimEnd(')', ' ');
        if (before ? tail.Length > 0 : !Array.Exists(Eaches(lang), e => tail.Equals(e, StringComparison.OrdinalIgnoreCase)))
        {
            return null;
        }

        if (done.Length > 0 && !FoodWords.IsPreparation(done, lang))
        {
            return null;
        }

        string[] foods = names.Replace(Conjunction.Spaced(lang), ", ", StringComparison.OrdinalIgnoreCase).Replace(" & ", ", ", StringComparison.Ordinal).Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        foods = lang == "en" ? GroundSpices.Spread(foods) : foods;
        return All(foods, lang) ? [.. foods.Select(f => $"{amount} {f}{(done.Length > 0 ? ", " + done : "")}")] : null;
    }

    /// <summary>Every name is a food of the table; of three or more one may be unknown, if it says no work and no part.</summary>
    private static bool All(string[] foods, string lang)
    {
        if (foods.Length is < 2 or > MostFoods)
        {
            return false;
        }

        int known = 0;
        foreach (string f in foods)
        {
            if (FoodIds.Match(f, lang) is not null)
            {
                known++;
            }
            else if (FoodWords.IsPreparation(f, lang) || Uses.Begins(f, lang) || Lexicon.Longest("part", f, 0, 3, lang, out _) is not null || Lexicon.Longest("use", f, 0, 3, lang, out _) is not null || f.Count(c => c == ' ') > 2)
            {
                return false;
            }
        }

        return known == foods.Length || foods.Length > 2 && known == foods.Length - 1;
    }

    /// <summary>The first figure of the line; none where the names hold one.</summary>
    private static int Figure(string s)
    {
        for (int i = 1; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) || Numbers.Vulgar(s[i]) > 0)
            {
                return char.IsLetterOrDigit(s[i - 1]) ? -1 : i;
            }
        }

        return -1;
    }

    private static bool Ends(ref string names, string word)
    {
        if (names.Length < word.Length + 4 || !Places.EndsIn(names, word))
        {
            return false;
        }

        names = names[..^word.Length].TrimmedEnd(" (:,-–");
        return true;
    }

    private static string[] Eaches(string lang) => lang switch { "fr" => French, "de" => German, "es" => Spanish, "it" => Italian, _ => English };
}
