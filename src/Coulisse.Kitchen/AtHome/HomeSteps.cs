using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.AtHome;

/// <summary>Steps with weights of the home batch. A weight that is the batch's (a line, a sum, what a step takes or should weigh) is scaled; any other is left and said to be the chef's.</summary>
internal static partial class HomeSteps
{
    public static ImmutableArray<HomeStep> Of(WeighedComponent part, double factor, ImmutableArray<HomeHeatChange> changes)
    {
        double[] own =
        [
            .. part.Lines.Select(l => l.Grams), part.Grams, .. part.Lines.GroupBy(l => l.Source.Group).Select(g => g.Sum(l => l.Grams)),
            .. part.Component.Steps.SelectMany(s => s.Uses).Select(u => u.Grams).OfType<double>(), .. part.Component.Steps.Select(s => s.EndGrams).OfType<double>(), .. part.Component.Makes.Where(m => m.Unit == "g").Select(m => m.Amount),
        ];
        return [.. part.Component.Steps.Select(s =>
        {
            HomeHeatChange? change = changes.FirstOrDefault(c => c.Line == s.Span.Line);
            string text = Hands().Replace(s.Text, "").Trim();
            text = Grams().Replace(text, m => Weight(m, own, factor)).Replace("about about ", "about ", StringComparison.Ordinal);
            return new HomeStep(change is null ? text : string.Create(CultureInfo.InvariantCulture, $"{text} AT HOME: hold a pan of water at {change.Celsius:0.#} °C by a thermometer, and leave it in for {change.Minutes:0} min."), change?.Words ?? "");
        })];
    }

    private static string Weight(Match m, double[] own, double factor)
    {
        if (!double.TryParse(m.Groups["n"].Value, NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out double grams) || Math.Abs(factor - 1) < 0.031)
        {
            return m.Value;
        }

        double scaled = grams * factor;
        double shown = scaled >= 50 ? Math.Round(scaled / 5) * 5 : scaled >= 10 ? Math.Round(scaled) : Math.Round(scaled, 1);
        return own.Any(o => Math.Abs(o - grams) <= Math.Max(0.5, o * 0.005)) ? $"about {HomeMeasure.Number(shown)} g" : $"{m.Value} (the chef’s batch)";
    }

    [GeneratedRegex(@"(?<!\d)(?<n>\d[\d,]{0,14}(\.\d+)?) g\b", RegexOptions.ExplicitCapture)]
    private static partial Regex Grams();

    [GeneratedRegex(@"\((two people, |three people, )?(hands )?\d+ min[^)]{0,300}\)|\(hands [^)]{0,300}\)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Hands();
}
