using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Needs;

/// <summary>Everything that must be bought, line by line, with what could not be counted.</summary>
/// <param name="Needs">Foods with their grams, each with the dish and component it is for.</param>
/// <param name="Problems">Lines that have an amount but no weight, and takings from a component nobody makes.</param>
/// <param name="NotCounted">Lines without an amount ("salt to taste"), in words: nothing was bought for them.</param>
public sealed record NeedsList(ImmutableArray<Need> Needs, ImmutableArray<Problem> Problems, ImmutableArray<string> NotCounted)
{
    /// <summary>Dish and component of parts made alone, from a component that their own batch does not hold.</summary>
    public ImmutableHashSet<(string Dish, string Component)> Alone { get; init; } = [];

    /// <summary>Sums up batches and what is needed besides them.</summary>
    /// <param name="batches">Batches of the dishes.</param>
    /// <param name="extra">Twins, diets, spares.</param>
    /// <remarks>
    /// Water costs nothing and is not bought. A line that takes from another component of the same dish counts nothing again; when that component
    /// is not in the batch (a part asked for by name alone), its lines are taken in proportion, and come on top of what other batches make.
    /// </remarks>
    public static NeedsList From(IEnumerable<Batch> batches, IEnumerable<Need>? extra = null)
    {
        Builder b = new([.. batches]);
        b.All();
        b.Needs.AddRange(extra ?? []);
        return new(b.Needs.ToImmutable(), b.Problems.ToImmutable(), b.NotCounted.ToImmutable()) { Alone = [.. b.Alone] };
    }

    private sealed class Builder(ImmutableArray<Batch> batches)
    {
        public ImmutableArray<Need>.Builder Needs { get; } = ImmutableArray.CreateBuilder<Need>();

        public ImmutableArray<Problem>.Builder Problems { get; } = ImmutableArray.CreateBuilder<Problem>();

        public ImmutableArray<string>.Builder NotCounted { get; } = ImmutableArray.CreateBuilder<string>();

        public HashSet<(string, string)> Alone { get; } = [];

        public void All()
        {
            foreach (Batch batch in batches)
            {
                foreach (BatchComponent component in batch.Components)
                {
                    foreach (BatchLine line in component.Lines)
                    {
                        Line(batch, component, line);
                    }
                }
            }
        }

        private void Line(Batch batch, BatchComponent component, BatchLine line)
        {
            FoodAmount food = line.Weighed.Food;
            Dish dish = batch.Weighed.Dish;
            if (food.FromComponent is { } from)
            {
                if (!batch.Components.Any(c => Same(c, from)))
                {
                    Taken(batch, component, line, from);
                }
            }
            else if (Buy(line.Weighed, dish, out Food? row, out string? id))
            {
                if (line.Weighed.Grade != WeightGrade.Unknown)
                {
                    Needs.Add(Need(dish, component.Weighed.Component, line.Weighed, line.Grams, component.Factor, row, id));
                }
                else if (food.Amount is null)
                {
                    NotCounted.Add($"{dish.Title}: {line.Weighed.Source.Text}");
                }
                else
                {
                    Problems.Add(new("ORD003", line.Weighed.Source.Span.Line, $"“{line.Weighed.Source.Text}” of {dish.Title} has no weight.", "Write its grams into the card."));
                }
            }
        }

        // 120 g of another component that this batch does not hold: its own lines, in that proportion.
        private void Taken(Batch batch, BatchComponent component, BatchLine line, string from)
        {
            WeighedComponent? source = batches.Where(b => b.Weighed.Dish.Title == batch.Weighed.Dish.Title).SelectMany(b => b.Components).FirstOrDefault(c => Same(c, from))?.Weighed;
            double taken = line.Weighed.Food.Grams is { } g ? g * component.Factor : line.Grams;
            if (source is null || source.Grams <= 0 || taken <= 0)
            {
                Problems.Add(new("ORD004", line.Weighed.Source.Span.Line, $"“{line.Weighed.Source.Text}” is taken from “{from}”, which no batch makes or which has no weight.", "Add the component to the batches, or write what it holds."));
                return;
            }

            Alone.Add((batch.Weighed.Dish.Title, component.Weighed.Component.Name));
            foreach (WeighedLine l in source.Lines.Where(l => l.Grade != WeightGrade.Unknown))
            {
                if (l.Food.FromComponent is null && Buy(l, batch.Weighed.Dish, out Food? row, out string? id))
                {
                    Needs.Add(Need(batch.Weighed.Dish, component.Weighed.Component, l, l.Grams * taken / source.Grams, taken / source.Grams, row, id));
                }
            }
        }

        private static bool Same(BatchComponent c, string name) => c.Weighed.Component.Name.Equals(name, StringComparison.OrdinalIgnoreCase);

        private static bool Buy(WeighedLine line, Dish dish, out Food? row, out string? id)
        {
            row = line.Known ?? dish.Row(line.Food);
            id = row?.Id ?? line.Food.FoodId;
            return id != "water";
        }

        private static Need Need(Dish dish, Component component, WeighedLine line, double grams, double factor, Food? row, string? id)
        {
            string where = component.Name.Length > 0 ? component.Name : dish.Title;
            double? share = line.Food.BoughtGrams is > 0 and var bought && line.Grams > 0 && bought >= line.Grams ? line.Grams / bought : null;
            return new(line.Food.Food, grams, where)
            {
                FoodId = id,
                Known = row,
                As = line.Source.Text,
                StatedShare = share,
                Cut = PriceNote.CutIn(line.Source.Text) is { } cut ? cut with { Count = cut.Count * factor } : null,
                Dish = dish.Title,
                Component = component.Name,
            };
        }
    }

    /// <summary>Needs that a diet table states in grams beside the recipes ("4 g toasted pumpkin seeds instead").</summary>
    /// <param name="dish">Column of the table, or the dish, in words.</param>
    /// <param name="text">What the guest gets.</param>
    /// <param name="seats">How many guests get it.</param>
    /// <param name="madeHere">Words of what the kitchen makes anyway (component names, notes): a share of these is not bought.</param>
    /// <param name="foods">Foods of the house; null for those that ship.</param>
    public static (ImmutableArray<Need> Needs, ImmutableArray<Problem> Problems) Diet(string dish, string text, int seats, IEnumerable<string> madeHere, FoodTable? foods = null)
    {
        FoodTable table = foods ?? FoodTable.Default;
        ImmutableArray<Need>.Builder needs = ImmutableArray.CreateBuilder<Need>();
        ImmutableArray<Problem>.Builder problems = ImmutableArray.CreateBuilder<Problem>();
        foreach (string clause in text.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            string[] words = clause.Split(' ');
            if (words.Length < 3 || words[1] is not ("g" or "grams") || !double.TryParse(words[0], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double grams))
            {
                continue;
            }

            string food = string.Join(' ', words.Skip(2));
            foreach (string end in (string[])[" instead", " in place of"])
            {
                int at = food.IndexOf(end, StringComparison.OrdinalIgnoreCase);
                food = at > 0 ? food[..at] : food;
            }

            string bare = food.StartsWith("of the ", StringComparison.OrdinalIgnoreCase) ? food[7..] : food.StartsWith("of ", StringComparison.OrdinalIgnoreCase) ? food[3..] : food;
            if (table.Match(bare, "en") is { } match)
            {
                needs.Add(new(bare, grams * seats, $"{dish}, diet") { FoodId = match.Id, Known = table.Find(match.Id), As = clause, Dish = dish, Role = NeedRole.Diet });
            }
            else if (!madeHere.Any(m => m.Contains(bare, StringComparison.OrdinalIgnoreCase)))
            {
                problems.Add(new("ORD005", 0, $"“{clause}” for a diet names no food that is known and nothing the cards make.", "Name the food as the price list does."));
            }
        }

        return (needs.ToImmutable(), problems.ToImmutable());
    }
}
