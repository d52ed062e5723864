using System.Collections.Immutable;

namespace Coulisse.Views.Papers;

/// <summary>All papers that a bundle holds enough for, and which of those printed before no longer hold.</summary>
public static class PaperShelf
{
    /// <summary>Every kind that can be asked for, in the order in which they are printed.</summary>
    public static ImmutableArray<string> Kinds { get; } = [CardPaper.Kind, BatchPaper.Kind, PlatingPaper.Kind, AllergenPaper.Kind, OrderPaper.Kind, ReceivingPaper.Kind, CostPaper.Kind, KitPaper.Kind, LoadPaper.Kind, PrepListPaper.Kind, TwinListPaper.Kind, RunSheetPaper.Kind, IfThenPaper.Kind, HelperPaper.Kind, ControlLogPaper.Kind, LabelPaper.Kind, BoxLabelPaper.Kind, HandoutPaper.Kind, RecordPaper.Kind];

    /// <summary>The papers of a bundle.</summary>
    public static ImmutableArray<Paper> Papers(PaperBundle bundle) => Named(
    [
        .. CardPaper.Of(bundle),
        .. BatchPaper.Of(bundle),
        .. PlatingPaper.Of(bundle),
        .. One(AllergenPaper.Of(bundle)),
        .. One(OrderPaper.Of(bundle)),
        .. One(ReceivingPaper.Of(bundle)),
        .. One(CostPaper.Of(bundle)),
        .. One(KitPaper.Of(bundle)),
        .. One(LoadPaper.Of(bundle)),
        .. PrepListPaper.Of(bundle),
        .. One(TwinListPaper.Of(bundle)),
        .. One(RunSheetPaper.Of(bundle)),
        .. IfThenPaper.Of(bundle),
        .. HelperPaper.Of(bundle),
        .. One(ControlLogPaper.Of(bundle)),
        .. One(LabelPaper.Of(bundle)),
        .. One(BoxLabelPaper.Of(bundle)),
        .. HandoutPaper.Of(bundle),
        .. One(RecordPaper.Of(bundle)),
    ]);

    /// <summary>Name of a person's brief among the papers of an occasion.</summary>
    public static string BriefOf(string person) => $"{HelperPaper.Kind}-{Slug.Of(person)}";

    /// <summary>Sheets that hang on the wall but say something else by now, or that nothing prints any more.</summary>
    /// <param name="hung">Id and content of what was printed.</param>
    /// <param name="now">What would be printed now.</param>
    public static ImmutableArray<string> Stale(IReadOnlyDictionary<string, string> hung, IEnumerable<Paper> now)
    {
        Dictionary<string, string> fresh = now.ToDictionary(p => p.Id, p => p.Content, StringComparer.Ordinal);
        return [.. hung.Where(h => fresh.GetValueOrDefault(h.Key) != h.Value).Select(h => h.Key).Order(StringComparer.Ordinal)];
    }

    /// <summary>Two dishes or two people of one name get sheets of two names.</summary>
    private static ImmutableArray<Paper> Named(IEnumerable<Paper> papers)
    {
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        return [.. papers.Select(p => (seen[p.Id] = seen.GetValueOrDefault(p.Id) + 1) is > 1 and var n ? p with { Id = p.Id + "-" + n.ToString(System.Globalization.CultureInfo.InvariantCulture) } : p)];
    }

    private static IEnumerable<Paper> One(Paper? paper) => paper is null ? [] : [paper];
}
