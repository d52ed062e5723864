using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Planning.Tasks;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Planning.Tasks;

/// <summary>A task's length comes from the kit's physics, not from the card's minutes times the grams.</summary>
public sealed class RunMinutesTests
{
    private const string Card = "# Jus\n\nServes 10.\n\nOne plate: 60 g jus.\n\n## Jus\n\nKeeps 2 days at 5 °C or less.\n\n- 2 kg beef stock\n- 300 g red wine\n\n1. Weigh. (hands 5 min)\n2. Reduce at a steady boil, about 60 min, unattended. You should have 600 g.\n3. Chill over ice.\n";

    private static Occasion Occasion(int covers, ImmutableArray<LearntTime> learnt = default)
    {
        Dish dish = CardReader.Read(new CardText(Card)).Match(d => d, p => throw new InvalidOperationException(p[0].Message));
        LocalDateTime noon = new(2026, 10, 10, 12, 0);
        return new Occasion
        {
            Title = "t", Sheet = new OccasionSheet { Title = "t" }, SlotStart = noon, SlotLength = Duration.Zero, SlotPlace = "front", Guests = covers, Covers = covers,
            Dishes = [new OccasionDish("Jus", dish, covers, "plates", "", "card.md")],
            People = [new("Ann", "", "", [new(noon.PlusHours(-30), noon, 1)], ["all"], [], [], 1)],
            Kit = [new SheetKit("H1", "induction ring", "hob", "back", 1, "", 1) { Kilowatts = 2 }, new SheetKit("H2", "induction ring", "hob", "back", 1, "", 2) { Kilowatts = 2 }],
            Learnt = learnt.IsDefault ? [] : learnt,
        };
    }

    private static PrepTask Reducing(Occasion o)
        => TaskBuilder.Build(o, OccasionBatches.Make(o).Match(b => b, p => throw new InvalidOperationException(p[0].Message)), LiveSlot.Decide(o)).Tasks.Single(t => t.Text.StartsWith("Reduce", StringComparison.Ordinal) && t.Kind is TaskKind.Unattended or TaskKind.Work && t.Line > 0 && t.Text.StartsWith("Reduce", StringComparison.Ordinal));

    [Fact]
    public void The_cards_own_amount_takes_the_cards_minutes() => Assert.Equal((60, "the card"), (Reducing(Occasion(10)).Minutes, Reducing(Occasion(10)).MinutesWhy));

    [Fact]
    public void Five_times_as_much_takes_what_the_ring_gives_and_says_so()
    {
        PrepTask t = Reducing(Occasion(50));

        // 1.7 kg boiled off, five times: 8.5 kg at 2257 kJ/kg on one ring of 2 kW, induction 80 % less 0.4 kW of losses (the poor end): 1.2 kW, 266 min. Five times 60 is 300.
        Assert.InRange(t.Minutes, 262, 270);
        Assert.Contains("planned on the longer", t.MinutesWhy, StringComparison.Ordinal);
    }

    [Fact]
    public void Three_trials_that_took_longer_calibrate_it_and_shorter_ones_never_cut_a_cooking_time()
    {
        Step step = Occasion(10).Dishes[0].Dish.Components[0].Steps[1];
        ImmutableArray<LearntTime> Trials(double minutes) => [new LearntTime(step.Anchor.Component, step.Anchor.Fingerprint, [minutes, minutes, minutes])];
        Assert.Equal(75, Reducing(Occasion(10, Trials(75))).Minutes);
        Assert.Equal(60, Reducing(Occasion(10, Trials(40))).Minutes);
    }
}
