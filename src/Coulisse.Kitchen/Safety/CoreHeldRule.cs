using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Kitchen.Safety;

/// <summary>A step in a bath with a stated core limit must keep it in the cautious case, and again with the bath 1 °C low and the piece 10 % thicker.</summary>
/// <remarks>
/// The thickness may stand in an earlier step of the component. The start is taken as 5 °C, or a colder stated fridge:
/// an upper limit ("not warmer than 10 °C") does not make it warmer, since a colder start is the slower one.
/// In an oven the middle is not worked out (a wet surface stays near the wet-bulb temperature): the probe decides, and a note says so.
/// </remarks>
internal static class CoreHeldRule
{
    private const double AssumedStart = 5;

    public static IEnumerable<CoreHeld> Judge(WeighedComponent weighed)
    {
        Component component = weighed.Component;
        double? thickness = null;
        double start = AssumedStart;
        bool frozen = false;
        foreach (Step step in component.Steps)
        {
            thickness = step.ThicknessMillimetres ?? thickness;
            frozen |= step.Temperatures.Any(t => t.Of == TemperatureOf.Freezer);
            foreach (StepTemperature fridge in step.Temperatures.Where(t => t.Of == TemperatureOf.Fridge && t.Celsius >= 0))
            {
                start = Math.Min(start, fridge.Celsius);
            }

            StepTemperature? core = step.Temperatures.Where(t => t.Of == TemperatureOf.Core && t.Bound != Bound.AtMost).MaxBy(t => t.Celsius);
            StepTemperature? bath = step.Temperatures.Where(t => t.Of == TemperatureOf.Bath).MinBy(t => t.Celsius);
            bool oven = step.Temperatures.Any(t => t.Of == TemperatureOf.Oven);
            if (core is null || (bath is null && !oven))
            {
                continue;
            }

            double hold = core.HoldMinutes ?? 0;
            string limit = hold > 0 ? $"{F(core.Celsius)} °C in the middle for {F(hold)} min" : $"{F(core.Celsius)} °C in the middle";
            yield return new CoreHeld(
                new ControlPoint(component.Name, step.Span.Line, "Survival of vegetative organisms", limit, "Probe in the middle of the thickest piece, each load, by the cook in charge", "Leave it in until it is there; if that cannot be, discard", "Time in, time out, core reading, name") { LeastCelsius = core.Celsius },
                bath is null
                    ? new Finding(Severity.Note, "SAF003", component.Name, step.Span.Line, "How the middle heats in an oven is not worked out here: the probe decides.", "", limit, "", "Probe the thickest piece and write the reading down.", "")
                    : InBath(weighed, step, thickness, start, frozen, bath.Celsius, core.Celsius, hold, limit))
            {
                Trace = CoreTrace.Make(weighed, step, thickness, start, frozen, bath?.Celsius, core.Celsius, hold),
            };
        }
    }

    private static Finding? InBath(WeighedComponent weighed, Step step, double? thickness, double start, bool frozen, double bath, double core, double hold, string limit)
    {
        string component = weighed.Component.Name;
        Finding Unshown(string why, string remedy) => new(Severity.Stop, "SAF002", component, step.Span.Line, "It cannot be shown safe: " + why, "", limit, "", remedy, "");

        double? minutes = step.Times.Where(t => t.Kind != TimeKind.Limit && t.Bound != Bound.AtMost).Max(t => t.MinutesMin);
        if (frozen)
        {
            return Unshown("a start from frozen is outside this model.", "Thaw it at 5 °C or less first.");
        }

        if (thickness is not (>= 1 and <= 250))
        {
            return Unshown(
                thickness is { } t ? $"{F(t)} mm is outside the model (1 to 250 mm)." : "the card does not say how thick the piece is.",
                "Write the greatest thickness in millimetres into the step.");
        }

        if (minutes is not { } held)
        {
            return Unshown("the card does not say how long it stays in the bath.", "Write the minutes into the step.");
        }

        if (bath is not (>= 1 and <= 100))
        {
            return Unshown($"a bath of {F(bath)} °C is outside the model (1 to 100 °C).", "Write the bath's setting in degrees Celsius.");
        }

        Length thick = Length.FromMillimetres(thickness.Value);
        Length thicker = thick * 1.1;
        Temperature from = Temperature.FromCelsius(start);
        Temperature at = Temperature.FromCelsius(bath);
        Temperature low = at - TemperatureDelta.FromKelvin(1);
        Temperature wanted = Temperature.FromCelsius(core);
        PieceInBath piece = PieceInBath.Of(weighed, step, from, at);
        FlatBag slow = piece.Cautious;
        double? meant = slow.TimeTo(thick, from, at, wanted)?.TotalMinutes + hold;
        double? off = slow.TimeTo(thicker, from, low, wanted)?.TotalMinutes + hold;
        if (off <= held)
        {
            return null;
        }

        bool stop = meant is not { } m || m > held;
        Duration time = Duration.FromMinutes(held);
        double after = slow.CoreAfter(thick, from, at, time).Celsius;
        string remedy = meant is { } enough
            ? $"{F(thickness.Value)} mm: {F(held)} min → {Up(enough)} min{Thin(slow, held - hold, from, at, wanted, 1, ", or at most {0} mm in " + F(held) + " min")}"
                + (off is { } more ? $"; with the bath at {F(low.Celsius)} °C and the piece 10 % thicker {Up(more)} min{Thin(slow, held - hold, from, low, wanted, 1.1, " or {0} mm")}." : $"; a bath 1 °C low never reaches {F(core)} °C: set it higher.")
            : $"Set the bath above {F(core + 1)} °C: at {F(bath)} °C the middle never gets there.";
        return new Finding(
            stop ? Severity.Stop : Severity.Warn,
            "SAF001",
            component,
            step.Span.Line,
            stop
                ? $"In the cautious case the middle of {F(thickness.Value)} mm is at {after.ToString("0.0", CultureInfo.InvariantCulture)} °C after {F(held)} min in the bath: {limit} is not kept." + Matters(slow, thick, from, at, wanted)
                : $"It holds as written, but not with the bath 1 °C low and the piece 10 % thicker: {limit}." + Matters(slow, thick, from, at, wanted),
            meant is { } v ? $"{v.ToString("0.0", CultureInfo.InvariantCulture)} min needed" : "never reached",
            $"{F(held)} min in the bath, {limit}",
            meant is { } w ? $"{(held - w).ToString("0.0", CultureInfo.InvariantCulture)} min" : "",
            remedy,
            piece.Why)
        {
            Working = Origin.Computed(
                "Time for the middle of the piece to reach the limit, plus the hold, cautious case.",
                "θ = Σ Cₙ·exp(−ζₙ²·α·t/L²), ζ·tan ζ = h·L/k",
                piece.Why,
                new OriginInput("start", $"{F(start)} °C", Origin.Assumed(start < AssumedStart ? "the stated fridge" : "food from the fridge")),
                new OriginInput("bath", $"{F(bath)} °C"),
                new OriginInput("thickness", $"{F(thickness.Value)} mm")),
        };
    }

    /// <summary>Which of bath, thickness and start moves the minutes most by what it may be off.</summary>
    private static string Matters(FlatBag bag, Length thick, Temperature from, Temperature bath, Temperature core)
    {
        double Off(Duration? d) => d is { } x && bag.TimeTo(thick, from, bath, core) is { } as0 ? Math.Abs((x - as0).TotalMinutes) : double.PositiveInfinity;
        double lower = Off(bag.TimeTo(thick, from, bath - TemperatureDelta.FromKelvin(1), core));
        double thicker = Off(bag.TimeTo(thick * 1.1, from, bath, core));
        double colder = Off(bag.TimeTo(thick, from - TemperatureDelta.FromKelvin(2), bath, core));
        (string what, double by) = lower >= thicker && lower >= colder ? ("the bath's temperature (1 °C", lower) : thicker >= colder ? ("the thickness (a tenth", thicker) : ("the start (2 °C", colder);
        return $" What matters most is {what}: {(double.IsFinite(by) ? F(Math.Round(by)) + " min" : "whether it gets there at all")}).";
    }

    private static string Thin(FlatBag bag, double minutes, Temperature from, Temperature bath, Temperature core, double over, string format)
        => minutes > 0 && bag.ThickestIn(Duration.FromMinutes(minutes), from, bath, core) is { } most
            ? string.Format(CultureInfo.InvariantCulture, format, F(Math.Floor(most.Millimetres / over * 10) / 10))
            : "";

    private static string F(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Up(double minutes) => Math.Ceiling(minutes).ToString("0", CultureInfo.InvariantCulture);
}
