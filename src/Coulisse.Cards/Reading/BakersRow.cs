using System.Collections.Immutable;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Flour 100% 1000 g", "Eggs 50% 500g": a baker's share of the flour, and behind it the weight that share comes to. "Cream 35% 500 g" tells how rich it is: where no other row bears the share out, only foods that come in one strength have one.</summary>
internal static class BakersRow
{
    private const int FewestRows = 3;
    private const double Slack = 0.02;

    // Foods of one strength, as doughs take them.
    private static readonly WordList Plain = new("flour", "eggs", "egg", "water", "salt", "sugar", "yeast", "levain", "starter", "farine", "oeufs", "œufs", "eau", "sel", "sucre", "levure", "Mehl", "Eier", "Ei", "Wasser", "Salz", "Zucker", "Hefe", "Sauerteig", "harina", "huevos", "huevo", "agua", "sal", "azúcar", "levadura", "farina", "uova", "acqua", "sale", "zucchero", "lievito");

    /// <summary>Takes the share off the end of a name that a weight follows.</summary>
    public static string Take(string s, string lang, Draft d)
    {
        if (d is not { Unit.Kind: "mass", Percent: null, Amount: not null } || s.Length < 5 || !s.EndsWith('%') || Share(s, out int from) is not { } share || !Plain.In(Head(s[..from].TrimmedEnd(" ,:-"), lang)))
        {
            return s;
        }

        d.Percent = share;
        d.Tokens?.Add(new ReadToken(s[from..].Trim(), "share", System.FormattableString.Invariant($"{share} %")));
        return s[..from].TrimmedEnd(" ,:-");
    }

    /// <summary>The part with such shares told as shares: one row is the whole, and the weights of all follow it.</summary>
    public static Component Of(Component c, string lang)
    {
        if (!c.Ingredients.Any(l => l.Foods.Length == 1 && (l.Foods[0].Percent is not null || l.Foods[0].Food.EndsWith('%'))))
        {
            return c;
        }

        (int Line, double Share, double Grams)[] rows = [.. c.Ingredients.Select((l, i) => (i, l)).Where(x => x.l.Foods is [{ Grams: > 0, GramsMax: null }]).Select(x => (x.i, Told(x.l.Foods[0]) ?? 0, x.l.Foods[0].Grams!.Value)).Where(x => x.Item2 > 0)];
        if (rows.Length < FewestRows || Array.Find(rows, r => r.Share == 100) is not { Grams: > 0 and var whole } || !Array.TrueForAll(rows, r => Math.Abs((whole * r.Share / 100) - r.Grams) <= Math.Max(1, r.Grams * Slack)))
        {
            return c;
        }

        ImmutableArray<IngredientLine>.Builder lines = c.Ingredients.ToBuilder();
        foreach ((int line, double share, _) in rows)
        {
            FoodAmount food = lines[line].Foods[0];
            string name = food.Food.EndsWith('%') && Share(food.Food, out int from) is not null ? food.Food[..from].TrimmedEnd(" ,:-") : food.Food;
            lines[line] = lines[line] with { Foods = [food with { Food = name, FoodId = food.FoodId ?? (FoodIds.Match(name, lang) is { Confidence: >= 0.8 } match ? match.Id : null), Percent = share }] };
        }

        return c with { Ingredients = lines.ToImmutable() };
    }

    /// <summary>The word that says what a food is: "strong flour", "farine complète".</summary>
    private static string Head(string food, string lang) => lang is "fr" or "es" or "it" ? food[..Places.WordEnd(food, 0)] : food[(food.LastIndexOf(' ') + 1)..];

    private static double? Told(FoodAmount f) => f.Percent is { } read && f.PercentOf is null ? read : f.Food.EndsWith('%') ? Share(f.Food, out _) : null;

    /// <summary>The figure before the sign that ends a text, and where it begins.</summary>
    private static double? Share(string s, out int from)
    {
        from = s.Length - 1;
        while (from > 0 && (char.IsAsciiDigit(s[from - 1]) || s[from - 1] is '.' or ',' or ' '))
        {
            from--;
        }

        return from > 1 && Numbers.Single(s, Places.Skip(s, from), "en") is { InWords: false } n ? n.Min : null;
    }
}
