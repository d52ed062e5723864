using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Formulas.Targets;

/// <summary>A line exchanged for another food.</summary>
/// <param name="Before">The dish as written.</param>
/// <param name="After">The dish with the line exchanged, weighed.</param>
/// <param name="Out">The food that went.</param>
/// <param name="In">The food that came, with its grams.</param>
/// <param name="Notes">How the grams were found, and what to mind.</param>
public sealed record Exchanged(WeighedDish Before, WeighedDish After, WeighedLine Out, WeighedLine In, ImmutableArray<string> Notes);

/// <summary>Exchanges a line: at the grams written, at the same weight, or so that a part stays the same.</summary>
public static class Substitution
{
    // Parts that come with the grams of the line alone; the others depend on all that is dissolved.
    private static readonly string[] Summed = ["fat", "saturates", "sugars", "salt", "solids", "water", "protein", "carbohydrate", "fibre", "alcohol", "energy"];

    /// <summary>Exchanges one food of a dish.</summary>
    /// <param name="dish">The dish, weighed.</param>
    /// <param name="which">The food that goes: its name or card line.</param>
    /// <param name="with">The food that comes, with or without an amount.</param>
    /// <param name="keep">What stays the same ("salt"); null for the same weight, or the weight <paramref name="with"/> states.</param>
    /// <param name="balance">A line that gives way so that the component keeps its weight; null lets the weight change.</param>
    /// <param name="fit">Solver, needed with <paramref name="balance"/> or a part that is no plain sum.</param>
    /// <param name="component">Component to look in; null for all.</param>
    public static Parsed<Exchanged> Make(WeighedDish dish, string which, string with, MixtureProperty? keep, string? balance, ILinearFit fit, string? component = null)
    {
        ArgumentNullException.ThrowIfNull(dish);
        ArgumentNullException.ThrowIfNull(with);
        return CardEdit.Find(dish, which, component).Match(
            line => balance is null ? Made(dish, line, with, keep, null, fit)
                : CardEdit.Find(dish with { Components = [dish.Components.First(c => c.Lines.Contains(line))] }, balance).Match(b => Made(dish, line, with, keep, b, fit), p => new Parsed<Exchanged>.Failed(p)),
            problems => new Parsed<Exchanged>.Failed(problems));
    }

    private static Parsed<Exchanged> Made(WeighedDish dish, WeighedLine line, string with, MixtureProperty? keep, WeighedLine? balance, ILinearFit fit)
    {
        IngredientLine read = CardReader.ReadLine(with.Trim(), dish.Dish.Language);
        if (read.Foods.Length != 1)
        {
            return Refuse(line, $"“{with}” is not one food.", "Write one food, with or without its amount: “soy sauce”, “60 g soy sauce”.");
        }

        FoodAmount food = read.Foods[0];
        bool stated = food.Amount is not null;
        if (!stated && line.Grade == WeightGrade.Unknown)
        {
            return Refuse(line, $"“{line.Source.Text}” has no weight to go by.", "Give the new line its amount.");
        }

        WeighedComponent part = dish.Components.First(c => c.Lines.Contains(line));
        double grams = line.Grams;
        List<string> notes = [];
        if (!stated && keep is not null)
        {
            Parsed<double> kept = balance is null && Summed.Contains(keep.Name) ? Alone(dish, line, food, keep) : Fitted(dish, part, line, food, keep, balance, fit);
            if (kept is Parsed<double>.Failed(var problems))
            {
                return new Parsed<Exchanged>.Failed(problems);
            }

            grams = ((Parsed<double>.Ok)kept).Value;
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"{grams:0.##} g keep the {keep.Name} of the line's place"));
        }

        IngredientLine line2 = stated ? read : read with { Text = string.Create(CultureInfo.InvariantCulture, $"{grams:0.##} g {with.Trim()}"), Foods = [food with { Amount = grams, Unit = "g", Grams = grams }] };
        Dish changed = CardEdit.Exchange(dish.Dish, line, line2);
        WeighedDish after = Weighing.Weigh(changed, dish.Measures, dish.Foods);
        WeighedLine came = after.Components.SelectMany(c => c.Lines).First(l => ReferenceEquals(l.Source, line2) || (l.Source.Span == line.Source.Span && l.Food.Food == food.Food));
        if (balance is not null)
        {
            double left = balance.Grams - (came.Grams - line.Grams);
            if (left < 0)
            {
                return Refuse(line, string.Create(CultureInfo.InvariantCulture, $"{came.Grams:0.#} g for {line.Grams:0.#} g cannot be balanced: only {balance.Grams:0.#} g of {balance.Food.Food} are there."), "Balance with another line, or let the weight change.");
            }

            WeighedLine now = after.Components.SelectMany(c => c.Lines).First(l => ReferenceEquals(l.Source, balance.Source) && l.Food.Food == balance.Food.Food);
            after = Weighing.Weigh(CardEdit.Reweigh(changed, [(now, left)]), dish.Measures, dish.Foods);
            came = after.Components.SelectMany(c => c.Lines).First(l => l.Source.Span == line.Source.Span && l.Food.Food == food.Food);
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"{balance.Food.Food} goes from {balance.Grams:0.##} to {left:0.##} g, so the weight stays"));
        }
        else if (Math.Abs(came.Grams - line.Grams) > 0.005 * line.Grams)
        {
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"the component weighs {part.Grams - line.Grams + came.Grams:0.#} g instead of {part.Grams:0.#} g"));
        }

        return new Parsed<Exchanged>.Ok(new Exchanged(dish, after, line, came, [.. notes]));
    }

    // The grams of the new food that bring as much of a part as the old ones did.
    private static Parsed<double> Alone(WeighedDish dish, WeighedLine line, FoodAmount food, MixtureProperty keep)
    {
        double? old = Blending.CompositionOf(dish, line) is { } c ? keep.Of(c) : null;
        double? one = Held(dish, food) is { } n ? keep.Of(n) : null;
        return old is null || one is null ? new Parsed<double>.Failed([Cannot(line, $"The {keep.Name} of “{(old is null ? line.Food.Food : food.Food)}” is not held.", "Exchange by weight, or state the amount.")])
            : one <= 0 || old < 0 ? new Parsed<double>.Failed([Cannot(line, $"It cannot be done: {food.Food} brings no {keep.Name}.", "Take another food, or keep something it has.")])
            : new Parsed<double>.Ok(line.Grams * old.Value / one.Value);
    }

    private static Parsed<double> Fitted(WeighedDish dish, WeighedComponent part, WeighedLine line, FoodAmount food, MixtureProperty keep, WeighedLine? balance, ILinearFit fit)
    {
        WeighedLine[] weighed = [.. part.Lines.Where(l => l.Grade != WeightGrade.Unknown && l.Grams > 0)];
        if (weighed.FirstOrDefault(l => Blending.CompositionOf(dish, l) is null) is { } lacking)
        {
            return new Parsed<double>.Failed([Cannot(lacking, $"“{lacking.Food.Food}” is not in the food table.", "Exchange by weight, or state the amount.")]);
        }

        if (Held(dish, food) is not { } comes)
        {
            return new Parsed<double>.Failed([Cannot(line, $"“{food.Food}” is not in the food table.", "State its amount.")]);
        }

        (string, double, Composition)[] before = [.. weighed.Select(l => (l.Food.Food, l.Grams, Blending.CompositionOf(dish, l)!))];
        if (keep.Of(Blend.Of(before).Composition) is not { } figure)
        {
            return new Parsed<double>.Failed([Cannot(line, $"The {keep.Name} of this component cannot be worked out.", "Keep something its foods hold.")]);
        }

        double total = weighed.Sum(l => l.Grams);
        TargetLine[] lines = [.. weighed.Where(l => l != line).Select(l => new TargetLine(l.Food.Food, l.Source.Span.Line, l.Grams, l == balance ? 0 : l.Grams, l == balance ? l.Grams + line.Grams : l.Grams, Blending.CompositionOf(dish, l)!)), new TargetLine(food.Food, line.Source.Span.Line, line.Grams, 0, total, comes)];
        return TargetFit.Reach(new TargetTask([.. lines], [new Target(keep, figure, Bound.At)], balance is not null), fit).Match<Parsed<double>>(
            a => a.Reached ? new Parsed<double>.Ok(a.Lines[^1].Grams) : new Parsed<double>.Failed([Cannot(line, string.Create(CultureInfo.InvariantCulture, $"It cannot be done: the nearest is {keep.Name} {a.Targets[0].After:0.###} {keep.Unit} with {a.Lines[^1].Grams:0.#} g, where {figure:0.###} is wanted."), "Balance with another line, or take that.")]),
            p => new Parsed<double>.Failed(p));
    }

    private static Composition? Held(WeighedDish dish, FoodAmount food) => (food.FoodId ?? dish.Foods.Match(food.Food, dish.Dish.Language)?.Id) is { } id && dish.Foods.Find(dish.Foods.Match(food.Food, dish.Dish.Language) is { } own && dish.Foods.IsOwn(own.Id) ? own.Id : id) is { } known ? LineComposition.Of(food, known) : null;

    private static Problem Cannot(WeighedLine line, string message, string hint) => new("MIX006", line.Source.Span.Line, message, hint);

    private static Parsed<Exchanged>.Failed Refuse(WeighedLine line, string message, string hint) => new([Cannot(line, message, hint)]);
}
