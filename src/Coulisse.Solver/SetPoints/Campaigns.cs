using Coulisse.Kitchen.Planning.Model;
using Google.OrTools.Sat;

namespace Coulisse.Solver.SetPoints;

/// <summary>A row of campaigns, each at one state, one after the other with the change time between; a use lies in one campaign of its state.</summary>
/// <remarks>
/// The row is three times as long as there are states (and never longer than the uses): a plan that changes more often is not seen, so what this
/// proves holds for plans of so few changes only.
/// </remarks>
internal static class Campaigns
{
    public static void Add(CpModel model, StateKit kit, IReadOnlyList<SetPointUse> uses, int horizon)
    {
        int[] states = [.. uses.Select(u => u.State).Distinct().Order()];
        if (states.Length < 2)
        {
            return;
        }

        int row = Math.Min(uses.Count, 3 * states.Length);
        IntVar[] start = new IntVar[row];
        IntVar[] end = new IntVar[row];
        BoolVar[][] at = new BoolVar[row][];
        for (int k = 0; k < row; k++)
        {
            (start[k], end[k]) = (model.NewIntVar(0, horizon, ""), model.NewIntVar(0, horizon, ""));
            model.Add(end[k] >= start[k]);
            at[k] = [.. states.Select(_ => model.NewBoolVar(""))];
            model.AddExactlyOne(at[k]);
            for (int s = 0; k > 0 && s < states.Length; s++)
            {
                for (int t = 0; t < states.Length; t++)
                {
                    model.Add(start[k] >= end[k - 1] + kit.ChangeTime(states[s], states[t])).OnlyEnforceIf([at[k - 1][s], at[k][t]]);
                }
            }
        }

        foreach (SetPointUse use in uses)
        {
            int state = Array.IndexOf(states, use.State);
            BoolVar[] lies = [.. Enumerable.Range(0, row).Select(_ => model.NewBoolVar(""))];
            model.Add(LinearExpr.Sum(lies) == LinearExpr.Affine(use.Chosen, 1, 0));
            for (int k = 0; k < row; k++)
            {
                model.AddImplication(lies[k], at[k][state]);
                model.Add(use.Start >= start[k]).OnlyEnforceIf(lies[k]);
                model.Add(use.Start + use.Duration <= end[k]).OnlyEnforceIf(lies[k]);
            }
        }
    }
}
