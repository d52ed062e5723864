using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Formulas.Targets;

/// <summary>How far a named line may move.</summary>
/// <param name="Words">Its name or card line; a food that is not on the card is added.</param>
/// <param name="Low">Least grams; null for half of what is written.</param>
/// <param name="High">Most grams; null for twice what is written (a fifth of the batch for a food that is added).</param>
public sealed record MayMove(string Words, double? Low = null, double? High = null)
{
    /// <summary>Reads a line as a person writes it: "water", "water=0..400"; null when its bounds are none.</summary>
    public static MayMove? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        int eq = text.LastIndexOf('=');
        if (eq < 0)
        {
            return text.Trim().Length > 0 ? new MayMove(text.Trim()) : null;
        }

        string[] ends = text[(eq + 1)..].Replace("g", "", StringComparison.OrdinalIgnoreCase).Split("..", StringSplitOptions.TrimEntries);
        return ends.Length == 2 && double.TryParse(ends[0], NumberStyles.Float, CultureInfo.InvariantCulture, out double low) && double.TryParse(ends[1], NumberStyles.Float, CultureInfo.InvariantCulture, out double high) && low >= 0 && high >= low
            ? new MayMove(text[..eq].Trim(), low, high)
            : null;
    }
}

/// <summary>Targets of one component of a card: which lines move, and the dish with its new grams.</summary>
public static class ComponentTargets
{
    /// <summary>The task of a component.</summary>
    /// <param name="dish">The dish, weighed.</param>
    /// <param name="component">Component's name or code; null when the card has one.</param>
    /// <param name="targets">What is wanted.</param>
    /// <param name="moves">Lines that may move; empty lets every food move between half and twice its grams, setting agents and what is taken from other components excepted.</param>
    /// <param name="keepWeight">True when the component keeps its weight.</param>
    public static Parsed<TargetTask> Of(WeighedDish dish, string? component, ImmutableArray<Target> targets, ImmutableArray<MayMove> moves, bool keepWeight)
    {
        ArgumentNullException.ThrowIfNull(dish);
        if (Soundness.Of(dish) is { IsEmpty: false } faults)
        {
            return new Parsed<TargetTask>.Failed(faults);
        }

        WeighedComponent[] able = [.. dish.Components.Where(c => c.Lines.Any(l => l.Grams > 0))];
        WeighedComponent? part = component is null ? (able.Length == 1 ? able[0] : null) : able.FirstOrDefault(c => ReferenceEquals(c.Component, Takes.Find(dish.Dish, component)));
        if (part is null)
        {
            return Refuse("MIX005", 0, component is null ? "The card has several components." : $"No component with weights is “{component}”.", "Name one of: " + string.Join(", ", able.Select(c => c.Component.Name)) + ".");
        }

        WeighedLine[] weighed = [.. part.Lines.Where(l => l.Grade != WeightGrade.Unknown && l.Grams > 0)];
        Problem[] lacking = [.. weighed.Where(l => Blending.CompositionOf(dish, l) is null).Select(l => new Problem("MIX006", l.Source.Span.Line, $"“{l.Food.Food}” is not in the food table, so nothing can be aimed at.", "Name a food that is known, or describe it among your own foods."))];
        if (lacking.Length > 0)
        {
            return new Parsed<TargetTask>.Failed([.. lacking]);
        }

        double total = weighed.Sum(l => l.Grams);
        List<Problem> problems = [];
        Dictionary<WeighedLine, MayMove> named = [];
        List<TargetLine> added = [];
        foreach (MayMove move in moves)
        {
            switch (CardEdit.Find(dish with { Components = [part] }, move.Words))
            {
                case Parsed<WeighedLine>.Ok(var line) when line.Grams > 0:
                    named[line] = move;
                    break;
                case Parsed<WeighedLine>.Failed(var found) when found[0].Message.Contains("several", StringComparison.Ordinal):
                    problems.AddRange(found);
                    break;
                default:
                    FoodAmount? food = CardReader.ReadLine(move.Words, dish.Dish.Language).Foods.FirstOrDefault();
                    FoodMatch? match = food is null ? null : dish.Foods.Match(food.Food, dish.Dish.Language);
                    if (match is null || dish.Foods.Find(match.Id) is not { } known)
                    {
                        problems.Add(new("MIX006", 0, $"“{move.Words}” is neither a weighed line of {part.Component.Name} nor a food that is known.", "Its lines are: " + string.Join(", ", weighed.Select(l => l.Food.Food)) + "."));
                        break;
                    }

                    added.Add(new TargetLine(move.Words, 0, 0, move.Low ?? 0, move.High ?? total / 5, known.Composition));
                    break;
            }
        }

        if (problems.Count > 0)
        {
            return new Parsed<TargetTask>.Failed([.. problems]);
        }

        TargetLine[] lines = [.. weighed.Select(l =>
        {
            bool free = moves.IsEmpty ? l.Food.FromComponent is null && (l.Food.FoodId is null || Coulisse.Matter.Substance.SettingAgent.Find(l.Food.FoodId) is null) : named.ContainsKey(l);
            MayMove? m = named.GetValueOrDefault(l);
            return new TargetLine(l.Food.Food, l.Source.Span.Line, l.Grams, free ? m?.Low ?? l.Grams / 2 : l.Grams, free ? m?.High ?? l.Grams * 2 : l.Grams, Blending.CompositionOf(dish, l)!);
        })];
        return lines.Concat(added).FirstOrDefault(l => l.Low < 0 || l.High < l.Low) is { } crossed
            ? Refuse("MIX004", crossed.Line, string.Create(CultureInfo.InvariantCulture, $"The bounds of “{crossed.Name}” are {crossed.Low:0.##} to {crossed.High:0.##} g."), "The least is 0 or more and no higher than the most.")
            : new Parsed<TargetTask>.Ok(new TargetTask([.. lines, .. added], targets, keepWeight));
    }

    /// <summary>The dish with the answer's grams; foods that were added stand at the end of the component's list.</summary>
    public static WeighedDish Apply(WeighedDish dish, string? component, TargetAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(dish);
        ArgumentNullException.ThrowIfNull(answer);
        WeighedComponent part = component is null ? dish.Components.Single(c => c.Lines.Any(l => l.Grams > 0)) : dish.Components.First(c => ReferenceEquals(c.Component, Takes.Find(dish.Dish, component)));
        WeighedLine[] weighed = [.. part.Lines.Where(l => l.Grade != WeightGrade.Unknown && l.Grams > 0)];
        Dish changed = CardEdit.Reweigh(dish.Dish, weighed.Zip(answer.Lines).Where(x => Math.Abs(x.Second.Moved) > 1e-9).Select(x => (x.First, x.Second.Grams)));
        IngredientLine[] added = [.. answer.Lines.Skip(weighed.Length).Where(l => l.Grams > 1e-9).Select(l =>
        {
            IngredientLine read = CardReader.ReadLine(l.Line.Name, dish.Dish.Language);
            return read with { Text = string.Create(CultureInfo.InvariantCulture, $"{l.Grams:0.##} g {l.Line.Name}"), Foods = [read.Foods[0] with { Amount = l.Grams, Unit = "g", Grams = l.Grams }] };
        })];
        changed = changed with { Components = [.. changed.Components.Select(c => c.Name == part.Component.Name && c.Span == part.Component.Span ? c with { Ingredients = [.. c.Ingredients, .. added] } : c)] };
        return Weighing.Weigh(changed, dish.Measures, dish.Foods);
    }

    private static Parsed<TargetTask>.Failed Refuse(string code, int line, string message, string hint) => new([new Problem(code, line, message, hint)]);
}
