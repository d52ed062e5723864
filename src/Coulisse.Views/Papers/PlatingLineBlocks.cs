using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Watch;
using Coulisse.Kitchen.Plating;
using Coulisse.Views.Web;

namespace Coulisse.Views.Papers;

/// <summary>The plating line under the plate: who lays what, where it is narrow, how long, in which waves.</summary>
internal static class PlatingLineBlocks
{
    public static IEnumerable<Block> Of(PaperBundle bundle, Batch batch)
    {
        ImmutableArray<PlatingTask> tasks = PlatingTimes.Of(batch.Weighed.Dish);
        int plates = Plates(bundle, batch);
        int people = Hands(bundle, batch);
        if (tasks.IsEmpty || tasks.Length > 12 || plates < 1 || people < 1)
        {
            yield break;
        }

        CultureInfo culture = bundle.Culture;
        PlatingLine line = PlatingLine.Best(tasks, people, plates);
        yield return new HeadingBlock(1, "The line");
        yield return new TableBlock([new("Station", Side.Right), new("Lays"), new("People", Side.Right), new("Seconds a plate", Side.Right), new("Name", Pen: 30)],
            [.. line.Stations.Select((s, i) => new PaperRow([Figures.Number(i + 1, culture), string.Join(", ", s.Tasks.Select(t => t.Name)), Figures.Number(s.People, culture), new PaperCell(Seconds(s.Pace, culture) + (s == line.Narrow ? " narrow place" : ""), s == line.Narrow), PaperCell.Blank]))]);
        ImmutableArray<int> waves = bundle.Occasion is { } o && TrayRoom.Said(o.Kit) is { } tray ? line.Waves(tray, PlatingTimes.WaveMinutes) : [];
        string wave = waves.IsEmpty ? "" : $" Waves of {string.Join(", ", waves)} plates, none out of the fridge longer than {Figures.Number(PlatingTimes.WaveMinutes, culture)} min.";
        yield return new ParagraphBlock($"{Figures.Number(plates, culture)} plates by {Figures.Number(people, culture)} people: {Seconds(line.Pace, culture)} a plate, {Figures.Number(Math.Round(line.Minutes, 1), culture)} min with nothing fetched or wiped.{wave} Seconds are first guesses (work standards, common practice, no source): time ten plates and change them.", Small: true);
    }

    private static string Seconds(double s, CultureInfo culture) => Figures.Number(Math.Round(s, 1), culture) + "\u202Fs";

    // Plates laid on the stage are not laid on the line.
    private static int Plates(PaperBundle bundle, Batch batch)
    {
        int i = Array.FindIndex([.. bundle.Batches], b => ReferenceEquals(b, batch));
        return bundle.Occasion is { } o && i >= 0 && i < o.Dishes.Length ? o.Dishes[i].Count - o.PlatedLive
            : (int)Math.Round((batch.Weighed.Dish.Yields.FirstOrDefault(y => y.Unit is "plates" or "portions" or "covers")?.Amount ?? 0) * batch.Factor);
    }

    private static int Hands(PaperBundle bundle, Batch batch)
    {
        PlannedTask[] planned = [.. bundle.Plan?.Tasks.Where(t => t.Kind == TaskKind.Plate && (t.Dish is null || t.Dish == bundle.NameOf(batch) || t.Dish == batch.Weighed.Dish.Title)) ?? []];
        int inPlan = planned.SelectMany(t => t.People).Distinct().Count();
        int onCard = batch.Weighed.Dish.Components.Where(c => c.IsAssembly).SelectMany(c => c.Steps).Select(s => s.People).DefaultIfEmpty(1).Max();
        return inPlan > 0 ? inPlan : Math.Max(onCard, 1);
    }
}
