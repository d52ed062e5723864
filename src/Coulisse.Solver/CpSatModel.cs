using System.Collections.Immutable;
using Coulisse.Kitchen.Planning.Model;
using Coulisse.Solver.SetPoints;
using Google.OrTools.Sat;
using Google.OrTools.Util;
using Term = Coulisse.Kitchen.Planning.Model.Term;

namespace Coulisse.Solver;

/// <summary>A scheduling problem written as a CP-SAT model: one start an activity, optional intervals for modes and for the people who may serve.</summary>
internal sealed class CpSatModel
{
    private readonly SchedulingProblem _problem;
    private readonly List<(IntervalVar Interval, int Amount)>[] _held;
    private readonly List<IntVar> _all = [];
    private readonly IntVar[] _start;
    private readonly LinearExpr[] _end;
    private readonly ILiteral[] _present;
    private readonly ILiteral[][] _mode;
    private readonly Dictionary<(int Activity, int Resource), BoolVar> _serves = [];

    private CpSatModel(SchedulingProblem problem)
    {
        _problem = problem;
        int n = problem.Activities.Length;
        (_start, _end, _present, _mode) = (new IntVar[n], new LinearExpr[n], new ILiteral[n], new ILiteral[n][]);
        _held = [.. problem.Resources.Select(_ => new List<(IntervalVar, int)>())];
    }

    public CpModel Model { get; } = new();

    /// <summary>Why arithmetic alone refuses the problem; null when it does not.</summary>
    public string? Refused { get; private set; }

    public static CpSatModel Build(SchedulingProblem problem, StateFormulation states = StateFormulation.Pairs)
    {
        CpSatModel built = new(problem);
        for (int a = 0; a < problem.Activities.Length && built.Refused is null; a++)
        {
            built.AddActivity(a);
        }

        if (built.Refused is null)
        {
            built.AddLags();
            built.AddStates(states);
            built.AddStores();
            built.AddCleans();
            built.AddCapacities();
            foreach (GoalLimit limit in problem.Limits.Where(l => !l.Goal.Terms.IsEmpty))
            {
                built.Model.Add(built.Value(limit.Goal) <= limit.Most);
            }
        }

        return built;
    }

    public LinearExpr Value(Goal goal)
    {
        List<LinearExpr> terms = [];
        foreach (Term t in goal.Terms)
        {
            LinearExpr e = t.Kind switch
            {
                TermKind.Makespan => Makespan(),
                TermKind.Start => _start[t.Index],
                TermKind.Present => LinearExpr.Affine(_present[t.Index], 1, 0),
                TermKind.Mode => LinearExpr.Affine(_mode[t.Index][t.Other], 1, 0),
                TermKind.LagExcess => Excess(_problem.Lags[t.Index]),
                TermKind.Served => _serves.TryGetValue((t.Index, t.Other), out BoolVar? s) ? s : Model.NewConstant(0),
                TermKind.Moved => Away(t),
                TermKind.EndAfter => Beyond(t),
                _ => throw new NotSupportedException($"The engine does not weigh {t.Kind} yet."),
            };
            terms.Add(e * t.Weight);
        }

        return LinearExpr.Sum(terms);
    }

    public void Hint(CpSolver solver)
    {
        Model.ClearHints();
        foreach (IntVar v in _all)
        {
            Model.AddHint(v, solver.Value(v));
        }
    }

    public EngineSchedule Read(SolutionReader solution, ImmutableArray<LevelResult> levels)
    {
        int n = _start.Length;
        return new EngineSchedule(
            [.. Enumerable.Range(0, n).Select(a => solution.True(_present[a]) ? (int)solution.Value(_start[a]) : -1)],
            [.. Enumerable.Range(0, n).Select(a => Math.Max(0, Array.FindIndex(_mode[a], l => solution.True(l))))],
            [.. Enumerable.Range(0, n).Select(a => _serves.Where(s => s.Key.Activity == a && solution.True(s.Value)).Select(s => s.Key.Resource).Order().ToImmutableArray())],
            levels);
    }

    /// <summary>A solution met on the way: its values are measured, nothing is proven yet.</summary>
    public EngineSchedule ReadFirst(SolutionReader solution, ImmutableArray<Goal> goals)
    {
        EngineSchedule s = Read(solution, []);
        return s with { Levels = [.. goals.Select(g => new LevelResult(g.Name, GoalValue.Of(_problem, g, s), long.MinValue))] };
    }

    private IntVar Int(long low, long high)
    {
        IntVar v = Model.NewIntVar(low, high, "");
        _all.Add(v);
        return v;
    }

    private BoolVar Bool()
    {
        BoolVar v = Model.NewBoolVar("");
        _all.Add(v);
        return v;
    }

    private void AddActivity(int a)
    {
        Activity activity = _problem.Activities[a];
        int shortest = activity.Modes.Min(m => m.Duration);
        long[][] stretches = activity.Windows.IsEmpty
            ? [[0, _problem.Horizon - shortest]]
            : [.. activity.Windows.Where(w => w.End - w.Start >= shortest).Select(w => new long[] { Math.Max(0, w.Start), Math.Min(w.End, _problem.Horizon) - shortest }).Where(s => s[1] >= s[0])];
        if ((stretches.Length == 0 || stretches[0][1] < stretches[0][0]) && !activity.Optional)
        {
            Refused = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{activity.Name} takes {shortest} steps, longer than any window it may lie in.");
            return;
        }

        bool nowhere = stretches.Length == 0 || stretches[0][1] < stretches[0][0];
        _start[a] = activity.FixedStart is { } at ? Model.NewConstant(at)
            : nowhere ? Model.NewConstant(0) : Model.NewIntVarFromDomain(Domain.FromIntervals(stretches), activity.Name);
        if (activity.FixedStart is null && !nowhere)
        {
            _all.Add(_start[a]);
            if (activity.HintStart is { } hint)
            {
                Model.AddHint(_start[a], hint);
            }
        }

        _present[a] = nowhere ? Model.FalseLiteral() : activity.Optional ? Bool() : Model.TrueLiteral();
        _mode[a] = activity.Modes.Length == 1 ? [_present[a]] : [.. activity.Modes.Select(_ => (ILiteral)Bool())];
        if (activity.Modes.Length > 1)
        {
            Model.Add(LinearExpr.Sum(_mode[a].Select(m => LinearExpr.Affine(m, 1, 0))) == LinearExpr.Affine(_present[a], 1, 0));
        }

        HintWay(a, activity);
        _end[a] = _start[a] + LinearExpr.Sum(activity.Modes.Select((m, i) => LinearExpr.Affine(activity.Modes.Length == 1 ? Model.TrueLiteral() : _mode[a][i], m.Duration, 0)));
        for (int m = 0; m < activity.Modes.Length; m++)
        {
            AddMode(a, activity, m, _mode[a][m]);
        }
    }

    private void HintWay(int a, Activity activity)
    {
        if (activity.HintMode is { } hinted && activity.Modes.Length > 1)
        {
            for (int m = 0; m < activity.Modes.Length; m++)
            {
                Model.AddHint((BoolVar)_mode[a][m], m == hinted ? 1 : 0);
            }
        }
    }

    private void AddMode(int a, Activity activity, int m, ILiteral chosen)
    {
        Mode mode = activity.Modes[m];
        bool hinted = !activity.HintServed.IsDefault && (activity.HintMode ?? 0) == m;
        if (!activity.Windows.IsEmpty && activity.FixedStart is null && activity.Modes.Length > 1)
        {
            long[][] fits = [.. activity.Windows.Where(w => w.End - w.Start >= mode.Duration).Select(w => new long[] { w.Start, w.End - mode.Duration })];
            Model.AddLinearExpressionInDomain(_start[a], Domain.FromIntervals(fits)).OnlyEnforceIf(chosen);
        }

        Model.Add(_start[a] + mode.Duration <= _problem.Horizon).OnlyEnforceIf(chosen);
        IntervalVar interval = Model.NewOptionalFixedSizeIntervalVar(_start[a], mode.Duration, chosen, "");
        foreach (Demand d in mode.Demands.Where(d => d.Amount > 0))
        {
            _held[d.Resource].Add((interval, d.Amount));
        }

        foreach (Choice choice in mode.Choices)
        {
            BoolVar[] serve = [.. choice.Resources.Select(_ => Bool())];
            Model.Add(LinearExpr.Sum(serve) == LinearExpr.Affine(chosen, choice.Count, 0));
            for (int i = 0; i < serve.Length; i++)
            {
                int r = choice.Resources[i];
                if (!activity.HintServed.IsDefault)
                {
                    Model.AddHint(serve[i], hinted && activity.HintServed.Contains(r) ? 1 : 0);
                }

                _held[r].Add((Model.NewOptionalFixedSizeIntervalVar(_start[a], mode.Duration, serve[i], ""), _problem.Resources[r].Capacity));
                if (_serves.TryGetValue((a, r), out BoolVar? earlier))
                {
                    BoolVar either = Bool();
                    Model.Add(either == earlier + serve[i]);
                    _serves[(a, r)] = either;
                }
                else
                {
                    _serves[(a, r)] = serve[i];
                }
            }
        }
    }

    private LinearExpr At(int activity, Edge edge) => edge == Edge.Start ? _start[activity] : _end[activity];

    private void AddLags()
    {
        foreach (Lag lag in _problem.Lags)
        {
            ILiteral[] both = [_present[lag.From], _present[lag.To]];
            Model.Add(At(lag.To, lag.ToEdge) - At(lag.From, lag.FromEdge) >= lag.Least).OnlyEnforceIf(both);
            if (lag.Most is { } most && !lag.Soft)
            {
                Model.Add(At(lag.To, lag.ToEdge) - At(lag.From, lag.FromEdge) <= most).OnlyEnforceIf(both);
            }
        }
    }

    private void AddStates(StateFormulation formulation)
    {
        List<SetPointUse>[] uses = [.. _problem.StateKits.Select(_ => new List<SetPointUse>())];
        for (int a = 0; a < _start.Length; a++)
        {
            for (int m = 0; m < _mode[a].Length; m++)
            {
                Mode mode = _problem.Activities[a].Modes[m];
                if (mode.State is { } s)
                {
                    uses[s.Kit].Add(new SetPointUse(a, _start[a], _mode[a][m], mode.Duration, s.State));
                }
            }
        }

        for (int k = 0; k < uses.Length; k++)
        {
            SetPointRules.Add(Model, _problem.StateKits[k], uses[k], _problem.Horizon, formulation);
        }
    }

    private void AddStores()
    {
        foreach (Storing s in _problem.Stores)
        {
            ILiteral both = _present[s.From];
            LinearExpr until = LinearExpr.Constant(_problem.Horizon);
            if (s.To is { } to)
            {
                BoolVar meet = Bool();
                Model.AddBoolAnd([_present[s.From], _present[to]]).OnlyEnforceIf(meet);
                Model.AddBoolOr([meet, _present[s.From].Not(), _present[to].Not()]);
                (both, until) = (meet, _start[to]);
            }

            // An interval begins at one variable: an end that hangs on the mode gets one of its own.
            IntVar from = Int(0, _problem.Horizon);
            Model.Add(from == _end[s.From]).OnlyEnforceIf(both);
            _held[s.Resource].Add((Model.NewOptionalIntervalVar(from, Int(0, _problem.Horizon), until, both, ""), s.Amount));
        }
    }

    private void AddCleans()
    {
        foreach (CleanRule rule in _problem.Cleans)
        {
            foreach (CleanUse u in rule.Uses)
            {
                // Two uses that nobody can move any more are as they are, unless it is a cleaning between them that can be moved.
                foreach (CleanUse v in rule.Uses.Where(v => v.Activity != u.Activity && (u.Carries & ~v.Carries) != 0 && !(Stands(u.Activity) && Stands(v.Activity) && !Between(rule, u.Activity, v.Activity))))
                {
                    // Either v comes first, or some cleaning stands between.
                    BoolVar before = Bool();
                    Model.Add(_start[u.Activity] >= _end[v.Activity]).OnlyEnforceIf(before);
                    List<ILiteral> ways = [before, _present[u.Activity].Not(), _present[v.Activity].Not(), .. Off(rule, u.Activity), .. Off(rule, v.Activity)];
                    foreach (int w in rule.Cleanings)
                    {
                        BoolVar between = Bool();
                        Model.AddImplication(between, _present[w]);
                        foreach (ILiteral elsewhere in Off(rule, w))
                        {
                            Model.AddImplication(between, elsewhere.Not());
                        }

                        Model.Add(_start[w] >= _end[u.Activity]).OnlyEnforceIf(between);
                        Model.Add(_start[v.Activity] >= _end[w]).OnlyEnforceIf(between);
                        ways.Add(between);
                    }

                    Model.AddBoolOr(ways);
                }
            }
        }
    }

    private bool Stands(int a) => _problem.Activities[a].FixedStart is not null;

    private bool Between(CleanRule rule, int u, int v)
    {
        int from = _problem.Activities[u].FixedStart!.Value + _problem.Activities[u].Modes.Min(m => m.Duration);
        int to = _problem.Activities[v].FixedStart!.Value;
        return rule.Cleanings.Select(w => _problem.Activities[w]).Any(w => w.FixedStart is null && w.Modes.Min(m => m.Duration) is var d
            && (w.Windows.IsEmpty ? from + d <= to : w.Windows.Any(x => Math.Max(x.Start, from) + d <= Math.Min(x.End, to))));
    }

    // The modes of an activity that leave the kit alone.
    private IEnumerable<ILiteral> Off(CleanRule rule, int a) => Enumerable.Range(0, _mode[a].Length).Where(m => !rule.Holds(_problem.Activities[a].Modes[m])).Select(m => _mode[a][m]);

    private void AddCapacities()
    {
        for (int r = 0; r < _held.Length; r++)
        {
            Resource resource = _problem.Resources[r];
            foreach (Stretch closed in resource.Closed.Where(c => c.End > c.Start))
            {
                _held[r].Add((Model.NewFixedSizeIntervalVar(Model.NewConstant(closed.Start), closed.End - closed.Start, ""), Math.Max(1, resource.Capacity)));
            }

            if (_held[r].Count > 0 && _held[r].All(h => 2 * h.Amount > resource.Capacity && h.Amount <= resource.Capacity))
            {
                Model.AddNoOverlap(_held[r].Select(h => h.Interval));
            }
            else if (_held[r].Count > 0)
            {
                CumulativeConstraint sum = Model.AddCumulative(resource.Capacity);
                foreach ((IntervalVar interval, int amount) in _held[r])
                {
                    sum.AddDemand(interval, amount);
                }
            }
        }

        for (int s = 0; s < _problem.Stocks.Length; s++)
        {
            List<LinearExpr> used = [];
            for (int a = 0; a < _start.Length; a++)
            {
                for (int m = 0; m < _mode[a].Length; m++)
                {
                    used.AddRange(_problem.Activities[a].Modes[m].Uses.Where(u => u.Resource == s).Select(u => LinearExpr.Affine(_mode[a][m], u.Amount, 0)));
                }
            }

            Model.Add(LinearExpr.Sum(used) <= _problem.Stocks[s].Amount);
        }
    }

    private IntVar Makespan()
    {
        IntVar last = Int(0, _problem.Horizon);
        for (int a = 0; a < _start.Length; a++)
        {
            Model.Add(last >= _end[a]).OnlyEnforceIf(_present[a]);
        }

        foreach ((long capacity, long work) in TotalWork.Of(_problem))
        {
            Model.Add(last * capacity >= work);
        }

        return last;
    }

    private IntVar Excess(Lag lag)
    {
        IntVar over = Int(0, _problem.Horizon * 2L);
        Model.Add(over >= At(lag.To, lag.ToEdge) - At(lag.From, lag.FromEdge) - (lag.Most ?? 0)).OnlyEnforceIf([_present[lag.From], _present[lag.To]]);
        return over;
    }

    private IntVar Away(Term t)
    {
        IntVar away = Int(0, _problem.Horizon);
        Model.AddAbsEquality(away, _start[t.Index] - t.Other);
        return away;
    }

    private IntVar Beyond(Term t)
    {
        IntVar beyond = Int(0, Math.Max(0, _problem.Horizon - t.Other));
        Model.Add(beyond >= _end[t.Index] - t.Other).OnlyEnforceIf(_present[t.Index]);
        return beyond;
    }
}
