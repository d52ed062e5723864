using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Views.Papers;

/// <summary>The one version of the truth that a set of papers is printed from. What is not there yet is null or empty, and its papers are not printed.</summary>
public sealed record PaperBundle
{
    /// <summary>Version mark and hour, given by whoever prints: the computing rooms know no clock.</summary>
    public required PaperMark Mark { get; init; }

    /// <summary>The occasion; null for a card alone.</summary>
    public Occasion? Occasion { get; init; }

    /// <summary>The plan; null when there is none.</summary>
    public Plan? Plan { get; init; }

    /// <summary>Batches, one for each dish.</summary>
    public ImmutableArray<Batch> Batches { get; init; } = [];

    /// <summary>Findings, one for each dish, in the order of <see cref="Batches"/>; may be shorter.</summary>
    public ImmutableArray<Findings> Findings { get; init; } = [];

    /// <summary>What is to be bought; null when no price list was given.</summary>
    public Order? Order { get; init; }

    /// <summary>Faults that the validator found in the plan, in words; printed on every sheet made from the plan.</summary>
    public ImmutableArray<string> Faults { get; init; } = [];

    /// <summary>Culture of figures and days.</summary>
    public CultureInfo Culture { get; init; } = CultureInfo.GetCultureInfo("en-GB");

    /// <summary>Language of the sheets.</summary>
    public string Language { get; init; } = "en";

    /// <summary>Steps in other languages as the chef stored them, one for each language; empty when none were.</summary>
    public ImmutableArray<StepTranslations> Translations { get; init; } = [];

    /// <summary>Title of the occasion, or of the only card.</summary>
    public string Title => Occasion?.Title ?? Plan?.Title ?? (Batches.IsEmpty ? "" : Batches[0].Weighed.Dish.Title);

    /// <summary>All dishes in one line.</summary>
    public string Dishes => Batches.IsEmpty ? Title : string.Join(" · ", Batches.Select(b => b.Weighed.Dish.Title).Distinct());

    /// <summary>Code of practice of allergens and limits: au, nz, uk, eu, us.</summary>
    public string Code { get; init; } = CodeOfPractice.Usual;

    /// <summary>Whose spoons and cups the handout uses: au, nz, uk, us, jp, metric.</summary>
    public string HomeMeasures { get; init; } = "metric";

    /// <summary>Failures thought through beforehand, each with its solved answer; empty when nobody asked.</summary>
    public ImmutableArray<IfThen> IfThens { get; init; } = [];

    /// <summary>All that must be bought, with what could not be counted; null when nobody asked for it.</summary>
    public NeedsList? Needs { get; init; }

    /// <summary>What twins take beyond the batches for service, each as a batch of its own; empty when nobody asked for it.</summary>
    public ImmutableArray<TwinBatch> ForStage { get; init; } = [];

    /// <summary>The price list; null when none was given.</summary>
    public PriceList? Prices { get; init; }

    /// <summary>Value of what the recipes use; null when no price list was given.</summary>
    public Costing? Costing { get; init; }

    /// <summary>Q factor, target and tax of the cost sheet.</summary>
    public CostTerms CostTerms { get; init; } = new();

    /// <summary>Title of a batch. Two batches of one dish are told apart by their names on the sheet, then by what they are for.</summary>
    public string TitleOf(Batch batch)
    {
        string title = batch.Weighed.Dish.Title;
        Batch[] same = [.. Batches.Where(b => b.Weighed.Dish.Title == title)];
        if (same.Length < 2)
        {
            return title;
        }

        string Named(Batch b)
        {
            string name = Occasion is { } o && o.Dishes.Length == Batches.Length ? NameOf(b) : b.For;
            return name.Equals(title, StringComparison.OrdinalIgnoreCase) ? title : $"{name} ({title})";
        }

        string own = Named(batch);
        Batch[] twice = [.. same.Where(b => Named(b) == own)];
        return twice.Length < 2 ? own : string.Create(CultureInfo.InvariantCulture, $"{own}, {Array.FindIndex(twice, b => ReferenceEquals(b, batch)) + 1} of {twice.Length}");
    }

    /// <summary>Name of a batch's dish as the occasion's sheet writes it; the card's title without one.</summary>
    public string NameOf(Batch batch)
    {
        int i = Array.FindIndex([.. Batches], b => ReferenceEquals(b, batch));
        return Occasion is { } o && o.Dishes.Length == Batches.Length && i >= 0 ? o.Dishes[i].Name : batch.Weighed.Dish.Title;
    }

    /// <summary>The weighed dish of a batch with every part that its lines take from: what allergens and ingredients are read from.</summary>
    public WeighedDish WholeOf(Batch batch)
    {
        int i = Array.FindIndex([.. Batches], b => ReferenceEquals(b, batch));
        return Occasion is { } o && o.Dishes.Length == Batches.Length && i >= 0 ? MadeAlone.Complete(batch.Weighed, o.Dishes[i].Dish) : batch.Weighed;
    }

    /// <summary>What must be said on sheets made from a plan with faults.</summary>
    internal IEnumerable<Block> Warnings(bool all) => Faults.IsEmpty ? [] : [new CalloutBlock("This plan does not hold everywhere", all ? string.Join("\n", Faults) : "The faults stand on the run sheet. Ask before working from this sheet.")];

    /// <summary>A sheet of this bundle.</summary>
    public Paper Sheet(string kind, string title, params ReadOnlySpan<Block> blocks) => new()
    {
        Id = kind, Kind = kind, Title = title, Dish = Dishes, Occasion = Occasion?.Title ?? Plan?.Title ?? "", Mark = Mark, Language = Language, Blocks = [.. blocks.ToArray().Select(b => b is TableBlock t ? t.Tidy() : b)],
    };
}
