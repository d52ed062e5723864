using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Papers.Tests;

/// <summary>A brief is in one language as far as it can be, and says of every sentence that is not.</summary>
public sealed class BriefTests
{
    private const string Mark = "[nie przetłumaczono]";

    private static readonly PaperBundle Bundle = Demo.Planned();

    // What planning writes itself, word for word; a change there must be followed here, or the sentences come out marked.
    private static readonly string[] OfThePlan =
    [
        "meal", "receive the order, check, log temperatures, store", "clear down: what goes on in ovens and bath comes out at its time; left-overs weighed, to the cold or the bin", "bring the 18 twins to stage, in order, by number",
        "have SB at 82 °C for C1 Pumpkin-seed royale: switch it on, or see that it holds", "plate 52 plates of Starter, diets first, back to the cold", "weigh and set out for the stage: C4", "run-through against the clock", "move water bath and chamber vacuum sealer to stage, test the circuits at full load",
        "WASH jug, lid and blade: taken apart, hot water and detergent, rinsed, dried", "wash jug, lid and blade, back before the next time it runs", "into SO at 160 °C, timer 38 min",
        "allergy round: ask at seats 4, 5, 17 whether it is still so, tell the back before a plate leaves", "allergy round goes on", "hand over by name: seats 4, 5, 17",
        "welcome; what there is to learn; who may not eat what", "what was learnt, once more; the handout; first question", "pack 48 boxes: Slice + Bake", "pack 48 boxes: Slice + Bake; another box: seats 17, 31",
        "serve 48 plates to the seats", "serve 48 plates to the seats; by name, before the others: seats 4, 5", "out of SB: C1 Royale, begun live, not done; weighed, to no guest", "out of BO: Slice, begun live; weighed, to no guest",
    ];

    private static Paper Brief(string text, StepTranslations? stored, string language = "Polish")
    {
        LocalDateTime at = Bundle.Plan!.SlotStart.PlusHours(-3);
        Plan plan = Bundle.Plan with
        {
            Tasks = [new PlannedTask { Id = "x", Text = text, Kind = TaskKind.House, Start = at, End = at.PlusMinutes(5), People = ["Tomasz"] }], RunSheet = [], Twins = [],
        };
        Kitchen.Occasions.Occasion occasion = Bundle.Occasion! with { Diets = [], People = [.. Bundle.Occasion.People.Select(p => p.Name == "Tomasz" ? p with { Role = "", Languages = [language] } : p)] };
        return HelperPaper.Of(Bundle with { Plan = plan, Occasion = occasion, Translations = stored is null ? [] : [stored] }).Single(p => p.Person == "Tomasz");
    }

    private static string Task(Paper brief) => brief.Blocks.OfType<TableBlock>().First().Rows[0].Cells[3].Words;

    [Fact]
    public void Every_sentence_that_planning_writes_itself_is_in_the_helpers_language()
    {
        foreach (string language in (string[])["French", "German", "Spanish", "Italian", "Polish", "Japanese"])
        {
            BriefPhrases say = BriefPhrases.For(language);
            foreach (string text in OfThePlan)
            {
                string printed = Task(Brief(text, null, language));
                Assert.DoesNotContain(text.StartsWith("move", StringComparison.Ordinal) ? "{0}" : say["untranslatedMark"], printed, StringComparison.Ordinal);
                Assert.NotEqual(text, printed);
            }
        }
    }

    [Fact]
    public void Before_the_chefs_words_stands_what_is_done_with_them_and_what_is_put_into_a_part_is_the_chefs()
    {
        BriefPhrases say = BriefPhrases.For("pl");
        StepTranslations stored = StepTranslations.Read("120 g of the quark mix; 60 g pear slices\n= 120 g masy; 60 g gruszek\n", "pl");

        Assert.StartsWith(say["leaveIn"], Task(Brief("for the stage: stays in until its cue: Bath 45 min", null)).Replace(say["forStage"] + ": ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(say.Say("fill", "120 g masy; 60 g gruszek"), Task(Brief("fill it before it goes in: 120 g of the quark mix; 60 g pear slices", stored)));
        Assert.Contains(Mark, Task(Brief("fill it before it goes in: 120 g of the quark mix; 60 g pear slices", null)), StringComparison.Ordinal);
    }

    // The example's own helper reads every word of the brief: nothing is left to ask, and nothing is left in another language without its mark.
    [Fact]
    public void The_brief_of_the_example_in_polish_is_in_polish()
    {
        string sheet = Path.Combine(Coulisse.Tests.SharedData.Repository, "examples", "demo", "occasion.md");
        StepTranslations polish = Coulisse.Flows.TranslationFiles.Of(sheet, Bundle.Occasion!, "pl");
        LocalDateTime at = Bundle.Plan!.SlotStart.PlusHours(-3);
        Plan own = Bundle.Plan with { Tasks = [.. OfThePlan.Where(t => !t.StartsWith("plate", StringComparison.Ordinal)).Select((t, i) => new PlannedTask { Id = $"x{i}", Text = t, Kind = TaskKind.House, Start = at.PlusMinutes(i), End = at.PlusMinutes(i + 1), People = ["Tomasz"], Kit = ["SO"] })], RunSheet = [], Twins = [] };

        string Lines(StepTranslations[] held) => string.Join('\n', PaperLines.Of(HelperPaper.Of(Bundle with { Plan = own, Translations = [.. held] }).Single(p => p.Person == "Tomasz")));
        Assert.DoesNotContain(Mark, Lines([polish]), StringComparison.Ordinal);
        Assert.Contains("alergia na gorczycę", Lines([polish]), StringComparison.Ordinal);
        Assert.Contains(Mark, Lines([]), StringComparison.Ordinal);
    }

    [Fact]
    public void The_languages_hold_the_same_phrases_with_the_same_places()
    {
        BriefPhrases english = BriefPhrases.For("en");
        Assert.True(english.Keys.Count() > 50);
        foreach (BriefPhrases say in BriefPhrases.Languages.Select(BriefPhrases.For))
        {
            Assert.Equal(english.Keys, say.Keys);
            Assert.All(english.Keys, k => Assert.All((string[])["{0}", "{1}", "{2}"], place => Assert.Equal(english[k].Contains(place, StringComparison.Ordinal), say[k].Contains(place, StringComparison.Ordinal))));
        }
    }

    [Fact]
    public void A_step_that_was_translated_once_is_printed_so_and_another_is_marked()
    {
        string[] steps = [.. Bundle.Occasion!.Dishes[0].Dish.Components.SelectMany(c => c.Steps).Select(s => s.Text)];
        string figures = string.Join(' ', System.Text.RegularExpressions.Regex.Matches(steps[0], "[0-9.,]*[0-9]").Select(m => m.Value));
        StepTranslations stored = StepTranslations.Read($"{steps[0]}\n= Zrób to tak: {figures}\n", "pl");
        Assert.Empty(stored.Problems);

        Assert.Equal("Zrób to tak: " + figures, Task(Brief(steps[0], stored)));
        Assert.Equal("Na scenę: Zrób to tak: " + figures, Task(Brief("for the stage: " + steps[0], stored)));
        // A moment bears the first words of its step.
        Assert.Equal("Na scenę: Włożyć: Zrób to tak: " + figures, Task(Brief("for the stage: in: " + steps[0][..20], stored)));
        // What is done in its middle stands in the whole of it.
        Assert.Equal("After 15 min: " + steps[0], Task(Brief("at 15 min: " + steps[0][..20], null, "English")));
        Assert.Equal($"{Mark} {steps[1]}", Task(Brief(steps[1], stored)));
    }

    [Fact]
    public void What_part_is_translated_is_said_on_top()
    {
        StepTranslations stored = StepTranslations.Read("Stir well.\n= Dobrze zamieszać.\n", "pl");
        BriefPhrases say = BriefPhrases.For("pl");
        string Top(Paper p) => p.Blocks.OfType<CalloutBlock>().First().Text;

        Assert.EndsWith(say["allTranslated"], Top(Brief("Stir well.", stored)), StringComparison.Ordinal);
        Assert.EndsWith(say["noneTranslated"], Top(Brief("Stir badly.", stored)), StringComparison.Ordinal);
        Assert.DoesNotContain(Brief("Stir well.", null, "English").Blocks, b => b is CalloutBlock);
        // A language without phrases is named; nothing is passed off as it.
        Assert.Contains("Arabic", Top(Brief("Stir well.", stored, "Arabic")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Bake at 170 °C for 25 min.", "Piec 170 °C przez 25 min.", true)]
    [InlineData("Bake at 170 °C for 25 min.", "Piec 70 °C przez 25 min.", false)]
    [InlineData("Set to 82.0 °C, pour 1,346 g.", "Nastawić 82,0 °C, wlać 1 346 g.", true)]
    [InlineData("Set to 8.2 °C.", "Nastawić 82 °C.", false)]
    [InlineData("Cut 7 × 4.", "Pokroić 7 × 4 i podać na 2 talerzach.", true)]
    [InlineData("Add ½ tsp.", "Dodać łyżeczkę.", false)]
    public void A_translation_that_lost_a_figure_is_not_taken(string step, string translation, bool taken)
    {
        StepTranslations read = StepTranslations.Read($"{step}\n= {translation}\n", "pl");

        Assert.Equal(taken, read.Find(step) is not null);
        Assert.Equal(!taken, read.Problems.Any(p => p.Code == "TRN002" && p.Line == 2));
    }

    [Fact]
    public void The_file_to_fill_in_keeps_what_was_filled_in_and_what_is_no_longer_used()
    {
        StepTranslations none = new() { Language = "pl" };
        string blank = none.Write("Card", ["Stir 2 min.", "Pour."]);
        string filled = blank.Replace("Stir 2 min.\n= ", "Stir 2 min.\n= Mieszać 2 min.", StringComparison.Ordinal);
        StepTranslations read = StepTranslations.Read(filled, "pl");

        Assert.Equal("Mieszać 2 min.", read.Find("Stir 2 min."));
        Assert.Null(read.Find("Pour."));
        Assert.Equal(filled, read.Write("Card", ["Stir 2 min.", "Pour."]));
        Assert.Equal("", StepTranslations.Unused(filled, ["Stir 2 min.", "Pour."]));
        Assert.Contains("= Mieszać 2 min.", StepTranslations.Unused(filled, ["Stir 3 min.", "Pour."]), StringComparison.Ordinal);
        Assert.Equal("TRN001", Assert.Single(StepTranslations.Read("= nothing above\n", "pl").Problems).Code);
    }

    [Fact]
    public void A_translation_that_was_not_taken_stays_in_the_file_to_be_mended()
    {
        StepTranslations read = StepTranslations.Read("Stir 2 min.\n= Mieszać 20 min.\n", "pl");
        string again = read.Write("Card", ["Stir 2 min."]);

        Assert.Contains("= Mieszać 20 min.", again, StringComparison.Ordinal);
        Assert.Equal("TRN002", Assert.Single(StepTranslations.Read(again, "pl").Problems).Code);
        Assert.Null(read.Find("Stir 2 min."));
        Assert.Equal("Mieszać 2 min.", read.Set("stir  2 min.", " Mieszać\n2 min. ").Find("Stir 2 min."));
        Assert.Null(read.Set("Stir 2 min.", "").Written("Stir 2 min."));
    }

    [Fact]
    public void The_slot_is_told_without_a_gap_and_stands_between_what_is_before_and_after_it()
    {
        foreach (Paper brief in PaperShelf.Papers(Bundle).Where(p => p.Kind == HelperPaper.Kind))
        {
            BriefPhrases say = BriefPhrases.For(brief.Language);
            int slot = brief.Blocks.ToList().FindIndex(b => b is HeadingBlock h && h.Text.StartsWith(say["inTheSlot"], StringComparison.Ordinal));
            if (slot < 0)
            {
                continue;
            }

            (string From, string To)[] rows = [.. ((TableBlock)brief.Blocks[slot + 1]).Rows.Select(r => (r.Cells[0].Text, r.Cells[1].Text)).Where(r => r.Item2.Length > 0)];
            Assert.Equal("14:00:00", rows[0].From);
            Assert.Equal("14:25:00", rows[^1].To);
            Assert.All(rows.Zip(rows.Skip(1)), p => Assert.Equal(p.First.To, p.Second.From));
        }
    }

    [Fact]
    public void Every_mark_of_kit_in_a_brief_is_explained_in_it()
    {
        Paper brief = PaperShelf.Papers(Bundle).First(p => p.Kind == HelperPaper.Kind && p.Language == "en");
        ImmutableArray<TableBlock> tables = [.. brief.Blocks.OfType<TableBlock>()];
        string[] used = [.. tables.SelectMany(t => t.Rows).SelectMany(r => r.Cells).SelectMany(c => System.Text.RegularExpressions.Regex.Matches(c.Text, @"\[([A-Z0-9]+)").Select(m => m.Groups[1].Value)).Distinct()];
        string[] told = [.. tables.Single(t => t.Columns[0].Head == "Mark").Rows.Select(r => r.Cells[0].Text)];

        Assert.NotEmpty(used);
        Assert.Empty(used.Except(told));
    }
}
