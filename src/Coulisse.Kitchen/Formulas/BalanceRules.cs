using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;

namespace Coulisse.Kitchen.Formulas;

/// <summary>What the trade's rules of balance say to a cake, dough, choux or meringue. Remarks only: a formula that breaks them may be meant.</summary>
/// <remarks>
/// Shares on flour. Shortened and high-ratio cakes after an open teaching note on cake balancing; whisked cakes, bread, brioche, choux and meringue: common practice, no source.
/// How far off is worth a word (a quarter of a rule's figure) is common practice too.
/// </remarks>
public static class BalanceRules
{
    private static readonly string[] Fats = ["butter", "butter-salted", "butter-clarified", "lard", "margarine", "coconut-oil"];
    private static readonly string[] Sugars = ["sugar", "icing-sugar", "brown-sugar", "demerara", "muscovado", "honey", "golden-syrup", "maple-syrup", "dextrose", "treacle"];
    private static readonly string[] Liquids = ["milk", "milk-semi", "milk-skim", "water", "buttermilk", "yoghurt", "sour-cream", "orange-juice", "lemon-juice"];
    private static readonly string[] Yeasts = ["yeast-fresh", "yeast-instant", "yeast-dry", "sourdough"];
    private static readonly string[] Baking = ["bake", "blind_bake"];

    /// <summary>Remarks on a component; empty when it is none of these, or balances.</summary>
    public static ImmutableArray<string> Of(WeighedDish dish, WeighedComponent component)
    {
        ArgumentNullException.ThrowIfNull(dish);
        ArgumentNullException.ThrowIfNull(component);
        if (Percentages.Of(dish, component) is not { } p)
        {
            return [];
        }

        double Sum(Func<string, bool> of) => p.Lines.Where(l => l.Line.Food.FoodId is { } id && of(id)).Sum(l => l.Line.Grams);
        double flour = p.Flour;
        double egg = Sum(id => id is "egg" or "egg-white" or "egg-yolk");
        double sugar = Sum(id => Sugars.Contains(id));
        double fat = Sum(id => Fats.Contains(id) || id.EndsWith("-oil", StringComparison.Ordinal));
        double liquid = Sum(id => Liquids.Contains(id));
        bool baked = component.Component.Steps.Any(s => s.Operations.Append(s.Operation).Any(o => Baking.Contains(o)) || s.Temperatures.Any(t => t.Of == TemperatureOf.Oven));
        if (flour <= 0)
        {
            double white = Sum(id => id == "egg-white");
            return white > 0 && sugar > 0 && white + sugar > 0.9 * p.Grams && !(sugar / white is >= 0.95 and <= 2.1)
                ? [Say($"a meringue has 1 to 2 of sugar on 1 of white; here it is {sugar / white:0.0#}")]
                : [];
        }

        double On(double grams) => 100 * grams / flour;
        double powder = On(Sum(id => id == "baking-powder"));
        double yeast = Sum(id => Yeasts.Contains(id));
        if (yeast > 0)
        {
            double salt = On(Sum(id => id.StartsWith("sea-salt", StringComparison.Ordinal) || id == "salt"));
            return [.. Bread(p, salt, On(fat), On(sugar), On(egg))];
        }

        return baked && egg > 0 && sugar > 0 && On(sugar) >= 40 && On(egg) >= 20 ? [.. Cake(On(sugar), On(fat), On(egg), On(liquid), powder, On(Sum(id => id == "cocoa")))] : [];
    }

    private static IEnumerable<string> Cake(double sugar, double fat, double egg, double liquid, double powder, double cocoa)
    {
        if (powder > 6.25)
        {
            yield return Say($"baking powder is {powder:0.#} on 100 of flour; 3 to 5 is usual");
        }

        if (egg >= 125 && fat <= 40)
        {
            if (sugar is < 75 or > 140)
            {
                yield return Say($"a whisked cake has about as much sugar as flour; here it is {sugar:0} on 100");
            }
        }
        else if (sugar > 110)
        {
            double most = cocoa > 0 ? 180 : 160;
            if (sugar > most)
            {
                yield return Say($"sugar is {sugar:0} on 100 of flour; {(cocoa > 0 ? "with cocoa " : "")}{most:0} is about the most");
            }

            if (egg < fat)
            {
                yield return Say($"with more sugar than flour, egg goes above fat; here it is {egg:0} egg and {fat:0} fat on 100 of flour");
            }

            if (egg + liquid < sugar)
            {
                yield return Say($"with more sugar than flour, egg and milk together reach the sugar; here they are {egg + liquid:0} and {sugar:0} on 100 of flour");
            }
        }
        else if (fat >= 20)
        {
            if (egg < 0.75 * fat || egg > 1.6 * fat)
            {
                yield return Say($"a shortened cake has about as much egg as fat; here it is {egg:0} egg and {fat:0} fat on 100 of flour");
            }

            if (egg + liquid is < 75 or > 130)
            {
                yield return Say($"a shortened cake has about as much egg and milk as flour; here it is {egg + liquid:0} on 100");
            }
        }
    }

    private static IEnumerable<string> Bread(Percentages p, double salt, double fat, double sugar, double egg)
    {
        if (salt is < 1.4 or > 2.5)
        {
            yield return Say($"salt is {salt:0.0#} % of the flour; 1.8 to 2.2 is usual");
        }

        if (fat < 10 && sugar < 10 && egg < 10 && p.Hydration is < 50 or > 90)
        {
            yield return Say($"the water is {p.Hydration:0} % of the flour; 60 to 75 is usual");
        }
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture) + " (balance rule)";
}
