using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>A core limit for poultry or minced meat that is too low for the time it is held.</summary>
/// <remarks>Poultry: 7 log of Salmonella by the regulatory line of chicken with 12 % fat. Minced and rolled meat: 70 °C for 2 min or its equal at z 7.5. Whole cuts are left to the surface and the guest.</remarks>
internal static class CoreEquivalentRule
{
    private static readonly string[] Birds = ["chicken", "turkey", "duck leg", "goose", "guinea fowl", "quail", "poussin"];
    private static readonly string[] Minced = ["minced", "mince ", "ground beef", "ground pork", "ground lamb", "sausage meat", "sausagemeat", "burger", "tenderised", "injected", "rolled joint", "rolled shoulder", "boned and rolled"];

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components)
        {
            bool bird = FoodTraits.Lines(c, f => FoodTraits.IsFlesh(f) && Birds.Any(b => FoodTraits.Says(f, b)) && !FoodTraits.Says(f, "egg") && !FoodTraits.Says(f, "liver")).Any();
            bool minced = FoodTraits.Lines(c, f => Minced.Any(m => FoodTraits.Says(f, m)) && !FoodTraits.Says(f, "cooked")).Any();
            if (!bird && !minced)
            {
                continue;
            }

            // The hottest limit of the component is the one that cooks it.
            (Step Step, StepTemperature Core)? hottest = c.Component.Steps.SelectMany(s => s.Temperatures.Where(t => t.Of == TemperatureOf.Core && t.Bound != Bound.AtMost && t.Celsius is > 40 and < 120).Select(t => ((Step Step, StepTemperature Core)?)(s, t))).MaxBy(x => x!.Value.Core.Celsius);
            if (hottest is not { } found || c.Component.Steps.Any(s => s.Operations.Append(s.Operation).Any(o => o is "braise" or "make_stock" or "boil_food" or "deep_fry")))
            {
                continue;
            }

            double at = found.Core.Celsius;
            double held = found.Core.HoldMinutes ?? 0;
            double needed = bird ? Bird(at) : 2 * Math.Pow(10, (70 - at) / 7.5);
            double instant = bird ? 74 : 75;
            if (at >= instant || held >= needed)
            {
                continue;
            }

            bool never = double.IsInfinity(needed);
            string hold = never ? "no time" : needed >= 1 ? FormattableString.Invariant($"{Math.Ceiling(needed):0} min") : FormattableString.Invariant($"{Math.Ceiling(needed * 60):0} s");
            yield return new Finding(
                vulnerable || at < 60 ? Severity.Stop : Severity.Warn, "SAF033", c.Component.Name, found.Step.Span.Line,
                (bird ? "Poultry" : "Minced meat") + FormattableString.Invariant($" at {at:0.#} °C in the middle needs to be held there."),
                held > 0 ? FormattableString.Invariant($"held {held:0.#} min") : "no time stated",
                never ? FormattableString.Invariant($"{instant:0} °C, or {PoultryFloor():0.#} °C held") : FormattableString.Invariant($"{at:0.#} °C for {hold}, or {instant:0} °C"),
                never ? FormattableString.Invariant($"{instant - at:0.#} °C too cool") : FormattableString.Invariant($"{Math.Max(0, needed - held):0.#} min short"),
                never ? FormattableString.Invariant($"No time is long enough at {at:0.#} °C: take it to {instant:0} °C.") : FormattableString.Invariant($"Write and keep {at:0.#} °C for {hold}, or take it to {instant:0} °C."),
                bird ? "USDA FSIS Cooking Guideline (Appendix A), table 3, 7 log; FDA Food Code 3-401.11" : "UK Food Standards Agency, 70 °C for 2 min, z 7.5");
        }
    }

    private static double PoultryFloor() => Organism.All.First(o => o.Id == "salmonella-chicken").Floor.Celsius;

    /// <summary>Minutes for 7 log; below the line's range nothing is enough.</summary>
    private static double Bird(double celsius)
    {
        Organism line = Organism.All.First(o => o.Id == "salmonella-chicken");
        return celsius < line.Floor.Celsius ? double.PositiveInfinity : 7 * line.Best.At(Temperature.FromCelsius(Math.Min(celsius, line.Ceiling.Celsius)));
    }
}
