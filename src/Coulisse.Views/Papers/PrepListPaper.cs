using System.Collections.Immutable;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Web;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>Mise en place: a sheet for each day and each person, with what runs beside them.</summary>
public static class PrepListPaper
{
    public const string Kind = "prep-list";

    public static IEnumerable<Paper> Of(PaperBundle bundle)
    {
        if (bundle.Plan is not { } plan)
        {
            yield break;
        }

        foreach (IGrouping<LocalDate, PlannedTask> day in plan.Tasks.GroupBy(t => t.Start.Date).OrderBy(g => g.Key))
        {
            foreach (string person in day.SelectMany(t => t.People).Distinct().Order(StringComparer.Ordinal))
            {
                PlannedTask[] tasks = [.. day.Where(t => t.People.Contains(person)).OrderBy(t => t.Start).ThenBy(t => t.End)];
                yield return One(bundle, plan, day.Key, person, tasks);
            }
        }
    }

    private static Paper One(PaperBundle bundle, Plan plan, LocalDate day, string person, PlannedTask[] tasks)
    {
        Duration hands = tasks.Where(t => t.Kind != TaskKind.Meal).Aggregate(Duration.Zero, (sum, t) => sum + Lasting(t));
        ImmutableArray<PaperColumn> columns =
        [
            new("Done", Side.Centre), new("From", Side.Right, Strong: true), new("To", Side.Right), new("Hands", Side.Right), new("What"), new("With"), new("Kit"), new("Grams", Side.Right), new("Batch"), new("Kept in, where", Pen: 22), new("May start later by", Side.Right), new("Initials", Pen: 13), new("Left over", Pen: 15),
        ];
        HashSet<string> said = [];
        List<Block> blocks =
        [
            new FactsBlock(
            [
                new("Day", Days.Long(day, bundle.Culture)),
                new("Begins", Days.Hour(tasks[0].Start.TimeOfDay)),
                new("Ends", Days.Until(tasks.Max(t => t.End), day, bundle.Culture)),
                new("Station", Station(bundle, person)),
                new("Hands", Figures.Lasting(hands.TotalSeconds, bundle.Culture)),
            ]),
            .. bundle.Warnings(all: false),
            new TableBlock(columns, [.. tasks.SelectMany(t => TwinPlaces.Rows(plan, t).Skip(1).Select(more => new PaperRow([PaperCell.Tick, "", "", "", more, .. Enumerable.Repeat<PaperCell>("", columns.Length - 5)])).Prepend(Row(bundle, plan, t, person, day, said)))]),
        ];
        PlannedTask[] alone = [.. plan.Tasks.Where(t => t.Kind == TaskKind.Unattended && t.Start.Date <= day && t.End.Date >= day && tasks.Any(x => x.Within == t.Id)).OrderBy(t => t.Start)];
        if (alone.Length > 0)
        {
            blocks.Add(new HeadingBlock(1, "Running by itself, with a moment of yours in it"));
            blocks.Add(new TableBlock([new("From", Side.Right), new("To", Side.Right), new("What"), new("Kit"), new("Set to", Side.Right)],
                [.. alone.Select(t => PaperRow.Of(Days.Until(t.Start, day, bundle.Culture), Days.Until(t.End, day, bundle.Culture), (t.Component is { Length: > 0 } c ? c + ": " : "") + t.Text, string.Join(", ", t.Kit), Set(t, bundle)))]));
        }

        blocks.Add(new PenLinesBlock("For the one who comes after", 2));
        return bundle.Sheet(Kind, $"{person}, {day.ToString("dddd", bundle.Culture)}", [.. blocks]) with { Id = $"{Kind}-{day.ToString("uuuu-MM-dd", System.Globalization.CultureInfo.InvariantCulture)}-{Slug.Of(person)}", Person = person, Day = day, Landscape = true };
    }

    private static string Station(PaperBundle bundle, string person) => bundle.Occasion?.People.FirstOrDefault(p => p.Name == person)?.Place ?? "";

    // The mark that stands on the label of what comes of it; a task of the house has none.
    private static string Label(PaperBundle bundle, PlannedTask t) => t.ForStage ? StageDates.Mark(bundle, t) : bundle.Batches.SelectMany(b => b.Components.Select(c => (b, c))).Where(x => !x.c.Lines.IsEmpty && x.c.Weighed.Component.Name == t.Component)
        .OrderBy(x => t.Dish is not null && t.Dish != bundle.NameOf(x.b)).Select(x => LabelPaper.Mark(bundle, x.b, x.c, 1)).FirstOrDefault() ?? "";

    // In what it stands and where is written by whoever puts it away.
    private static PaperCell Kept(PlannedTask t) => t.Kind == TaskKind.Work && t.Component is not null ? PaperCell.Blank : "";

    private static PaperRow Row(PaperBundle bundle, Plan plan, PlannedTask t, string person, LocalDate day, HashSet<string> said) => new(
    [
        PaperCell.Tick,
        Days.Hour(t.Start.TimeOfDay),
        Days.Until(t.End, day, bundle.Culture),
        Figures.Lasting(Lasting(t).TotalSeconds, bundle.Culture),
        Whole(bundle, plan, t, person, said),
        string.Join(", ", t.People.Where(p => p != person)),
        string.Join(", ", t.Kit) + (t.Celsius is null ? "" : " " + Set(t, bundle)),
        t.Grams is { } g ? Figures.Grams(g, bundle.Culture) : "",
        Label(bundle, t),
        Kept(t),
        t.Slack > Duration.Zero ? Figures.Lasting(t.Slack.TotalSeconds, bundle.Culture) : "",
        PaperCell.Blank,
        PaperCell.Blank,
    ]);

    // Under the work what must not be forgotten with it: each twin's place, the limit and its rescue, once a sheet.
    private static PaperCell Whole(PaperBundle bundle, Plan plan, PlannedTask t, string person, HashSet<string> said)
    {
        PaperCell what = What(t);
        string[] more = [TwinPlaces.Rows(plan, t).FirstOrDefault() ?? "", FirstPlates.Line(bundle, t, person, BriefPhrases.For("en")), StepGrams.Line(bundle, t, BriefPhrases.For("en")), .. TaskLimits.Lines(bundle, t, BriefPhrases.For("en")).Where(l => said.Add(t.Dish + t.Line + l))];
        return what with { Text = string.Join("\n", more.Prepend(what.Text).Where(m => m.Length > 0)) };
    }

    private static PaperCell What(PlannedTask t) => t.Kind switch
    {
        TaskKind.Wash => new($"{(t.Text.StartsWith("WASH", StringComparison.OrdinalIgnoreCase) ? "" : "WASH: ")}{t.Text}{(t.Removes.IsEmpty ? "" : $" Takes away: {string.Join(", ", t.Removes)}.")}", true),
        _ => new(Text(t) + (t.Place is { Length: > 0 } place ? $" ({place})" : "")) { Lead = t.Component is { Length: > 0 } c && !t.Text.Contains(c, StringComparison.Ordinal) ? c : "" },
    };

    private static string Text(PlannedTask t) => t.ForStage ? HandsAside.Without(t.Text.Replace("for the stage: weigh and set out for the stage: ", "weigh and set out for the stage: ", StringComparison.Ordinal)) : t.Text;

    private static string Set(PlannedTask t, PaperBundle bundle) => t.Celsius is { } c ? Figures.Celsius(c, bundle.Culture) : "";

    private static Duration Lasting(PlannedTask t) => Duration.FromTicks(Period.Between(t.Start, t.End, PeriodUnits.Ticks).Ticks);
}
