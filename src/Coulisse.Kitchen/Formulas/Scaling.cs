using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;

namespace Coulisse.Kitchen.Formulas;

/// <summary>Scales a weighed dish, each component by its own factor, and rounds to what a scale can weigh.</summary>
public static class Scaling
{
    private static readonly string[] CoverUnits = ["portions", "plates", "people", "covers", "guests", "servings"];

    /// <summary>Scales a dish.</summary>
    /// <param name="weighed">The dish in grams.</param>
    /// <param name="to">What to scale to.</param>
    /// <param name="stepGrams">Rounding step for every line, g; null for the usual ones (1 g above 100 g, 0.1 g to 5 g, 0.01 g below).</param>
    /// <returns>The batch, or every problem: the card lacks the yield, the ingredient or the tin that was asked for.</returns>
    public static Parsed<Batch> Scale(WeighedDish weighed, ScaleTo to, double? stepGrams = null)
    {
        ArgumentNullException.ThrowIfNull(weighed);
        ArgumentNullException.ThrowIfNull(to);
        if (stepGrams is not (null or > 0))
        {
            return Failed("WGH003", "A rounding step is more than 0 g.", "Give a step such as 1 g or 0.1 g.");
        }

        return to switch
        {
            ScaleTo.Factor(> 0 and < 1e6 and var by) => Build(weighed, _ => by, by, string.Create(CultureInfo.InvariantCulture, $"× {by:0.####}"), stepGrams),
            ScaleTo.Covers(> 0 and < 1e6 and var n) => ToCovers(weighed, n, stepGrams),
            ScaleTo.Yield(> 0 and < 1e9 and var g) => ToYield(weighed, g, stepGrams),
            ScaleTo.Have(var food, > 0 and < 1e9 and var g) => ToHave(weighed, food, g, stepGrams),
            ScaleTo.Tin(var mm) when mm.Length is >= 1 and <= 3 && mm.All(x => x is > 0 and < 1e5) => ToTin(weighed, mm, stepGrams),
            _ => Failed("WGH003", "The amount to scale to is not more than 0.", "Give covers, grams, a factor or a tin above 0."),
        };
    }

    private static Parsed<Batch> ToCovers(WeighedDish w, double n, double? step)
    {
        CardYield? yield = w.Dish.Yields.FirstOrDefault(y => Array.IndexOf(CoverUnits, y.Unit) >= 0) ?? w.Dish.Yields.FirstOrDefault(y => y.Unit == "pieces")
            ?? w.Components.SelectMany(c => c.Component.Makes).FirstOrDefault(y => Array.IndexOf(CoverUnits, y.Unit) >= 0 || y.Unit == "pieces");
        if (yield is not { Amount: > 0 })
        {
            return Failed("WGH004", "The card does not say how many it serves.", "Write “Serves 12.” near the title, or scale to a finished weight or to what there is of one food.");
        }

        double all = n / yield.Amount;
        return Build(w, c => Math.Max(all, Needed(w.Dish, c, n)), all, string.Create(CultureInfo.InvariantCulture, $"{n:0.##} covers"), step);
    }

    /// <summary>Factor at which a component makes what the plates take; 0 when the card does not say both.</summary>
    /// <remarks>The card's own surplus is kept: this only lifts a component that would run short.</remarks>
    private static double Needed(Dish dish, Component component, double covers)
    {
        double needed = 0;
        foreach (PlatePart part in dish.Plate.Where(p => p.Component is not null && p.Component.Equals(component.Name, StringComparison.OrdinalIgnoreCase)))
        {
            foreach (CardYield makes in component.Makes.Where(m => m.Amount > 0))
            {
                double? per = makes.Unit == "g" ? part.Grams : makes.Unit == "pieces" ? part.Pieces : null;
                // by the leanest of the good runs, where it was learnt: on the mean every other day would run short
                needed = per is { } p ? Math.Max(needed, covers * p / (makes.Measured is { Least: > 0 and var least } ? least : makes.Amount)) : needed;
            }
        }

        return needed;
    }

    private static Parsed<Batch> ToYield(WeighedDish w, double grams, double? step)
    {
        CardYield? stated = w.Dish.Yields.Concat(w.Components.Length == 1 ? w.Components[0].Component.Makes : []).FirstOrDefault(y => y.Unit == "g" && y.Amount > 0);
        double now = stated?.Amount ?? w.Components.Where(c => !c.Component.IsAssembly).Sum(c => c.Grams);
        if (now <= 0)
        {
            return Failed("WGH004", "Nothing on the card has a weight.", "Give at least one line in grams.");
        }

        string basis = stated is null ? "of the raw weight, as the card states no yield in grams" : "of the stated yield";
        return Build(w, _ => grams / now, grams / now, string.Create(CultureInfo.InvariantCulture, $"{grams:0.#} g {basis}"), step);
    }

    private static Parsed<Batch> ToHave(WeighedDish w, string food, double grams, double? step)
    {
        string? id = w.Foods.Match(food, w.Dish.Language)?.Id ?? food;
        WeighedLine[] lines = [.. w.Components.SelectMany(c => c.Lines).Where(l => l.Grade != WeightGrade.Unknown && (l.Food.Food.Equals(food, StringComparison.OrdinalIgnoreCase) || l.Food.FoodId == id))];
        double now = lines.Sum(l => l.Grams);
        return now > 0
            ? Build(w, _ => grams / now, grams / now, string.Create(CultureInfo.InvariantCulture, $"{grams:0.#} g of {food}, the card takes {now:0.#} g"), step)
            : Failed("WGH005", $"No weighed line of the card is “{food}”.", "Name an ingredient as the card writes it: " + string.Join(", ", w.Components.SelectMany(c => c.Lines).Where(l => l.Grams > 0).Select(l => l.Food.Food).Distinct().Take(12)) + ".");
    }

    private static Parsed<Batch> ToTin(WeighedDish w, ImmutableArray<double> mm, double? step)
    {
        Vessel? vessel = w.Components.SelectMany(c => c.Component.Vessels).FirstOrDefault(v => v.Millimetres.Length is >= 1 and <= 3);
        if (vessel is null)
        {
            return Failed("WGH006", "The card names no tin with its size.", "Write the tin with its size in millimetres, for example “tin 330 × 230 mm”.");
        }

        double factor = Area(mm) / (Area(vessel.Millimetres) * Math.Max(1, vessel.Count));
        return Build(w, _ => factor, factor, string.Create(CultureInfo.InvariantCulture, $"a tin of {string.Join(" × ", mm)} mm for {vessel.Text}, by area at the same depth"), step);
    }

    private static double Area(ImmutableArray<double> mm) => mm.Length == 1 ? Math.PI * mm[0] * mm[0] / 4 : mm[0] * mm[1];

    private static Parsed<Batch>.Ok Build(WeighedDish w, Func<Component, double> factor, double all, string words, double? step) => new(new Batch(w, all, words, [.. w.Components.Select(c =>
    {
        double k = factor(c.Component);
        return new BatchComponent(c, k, Batches(c.Component, k), [.. c.Lines.Select(l => Line(l, k, step))], [.. c.Component.Steps.Select(s => Minutes(s, k))]);
    })]));

    // A part that is made in a tin or frame is made in whole fillings of it; other parts go into one bowl as far as the card knows.
    private static int Batches(Component component, double factor) => component.Vessels.Any(v => v.Kind is "tin" or "frame" or "mould" or "terrine" or "ring" or "dish") ? Math.Max(1, (int)Math.Ceiling(factor - 1e-6)) : 1;

    private static Parsed<Batch>.Failed Failed(string code, string message, string hint) => new([new Problem(code, 0, message, hint)]);

    private static BatchLine Line(WeighedLine line, double factor, double? step)
    {
        double grams = line.Grams * factor;
        double s = step ?? StepFor(grams);
        double rounded = Math.Round(grams / s, MidpointRounding.AwayFromZero) * s;
        return new BatchLine(line, grams, rounded, grams > 0 ? (rounded - grams) / grams * 100 : 0, s);
    }

    /// <summary>Rounding step by amount: 1 g above 100 g, 0.1 g from 5 to 100 g, 0.01 g below (agents, salt, acids).</summary>
    internal static double StepFor(double grams) => grams > 100 ? 1 : grams >= 5 ? 0.1 : 0.01;

    private static BatchStep Minutes(Step step, double factor)
    {
        double[] stated = [.. step.Times.Where(t => t.Kind != TimeKind.Limit && t.MinutesMin is not null).Select(t => t.MinutesMin!.Value * t.Repeats)];
        double? written = stated.Length == 0 ? step.HandsMinutes : stated.Sum();
        return new BatchStep(step, written, written, Math.Abs(factor - 1) < 0.01 ? "as written" : "as written; heat and hands for another size are not rescaled here");
    }
}
