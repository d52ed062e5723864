using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Heat;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Hot food that is cooled too thick or too slowly for the stages of the code.</summary>
internal static class CoolingStagesRule
{
    private const double Countless = 9;  // powers of ten: no more is worth counting
    private const double Little = 500;   // g: a small pot of unknown shape is not worth a doubt

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        CoolingRule rule = CoolingRule.Of(code.Code);
        foreach (WeighedComponent c in dish.Components)
        {
            foreach (Cooled cooled in Cooled.In(c).Where(x => x.Thickness is not null || x.Grams >= Little))
            {
                (var stages, bool best) = cooled.Judge(rule);
                if (stages.All(s => s.Kept))
                {
                    continue;
                }

                (CoolingStage stage, double? hours, _) = stages.First(s => !s.Kept);
                string layer = cooled.Thickness is { } t ? FormattableString.Invariant($"{t:0.#} mm") : FormattableString.Invariant($"{cooled.Grams / 1000:0.#} kg, no depth stated, taken as one pot {cooled.Millimetres:0} mm high");
                string remedy = Cooled.Layers(rule)
                    + FormattableString.Invariant($"; or stir it in ice water, {IceBath.Ice(cooled.Grams / 1000, 60, 5):0.#} kg of ice for what it holds from 60 °C and half as much again for pot and air{Melts(cooled, rule)}.");
                (double least, double most) = cooled.Growth;
                yield return new Finding(
                    cooled.Thickness is not null && !best ? Severity.Stop : Severity.Warn,
                    "SAF014", c.Component.Name, cooled.Step.Span.Line,
                    FormattableString.Invariant($"In the {cooled.Way} the middle is not shown to cool in time ({layer}).{(most >= 1 ? FormattableString.Invariant($" Clostridium perfringens might grow {Grown(least, most)} powers of ten there.") : "")}"),
                    hours is { } h ? FormattableString.Invariant($"{stage.From.Celsius:0} to {stage.To.Celsius:0} °C in {h:0.#} h") : "not within 24 h",
                    FormattableString.Invariant($"{stage.From.Celsius:0} to {stage.To.Celsius:0} °C in {stage.Hours:0.#} h"),
                    hours is { } over ? FormattableString.Invariant($"{over - stage.Hours:0.#} h too slow") : "",
                    char.ToUpperInvariant(remedy[0]) + remedy[1..],
                    rule.Source);
            }
        }
    }

    // beyond nine it is no longer a count of bacteria, only far too much
    private static string Grown(double least, double most)
        => least >= Countless ? FormattableString.Invariant($"{Countless} or more") : FormattableString.Invariant($"{least:0.#} to {Math.Min(most, Countless):0.#}{(most > Countless ? " or more" : "")}");

    // the bags' ice in time: tap water at 15 °C, as much as there is food, and 50 W from the room (common practice, no source)
    private static string Melts(Cooled cooled, CoolingRule rule)
        => Math.Min(25, Cooled.Thickest(rule, 100, 1, true)) is > 0 and var mm && cooled.Grams > 0 && Cooled.Ice(cooled.Grams, mm, rule) is { } ice ? FormattableString.Invariant($"; bags of {mm} mm need {ice.Grams / 1000:0.#} kg of ice in {cooled.Grams / 1000:0.#} l of water") : "";
}
