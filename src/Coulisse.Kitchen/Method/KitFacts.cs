using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Method;

/// <summary>What of a kitchen's kit decides how long things take.</summary>
/// <param name="Ring">Net power of one ring.</param>
/// <param name="Rings">How many.</param>
/// <param name="Bath">The bath; null when there is none.</param>
/// <param name="Shelves">Tins the largest oven takes; null when there is no oven.</param>
/// <param name="Oven">What it draws.</param>
/// <param name="BlenderLitres">What the blender takes at once; null when there is none or it is not said.</param>
/// <param name="Assumed">What the kit does not say and was taken.</param>
public sealed record KitFacts(PanOnBurner Ring, int Rings, WaterBath? Bath, int? Shelves, Power Oven, double? BlenderLitres, ImmutableArray<string> Assumed)
{
    private const double RingKilowatts = 2;
    private const double OvenKilowatts = 3;

    /// <summary>Reads a kit list; where it is silent 2 kW a ring and 3 kW an oven are taken and said.</summary>
    public static KitFacts Of(ImmutableArray<SheetKit> kit)
    {
        List<string> assumed = [];
        SheetKit[] rings = [.. kit.Where(k => k.Type == "hob")];
        SheetKit? ring = rings.OrderByDescending(k => k.Kilowatts ?? 0).FirstOrDefault();
        double? kilowatts = ring?.Kilowatts / (ring?.Number is > 1 and var n && ring.Kilowatts > 4 ? n : 1);
        if (kilowatts is not (>= 0.1 and <= 30))
        {
            kilowatts = RingKilowatts;
            assumed.Add("Each ring 2 kW (assumed, the kit does not say).");
        }

        string what = ring?.What.ToLowerInvariant() ?? "";
        string kind = what.Contains("induction", StringComparison.Ordinal) ? "induction" : what.Contains("gas", StringComparison.Ordinal) ? "gas" : "plate";
        SheetKit? bath = kit.FirstOrDefault(k => k.Type == "bath" && k.Litres is > 0 and <= 1000);
        if (bath is { Kilowatts: null })
        {
            assumed.Add("The bath's heater 1.4 kW (assumed, the kit does not say).");
        }

        SheetKit? oven = kit.Where(k => k.Type == "oven").OrderByDescending(k => k.Shelves ?? 1).FirstOrDefault();
        if (oven is { Kilowatts: null })
        {
            assumed.Add("The oven 3 kW (assumed, the kit does not say).");
        }

        return new KitFacts(
            PanOnBurner.Of(kind, Power.FromWatts(kilowatts.Value * 1000)),
            Math.Max(1, rings.Sum(k => Math.Max(1, k.Number))),
            bath is null ? null : new WaterBath(Mass.FromGrams(bath.Litres!.Value * 1000), Power.FromWatts((bath.Kilowatts ?? 1.4) * 1000), Power.FromWatts(0)),
            oven is null ? null : Math.Max(1, oven.Shelves ?? 1),
            Power.FromWatts((oven?.Kilowatts ?? OvenKilowatts) * 1000),
            kit.FirstOrDefault(k => k.Type == "blender")?.Litres,
            [.. assumed]);
    }
}
