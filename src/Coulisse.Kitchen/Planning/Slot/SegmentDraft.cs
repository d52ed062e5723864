using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>What a segment is there for.</summary>
internal enum SegmentKind
{
    Opening,
    Show,
    Tell,
    Plate,
    Close,
}

/// <summary>A segment before its seconds are fixed.</summary>
internal sealed record SegmentDraft(SegmentKind Kind, ImmutableArray<ShowItem> Items, int Least, int Best)
{
    /// <summary>The step after the last one shown, when it runs by itself: the live one goes on there while the talk goes on.</summary>
    public Step? GoesOn => Kind != SegmentKind.Show ? null : Items.Where(i => i.Show.How is ShowKind.Begin or ShowKind.Full && i.Step is not null).Select(Next).FirstOrDefault(s => s is not null);

    public int Weight => Items.IsEmpty ? 5 : Items.Max(i => i.Show.Weight);

    public bool UsesBlender => Items.Any(i => i.Show.How != ShowKind.Tell && (i.Show.StepText.Contains("blend", StringComparison.OrdinalIgnoreCase) || (i.Show.How == ShowKind.Full && i.Step is { } s && s.Kit.Any(k => k.Contains("blender", StringComparison.Ordinal)))));

    private static Step? Next(ShowItem item)
    {
        // What goes on may lie in a later component of a dish that is baked as a whole.
        Step[] steps = [.. item.Dish.Dish.Components.Where(c => !c.IsAssembly && (c == item.Component || item.Dish.Dish.Plate.IsEmpty)).SelectMany(c => c.Steps)];
        int at = Array.IndexOf(steps, item.Step);

        // The step itself when it runs by itself (a bath, an oven), else the next one that does, if only hands lie between.
        for (int i = at; i >= 0 && i < steps.Length && i <= at + 3; i++)
        {
            if (steps[i].Temperatures.Any(t => t.Of is TemperatureOf.Oven or TemperatureOf.Bath && t.Bound == Bound.At) && steps[i].Times.Any(t => t.MinutesMin >= 10 && t.Kind is TimeKind.Oven or TimeKind.Cook))
            {
                return steps[i];
            }

            if (i > at && steps[i].Times.Any(t => t.MinutesMin >= 10))
            {
                return null;
            }
        }

        return null;
    }
}
