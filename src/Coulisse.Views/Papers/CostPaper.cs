using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Matter.Quantities;
using Coulisse.Views.Web;

namespace Coulisse.Views.Papers;

/// <summary>Cost of a dish: each ingredient from the price of its pack to what is used, then part, plate or piece; twins and diets apart.</summary>
public static class CostPaper
{
    public const string Kind = "cost";

    /// <summary>A dish as it is costed: how many are made and how many of those are eaten.</summary>
    public sealed record Count(string Title, double Made, double Eaten, string Unit);

    public static Paper? Of(PaperBundle bundle)
    {
        if (bundle.Costing is not { } costing)
        {
            return null;
        }

        CultureInfo culture = bundle.Culture;
        List<Block> blocks = [.. costing.Problems.Select(p => new CalloutBlock("Not in this cost: " + p.Message, p.Hint))];
        blocks.Add(new FactsBlock(
        [
            new("Food together", Money(costing.Total)), new("For what is served", Money(costing.For(NeedRole.Served))), new("For diets", Money(costing.For(NeedRole.Diet))),
            new("For twins and what is begun on stage", Money(costing.For(NeedRole.Twin))), new("Added by hand", Money(costing.For(NeedRole.Added))),
            new("Of it cut away before use", Money(costing.Trim)), .. bundle.Order is { } order ? [new("Besides, left in packs", Money(new Money(order.Total.Amount - costing.Total.Amount, costing.Currency)))] : Array.Empty<Fact>(),
        ]));
        foreach (Count c in Counts(bundle))
        {
            blocks.AddRange(Dish(bundle, costing, c, culture));
        }

        CostLine[] beside = [.. costing.Lines.Where(l => l.Need.Role != NeedRole.Served)];
        if (beside.Length > 0)
        {
            blocks.Add(new HeadingBlock(1, "Beside what is served"));
            blocks.Add(Table(bundle, [.. beside], costing.Currency, beside.Sum(l => l.Value.Amount), culture));
        }

        if (bundle.Needs is { NotCounted.IsEmpty: false } needs)
        {
            blocks.Add(new CalloutBlock("No amount on the card, so nothing was counted", string.Join("; ", needs.NotCounted) + "."));
        }

        blocks.Add(new ParagraphBlock("Cost is the value of what recipes use: grams × price of a pack ÷ content ÷ usable share. Rests of packs are the order’s matter. The Q factor stands for what no line states; each house sets its own (common practice, no source).", Small: true));
        return bundle.Sheet(Kind, "Cost", [.. blocks]) with { TextSize = 9 };
    }

    /// <summary>Dishes as they are costed.</summary>
    public static ImmutableArray<Count> Counts(PaperBundle bundle) => bundle.Occasion is { } o
        ? [.. o.Dishes.GroupBy(d => d.Dish.Title, StringComparer.Ordinal).Select(g => g.First()).Select(d =>
        {
            double made = d.Unit != "pieces" ? d.Count : OccasionBatches.WholeVessels(d.Dish, d.Count, d.Unit) * (d.Dish.Yields.FirstOrDefault(y => y.Unit == "pieces")?.Amount ?? d.Count);
            return new Count(d.Dish.Title, made, d.Unit == "pieces" ? d.Count : Math.Min(d.Count, o.Guests), d.Unit);
        })]
        : [.. bundle.Batches.Select(b => (b, Makes: b.Weighed.Dish.Yields.FirstOrDefault(y => y.Unit is "portions" or "plates" or "covers" or "pieces" && y.Amount > 0))).Where(x => x.Makes is not null).Select(x => new Count(x.b.Weighed.Dish.Title, x.Makes!.Amount * x.b.Factor, x.Makes.Amount * x.b.Factor, x.Makes.Unit))];

    /// <summary>Served cost of a dish; a part made alone for one guest is not in the cost of the other pieces of its card.</summary>
    public static Money Served(Costing costing, NeedsList? needs, Count c) => new(costing.Parts.Where(p => p.Dish == c.Title && p.Role == NeedRole.Served && !Alone(c, p.Component, p.Dish, needs)).Sum(p => p.Value.Amount), costing.Currency);

    private static bool Alone(Count c, string component, string dish, NeedsList? needs) => c.Unit == "pieces" && component.Length > 0 && needs is not null && needs.Alone.Contains((dish, component));

    private static IEnumerable<Block> Dish(PaperBundle bundle, Costing costing, Count c, CultureInfo culture)
    {
        Money sum = Served(costing, bundle.Needs, c);
        Money made = sum * (1 / (decimal)c.Made);
        Money eaten = sum * (1 / (decimal)c.Eaten);
        yield return new HeadingBlock(1, c.Title);
        List<Fact> facts =
        [
            new("Food", Money(sum)), new($"Each of {Figures.Number(c.Made, culture)} {c.Unit} made", Fine(made)), new($"Each of {Figures.Number(c.Eaten, culture)} {c.Unit} eaten", Fine(eaten)),
        ];
        if (bundle.CostTerms.TargetPercent is { } target)
        {
            SellingPrice price = SellingPrice.Of(eaten, target, bundle.CostTerms.UnlistedPercent, bundle.CostTerms.TaxPercent);
            facts.AddRange([new("Q factor", Fine(price.Unlisted)), new("Food may cost", Percent(target)), new("Price without tax", Money(price.Net)), new("Tax", Money(price.Tax)), new("Price", Money(price.Gross))]);
        }

        yield return new FactsBlock([.. facts]);
        CostLine[] lines = [.. costing.Lines.Where(l => l.Need.Dish == c.Title && l.Need.Role == NeedRole.Served && !Alone(c, l.Need.Component, l.Need.Dish, bundle.Needs))];
        yield return Table(bundle, lines, costing.Currency, sum.Amount, culture);
        CostLine[] alone = [.. costing.Lines.Where(l => l.Need.Dish == c.Title && l.Need.Role == NeedRole.Served && Alone(c, l.Need.Component, l.Need.Dish, bundle.Needs))];
        if (alone.Length > 0)
        {
            yield return new HeadingBlock(2, "Made alone, for one guest");
            yield return Table(bundle, alone, costing.Currency, alone.Sum(l => l.Value.Amount), culture);
        }
    }

    private static TableBlock Table(PaperBundle bundle, CostLine[] lines, string currency, decimal sum, CultureInfo culture)
    {
        ImmutableArray<PaperRow>.Builder rows = ImmutableArray.CreateBuilder<PaperRow>();
        foreach (IGrouping<string, CostLine> part in lines.GroupBy(l => l.Need.Component))
        {
            if (part.Key.Length > 0)
            {
                rows.Add(PaperRow.Group($"{part.Key}: {Fine(new Money(part.Sum(l => l.Value.Amount), currency))}"));
            }

            rows.AddRange(Merged(part).Select(l => Row(bundle, l, sum, culture)));
        }

        rows.Add(PaperRow.Total("Together", "", "", "", "", "", "", Money(new Money(sum, currency)), sum == 0 ? "" : Percent(100)));
        return new TableBlock(
            [new("Ingredient"), new("Used", Side.Right), new("Usable", Side.Right), new("To buy", Side.Right), new("A pack", Side.Right), new("A kilo or piece, bought", Side.Right), new("A kilo, usable", Side.Right), new("Cost", Side.Right, Strong: true), new("Share", Side.Right)],
            rows.ToImmutable());
    }

    // Two twins take the same food for the same part: one row, the sum of both.
    private static IEnumerable<CostLine> Merged(IEnumerable<CostLine> lines) => lines.GroupBy(l => (l.Need.Food, l.Item, l.Need.As)).Select(g => g.First() with
    {
        Need = g.First().Need with { Grams = g.Sum(l => l.Need.Grams), Pieces = g.Sum(l => l.Need.Pieces) },
        Amount = g.Sum(l => l.Amount),
        Value = new Money(g.Sum(l => l.Value.Amount), g.First().Value.Currency),
    });

    private static PaperRow Row(PaperBundle bundle, CostLine l, decimal sum, CultureInfo culture)
    {
        PriceRow? row = bundle.Prices?.Rows.Where(r => r.Item == l.Item).MinBy(r => r.PerUnit);
        bool pieces = row?.Unit == "each";
        // A piece costs what the list says, however many whole ones are taken for the fraction that is needed.
        decimal bought = pieces ? row!.PerUnit : l.Amount == 0 ? 0 : l.Value.Amount / l.Amount * 1000;
        string usable = !pieces && l.Amount > 0 && l.Need.Grams > 0 ? Percent(Math.Round((decimal)l.Need.Grams / l.Amount * 100, 1)) : "";
        string ready = l.Need.Grams > 0 ? OrderPaper.Money((l.Value * (1000 / (decimal)l.Need.Grams)).Amount, "") : "";
        return PaperRow.Of(
            l.Need.Food, l.Need.Grams > 0 ? Figures.Grams(l.Need.Grams, culture) : Figures.Number(l.Need.Pieces, culture), usable,
            pieces ? Figures.Number(Math.Round((double)l.Amount, 3), culture) : OrderPaper.Quantity(l.Amount, row?.Unit ?? "g", culture),
            row is null ? "" : $"{OrderPaper.Money(row.Price.Amount, "")} for {OrderPaper.Quantity(row.PackSize, row.Unit, culture)}", OrderPaper.Money(bought, ""), ready, Fine(l.Value), sum == 0 ? "" : Percent(Math.Round(l.Value.Amount / sum * 100, 1)));
    }

    private static string Money(Money m) => OrderPaper.Money(m.ToCents().Amount, m.Currency);

    // A plate or a line costs cents: a third digit carries to the event, and all lines have as many, so that the column can be read down.
    private static string Fine(Money m) => m.Amount.ToString("#,0.000", CultureInfo.InvariantCulture);

    private static string Percent(decimal p) => Figures.Number((double)p, CultureInfo.InvariantCulture) + "\u202F%";
}
