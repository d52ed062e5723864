using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Heat;

/// <summary>Minutes of a stated piece of work when there is so many times as much of it: by power, load and thickness, never by a factor alone.</summary>
/// <remarks>
/// Each takes the minutes of the card for the card's amount and gives a best and a cautious figure for another. What the formulas assume stands with each; capacities (10 kg in a pan, a third of a bath's litres as food, five to ten minutes between oven loads,
/// 70 % of an oven's power into the food) are common practice without a source, and one timed run replaces them.
/// </remarks>
public static class ScaledDurations
{
    private const double PanKilograms = 10;
    private const double FoodInBath = 1 / 3.0;
    private const double IntoOvenFood = 0.7;
    private const double OvenHeat = 470;     // kJ/kg: 3.3 kJ/(kg·K) over 75 K and a tenth of the weight boiled off
    private const double DoorLeast = 5;
    private const double DoorMost = 10;

    /// <summary>Boiling down: the heat grows with the amount, the ring does not. Several pans where one does not hold it, as many at once as there are rings.</summary>
    /// <param name="written">Minutes of the card.</param>
    /// <param name="boiledOff">What the card's amount loses.</param>
    /// <param name="factor">How many times as much.</param>
    /// <param name="ring">Power of one ring.</param>
    /// <param name="rings">Rings, 1 and up.</param>
    /// <param name="measured">Grams a minute that one pan of this kitchen drove off in good runs, mean and least; null when not learnt. The cautious figure never falls below that of the ring's power.</param>
    public static (double Best, double? Cautious) Reduced(double written, Reduction boiledOff, double factor, PanOnBurner ring, int rings, (double Mean, double Least)? measured = null)
    {
        ArgumentNullException.ThrowIfNull(boiledOff);
        ArgumentNullException.ThrowIfNull(ring);
        double heat = boiledOff.Heat.Kilojoules * factor;
        int used = Used(boiledOff.Start.Grams / 1000 * factor, rings);

        // The card's own simmer is the fastest it was shown to go; more fire than that is available only up to the ring's power.
        double best = Math.Max(written * Math.Min(1, factor), heat / (Kilowatts(ring.Most) * used) / 60);
        double? cautious = ring.Least.Watts > 0 ? Math.Max(written, heat / (Kilowatts(ring.Least) * used) / 60) : null;
        if (measured is { Mean: > 0, Least: > 0 } rate)
        {
            double water = boiledOff.Water.Grams * factor;
            best = Math.Max(written * Math.Min(1, factor), water / (rate.Mean * used));
            cautious = Math.Max(cautious ?? written, water / (rate.Least * used));
        }

        return (best, cautious);
    }

    /// <summary>Cooking of a stated length in a pan: the length stays, coming to the boil does not.</summary>
    /// <param name="written">Minutes of the card, coming to the boil included for its own amount.</param>
    /// <param name="contents">The card's amount.</param>
    /// <param name="factor">How many times as much.</param>
    /// <param name="ring">Power of one ring.</param>
    /// <param name="rings">Rings, 1 and up.</param>
    public static (double Best, double? Cautious) Simmered(double written, Mass contents, double factor, PanOnBurner ring, int rings)
    {
        ArgumentNullException.ThrowIfNull(ring);
        double heat = contents.Grams / 1000 * 4.19 * 80;
        int used = Used(contents.Grams / 1000 * factor, rings);
        double More(Power p) => Math.Max(0, ((heat * factor / used) - heat) / Kilowatts(p) / 60);
        return (written + More(ring.Most), ring.Least.Watts > 0 ? written + More(ring.Least) : null);
    }

    /// <summary>Bags in a bath: the minutes belong to the thickness, but each load pulls the water down and the bath holds so much.</summary>
    /// <param name="written">Minutes of the card.</param>
    /// <param name="contents">The card's amount.</param>
    /// <param name="factor">How many times as much.</param>
    /// <param name="bath">The bath.</param>
    /// <param name="set">Its setting.</param>
    /// <param name="loads">Loads it takes.</param>
    public static (double Best, double? Cautious) Bathed(double written, Mass contents, double factor, WaterBath bath, Temperature set, out int loads)
    {
        ArgumentNullException.ThrowIfNull(bath);
        double holds = bath.Water.Grams * FoodInBath;
        double all = contents.Grams * factor;
        loads = (int)Math.Max(1, Math.Ceiling((all / holds) - 1e-9));
        double? Regain(double grams) => bath.Regain(WaterBath.HeatTakenUp(Mass.FromGrams(grams), SpecificHeat.FromKilojoulesPerKilogramKelvin(3.7), Temperature.FromCelsius(5), set))?.TotalMinutes;
        double? more = Regain(all / loads) - Regain(Math.Min(contents.Grams, holds));
        return (loads * written, more is { } m ? loads * (written + Math.Max(0, m)) : null);
    }

    /// <summary>Tins in an oven: the minutes belong to the tin, but a full oven is slower and what does not fit waits.</summary>
    /// <param name="written">Minutes of the card.</param>
    /// <param name="tin">What one tin holds.</param>
    /// <param name="tins">Tins of the card's amount, 1 and up.</param>
    /// <param name="factor">How many times as much.</param>
    /// <param name="shelves">Tins the oven takes, 1 and up.</param>
    /// <param name="drawn">What it draws.</param>
    /// <param name="loads">Loads it takes.</param>
    public static (double Best, double Cautious) Baked(double written, Mass tin, int tins, double factor, int shelves, Power drawn, out int loads)
    {
        double all = Math.Ceiling((tins * factor) - 1e-9);
        loads = (int)Math.Max(1, Math.Ceiling(all / shelves));
        double inside = Math.Ceiling(all / loads);
        double slower = Math.Max(0, inside - Math.Min(tins, shelves)) * tin.Grams / 1000 * OvenHeat / (Kilowatts(drawn) * IntoOvenFood) / 60;
        return ((loads * written) + ((loads - 1) * DoorLeast), (loads * (written + slower)) + ((loads - 1) * DoorMost));
    }

    /// <summary>Chilling in one vessel of the same form: thickness grows as the cube root, time as L/h + L²/(2k).</summary>
    /// <param name="written">Hours or minutes of the card.</param>
    /// <param name="contents">The card's amount, taken as a cube of its volume for its thickness.</param>
    /// <param name="factor">How many times as much.</param>
    /// <param name="surface">h.</param>
    public static (double Best, double Cautious) Chilled(double written, Mass contents, double factor, HeatTransferCoefficient surface)
    {
        double half = Math.Cbrt(contents.Grams / 1e6) / 2;
        double Slow(double l) => (l / surface.WattsPerSquareMetreKelvin) + (l * l / (2 * 0.5));
        double big = half * Math.Cbrt(factor);

        // Best is air that brakes (time as L), cautious is food that brakes (time as L squared); what the coefficient gives lies between.
        return (written * Slow(big) / Slow(half), written * Math.Max(1, big * big / (half * half)));
    }

    private static double Kilowatts(Power p) => p.Watts / 1000;

    private static int Used(double kilograms, int rings) => Math.Clamp((int)Math.Ceiling(kilograms / PanKilograms), 1, Math.Max(1, rings));
}
