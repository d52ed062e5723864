using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>One brief for each helper, 14 pt: call time, tasks by the clock with the slot where it falls, where things are, whom to tell, whom not to serve.</summary>
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
            ImmutableArray<string> languages = person?.Languages is { IsDefaultOrEmpty: false } own ? own : [bundle.Language];
            yield return One(bundle, plan, name, person, BriefPhrases.For(languages), BriefPhrases.Held(languages[0]) is null ? languages[0] : "");
        }
    }

    /// <summary>Everything a brief of an occasion may have to say in the chef's words: what is worth translating once.</summary>
    public static ImmutableArray<string> ToTranslate(Occasion occasion)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        return
        [
            .. occasion.Dishes.Select(d => d.Dish).DistinctBy(d => d.Title).SelectMany(d => ToTranslate(d))
                .Concat(occasion.People.Select(p => p.Role)).Concat(occasion.Kit.Where(k => k.Code.Length > 0).Select(k => k.What)).Concat(occasion.Kit.Where(k => k.MovesAt is not null).Select(k => k.What.Split([',', ';'])[0])).Concat(occasion.Diets.SelectMany(d => new[] { d.Declared }.Concat(d.ByDish.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => p.Value)))).Where(t => t.Trim().Length > 1).Distinct(StringComparer.Ordinal),
        ];
    }

    /// <summary>The steps of one card.</summary>
    public static ImmutableArray<string> ToTranslate(Dish dish)
    {
        ArgumentNullException.ThrowIfNull(dish);
        return [.. dish.Components.SelectMany(c => c.Steps).Select(s => s.Text).Where(t => t.Trim().Length > 1).Distinct(StringComparer.Ordinal)];
    }

    private static Paper One(PaperBundle bundle, Plan plan, string name, Person? person, BriefPhrases say, string notHeld)
    {
        BriefTexts texts = new(new BriefWords(say, Cards(bundle), bundle.Translations.FirstOrDefault(t => t.Language == say.Language)));
        PlannedTask[] tasks = [.. plan.Tasks.Where(t => t.People.Contains(name)).OrderBy(t => t.Start)];
        List<Block> blocks =
        [
            new FactsBlock(
            [
                new(say["role"], person?.Role is { Length: > 0 } role ? texts.Of(role) : "–"),
                new(say["beThereAt"], tasks.Length > 0 ? Days.Moment(tasks[0].Start, say.Culture) : Days.Moment(plan.SlotStart, say.Culture)),
                new(say["slotBegins"], Days.Moment(plan.SlotStart, say.Culture)),
                new(say["language"], say["languageName"]),
            ]),
        ];
        LocalDateTime ends = plan.SlotEnd;
        foreach (LocalDate day in tasks.Select(t => t.Start.Date).Append(plan.SlotStart.Date).Distinct().Order())
        {
            bool slot = day == plan.SlotStart.Date;
            PlannedTask[] own = [.. tasks.Where(t => t.Start.Date == day)];
            PlannedTask[] after = [.. own.Where(t => slot && t.Start >= ends)];
            blocks.AddRange(Work(bundle, plan, Days.Long(day, say.Culture), [.. own.Except(after)], name, day, say, texts));
            if (slot && GateBlocks.KeepsTime(bundle, plan, name))
            {
                blocks.AddRange(GateBlocks.Of(plan, say));
            }

            if (slot && BriefSlot.Of(bundle, plan, name, person, say, texts) is { } live)
            {
                blocks.Add(new HeadingBlock(1, $"{say["inTheSlot"]}, {Days.Hour(plan.SlotStart.TimeOfDay)}–{Days.Hour(ends.TimeOfDay)}"));
                blocks.Add(live);
            }

            blocks.AddRange(Work(bundle, plan, say["afterTheSlot"], after, name, day, say, texts));
        }

        blocks.AddRange(Places(bundle, plan, name, tasks, say, texts));
        blocks.AddRange(Guests(bundle, say, texts));
        blocks.AddRange(Always(bundle, name, say));
        blocks.InsertRange(0, [.. bundle.Warnings(all: false), .. Language(say, texts, notHeld)]);
        return bundle.Sheet(Kind, $"{say["briefFor"]} {name}", [.. blocks]) with { Id = $"{Kind}-{Slug.Of(name)}", TextSize = 14, Language = say.Language, Person = name };
    }

    private static IEnumerable<Dish> Cards(PaperBundle bundle) => bundle.Occasion is { } o ? o.Dishes.Select(d => d.Dish) : bundle.Batches.Select(b => b.Weighed.Dish);

    // Which of it is in the helper's language is said on top, before the first task.
    private static IEnumerable<Block> Language(BriefPhrases say, BriefTexts texts, string notHeld)
    {
        string tasks = texts.Chef == 0 || (texts.Untranslated == 0 && !say.MachineMade) ? "" : texts.Untranslated == 0 ? say["allTranslated"] : texts.Untranslated == texts.Chef ? say["noneTranslated"] : say["someTranslated"];
        string text = string.Join(' ', new[] { notHeld.Length > 0 ? say.Say("notHeld", notHeld) : "", say["phrasesUnread"], tasks }.Where(t => t.Length > 0));
        return text.Length == 0 ? [] : [new CalloutBlock(say.MachineMade ? say["marked"] : say["language"], text)];
    }

    private static IEnumerable<Block> Work(PaperBundle bundle, Plan plan, string head, PlannedTask[] tasks, string name, LocalDate day, BriefPhrases say, BriefTexts texts)
    {
        if (tasks.Length == 0)
        {
            yield break;
        }

        HashSet<string> said = [];
        yield return new HeadingBlock(1, head);
        yield return new TableBlock([new("", Side.Centre), new(say["from"], Side.Right, Strong: true), new(say["to"], Side.Right), new(say["what"]), new(say["with"])],
            [.. tasks.SelectMany(t => TwinPlaces.Rows(plan, t).Skip(1).Select(more => new PaperRow([PaperCell.Tick, "", "", more, ""]))
                .Prepend(new PaperRow([PaperCell.Tick, Days.Hour(t.Start.TimeOfDay), Days.Until(t.End, day, say.Culture), Whole(bundle, plan, t, name, say, texts, said), string.Join(", ", t.People.Where(p => p != name))])))]);
    }

    // The work; under it what must not be forgotten with it: each twin's place, the limit and its rescue, once a day.
    private static PaperCell Whole(PaperBundle bundle, Plan plan, PlannedTask t, string name, BriefPhrases say, BriefTexts texts, HashSet<string> said)
    {
        PaperCell what = What(t, texts);
        string[] more = [TwinPlaces.Rows(plan, t).FirstOrDefault() ?? "", FirstPlates.Line(bundle, t, name, say), StepGrams.Line(bundle, t, say), .. TaskLimits.Lines(bundle, t, say).Where(l => said.Add(t.Dish + t.Line + l))];
        return what with { Text = string.Join("\n", more.Prepend(what.Text).Where(m => m.Length > 0)) };
    }

    private static PaperCell What(PlannedTask t, BriefTexts texts)
    {
        string kit = t.Kit.IsEmpty ? "" : $" [{string.Join(", ", t.Kit)}{(t.Celsius is { } c ? ", " + Web.Figures.Celsius(c, System.Globalization.CultureInfo.InvariantCulture) : "")}]";
        string of = t.Component is { Length: > 0 } component ? component : t.Kind is TaskKind.Work or TaskKind.Moment or TaskKind.Unattended ? t.Dish ?? "" : "";
        return new PaperCell(texts.Of(t.Text) + kit + (t.Place is { Length: > 0 } place ? $" ({place})" : "")) { Lead = t.Text.Contains(of, StringComparison.Ordinal) ? "" : of };
    }

    private static IEnumerable<Block> Places(PaperBundle bundle, Plan plan, string name, PlannedTask[] tasks, BriefPhrases say, BriefTexts texts)
    {
        // A mark that is only named ("have SB at 82 °C") is looked for as much as one that is worked with.
        HashSet<string> used = [.. tasks.SelectMany(t => t.Kit), .. tasks.SelectMany(t => t.Text.Split([' ', ',', ';', ':', '.', '(', ')'], StringSplitOptions.RemoveEmptyEntries)), .. plan.RunSheet.Where(s => s.Who.ContainsKey(name)).SelectMany(s => s.Kit), .. plan.Twins.Where(t => t.BroughtBy == name).Select(t => t.Place)];
        SheetKit[] kit = [.. bundle.Occasion?.Kit.Where(k => k.Code.Length > 0 && used.Contains(k.Code)) ?? []];
        return kit.Length == 0 ? [] :
        [
            new HeadingBlock(1, say["whereThingsAre"]),
            new TableBlock([new(say["code"], Strong: true), new(say["thing"]), new(say["stands"])], [.. kit.Select(k => PaperRow.Of(k.Code, texts.Of(k.What), Stands(k, say)))]),
        ];
    }

    private static string Stands(SheetKit k, BriefPhrases say) => k.EarlierPlace is { Length: > 0 } earlier && k.MovesAt is { } moves ? $"{earlier} → {Days.Moment(moves, say.Culture)}: {k.Place}" : k.Place;

    private static IEnumerable<Block> Guests(PaperBundle bundle, BriefPhrases say, BriefTexts texts) => bundle.Occasion is not { Diets.IsEmpty: false } o ? [] :
    [
        new HeadingBlock(1, say["guests"]),
        new TableBlock([new(say["seat"], Strong: true), new(say["declared"]), new(say["plate"])],
            [.. o.Diets.Select(d => PaperRow.Of(string.Join(", ", d.Seats), texts.Of(d.Declared), string.Join("\n", d.ByDish.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => $"{p.Key}: {texts.Of(p.Value)}"))))]) { Together = true },
    ];

    private static IEnumerable<Block> Always(PaperBundle bundle, string name, BriefPhrases say)
    {
        string lead = bundle.Occasion is { People.IsEmpty: false } o ? o.People[0].Name : "";
        yield return new HeadingBlock(1, say["always"]);
        yield return new ListBlock([.. new[] { lead.Length > 0 && lead != name ? $"{say["tellWhenLate"]} {lead}." : say["tellWhenLateAnyone"], say["numbersOnBody"], say["noSubstitutes"], say["allergenQuestions"], say["hot"], say["handsWashed"], say["clearDown"] }.Select(s => new ListEntry("–", s))]);
    }
}
