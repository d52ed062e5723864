using Coulisse.Kitchen.Formulas.Targets;
using Google.OrTools.LinearSolver;
using Linear = Google.OrTools.LinearSolver.Solver;

namespace Coulisse.Solver.Fitting;

/// <summary>Linear fits by OR-Tools' simplex (GLOP): first the least miss, then the least movement at that miss.</summary>
public sealed class GlopFit : ILinearFit
{
    /// <inheritdoc/>
    public LinearAnswer? Solve(LinearTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        if (Run(task, null) is not { } least)
        {
            return null;
        }

        // A hair of room, or rounding of the first answer would make the second impossible.
        return Run(task, (least.Missed * (1 + 1e-9)) + 1e-7) is { } moved ? moved : least;
    }

    private static LinearAnswer? Run(LinearTask task, double? mostMissed)
    {
        using Linear solver = Linear.CreateSolver("GLOP");
        Variable[] x = [.. task.Amounts.Select(a => solver.MakeNumVar(a.Low, a.High, ""))];
        LinearExpr missed = new();
        foreach (LinearRow row in task.Rows)
        {
            LinearExpr sum = new();
            for (int i = 0; i < x.Length; i++)
            {
                sum += x[i] * row.Factors[i];
            }

            if (row.Firm)
            {
                solver.Add(new RangeConstraint(sum, row.Low, row.High));
                continue;
            }

            Variable over = solver.MakeNumVar(0, double.PositiveInfinity, "");
            Variable under = solver.MakeNumVar(0, double.PositiveInfinity, "");
            solver.Add(new RangeConstraint(sum - over + under, row.Low, row.High));
            missed += (over + under) * (1 / row.Scale);
        }

        if (mostMissed is { } most)
        {
            solver.Add(new RangeConstraint(missed, double.NegativeInfinity, most));
            LinearExpr moved = new();
            for (int i = 0; i < x.Length; i++)
            {
                Variable away = solver.MakeNumVar(0, double.PositiveInfinity, "");
                solver.Add(new RangeConstraint(x[i] - away, double.NegativeInfinity, task.Amounts[i].Start));
                solver.Add(new RangeConstraint(x[i] + away, task.Amounts[i].Start, double.PositiveInfinity));
                moved += away * task.Amounts[i].Weight;
            }

            solver.Minimize(moved);
        }
        else
        {
            solver.Minimize(missed);
        }

        if (solver.Solve() is not Linear.ResultStatus.OPTIMAL)
        {
            return null;
        }

        double[] amounts = [.. x.Select(v => v.SolutionValue())];
        double total = task.Rows.Where(r => !r.Firm).Sum(r =>
        {
            double value = r.Factors.Zip(amounts, (f, a) => f * a).Sum();
            return Math.Max(0, Math.Max(r.Low - value, value - r.High)) / r.Scale;
        });
        return new LinearAnswer([.. amounts], total);
    }
}
