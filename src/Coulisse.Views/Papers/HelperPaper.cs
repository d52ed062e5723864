using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Web;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>One brief for each helper, 14 pt: call time, tasks by the clock, cues in the slot, what they bring, whom to tell.</summary>
public static class HelperPaper
{
    public const string Kind = "brief";

    public static IEnumerable<Paper> Of(PaperBundle bundle)
    {
        if (bundle.Plan is not { } plan)
        {
            yield break;
        }

        string[] names = [.. plan.Tasks.SelectMany(t => t.People).Concat(plan.RunSheet.SelectMany(s => s.Who.Keys)).Concat(plan.Twins.Select(t => t.BroughtBy)).Where(n => n.Length > 0 && n != "there").Distinct().Order(StringComparer.Ordinal)];
        foreach (string name in names)
        {
            Person? person = bundle.Occasion?.People.FirstOrDefault(p => p.Name == name);
            yield return One(bundle, plan, name, person, BriefPhrases.For(person?.Languages.FirstOrDefault() ?? bundle.Language));
        }
    }

    private static Paper One(PaperBundle bundle, Plan plan, string name, Person? person, BriefPhrases say)
    {
        PlannedTask[] tasks = [.. plan.Tasks.Where(t => t.People.Contains(name)).OrderBy(t => t.Start)];
        List<Block> blocks = [.. bundle.Warnings(all: false)];
        if (say.MachineMade)
        {
            blocks.Add(new CalloutBlock(say.Marked, say.StepsUntranslated));
        }

        blocks.Add(new FactsBlock(
        [
            new(say.Role, person?.Role is { Length: > 0 } role ? role : "–"),
            new(say.BeThereAt, tasks.Length > 0 ? Days.Moment(tasks[0].Start, say.Culture) : Days.Moment(plan.SlotStart, say.Culture)),
            new(say.SlotBegins, Days.Moment(plan.SlotStart, say.Culture)),
        ]));
        foreach (IGrouping<LocalDate, PlannedTask> day in tasks.GroupBy(t => t.Start.Date))
        {
            blocks.Add(new HeadingBlock(1, Days.Long(day.Key, say.Culture)));
            blocks.Add(new TableBlock([new("", Side.Centre), new(say.From, Side.Right, Strong: true), new(say.To, Side.Right), new(say.What), new(say.With)],
                [.. day.Select(t => new PaperRow([PaperCell.Tick, Days.Hour(t.Start.TimeOfDay), Days.Until(t.End, day.Key, say.Culture), t.Text + (t.Kit.IsEmpty ? "" : $" [{string.Join(", ", t.Kit)}]"), string.Join(", ", t.People.Where(p => p != name))]))]));
        }

        RunSegment[] live = [.. plan.RunSheet.Where(s => s.Who.ContainsKey(name))];
        Twin[] twins = [.. plan.Twins.Where(t => t.BroughtBy == name).OrderBy(t => t.CueSecond)];
        if (live.Length > 0 || twins.Length > 0)
        {
            blocks.Add(new HeadingBlock(1, say.InTheSlot));
            blocks.Add(new TableBlock([new(say.Clock, Side.Right), new(say.At, Side.Right, Strong: true), new(say.What)],
                [.. live.Select(s => (s.StartSecond, s.Who[name])).Concat(twins.Select(t => (t.CueSecond, $"{say.Bring} {RunSheetPaper.Number(t.Number)}: {t.Component}, {t.State}{(t.Place.Length > 0 ? $" ({t.Place})" : "")}"))).OrderBy(x => x.Item1)
                    .Select(x => PaperRow.Of(Days.Hour((plan.SlotStart + Period.FromSeconds(x.Item1)).TimeOfDay), Figures.Clock(x.Item1), x.Item2))]));
        }

        string lead = bundle.Occasion is { People.IsEmpty: false } o ? o.People[0].Name : "";
        blocks.Add(new HeadingBlock(1, say.Always));
        blocks.Add(new ListBlock([.. new[] { lead.Length > 0 && lead != name ? $"{say.TellWhenLate} {lead}" : say.TellWhenLateAnyone, say.NumbersOnBody, say.NoSubstitutes, say.AllergenQuestions, say.HandsWashed }.Select(s => new ListEntry("–", s))]));
        return bundle.Sheet(Kind, $"{say.BriefFor} {name}", [.. blocks]) with { Id = $"{Kind}-{Slug.Of(name)}", TextSize = 14, Language = say.Language, Person = name };
    }
}
