using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Substance;

namespace Coulisse.Kitchen.AtHome;

/// <summary>Brings a batch to home scale: the smallest batch of each part that the home kit measures with no ratio moved beyond the limit.</summary>
/// <remarks>
/// Plates: each part has its own factor, at least what the plates need and what its kit works with, at most the card's own batch; in steps of 0.1 % the first
/// factor at which the measured amounts keep every ratio, or a larger one, up to twice that least, that asks for fewer lines on the pocket scale. Pieces from a tin: one factor for all parts, within 3 % of one tin. A spice under 0.1 % of its part is a pinch and stands outside the ratios.
/// </remarks>
public static class HomeScaling
{
    private const double Step = 0.001;
    private const double TinRoom = 0.03;
    private const double Roomy = 2;
    private const double PinchShare = 0.001;

    /// <summary>The dish at home, with the reasons if it must not be handed out.</summary>
    /// <param name="batch">The dish as it is made here.</param>
    /// <param name="kit">The home kit.</param>
    /// <param name="code">au, nz, uk, eu, us.</param>
    public static HomeRecipe Of(Batch batch, HomeKit kit, string code)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(kit);
        WeighedDish dish = batch.Weighed;
        WeighedComponent[] parts = [.. dish.Components.Where(c => !c.Lines.IsEmpty && !IsVariant(c.Component, dish.Dish))];
        WeighedDish home = dish with { Components = [.. dish.Components.Where(c => parts.Contains(c) || c.Component.IsAssembly)] };
        List<HomeRefusal> refusals = [];
        (WeighedDish heated, ImmutableArray<HomeHeatChange> changes) = HomeHeat.Fit(home, kit);
        bool plates = Plates(dish.Dish) is not null;
        ImmutableArray<HomePart>.Builder made = ImmutableArray.CreateBuilder<HomePart>();
        double? tin = plates ? null : Common(parts, kit);
        foreach (WeighedComponent c in parts)
        {
            double needed = plates ? Needed(dish.Dish, c, kit.Plates) : 1;
            double least = Math.Max(needed, c.Component.Steps.Any(s => s.Kit.Concat(s.Operations).Any(k => k.Contains("blend", StringComparison.Ordinal))) && c.Grams > 0 ? Math.Min(1, kit.BlenderLeastGrams / c.Grams) : 0);
            double factor = plates ? Smallest(c, least, Math.Max(1, least), kit) ?? least : tin ?? 1;
            ImmutableArray<HomeLine> lines = [.. c.Lines.Select(l => Line(c, l, factor, kit))];
            double moved = Moved(lines);
            refusals.AddRange(Unmeasured(c, lines, moved, kit));
            made.Add(new HomePart(c, factor, needed, lines, HomeSteps.Of(c, factor, changes), moved));
        }

        // Judged with the pan at its coldest, which is the unsafe end.
        Findings findings = SafetyReview.Review(HomeHeat.AtColdest(heated, kit), code);
        refusals.AddRange(findings.All.Where(f => f.Severity == Severity.Stop).Select(f => new HomeRefusal(f.Component, f.What + (f.Value.Length > 0 ? $" Found {f.Value}, limit {f.Limit}." : ""), f.Remedy)));
        string serves = plates ? FormattableString.Invariant($"{kit.Plates} plates") : dish.Dish.Yields.FirstOrDefault()?.Text ?? "one batch as written";
        return new HomeRecipe(serves, made.ToImmutable(), HomeSubstitute.For(parts.SelectMany(c => c.Component.Steps).Select(s => s.Text)), findings, [.. refusals]);
    }

    /// <summary>Largest move of a ratio: (1 + largest shift) / (1 + smallest shift) − 1; a pinch stands outside.</summary>
    public static double Moved(IEnumerable<HomeLine> lines)
    {
        double[] shifts = [.. lines.Where(l => l.Measure is not null).Select(l => l.Measure!.Shift)];
        return shifts.Length < 2 ? 0 : ((1 + shifts.Max()) / (1 + shifts.Min())) - 1;
    }

    private static HomeLine Line(WeighedComponent c, WeighedLine l, double factor, HomeKit kit)
        => new(l, l.Grams * factor, l.Grade == WeightGrade.Unknown || IsPinch(c, l) ? null : HomeMeasure.Nearest(l, l.Grams * factor, kit));

    private static IEnumerable<HomeRefusal> Unmeasured(WeighedComponent c, ImmutableArray<HomeLine> lines, double moved, HomeKit kit)
    {
        foreach (HomeLine l in lines.Where(l => l.Measure is null && l.Line.Grade != WeightGrade.Unknown && !IsPinch(c, l.Line)))
        {
            yield return new HomeRefusal(c.Component.Name, FormattableString.Invariant($"{HomeMeasure.Number(l.Exact)} g of {l.Line.Food.Food} cannot be weighed on a scale of {kit.ScaleStepGrams:0.#} g within {kit.RatioLimit * 100:0.#} %, and no spoon weight of it is known."),
                "Say on the card what a spoon of it weighs, or use a pocket scale that shows 0.1 g.");
        }

        if (moved > kit.RatioLimit + 1e-9)
        {
            HomeLine high = lines.Where(l => l.Measure is not null).MaxBy(l => l.Measure!.Shift)!;
            HomeLine low = lines.Where(l => l.Measure is not null).MinBy(l => l.Measure!.Shift)!;
            yield return new HomeRefusal(c.Component.Name, FormattableString.Invariant($"Rounded for home, {high.Line.Food.Food} to {low.Line.Food.Food} moves by {moved * 100:0.0} %, more than {kit.RatioLimit * 100:0.#} %."), "A finer scale, or a larger batch of this part.");
        }
    }

    // A spice or herb so small that it only seasons; never salt, an acid, a raising or a setting agent.
    private static bool IsPinch(WeighedComponent c, WeighedLine l) => l.Food.FoodId is { } id && l.Grams < c.Grams * PinchShare && SettingAgent.Find(id) is null
        && (l.Known ?? FoodTable.Default.Find(id)) is { } f && f.Composition.Water is < 15 && !new[] { "salt", "acid", "baking", "bicarbonate", "yeast", "nitrite", "enzyme", "rennet", "citrate" }.Any(w => id.Contains(w, StringComparison.OrdinalIgnoreCase));

    private static double? Smallest(WeighedComponent c, double from, double to, HomeKit kit)
    {
        double? best = null;
        int pocket = int.MaxValue;
        for (double f = from; f <= to * (1 + 1e-9) && !(best is not null && f > from * Roomy); f *= 1 + Step)
        {
            if (Holds(c, f, kit) && c.Lines.Count(l => l.Grams > 0 && !IsPinch(c, l) && HomeMeasure.Nearest(l, l.Grams * f, kit) is { Pocket: true }) is var n && n < pocket)
            {
                (best, pocket) = (f, n);
            }
        }

        return best;
    }

    private static double? Common(WeighedComponent[] parts, HomeKit kit) => Enumerable.Range(0, (int)(2 * TinRoom / Step) + 1)
        .Select(i => 1 + ((i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * Step)).Where(f => parts.All(c => Holds(c, f, kit))).Select(f => (double?)f).FirstOrDefault();

    private static bool Holds(WeighedComponent c, double factor, HomeKit kit)
    {
        double high = double.NegativeInfinity;
        double low = double.PositiveInfinity;
        foreach (WeighedLine l in c.Lines.Where(l => l.Grade != WeightGrade.Unknown && l.Grams > 0 && !IsPinch(c, l)))
        {
            if (HomeMeasure.Nearest(l, l.Grams * factor, kit) is not { } m)
            {
                return false;
            }

            high = Math.Max(high, m.Shift);
            low = Math.Min(low, m.Shift);
        }

        return double.IsInfinity(high) || ((1 + high) / (1 + low)) - 1 <= kit.RatioLimit;
    }

    private static double? Plates(Dish dish) => dish.Yields.FirstOrDefault(y => y.Unit is "plates" or "portions" or "covers" or "people" or "servings" && y.Amount > 0)?.Amount;

    private static double Needed(Dish dish, WeighedComponent c, int plates)
    {
        double all = plates / Plates(dish)!.Value;
        foreach (PlatePart p in dish.Plate.Where(p => p.Component is not null && p.Component.Equals(c.Component.Name, StringComparison.OrdinalIgnoreCase)))
        {
            foreach (CardYield makes in c.Component.Makes.Where(m => m.Amount > 0))
            {
                all = Math.Max(all, (makes.Unit == "g" ? p.Grams : makes.Unit == "pieces" ? p.Pieces : null) is { } each ? plates * each / makes.Amount : 0);
            }
        }

        return all;
    }

    // C1v beside C1: a variant for a diet is not handed out.
    private static bool IsVariant(Component c, Dish dish) => c.Code is { Length: > 1 } code && char.IsLetter(code[^1]) && dish.Components.Any(o => string.Equals(o.Code, code[..^1], StringComparison.OrdinalIgnoreCase));
}
