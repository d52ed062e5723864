using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Meat or fish held warm below 54.4 °C, or so thick that its middle comes through the warm range too slowly: growth need not stop.</summary>
/// <remarks>The come-up is that of the middle in a bath, cautious for the warning and with 1.4e-7 m²/s for the stop; an oven's is not known well enough (<see cref="CoreInOven"/>).</remarks>
internal static class LowTemperatureRule
{
    private const double Sure = 54.4;
    private const double Minutes = 240;
    private const double ComeUp = 360;

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components.Where(c => FoodTraits.Lines(c, FoodTraits.IsFlesh).Any()))
        {
            PieceState piece = new(c);
            foreach (Step s in c.Component.Steps)
            {
                piece.Enter(s);
                if (ComesUp(c, s, piece) is { } slow)
                {
                    yield return slow;
                }

                piece.Leave(s);
                StepTemperature? warm = s.Temperatures.Where(t => t.Of is TemperatureOf.Bath or TemperatureOf.Oven && t.Celsius > 20).MaxBy(t => t.Celsius);
                double? minutes = s.Times.Where(t => t.Kind is not (TimeKind.Limit or TimeKind.Chill)).Max(t => t.MinutesMax ?? t.MinutesMin);
                if (warm is null || warm.Celsius >= 57)
                {
                    continue;
                }

                if (warm.Celsius < Sure && (minutes is null || minutes > Minutes))
                {
                    yield return new Finding(Severity.Stop, "SAF012", c.Component.Name, s.Span.Line, FormattableString.Invariant($"At {warm.Celsius:0.#} °C bacteria may grow for as long as it lies there, and Salmonella is not shown to die."), minutes is { } m ? FormattableString.Invariant($"{m / 60:0.#} h") : "no time stated", "4 h in all below 54.4 °C", minutes is { } over ? FormattableString.Invariant($"{(over - Minutes) / 60:0.#} h too long") : "", "Set 57 °C or more, or come up, finish and serve within 4 h.", "Baldwin's guide (4 h below 54.4 °C); NSW Food Authority 2012 (bath above 55 °C, at most 6 h below 54.5 °C)");
                }
                else if (warm.Celsius >= Sure && (minutes is null || minutes > 360))
                {
                    yield return new Finding(Severity.Warn, "SAF012", c.Component.Name, s.Span.Line, FormattableString.Invariant($"{warm.Celsius:0.#} °C lies in the range where the published reduction is least certain."), minutes is { } m ? FormattableString.Invariant($"{m / 60:0.#} h") : "no time stated", "6 h between 55 and 60 °C", "", "Prefer 57 °C and up, with the time counted from when the core is there.", "McMinn and others 2018 (abstract) on FSIS Appendix A at 54.4 °C; Victoria's sous vide supplement (6 h)");
                }
                else if (warm.Celsius >= Sure)
                {
                    yield return new Finding(Severity.Note, "SAF012", c.Component.Name, s.Span.Line, FormattableString.Invariant($"{warm.Celsius:0.#} °C is where the published reduction is least certain: leave it in longer than the table says."), minutes is { } t ? FormattableString.Invariant($"{t:0.#} min") : "", "57 °C and up", "", "Prefer 57 °C and up, with the time counted from when the core is there.", "McMinn and others 2018 (abstract) on FSIS Appendix A at 54.4 °C");
                }
            }
        }
    }

    private static Finding? ComesUp(WeighedComponent c, Step s, PieceState state)
    {
        if (s.Temperatures.Where(t => t.Of == TemperatureOf.Bath && t.Bound != Bound.AtMost && t.Celsius is > Sure and <= 100).Select(t => (double?)t.Celsius).Min() is not { } bath || state.Thickness is not (>= 1 and <= 250 and var mm) || state.Frozen)
        {
            return null;
        }

        (Temperature at, Temperature sure) = (Temperature.FromCelsius(bath), Temperature.FromCelsius(Sure));
        PieceHeating piece = PieceHeating.Of(new CoreAsked(c, s, mm, state.Start, false, null, Sure, 0, ""), at);
        double? slow = piece.TimeTo(Length.FromMillimetres(mm), at, sure)?.TotalMinutes;
        if (slow <= ComeUp)
        {
            return null;
        }

        bool stop = (piece.Bag with { Diffusivity = 1.4e-7 }).TimeTo(Length.FromMillimetres(mm), piece.Start, at, sure)?.TotalMinutes is not <= ComeUp;
        string thin = piece.ThickestIn(Duration.FromMinutes(ComeUp), at, sure) is { } most ? FormattableString.Invariant($"At most {Math.Floor(most.Millimetres * 10) / 10:0.#} mm at {bath:0.#} °C") : "Cut it thinner";
        int? hotter = Enumerable.Range((int)Math.Ceiling(bath), Math.Max(0, 91 - (int)Math.Ceiling(bath))).Where(t => piece.TimeTo(Length.FromMillimetres(mm), Temperature.FromCelsius(t), sure)?.TotalMinutes <= ComeUp).Select(t => (int?)t).FirstOrDefault();
        return new Finding(
            stop ? Severity.Stop : Severity.Warn, "SAF012", c.Component.Name, s.Span.Line,
            FormattableString.Invariant($"The middle of {mm:0.#} mm takes {slow / 60:0.#} h to 54.4 °C in a bath of {bath:0.#} °C: bacteria grow on the way."),
            FormattableString.Invariant($"{slow / 60:0.#} h"), "54.4 °C within 6 h", FormattableString.Invariant($"{(slow - ComeUp) / 60:0.#} h too slow"),
            thin + (hotter is { } h ? FormattableString.Invariant($", or a bath of {h} °C for this thickness.") : "."),
            "USDA FSIS Cooking Guideline (Appendix A), 2021: core from 10 to 54.4 °C within 6 h");
    }
}
