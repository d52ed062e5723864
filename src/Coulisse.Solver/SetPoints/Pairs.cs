using Coulisse.Kitchen.Planning.Model;
using Google.OrTools.Sat;

namespace Coulisse.Solver.SetPoints;

/// <summary>Every two uses at different states keep the change time apart. Exact; the number of orders grows with the square of the uses.</summary>
internal static class Pairs
{
    public static void Add(CpModel model, StateKit kit, IReadOnlyList<SetPointUse> uses)
    {
        for (int i = 0; i < uses.Count; i++)
        {
            for (int j = i + 1; j < uses.Count; j++)
            {
                (SetPointUse a, SetPointUse b) = (uses[i], uses[j]);
                if (a.State == b.State || a.Activity == b.Activity)
                {
                    continue;
                }

                BoolVar first = model.NewBoolVar("");
                model.Add(b.Start >= a.Start + a.Duration + kit.ChangeTime(a.State, b.State)).OnlyEnforceIf([a.Chosen, b.Chosen, first]);
                model.Add(a.Start >= b.Start + b.Duration + kit.ChangeTime(b.State, a.State)).OnlyEnforceIf([a.Chosen, b.Chosen, first.Not()]);
            }
        }
    }
}
