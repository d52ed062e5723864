using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>A core limit that is read in the wrong place or on the wrong scale: a probe in the bath's water, or a middle hotter than moist food can be.</summary>
internal static partial class ProbeRule
{
    private const double Moist = 105;   // °C: above it the middle of moist food cannot be; baked crumb ends below 100

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components)
        {
            foreach (Step s in c.Component.Steps)
            {
                StepTemperature? core = s.Temperatures.Where(t => t.Of == TemperatureOf.Core && t.Bound != Bound.AtMost).MaxBy(t => t.Celsius);
                if (core is null)
                {
                    continue;
                }

                if (Outside().Match(s.Text) is { Success: true } said)
                {
                    yield return new Finding(Severity.Warn, "SAF048", c.Component.Name, s.Span.Line, $"The limit is for the middle, and the probe reads something else (“{said.Value.Trim()}”).", "", FormattableString.Invariant($"{core.Celsius:0.#} °C in the middle"), "", "Put the probe into the middle of the thickest piece, through foam tape where it is bagged.", "Common practice, no source");
                }

                if (core.Celsius > Moist)
                {
                    double meant = (core.Celsius - 32) / 1.8;
                    yield return new Finding(Severity.Warn, "SAF048", c.Component.Name, s.Span.Line, FormattableString.Invariant($"The middle of moist food is never at {core.Celsius:0.#} °C: water boils away first. Was Fahrenheit meant?"), FormattableString.Invariant($"{core.Celsius:0.#} °C"), "100 °C", FormattableString.Invariant($"{core.Celsius - 100:0.#} °C too hot"), FormattableString.Invariant($"{core.Celsius:0.#} °F is {meant:0.#} °C: write the figure with its unit."), "Boiling point of water");
                }
            }
        }
    }

    [GeneratedRegex(@"\b(probe|thermometer|sensor)\b[^.;,]{0,20}\b(in|into|inside)\b (the |its )?(bath|water|oven|air|liquid|pan)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Outside();
}
