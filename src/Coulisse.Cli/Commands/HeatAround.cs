using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>What lies around the food for heat core and heat cool: layers, one face only, a wet face, and a medium that changes.</summary>
internal static class HeatAround
{
    private static readonly Option<string[]> Layer = new("--layer") { Description = "From the food outward: film:0.1mm, glass:3mm, steel:1mm, air:1mm; may be given again", AllowMultipleArgumentsPerToken = true };
    private static readonly Option<bool> OneSided = new("--one-sided") { Description = "Nothing passes through the lower face (a tray on a solid shelf)" };
    private static readonly Option<double?> Vapour = new("--wet") { Description = "The face is wet and open to air of this vapour pressure, kPa (dry oven 1, moist 20)" };
    private static readonly Option<double?> Airflow = new("--airflow") { Description = "Air past the food, m/s; 0 for still: gives h" };
    private static readonly Option<double> Along = new("--along") { Description = "Length of the tray in the wind, mm", DefaultValueFactory = _ => 300 };
    private static readonly Option<double?> Load = new("--load") { Description = "Grams put in at once, for a bath or ice" };
    private static readonly Option<double?> Water = new("--water") { Description = "Water of the bath or on the ice, l" };
    private static readonly Option<double?> Heater = new("--heater") { Description = "Heater of the bath, kW: the load pulls it down and it comes back" };
    private static readonly Option<double?> Ice = new("--ice") { Description = "Ice, g: melts in --water around --load" };
    private static readonly Option<double> Gain = new("--gain") { Description = "Heat from room and vessel into the ice water, W", DefaultValueFactory = _ => 50 };
    private static readonly Option<double> Tap = new("--tap") { Description = "Water poured on the ice, °C", DefaultValueFactory = _ => 15 };
    private static readonly Option<double?> Swing = new("--swing") { Description = "Half the swing of the thermostat, K" };
    private static readonly Option<double> Period = new("--period") { Description = "Of one swing, min", DefaultValueFactory = _ => 8 };
    private static readonly Option<double?> Rise = new("--rise") { Description = "A cold room this much warmer just after loading, K" };
    private static readonly Option<double[]> Door = new("--door") { Description = "Minute at which the oven's door is opened; may be given again", AllowMultipleArgumentsPerToken = true };
    private static readonly Option<double> Fall = new("--fall") { Description = "What the door lets out, K", DefaultValueFactory = _ => 40 };
    private static readonly Option<double> Recovery = new("--recovery") { Description = "Minutes until 37 % of a rise or fall is left", DefaultValueFactory = _ => 20 };

    /// <summary>All of them, for a command.</summary>
    public static IEnumerable<Option> Options => [Layer, OneSided, Vapour, Airflow, Along, Load, Water, Heater, Ice, Gain, Tap, Swing, Period, Rise, Door, Fall, Recovery];

    /// <summary>True when any asks for more than a bare piece in one constant medium.</summary>
    public static bool Asked(ParseResult p) => p.GetValue(Layer) is { Length: > 0 } || p.GetValue(OneSided) || p.GetValue(Vapour) is not null || p.GetValue(Heater) is not null || p.GetValue(Ice) is not null
        || p.GetValue(Swing) is not null || p.GetValue(Rise) is not null || p.GetValue(Door) is { Length: > 0 };

    /// <summary>True when the medium is ice that melts.</summary>
    public static bool Iced(ParseResult p) => p.GetValue(Ice) is not null;

    /// <summary>True when an airflow gives h.</summary>
    public static bool Flows(ParseResult p) => p.GetValue(Airflow) is not null;

    /// <summary>h of the airflow, best and cautious, and said; the case as it was without one.</summary>
    public static HeatCase Surface(ParseResult p, HeatCase food, Temperature start, Temperature medium, List<string> assumptions)
    {
        if (p.GetValue(Airflow) is not { } speed)
        {
            return food;
        }

        (HeatTransferCoefficient best, HeatTransferCoefficient slow) = AirFlow.Over(speed, Length.FromMillimetres(p.GetValue(Along)), medium, TemperatureDelta.FromKelvin(Math.Abs((start - medium).Kelvin) / 2));
        assumptions.RemoveAll(a => a.StartsWith("No h given", StringComparison.Ordinal));
        assumptions.Add(string.Create(CultureInfo.InvariantCulture, $"Air at {speed:0.##} m/s along {p.GetValue(Along):0} mm: h {best.WattsPerSquareMetreKelvin:0.#} (turbulent, all radiation) and {slow.WattsPerSquareMetreKelvin:0.#} W/(m²·K) (laminar, half of it); flat-plate correlations of Incropera and DeWitt."));
        return food with { BestSurface = best, CautiousSurface = slow };
    }

    /// <summary>The piece with everything around it; says what was taken.</summary>
    public static LayeredHeating Of(ParseResult p, SolidShape shape, ImmutableArray<Length> sizes, Temperature start, Temperature medium, HeatCase food, List<string> assumptions)
    {
        ImmutableArray<BodyLayer> skin = [.. (p.GetValue(Layer) ?? []).Select(One)];
        if (!skin.IsEmpty)
        {
            assumptions.Add("Layers from the food outward: " + string.Join(", ", p.GetValue(Layer)!) + "; glass 1.0, film 0.35, steel 16, still air 0.026 W/(m·K).");
        }

        if (p.GetValue(OneSided))
        {
            assumptions.Add("The lower face lets nothing through.");
        }

        return new LayeredHeating(shape, sizes, start, Around(p, shape, sizes, start, medium, food, assumptions), food, skin, p.GetValue(OneSided), p.GetValue(Vapour) is { } v ? new WetSurface(v) : null);
    }

    private static Medium Around(ParseResult p, SolidShape shape, ImmutableArray<Length> sizes, Temperature start, Temperature set, HeatCase food, List<string> assumptions)
    {
        Duration recovery = Duration.FromMinutes(p.GetValue(Recovery));
        double Needs(Option<double?> o) => p.GetValue(o) ?? throw new ArgumentException($"Say {o.Name} as well.");
        if (p.GetValue(Ice) is { } ice)
        {
            MeltingIce bath = new(Mass.FromGrams(ice), Mass.FromGrams(Needs(Water) * 1000), Temperature.FromCelsius(p.GetValue(Tap)), Mass.FromGrams(Needs(Load)), Power.FromWatts(p.GetValue(Gain)));
            SolidBody piece = SolidBody.Of(shape, p.GetValue(OneSided) ? [sizes[0] * 2] : sizes, food.Best, food.BestConductivity, food.BestSurface ?? food.CautiousSurface);
            ImmutableArray<MeltingIce.Moment> course = bath.Follow(piece, start, Duration.FromHours(24));
            string gone = course.Any(m => m.IceLeft.Grams <= 0) ? string.Create(CultureInfo.InvariantCulture, $"gone after {course.First(m => m.IceLeft.Grams <= 0).Minute:0} min; the water is at {course.Max(m => m.Bath.Celsius):0.#} °C at the warmest") : string.Create(CultureInfo.InvariantCulture, $"{course[^1].IceLeft.Grams:0} g left after 24 h");
            assumptions.Add(string.Create(CultureInfo.InvariantCulture, $"Ice water at 1 °C while there is ice: {gone}. {p.GetValue(Gain):0} W come in from the room (assumed unless given); --medium is not used."));
            if (MeltingIce.Needed(bath, piece, start, Temperature.FromCelsius(5), Duration.FromHours(6)) is { } needed)
            {
                assumptions.Add(string.Create(CultureInfo.InvariantCulture, $"Ice with which the middle is still at 5 °C after 6 h, the room's heat included: {needed.Grams:0} g."));
            }

            return bath.Around(piece, start, Duration.FromHours(24));
        }

        if (p.GetValue(Heater) is { } kilowatts)
        {
            WaterBath bath = new(Mass.FromGrams(Needs(Water) * 1000), Power.FromKilowatts(kilowatts), Power.FromWatts(0));
            Energy taken = WaterBath.HeatTakenUp(Mass.FromGrams(Needs(Load)), SpecificHeat.FromKilojoulesPerKilogramKelvin(3.7), start, set);
            assumptions.Add(string.Create(CultureInfo.InvariantCulture, $"The load pulls the bath down by {bath.Fall(taken).Kelvin:0.#} K at once; it is back after {bath.Regain(taken)?.TotalMinutes:0} min."));
            return Medium.Sagging(set, bath, taken);
        }

        if (p.GetValue(Swing) is { } swing)
        {
            assumptions.Add(string.Create(CultureInfo.InvariantCulture, $"The thermostat swings by ±{swing:0.#} K every {p.GetValue(Period):0.#} min."));
            return Medium.Cycling(set, TemperatureDelta.FromKelvin(swing), Duration.FromMinutes(p.GetValue(Period)));
        }

        if (p.GetValue(Rise) is { } rise)
        {
            assumptions.Add(string.Create(CultureInfo.InvariantCulture, $"Just after loading the room is {rise:0.#} K too warm; a third of it is left after {p.GetValue(Recovery):0.#} min."));
            return Medium.Loaded(set, TemperatureDelta.FromKelvin(rise), recovery);
        }

        if (p.GetValue(Door) is { Length: > 0 } doors)
        {
            assumptions.Add(string.Create(CultureInfo.InvariantCulture, $"The door is opened {doors.Length} times and lets out {p.GetValue(Fall):0.#} K."));
            return Medium.DoorOpened(set, TemperatureDelta.FromKelvin(p.GetValue(Fall)), recovery, [.. doors.Select(d => d >= 0 ? Duration.FromMinutes(d) : throw new ArgumentException("A door is opened at minute 0 or later."))]);
        }

        return Medium.Constant(set);
    }

    private static BodyLayer One(string text)
    {
        string[] parts = text.Split(':', '=');
        HeatMaterial? of = parts[0].Trim().ToLowerInvariant() switch { "film" or "bag" => HeatMaterial.Film, "glass" or "jar" => HeatMaterial.Glass, "steel" or "tray" or "lid" => HeatMaterial.Steel, "air" or "gap" => HeatMaterial.AirGap, _ => null };
        return of is not null && parts.Length == 2 && HeatCommand.Sizes(parts[1]) is [>= 0.01 and <= 50 and var mm]
            ? new BodyLayer(of, Length.FromMillimetres(mm), 1)
            : throw new ArgumentException($"\"{text}\" is no layer; write film:0.1mm, glass:3mm, steel:1mm or air:1mm, 0.01 to 50 mm.");
    }
}
