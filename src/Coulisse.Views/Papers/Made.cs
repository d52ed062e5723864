using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Tasks;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>When and by whom a part is made, by the plan.</summary>
internal static class Made
{
    // Work that does not yet touch food that spoils: weighing, setting kit up, bringing water to heat.
    private static readonly string[] Before = ["weigh", "weigh_small", "preheat_oven", "preheat_fryer", "fill_bath", "line_tin", "receive_store", "set_station", "move_kit", "carry", "handwash"];

    private static readonly string[] After =
    [
        "set_gel", "set_aside", "unmould", "turn_tray", "cut_slab", "cut_strips_ruler", "trim_level", "layer_press", "lay_on_trays", "chill_ice", "blast_chill", "chill_fridge", "freeze", "cool_rack", "cool_oven", "portion_out", "cover_wrap", "label", "plate_component", "plate_fine", "sauce_plate", "garnish", "serve", "box_portions", "hold_hot",
    ];

    // What planning adds behind a step that made the part already.
    private static readonly string[] Rests = [TaskWords.Stood, TaskWords.Out, TaskWords.StaysIn];

    /// <summary>End of the last task that makes a part, before it is only set, chilled, cut or packed: the clock of a use-by runs from there; null when no plan makes it.</summary>
    /// <remarks>Work on the small batch for the stage is no making of the guests': each is dated from its own (<see cref="StageDates"/>).</remarks>
    public static (LocalDateTime When, ImmutableArray<string> Who)? Of(PaperBundle bundle, Batch batch, string component)
    {
        if (bundle.Plan is not { } plan)
        {
            return null;
        }

        string dish = batch.Weighed.Dish.Title;
        Dictionary<int, Step> steps = batch.Weighed.Dish.Components.Where(c => c.Name == component).SelectMany(c => c.Steps).GroupBy(s => s.Span.Line).ToDictionary(g => g.Key, g => g.First());
        PlannedTask[] tasks = [.. plan.Tasks.Where(t => !t.ForStage && t.Component == component && (t.Dish is null || Same(t.Dish, bundle, batch, dish)) && (t.Kind == TaskKind.Work || t.Kind == TaskKind.Unattended))
            .Where(t => !steps.TryGetValue(t.Line, out Step? s) || s.Operation is null || !Before.Contains(s.Operation)).OrderBy(t => t.Start)];
        if (tasks.Length == 0)
        {
            return null;
        }

        // The card's clock starts when the part is finished; setting, chilling, cutting, taking out and packing it do not start it anew.
        PlannedTask last = tasks.LastOrDefault(t => !Rests.Any(w => t.Text.Contains(w, StringComparison.Ordinal)) && (!steps.TryGetValue(t.Line, out Step? s) || s.Operation is null || !After.Contains(s.Operation))) ?? tasks[0];
        return (last.End, last.People.IsEmpty ? tasks.LastOrDefault(t => !t.People.IsEmpty)?.People ?? [] : last.People);
    }

    private static bool Same(string name, PaperBundle bundle, Batch batch, string dish) => name.Equals(dish, StringComparison.OrdinalIgnoreCase) || name.Equals(bundle.NameOf(batch), StringComparison.OrdinalIgnoreCase);
}
