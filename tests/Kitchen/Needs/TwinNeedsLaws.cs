using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Slot;

namespace Coulisse.Kitchen.Tests.Needs;

public sealed class TwinNeedsLaws
{
    private static readonly Occasion Occasion = Demo.Occasion;
    private static readonly ImmutableArray<Batch> Batches = Assert.IsType<Parsed<ImmutableArray<Batch>>.Ok>(OccasionBatches.Make(Occasion)).Value;

    [Fact]
    public void A_twin_with_a_batch_of_its_own_is_bought_for_by_its_weight()
    {
        Component c3 = Occasion.Dishes[0].Dish.Components.Single(c => c.Code == "C3");
        ImmutableArray<Need> needs = TwinNeeds.Of([Twin(c3.Name, 84.18, own: true)], Occasion, Batches).Needs;

        Assert.Equal(71, needs.Single(n => n.FoodId?.StartsWith("beetroot", StringComparison.Ordinal) == true).Grams, 0.001); // a tenth of 841.8 g: by hand
        Assert.All(needs, n => Assert.Equal(NeedRole.Twin, n.Role));
    }

    [Fact]
    public void A_twin_that_is_a_share_of_the_service_batch_is_not_bought_for()
        => Assert.Empty(TwinNeeds.Of([Twin(Occasion.Dishes[0].Dish.Components[0].Name, 100, own: false)], Occasion, Batches).Needs);

    [Fact]
    public void A_twin_without_a_weight_is_said_and_not_guessed()
        => Assert.Single(TwinNeeds.Of([Twin(Occasion.Dishes[0].Dish.Components[0].Name, null, own: true)], Occasion, Batches).LeftOut);

    [Fact]
    public void What_is_served_costs_the_same_with_twins_beside_it()
    {
        Need few = new("kohlrabi", 7, "twin") { FoodId = "kohlrabi", Cut = new(2, 60), Role = NeedRole.Twin };
        Costing alone = Costing.Of(Demo.Needs().Needs, Demo.Prices);
        Costing beside = Costing.Of(Demo.Needs(few).Needs, Demo.Prices);

        Assert.Equal(alone.For(NeedRole.Served), beside.For(NeedRole.Served));
        Assert.Equal(0, beside.For(NeedRole.Twin).Amount); // two more discs come out of the eighth bulb
        Assert.Equal(0.90m, Costing.Of(Demo.Needs(few with { Cut = new(39, 60) }).Needs, Demo.Prices).For(NeedRole.Twin).ToCents().Amount); // 319 discs take a ninth
    }

    [Fact]
    public void A_root_that_is_cut_before_the_audience_is_a_whole_one_and_one_cut_before_is_not()
    {
        Need discs = new("kohlrabi", 7, "twin") { FoodId = "kohlrabi", Cut = new(2, 60), Role = NeedRole.Twin };
        decimal Bulbs(Need need) => Order.For(Demo.Needs(need).Needs, Demo.Prices).Lines.Single(l => l.Item == "kohlrabi").Bought;

        Assert.Equal(8m, Bulbs(discs)); // near miss: two more discs come out of the eighth bulb
        Assert.Equal(9m, Bulbs(discs with { FromWhole = true }));
        Assert.Equal(10m, Bulbs(discs with { FromWhole = true, Cut = new(40, 60) })); // 39 a bulb
    }

    private static TwinNeed Twin(string component, double? grams, bool own) => new(new Twin { Number = 1, Component = component, State = "x", Grams = grams }, Occasion.Dishes[0].Name, 0, 0, own);
}
