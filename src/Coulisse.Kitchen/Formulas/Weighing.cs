using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Measures;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Formulas;

/// <summary>Turns every amount of a card into grams with a range, a grade and a reason.</summary>
/// <remarks>Precedence when a line says a thing twice: mass beats volume, volume beats count, count beats word.</remarks>
public static class Weighing
{
    private static readonly string[] HouseholdUnits = ["tsp", "dsp", "tbsp", "cup", "floz", "gill", "pint", "quart", "gallon"];

    /// <summary>Weighs a dish.</summary>
    /// <param name="dish">The card as read.</param>
    /// <param name="measures">Whose spoons and cups: au, nz, uk, us, jp, metric; null to take the card's own word, or what can be inferred.</param>
    /// <param name="foods">Foods to weigh with; null for the dish's own table.</param>
    /// <exception cref="ArgumentOutOfRangeException">Measures that are none of the six.</exception>
    public static WeighedDish Weigh(Dish dish, string? measures = null, FoodTable? foods = null)
    {
        ArgumentNullException.ThrowIfNull(dish);
        FoodTable table = foods ?? dish.Foods;
        CardMeasures card = CardMeasures.Of(dish, measures);
        ImmutableArray<WeighedComponent> components = [.. dish.Components.Select(c => Component(c, card, dish.Language, table))];
        List<Doubt> doubts = [];
        if (!card.Settled && SpoonDoubt(dish, card, components, table) is { } spoon)
        {
            doubts.Add(spoon);
        }

        foreach (WeighedLine line in components.SelectMany(c => c.Lines))
        {
            if (LeafDoubt(line) is { } leaf)
            {
                doubts.Add(leaf);
            }
            else if (line.Grade == WeightGrade.Unknown && line.Food is { Amount: not null, FromComponent: null })
            {
                // The weight stands behind the food, in brackets: "a knob of ginger (12 g)" loses nothing of the line.
                string asked = line.Source.Text.Contains(line.Food.Food, StringComparison.Ordinal) ? line.Food.Food : line.Source.Text;
                doubts.Add(new Doubt(line.Source.Span.Line, $"What does “{line.Source.Text}” weigh? {line.Why.Text}", [new("grams, weighed once", $"{asked} (… g)"), new("leave it without a weight", asked)], $"no weight for {line.Food.Food}", 20) { Asked = asked });
            }
        }

        return new WeighedDish(dish, components, card.System) { Doubts = [.. doubts.OrderByDescending(d => d.Weight)], Foods = table };
    }

    private static WeighedComponent Component(Component component, CardMeasures card, string language, FoodTable foods)
    {
        ImmutableArray<WeighedLine>.Builder lines = ImmutableArray.CreateBuilder<WeighedLine>();
        foreach (IngredientLine line in component.Ingredients.Where(l => l.Kind == LineKind.Ingredient))
        {
            foreach (FoodAmount food in line.Foods)
            {
                lines.Add(LineWeight.Of(line, food, card, language, foods));
            }
        }

        return new WeighedComponent(component, Shares(lines.ToImmutable()));
    }

    /// <summary>Lines written as a share of another ("2 % salt on flour"), once the others are weighed.</summary>
    private static ImmutableArray<WeighedLine> Shares(ImmutableArray<WeighedLine> lines) => [.. lines.Select(line =>
    {
        if (line.Food.Percent is not { } percent || line.Grade != WeightGrade.Unknown || line.Food.PercentOf is not { Length: > 0 } of)
        {
            return line;
        }

        WeighedLine[] bases = [.. lines.Where(l => l != line && l.Grade != WeightGrade.Unknown && l.Food.Food.Contains(of, StringComparison.OrdinalIgnoreCase))];
        if (bases.Length == 0)
        {
            return line;
        }

        double share = percent / 100;
        double total = bases.Sum(b => b.Grams);
        return line with
        {
            Grams = total * share, Low = bases.Sum(b => b.Low) * share, High = bases.Sum(b => b.High) * share, Grade = bases.Max(b => b.Grade),
            Why = Origin.Computed($"{percent.ToString("0.###", CultureInfo.InvariantCulture)} % of {of}, {total.ToString("0.#", CultureInfo.InvariantCulture)} g", "m = p · m(base)", "the card"),
        };
    })];

    /// <summary>One question for the whole card, on the line where the answer moves most.</summary>
    private static Doubt? SpoonDoubt(Dish dish, CardMeasures card, ImmutableArray<WeighedComponent> taken, FoodTable foods)
    {
        WeighedLine[] asTaken = [.. taken.SelectMany(c => c.Lines)];
        if (!asTaken.Any(l => Array.IndexOf(HouseholdUnits, l.Food.Unit) >= 0))
        {
            return null;
        }

        List<(WeighedLine Line, double Other, string System)> moves = [];
        foreach (string other in card.Others)
        {
            CardMeasures otherwise = new(other, true, "");
            WeighedLine[] lines = [.. dish.Components.SelectMany(c => Component(c, otherwise, dish.Language, foods).Lines)];
            WeighedLine? most = null;
            double most2 = 0;
            for (int i = 0; i < lines.Length; i++)
            {
                // A spoon of salt that moves by a gram is no reason to ask; a tenth of a cake's filling is.
                double moved = Math.Abs(lines[i].Grams - asTaken[i].Grams);
                if (Array.IndexOf(HouseholdUnits, asTaken[i].Food.Unit) >= 0 && moved >= 5 && moved > 0.05 * asTaken[i].Grams && moved > Math.Abs(most2 - (most?.Grams ?? most2)))
                {
                    most = asTaken[i];
                    most2 = lines[i].Grams;
                }
            }

            if (most is not null)
            {
                moves.Add((most, most2, other));
            }
        }

        if (moves.Count == 0)
        {
            return null;
        }

        (WeighedLine line, double grams, string _) = moves.MaxBy(m => Math.Abs(m.Line.Grams - m.Other));
        string food = line.Food.Food;
        return new Doubt(
            line.Source.Span.Line,
            $"Whose spoons and cups are these? Taken as {CardMeasures.SpoonOf(card.System)} ({card.Because}).",
            [new(CardMeasures.SpoonOf(card.System), CardMeasures.Plain(card.System)), .. moves.Select(m => new Candidate(CardMeasures.SpoonOf(m.System), CardMeasures.Plain(m.System)))],
            string.Create(CultureInfo.InvariantCulture, $"{line.Grams:0} g or {grams:0} g of {food}"),
            Math.Abs(line.Grams - grams));
    }

    private static Doubt? LeafDoubt(WeighedLine line)
    {
        if (line.Food.Unit is not ("leaf" or "sheet") || line.Food.FoodId != "gelatine" || line.Grade != WeightGrade.Estimated)
        {
            return null;
        }

        return new Doubt(line.Source.Span.Line, "Which grade are the leaves? Gold is taken.",
            [.. GelatineLeaf.Grades.Reverse().Select(g => new Candidate(string.Create(CultureInfo.InvariantCulture, $"{g.Grade}, {g.Bloom:0} bloom, {g.Leaf.Grams:0.#} g a leaf"), $"{line.Source.Text}, {g.Grade}"))],
            string.Create(CultureInfo.InvariantCulture, $"{line.Low:0.#} g to {line.High:0.#} g"), line.High - line.Low) { Asked = line.Source.Text };
    }
}
