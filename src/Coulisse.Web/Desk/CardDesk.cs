using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Plating;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Foods;
using Coulisse.Views.Web;

namespace Coulisse.Web.Desk;

/// <summary>From the text of a card to what stands in its margins: the one place where the desk calls the computing rooms.</summary>
internal static class CardDesk
{
    /// <summary>Reads, weighs, scales and judges a card and lays it out by line. What was asked for and cannot be had is named; the card is then shown as written.</summary>
    /// <param name="text">The card.</param>
    /// <param name="scaledFor">The sentence above it; empty as written.</param>
    /// <param name="measures">Size system; empty lets the card decide.</param>
    /// <param name="code">Code of practice.</param>
    /// <param name="foods">Foods of this kitchen; null for those that ship.</param>
    /// <param name="left">Questions the chef has left as they are.</param>
    /// <param name="learnt">What trials of the card taught; none for a card that is not kept.</param>
    public static Parsed<(Dish Dish, MarginsView View)> Margins(string text, string scaledFor, string measures, string code, FoodTable? foods = null, IReadOnlyCollection<string>? left = null, ImmutableArray<LearntCard> learnt = default)
        => CardReader.Read(new CardText(text.ReplaceLineEndings("\n"))).Match<Parsed<(Dish, MarginsView)>>(
            dish => new Parsed<(Dish, MarginsView)>.Ok((With(dish, foods), Lay(LearntCard.Onto(With(dish, foods), learnt.IsDefault ? [] : learnt), scaledFor.Trim(), measures, code, left))),
            problems => new Parsed<(Dish, MarginsView)>.Failed(problems));

    /// <summary>A card laid out for the scale.</summary>
    /// <param name="id">Card.</param>
    /// <param name="version">Its version.</param>
    /// <param name="text">Its text.</param>
    /// <param name="scaledFor">The sentence above it; empty as written.</param>
    /// <param name="measures">Size system; empty lets the card decide.</param>
    /// <param name="kit">Kit of the kitchen, for its scales; null when none is kept.</param>
    /// <param name="foods">Foods to weigh with; null the table that ships.</param>
    public static Parsed<WeighOutView> WeighOut(string id, int version, string text, string scaledFor, string measures, IEnumerable<SheetKit>? kit = null, FoodTable? foods = null)
    {
        KitchenScale[] scales = [.. (kit ?? []).Select(KitchenScale.Of).OfType<KitchenScale>()];
        List<string> faults = [];
        return Batch(text, scaledFor, measures, faults, foods).Match<Parsed<WeighOutView>>(
            batch => new Parsed<WeighOutView>.Ok(WeighOutView.From(id, version, batch, faults.Count == 0 ? scaledFor.Trim() : "", [.. faults], CultureInfo.GetCultureInfo("en-GB"), scales.Length == 0 ? [] : ScaleCheck.Of(batch, scales))),
            problems => new Parsed<WeighOutView>.Failed(problems));
    }

    /// <summary>A card weighed and scaled; as written when what was asked for cannot be had.</summary>
    public static Parsed<Batch> Batch(string text, string scaledFor, string measures, List<string>? faults = null, FoodTable? foods = null)
        => CardReader.Read(new CardText(text.ReplaceLineEndings("\n"))).Match(
            dish =>
            {
                faults ??= [];
                WeighedDish weighed = Weighing.Weigh(With(dish, foods), System(measures, faults));
                return scaledFor.Trim().Length > 0 && Scale(weighed, scaledFor.Trim(), faults) is { } wanted ? new Parsed<Batch>.Ok(wanted) : Scaling.Scale(weighed, new ScaleTo.Factor(1));
            },
            problems => new Parsed<Batch>.Failed(problems));

    private static Dish With(Dish dish, FoodTable? foods) => foods is null ? dish : dish with { Foods = foods };

    private static MarginsView Lay(Dish dish, string scaledFor, string measures, string code, IReadOnlyCollection<string>? left)
    {
        List<string> faults = [];
        string known = DeskView.Codes.Any(c => c.Key == code) ? code : DeskView.Codes[0].Key;
        WeighedDish weighed = Weighing.Weigh(dish, System(measures, faults));
        Batch? batch = scaledFor.Length > 0 ? Scale(weighed, scaledFor, faults) : null;
        return MarginsView.From(weighed, batch, SafetyReview.Review(weighed, known), CultureInfo.GetCultureInfo("en-GB"), Balanced(weighed, batch), left) with { Faults = [.. faults, .. Impossible(weighed)] };
    }

    // What no figure may be built on: the mixture and the label refuse it, so the card says it while it is written.
    private static IEnumerable<string> Impossible(WeighedDish weighed) => MadeDish.Faults(weighed).Select(p => string.Create(CultureInfo.InvariantCulture, $"Line {p.Line}: {p.Message} {p.Hint} ({p.Code})"));

    // Whether the parts come out even for the plates that the card, or the sentence above it, asks for.
    private static ImmutableArray<PartBalance> Balanced(WeighedDish weighed, Batch? batch)
        => weighed.Dish.Plate.IsEmpty || weighed.Dish.Yields.FirstOrDefault(y => y.Unit is "portions" or "plates" or "covers" && y.Amount > 0) is not { } plates ? []
        : batch is not null ? PartBalance.Of(batch, plates.Amount * batch.Factor)
        : Scaling.Scale(weighed, new ScaleTo.Factor(1)).Match(b => PartBalance.Of(b, plates.Amount), _ => []);

    private static string? System(string measures, List<string> faults)
    {
        string? system = DeskView.Measures.Any(m => m.Key == measures && m.Key.Length > 0) ? measures : null;
        if (measures.Length > 0 && system is null)
        {
            faults.Add($"“{measures}” are no spoons known here; the card decides.");
        }

        return system;
    }

    private static Batch? Scale(WeighedDish weighed, string scaledFor, List<string> faults)
    {
        if (ScaleSentence.Read(scaledFor) is not { } to)
        {
            faults.Add($"“{scaledFor}” is no amount to scale to. {ScaleSentence.Hint}");
            return null;
        }

        return Scaling.Scale(weighed, to).Match<Batch?>(b => b, problems =>
        {
            faults.AddRange(problems.Select(p => $"{p.Message} {p.Hint} ({p.Code})"));
            return null;
        });
    }
}
