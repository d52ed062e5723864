using System.Collections.Concurrent;
using System.Collections.Immutable;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Needs;

/// <summary>Which items of a price list a food may be: by our food's id, then by its words. More than one is a question, never a guess.</summary>
internal sealed class PriceMatch
{
    private readonly ImmutableArray<Entry> _items;
    private readonly ConcurrentDictionary<string, ImmutableArray<string>> _known = new(StringComparer.Ordinal);

    private static readonly string[] Cuts = ["slice", "disc", "dice", "cube", "stick", "wedge", "segment", "ring", "round", "strip", "chunk", "crumb", "shaving"];

    private readonly Dictionary<string, (PriceNote Note, ImmutableArray<PriceRow> Rows)> _offers;

    private PriceMatch(PriceList prices)
    {
        _offers = prices.Rows.GroupBy(r => r.Item, StringComparer.Ordinal).ToDictionary(g => g.Key, g => (PriceNote.Of(g.First()), g.ToImmutableArray()), StringComparer.Ordinal);
        _items = [.. _offers.Select(o => new Entry(o.Key, Words(o.Key), IdOf(o.Key), o.Value.Note))];
    }

    public static PriceMatch For(PriceList prices) => new(prices);

    /// <summary>Items a need may be; one is an answer.</summary>
    public ImmutableArray<string> Items(Need need) => _known.GetOrAdd(need.FoodId + "|" + need.Food, _ => Find(need));

    public PriceNote Note(string item) => _offers[item].Note;

    /// <summary>Offers of an item.</summary>
    public ImmutableArray<PriceRow> Offers(string item) => _offers[item].Rows;

    /// <summary>Words folded and in the singular, so that "pears, firm" and "firm pear" are one.</summary>
    public static ImmutableHashSet<string> Words(string text) => [.. FoodName.Singular(FoodName.Fold(text)).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(w => w.Trim('%')).Where(w => w.Length > 0)];

    /// <summary>Our food for a name as a list writes it: "butter, unsalted" is tried as it stands, then turned round, then without what follows the comma.</summary>
    public static string? IdOf(string item, string language = "en")
    {
        string[] parts = item.Split(',', 2, StringSplitOptions.TrimEntries);
        string[] tries = parts.Length > 1 ? [item.Replace(",", "", StringComparison.Ordinal), $"{parts[1]} {parts[0]}"] : [item];

        // The surer of both orders: "ginger ground" is only nearly a food, "ground ginger" is one.
        return (tries.Select(t => FoodTable.Default.Match(t, language)).OfType<FoodMatch>().MaxBy(m => m.Confidence) ?? (parts.Length > 1 ? FoodTable.Default.Match(parts[0], language) : null))?.Id;
    }

    private ImmutableArray<string> Find(Need need)
    {
        ImmutableHashSet<string> words = Words(need.Food);
        if (words.IsEmpty)
        {
            return [];
        }

        Entry[] equal = [.. _items.Where(i => i.Words.SetEquals(words))];
        if (equal.Length == 1)
        {
            return [equal[0].Item];
        }

        // A food of the house goes by each of the names its line gives it: the supplier's list may use another than the card.
        if (need.Known is { } own && !ReferenceEquals(FoodTable.Default.Find(own.Id), own))
        {
            Entry[] named = [.. _items.Where(i => own.Names.Values.SelectMany(n => n).Any(n => i.Words.SetEquals(Words(n))))];
            if (named.Length == 1)
            {
                return [named[0].Item];
            }
        }

        // A part of a piece: "lemon zest" where the list sells lemons and says what zest one gives.
        Entry[] parts = [.. _items.Where(i => i.Note.PartOf(need) is { } part && words.Remove(part) is { IsEmpty: false } rest && rest.IsSubsetOf(i.Words))];
        if (parts.Length == 1)
        {
            return [parts[0].Item];
        }

        // A prepared food ("roasted beetroot") is bought as the plain one when the list has no such thing.
        string? plain = IdOf(Whole(need.Food));
        Entry[] same = need.FoodId is null ? [] : [.. _items.Where(i => i.Id == need.FoodId)];
        same = same.Length == 0 && plain is not null ? [.. _items.Where(i => i.Id == plain)] : same;
        if (same.Length > 1 && same.Where(i => words.IsSubsetOf(i.Words)).ToArray() is { Length: 1 } closest)
        {
            return [closest[0].Item];
        }

        if (same.Length > 0)
        {
            return [.. same.Select(i => i.Item)];
        }

        // Words alone, never against two foods that are known to differ.
        Entry[] allowed = [.. _items.Where(i => words.IsSubsetOf(i.Words) && (i.Id is null || (need.FoodId ?? plain) is null || i.Id == need.FoodId || i.Id == plain))];
        return [.. allowed.Select(i => i.Item)];
    }

    // "pear slices" is pear: what a knife does to a food does not change what is bought.
    private static string Whole(string food) => string.Join(' ', food.Split(' ').Where(w => Array.IndexOf(Cuts, FoodName.Singular(FoodName.Fold(w))) < 0));

    private sealed record Entry(string Item, ImmutableHashSet<string> Words, string? Id, PriceNote Note);
}
