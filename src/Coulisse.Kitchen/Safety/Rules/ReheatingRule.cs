using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Cooked, chilled and warmed again: hot enough, by a stated figure, and once.</summary>
internal static class ReheatingRule
{
    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        string source = code.Code == "us" ? "FDA Food Code 3-403.11" : code.Holding;
        foreach (WeighedComponent c in dish.Components)
        {
            Step[] again = [.. c.Component.Steps.Where(s => s.Operations.Append(s.Operation).Any(o => o == "reheat"))];
            foreach (Step s in again)
            {
                StepTemperature? at = s.Temperatures.Where(t => t.Celsius > 20 && t.Bound != Bound.AtMost && t.Of is TemperatureOf.Food or TemperatureOf.Core or TemperatureOf.Bath).MaxBy(t => t.Celsius);
                bool boils = s.Operations.Append(s.Operation).Any(o => o is "boil_food" or "simmer") || s.Text.Contains("boil", StringComparison.OrdinalIgnoreCase);
                if (at is not null && at.Celsius < code.Reheat)
                {
                    yield return new Finding(Severity.Stop, "SAF013", c.Component.Name, s.Span.Line, "Reheated to less than the code asks.", FormattableString.Invariant($"{at.Celsius:0.#} °C"), FormattableString.Invariant($"{code.Reheat:0} °C"), FormattableString.Invariant($"{code.Reheat - at.Celsius:0.#} °C too cool"), FormattableString.Invariant($"Reheat the middle to {code.Reheat:0} °C or more within 2 h: {Ways(c, s, code)}."), source);
                }
                else if (at is null && !boils)
                {
                    yield return new Finding(Severity.Warn, "SAF038", c.Component.Name, s.Span.Line, "It cannot be shown safe: the card does not say how hot it is when it has been reheated.", "no temperature stated", FormattableString.Invariant($"{code.Reheat:0} °C in the middle"), "", FormattableString.Invariant($"Write the figure into the step: {code.Reheat:0} °C or more in the middle, within 2 h: {Ways(c, s, code)}."), source);
                }
            }

            if (again.Length > 1)
            {
                yield return new Finding(Severity.Warn, "SAF038", c.Component.Name, again[1].Span.Line, "Reheated more than once: each time adds hours between cold and hot.", FormattableString.Invariant($"{again.Length} times"), "once", "", "Chill it in portions and reheat only what is served.", "Common advice of food agencies (from memory)");
            }
        }
    }

    // A bath ten degrees above the figure; hotter costs quality, closer never gets there (common practice, no source).
    private const double Above = 10;

    // From the fridge, by the cautious case: the card's own thickness where it has one, and the thickest that is there in the two hours.
    private static string Ways(WeighedComponent component, Step step, PracticeCode code)
    {
        Temperature bath = Temperature.FromCelsius(code.Reheat + Above);
        (Temperature start, Temperature core) = (Temperature.FromCelsius(0), Temperature.FromCelsius(code.Reheat));
        FlatBag bag = PieceInBath.Of(component, step, start, bath).Cautious;
        string where = FormattableString.Invariant($"from the fridge in a stirred bath at {bath.Celsius:0} °C");
        string most = bag.ThickestIn(Limit, start, bath, core) is { } t ? FormattableString.Invariant($"flat bags of at most {Math.Floor(t.Millimetres):0} mm are there in time") : "";
        double? card = step.ThicknessMillimetres ?? component.Component.Steps.Select(s => s.ThicknessMillimetres).LastOrDefault(m => m is not null);
        string own = card is { } mm && mm > 0 && bag.TimeTo(Length.FromMillimetres(mm), start, bath, core) is { } time && time <= Limit
            ? FormattableString.Invariant($"{mm:0.#} mm take {Math.Ceiling(time.TotalMinutes):0} min {where}, ") : most.Length > 0 ? where + " " : "";
        return own + most + (most.Length > 0 ? "; " : "") + "what can be stirred is brought to the boil";
    }

    private static readonly Duration Limit = Duration.FromHours(2);
}
