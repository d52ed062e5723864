using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Bags that float, lie on one another or carry air in a bath: water does not reach them on both faces; and a bath left open for long, whose water sinks below them.</summary>
/// <remarks>
/// Raised by what the card says of its bags; "so that none floats" or "without overlapping" says the opposite. With the greatest thickness known the minutes of the worse case are given: overlapping as twice the thickness, floating or with air as h 21 W/(m²·K) on both faces, what 1 mm of still air leaves of 95.
/// </remarks>
internal static partial class BagInWaterRule
{
    private const double WarmBath = 50;    // °C; common practice, no source
    private const double LongOpen = 60;    // min; common practice, no source
    private const double BehindAir = 21;   // W/(m²·K): 1/(1/95 + 0.001/0.026)

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components)
        {
            PieceState piece = new(c);
            foreach (Step s in c.Component.Steps)
            {
                piece.Enter(s);
                if (s.Temperatures.Where(t => t.Of == TemperatureOf.Bath && t.Celsius is > 20 and <= 100).Select(t => (double?)t.Celsius).Min() is { } bath && Said(s.Text) is { } how)
                {
                    yield return Found(c, s, piece, bath, how);
                }

                if (s.Temperatures.Where(t => t.Of == TemperatureOf.Bath && t.Celsius is >= WarmBath and <= 100).Select(t => (double?)t.Celsius).Max() is { } warm && CoreHeldRule.Stays(s) is >= LongOpen and var minutes && Open().Match(s.Text) is { Success: true } open)
                {
                    yield return new Finding(
                        Severity.Warn, "SAF045", c.Component.Name, s.Span.Line, FormattableString.Invariant($"An open bath at {warm:0.#} °C loses water for {minutes:0} min: it sinks below the bags and may not hold its heat (“{open.Value.Trim()}”)."), "", "covered, the water over every bag", "",
                        "Cover the bath with its lid or foil, look in every half hour, top up with water of the same heat.", "Common practice, no source");
                }

                piece.Leave(s);
            }
        }
    }

    private static Finding Found(WeighedComponent c, Step s, PieceState state, double bath, (bool Lies, string Words) how)
    {
        double? minutes = CoreHeldRule.Stays(s);
        StepTemperature? core = s.Temperatures.Where(t => t.Of == TemperatureOf.Core && t.Bound != Bound.AtMost).MaxBy(t => t.Celsius);
        string value = "";
        string margin = "";
        string until = "";
        if (state.Thickness is >= 1 and <= 250 and var mm)
        {
            // without a limit of the card's, half a degree below the bath is "through"
            double wanted = core?.Celsius ?? bath - 0.5;
            (Temperature at, Temperature to) = (Temperature.FromCelsius(bath), Temperature.FromCelsius(wanted));
            PieceHeating good = PieceHeating.Of(new CoreAsked(c, s, mm, state.Start, state.Frozen, minutes, wanted, core?.HoldMinutes ?? 0, ""), at);
            HeatTransferCoefficient air = HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(BehindAir);
            PieceHeating bad = how.Lies ? good : good with { Bag = good.Bag with { Surface = air }, Ice = good.Ice is { } ice ? ice with { Thawed = ice.Thawed with { Surface = air } } : null };
            Duration? well = good.TimeTo(Length.FromMillimetres(mm), at, to);
            Duration? ill = bad.TimeTo(Length.FromMillimetres(how.Lies ? Math.Min(500, 2 * mm) : mm), at, to);
            if (well is { } w && ill is { } i)
            {
                double hold = core?.HoldMinutes ?? 0;
                value = FormattableString.Invariant($"{Math.Ceiling(i.TotalMinutes + hold):0} min to {wanted:0.#} °C in the middle{(hold > 0 ? " and its hold" : "")}");
                margin = FormattableString.Invariant($"{Math.Ceiling(i.TotalMinutes - w.TotalMinutes):0} min later than bags that hang free");
                until = FormattableString.Invariant($" Or leave them in {Math.Ceiling(i.TotalMinutes + hold):0} min, counted for the worst of them.");
            }
        }

        return new Finding(
            Severity.Warn, "SAF045", c.Component.Name, s.Span.Line,
            how.Lies ? $"Bags that lie on one another heat like one of twice the thickness (“{how.Words}”)." : $"A bag that floats or holds air is not reached by the water on all of its face (“{how.Words}”).",
            value, "water on both faces of every bag", margin,
            "Draw all air out, weigh or clip the bags under water, one beside the other with a finger's breadth between." + until,
            "Finite conduction through 1 mm of still air, 0.026 W/(m·K); Baldwin, Int. J. Gastronomy and Food Science 1 (2012) 15-30 for h 95");
    }

    // The words that say it, unless the clause they stand in says that it is not so.
    private static (bool Lies, string Words)? Said(string text)
    {
        foreach (Match m in Signs().Matches(text))
        {
            int from = Math.Max(text.LastIndexOfAny(['.', ';', ':'], Math.Max(0, m.Index - 1)), 0);
            int to = text.IndexOfAny(['.', ';'], m.Index + m.Length);
            string clause = text[from..(to < 0 ? text.Length : to)];
            if (!Denied().IsMatch(clause))
            {
                return (m.Groups["lies"].Success, m.Value.Trim());
            }
        }

        return null;
    }

    [GeneratedRegex(@"(?<lies>\boverlap\w*|\bstack(ed|ing)?\b[^.;]{0,20}\bbags?|\bbags?\b[^.;]{0,30}\b(stacked|piled|on top of (each other|one another|the first))|\b(lay|pile|put|place)\b[^.;]{0,30}\bon top of (each other|one another|the first|the others?)|\bin layers of bags\b)|(?<air>\bfloat(s|ing)?\b|\b(air|air pocket|some air|a little air)\b[^.;]{0,15}\b(left|stays?|remains?|in the bag))", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Signs();

    [GeneratedRegex(@"\b(lid|cover) off\b|\bwithout (a|its|the) (lid|cover)\b|\b(open|uncovered) (water )?bath\b|\bbath\b[^.;]{0,20}\b(uncovered|left open|no lid)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Open();

    [GeneratedRegex(@"\b(not|no|none|never|nothing|nor|without|avoid\w*|prevent\w*|don't|mustn't|cannot|can't|neither|stop\w*|keep\w* (it|them)? ?from|if|unless|turn\w*|press\w*)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Denied();
}
