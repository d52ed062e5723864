using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Tests;

/// <summary>Usual weeks of the kitchen's people on the days of an occasion. 10 October 2026 is a Saturday.</summary>
public class HouseTests
{
    private static readonly LocalDate Today = new(2026, 10, 1);

    private static OccasionSheet Book(params (string Name, string Hours)[] people)
        => Read("# Kitchen\n\n## Hands\n\n| Name | Hours |\n|---|---|\n" + string.Concat(people.Select(p => $"| {p.Name} | {p.Hours} |\n")));

    private static OccasionSheet Read(string text) => Assert.IsType<Parsed<OccasionSheet>.Ok>(OccasionReader.Read(text, Today)).Value;

    private static Parsed<Occasion> Build(OccasionSheet sheet) => OccasionBuilder.Build(sheet, _ => null, [("card", new Dish { Title = "Tart", Components = [] })]);

    private const string Sheet = "# Tart\n\nSaturday 10 October 2026, live 14:00 to 14:25 on stage. 8 plates.\n\nPrep windows: Friday 9 October 08:00 to 15:00; Saturday 10 October 08:30 to 14:00.\n";

    [Fact]
    public void Who_does_not_work_on_these_days_is_left_out_and_named_and_the_others_come_by_their_week()
    {
        OccasionSheet filled = House.Under(Read(Sheet), Book(("Ada", "Fri to Sun 10:00 to 16:00"), ("Ben", "Mon to Wed 08:00 to 16:00"), ("Cleo", "")));

        Assert.Equal(["Ada", "Cleo"], filled.People.Select(p => p.Name));
        Assert.Equal([(9, 10), (10, 10)], filled.People[0].Hours.Select(h => (h.Start.Day, h.Start.Hour)));
        Assert.Contains(filled.Assumed, a => a.Contains("Not there on these days by their usual week: Ben.", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_nobodys_week_has_these_days_all_are_taken_and_it_is_said()
    {
        OccasionSheet filled = House.Under(Read(Sheet), Book(("Ada", "Mon 08:00 to 16:00"), ("Ben", "Tue 08:00 to 16:00")));

        Assert.Equal(2, filled.People.Length);
        Assert.All(Assert.IsType<Parsed<Occasion>.Ok>(Build(filled)).Value.People, p => Assert.Equal(3, p.Hours.Length));
        Assert.Contains(filled.Assumed, a => a.Contains("nobody of this kitchen works on these days", StringComparison.Ordinal));
    }

    [Fact]
    public void Who_is_named_in_a_sentence_comes_to_the_slot_even_when_the_usual_day_is_over_by_then()
    {
        OccasionSheet sentence = Read("8 plates, 10 October 2026 19:00, 25 minutes, Ada and Ben");

        OccasionSheet filled = House.Under(sentence, Book(("Ada", "Fri, Sat 08:00 to 16:00")));

        SheetPerson ada = filled.People.Single(p => p.Name == "Ada");
        Assert.Contains(ada.Hours, h => h.Start == new LocalDateTime(2026, 10, 10, 19, 0));
        Assert.DoesNotContain(ada.Hours, h => h.Start.Day == 8); // Thursday is no day of hers
        Assert.Equal(sentence.People.Single(p => p.Name == "Ben").Hours, filled.People.Single(p => p.Name == "Ben").Hours);
    }

    [Fact]
    public void A_row_of_the_sheet_whose_week_misses_the_occasion_is_a_problem_and_hours_of_its_own_are_kept()
    {
        OccasionSheet missed = Read(Sheet + "\n## Hands\n\n| Name | Hours |\n|---|---|\n| Ada | Mon 08:00 to 16:00 |\n");
        Problem wrong = Assert.Single(Assert.IsType<Parsed<Occasion>.Failed>(Build(missed)).Problems);
        Assert.Equal(("OCC027", 11), (wrong.Code, wrong.Line));

        OccasionSheet own = House.Under(Read(Sheet + "\n## Hands\n\n| Name | Saturday |\n|---|---|\n| Ada | 09:00 to 14:30 |\n"), Book(("Ada", "Fri 08:00 to 16:00")));
        Assert.Equal([(10, 9)], Assert.IsType<Parsed<Occasion>.Ok>(Build(own)).Value.People[0].Hours.Select(h => (h.Start.Day, h.Start.Hour)));
    }
}
