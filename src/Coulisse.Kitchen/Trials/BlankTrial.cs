using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Trials;

/// <summary>A trial's sheet to fill in: the card's own lines, steps and parts, with room beside each.</summary>
public static class BlankTrial
{
    /// <summary>The sheet as text.</summary>
    /// <param name="dish">The card, weighed.</param>
    /// <param name="factor">How many times the card's amount will be made.</param>
    /// <param name="version">Version of the card when it is a kept one.</param>
    public static string Of(WeighedDish dish, double factor = 1, int? version = null)
    {
        StringBuilder b = new();
        b.Append(CultureInfo.InvariantCulture, $"# Trial of {dish.Dish.Title}\n\nMade on YYYY-MM-DD by NAME.");
        if (version is { } v)
        {
            b.Append(CultureInfo.InvariantCulture, $" Card version {v}.");
        }

        b.Append(CultureInfo.InvariantCulture, $" {factor:0.###} times the card. Good run, or not a good run?\n\n## Weighed\n| What | Card, g | Weighed, g |\n|---|---|---|\n");
        foreach (WeighedLine line in dish.Components.SelectMany(c => c.Lines))
        {
            b.Append(CultureInfo.InvariantCulture, $"| {Cell(line.Food.Food)} | {(line.Grade == WeightGrade.Unknown ? "" : Math.Round(line.Grams * factor, 1).ToString(CultureInfo.InvariantCulture))} | |\n");
        }

        b.Append("\n## Times\n| Part | Step | Minutes |\n|---|---|---|\n");
        foreach (Component c in dish.Dish.Components)
        {
            foreach (Step step in c.Steps)
            {
                b.Append(CultureInfo.InvariantCulture, $"| {Cell(c.Name)} | {Cell(step.Text)} | |\n");
            }
        }

        b.Append("\n## Came out\n| Part | In, g | Out, g | Left behind, g |\n|---|---|---|---|\n");
        foreach (WeighedComponent c in dish.Components.Where(c => !c.Lines.IsEmpty))
        {
            b.Append(CultureInfo.InvariantCulture, $"| {Cell(c.Component.Name.Length > 0 ? c.Component.Name : dish.Dish.Title)} | | | |\n");
        }

        Core(b, dish.Dish);
        b.Append(CultureInfo.InvariantCulture, $"\n## Tasting\n| Taster | {string.Join(" | ", Tasting.Scales)} |\n|---|{string.Concat(Enumerable.Repeat("---|", Tasting.Scales.Length))}\n| | {string.Join(" | ", Tasting.Scales.Select(_ => ""))} |\n\n## Notes\n");
        return b.ToString();
    }

    // Only where something lies in a bath: a probe's file there tells how fast heat goes in.
    private static void Core(StringBuilder b, Dish dish)
    {
        List<string> rows = [];
        foreach (Component c in dish.Components)
        {
            double? thick = null;
            foreach (Step step in c.Steps)
            {
                thick = step.ThicknessMillimetres ?? thick;
                if (step.Operation != "fill_bath" && step.Temperatures.FirstOrDefault(t => t.Of == TemperatureOf.Bath && t.Bound == Bound.At) is { } bath && step.Times.Any(t => t.MinutesMin >= 10))
                {
                    rows.Add(string.Create(CultureInfo.InvariantCulture, $"| {Cell(c.Name)} | {Cell(step.Text)} | | {(thick is null ? "" : "slab")} | {thick:0.#} | {bath.Celsius:0.#} | |\n"));
                }
            }
        }

        if (rows.Count > 0)
        {
            b.Append("\n## Core\n| Part | Step | File | Shape | Size, mm | Medium, °C | h, W/(m²·K) |\n|---|---|---|---|---|---|---|\n").AppendJoin("", rows);
        }
    }

    private static string Cell(string text) => text.ReplaceLineEndings(" ").Replace('|', '/').Trim();
}
