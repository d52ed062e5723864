using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;
using NodaTime;

namespace Coulisse.Flows;

/// <summary>A piece in a medium, as a person asks about it.</summary>
/// <param name="Shape">slab, cylinder, sphere or brick.</param>
/// <param name="Millimetres">Full sizes in the order of the shape.</param>
/// <param name="Start">Start, °C.</param>
/// <param name="Medium">Bath, steam, air or ice water, °C.</param>
/// <param name="Surface">h, W/(m²·K); null for a stirred bath.</param>
/// <param name="Food">Food of our table; empty for moist food as such.</param>
/// <param name="Until">Wanted in the middle, °C; null for none.</param>
/// <param name="Minutes">How long; null until the middle is there.</param>
public sealed record HeatAsked(string Shape, ImmutableArray<double> Millimetres, double Start, double Medium, double? Surface, string Food, double? Until, double? Minutes);

/// <summary>How the middle heats or cools, with what was assumed.</summary>
/// <param name="Run">Curves, best and cautious.</param>
/// <param name="Assumed">What was assumed, in words.</param>
public sealed record HeatAnswered(CoreHeating Run, ImmutableArray<string> Assumed);

/// <summary>From the words of a form to the middle of a piece.</summary>
public static class HeatFlow
{
    /// <summary>Works it out, or says what is wrong.</summary>
    /// <param name="asked">What is asked.</param>
    /// <param name="foods">Foods of the house; null for those that ship.</param>
    public static Parsed<HeatAnswered> Of(HeatAsked asked, FoodTable? foods = null)
    {
        ArgumentNullException.ThrowIfNull(asked);
        FoodTable table = foods ?? FoodTable.Default;
        if (!Enum.TryParse(asked.Shape, ignoreCase: true, out SolidShape shape) || !Enum.IsDefined(shape))
        {
            return Fail($"“{asked.Shape}” is no shape known here.", "Choose slab, cylinder, sphere or brick.");
        }

        List<string> assumed = [];
        (double best, double slow, double bestK, double slowK) = (1.4e-7, 0.995e-7, 0.48, 0.4);
        if (asked.Food.Trim().Length > 0)
        {
            if (table.Match(asked.Food.Trim(), "en") is not { } match || table.Find(match.Id) is not { } food || ThermalParts.Of(food.Composition) is not { } parts)
            {
                return Fail($"“{asked.Food}” is not in the food table, or its composition is not held well enough.", "Leave the food empty: then a moist food is taken, best and slowest.");
            }

            ThermalProperties t = ThermalProperties.Of(parts, Temperature.FromCelsius(Math.Clamp((asked.Start + asked.Medium) / 2, 0, 120)));
            (best, slow, bestK, slowK) = (t.FastDiffusivity.SquareMetresPerSecond, t.SlowDiffusivity.SquareMetresPerSecond, t.Fast.WattsPerMetreKelvin, t.Slow.WattsPerMetreKelvin);
            assumed.Add(string.Create(CultureInfo.InvariantCulture, $"{food.Name}: {best * 1e7:0.00} × 10⁻⁷ m²/s (best) and {slow * 1e7:0.00} × 10⁻⁷ (cautious), Choi and Okos 1986, composition {food.Source}."));
        }
        else
        {
            assumed.Add("Moist food: 1.4 × 10⁻⁷ m²/s (best) and 0.995 × 10⁻⁷, the slowest of Baldwin's figures (cautious).");
        }

        HeatTransferCoefficient? h = asked.Surface is { } given ? HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(given) : null;
        assumed.Add(h is null ? "A stirred bath: best, the face is at once at its temperature; cautious, 95 W/(m²·K) (Baldwin 2012)." : string.Create(CultureInfo.InvariantCulture, $"{h.Value.WattsPerSquareMetreKelvin:0.#} W/(m²·K) at the face, as chosen."));
        HeatCase properties = new(Diffusivity.FromSquareMetresPerSecond(best), Diffusivity.FromSquareMetresPerSecond(slow), Conductivity.FromWattsPerMetreKelvin(bestK), Conductivity.FromWattsPerMetreKelvin(slowK), h, h ?? HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(95));
        try
        {
            return new Parsed<HeatAnswered>.Ok(new HeatAnswered(
                CoreHeating.Of(shape, [.. asked.Millimetres.Select(Length.FromMillimetres)], Temperature.FromCelsius(asked.Start), Temperature.FromCelsius(asked.Medium), properties,
                    asked.Until is { } u ? Temperature.FromCelsius(u) : null, asked.Minutes is { } m ? Duration.FromMinutes(m) : null),
                [.. assumed]));
        }
        catch (ArgumentException e)
        {
            return Fail(e.Message.Split(" (Parameter", StringSplitOptions.None)[0], "Change that figure.");
        }
    }

    private static Parsed<HeatAnswered> Fail(string what, string hint) => new Parsed<HeatAnswered>.Failed([new Problem("HEA001", 0, what, hint)]);
}
