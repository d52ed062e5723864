using Coulisse.Kitchen.Planning.Model;
using Google.OrTools.Sat;

namespace Coulisse.Solver.SetPoints;

/// <summary>A use of a kit at a state, in one mode of its activity.</summary>
/// <param name="Activity">Position of the activity.</param>
/// <param name="Start">Its start.</param>
/// <param name="Chosen">True when the mode is.</param>
/// <param name="Duration">Its duration.</param>
/// <param name="State">State needed.</param>
internal readonly record struct SetPointUse(int Activity, IntVar Start, ILiteral Chosen, int Duration, int State);

/// <summary>The ways to say that a kit holds one state at a time.</summary>
internal static class SetPointRules
{
    public static void Add(CpModel model, StateKit kit, IReadOnlyList<SetPointUse> uses, int horizon, StateFormulation formulation)
    {
        foreach (SetPointUse use in uses.Where(_ => kit.Initial is not null))
        {
            model.Add(use.Start >= kit.ChangeTime(kit.Initial!.Value, use.State)).OnlyEnforceIf(use.Chosen);
        }

        switch (formulation)
        {
            case StateFormulation.Campaigns:
                Campaigns.Add(model, kit, uses, horizon);
                break;
            case StateFormulation.Padded:
                Tiles.Add(model, kit, uses, horizon);
                break;
            default:
                Pairs.Add(model, kit, uses);
                break;
        }
    }
}
