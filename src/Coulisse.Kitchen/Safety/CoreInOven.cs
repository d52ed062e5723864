using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Kitchen.Safety;

/// <summary>A core limit in an oven, between the shortest and the longest time that a piece of its thickness can take.</summary>
/// <remarks>
/// Sooner than the shortest: it cannot be so, a stop. Later than the longest, with the oven 10 °C low and the piece 10 % thicker too: silent. Between them, and where thickness or minutes are missing, a note that the probe decides, with the two figures.
/// The limit of a roast is its core, not its minutes: a card that gives none is no stop.
/// </remarks>
internal static class CoreInOven
{
    private const double Swing = 10;   // K: a thermostat's swing and the door (common practice, no source)
    private static readonly string[] Covers = ["covered", "cover ", "cover with", "lid", "foil", "bagged", "in a bag", "in its bag", "roasting bag", "sealed", "salt crust", "en croute", "en papillote", "parcel"];
    private static readonly string[] Bare = ["uncover", "without a lid", "no lid", "lid off", "remove the lid", "remove the foil", "take off the lid", "take off the foil", "lift the lid", "open"];

    /// <summary>Minutes in the oven: only where the step has one setting and one time of the oven; "ten minutes hot, then cooler to a core of …" has no length.</summary>
    public static double? Stays(Step step) => Only(step)?.MinutesMin;

    private static StepTime? Only(Step step)
    {
        StepTime[] times = [.. step.Times.Where(t => t.Kind == TimeKind.Oven && t.Bound != Bound.AtMost)];
        return times.Length == 1 && step.Temperatures.Count(t => t.Of == TemperatureOf.Oven) == 1 ? times[0] : null;
    }

    /// <summary>The finding; null when the limit is kept for certain.</summary>
    public static Finding? Judge(CoreAsked asked, StepTemperature oven)
    {
        Finding Probe(string says, string value) => new(Severity.Note, "SAF003", asked.Component, asked.Step.Span.Line, says, value, asked.Limit, "", "Probe the thickest piece and write the reading down.", value.Length > 0 ? Source : "");
        if (asked.Thickness is not (>= 1 and <= 250) || oven.Celsius is not (>= 40 and <= 300) || asked.Core >= oven.Celsius)
        {
            return asked.Core >= oven.Celsius && oven.Bound != Bound.AtLeast
                ? new Finding(Severity.Stop, "SAF001", asked.Component, asked.Step.Span.Line, $"An oven of {F(oven.Celsius)} °C never brings the middle to {F(asked.Core)} °C.", "never reached", asked.Limit, "", $"Set the oven above {F(asked.Core + Swing)} °C.", "A body is never hotter than what heats it")
                : Probe("How the middle heats in an oven is not worked out here: the probe decides.", "");
        }

        bool covered = Covers.Any(w => asked.Step.Text.Contains(w, StringComparison.OrdinalIgnoreCase)) && !Bare.Any(w => asked.Step.Text.Contains(w, StringComparison.OrdinalIgnoreCase));
        Length thick = Length.FromMillimetres(asked.Thickness.Value);
        Temperature start = Temperature.FromCelsius(asked.Start);
        Temperature core = Temperature.FromCelsius(asked.Core);
        OvenPiece piece = new(PieceInBath.Of(asked.Weighed, asked.Step, Temperature.FromCelsius(Math.Max(0, asked.Start)), Temperature.FromCelsius(Math.Min(100, oven.Celsius))).Cautious, Temperature.FromCelsius(oven.Celsius), covered);
        double? least = piece.AtLeast(thick, start, core)?.TotalMinutes + asked.Hold;

        // "At least 60 min" may be any longer; of "60 to 80 min" the longer is fair to the shortest time
        StepTime? only = Only(asked.Step);
        if (only is { Bound: Bound.At } && (only.MinutesMax ?? only.MinutesMin) is { } given && least is { } shortest && given < shortest)
        {
            string thin = piece.ThickestAtAll(Duration.FromMinutes(Math.Max(0.1, given - asked.Hold)), start, core) is { } most ? $"; or at most {F(Math.Floor(most.Millimetres * 10) / 10)} mm" : "";
            return new Finding(Severity.Stop, "SAF001", asked.Component, asked.Step.Span.Line,
                $"In {F(given)} min at {F(oven.Celsius)} °C the middle of {F(asked.Thickness.Value)} mm cannot be there, not even as a ball with a dry face in moving air: {asked.Limit}.",
                $"{F(Math.Round(shortest, 1))} min at the least", $"{F(given)} min in the oven, {asked.Limit}", $"{F(Math.Round(given - shortest, 1))} min",
                $"{F(given)} min → {F(Math.Ceiling(shortest))} min at the very least{thin}; leave it in until the probe says so.", Source);
        }

        double? most1 = asked.Frozen ? null : piece.AtMost(thick, start, core)?.TotalMinutes + asked.Hold;
        double? off = most1 is null ? null : (piece with { Oven = Temperature.FromCelsius(oven.Celsius - Swing) }).AtMost(thick * 1.1, start, core)?.TotalMinutes + asked.Hold;
        if (asked.Minutes is { } stays && off <= stays)
        {
            return null;
        }

        string longest = most1 is { } m ? $"{F(Math.Ceiling(m))} min"
            : asked.Frozen ? "no time that can be shown (from frozen)"
            : covered ? "no time within a day"
            : $"no time that can be shown: an open face that stays wet settles at {F(Math.Round(piece.Settles.Celsius))} °C";
        return Probe($"When the middle of {F(asked.Thickness.Value)} mm is there in an oven depends on air and on how wet its face stays: the probe decides. {(covered ? "Covered" : "Open")}, it takes from {(least is { } l ? F(Math.Floor(l)) + " min" : "never")} to {longest}.", $"{(least is { } n ? F(Math.Floor(n)) : "?")} min to {(most1 is { } x ? F(Math.Ceiling(x)) + " min" : "not shown")}");
    }

    private const string Source = "Exact series and finite volumes between two bounds: a ball, h 60 W/(m²·K), dry; a slab, h 10 W/(m²·K), wet or covered (ranges of h for ovens from memory)";

    private static string F(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
