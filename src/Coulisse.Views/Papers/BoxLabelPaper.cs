using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Occasions;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>Labels for what guests take away: what is in it, the whole list of ingredients by weight with allergens in capitals, made and use by. One for each guest; a declared diet has its own.</summary>
public static class BoxLabelPaper
{
    public const string Kind = "box-labels";

    public static Paper? Of(PaperBundle bundle)
    {
        if (bundle.Occasion is not { Guests: > 0 } occasion || occasion.Dishes.Length != bundle.Batches.Length)
        {
            return null;
        }

        // What goes into a box is counted in pieces, at least one for each guest.
        int[] boxed = [.. Enumerable.Range(0, occasion.Dishes.Length).Where(i => occasion.Dishes[i].Unit == "pieces" && occasion.Dishes[i].Count >= occasion.Guests)];
        if (boxed.Length == 0)
        {
            return null;
        }

        ImmutableArray<GuestRow> rows = Guests.Of(occasion, AllergenNames.RegimeOf(bundle.Code));
        List<Block> labels = [];
        foreach (int seat in Enumerable.Range(1, occasion.Guests))
        {
            GuestRow? row = rows.FirstOrDefault(r => r.Seats.Contains(seat));
            labels.Add(row is null ? Plain(bundle, boxed, seat) : Declared(bundle, occasion, boxed, row, seat));
        }

        return bundle.Sheet(Kind, "Box labels", [.. labels]);
    }

    private static LabelBlock Plain(PaperBundle bundle, int[] dishes, int seat) => Label(bundle, dishes, seat, [], []);

    private static LabelBlock Declared(PaperBundle bundle, Occasion occasion, int[] boxed, GuestRow row, int seat)
    {
        int[] dishes = [.. Enumerable.Range(0, occasion.Dishes.Length).Where(i => row.Plates.Any(p => p.Dish == occasion.Dishes[i].Name && p.Served) && (boxed.Contains(i) || occasion.Dishes[i].Unit is not ("plates" or "covers" or "portions")))];
        string[] said = [.. row.Plates.Where(p => boxed.Any(i => occasion.Dishes[i].Name == p.Dish)).Select(p => p.Text).Where(t => t.Length > 0 && t != "as the others").Distinct()];
        string[] found = [.. row.Plates.Where(p => dishes.Any(i => occasion.Dishes[i].Name == p.Dish)).SelectMany(p => p.Found).Select(f => $"{f.Name} ({(f.Status switch { AllergenStatus.Contains => "in it", AllergenStatus.May => "check label", _ => "not known" })})").Distinct()];
        return Label(bundle, dishes, seat, [$"Declared: {row.Declared}.", .. said.Select(s => "Sheet: " + s + ".")], found.Length > 0 ? ["ASK BEFORE HANDING OVER: " + string.Join(", ", found) + "."] : []);
    }

    private static LabelBlock Label(PaperBundle bundle, int[] dishes, int seat, string[] before, string[] warnings)
    {
        AllergenRegime regime = AllergenNames.RegimeOf(bundle.Code);
        List<string> texts = [.. before, .. warnings];
        List<LocalDateTime> made = [];
        List<UseBy> uses = [];
        List<string> keeps = [];
        foreach (int i in dishes)
        {
            Batch b = bundle.Batches[i];
            WeighedDish whole = bundle.WholeOf(b);
            texts.Add($"{bundle.NameOf(b)}. {Ingredients.Of(whole, regime).Text} {AllergenWords.Sentence(Allergens.Of(whole, regime).Dish)}");
            keeps.AddRange(new[] { Keeps.Words(b.Components.Select(c => c.Weighed.Component)) }.Where(k => k.Length > 0));
            made.AddRange(b.Components.Select(c => Made.Of(bundle, b, c.Weighed.Component.Name)?.When).OfType<LocalDateTime>());
            uses.AddRange(b.Components.Where(c => !c.Lines.IsEmpty && c.Weighed.Component.Keeps.Any(k => !k.Quality)).Select(c => UseBy.Of(whole, c.Weighed, name => Made.Of(bundle, b, name)?.When)));
        }

        // One part without a date leaves the whole box without one: it is written by hand, never guessed.
        UseBy? use = uses.Count > 0 && uses.All(u => u.Moment is not null) ? uses.MinBy(u => u.Moment!.Value) : null;
        return new LabelBlock(string.Create(CultureInfo.InvariantCulture, $"Seat {seat}{(dishes.Length == 0 ? ": no box" : "")}"),
        [
            new("Made", made.Count > 0 ? Days.Short(made.Min().Date, bundle.Culture) : ""),
            new("Use by", use is null ? "" : LabelPaper.Until(use, bundle.Culture)),
            new("Keep", Keep(dishes.Select(i => bundle.Batches[i]), [.. keeps.Distinct()], use is not null)),
        ], [.. texts]);
    }

    // Two dishes in one box are kept as the colder of them wants it; how long stands in the date. Without a date the card's words stay.
    private static string Keep(IEnumerable<Batch> batches, string[] words, bool dated)
    {
        double[] cold = [.. batches.SelectMany(b => b.Components).SelectMany(c => c.Weighed.Component.Keeps).Where(k => !k.Quality && k.Where != "freezer" && k.Celsius is >= 0).Select(k => k.Celsius!.Value)];
        return words.Length > 1 && dated && cold.Length > 0 ? string.Create(CultureInfo.InvariantCulture, $"the whole box at {cold.Min():0.#} °C or less") : string.Join("; ", words);
    }
}
