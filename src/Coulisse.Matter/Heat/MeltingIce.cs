using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>Ice and water around warm food, through time: how much ice is left, when it is gone, and how warm the water then grows.</summary>
/// <param name="Ice">Ice at 0 °C.</param>
/// <param name="Water">Water poured on it.</param>
/// <param name="Tap">Its temperature, 0 to 40 °C.</param>
/// <param name="Food">Food.</param>
/// <param name="Gain">What comes in from room and vessel while the bath is at 1 °C.</param>
/// <remarks>
/// One stirred bath. While there is ice it is at 1 °C (not 0: ice needs a difference to melt by); after that it warms by what comes in. 333.6 kJ/kg to melt, water 4.19, food 3.8 kJ/(kg·K). The food's own course in a bath that changes is the sum of its courses after each small step of the bath (superposition, constant properties), so any <see cref="SolidBody"/> will do.
/// Check: heat is kept: what the food gave, the room and the tap is in melted ice and warm water. Ice that outlasts the cooling leaves the same course as a bath of 1 °C.
/// </remarks>
public sealed record MeltingIce(Mass Ice, Mass Water, Temperature Tap, Mass Food, Power Gain)
{
    private const double OfWater = 4.19;   // kJ/(kg·K), i.e. J/(g·K)
    private const double OfFood = 3.8;
    private const double WithIce = 1;      // °C
    private const double Room = 25;        // °C: what comes in falls to nothing as the bath nears it
    private const int Steps = 960;

    /// <summary>A moment of it.</summary>
    /// <param name="Minute">From when the food goes in.</param>
    /// <param name="Bath">Water.</param>
    /// <param name="IceLeft">Ice.</param>
    /// <param name="Core">Middle of the food.</param>
    /// <param name="Mean">Food on the whole.</param>
    public readonly record struct Moment(double Minute, Temperature Bath, Mass IceLeft, Temperature Core, Temperature Mean);

    /// <summary>Follows it.</summary>
    /// <param name="body">One of the pieces, all alike.</param>
    /// <param name="start">Food when it goes in, 0 to 120 °C.</param>
    /// <param name="length">How long, above 0 and up to 48 h.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the model; the message says what.</exception>
    public ImmutableArray<Moment> Follow(SolidBody body, Temperature start, Duration length)
    {
        ArgumentNullException.ThrowIfNull(body);
        if (Ice.Grams is not (>= 0 and <= 1e7) || Water.Grams is not (> 0 and <= 1e7) || Tap.Celsius is not (>= 0 and <= 40) || Food.Grams is not (> 0 and <= 1e7) || Gain.Watts is not (>= 0 and <= 20_000) || start.Celsius is not (>= 0 and <= 120) || length.TotalHours is not (> 0 and <= 48))
        {
            throw new ArgumentOutOfRangeException(nameof(length), length, "Outside the model: ice of up to 10 t, some water from the tap at 0 to 40 °C, some food at 0 to 120 °C, 0 to 20 kW from the room, up to 48 h.");
        }

        double step = length.TotalSeconds / Steps;
        double[] core = [.. Enumerable.Range(0, Steps + 1).Select(i => body.CoreShare(i * step))];
        double[] mean = [.. Enumerable.Range(0, Steps + 1).Select(i => body.MeanShare(i * step))];
        double[] rises = new double[Steps + 1];   // the bath's steps, K, felt from their moment on
        double capacity = OfWater * (Water.Grams + Ice.Grams);
        double heat = (OfWater * Water.Grams * Tap.Celsius) - (ThermalProperties.Fusion * Ice.Grams);   // J above all of it liquid at 0 °C
        double Bath(double joules) => Math.Max(WithIce, joules / capacity);
        double first = Bath(heat);
        double bath = first;
        double whole = start.Celsius;
        List<Moment> moments = [new(0, Temperature.FromCelsius(bath), Left(heat), start, start)];
        for (int k = 1; k <= Steps; k++)
        {
            double middle = (start.Celsius - first) * core[k];
            double all = (start.Celsius - first) * mean[k];
            for (int j = 1; j < k; j++)
            {
                if (rises[j] != 0)
                {
                    middle -= rises[j] * core[k - j];
                    all -= rises[j] * mean[k - j];
                }
            }

            double now = bath + all;
            heat += (OfFood * Food.Grams * (whole - now)) + (Gain.Watts * Math.Max(0, (Room - bath) / (Room - WithIce)) * step);
            whole = now;
            double next = Bath(heat);
            moments.Add(new(k * step / 60, Temperature.FromCelsius(next), Left(heat), Temperature.FromCelsius(bath + middle), Temperature.FromCelsius(now)));
            (rises[k], bath) = (next - bath, next);
        }

        return [.. moments];
    }

    /// <summary>The bath as a medium for a body with layers, a wet face or one side only; the food's heat taken as that of the bare piece, which gives it off sooner.</summary>
    public Medium Around(SolidBody body, Temperature start, Duration length) => Medium.Through([.. Follow(body, start, length).Where((_, i) => i % 4 == 0).Select(m => (Duration.FromMinutes(m.Minute), m.Bath))]);

    /// <summary>Least ice with which the middle is at a temperature in a time; null when not even ice without end does it.</summary>
    /// <param name="bath">Everything but the ice.</param>
    /// <param name="body">One of the pieces.</param>
    /// <param name="start">Food when it goes in.</param>
    /// <param name="core">Wanted in the middle.</param>
    /// <param name="within">In this time.</param>
    public static Mass? Needed(MeltingIce bath, SolidBody body, Temperature start, Temperature core, Duration within)
    {
        ArgumentNullException.ThrowIfNull(bath);
        bool There(double grams) => (bath with { Ice = Mass.FromGrams(grams) }).Follow(body, start, within)[^1].Core <= core;

        // all heat there is, melted
        double most = ((OfFood * bath.Food.Grams * start.Celsius) + (OfWater * bath.Water.Grams * bath.Tap.Celsius) + (bath.Gain.Watts * within.TotalSeconds)) / ThermalProperties.Fusion;
        if (!There(most))
        {
            return null;
        }

        if (There(0))
        {
            return Mass.FromGrams(0);
        }

        double low = 0;
        for (int i = 0; i < 14; i++)
        {
            double middle = (low + most) / 2;
            (low, most) = There(middle) ? (low, middle) : (middle, most);
        }

        return Mass.FromGrams(most);
    }

    private Mass Left(double heat) => Mass.FromGrams(Math.Max(0, Math.Min(Ice.Grams, -heat / ThermalProperties.Fusion)));
}
