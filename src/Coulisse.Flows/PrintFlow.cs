using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Coulisse.Cards;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Safety;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Flows;

/// <summary>What papers are made from besides the planned occasion.</summary>
public sealed record PrintWish
{
    /// <summary>Price list; null leaves order and cost sheet out.</summary>
    public PriceList? Prices { get; init; }

    /// <summary>Stock, minimum orders, delivery days.</summary>
    public OrderTerms Terms { get; init; } = new();

    /// <summary>Q factor, target, tax.</summary>
    public CostTerms Cost { get; init; } = new();

    /// <summary>Needed besides: spares.</summary>
    public ImmutableArray<Need> Extra { get; init; } = [];

    /// <summary>Whose spoons and cups the handout uses; null for those of the code of practice's country.</summary>
    public string? HomeMeasures { get; init; }

    /// <summary>Failures thought through beforehand.</summary>
    public ImmutableArray<IfThen> IfThens { get; init; } = [];

    /// <summary>Steps in the helpers' languages as the chef stored them.</summary>
    public ImmutableArray<StepTranslations> Translations { get; init; } = [];

    /// <summary>False leaves out what twins take.</summary>
    public bool Twins { get; init; } = true;
}

/// <summary>One version of the truth for every sheet of an occasion or a card.</summary>
public static class PrintFlow
{
    /// <summary>The bundle of a planned occasion.</summary>
    /// <param name="planned">The planned occasion.</param>
    /// <param name="now">Moment of printing, local.</param>
    /// <param name="wish">Prices and terms; null for none.</param>
    public static PaperBundle Bundle(PlannedOccasion planned, LocalDateTime now, PrintWish? wish = null)
    {
        ArgumentNullException.ThrowIfNull(planned);
        wish ??= new();
        NeedsList needs = OccasionNeeds.Of(planned.Occasion, wish.Extra, wish.Twins).Match(n => n, p => new NeedsList([], p, []));
        PaperBundle bare = new()
        {
            Mark = new("", ""),
            Occasion = planned.Occasion,
            Plan = planned.Outcome as Plan,
            Batches = planned.Batches,
            Findings = planned.Findings,
            Faults = [.. planned.Faults.Select(f => f.Words)],
            Code = planned.Findings.IsEmpty ? CodeOfPractice.Of(planned.Occasion).Code : planned.Findings[0].Code,
            Needs = needs,
            ForStage = wish.Twins && planned.Occasion.Dishes.Length == planned.Batches.Length ? TwinBatch.Of(planned.Occasion, planned.Batches) : [],
            Prices = wish.Prices,
            Order = wish.Prices is { } list ? Order.For(needs.Needs, list, wish.Terms) : null,
            Costing = wish.Prices is { } valued ? Costing.Of(needs.Needs, valued) : null,
            CostTerms = wish.Cost,
            HomeMeasures = wish.HomeMeasures ?? Home(planned.Findings.IsEmpty ? CodeOfPractice.Of(planned.Occasion).Code : planned.Findings[0].Code),
            IfThens = wish.IfThens,
            Translations = wish.Translations,
        };
        return Marked(bare, now);
    }

    /// <summary>The bundle of one card.</summary>
    public static PaperBundle Bundle(AssessedDish dish, LocalDateTime now, PrintWish? wish = null)
    {
        ArgumentNullException.ThrowIfNull(dish);
        wish ??= new();
        NeedsList needs = NeedsList.From([dish.Batch], wish.Extra);
        return Marked(
            new()
            {
                Mark = new("", ""), Batches = [dish.Batch], Findings = [dish.Findings], Code = dish.Findings.Code, Needs = needs, Prices = wish.Prices,
                Costing = wish.Prices is { } list ? Costing.Of(needs.Needs, list) : null, CostTerms = wish.Cost, HomeMeasures = wish.HomeMeasures ?? Home(dish.Findings.Code),
            },
            now);
    }

    /// <summary>The bundle of an order alone: what is bought before anything is planned.</summary>
    public static PaperBundle OrderBundle(Occasion occasion, NeedsList needs, PriceList prices, Order order, string code, LocalDateTime now)
        => Marked(new() { Mark = new("", ""), Occasion = occasion, Code = code, Needs = needs, Prices = prices, Order = order }, now);

    /// <summary>What could not be bought or valued: said on the sheets, and to whoever prints.</summary>
    public static ImmutableArray<Problem> Problems(PaperBundle bundle)
    {
        ArgumentNullException.ThrowIfNull(bundle);
        return [.. (bundle.Needs?.Problems ?? []).Concat(bundle.Order?.Problems ?? []).Concat(bundle.Costing?.Problems ?? []).Concat(bundle.Translations.SelectMany(t => t.Problems)).Distinct()];
    }

    private static string Home(string code) => code == "eu" ? "metric" : code;

    // The mark is a hash of what all sheets say: it changes when a figure does, and only then.
    private static PaperBundle Marked(PaperBundle bare, LocalDateTime now)
    {
        string says = string.Join('\n', PaperShelf.Papers(bare).Select(p => p.Id + " " + p.Content));
        string version = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(says)))[..8];
        return bare with { Mark = new(version, now.ToString("ddd d MMM uuuu HH:mm", CultureInfo.GetCultureInfo("en-GB"))) };
    }
}
