using System.Globalization;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Tasks;

namespace Coulisse.Kitchen.Planning.Why;

/// <summary>Says holds in words.</summary>
/// <param name="occasion">The occasion.</param>
/// <param name="work">Its work with its edits.</param>
/// <param name="prep">The problem.</param>
/// <param name="schedule">The schedule.</param>
/// <param name="called">What a piece of work is called.</param>
internal sealed class HoldWords(Occasion occasion, PrepWork work, PrepProblem prep, EngineSchedule schedule, Func<int, string> called)
{
    /// <summary>A hold in words, without a full stop.</summary>
    /// <param name="h">The hold.</param>
    /// <param name="shift">Which way it holds: negative against earlier.</param>
    public string Of(Hold h, int shift)
    {
        string held = h.Activity >= 0 && work.Tasks[h.Activity].Kind == TaskKind.Moment ? $" (for “{Slot.TwinStage.Clause(work.Tasks[h.Activity].Text)}”)" : "";
        string other = h.Other >= 0 ? called(h.Other) : "";
        string edge = h.Other < 0 ? "" : shift < 0 ? " until " + Clock(End(h.Other)) : " from " + Clock(schedule.Starts[h.Other]);
        return h.Kind switch
        {
            HoldKind.Fixed => "it is fixed to " + Clock(schedule.Starts[h.Activity]),
            HoldKind.Window => Window(h.Activity, shift),
            HoldKind.Lag => LagWords(prep.Problem.Lags[h.Index], h, other),
            HoldKind.Hands => $"{(h.Resources.Length > 2 ? "all who can do it are" : string.Join(" and ", h.Resources.Select(r => prep.Problem.Resources[r].Name)) + (h.Resources.Length == 1 ? " is" : " are"))} busy or away{edge}{(other.Length > 0 ? " with " + other : "")}{held}",
            HoldKind.Kit => $"{prep.Problem.Resources[h.Resources[0]].Name} is taken{edge}{(other.Length > 0 ? " by " + other : "")}",
            HoldKind.SetPoint => $"{prep.Problem.StateKits[h.Index].Name} {(h.Other < 0 ? "must first reach its set point" : string.Create(CultureInfo.InvariantCulture, $"holds {State(h.Other)} °C{edge} for {other}, and needs its time to change"))}",
            _ => $"a wash must stand between {called(h.Activity)} and {other}",
        };
    }

    private int State(int i) => prep.Problem.Activities[i].Modes[schedule.Modes[i]].State?.State ?? 0;

    private int End(int i) => schedule.End(prep.Problem, i);

    private static string LagWords(Lag lag, Hold h, string other)
    {
        bool after = h.Activity == lag.To;
        int apart = lag.Least;
        string least = apart > 0 ? string.Create(CultureInfo.InvariantCulture, $", {apart} min") : "";
        return after ? $"{lag.Because}{least} ({other})" : $"{other} follows it: {lag.Because}{least}";
    }

    private string Window(int i, int shift)
    {
        PrepTask t = work.Tasks[i];
        if (shift < 0)
        {
            return t.PinnedAt is not null ? "you pinned it there"
                : t.NotBefore is { } nb && PlanTrace.Step(prep, nb) == schedule.Starts[i] ? "made sooner it would not keep, or not be fresh, until it is eaten"
                : schedule.Starts[i] == 0 ? "the prep days begin then" : "no prep window is open before";
        }

        return t.PinnedAt is not null ? "you pinned it there"
            : t.DoneBy is { } by && PlanTrace.Step(prep, by) == End(i) ? "it must be done by " + by.ToString("ddd HH:mm", CultureInfo.InvariantCulture)
            : End(i) == prep.Problem.Horizon ? "the slot begins" : "the prep window closes";
    }

    /// <summary>A step as a clock time, with its day unless it is the slot's.</summary>
    /// <param name="step">The step.</param>
    public string Clock(int step) => prep.Zero.PlusMinutes(step).ToString(prep.Zero.PlusMinutes(step).Date == occasion.SlotStart.Date ? "HH:mm" : "ddd HH:mm", CultureInfo.InvariantCulture);
}
