using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Kitchen.Tests.Safety;

/// <summary>Each rule raises on its trap and stays silent on a near miss, from the card's text on.</summary>
public sealed class RuleTrapTests
{
    public static TheoryData<string, string, string, string> Pairs => new()
    {
        { "SAF020", "au", Card("Aioli", "Keeps 2 days at 5 °C or less.", "- 40 g egg yolk\n- 200 g olive oil\n- 10 g lemon juice", "1. Whisk the yolk and run in the oil."), Card("Aioli", "Keeps 2 days at 5 °C or less.", "- 40 g egg yolk, pasteurised\n- 200 g olive oil\n- 10 g lemon juice", "1. Whisk the yolk and run in the oil.") },
        { "SAF020", "us", Card("Mousse", "Makes 500 g.", "- 150 g egg white\n- 50 g caster sugar\n- 200 g dark chocolate", "1. Whisk the whites and fold into the chocolate."), Card("Sponge", "Makes 500 g.", "- 150 g whole egg\n- 150 g plain flour\n- 150 g caster sugar", "1. Whisk and fold.\n2. Bake at 170 °C for 25 min.") },
        { "SAF021", "us", Card("Crudo", "Same day only.", "- 200 g salmon\n- 10 g fine sea salt", "1. Slice thinly and salt."), Card("Crudo", "Same day only.", "- 200 g salmon\n- 10 g fine sea salt", "1. Freeze at -20 °C for 7 days. Thaw in the fridge.\n2. Slice thinly and salt.") },
        { "SAF021", "uk", Card("Crudo", "Same day only.", "- 200 g cod\n- 10 g fine sea salt", "1. Slice thinly and salt."), Card("Cod", "Same day only.", "- 200 g cod\n- 10 g fine sea salt", "1. Bake at 200 °C for 12 min.") },
        { "SAF022", "au", Card("Scallops", "Same day only.", "- 200 g scallops\n- 10 g lime juice", "1. Slice and dress with the juice."), Card("Mussels", "Same day only.", "- 500 g mussels\n- 100 g white wine", "1. Steam at 100 °C for 5 min.") },
        { "SAF024", "au", Card("Garlic oil", "Keeps 3 weeks at room temperature.", "- 50 g garlic\n- 300 g olive oil", "1. Warm the garlic in the oil at 90 °C for 60 min."), Card("Garlic oil", "Keeps 3 days at 5 °C or less.", "- 50 g garlic\n- 300 g olive oil", "1. Warm the garlic in the oil at 90 °C for 60 min.") },
        { "SAF024", "us", Card("Basil oil", "Keeps 10 days at 4 °C.", "- 60 g basil\n- 300 g olive oil", "1. Blend."), Card("Vinaigrette", "Keeps 10 days at 4 °C.", "- 10 g shallot\n- 200 g olive oil\n- 70 g cider vinegar", "1. Whisk.") },
        { "SAF023", "uk", Card("Rice", "Keeps 3 days at 5 °C or less.", "- 300 g long-grain rice\n- 600 g water", "1. Boil 15 min."), Card("Rice", "Keeps 1 day at 5 °C or less.", "- 300 g long-grain rice\n- 600 g water", "1. Boil 15 min.") },
        { "SAF012", "au", Card("Beef", "Makes 800 g.", "- 800 g beef sirloin\n- 8 g fine sea salt", "1. Water bath at 53 °C for 12 h."), Card("Beef", "Makes 800 g.", "- 800 g beef sirloin\n- 8 g fine sea salt", "1. Water bath at 58 °C for 12 h.") },
        { "SAF012", "us", Card("Lamb", "Makes 800 g.", "- 800 g lamb loin\n- 8 g fine sea salt", "1. Water bath at 52 °C for 6 h."), Card("Salmon", "Makes 800 g.", "- 800 g salmon\n- 8 g fine sea salt", "1. Water bath at 50 °C for 25 min.") },
        { "SAF025", "us", Card("Carrots", "Keeps 14 days at 4 °C.", "- 800 g carrot\n- 40 g butter", "1. Seal in a vacuum pouch.\n2. Water bath at 84 °C for 60 min."), Card("Carrots", "Keeps 5 days at 4 °C.", "- 800 g carrot\n- 40 g butter", "1. Seal in a vacuum pouch.\n2. Water bath at 84 °C for 60 min.") },
        { "SAF010", "uk", Card("Soup", "Makes 2 kg.", "- 2 kg carrot\n- 200 g butter", "1. Simmer 30 min.\n2. Hold hot at 55 °C for 5 h."), Card("Soup", "Makes 2 kg.", "- 2 kg carrot\n- 200 g butter", "1. Simmer 30 min.\n2. Hold hot at 65 °C for 5 h.") },
        { "SAF013", "us", Card("Soup", "Makes 2 kg.", "- 2 kg carrot\n- 200 g butter", "1. Simmer 30 min.\n2. Reheat to 60 °C."), Card("Soup", "Makes 2 kg.", "- 2 kg carrot\n- 200 g butter", "1. Simmer 30 min.\n2. Reheat to 80 °C.") },
        { "SAF011", "au", Card("Custard", "Keeps 3 days at 8 °C.", "- 500 g whole milk\n- 100 g egg yolk, pasteurised", "1. Cook to 84 °C."), Card("Custard", "Keeps 3 days at 5 °C.", "- 500 g whole milk\n- 100 g egg yolk, pasteurised", "1. Cook to 84 °C.") },
    };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Trap_raises_and_its_near_miss_is_silent(string rule, string code, string trap, string nearMiss)
    {
        Finding[] found = [.. Review(trap, code).All.Where(f => f.Rule == rule)];
        Assert.NotEmpty(found);
        Assert.All(found, f =>
        {
            Assert.True(f.Severity > Severity.Note && f.Line > 0 && f.Remedy.Length > 0 && f.Source.Length > 0 && f.Limit.Length > 0, f.ToString());
        });
        Assert.DoesNotContain(Review(nearMiss, code).All, f => f.Rule == rule);
    }

    [Fact]
    public void Eight_degrees_chilled_is_law_in_the_uk_and_too_warm_elsewhere()
    {
        string card = Card("Custard", "Keeps 3 days at 8 °C.", "- 500 g whole milk\n- 100 g egg yolk, pasteurised", "1. Cook to 84 °C.");
        Assert.Empty(Review(card, "uk").All.Where(f => f.Rule == "SAF011"));
        Assert.Equal(5, Assert.Single(Review(card, "us").All, f => f.Rule == "SAF011").Line);
    }

    [Fact]
    public void Guests_at_risk_turn_raw_egg_and_raw_fish_into_a_stop()
    {
        Dish dish = Read(Card("Aioli", "Same day only.", "- 40 g egg yolk\n- 200 g olive oil", "1. Whisk."));
        Assert.Equal(Severity.Warn, SafetyReview.Review(Weighing.Weigh(dish, null), "au").All.Single(f => f.Rule == "SAF020").Severity);
        Assert.Equal(Severity.Stop, SafetyReview.Review(Weighing.Weigh(dish, null), "au", vulnerableGuests: true).All.Single(f => f.Rule == "SAF020").Severity);
    }

    private static string Card(string name, string says, string list, string steps) => $"# {name} card\n\n## {name}\n\n{says}\n\n{list}\n\n{steps}\n";

    private static Dish Read(string card) => CardReader.Read(new CardText(card, "card.md")).Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));

    private static Findings Review(string card, string code) => SafetyReview.Review(Weighing.Weigh(Read(card), null), code);
}
