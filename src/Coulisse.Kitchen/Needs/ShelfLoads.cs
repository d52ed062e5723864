using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;

namespace Coulisse.Kitchen.Needs;

/// <summary>Shelves, slots and trays taken by the tasks of a plan, each piece of kit against what it holds.</summary>
public static class ShelfLoads
{
    /// <summary>One profile for each piece of kit with shelves and tasks in it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="occasion">The occasion with its kit.</param>
    /// <remarks>A task takes the shelves it says, else one for each vessel its kit list repeats (the same code written twice takes two), at least one; a moment inside a task takes none of its own.</remarks>
    public static ImmutableArray<LoadProfile> Of(Plan plan, Occasion occasion)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(occasion);
        return [.. occasion.Kit.Where(k => k.Code.Length > 0 && k.Shelves is > 0)
            .Select(k => LoadProfile.Of($"{k.Code} {k.What}", "shelves", k.Shelves!.Value * Math.Max(1, k.Number), Pieces(plan, k)))
            .Where(l => !l.Stretches.IsEmpty)];
    }

    private static IEnumerable<LoadPiece> Pieces(Plan plan, SheetKit kit) => plan.Tasks
        .Where(t => t.Within is null && t.Kind != TaskKind.Preheat && t.Kit.Contains(kit.Code))
        .Select(t => new LoadPiece(t.Component is { Length: > 0 } c ? c : t.Text, Math.Max(t.Shelves, t.Kit.Count(code => code == kit.Code)), t.Start, t.End));
}
