using System.Globalization;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Kitchen.Planning.Watch;

/// <summary>Judges the sums by the code of practice: four hours in all, and in Australia and New Zealand no way back into the cold after two.</summary>
internal static class TimeOutRule
{
    private const double NoWayBack = 120;   // min: 2-hour/4-hour guidance to FSANZ 3.2.2

    public static IEnumerable<Finding> Judge(IEnumerable<TimeOut> parts, PracticeCode code)
    {
        double limit = code.OutHours * 60;
        foreach (TimeOut p in parts)
        {
            if (p.Minutes > limit)
            {
                yield return new Finding(
                    Severity.Stop, "SAF040", p.Part, p.Line, "Out of the cold for too long in all, counted through the plan: " + Longest(p),
                    Hours(p.Minutes), Hours(limit), Hours(p.Minutes - limit) + " too long", Remedy(p, limit), code.Time);
            }
            else if (!p.Unsaid.IsEmpty)
            {
                UnsaidPlace gap = p.Unsaid.OrderByDescending(u => u.To - u.From, Comparer<NodaTime.Period>.Create((a, b) => a.ToDuration().CompareTo(b.ToDuration()))).First();
                yield return new Finding(
                    Severity.Warn, "SAF041", p.Part, gap.Line, $"It cannot be shown safe: the card does not say where it stands between {Moment(gap.From)} and {Moment(gap.To)}, after “{gap.After}”.",
                    Hours(p.Minutes) + " out of the cold that is known", Hours(limit), "", "Write into that step where it goes (“to the fridge”), or how it is kept.", code.Time);
            }
            else if (code.Code is "au" or "nz" && p.BackAfter > NoWayBack)
            {
                yield return new Finding(
                    Severity.Warn, "SAF041", p.Part, p.Line, "It goes back into the cold after more than two hours out: by then it is to be used, not kept. " + Longest(p),
                    Hours(p.BackAfter), Hours(NoWayBack), Hours(p.BackAfter - NoWayBack) + " too long", Remedy(p, NoWayBack), code.Time);
            }
            else if (p.TakenAway)
            {
                yield return new Finding(
                    Severity.Note, "SAF042", p.Part, p.Line, "It is taken away: the clock goes on where nobody sees it.", Hours(p.Minutes) + " out when it is handed over", Hours(limit), Hours(limit - p.Minutes) + " left",
                    $"Write on the box: eat by {p.Ends.PlusMinutes((long)(limit - p.Minutes)).ToString("HH:mm", CultureInfo.InvariantCulture)}, or into a fridge at once and eat the same day.", code.Time);
            }
        }
    }

    /// <summary>Waits that the cold can take, longest first, until the sum fits; then hands in so many lots.</summary>
    private static string Remedy(TimeOut p, double limit)
    {
        double left = p.Minutes;
        List<string> put = [];
        foreach (OutStretch s in p.Stretches.Where(s => s.Stood && s.Minutes >= 5).OrderByDescending(s => s.Minutes).TakeWhile(_ => left > limit))
        {
            put.Add($"{Moment(s.From)} to {Moment(s.To)} ({Hours(s.Minutes)})");
            left -= s.Minutes;
        }

        double hands = p.Stretches.Where(s => !s.Stood).Sum(s => s.Minutes);
        double rest = left - hands;
        if (left > limit && rest < limit)
        {
            double lots = Math.Ceiling((hands / (limit - rest)) - 1e-9);
            string lot = string.Create(CultureInfo.InvariantCulture, $"work it in {lots:0} lots, the others in the cold");
            return (put.Count > 0 ? $"Into the cold {string.Join(", ", put)}, and " : "") + (put.Count > 0 ? lot : char.ToUpperInvariant(lot[0]) + lot[1..]) + $": then {Hours(rest + (hands / lots))} each.";
        }

        return left <= limit && put.Count > 0 ? $"Into the cold {string.Join(", ", put)}: then {Hours(left)}." : "Make it later, in smaller lots, or keep it hot; what has been out for longer is thrown away.";
    }

    private static string Longest(TimeOut p) => p.Stretches.OrderByDescending(s => s.Minutes).First() is var s ? $"the longest is {Hours(s.Minutes)}, {(s.Stood ? "standing" : "“" + Slot.TwinStage.Clause(s.What) + "”")} from {Moment(s.From)}." : "";

    private static string Hours(double minutes) => minutes < 60
        ? string.Create(CultureInfo.InvariantCulture, $"{minutes:0} min")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(Math.Round(minutes) / 60):0} h {Math.Round(minutes) % 60:00}");

    private static string Moment(NodaTime.LocalDateTime t) => t.ToString("ddd HH:mm", CultureInfo.InvariantCulture);
}
