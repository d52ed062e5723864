using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Several foods in one line, each with its own amount: "500 g flour, 10 g salt, 350 g water", "farina 500 g; sale 10 g", "80 g sugar / 20 g glucose". A second figure of the same food ("4 fillets, 150 g each", "600 g asparagus, 400 g trimmed") parts nothing.</summary>
internal static class ManyAmounts
{
    private const int LongestLine = 400;
    private const int MostFoods = 20;
    private static readonly string[] Marks = [", ", "; ", " / ", " · ", " • ", " | "];

    /// <summary>One part for each food; null when the line is no such list.</summary>
    public static List<string>? Of(string s, string lang)
    {
        return s.Length is < 12 or > LongestLine || s.Contains('(') || Figures(s) < 2 ? null : Parted(s, lang);
    }

    private static List<string>? Parted(string s, string lang)
    {
        foreach (string mark in Marks)
        {
            if (!s.Contains(mark, StringComparison.Ordinal))
            {
                continue;
            }

            string[] pieces = s.TrimEnd('.').Split(mark, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            if (pieces.Length > 2 && mark == ", " && Amounts.At(pieces[^1], 0, lang) is null && FoodWords.IsPreparation(pieces[^1], lang))
            {
                // "1 onion, 1 carrot, 1 celery stick, all diced"
                pieces = [.. pieces[..^2], pieces[^2] + ", " + pieces[^1]];
                if (Array.TrueForAll(pieces[..^1], p => Front(p, lang)) && Front(pieces[^1].Split(',')[0], lang))
                {
                    return [.. pieces];
                }
            }

            if (pieces.Length is > 1 and <= MostFoods && (Array.TrueForAll(pieces, p => Front(p, lang)) || Array.TrueForAll(pieces, p => Back(p, lang))))
            {
                return [.. pieces];
            }
        }

        return null;
    }

    /// <summary>"10 g salt": an amount with its unit, or a count of a food everybody knows, and behind it a food.</summary>
    private static bool Front(string p, string lang)
    {
        if (Amounts.At(p, 0, lang) is not { } m || m.Number.InWords || m.Unit is { Kind: "length" or "container" or "count" })
        {
            return false;
        }

        string food = p[PartReader.Of(p, Places.Skip(p, m.End), lang)..];
        if (food.Length < 3 || !char.IsLetter(food[0]) || Said(food, lang))
        {
            return false;
        }

        bool known = FoodIds.Match(food, lang) is not null;
        return known || m.Unit is not null && !FoodWords.IsPreparation(food, lang);
    }

    /// <summary>"salt 10 g".</summary>
    private static bool Back(string p, string lang)
    {
        if (!char.IsLetter(p[0]) || !char.IsLetterOrDigit(p[^1]) || Amounts.At(p, 0, lang) is not null)
        {
            return false;
        }

        Draft d = new(why: false);
        string food = BackAmount.Take(p, lang, d);
        food = d.Amount is not null ? food : UnitFirst.Take(p, lang, d);
        food = d.Amount is not null ? food : BackAmount.Count(p, lang, d) ?? p;
        if (d is { Amount: not null } and ({ Unit: null } or { Bare: true }))
        {
            // "tuorli n. 4, albumi n. 2", "butter 100, sugar 100": counts and bare figures of foods everybody knows
            return FoodIds.Match(food, lang) is not null;
        }

        return d is { Amount: not null, Unit.Kind: "mass" or "volume" or "spoon" or "cup" } && food.Length > 2 && !food.Contains(',') && (!FoodWords.IsPreparation(food, lang) || FoodIds.Match(food, lang) is not null);
    }

    /// <summary>"500 g in all", "120 g each", "1 kg trimmed weight": words about the food before.</summary>
    internal static bool Said(string food, string lang) =>
        OfOne.In(food) || Places.HasAny(food, "total", "weight", "in all", "altogether", "drained", "net", "per", "insgesamt", "jeweils", "Abtropfgewicht", "Füllmenge", "Einwaage", "netto", "brutto", "pack", "tin", "can", "or", "ou", "oder") || Joins.Extra(food) is not null || Uses.Begins(food, lang);

    private static int Figures(string s)
    {
        int n = 0;
        for (int i = 0; i < s.Length; i++)
        {
            n += char.IsAsciiDigit(s[i]) && (i == 0 || !char.IsLetterOrDigit(s[i - 1]) && s[i - 1] is not ('.' or ',' or '/')) ? 1 : 0;
        }

        return n;
    }
}
