using System.Globalization;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Web;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>The slot as one helper sees it: each stretch from its second to its second, twins at their cues, and the stretches without work said to be so.</summary>
internal static class BriefSlot
{
    private sealed record Row(int From, int To, string Lead, string Text);

    public static TableBlock? Of(PaperBundle bundle, Plan plan, string name, Person? person, BriefPhrases say, BriefTexts texts)
    {
        Twin[] twins = [.. plan.Twins.Where(t => t.BroughtBy == name)];
        bool there = person?.Hours.Any(h => h.Start <= plan.SlotStart && h.End > plan.SlotStart) == true;
        if (plan.RunSheet.IsEmpty || (!there && twins.Length == 0 && plan.RunSheet.All(s => !s.Who.ContainsKey(name))))
        {
            return null;
        }

        List<Row> rows = [];
        foreach (RunSegment s in plan.RunSheet)
        {
            int end = s.StartSecond + s.Seconds;
            string does = s.Who.TryGetValue(name, out string? said) ? Does(s, said, twins, say, texts) : "";
            Twin[] here = [.. twins.Where(t => t.CueSecond >= s.StartSecond && t.CueSecond < end)];
            if (does.Length > 0)
            {
                rows.Add(new Row(s.StartSecond, end, Lead(s, texts), does + Ready(plan, s, said!, say)));
            }
            else if (here.Length == 0)
            {
                rows.Add(new Row(s.StartSecond, end, "", say["standBy"]));
            }

            rows.AddRange(here.Select(t => new Row(t.CueSecond, t.CueSecond, $"{say["bring"]} {RunSheetPaper.Number(t.Number)}: {t.Component}", texts.Of(t.State) + (t.Place.Length > 0 ? $" ({t.Place})" : ""))));
        }

        return new TableBlock([new(say["from"], Side.Right, Strong: true), new(say["to"], Side.Right), new(say["inTheSlotAt"], Side.Right), new(say["what"])],
            [.. Joined(rows.OrderBy(r => r.From).ThenBy(r => r.To), say["standBy"]).Select(r => new PaperRow([Clock(plan, r.From), r.To > r.From ? Clock(plan, r.To) : "", Figures.Clock(r.From), new PaperCell(r.Text) { Lead = r.Lead }]))]);
    }

    // What nobody brings stands within reach of whoever shows it: its number and where it is.
    private static string Ready(Plan plan, RunSegment s, string said, BriefPhrases say)
    {
        Twin[] ready = !said.Split("; ").Any(p => p is "shows" or "speaks") ? [] : [.. plan.Twins.Where(t => t.Stands && s.Twins.Contains(t.Number)).OrderBy(t => t.Number)];
        return ready.Length == 0 ? "" : $"\n{say["standsReady"]} " + string.Join("; ", ready.Select(t => $"{RunSheetPaper.Number(t.Number)} {t.Component} ({t.Place})"));
    }

    private static string Clock(Plan plan, int second) => (plan.SlotStart + Period.FromSeconds(second)).TimeOfDay.ToString("HH:mm:ss", CultureInfo.InvariantCulture);

    private static string Lead(RunSegment s, BriefTexts texts) => string.Create(CultureInfo.InvariantCulture, $"{s.Number}. {(s.Component.Length > 0 ? s.Component : texts.Of(s.Show))}");

    // The twins that are rows of their own are not said twice, and whoever presents reads what is shown.
    private static string Does(RunSegment s, string said, Twin[] twins, BriefPhrases say, BriefTexts texts)
    {
        List<string> own = [];
        List<string> rest = [];
        foreach (string part in said.Split("; ").Where(p => !(p.StartsWith("brings twin ", StringComparison.Ordinal) && Numbers(p).All(n => twins.Any(t => t.Number == n)))))
        {
            if (part is "shows" or "speaks")
            {
                own.Add($"{say[part]} {texts.Of(s.Show)}");
            }
            else
            {
                rest.Add(part);
            }
        }

        return string.Join(". ", own.Concat(rest.Count > 0 ? [texts.Sentences(string.Join("; ", rest))] : []));
    }

    private static int[] Numbers(string text) => [.. text["brings ".Length..].Split(", ").Select(t => int.TryParse(t.Replace("twin ", "", StringComparison.Ordinal), CultureInfo.InvariantCulture, out int n) ? n : 0)];

    private static IEnumerable<Row> Joined(IEnumerable<Row> rows, string standBy)
    {
        Row? held = null;
        foreach (Row row in rows)
        {
            if (held is not null && held.Text == standBy && row.Text == standBy && held.To == row.From)
            {
                held = held with { To = row.To };
                continue;
            }

            if (held is not null)
            {
                yield return held;
            }

            held = row;
        }

        if (held is not null)
        {
            yield return held;
        }
    }
}
