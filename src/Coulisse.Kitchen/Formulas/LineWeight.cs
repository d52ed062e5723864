using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Measures;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Formulas;

/// <summary>Grams of one food of one line.</summary>
internal static class LineWeight
{
    // States that change how much fits in a measure when they stand before the food ("sifted flour"), not after the comma, where they are a later task.
    private static readonly (string Word, string State)[] States =
    [
        ("unpacked", "unpacked"), ("packed", "packed"), ("unsifted", "unsifted"), ("sifted", "sifted"), ("chopped", "chopped"), ("pieces", "chopped"), ("grated", "grated"), ("ground", "ground"),
        ("flaked", "sliced"), ("sliced", "sliced"), ("shredded", "shredded"), ("whipped", "whipped"), ("crumbled", "crumbled"), ("diced", "diced"), ("mashed", "mashed"), ("halves", "halves"),
    ];

    private static readonly string[] Zest = ["zest", "rind", "peel", "zeste", "ralladura", "scorza", "abrieb", "schale"];
    private static readonly string[] Gelatine = ["gelatin", "gélatine"];
    private static readonly string[] Juice = ["juice", "jus", "saft", "zumo", "jugo", "succo"];

    public static WeighedLine Of(IngredientLine line, FoodAmount amount, CardMeasures card, string language, FoodTable foods)
    {
        Food? food = Known(amount, language, foods);
        FoodAmount named = food is not null && amount.FoodId != food.Id ? amount with { FoodId = food.Id, FoodConfidence = foods.Match(amount.Food, language)?.Confidence ?? amount.FoodConfidence } : amount;
        if (food?.Id == "gelatine" && named.Grade is null && GelatineLeaf.Grades.FirstOrDefault(g => $"{amount.Food} {amount.Preparation}".Contains(g.Grade, StringComparison.OrdinalIgnoreCase)) is { } grade)
        {
            named = named with { Grade = grade.Grade };
        }

        return Weigh(line, named, food, card) with { Known = food };
    }

    private static Food? Known(FoodAmount amount, string language, FoodTable foods)
    {
        if (amount.FromComponent is not null)
        {
            return null;
        }

        // The reader knows only the foods that ship: a name of the house's own comes first.
        string? id = foods.Match(amount.Food, language) is { } house && foods.IsOwn(house.Id) ? house.Id : amount.FoodId is not null && foods.Find(amount.FoodId) is not null ? amount.FoodId : foods.Match(amount.Food, language)?.Id;
        if (id is null && Gelatine.Any(g => amount.Food.Contains(g, StringComparison.OrdinalIgnoreCase)) && GelatineLeaf.Grades.Any(g => amount.Food.Contains(g.Grade, StringComparison.OrdinalIgnoreCase)))
        {
            id = "gelatine";
        }

        // "beetroot, roasted": where the table holds the prepared food apart, that is the one meant.
        if (amount.Preparation?.Split(' ', ',')[0] is { Length: > 0 } done && foods.Match($"{done} {amount.Food}", language) is { Confidence: 1 } prepared)
        {
            id = prepared.Id;
        }

        if (id is "lemon" or "lime" or "orange" && amount.Unit is null or "piece")
        {
            // "zest of 1 lemon", "juice of half a lemon": the fruit is only where it comes from.
            string words = $"{amount.Food} {amount.Preparation}".ToLowerInvariant();
            bool zest = Zest.Any(z => words.Contains(z, StringComparison.Ordinal));
            bool juice = Juice.Any(j => words.Contains(j, StringComparison.Ordinal));
            string? part = zest == juice ? null : zest ? $"{id}-zest" : $"{id}-juice";
            id = part is not null && foods.Find(part) is not null ? part : id;
        }

        return id is null ? null : foods.Find(id);
    }

    private static WeighedLine Weigh(IngredientLine line, FoodAmount a, Food? food, CardMeasures card)
    {
        if (a.Grams is { } stated)
        {
            double most = a.GramsMax ?? stated;
            return new WeighedLine(line, a, (stated + most) / 2, Math.Min(stated, most), Math.Max(stated, most), WeightGrade.Weighed, Origin.Typed("The card states the mass."));
        }

        if (a.Amount is not { } low || a.Unit is null)
        {
            return Nothing(line, a, a.Percent is not null ? $"Its base, {a.PercentOf}, has no weight here." : a.Use is { } use ? $"No amount: {use}." : "The card gives no amount.");
        }

        double high = a.AmountMax ?? low;
        if (Household.MassOf(a.Unit) is { } unit)
        {
            return new WeighedLine(line, a, (low + high) / 2 * unit.Grams, low * unit.Grams, high * unit.Grams, WeightGrade.Weighed, Origin.Typed("The card states the mass."));
        }

        if (Household.SizeOf(a.Unit, card.System) is { } size)
        {
            return Volume(line, a, food, card, low, high, size.Size.Millilitres, size.Source);
        }

        return Counts(line, a, food, card, low, high);
    }

    private static WeighedLine Volume(IngredientLine line, FoodAmount a, Food? food, CardMeasures card, double low, double high, double ml, string source)
    {
        if (food is null)
        {
            return Nothing(line, a, $"No density is held for “{a.Food}”.");
        }

        string? state = a.Fill is "packed" or "sifted" or "unsifted" or "unpacked" ? a.Fill : States.FirstOrDefault(s => a.Food.Contains(s.Word, StringComparison.OrdinalIgnoreCase)).State;
        if (food.DensityFor(a.Unit == "floz" ? "fl oz" : a.Unit!, state) is not { } found)
        {
            return Nothing(line, a, $"No density is held for {food.Name}.");
        }

        (string key, Held density) = found;
        double spread = Spread(food, density.Assumed);
        double least = density.Value * (1 - spread);
        double most = density.Value * (1 + spread);
        if (state is null && key.Contains(' ', StringComparison.Ordinal) && !key.StartsWith("fl oz", StringComparison.Ordinal))
        {
            // The card does not say which state, so every held state is possible.
            least = Math.Min(least, food.Densities.Values.Min(d => d.Value));
            most = Math.Max(most, food.Densities.Values.Max(d => d.Value));
        }

        (double plan, double down, double up) = Fill(a.Fill, food);
        double best = (low + high) / 2 * ml * density.Value * plan;
        double bottom = low * ml * least * down;
        double top = high * ml * most * up;
        WeightGrade grade = (top - bottom) / 2 > 0.20 * best ? WeightGrade.Estimated : WeightGrade.Converted;
        string words = string.Create(CultureInfo.InvariantCulture, $"{(low + high) / 2:0.###} {a.Unit} of {ml:0.###} mL ({(IsMetric(a.Unit!) ? "metric" : card.Because)}) at {density.Value:0.###} g/mL{(plan == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $", {a.Fill}, × {plan:0.##}"))}");
        return new WeighedLine(line, a, best, bottom, top, grade, Origin.Computed(words, "m = V · ρ · f", $"{source}; density: {(density.Assumed ? "assumed (" + (food.Why.Length > 0 ? food.Why : "from memory") + ")" : food.Source)} ({key})",
            new OriginInput("V", string.Create(CultureInfo.InvariantCulture, $"{(low + high) / 2 * ml:0.##} mL")), new OriginInput("ρ", string.Create(CultureInfo.InvariantCulture, $"{density.Value:0.###} g/mL"))));
    }

    private static WeighedLine Counts(IngredientLine line, FoodAmount a, Food? food, CardMeasures card, double low, double high)
    {
        double middle = (low + high) / 2;
        if (a.PackGrams is { } pack)
        {
            return new WeighedLine(line, a, middle * pack, low * pack, high * pack, WeightGrade.Weighed, Origin.Typed("The card states the content of a pack."));
        }

        if (food?.Id is "egg" or "egg-yolk" or "egg-white" && a.Unit is "piece")
        {
            HenEgg egg = HenEgg.Of(card.System, a.Grade);
            double share = HenEgg.ShareOf(food.Id switch { "egg-yolk" => "yolk", "egg-white" => "white", _ => "egg" });
            return new WeighedLine(line, a, middle * egg.InShell.Grams * share, low * egg.Least.Grams * share, high * egg.Most.Grams * share, WeightGrade.Converted,
                Origin.Computed(string.Create(CultureInfo.InvariantCulture, $"{middle:0.##} of {egg.Regime} size {egg.Size}, {egg.InShell.Grams:0.#} g in shell, share {share:0.###}"), "m = n · m(shell) · share", $"{egg.Source}; shares USDA SR28 01123 to 01125"));
        }

        if (food?.Id == "gelatine" && a.Unit is "leaf" or "sheet" or "piece")
        {
            GelatineLeaf? leaf = a.Grade is null ? null : GelatineLeaf.Find(a.Grade);
            GelatineLeaf taken = leaf ?? GelatineLeaf.Find("gold")!;
            return new WeighedLine(line, a, middle * taken.Leaf.Grams, low * (leaf ?? GelatineLeaf.Find("platinum")!).Leaf.Grams, high * (leaf ?? GelatineLeaf.Find("bronze")!).Leaf.Grams, leaf is null ? WeightGrade.Estimated : WeightGrade.Converted,
                Origin.Computed(string.Create(CultureInfo.InvariantCulture, $"{middle:0.##} leaves, {taken.Grade}, {taken.Leaf.Grams:0.#} g each"), "m = n · m(leaf)", taken.Source));
        }

        if (food is not null && Unit(food, a) is { } unit)
        {
            double down = food.Units.GetValueOrDefault("small")?.Value ?? (unit.Value * 0.8);
            double up = food.Units.GetValueOrDefault("large")?.Value ?? (unit.Value * 1.2);
            bool sized = a.Grade is not null && food.Units.ContainsKey(a.Grade.ToLowerInvariant());
            return new WeighedLine(line, a, middle * unit.Value, low * Math.Min(unit.Value * 0.9, sized ? unit.Value : down), high * Math.Max(unit.Value * 1.1, sized ? unit.Value : up), unit.Assumed ? WeightGrade.Estimated : WeightGrade.Converted,
                Origin.Computed(string.Create(CultureInfo.InvariantCulture, $"{middle:0.##} {a.Grade} {food.Name} at {unit.Value:0.#} g, edible part"), "m = n · m(one)", unit.Assumed ? "common practice, no source" : food.Source));
        }

        if (QuantityWord.Find(a.Unit!) is { Kind: not "factor" } word)
        {
            double perUnit = word.Kind == "grams" ? 1 : food?.DensityFor("tsp", null)?.Density.Value ?? 1;
            return new WeighedLine(line, a, middle * word.Plan * perUnit, low * word.Low * perUnit, high * word.High * perUnit, WeightGrade.Estimated,
                Origin.Assumed(string.Create(CultureInfo.InvariantCulture, $"{word.Word}: {word.Plan:0.##} {(word.Kind == "grams" ? "g" : "mL")}, between {word.Low:0.##} and {word.High:0.##}"), word.Source));
        }

        return Nothing(line, a, food is null ? $"“{a.Food}” is not in the food table, so one {a.Unit} has no weight." : $"No weight is held for one {a.Unit} of {food.Name}.");
    }

    private static Held? Unit(Food food, FoodAmount a)
    {
        string size = a.Grade?.ToLowerInvariant() ?? "";
        return a.Unit == "piece" && food.Units.TryGetValue(size, out Held? sized) ? sized : food.Units.GetValueOrDefault(a.Unit!);
    }

    /// <summary>How far a bulk density strays: liquids hardly, pieces and powders a good deal, flours and starches most.</summary>
    /// <remarks>Flour by cup runs 0.45 to 0.60 g/mL (common practice); the Japanese teaching table packs a spoon 9 % denser than a cup.</remarks>
    private static double Spread(Food food, bool assumed)
    {
        Composition c = food.Composition;
        double spread = food.Flows ? 0.03 : c.Starch > 40 || (c.Carbohydrate > 50 && c.Water < 20 && (c.Sugars ?? 0) < 20) ? 0.14 : 0.10;
        return assumed ? Math.Max(spread, 0.05) : spread;
    }

    private static (double Plan, double Low, double High) Fill(string? fill, Food food)
    {
        bool liquid = food.Composition.Water > 60 || food.Composition.Fat > 95;
        return fill is not null && QuantityWord.Find(fill) is { Kind: "factor" } word && !(liquid && word.Plan > 1.2) ? (word.Plan, word.Low, word.High) : (1, 1, 1);
    }

    private static bool IsMetric(string unit) => unit is "ml" or "cl" or "dl" or "l";

    private static WeighedLine Nothing(IngredientLine line, FoodAmount a, string why) => new(line, a, 0, 0, 0, WeightGrade.Unknown, Origin.Assumed(why, ""));
}
