using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.AtHome;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Needs;
using Coulisse.Matter.Foods;
using SafetyReview = Coulisse.Kitchen.Safety.SafetyReview;

namespace Coulisse.Kitchen.Tests.Formulas;

/// <summary>The house's own foods go before those that ship, and bad lines of theirs are named.</summary>
public sealed class OwnFoodsTests
{
    private static Parsed<FoodTable> Read(string text) => OwnFoods.Read(text, AllergenNames.Codes);

    private static FoodTable Ok(string text) => Read(text).Match(t => t, p => throw new InvalidOperationException(string.Join("; ", p)));

    private static WeighedDish Weigh(string card, FoodTable foods) => CardReader.Read(new CardText(card)).Match(d => Weighing.Weigh(d, null, foods), p => throw new InvalidOperationException(string.Join("; ", p)));

    [Fact]
    public void A_specification_takes_the_place_of_the_food_it_names()
    {
        FoodTable foods = Ok("name;also;source;water;protein;fat;carbohydrate;sugars;contains\ncream;house cream/farm cream;specification of the dairy, 3 March;50,0;2,0;45,0;3,0;3,0;milk\n");
        WeighedDish dish = Weigh("# Cream\n\n- 200 g house cream\n- 200 g cream\n- 200 g whole milk\n\n1. Mix.\n", foods);

        Assert.Equal(["specification of the dairy, 3 March", "specification of the dairy, 3 March"], dish.Components[0].Lines.Take(2).Select(l => l.Known!.Source));
        Assert.Equal("SR28 01077", dish.Components[0].Lines[2].Known!.Source);
        Assert.Equal(((2 * 45.0) + 3.25) / 3, Blending.Of(dish).Match(m => m[0].Composition!.Fat!.Value, _ => 0), 1e-6);
        Assert.Equal("SR28 01053", Weigh("# Cream\n\n- 200 g cream\n\n1. Mix.\n", FoodTable.Default).Components[0].Lines[0].Known!.Source);
    }

    [Fact]
    public void A_food_that_does_not_ship_is_known_to_weights_label_and_mixture()
    {
        FoodTable foods = Ok("name,source,water,protein,fat,saturates,carbohydrate,sugars,fibre,salt,density,piece,contains\nmoon biscuit,baker's own figures,5,8,20,10,62,30,4,1.0,0.4,12,wheat egg\n");
        WeighedDish dish = Weigh("# Base\n\n- 10 moon biscuits\n- 1 cup moon biscuit\n- 50 g butter\n\n1. Crush.\n", foods);

        Assert.Equal(120, dish.Components[0].Lines[0].Grams, 1e-9);
        Assert.Equal(100, dish.Components[0].Lines[1].Grams, 0.1);
        Assert.Contains(Allergens.Of(dish, AllergenRegime.Anz).Dish, a => a.Name == "egg" && a.Status == AllergenStatus.Contains);
        Assert.NotEmpty(Panels.Of(dish, AllergenRegime.Eu).Match(p => p.Rows, _ => []));
    }

    [Fact]
    public void A_food_whose_line_says_nothing_of_allergens_is_unknown_and_none_is_not()
    {
        FoodTable foods = Ok("name,source,water,contains\nmoon water,well,100,\nsun water,well,100,none\n");
        AllergenSheet sheet = Allergens.Of(Weigh("# Waters\n\n- 100 g moon water\n- 100 g sun water\n\n1. Mix.\n", foods), AllergenRegime.Eu);

        AllergenLine unknown = Assert.Single(sheet.Dish);
        Assert.Equal(AllergenStatus.Unknown, unknown.Status);
        Assert.Contains("moon water", unknown.Because[0].Because, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("name,source,water,fat,carbohydrate\nx,y,60,30,30\n", "MIX008", 2)]
    [InlineData("name,source,water,protein,fat,carbohydrate,ash\nx,y,10,10,10,10,1\n", "MIX008", 2)]
    [InlineData("name,source,carbohydrate,sugars\nx,y,10,20\n", "MIX008", 2)]
    [InlineData("name,source,fat\nx,y,10\n\nz,y,-4\n", "MIX009", 4)]
    [InlineData("name,source,fat\nx,,10\n", "MIX009", 2)]
    [InlineData("name,source,colour\nx,y,red\n", "MIX009", 1)]
    [InlineData("name,source,contains\nx,y,gluten\n", "MIX009", 2)]
    [InlineData("name,source,fat\nx,y,1\nx,y,2\n", "MIX009", 3)]
    [InlineData("\n", "MIX009", 0)]
    public void A_bad_line_is_named_with_its_number(string text, string code, int line)
        => Assert.Equal((code, line), Read(text).Match(_ => ("", -1), p => (p[0].Code, p[0].Line)));

    [Theory]
    [InlineData("name,source,water,protein,fat,carbohydrate,ash\nx,y,60,10,20,9,1\n")]
    [InlineData("name,source,water,protein,fat,carbohydrate\nx,y,60,10,20,11.5\n")]
    public void A_line_that_sums_as_labels_do_is_taken(string text) => Assert.IsType<Parsed<FoodTable>.Ok>(Read(text));

    [Fact]
    public void A_food_of_the_house_is_measured_at_home_priced_by_its_other_name_and_known_to_a_diet()
    {
        FoodTable foods = Ok("name,also,source,water,protein,fat,carbohydrate,ash,density,piece,edible,contains\nhouse curd,farm curd,dairy's label,70,12,14,3,1,1.1,,,milk\nhouse root,moon root,grower,88,1,0,8,1,,200,50,none\n");
        WeighedDish dish = Weigh("# Curd\n\n- 110 g house curd\n- 300 g house root\n\n1. Mix.\n", foods);
        Batch batch = Scaling.Scale(dish, new ScaleTo.Factor(1)).Match(b => b, _ => null!);

        // 110 g at 1.1 g/mL are 100 mL: 0.4 of a cup of 250; by spoons of 15 mL six and two thirds.
        HomeMeasure spoons = HomeMeasure.Nearest(dish.Components[0].Lines[0], 16.5, new HomeKit("metric") { ScaleStepGrams = 100, PocketStepGrams = null })!;
        Assert.Equal((16.5, true), (Math.Round(spoons.Grams, 6), spoons.BySpoon));

        NeedsList needs = NeedsList.From([batch]);
        PriceList prices = Assert.IsType<Parsed<PriceList>.Ok>(PriceList.Read("item,supplier,pack,unit,price,currency,note\nfarm curd,near,1000,g,10,D,\nmoon root,near,1,each,2,D,200 g\nother curd,near,1000,g,1,D,")).Value;
        Costing cost = Costing.Of(needs.Needs, prices);
        Assert.Empty(cost.Problems);

        // 110 g of 10 a kilogram; 300 g of a root that weighs 200 g as bought, half of it edible: three roots.
        Assert.Equal(1.10m + 6m, cost.Total.Amount);
        Assert.Equal(["dairy's label", "grower"], needs.Needs.Select(n => n.Known!.Source));

        // A name of the house's own is known where a line only allows it in place of another.
        AllergenSheet sheet = Allergens.Of(Weigh("# Curd\n\n- 110 g oat drink or house curd\n\n1. Mix.\n", foods), AllergenRegime.Eu);
        Assert.Contains(sheet.Dish, a => a.Code == "milk" && a.Status == AllergenStatus.May);
        Assert.Contains(NeedsList.Diet("Curd", "40 g house curd instead", 2, [], foods).Needs, n => n.Known?.Source == "dairy's label" && n.Grams == 80);
    }

    [Fact]
    public void The_dish_carries_its_foods_to_safety_and_to_what_washes_after_what()
    {
        FoodTable foods = Ok("name,source,water,protein,fat,carbohydrate,ash,contains\nhouse loin,fishmonger's sheet,72,24,2,0,1,fish\n");
        Dish dish = CardReader.Read(new CardText("# Fish bowl\n\nServes 4.\n\n- 300 g house loin\n\n1. Slice the loin thinly and serve raw, 10 min.\n")).Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));

        // A raw fish of the house is held to the rule of raw fish; the same words without the sheet are an unknown food.
        Assert.Contains(SafetyReview.Review(Weighing.Weigh(dish with { Foods = foods }), "us").All, f => f.Rule == "SAF021");
        Assert.DoesNotContain(SafetyReview.Review(Weighing.Weigh(dish), "us").All, f => f.Rule == "SAF021");
        Assert.Equal(["fish"], (dish with { Foods = foods }).Row(dish.Components[0].Ingredients[0].Foods[0])!.Contains);
        Assert.Null(dish.Row(dish.Components[0].Ingredients[0].Foods[0]));
    }

    [Fact]
    public void A_suppliers_sulphur_dioxide_goes_before_the_laws_limit_and_trans_cholesterol_and_added_sugars_reach_the_panel()
    {
        FoodTable foods = Ok("name,source,water,protein,fat,trans,carbohydrate,sugars,added,alcohol,ash,cholesterol,so2,contains\nred wine,maker's sheet,86,0,0,0,3,1,0,10.6,0.3,0,20,sulphite\nhouse spread,maker's sheet,20,5,40,1.5,34,30,25,0,1,60,,milk\n");
        const string Card = "# Sauce\n\n- 100 g red wine\n- 100 g house spread\n\n1. Mix.\n";

        Sulphites said = Sulphites.Of(Weigh(Card, foods), AllergenRegime.Eu)!;
        Assert.Equal((10.0, true), (said.MostMilligramsPerKilogram!.Value, said.BelowLimit!.Value));
        Assert.Contains("the makers' figures", said.Text, StringComparison.Ordinal);
        NutritionPanel panel = Panels.Of(Weigh(Card, foods), AllergenRegime.Us).Match(p => p, _ => null!);
        Assert.Equal((0.75, 30.0, 12.5), (panel.Rows.Single(r => r.Name == "Trans Fat").Computed, panel.Rows.Single(r => r.Name == "Cholesterol").Computed, panel.Rows.Single(r => r.Name == "Includes Added Sugars").Computed));
        Assert.Equal("MIX008", Read("name,source,sugars,carbohydrate,added\nx,y,10,10,12\n").Match(_ => "", p => p[0].Code));
    }
}
