using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>Minutes to a core temperature, or log reduction after minutes, over what is not known exactly.</summary>
/// <remarks>
/// Ranges unless stated: every size ±10 %, start ±2 K, medium ±1 K (a bath's setting and its drift), properties between the mixing bounds, h in a stirred bath 95 to 600 W/(m²·K) (Baldwin's design value to the top of the measured range, from memory), D from its best to its hardest value.
/// Exact series; the figures are sampled together by <see cref="SampledAnswer"/>.
/// </remarks>
public static class UncertainCore
{
    /// <summary>The ranges of a piece in a bath.</summary>
    /// <param name="sizes">Full sizes.</param>
    /// <param name="start">Start.</param>
    /// <param name="medium">Medium.</param>
    /// <param name="food">Best and cautious properties and surfaces.</param>
    public static ImmutableArray<StatedRange> Ranges(ImmutableArray<Length> sizes, Temperature start, Temperature medium, HeatCase food)
    {
        ArgumentNullException.ThrowIfNull(food);
        (double slow, double fast) = (Math.Min(food.Cautious.SquareMetresPerSecond, food.Best.SquareMetresPerSecond), Math.Max(food.Cautious.SquareMetresPerSecond, food.Best.SquareMetresPerSecond));
        double least = food.CautiousSurface.WattsPerSquareMetreKelvin;
        double most = food.BestSurface?.WattsPerSquareMetreKelvin ?? Math.Max(600, least);
        return
        [
            new("thickness", "×", 1, 0.9, 1.1, "±10 % of every size"),
            new("start", "°C", start.Celsius, Math.Max(0, start.Celsius - 2), start.Celsius + 2, "±2 °C"),
            new("medium", "°C", medium.Celsius, Math.Max(0, medium.Celsius - 1), medium.Celsius + 1, "±1 °C"),
            new("diffusivity", "m²/s", fast, slow, fast, "between the mixing bounds"),
            new("h", "W/(m²·K)", Math.Max(most, least), Math.Min(most, least), Math.Max(most, least), "stirred bath, 95 to 600 W/(m²·K), or as given"),
            new("D", "of its hardest", 0, 0, 1, "best to hardest value of the organism"),
        ];
    }

    /// <summary>Minutes until the middle is at a temperature.</summary>
    public static SampledAnswer Minutes(SolidShape shape, ImmutableArray<Length> sizes, Temperature start, Temperature medium, HeatCase food, Temperature target, int samples = 100)
        => SampledAnswer.Of(
            [.. Ranges(sizes, start, medium, food).Where(r => r.What != "D")],
            v => Body(shape, sizes, food, v).TimeTo(Temperature.FromCelsius(v[1]), Temperature.FromCelsius(v[2]), target)?.TotalMinutes,
            samples);

    /// <summary>Log reduction of an organism after minutes in the medium.</summary>
    public static SampledAnswer Log10(SolidShape shape, ImmutableArray<Length> sizes, Temperature start, Temperature medium, HeatCase food, Duration time, Organism organism, int samples = 100)
    {
        ArgumentNullException.ThrowIfNull(organism);
        return SampledAnswer.Of(
            Ranges(sizes, start, medium, food),
            v =>
            {
                SolidBody body = Body(shape, sizes, food, v);
                (Temperature from, Temperature at) = (Temperature.FromCelsius(v[1]), Temperature.FromCelsius(v[2]));
                HeatResistance resists = organism.Best with { Minutes = organism.Best.Minutes * Math.Pow(organism.Hardest.Minutes / organism.Best.Minutes, v[5]) };
                return Lethality.Log10(resists, [.. Enumerable.Range(0, 61).Select(i => (time.TotalMinutes * i / 60, body.CoreAfter(from, at, time * i / 60)))], organism.Floor, organism.Ceiling);
            },
            samples);
    }

    private static SolidBody Body(SolidShape shape, ImmutableArray<Length> sizes, HeatCase food, double[] v)
    {
        double part = food.Best.SquareMetresPerSecond == food.Cautious.SquareMetresPerSecond ? 1 : Math.Abs((v[3] - food.Cautious.SquareMetresPerSecond) / (food.Best.SquareMetresPerSecond - food.Cautious.SquareMetresPerSecond));
        double k = food.CautiousConductivity.WattsPerMetreKelvin + (part * (food.BestConductivity.WattsPerMetreKelvin - food.CautiousConductivity.WattsPerMetreKelvin));
        return SolidBody.Of(shape, [.. sizes.Select(s => s * v[0])], Diffusivity.FromSquareMetresPerSecond(v[3]), Conductivity.FromWattsPerMetreKelvin(k), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(v[4]));
    }
}
