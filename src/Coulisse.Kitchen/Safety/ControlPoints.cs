using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Heat;

namespace Coulisse.Kitchen.Safety;

/// <summary>Control points drafted from a card in Codex terms beside those of core limits: cooling, hot holding, reheating, cold storage, freezing of fish.</summary>
/// <remarks>A draft: which of them are critical is decided by the person who answers for the food. Terms: Codex Alimentarius CXC 1-1969 (hazard, critical limit, monitoring, corrective action, record).</remarks>
internal static class ControlPoints
{
    public static IEnumerable<ControlPoint> Draft(WeighedDish dish, PracticeCode code)
    {
        CoolingRule rule = CoolingRule.Of(code.Code);
        string stages = FormattableString.Invariant($"{rule.First.From.Celsius:0} to {rule.First.To.Celsius:0} °C in {rule.First.Hours:0.#} h") + (rule.Second is { } second ? FormattableString.Invariant($", {second.From.Celsius:0} to {second.To.Celsius:0} °C in {second.Hours:0.#} h") : "");
        foreach (WeighedComponent c in dish.Components)
        {
            string name = c.Component.Name;
            foreach (Cooled cooled in Cooled.In(c))
            {
                yield return new ControlPoint(name, cooled.Step.Span.Line, "Growth of spore formers (Clostridium perfringens, Bacillus cereus) while it cools", stages, "Probe in the middle of the thickest layer at the start and at each stage's end, each batch, by the cook in charge", "Spread it thinner or stir it in ice water at once; past the stage, discard", "Time and reading at each stage, what was done, name");
            }

            foreach (Step s in c.Component.Steps)
            {
                string[] does = [.. s.Operations.Append(s.Operation).OfType<string>()];
                if (does.Any(o => o is "hold_hot" or "bain_marie_hold"))
                {
                    yield return new ControlPoint(name, s.Span.Line, "Growth of Clostridium perfringens and Bacillus cereus in held food", FormattableString.Invariant($"{code.Hot:0} °C or more"), "Probe in the coolest place at the start and every hour, by the station", "Under two hours below the limit reheat or serve; past four discard", "Hour, reading, name") { LeastCelsius = code.Hot };
                }

                if (does.Contains("reheat"))
                {
                    yield return new ControlPoint(name, s.Span.Line, "Survival and growth in food that is warmed again", FormattableString.Invariant($"{code.Reheat:0} °C in the middle, once"), "Probe in the middle of the thickest piece, each batch, by the cook in charge", "Go on until it is there; never a second time", "Reading, hour, name") { LeastCelsius = code.Reheat };
                }

                if (s.Temperatures.Any(t => t.Of == TemperatureOf.Freezer) && FoodTraits.LinesThat(c, l => FoodTraits.Contains(l, "fish")).Any() && FoodTraits.Hottest(dish, c) < 60)
                {
                    yield return new ControlPoint(name, s.Span.Line, "Parasites in fish eaten raw", FormattableString.Invariant($"{code.FishCelsius:0} °C for {code.FishHours:0} h in all parts").Replace('-', '−'), "Freezer's own log, and a probe in the middle of one piece", "Count the hours again from when the middle is there", "Date and hour in and out, freezer reading, name") { MostCelsius = code.FishCelsius };
                }
            }

            // One line a component: the strictest cold storage it names.
            Keeping? cold = c.Component.Keeps.Where(k => !k.Quality && k.Where != "freezer" && k.Celsius is >= -2 and <= 10).MinBy(k => k.Celsius);
            if (cold is not null)
            {
                yield return new ControlPoint(name, cold.Span.Line, "Growth of Listeria monocytogenes and others in the cold", FormattableString.Invariant($"{Math.Min(cold.Celsius!.Value, code.Cold):0.#} °C or less") + (cold.Hours is { } h ? FormattableString.Invariant($", {h / 24:0.#} {(h == 24 ? "day" : "days")} at most") : ""), "Air of the cold place read morning and evening, labels read each day, by whoever opens", "Warmer for under two hours: cool at once; longer or past its date: discard", "Reading, hour, name; date label on each container") { MostCelsius = Math.Min(cold.Celsius!.Value, code.Cold) };
            }
        }
    }
}
