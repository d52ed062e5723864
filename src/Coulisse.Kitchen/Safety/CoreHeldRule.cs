using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Kitchen.Safety;

/// <summary>A step in a bath with a stated core limit must keep it in the cautious case, and again with the bath 1 °C low and the piece 10 % thicker; from the fridge or from frozen. In an oven: <see cref="CoreInOven"/>.</summary>
/// <remarks>The thickness may stand in an earlier step of the component; where the piece starts is <see cref="PieceState"/>'s.</remarks>
internal static class CoreHeldRule
{
    private const int LowestKelvin = 3;   // a bath further off than this is another bath: it is set anew

    public static IEnumerable<CoreHeld> Judge(WeighedComponent weighed)
    {
        Component component = weighed.Component;
        PieceState piece = new(weighed);
        foreach (Step step in component.Steps)
        {
            piece.Enter(step);
            StepTemperature? core = step.Temperatures.Where(t => t.Of == TemperatureOf.Core && t.Bound != Bound.AtMost).MaxBy(t => t.Celsius);
            StepTemperature? bath = step.Temperatures.Where(t => t.Of == TemperatureOf.Bath).MinBy(t => t.Celsius);
            StepTemperature? oven = step.Temperatures.Where(t => t.Of == TemperatureOf.Oven).MaxBy(t => t.Celsius);
            if (core is not null && (bath ?? oven) is not null)
            {
                double hold = core.HoldMinutes ?? 0;
                string limit = hold > 0 ? $"{F(core.Celsius)} °C in the middle for {F(hold)} min" : $"{F(core.Celsius)} °C in the middle";
                CoreAsked asked = new(weighed, step, piece.Thickness, piece.Start, piece.Frozen, bath is null ? CoreInOven.Stays(step) : Stays(step), core.Celsius, hold, limit);
                (Finding? found, JudgedAgain? again) = bath is null ? (CoreInOven.Judge(asked, oven!), null) : InBath(asked, bath.Celsius);
                yield return new CoreHeld(
                    new ControlPoint(component.Name, step.Span.Line, "Survival of vegetative organisms", limit, "Probe in the middle of the thickest piece, each load, by the cook in charge", "Leave it in until it is there; if that cannot be, discard", "Time in, time out, core reading, name") { LeastCelsius = core.Celsius, WhenLow = bath is null ? [] : WhenLow(asked, bath.Celsius) },
                    found)
                {
                    Again = again,
                    Trace = bath is null ? null : CoreTrace.Make(asked, bath.Celsius),
                };
            }

            piece.Leave(step);
        }
    }

    // A bath that will not come up: each degree below the set point until the middle never gets there.
    private static ImmutableArray<LowBath> WhenLow(CoreAsked asked, double bath)
    {
        if (asked.Thickness is not (>= 1 and <= 250) || bath is not (>= 5 and <= 100))
        {
            return [];
        }

        PieceHeating piece = PieceHeating.Of(asked, Temperature.FromCelsius(bath));
        ImmutableArray<LowBath>.Builder low = ImmutableArray.CreateBuilder<LowBath>();
        for (int k = 1; k <= LowestKelvin; k++)
        {
            double? minutes = piece.TimeTo(Length.FromMillimetres(asked.Thickness.Value) * 1.1, Temperature.FromCelsius(bath - k), Temperature.FromCelsius(asked.Core))?.TotalMinutes + asked.Hold;
            low.Add(new LowBath(bath - k, minutes is { } m ? Math.Max(Math.Ceiling(m), asked.Minutes ?? 0) : null));
            if (minutes is null)
            {
                break;
            }
        }

        return low.ToImmutable();
    }

    /// <summary>Minutes the card leaves it in; null when it does not say.</summary>
    internal static double? Stays(Step step) => step.Times.Where(t => t.Kind != TimeKind.Limit && t.Bound != Bound.AtMost).Max(t => t.MinutesMin);

    private static (Finding? Found, JudgedAgain? Again) InBath(CoreAsked asked, double bath)
    {
        (double core, double hold, string limit) = (asked.Core, asked.Hold, asked.Limit);
        (Finding?, JudgedAgain?) Unshown(string why, string remedy) => (new(Severity.Stop, "SAF002", asked.Component, asked.Step.Span.Line, "It cannot be shown safe: " + why, "", limit, "", remedy, ""), null);
        if (asked.Thickness is not (>= 1 and <= 250))
        {
            return Unshown(
                asked.Thickness is { } t ? $"{F(t)} mm is outside the model (1 to 250 mm)." : "the card does not say how thick the piece is.",
                "Write the greatest thickness in millimetres into the step.");
        }

        if (asked.Minutes is not { } held)
        {
            return Unshown("the card does not say how long it stays in the bath.", "Write the minutes into the step.");
        }

        if (bath is not (>= 1 and <= 100))
        {
            return Unshown($"a bath of {F(bath)} °C is outside the model (1 to 100 °C).", "Write the bath's setting in degrees Celsius.");
        }

        Length thick = Length.FromMillimetres(asked.Thickness.Value);
        Length thicker = thick * 1.1;
        Temperature at = Temperature.FromCelsius(bath);
        Temperature low = at - TemperatureDelta.FromKelvin(1);
        Temperature wanted = Temperature.FromCelsius(core);
        PieceHeating piece = PieceHeating.Of(asked, at);
        double? meant = piece.TimeTo(thick, at, wanted)?.TotalMinutes + hold;
        double? off = piece.TimeTo(thicker, low, wanted)?.TotalMinutes + hold;
        JudgedAgain again = new(asked.Component, asked.Step.Span.Line, limit, held, meant, off);
        if (again.Kept)
        {
            return (null, again);
        }

        bool stop = meant is not { } m || m > held;
        double after = piece.CoreAfter(thick, at, held).Celsius;
        string remedy = meant is { } enough
            ? $"{F(asked.Thickness.Value)} mm{piece.From}: {F(held)} min → {Up(enough)} min{Thin(piece, held - hold, at, wanted, 1, ", or at most {0} mm in " + F(held) + " min")}"
                + (off is { } more ? $"; with the bath at {F(low.Celsius)} °C and the piece 10 % thicker {Up(more)} min{Thin(piece, held - hold, low, wanted, 1.1, " or {0} mm")}." : $"; a bath 1 °C low never reaches {F(core)} °C: set it higher.")
                + Thawed(piece, thick, at, wanted, hold)
            : $"Set the bath above {F(core + 1)} °C: at {F(bath)} °C the middle never gets there.";
        return (new Finding(
            stop ? Severity.Stop : Severity.Warn,
            "SAF001",
            asked.Component,
            asked.Step.Span.Line,
            stop
                ? $"In the cautious case the middle of {F(asked.Thickness.Value)} mm{piece.From} is at {after.ToString("0.0", CultureInfo.InvariantCulture)} °C after {F(held)} min in the bath: {limit} is not kept." + Matters(piece, thick, at, wanted)
                : $"It holds as written{piece.From}, but not with the bath 1 °C low and the piece 10 % thicker: {limit}." + Matters(piece, thick, at, wanted),
            meant is { } v ? $"{v.ToString("0.0", CultureInfo.InvariantCulture)} min needed" : "never reached",
            $"{F(held)} min in the bath, {limit}",
            meant is { } w ? $"{(held - w).ToString("0.0", CultureInfo.InvariantCulture)} min" : "",
            remedy,
            piece.Why)
        {
            Working = Origin.Computed(
                piece.IsFrozen ? "Time until no ice is left in the middle, and from there for the thawed piece to reach the limit, plus the hold, cautious case." : "Time for the middle of the piece to reach the limit, plus the hold, cautious case.",
                piece.IsFrozen ? "∂H/∂t = ∂/∂x(k·∂T/∂x), H with all water's ice, until T ≥ 0 °C; then θ = Σ Cₙ·exp(−ζₙ²·α·t/L²), ζ·tan ζ = h·L/k" : "θ = Σ Cₙ·exp(−ζₙ²·α·t/L²), ζ·tan ζ = h·L/k",
                piece.Why,
                new OriginInput("start", $"{F(asked.Start)} °C", Origin.Assumed(asked.Frozen ? "the stated freezer, -18 °C at the warmest" : asked.Start < 5 ? "the stated fridge, or just thawed" : "food from the fridge")),
                new OriginInput("bath", $"{F(bath)} °C"),
                new OriginInput("thickness", $"{F(asked.Thickness.Value)} mm")),
        }, again);
    }

    // What thawing it first would save, for a piece that goes in frozen.
    private static string Thawed(PieceHeating piece, Length thick, Temperature bath, Temperature core, double hold)
        => piece.IsFrozen && piece.AfterThaw(thick, bath, core) is { } thawed ? $" Thawed first at 5 °C or less: {Up(thawed.TotalMinutes + hold)} min." : "";

    /// <summary>Which of bath, thickness and start moves the minutes most by what it may be off.</summary>
    private static string Matters(PieceHeating piece, Length thick, Temperature bath, Temperature core)
    {
        double Off(Duration? d) => d is { } x && piece.TimeTo(thick, bath, core) is { } as0 ? Math.Abs((x - as0).TotalMinutes) : double.PositiveInfinity;
        double lower = Off(piece.TimeTo(thick, bath - TemperatureDelta.FromKelvin(1), core));
        double thicker = Off(piece.TimeTo(thick * 1.1, bath, core));
        double colder = Off(piece.Colder(2).TimeTo(thick, bath, core));
        (string what, double by) = lower >= thicker && lower >= colder ? ("the bath's temperature (1 °C", lower) : thicker >= colder ? ("the thickness (a tenth", thicker) : ("the start (2 °C", colder);
        return $" What matters most is {what}: {(double.IsFinite(by) ? F(Math.Round(by)) + " min" : "whether it gets there at all")}).";
    }

    private static string Thin(PieceHeating piece, double minutes, Temperature bath, Temperature core, double over, string format)
        => minutes > 0 && piece.ThickestIn(Duration.FromMinutes(minutes), bath, core) is { } most
            ? string.Format(CultureInfo.InvariantCulture, format, F(Math.Floor(most.Millimetres / over * 10) / 10))
            : "";

    private static string F(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Up(double minutes) => Math.Ceiling(minutes).ToString("0", CultureInfo.InvariantCulture);
}
