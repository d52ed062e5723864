using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Slot;
using Coulisse.Kitchen.Plating;

namespace Coulisse.Kitchen.Needs;

/// <summary>One part of a dish with all that stands for and against it.</summary>
/// <param name="Dish">Dish.</param>
/// <param name="Row">Made, needed, over, the smallest change.</param>
/// <param name="RawGrams">What its lines weigh, parts taken from other components included.</param>
/// <param name="MadeGrams">What it makes, grams; null when the card counts pieces without a weight.</param>
/// <param name="Without">Plates that go without it, by diet.</param>
/// <param name="Taken">Taken from it for tasting and trials, in the row's unit; counted among what is needed.</param>
/// <param name="Twins">Twins of it: those of the same batch are on the plates already, the others are made besides.</param>
public sealed record PartBalance(string Dish, BalanceRow Row, double RawGrams, double? MadeGrams, int Without, double Taken, ImmutableArray<string> Twins)
{
    /// <summary>Lost between the scale and the plate (liquor poured off, water driven off, trim, what sticks), percent of the lines; null when not known.</summary>
    public double? LossPercent => MadeGrams is { } made && RawGrams > 0 ? (RawGrams - made) / RawGrams * 100 : null;

    /// <summary>Unit of both figures, as said of several.</summary>
    public string Units => Row.Unit is "g" or "kg" or "ml" || Row.Unit.EndsWith('s') ? Row.Unit : Row.Unit + "s";

    /// <summary>In words: what to do so that it comes out even.</summary>
    public string Remedy => Row.Verdict switch
    {
        BalanceVerdict.Even => "",
        BalanceVerdict.Short => string.Create(CultureInfo.InvariantCulture, $"make {Row.Factor:0.###} times as much: {Row.Needed - (Row.MadeLeast ?? Row.Made):0.#} {Units} more"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{Row.Factor:0.###} times as much is enough: {Row.Over:0.#} {Units} less"),
    };

    /// <summary>Grams a component makes once it is done: as the card says, or its pieces by their weight on the plate; null when neither is stated.</summary>
    public static double? GramsMade(Batch batch, BatchComponent component)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(component);
        string name = component.Weighed.Component.Name;
        ImmutableArray<CardYield> makes = component.Weighed.Component.Makes;
        return makes.FirstOrDefault(m => m.Unit == "g" && m.Amount > 0) is { } grams ? grams.Amount * component.Factor
            : makes.FirstOrDefault(m => m.Unit != "g" && m.Amount > 0) is not { } pieces ? null
            : pieces.EachGrams is { } each ? pieces.Amount * component.Factor * each
            : batch.Weighed.Dish.Plate.FirstOrDefault(p => name.Equals(p.Component, StringComparison.OrdinalIgnoreCase)) is { Pieces: > 0 and var n, Grams: > 0 and var g } ? pieces.Amount * component.Factor * g / n
            : null;
    }

    /// <summary>Parts of one batch for so many plates.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="covers">Plates.</param>
    /// <param name="without">Plates that go without a component.</param>
    /// <param name="taken">Taken from components for tasting and trials, in the unit each is made in.</param>
    /// <param name="twins">Twins by component, in words.</param>
    /// <param name="allowedOverPercent">More than this is called over.</param>
    public static ImmutableArray<PartBalance> Of(Batch batch, double covers, IReadOnlyDictionary<string, int>? without = null, IReadOnlyDictionary<string, double>? taken = null, ILookup<string, string>? twins = null, double allowedOverPercent = 15)
    {
        ArgumentNullException.ThrowIfNull(batch);
        return [.. Balance.Of(batch, covers, without, allowedOverPercent).Select(row =>
        {
            BatchComponent c = batch.Components.First(x => x.Weighed.Component.Name.Equals(row.Component, StringComparison.OrdinalIgnoreCase));
            double off = taken?.FirstOrDefault(t => Meant(t.Key, row.Component)).Value ?? 0;
            return new PartBalance(batch.Weighed.Dish.Title, Balance.Row(row.Component, row.Unit, row.Made, row.Needed + off, allowedOverPercent, row.MadeLeast) with { MadeMost = row.MadeMost, Learnt = row.Learnt }, c.Grams, GramsMade(batch, c),
                without?.GetValueOrDefault(row.Component) ?? 0, off, [.. twins?[row.Component] ?? []]);
        })];
    }

    /// <summary>Every dish of an occasion: the parts of plates, and the pieces of what is cut from whole vessels.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="taken">Taken for tasting and trials.</param>
    /// <param name="allowedOverPercent">More than this is called over.</param>
    public static Parsed<ImmutableArray<PartBalance>> Of(Occasion occasion, IReadOnlyDictionary<string, double>? taken = null, double allowedOverPercent = 15)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        return OccasionBatches.Make(occasion).Match<Parsed<ImmutableArray<PartBalance>>>(
            batches =>
            {
                ImmutableArray<GuestRow> guests = Guests.Of(occasion, AllergenNames.RegimeOf("au"));
                ImmutableArray<TwinNeed> live = occasion.People.IsEmpty || occasion.SlotLength <= NodaTime.Duration.Zero ? [] : LiveSlot.Decide(occasion).Twins;
                return new Parsed<ImmutableArray<PartBalance>>.Ok([.. occasion.Dishes.Zip(batches).SelectMany(d => OfDish(d.First, d.Second, guests, live, taken, allowedOverPercent))]);
            },
            problems => new Parsed<ImmutableArray<PartBalance>>.Failed(problems));
    }

    private static ImmutableArray<PartBalance> OfDish(OccasionDish dish, Batch batch, ImmutableArray<GuestRow> guests, ImmutableArray<TwinNeed> live, IReadOnlyDictionary<string, double>? taken, double allowed)
    {
        ILookup<string, string> twins = live.Where(t => t.Dish == dish.Name || t.Dish == dish.Dish.Title).ToLookup(
            t => t.Part ?? t.Twin.Component,
            t => string.Create(CultureInfo.InvariantCulture, $"twin {t.Twin.Number}{(t.Twin.Grams is { } g ? $", {g:0.#} g" : "")}, {(t.OwnBatch ? "a batch of its own" : t.Beyond ? "made besides" : "of this batch")}"), StringComparer.OrdinalIgnoreCase);
        if (!dish.Dish.Plate.IsEmpty && dish.Unit is "plates" or "portions" or "covers")
        {
            Dictionary<string, int> without = guests.SelectMany(g => g.Plates.Where(p => p.Dish == dish.Name).SelectMany(p => p.Without.Select(w => (Word: w, Seats: g.Seats.Length))))
                .Select(w => (Name: dish.Dish.Components.FirstOrDefault(c => Meant(w.Word, c.Name))?.Name, w.Seats)).Where(w => w.Name is not null)
                .GroupBy(w => w.Name!, StringComparer.OrdinalIgnoreCase).ToDictionary(w => w.Key, w => w.Sum(x => x.Seats), StringComparer.OrdinalIgnoreCase);
            return Of(batch, dish.Count, without, taken, twins, allowed);
        }

        if (dish.Unit != "pieces" || dish.Dish.Yields.FirstOrDefault(y => y.Unit == "pieces" && y.Amount > 0) is not { } pieces)
        {
            return [];
        }

        int none = guests.Where(g => g.Plates.Any(p => p.Dish == dish.Name && !p.Served)).Sum(g => g.Seats.Length);
        double made = pieces.Amount * OccasionBatches.WholeVessels(dish.Dish, dish.Count, "pieces");
        double off = taken?.FirstOrDefault(t => Meant(t.Key, dish.Name)).Value ?? 0;
        BalanceRow row = Balance.Row(dish.Name, "pieces", made, dish.Count - none + off, allowed);

        // A tin is baked whole: what is over cannot be left away, only served or kept.
        bool fewer = made - pieces.Amount >= row.Needed;
        return [new PartBalance(dish.Dish.Title, fewer || row.Verdict == BalanceVerdict.Short ? row : row with { Verdict = BalanceVerdict.Even, Factor = 1 }, batch.Components.Sum(c => c.Lines.Where(l => l.Weighed.Food.FromComponent is null).Sum(l => l.Grams)), pieces.EachGrams is { } each ? each * made : null, none, off, [.. twins.SelectMany(t => t)])];
    }

    // "C1" means "C1 Apple gel"; so does the whole name.
    private static bool Meant(string word, string name) => name.Equals(word, StringComparison.OrdinalIgnoreCase) || name.StartsWith(word + " ", StringComparison.OrdinalIgnoreCase);
}
