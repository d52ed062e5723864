using Coulisse.Kitchen.Planning.Model;
using Google.OrTools.Sat;

namespace Coulisse.Solver.SetPoints;

/// <summary>For each state a few tiles of time, all of a kit kept apart by one global constraint, each padded by the least change away from its state.</summary>
/// <remarks>Where a change takes longer than the least, two tiles keep that further apart by themselves. Three tiles a state: the same caution as for campaigns.</remarks>
internal static class Tiles
{
    private const int EachState = 3;

    public static void Add(CpModel model, StateKit kit, IReadOnlyList<SetPointUse> uses, int horizon)
    {
        int[] states = [.. uses.Select(u => u.State).Distinct().Order()];
        if (states.Length < 2)
        {
            return;
        }

        List<(int State, int Pad, IntVar Start, IntVar End, BoolVar There)> tiles = [];
        List<IntervalVar> padded = [];
        foreach (int state in states)
        {
            int pad = states.Where(t => t != state).Min(t => kit.ChangeTime(state, t));
            int count = Math.Min(EachState, uses.Count(u => u.State == state));
            for (int k = 0; k < count; k++)
            {
                (IntVar start, IntVar end, BoolVar there) = (model.NewIntVar(0, horizon, ""), model.NewIntVar(0, horizon, ""), model.NewBoolVar(""));
                IntVar size = model.NewIntVar(0, horizon + pad, "");
                padded.Add(model.NewOptionalIntervalVar(start, size, end + pad, there, ""));
                if (k > 0)
                {
                    // Tiles of one state are alike: the later of them is used last, and after.
                    model.AddImplication(there, tiles[^1].There);
                    model.Add(start >= tiles[^1].End).OnlyEnforceIf(there);
                }

                tiles.Add((state, pad, start, end, there));
            }
        }

        model.AddNoOverlap(padded);
        for (int i = 0; i < tiles.Count; i++)
        {
            for (int j = i + 1; j < tiles.Count; j++)
            {
                Further(model, kit, tiles[i], tiles[j]);
            }
        }

        foreach (SetPointUse use in uses)
        {
            (int State, int Pad, IntVar Start, IntVar End, BoolVar There)[] own = [.. tiles.Where(t => t.State == use.State)];
            BoolVar[] lies = [.. own.Select(_ => model.NewBoolVar(""))];
            model.Add(LinearExpr.Sum(lies) == LinearExpr.Affine(use.Chosen, 1, 0));
            for (int k = 0; k < own.Length; k++)
            {
                model.AddImplication(lies[k], own[k].There);
                model.Add(use.Start >= own[k].Start).OnlyEnforceIf(lies[k]);
                model.Add(use.Start + use.Duration <= own[k].End).OnlyEnforceIf(lies[k]);
            }
        }
    }

    private static void Further(CpModel model, StateKit kit, (int State, int Pad, IntVar Start, IntVar End, BoolVar There) a, (int State, int Pad, IntVar Start, IntVar End, BoolVar There) b)
    {
        int there = kit.ChangeTime(a.State, b.State);
        int back = kit.ChangeTime(b.State, a.State);
        if (a.State == b.State || (there <= a.Pad && back <= b.Pad))
        {
            return;
        }

        BoolVar first = model.NewBoolVar("");
        model.Add(b.Start >= a.End + there).OnlyEnforceIf([a.There, b.There, first]);
        model.Add(a.Start >= b.End + back).OnlyEnforceIf([a.There, b.There, first.Not()]);
    }
}
