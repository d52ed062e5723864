using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Formulas.Targets;

/// <summary>Brings a mixture to its targets with the fewest and smallest moves, or says what the nearest is.</summary>
/// <remarks>
/// A figure such as the freezing point is no straight line of the grams, so it is replaced by its tangent where the mixture stands, the linear fit is
/// solved, and again from there, within a region that shrinks when the step made things worse (sequential linear programming). A move is counted as a
/// share of what is written (of a twentieth of the batch for a food that is added), so that one line carries the change where one can.
/// </remarks>
public static class TargetFit
{
    private const int Rounds = 60;

    /// <summary>Fits.</summary>
    /// <param name="task">Lines, bounds and targets.</param>
    /// <param name="fit">The linear solver.</param>
    /// <returns>The answer, or why a figure cannot be worked out at all.</returns>
    public static Parsed<TargetAnswer> Reach(TargetTask task, ILinearFit fit)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(fit);
        double[] x = [.. task.Lines.Select(l => l.Grams)];
        double total = x.Sum();
        if (total <= 0 || task.Lines.Any(l => l.Low < 0 || l.High < l.Low) || !task.Lines.Any(l => l.Moves))
        {
            return Refuse("Nothing may move.", "Name lines with a weight that may move, each with its least no higher than its most.");
        }

        double[]? before = Figures(task, x);
        if (before is null)
        {
            Target lacking = task.Targets.First(t => At(task, x, t) is null);
            return Refuse($"The {lacking.Property.Name} of this mixture cannot be worked out: a part of one of its foods is not held, or there is hardly any water in it.", "Aim at a figure its foods hold.");
        }

        double reach = 1;
        double missed = Missed(task, before);
        bool first = true;
        for (int round = 0; round < Rounds && reach > 1e-9; round++)
        {
            double[]? slopes = Slopes(task, x, total);
            LinearAnswer? answer = slopes is null ? null : fit.Solve(Linear(task, x, slopes, total, reach));
            double[]? next = answer is null ? null : [.. answer.Amounts];
            double[]? figures = next is null || next.Sum() <= 0 ? null : Figures(task, next);
            if (next is null || figures is null)
            {
                if (answer is null && reach >= 1)
                {
                    return Refuse("The bounds and the weight of the whole contradict each other.", "Widen the bounds, or let the weight of the whole change.");
                }

                reach /= 2;
                continue;
            }

            double now = Missed(task, figures);
            double step = next.Zip(x, (a, b) => Math.Abs(a - b)).Max() / total;
            if (now < missed - 1e-12 || (now <= missed + 1e-9 && first))
            {
                x = next;
                missed = now;
                first = false;
                if (step < 1e-9)
                {
                    break;
                }
            }
            else if (step < 1e-9)
            {
                break;
            }
            else
            {
                reach /= 2;
            }
        }

        return new Parsed<TargetAnswer>.Ok(Answer(task, before, x));
    }

    /// <summary>Figures of given grams (after rounding to what a scale weighs, say).</summary>
    /// <returns>Null when one cannot be worked out.</returns>
    public static double? At(TargetTask task, IEnumerable<double> grams, Target target)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(target);
        (string, double, Composition)[] foods = [.. task.Lines.Zip(grams, (l, g) => (l.Name, g, l.Composition)).Where(f => f.g > 0)];
        return foods.Length == 0 ? null : target.Property.Of(Blend.Of(foods).Composition);
    }

    private static TargetAnswer Answer(TargetTask task, double[] before, double[] x)
    {
        double total = x.Sum();
        double[] after = Figures(task, x)!;
        bool reached = task.Targets.Zip(after, (t, f) => t.Miss(f) <= t.Property.Close).All(met => met);
        ImmutableArray<TargetGrams> lines = [.. task.Lines.Zip(x, (l, g) => new TargetGrams(l, Math.Clamp(g, l.Low, l.High)))];
        string[] stopped = reached ? [] : [.. lines.Where(l => l.Line.Moves && (l.Grams - l.Line.Low < 1e-6 * total || l.Line.High - l.Grams < 1e-6 * total)).Select(l => l.Line.Name)];
        return new TargetAnswer(lines, [.. task.Targets.Select((t, i) => new TargetFigure(t, before[i], after[i]))], reached, [.. stopped]);
    }

    private static LinearTask Linear(TargetTask task, double[] x, double[] slopes, double total, double reach)
    {
        int n = x.Length;
        LinearAmount[] amounts = [.. task.Lines.Select((l, i) =>
        {
            double size = Math.Max(l.Grams, total / 20);
            double low = l.Moves ? Math.Max(l.Low, x[i] - (reach * size)) : l.Low;
            double high = l.Moves ? Math.Min(l.High, x[i] + (reach * size)) : l.High;
            return low <= high ? new LinearAmount(low, high, l.Grams, 1 / size) : new LinearAmount(Math.Clamp(x[i], l.Low, l.High), Math.Clamp(x[i], l.Low, l.High), l.Grams, 1 / size);
        })];
        List<LinearRow> rows = [];
        for (int t = 0; t < task.Targets.Length; t++)
        {
            Target target = task.Targets[t];
            double[] slope = slopes[(t * (n + 1))..((t * (n + 1)) + n)];
            double offset = slopes[(t * (n + 1)) + n] - slope.Zip(x, (s, g) => s * g).Sum();
            rows.Add(new LinearRow([.. slope], target.Bound == Bound.AtMost ? double.NegativeInfinity : target.Value - offset, target.Bound == Bound.AtLeast ? double.PositiveInfinity : target.Value - offset, target.Property.Close, false));
        }

        if (task.KeepWeight)
        {
            rows.Add(new LinearRow([.. Enumerable.Repeat(1d, n)], total, total, 1, true));
        }

        return new LinearTask([.. amounts], [.. rows]);
    }

    // For each target: its slope by each line, then its value.
    private static double[]? Slopes(TargetTask task, double[] x, double total)
    {
        List<double> all = [];
        foreach (Target target in task.Targets)
        {
            if (At(task, x, target) is not { } here)
            {
                return null;
            }

            for (int i = 0; i < x.Length; i++)
            {
                double h = 1e-5 * total;
                double[] more = [.. x];
                more[i] += h;
                double[] less = [.. x];
                less[i] = Math.Max(0, less[i] - h);
                if (!task.Lines[i].Moves)
                {
                    all.Add(0);
                }
                else if (At(task, more, target) is { } up && At(task, less, target) is { } down)
                {
                    all.Add((up - down) / (more[i] - less[i]));
                }
                else
                {
                    return null;
                }
            }

            all.Add(here);
        }

        return [.. all];
    }

    private static double[]? Figures(TargetTask task, double[] x)
    {
        double?[] all = [.. task.Targets.Select(t => At(task, x, t))];
        return all.Any(a => a is null) ? null : [.. all.Select(a => a!.Value)];
    }

    private static double Missed(TargetTask task, double[] figures) => task.Targets.Zip(figures, (t, f) => t.Miss(f) / t.Property.Close).Sum();

    private static Parsed<TargetAnswer>.Failed Refuse(string message, string hint) => new([new Problem("MIX004", 0, message, hint)]);
}
