using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Kitchen.Safety;

/// <summary>Hot food that a step of a card cools: how much, how thick, in what.</summary>
/// <param name="Step">The cooling step.</param>
/// <param name="Grams">What is cooled.</param>
/// <param name="Thickness">Layer, mm; null when the card does not say.</param>
/// <param name="Way">How it is cooled, in words.</param>
/// <param name="Air">h of the cautious case, W/(m²·K).</param>
/// <param name="Medium">Air or water, °C.</param>
/// <param name="BothFaces">Ice water around a bag reaches both faces; on a shelf only the top is counted.</param>
internal sealed record Cooled(Step Step, double Grams, double? Thickness, string Way, double Air, double Medium, bool BothFaces)
{
    private const double Hot = 60;
    private const double Alpha = 1.15e-7;   // m²/s: between the mixing bounds of a rich mixture, slow for a moist one
    private const double K = 0.46;

    /// <summary>Cooling steps of a component that was hot and is moist enough to grow something; none for dry bakes, syrups and jams.</summary>
    public static IEnumerable<Cooled> In(WeighedComponent component)
    {
        MethodRun run = MethodFold.Run(component);
        double? thickness = component.Component.Vessels.Select(v => v.Millimetres).Where(m => m.Length == 3).Select(m => (double?)m[2]).FirstOrDefault();
        double hot = 0;
        foreach (MethodStage stage in run.Stages)
        {
            Step s = stage.Step;
            thickness = s.ThicknessMillimetres ?? thickness;
            string[] does = [.. s.Operations.Append(s.Operation).OfType<string>()];
            (string Way, double Air, double Medium, bool Both)? cold =
                does.Contains("blast_chill") ? ("blast chiller", 25, 2, false)
                : does.Contains("chill_ice") || s.Text.Contains("ice water", StringComparison.OrdinalIgnoreCase) || s.Text.Contains("ice bath", StringComparison.OrdinalIgnoreCase) ? ("ice water", 100, 1, true)
                : does.Any(o => o is "chill" or "chill_fridge" or "refrigerate") || s.Temperatures.Any(t => t.Of == TemperatureOf.Fridge) ? ("still fridge", 8, 4, false)
                : null;
            // "Chill as the custard": how is told in another step.
            bool elsewhere = s.Text.Contains("hill as ", StringComparison.Ordinal) || s.Text.Contains("hill like ", StringComparison.Ordinal);
            double warms = s.Temperatures.Where(t => t.Bound != Bound.AtMost && t.Of is TemperatureOf.Bath or TemperatureOf.Core or TemperatureOf.Food or TemperatureOf.Pan).Select(t => t.Celsius).DefaultIfEmpty(0).Max();
            if (!elsewhere && cold is { } c && hot >= Hot && warms < Hot && Grows(stage.Before))
            {
                yield return new Cooled(s, stage.Before.Grams, thickness, c.Way, c.Air, c.Medium, c.Both);
                hot = 0;
            }
            else if (FoodTraits.Cooks(s) || warms >= Hot)
            {
                hot = Math.Max(warms, FoodTraits.Cooks(s) ? 95 : 0);
            }
            else if (does.Any(o => o is "cool" or "cool_rack" or "rest") || s.Times.Any(t => t.Kind is TimeKind.Rest && t.MinutesMin >= 60))
            {
                // It stood: how warm it still is cannot be read from the card, so nothing is judged on it.
                hot = 0;
            }
        }
    }

    /// <summary>Thickness that is judged: the card's, or the side of a pot as high as it is wide.</summary>
    public double Millimetres => Thickness ?? 1000 * Math.Cbrt(4 * Grams / 1e6 / Math.PI);

    /// <summary>Hours of each stage, cautious (slow food) and best (moist food, both faces), against a rule.</summary>
    public (ImmutableArray<(CoolingStage Stage, double? Hours, bool Kept)> Cautious, bool BestKept) Judge(CoolingRule rule) =>
        (rule.Judge(History(Millimetres, Alpha, BothFaces)), rule.Judge(History(Millimetres, 1.4e-7, true)).All(s => s.Kept));

    /// <summary>Tenfold growth of C. perfringens at the slowest point, cautious case, with the lag of its spores: a second figure beside the rule.</summary>
    public (double Least, double Most) Growth => PerfringensGrowth.Log10(History(Millimetres, Alpha, BothFaces));

    /// <summary>Ice that brings flat bags of so much food to 5 °C within the stages of a rule, in as much water as there is food; null when they are too thick for any ice.</summary>
    public static Mass? Ice(double grams, double millimetres, CoolingRule rule)
    {
        SolidBody bag = SolidBody.Of(SolidShape.Slab, [Length.FromMillimetres(millimetres)], Diffusivity.FromSquareMetresPerSecond(Alpha), Conductivity.FromWattsPerMetreKelvin(K), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(100));
        return MeltingIce.Needed(new MeltingIce(Mass.FromGrams(0), Mass.FromGrams(grams), Temperature.FromCelsius(15), Mass.FromGrams(grams), Power.FromWatts(50)), bag, Temperature.FromCelsius(90), Temperature.FromCelsius(5), Duration.FromHours(rule.First.Hours + (rule.Second?.Hours ?? 0)));
    }

    /// <summary>Thickest layer that keeps the rule in a way of cooling, whole millimetres; 0 when not even 5 mm does.</summary>
    public static int Thickest(CoolingRule rule, double air, double medium, bool bothFaces)
    {
        Cooled asked = new(null!, 0, 1, "", air, medium, bothFaces);
        int low = 0;
        int high = 120;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = middle >= 5 && rule.Judge(asked.History(middle, Alpha, bothFaces)).All(s => s.Kept) || middle < 5 ? (middle, high) : (low, middle);
        }

        return low < 5 ? 0 : low;
    }

    /// <summary>The thickest layer that keeps a rule, by the usual ways of cooling, in words; a way in which none does is left out.</summary>
    public static string Layers(CoolingRule rule)
    {
        (string Way, int Millimetres)[] ways = [("fan fridge at 3 °C", Thickest(rule, 15, 3, false)), ("blast chiller at 2 °C", Thickest(rule, 25, 2, false)), ("flat bags in stirred ice water", Thickest(rule, 100, 1, true))];
        return string.Join("; ", ways.Where(w => w.Millimetres > 0).Select(w => FormattableString.Invariant($"{w.Way}: layers of at most {w.Millimetres} mm")));
    }

    private ImmutableArray<(double Minute, Temperature At)> History(double millimetres, double alpha, bool both)
    {
        double full = Math.Min(1000, millimetres * (both ? 1 : 2));
        SolidBody body = SolidBody.Of(SolidShape.Slab, [Length.FromMillimetres(full)], Diffusivity.FromSquareMetresPerSecond(alpha), Conductivity.FromWattsPerMetreKelvin(K), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(Air));
        return [.. Enumerable.Range(0, 361).Select(i => (i * 4.0, body.CoreAfter(Temperature.FromCelsius(90), Temperature.FromCelsius(Medium), Duration.FromMinutes(i * 4))))];
    }

    // Syrups, jams, dry bakes and chocolate do not grow anything in hours; what is not known is judged.
    private static bool Grows(Mixture m) => m.Grams > 0 && (m.Unknown.IsEmpty
        ? (m.Water ?? 0) >= 0.4 * m.Grams && (m.Sugars ?? 0) < 1.2 * (m.Water ?? 0)
        : (m.Water ?? 0) >= 0.2 * m.Grams);
}
