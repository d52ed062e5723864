using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Web;

namespace Coulisse.Views.Papers;

/// <summary>The list of twins: every one with its number, state, place, keeping, cue and what becomes of it.</summary>
public static class TwinListPaper
{
    public const string Kind = "swap-outs";

    public static Paper? Of(PaperBundle bundle)
    {
        if (bundle.Plan is not { Twins.IsEmpty: false } plan)
        {
            return null;
        }

        ImmutableArray<PaperRow> rows = [.. plan.Twins.OrderBy(t => t.Number).Select(t => new PaperRow(
        [
            new PaperCell(RunSheetPaper.Number(t.Number), true),
            new PaperCell(t.CueSecond > 0 || t.BroughtBy.Length > 0 ? Figures.Clock(t.CueSecond) : "", true),
            new PaperCell(t.State + (t.Replaces.Length > 0 ? $" (stands for {t.Replaces.Split(", most of it")[0]})" : "")) { Lead = t.Component },
            Count(t, bundle.Culture),
            t.Grams is { } g ? Figures.Grams(g, bundle.Culture) : "",
            Days.Moment(t.ReadyBy, bundle.Culture),
            Maker(t, plan),
            Held(t, bundle),
            PaperCell.Blank,
            t.Place,
            SetOut(t, plan, bundle.Culture),
            t.Stands ? "stands there" : t.BroughtBy,
            t.Afterwards,
            PaperCell.Tick,
            PaperCell.Tick,
        ]))];
        return bundle.Sheet(Kind, "Twins",
            new ParagraphBlock("Set out by: who puts it where it stands before the slot, and when that is done. Brought at the cue by: who takes it from there to whoever shows it; what stands there is within reach. The number stands on the body of the container, front and back, not on the lid. First tick: made and labelled. Second tick: in its place before the slot."),
            new TableBlock(
            [
                new("No."), new("Comes in", Side.Right), new("Of, and state"), new("How many", Side.Right), new("Grams", Side.Right), new("Ready"), new("Made by"), new("Held, keeps"), new("In (like the live one)", Pen: 16), new("Stands"), new("Set out by"), new("Brought at the cue by"), new("Afterwards"), new("Made", Side.Centre), new("There", Side.Centre),
            ], rows)) with { Landscape = true, TextSize = 10 };
    }

    private static string Count(Twin t, CultureInfo culture) => Figures.Number(t.Count, culture);

    // How long it keeps is the card's word for the part; a twin of a whole dish keeps as its parts say. What stands hot keeps by its bath, not by the cold.
    private static string Held(Twin t, PaperBundle bundle)
    {
        if (t.Holds.Contains("in the bath", StringComparison.Ordinal))
        {
            return t.Holds;
        }

        string keeps = Keeps.Words(bundle.Batches.SelectMany(b => b.Components).Select(c => c.Weighed.Component).Where(c => c.Name == t.Component));
        return t.Holds + (keeps.Length == 0 ? "" : "\nkeeps " + char.ToLowerInvariant(keeps[0]) + keeps[1..]);
    }

    private static string SetOut(Twin t, Plan plan, CultureInfo culture) => TwinPlaces.Of(plan, t) is not { } sets ? ""
        // What stands in its heat is set out by nobody: it stays where it was put in.
        : sets.Task.Kind != TaskKind.Carry ? $"nobody: it stays where it cooked; put in by {string.Join(", ", sets.People)}, {Days.Moment(sets.Task.Start, culture)}" : $"{string.Join(", ", sets.People)}, {Days.Moment(sets.Task.End, culture)}";

    private static string Maker(Twin t, Plan plan)
    {
        if (plan.Tasks.FirstOrDefault(x => x.Id == t.MadeBy) is not { } task)
        {
            return t.MadeBy ?? "";
        }

        ImmutableArray<string> people = task.People.IsEmpty ? plan.Tasks.FirstOrDefault(x => x.Within == task.Id && !x.People.IsEmpty)?.People ?? [] : task.People;
        return string.Join(", ", people.Append(task.ForStage ? "a small batch of its own" : "from the batch"));
    }
}
