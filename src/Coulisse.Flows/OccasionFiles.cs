using System.Collections.Immutable;
using System.Text;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Matter.Foods;
using NodaTime;

namespace Coulisse.Flows;

/// <summary>Loads an occasion sheet with the cards it names from files.</summary>
public static class OccasionFiles
{
    /// <summary>Reads the sheet and every card it names, relative to the sheet's folder.</summary>
    /// <exception cref="IOException">The sheet cannot be read.</exception>
    public static Parsed<Occasion> Load(string sheetPath, LocalDate today)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(sheetPath)) ?? ".";
        return OwnFoodsBeside.In(folder).Match(
            house => Build(File.ReadAllText(sheetPath, Encoding.UTF8), today, path => ReadText(Path.Combine(folder, path)), null, path => Own(Path.GetDirectoryName(Path.GetFullPath(Path.Combine(folder, path))) ?? folder, folder, house)),
            problems => new Parsed<Occasion>.Failed(problems));
    }

    // A table beside the card goes before the one beside the sheet.
    private static Parsed<FoodTable> Own(string cards, string folder, FoodTable house)
        => string.Equals(cards, Path.GetFullPath(folder), StringComparison.Ordinal) ? new Parsed<FoodTable>.Ok(house) : OwnFoodsBeside.In(cards, house);

    /// <summary>Builds an occasion from a sheet's text; <paramref name="text"/> gives the text of a card by the path or name the sheet uses.</summary>
    /// <param name="sheet">Text of the sheet.</param>
    /// <param name="today">Day from which a weekday is counted.</param>
    /// <param name="text">Finds a card.</param>
    /// <param name="house">Hands and kit of the kitchen, for what the sheet is silent on; null for none.</param>
    /// <param name="foods">Foods of a card by its path; null for those that ship.</param>
    public static Parsed<Occasion> Build(string sheet, LocalDate today, Func<string, string?> text, OccasionSheet? house = null, Func<string, Parsed<FoodTable>>? foods = null)
        => OccasionReader.Read(sheet, today).Match(s => Build(house is null ? s : House.Under(s, house), text, [], foods), p => new Parsed<Occasion>.Failed(p));

    /// <summary>Plans cards alone by one sentence ("53 plates, Saturday 14:00, 25 minutes, Ada and two others").</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="today">Day from which a weekday is counted.</param>
    /// <param name="cards">Cards with their names.</param>
    /// <param name="house">Hands and kit of the kitchen; null for none.</param>
    /// <param name="foods">Foods of a card by its name; null for those that ship.</param>
    public static Parsed<Occasion> Sentence(string sentence, LocalDate today, ImmutableArray<(string Path, string Text)> cards, OccasionSheet? house = null, Func<string, Parsed<FoodTable>>? foods = null)
        => OccasionReader.Read(sentence, today).Match(s =>
        {
            List<Problem> problems = [];
            ImmutableArray<(string, Dish)>.Builder dishes = ImmutableArray.CreateBuilder<(string, Dish)>();
            foreach ((string path, string card) in cards)
            {
                CardReader.Read(new CardText(card, path)).Match(d => { dishes.Add((path, d with { Foods = Laid(foods, path, problems) })); return 0; }, p => { problems.AddRange(p); return 0; });
            }

            return problems.Count > 0 ? new Parsed<Occasion>.Failed([.. problems]) : Sound(OccasionBuilder.Build(house is null ? s : House.Under(s, house), _ => null, dishes.ToImmutable()));
        }, p => new Parsed<Occasion>.Failed(p));

    // A table that cannot be read is said once; no card is weighed with half of it.
    private static FoodTable Laid(Func<string, Parsed<FoodTable>>? foods, string path, List<Problem> problems)
        => foods is null ? FoodTable.Default : foods(path).Match(t => t, p => { problems.AddRange(p.Where(x => !problems.Contains(x))); return FoodTable.Default; });

    private static Parsed<Occasion> Build(OccasionSheet sheet, Func<string, string?> text, ImmutableArray<(string, Dish)> alone, Func<string, Parsed<FoodTable>>? foods)
    {
        List<Problem> problems = [];
        Dictionary<string, Dish?> read = new(StringComparer.Ordinal);
        Dish? Card(string path)
        {
            if (!read.TryGetValue(path, out Dish? dish))
            {
                dish = text(path) is { } card
                    ? CardReader.Read(new CardText(card, path)).Match<Dish?>(d => d with { Foods = Laid(foods, path, problems) }, p => { problems.AddRange(p.Select(x => x with { Message = path + ": " + x.Message })); return null; })
                    : null;
                read[path] = dish;
            }

            return dish;
        }

        Parsed<Occasion> built = OccasionBuilder.Build(sheet, Card, alone);
        return problems.Count == 0 ? Sound(built) : new Parsed<Occasion>.Failed([.. problems]);
    }

    // Parts that take from one another in a circle, a weight of nothing, shares above the whole: no plan, order, cost or paper is built on such a card.
    private static Parsed<Occasion> Sound(Parsed<Occasion> built)
    {
        if (built is not Parsed<Occasion>.Ok(var occasion))
        {
            return built;
        }

        Problem[] faults = [.. occasion.Dishes.DistinctBy(d => d.Dish).SelectMany(d => Soundness.Of(Weighing.Weigh(d.Dish)).Select(p => p with { Message = $"{(d.CardPath.Length > 0 ? d.CardPath : d.Name)}: {p.Message}" }))];
        return faults.Length == 0 ? built : new Parsed<Occasion>.Failed([.. faults]);
    }

    private static string? ReadText(string path)
    {
        try
        {
            return File.Exists(path) ? File.ReadAllText(path, Encoding.UTF8) : null;
        }
        catch (UnauthorizedAccessException)
        {
            return null;
        }
    }
}
