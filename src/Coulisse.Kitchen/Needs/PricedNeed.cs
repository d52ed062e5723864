using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Needs;

/// <summary>Needs matched to items of a price list, in the unit the item is sold by.</summary>
/// <param name="Item">Item.</param>
/// <param name="Rows">Offers of it.</param>
/// <param name="Lines">Needs with their amounts to buy, fractions of a piece included.</param>
/// <param name="Amount">What must be bought in all: grams or millilitres, or whole pieces.</param>
internal sealed record PricedItem(string Item, ImmutableArray<PriceRow> Rows, ImmutableArray<(Need Need, decimal Amount)> Lines, decimal Amount)
{
    public bool Pieces => Rows[0].Unit == "each";
}

/// <summary>Matches needs to a price list and turns grams into what is sold.</summary>
internal static class PricedNeeds
{
    public static ImmutableArray<PricedItem> Of(IEnumerable<Need> needs, PriceMatch match, List<Problem> problems)
    {
        List<(string Item, Need Need)> matched = [];
        List<(Need Need, ImmutableArray<string> Items)> open = [];
        foreach (Need need in needs)
        {
            ImmutableArray<string> items = match.Items(need);
            if (items.Length == 1)
            {
                matched.Add((items[0], need));
            }
            else
            {
                open.Add((need, items));
            }
        }

        problems.AddRange(open.GroupBy(o => (o.Need.Food, Items: string.Join(" or ", o.Items))).Select(g => Open(g.Key.Food, g.Key.Items, [.. g.Select(o => o.Need)])));
        List<PricedItem> priced = [];
        foreach (IGrouping<string, (string Item, Need Need)> item in matched.GroupBy(m => m.Item, StringComparer.Ordinal))
        {
            ImmutableArray<PriceRow> rows = match.Offers(item.Key);
            ImmutableArray<Need> own = [.. item.Select(m => m.Need)];
            string[] units = [.. rows.Select(r => r.Unit).Distinct()];
            PriceNote note = match.Note(item.Key);
            if ((units.Length > 1 ? null : units[0] == "each" ? InPieces(item.Key, rows, own, note) : units[0] == "g" ? InGrams(item.Key, rows, own, note) : null) is { } done)
            {
                priced.Add(done);
                continue;
            }

            problems.Add(new("ORD002", rows[0].Line, $"\"{item.Key}\" is sold by {string.Join(" and ", units)} but needed in {(own[0].Pieces > 0 ? "pieces" : "grams")}.", "Give the weight of a piece or of a millilitre, or the number of pieces."));
        }

        return [.. priced];
    }

    // one food is asked about once, however many parts take it
    private static Problem Open(string food, string items, ImmutableArray<Need> needs)
    {
        const int Named = 3;
        string[] uses = [.. needs.Select(n => n.For).Distinct()];
        string used = string.Join(", ", uses.Take(Named)) + (uses.Length > Named ? string.Create(CultureInfo.InvariantCulture, $" and {uses.Length - Named} more") : "");
        int pieces = needs.Sum(n => n.Pieces);
        string amount = string.Join(" and ", new[] { needs.Sum(n => n.Grams) is > 0 and var grams ? string.Create(CultureInfo.InvariantCulture, $"{grams:0.#} g") : "", pieces > 0 ? string.Create(CultureInfo.InvariantCulture, $"{pieces} pieces") : "" }.Where(a => a.Length > 0));
        return items.Length == 0
            ? new("ORD001", 0, $"\"{food}\" is not in the price list; {(amount.Length > 0 ? amount + " are" : "it is")} needed for {used}.", "Add a line for it, or name it as the list does.")
            : new("ORD001", 0, $"\"{food}\" ({used}) may be {items}.", "Name it as the list does.");
    }

    private static PricedItem? InGrams(string item, ImmutableArray<PriceRow> rows, ImmutableArray<Need> own, PriceNote note)
    {
        if (own.Any(n => n.Pieces > 0))
        {
            return null;
        }

        ImmutableArray<(Need, decimal)> lines = [.. own.Select(n => (n, Math.Round((decimal)(n.Grams / note.ShareFor(n)), 6)))];
        return new(item, rows, lines, lines.Sum(l => l.Item2));
    }

    // Whole pieces are rounded up once for each way of using them: discs of one size, one part of the fruit, or plain weight.
    private static PricedItem? InPieces(string item, ImmutableArray<PriceRow> rows, ImmutableArray<Need> own, PriceNote note)
    {
        List<(Need, decimal)> lines = [];
        decimal counted = 0;
        Dictionary<string, List<(Need Need, double Share)>> ways = new(StringComparer.Ordinal);
        foreach (Need n in own)
        {
            if (n.Pieces > 0)
            {
                lines.Add((n, n.Pieces));
                counted += n.Pieces;
                continue;
            }

            (string way, double pieces) = note.PartOf(n) is { } part ? (part, n.Grams / note.Parts[part])
                : n.Cut is { } cut && note.DiscsEach.FirstOrDefault(d => Math.Abs(d.Millimetres - cut.Millimetres) < 0.01) is { Count: > 0 } discs ? ("discs", cut.Count / discs.Count)
                : ByWeight(n, note);
            if (way.Length == 0)
            {
                return null;
            }

            if (n.FromWhole)
            {
                decimal whole = (decimal)Math.Ceiling(pieces - 1e-9);
                lines.Add((n, whole));
                counted += whole;
                continue;
            }

            if (!ways.TryGetValue(way, out List<(Need Need, double Share)>? list))
            {
                ways.Add(way, list = []);
            }

            list.Add((n, pieces));
        }

        // Parts come from the same pieces, so the part that asks for most decides and carries the price; discs and weight come from pieces of their own.
        (string Way, decimal Pieces)[] parts = [.. ways.Where(w => note.Parts.ContainsKey(w.Key)).Select(w => (w.Key, Whole(w.Value)))];
        string leading = parts.Length == 0 ? "" : parts.OrderByDescending(p => ways[p.Way].Sum(x => x.Share)).ThenBy(p => p.Way, StringComparer.Ordinal).First().Way;
        counted += parts.Length == 0 ? 0 : parts.Max(p => p.Pieces);
        foreach ((string way, List<(Need Need, double Share)> list) in ways)
        {
            bool part = note.Parts.ContainsKey(way);
            counted += part ? 0 : Whole(list);
            lines.AddRange(list.Select(l => (l.Need, part && way != leading ? 0 : Math.Round((decimal)l.Share, 9))));
        }

        return new(item, rows, [.. lines], counted);
    }

    // A piece weighs as bought, with its skin and root: without a share of its own the food's edible share counts. Our table's piece is its edible part.
    private static (string, double) ByWeight(Need n, PriceNote note)
    {
        Food? food = n.Known ?? ((n.FoodId ?? PriceMatch.IdOf(n.Food)) is { } id ? FoodTable.Default.Find(id) : null);
        double share = note.ShareFor(n) is < 1 and var stated ? stated : food?.EdiblePercent is > 0 and <= 100 and var edible ? edible / 100 : 1;
        return note.GramsEach is { } each ? ("grams", n.Grams / share / each)
            : food?.Units.TryGetValue("piece", out Held? piece) == true && piece.Value > 0 ? ("grams", n.Grams / piece.Value)
            : ("", 0);
    }

    private static decimal Whole(List<(Need Need, double Share)> list) => (decimal)Math.Ceiling(list.Sum(l => l.Share) - 1e-9);
}
