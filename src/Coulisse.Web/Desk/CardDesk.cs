using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Quantities;
using Coulisse.Views.Web;

namespace Coulisse.Web.Desk;

/// <summary>From the text of a card to what stands in its margins: the one place where the desk calls the computing rooms.</summary>
internal static class CardDesk
{
    /// <summary>Reads and weighs a card and lays it out by line.</summary>
    public static Parsed<MarginsView> Margins(string text)
        => CardReader.Read(new CardText(text.ReplaceLineEndings("\n"))).Match<Parsed<MarginsView>>(
            dish => new Parsed<MarginsView>.Ok(MarginsView.From(AsWritten(dish), null, null, CultureInfo.GetCultureInfo("en-GB"))),
            problems => new Parsed<MarginsView>.Failed(problems));

    /// <summary>Weights that the text itself fixes; a line whose weight needs a table stays without one.</summary>
    private static WeighedDish AsWritten(Dish dish) => new(dish,
        [.. dish.Components.Select(c => new WeighedComponent(c, [.. c.Ingredients.SelectMany(i => i.Foods.Select(f => Line(i, f)))]))], "");

    private static WeighedLine Line(IngredientLine line, FoodAmount food)
    {
        double low = food.Grams ?? 0;
        double high = food.GramsMax ?? low;
        return food.Grams is null
            ? new WeighedLine(line, food, 0, 0, 0, WeightGrade.Unknown, Origin.Assumed("The line gives no weight, and none is looked up.", ""))
            : new WeighedLine(line, food, (low + high) / 2, low, high, WeightGrade.Weighed, Origin.Typed("The line states it: " + line.Text));
    }
}
