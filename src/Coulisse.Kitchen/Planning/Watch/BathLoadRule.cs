using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Watch;

/// <summary>A bath that a plan loads with more than it takes, or whose water a load pulls down so far that the middle is late.</summary>
/// <remarks>
/// A bath takes a third of its water as food (common practice, no source), so a batch goes in as many loads. A load cools the water by all its heat at once and the heater brings it back in a straight line (<see cref="Medium.Sagging"/>: cautious); the middle is followed in that water by the finite volumes.
/// Only where the plan's minutes, shared among the loads, no longer hold the card's limit is there a finding; a load the plan gave time for is silent.
/// </remarks>
internal static class BathLoadRule
{
    private const double FoodInBath = 1 / 3.0;
    private const double FoodHeat = 3.7;   // kJ/(kg·K)

    /// <summary>Findings of one dish.</summary>
    /// <param name="dish">The batch, weighed.</param>
    /// <param name="bath">The kitchen's bath.</param>
    /// <param name="planned">Minutes the plan gives, by card line.</param>
    public static IEnumerable<Finding> Judge(WeighedDish dish, WaterBath bath, IReadOnlyDictionary<int, double> planned)
    {
        foreach (WeighedComponent c in dish.Components.Where(c => c.Grams > 0))
        {
            PieceState piece = new(c);
            foreach (Step s in c.Component.Steps)
            {
                piece.Enter(s);
                if (s.Temperatures.Where(t => t.Of == TemperatureOf.Bath && t.Celsius is > 20 and <= 100).Select(t => (double?)t.Celsius).Min() is { } set && CoreHeldRule.Stays(s) is { } written && planned.TryGetValue(s.Span.Line, out double minutes))
                {
                    double holds = bath.Water.Grams * FoodInBath;
                    int loads = (int)Math.Max(1, Math.Ceiling((c.Grams / holds) - 1e-9));
                    Finding? found = minutes < (loads * written) - 0.5 ? Overfull(c, s, bath, loads, written, minutes) : Sags(c, s, piece, bath, Temperature.FromCelsius(set), loads, minutes / loads);
                    if (found is not null)
                    {
                        yield return found;
                    }
                }

                piece.Leave(s);
            }
        }
    }

    private static Finding Overfull(WeighedComponent c, Step s, WaterBath bath, int loads, double written, double minutes) => new(
        Severity.Stop, "SAF046", c.Component.Name, s.Span.Line,
        Say($"{c.Grams / 1000:0.#} kg in {bath.Water.Grams / 1000:0.#} l of bath: the bags crowd, the water does not go round them, and the plan's {minutes:0} min are too short for {loads} loads."),
        Say($"{c.Grams / 1000:0.#} kg at once"), Say($"{bath.Water.Grams * FoodInBath / 1000:0.#} kg, a third of the water"), Say($"{(c.Grams - (bath.Water.Grams * FoodInBath)) / 1000:0.#} kg too much"),
        Say($"{loads} loads of {c.Grams / loads / 1000:0.#} kg, {loads * written:0} min in all; or a bath of {c.Grams / FoodInBath / 1000:0} l."), "common practice, no source");

    private static Finding? Sags(WeighedComponent c, Step s, PieceState state, WaterBath bath, Temperature set, int loads, double minutes)
    {
        StepTemperature? core = s.Temperatures.Where(t => t.Of == TemperatureOf.Core && t.Bound != Bound.AtMost).MaxBy(t => t.Celsius);
        if (core is null || state.Frozen || state.Thickness is not (>= 1 and <= 250 and var mm) || core.Celsius >= set.Celsius)
        {
            return null;   // from frozen, and without a thickness, the card itself is stopped
        }

        Temperature start = Temperature.FromCelsius(state.Start);
        FlatBag slow = PieceInBath.Of(c, s, start, set).Cautious;
        double hold = core.HoldMinutes ?? 0;
        double? Needed(double grams)
        {
            Energy taken = WaterBath.HeatTakenUp(Mass.FromGrams(grams), SpecificHeat.FromKilojoulesPerKilogramKelvin(FoodHeat), start, set);
            if (bath.Regain(taken) is not { } back)
            {
                return null;
            }

            HeatMaterial food = HeatMaterial.Constant(Conductivity.FromWattsPerMetreKelvin(slow.Conductivity), Diffusivity.FromSquareMetresPerSecond(slow.Diffusivity));
            double whole = slow.TimeTo(Length.FromMillimetres(mm), start, set, Temperature.FromCelsius(core.Celsius))!.Value.TotalMinutes;
            return HeatBody.Piece(SolidShape.Slab, [Length.FromMillimetres(mm)], food, new BodyFace(slow.Surface, Medium.Sagging(set, bath, taken)), 16)
                .Follow(start, Duration.FromMinutes(Math.Min(40_000, (2 * whole) + (3 * back.TotalMinutes) + 10)), 0.02, 1200).TimeTo(Temperature.FromCelsius(core.Celsius))?.TotalMinutes + hold;
        }

        double load = c.Grams / loads;
        double needed = Needed(load) ?? double.PositiveInfinity;
        if (needed <= minutes || Needed(1) is not { } alone || alone > minutes)
        {
            return null;   // what is too short by itself is the card's own finding
        }

        (double least, double most) = (1, load);
        while (most - least > 10)
        {
            double middle = (least + most) / 2;
            (least, most) = Needed(middle) <= minutes ? (middle, most) : (least, middle);
        }

        Energy all = WaterBath.HeatTakenUp(Mass.FromGrams(load), SpecificHeat.FromKilojoulesPerKilogramKelvin(FoodHeat), start, set);
        return new Finding(
            Severity.Warn, "SAF046", c.Component.Name, s.Span.Line,
            Say($"{load / 1000:0.#} kg at once pull {bath.Water.Grams / 1000:0.#} l of bath down by {bath.Fall(all).Kelvin:0.#} °C; it is back after {bath.Regain(all)?.TotalMinutes:0} min, and the middle is late."),
            double.IsFinite(needed) ? Say($"{Math.Ceiling(needed):0} min needed") : "never reached", Say($"{minutes:0} min in the plan, {core.Celsius:0.#} °C in the middle{(hold > 0 ? Say($" for {hold:0.#} min") : "")}"), double.IsFinite(needed) ? Say($"{Math.Ceiling(needed - minutes):0} min short") : "",
            (double.IsFinite(needed) ? Say($"{minutes:0} min → {Math.Ceiling(needed):0} min a load; or loads") : "Loads") + Say($" of at most {Math.Floor(least / 10) / 100:0.0#} kg; or put the bags in when the bath is {Math.Ceiling(bath.Fall(all).Kelvin):0} °C hotter."),
            "Heat balance of one stirred bath; finite volumes in the water as it comes back");
    }

    private static string Say(FormattableString s) => s.ToString(CultureInfo.InvariantCulture);
}
