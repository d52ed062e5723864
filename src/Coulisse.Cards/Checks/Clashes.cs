using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Checks;

/// <summary>One thing told twice in figures that do not agree: two measures, two temperature scales.</summary>
internal static class Clashes
{
    private const double MostApart = 0.05;
    private const double MostDegrees = 8;

    public static IEnumerable<Remark> Of(Dish dish) => dish.Components.SelectMany(c => c.Ingredients.SelectMany(Measures).Concat(c.Steps.SelectMany(Scales)));

    private static IEnumerable<Remark> Measures(IngredientLine l)
    {
        foreach (FoodAmount f in l.Foods)
        {
            if (f is not { SecondMeasure: { } second, Amount: { } amount, AmountMax: null, Unit: { } unit } || second.EndsWith("each", StringComparison.Ordinal) || CompoundAmounts.At(second, 0, "en") is not { Unit: { Base: { } sb } su } m || m.Number.Max is not null)
            {
                continue;
            }

            if (Lexicon.Unit(unit, "en") is not { Base: { } fb } fu || fu.Kind != su.Kind || su.Kind is not ("mass" or "volume"))
            {
                continue;
            }

            double first = amount * fb;
            double other = m.Number.Min * sb;
            if (Math.Abs(first - other) > MostApart * Math.Max(first, other) && !(su.Kind == "mass" && PrintedOunces.Agree(first, other)))
            {
                string u = su.Kind == "mass" ? "g" : "ml";
                yield return new Remark(l.Span.Line, "measures clash", System.FormattableString.Invariant($"“{l.Text}”: {first:0.#} {u} and {other:0.#} {u} are told for one amount."));
            }
        }
    }

    private static IEnumerable<Remark> Scales(Step s)
    {
        for (int i = 1; i < s.Temperatures.Length; i++)
        {
            (StepTemperature a, StepTemperature b) = (s.Temperatures[i - 1], s.Temperatures[i]);
            bool two = a.Words.Contains('C') && b.Words.Contains('F') || a.Words.Contains('F') && b.Words.Contains('C');
            int at = two && a.Words.Length > 0 ? s.Text.IndexOf(a.Words, StringComparison.Ordinal) : -1;
            int next = at >= 0 ? s.Text.IndexOf(b.Words, at + a.Words.Length, StringComparison.Ordinal) : -1;
            // Only figures side by side tell one setting: "180 °C (400 °F)", "180 °C/400 °F".
            if (next >= 0 && s.Text[(at + a.Words.Length)..next].Trim() is "(" or "/" or "=" or "|" or "(=" && Math.Abs(a.Celsius - b.Celsius) > MostDegrees)
            {
                yield return new Remark(s.Span.Line, "temperatures clash", System.FormattableString.Invariant($"{a.Words} is {a.Celsius:0} °C and {b.Words} is {b.Celsius:0} °C: “{s.Text}”."));
            }
        }
    }
}
