using System.Collections.Immutable;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Live;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Kitchen.Planning.Tasks;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Why;

/// <summary>Why a task is when it is.</summary>
/// <param name="Id">The task's number in the plan.</param>
/// <param name="Key">Its lasting name.</param>
/// <param name="NotEarlier">What holds it from being a minute earlier, in words; empty when nothing does.</param>
/// <param name="NotLater">What holds it from being a minute later, in words; empty when nothing does.</param>
/// <param name="Slack">How much later it could be with all else as planned.</param>
/// <param name="Chain">What binds it, what binds that, and so on to something nobody can move.</param>
public sealed record TaskReason(string Id, string Key, ImmutableArray<string> NotEarlier, ImmutableArray<string> NotLater, Duration Slack, ImmutableArray<string> Chain);

/// <summary>Reads from a plan why each of its tasks is when it is.</summary>
public sealed class PlanReasons
{
    private readonly PrepWork _work;
    private readonly PrepProblem _prep;
    private readonly EngineSchedule _schedule;
    private readonly PlanTrace _trace;
    private readonly OneMove _move;
    private readonly HoldWords _words;

    /// <summary>Prepares the reasons of a plan.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="work">Its work, with the edits the plan was made with.</param>
    /// <param name="plan">The plan.</param>
    public PlanReasons(Occasion occasion, PrepWork work, Plan plan)
    {
        _work = EditedWork.Of(work);
        _prep = PrepProblem.Write(occasion, work);
        _trace = PlanTrace.Of(_work, plan);
        _schedule = _trace.Schedule(_prep, [.. occasion.People.Select(p => p.Name)]);
        _move = new OneMove(_prep.Problem, _schedule);
        _words = new HoldWords(occasion, _work, _prep, _schedule, Called);
    }

    /// <summary>The problem behind the plan.</summary>
    public SchedulingProblem Problem => _prep.Problem;

    /// <summary>The plan as a schedule of it.</summary>
    public EngineSchedule Schedule => _schedule;

    /// <summary>Reasons of every task that the occasion's work accounts for, in order of start.</summary>
    public ImmutableArray<TaskReason> All() => [.. Enumerable.Range(0, _work.Tasks.Length).Where(i => _schedule.Starts[i] >= 0).OrderBy(i => _schedule.Starts[i]).ThenBy(i => i).Select(Of)];

    /// <summary>Reasons of one piece of work.</summary>
    /// <param name="i">Its position in the work; it must be in the plan.</param>
    public TaskReason Of(int i)
    {
        ImmutableArray<Hold> later = _move.Holds(i, 1);
        return new TaskReason(Name(i), _work.Tasks[i].Key, [.. _move.Holds(i, -1).Select(h => _words.Of(h, -1)).Distinct()], [.. later.Select(h => _words.Of(h, 1)).Distinct()], Duration.FromMinutes(later.IsEmpty ? Slack(i) : 0), Chain(i));
    }

    private int Slack(int i)
    {
        int shift = 1;
        while (shift < _prep.Problem.Horizon && _move.Holds(i, shift + 1).IsEmpty)
        {
            shift++;
        }

        return shift;
    }

    private ImmutableArray<string> Chain(int i)
    {
        ImmutableArray<string>.Builder chain = ImmutableArray.CreateBuilder<string>();
        HashSet<int> seen = [];
        for (int at = i; at >= 0 && seen.Add(at);)
        {
            ImmutableArray<Hold> holds = _move.Holds(at, -1);
            if (holds.IsEmpty)
            {
                chain.Add($"{Called(at)} could begin earlier; it stands as late as what follows allows");
                break;
            }

            // Of several, the one that leads to another task tells most.
            Hold hold = holds.FirstOrDefault(h => h.Other >= 0) ?? holds[0];
            chain.Add($"{Called(at)} at {_words.Clock(_schedule.Starts[at])} because {_words.Of(hold, -1)}");
            at = hold.Other;
        }

        return chain.ToImmutable();
    }

    private string Name(int i) => _trace.Tasks[i]?.Id ?? _work.Tasks[i].Key;

    private string Called(int i) => $"{Name(i)} “{Slot.TwinStage.Clause(_work.Tasks[i].Text)}”";

}
