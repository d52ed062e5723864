using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Web;

namespace Coulisse.Views.Papers;

/// <summary>The swap-out list: every twin with its number, state, place, keeping, cue and what becomes of it.</summary>
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
            t.Component,
            t.State + (t.Replaces.Length > 0 ? $" (stands for {t.Replaces})" : ""),
            Count(t, bundle.Culture),
            t.Grams is { } g ? Figures.Grams(g, bundle.Culture) : "",
            Days.Moment(t.ReadyBy, bundle.Culture),
            Maker(t, plan),
            t.Holds,
            PaperCell.Blank,
            t.Place,
            t.BroughtBy,
            t.Afterwards,
            PaperCell.Tick,
            PaperCell.Tick,
        ]))];
        return bundle.Sheet(Kind, "Swap-out list",
            new ParagraphBlock("The number stands on the body of the container, front and back, not on the lid. First tick: made and labelled. Second tick: in its place before the slot."),
            new TableBlock(
            [
                new("No."), new("Comes in", Side.Right), new("Of"), new("State"), new("How many", Side.Right), new("Grams", Side.Right), new("Ready"), new("Made in"), new("Held"), new("In (like the live one)", Pen: 16), new("Stands"), new("Brought by"), new("Afterwards"), new("Made", Side.Centre), new("There", Side.Centre),
            ], rows)) with { Landscape = true, TextSize = 9 };
    }

    private static string Count(Twin t, CultureInfo culture) => Figures.Number(t.Count, culture);

    private static string Maker(Twin t, Plan plan) => plan.Tasks.FirstOrDefault(x => x.Id == t.MadeBy) is { } task ? $"{task.Text} ({(task.People.IsEmpty ? "by itself" : string.Join(", ", task.People))})" : t.MadeBy ?? "";
}
