using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Measures;

namespace Coulisse.Kitchen.AtHome;

/// <summary>An amount as a home cook measures it.</summary>
/// <param name="Text">"250 g", "2 1/2 tsp", "3 yolks".</param>
/// <param name="Grams">What that is, by the table's density or unit weight.</param>
/// <param name="Shift">(measured − exact) / exact.</param>
/// <param name="BySpoon">Measured by spoon or cup.</param>
public sealed record HomeMeasure(string Text, double Grams, double Shift, bool BySpoon)
{
    private static readonly (string Unit, int Parts, double Most)[] Spoons = [("cup", 4, 4), ("tbsp", 2, 8), ("tsp", 8, 4)];

    /// <summary>True when the pocket scale is needed for it.</summary>
    public bool Pocket { get; init; }

    /// <summary>The plainest amount within half the limit: kitchen scale, one spoon or cup, pieces, two kinds of spoon, and the pocket scale last; null when the line has none.</summary>
    /// <param name="line">The line.</param>
    /// <param name="grams">Exact grams wanted, more than 0.</param>
    /// <param name="kit">Scales and spoons.</param>
    public static HomeMeasure? Nearest(WeighedLine line, double grams, HomeKit kit)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(kit);
        double limit = kit.RatioLimit * 0.495;
        HomeMeasure? least = null;
        foreach (HomeMeasure m in Candidates(line, grams, kit))
        {
            if (Math.Abs(m.Shift) <= limit)
            {
                return m;
            }

            least = least is null || Math.Abs(m.Shift) < Math.Abs(least.Shift) ? m : least;
        }

        return least;
    }

    private static IEnumerable<HomeMeasure> Candidates(WeighedLine line, double grams, HomeKit kit)
    {
        Food? food = line.Known ?? (line.Food.FoodId is { } id ? FoodTable.Default.Find(id) : null);
        if (grams >= kit.LeastShown)
        {
            yield return Weighed(grams, kit.ScaleStepGrams, false);
        }

        HomeMeasure? spoon = null;
        foreach ((string unit, int parts, double most) in food is null || Cut(line) ? [] : Spoons)
        {
            if (One(food!, unit, kit) is { } one && Math.Round(grams / one * parts) / parts is > 0 and var count && count <= most)
            {
                HomeMeasure m = new($"{Fraction(count)}\u202F{unit}", count * one, ((count * one) - grams) / grams, true);
                spoon = spoon is null || Math.Abs(m.Shift) < Math.Abs(spoon.Shift) - 0.002 ? m : spoon;
            }
        }

        if (spoon is not null)
        {
            yield return spoon;
        }

        foreach ((string unit, Held piece) in food?.Units.Where(u => u.Value.Value > 0 && !(Cut(line) && u.Key != "piece")).OrderBy(u => u.Key, StringComparer.Ordinal) ?? Enumerable.Empty<KeyValuePair<string, Held>>())
        {
            if (Math.Round(grams / piece.Value) is >= 1 and <= 12 and var count)
            {
                double whole = count * piece.Value;
                yield return new HomeMeasure($"{Number(count)}{(unit is "piece" ? "" : " " + unit)} ({Number(whole)}\u202Fg)", whole, (whole - grams) / grams, false);
            }
        }

        if (food is not null && !Cut(line) && One(food, "tbsp", kit) is { } large && One(food, "tsp", kit) is { } small && Math.Floor(grams / large) is >= 1 and <= 8 and var spoons && Math.Round((grams - (spoons * large)) / small * 8) / 8 is > 0 and var rest)
        {
            double both = (spoons * large) + (rest * small);
            yield return new HomeMeasure($"{Fraction(spoons)}\u202Ftbsp + {Fraction(rest)}\u202Ftsp", both, (both - grams) / grams, true);
        }

        if (kit.PocketStepGrams is { } step && grams >= step / 2)
        {
            yield return Weighed(grams, step, true);
        }
    }

    // Discs, slices and dice do not fill a spoon as the table's food does.
    private static bool Cut(WeighedLine line) => line.Food.Preparation is { } p && new[] { "disc", "slice", "dice", "cut ", "strip", "crumbled", "sheet" }.Any(w => p.Contains(w, StringComparison.OrdinalIgnoreCase));

    private static HomeMeasure Weighed(double grams, double step, bool pocket)
    {
        double on = Math.Max(step, Math.Round(Math.Round(grams / step) * step, 6));
        return new HomeMeasure(Number(on) + "\u202Fg", on, (on - grams) / grams, false) { Pocket = pocket };
    }

    private static double? One(Food food, string unit, HomeKit kit) => food.DensityFor(unit, null) is { } density && Household.SizeOf(unit, kit.Measures) is { } size ? size.Size.Millilitres * density.Density.Value : null;

    /// <summary>Eighths and halves as a cook reads them: 2½, ⅛.</summary>
    internal static string Fraction(double count)
    {
        int whole = (int)Math.Floor(count + 1e-9);
        string part = ((int)Math.Round((count - whole) * 8)) switch { 1 => "⅛", 2 => "¼", 3 => "⅜", 4 => "½", 5 => "⅝", 6 => "¾", 7 => "⅞", _ => "" };
        return whole == 0 && part.Length > 0 ? part : whole.ToString(CultureInfo.InvariantCulture) + part;
    }

    internal static string Number(double value) => value.ToString(value >= 100 ? "0" : value >= 10 ? "0.#" : "0.##", CultureInfo.InvariantCulture);
}
