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
            new("Done", Side.Centre), new("From", Side.Right, Strong: true), new("To", Side.Right), new("What"), new("With"), new("Kit"), new("Grams", Side.Right), new("Can wait", Side.Right), new("Initials", Pen: 14), new("Left over", Pen: 18),
        ];
        List<Block> blocks =
        [
            new FactsBlock(
            [
                new("Day", Days.Long(day, bundle.Culture)),
                new("Begins", Days.Hour(tasks[0].Start.TimeOfDay)),
                new("Ends", Days.Until(tasks.Max(t => t.End), day, bundle.Culture)),
                new("Hands", Figures.Lasting(hands.TotalSeconds, bundle.Culture)),
            ]),
            .. bundle.Warnings(all: false),
            new TableBlock(columns, [.. tasks.Select(t => Row(bundle, t, person, day))]),
        ];
        PlannedTask[] alone = [.. plan.Tasks.Where(t => t.Kind == TaskKind.Unattended && t.Start.Date <= day && t.End.Date >= day && tasks.Any(x => x.Within == t.Id)).OrderBy(t => t.Start)];
        if (alone.Length > 0)
        {
            blocks.Add(new HeadingBlock(1, "Running by itself, with a moment of yours in it"));
            blocks.Add(new TableBlock([new("From", Side.Right), new("To", Side.Right), new("What"), new("Kit"), new("Set to", Side.Right)],
                [.. alone.Select(t => PaperRow.Of(Days.Until(t.Start, day, bundle.Culture), Days.Until(t.End, day, bundle.Culture), t.Text, string.Join(", ", t.Kit), Set(t, bundle)))]));
        }

        blocks.Add(new PenLinesBlock("For the one who comes after", 2));
        return bundle.Sheet(Kind, $"{person}, {day.ToString("dddd", bundle.Culture)}", [.. blocks]) with { Id = $"{Kind}-{day.ToString("uuuu-MM-dd", System.Globalization.CultureInfo.InvariantCulture)}-{Slug.Of(person)}", Person = person, Day = day };
    }

    private static PaperRow Row(PaperBundle bundle, PlannedTask t, string person, LocalDate day) => new(
    [
        PaperCell.Tick,
        Days.Hour(t.Start.TimeOfDay),
        Days.Until(t.End, day, bundle.Culture),
        What(t),
        string.Join(", ", t.People.Where(p => p != person)),
        string.Join(", ", t.Kit) + (t.Celsius is null ? "" : " " + Set(t, bundle)),
        t.Grams is { } g ? Figures.Grams(g, bundle.Culture) : "",
        t.Slack > Duration.Zero ? Figures.Lasting(t.Slack.TotalSeconds, bundle.Culture) : "",
        PaperCell.Blank,
        PaperCell.Blank,
    ]);

    private static PaperCell What(PlannedTask t) => t.Kind switch
    {
        TaskKind.Wash => new($"{(t.Text.StartsWith("WASH", StringComparison.OrdinalIgnoreCase) ? "" : "WASH: ")}{t.Text}{(t.Removes.IsEmpty ? "" : $" Takes away: {string.Join(", ", t.Removes)}.")}", true),
        _ => new(t.Text + (t.Place is { Length: > 0 } place ? $" ({place})" : "")),
    };

    private static string Set(PlannedTask t, PaperBundle bundle) => t.Celsius is { } c ? Figures.Celsius(c, bundle.Culture) : "";

    private static Duration Lasting(PlannedTask t) => Duration.FromTicks(Period.Between(t.Start, t.End, PeriodUnits.Ticks).Ticks);
}
