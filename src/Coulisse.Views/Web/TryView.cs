using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Formulas.Targets;
using Coulisse.Kitchen.Needs;

namespace Coulisse.Views.Web;

/// <summary>A change tried on a card before it is written into it: another food on a line, or new grams for a target.</summary>
/// <param name="Id">Card.</param>
/// <param name="Title">Title.</param>
/// <param name="Form">What was asked, as typed.</param>
/// <param name="Foods">Foods on the card, to choose from.</param>
/// <param name="Parts">Components, to choose from.</param>
/// <param name="Says">The answer, a sentence each.</param>
/// <param name="Moves">What moves, a group each.</param>
/// <param name="Faults">What was wrong with the question.</param>
public sealed record TryView(string Id, string Title, TryForm Form, ImmutableArray<string> Foods, ImmutableArray<string> Parts, ImmutableArray<string> Says, ImmutableArray<MovedGroup> Moves, ImmutableArray<string> Faults)
{
    /// <summary>What can stay the same or be aimed at.</summary>
    public static ImmutableArray<string> Properties { get; } = [.. MixtureProperty.All.Select(p => p.Name)];

    /// <summary>The page with nothing asked yet.</summary>
    public static TryView Unasked(string id, WeighedDish dish, TryForm form)
    {
        ArgumentNullException.ThrowIfNull(dish);
        return new TryView(id, dish.Dish.Title, form, [.. dish.Components.SelectMany(c => c.Lines).Select(l => l.Food.Food).Distinct(StringComparer.OrdinalIgnoreCase)], [.. dish.Components.Where(c => !c.Lines.IsEmpty && c.Component.Name.Length > 0).Select(c => c.Component.Name)], [], [], []);
    }

    /// <summary>Lays an exchange out.</summary>
    public TryView With(Exchanged change, WhatMoves moves, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(change);
        string comes = change.In.Grade == WeightGrade.Unknown ? "no weight" : Figures.Grams(change.In.Grams, culture);
        return this with { Says = [string.Create(culture, $"Line {change.Out.Source.Span.Line}: {Figures.Grams(change.Out.Grams, culture)} {change.Out.Food.Food} → {comes} {change.In.Food.Food}. Nothing is written yet."), .. change.Notes.Select(n => n + ".")], Moves = Groups(moves, culture) };
    }

    /// <summary>Lays an answer to targets out.</summary>
    public TryView With(TargetAnswer answer, WhatMoves moves, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(answer);
        List<string> says = [answer.Reached ? "It can be reached. Nothing is written yet." : "It cannot be reached within these bounds; this is the nearest."];
        says.AddRange(answer.Targets.Select(t => $"{t.Target.Words}: {Figure(t.Before, t.Target.Property.Decimals, culture)} → {Figure(t.After, t.Target.Property.Decimals, culture)} {t.Target.Property.Unit}".TrimEnd() + "."));
        says.AddRange(answer.Stopped.IsEmpty ? [] : ["At their bounds: " + string.Join(", ", answer.Stopped) + "."]);
        MovedGroup grams = new("Grams", [.. answer.Lines.Where(l => l.Line.Moves).Select(l => new MovedLine(l.Line.Name, Figures.Grams(l.Line.Grams, culture), Math.Abs(l.Moved) < 0.005 ? "as written" : Figures.Grams(l.Grams, culture)))]);
        return this with { Says = [.. says], Moves = [grams, .. Groups(moves, culture)] };
    }

    private static ImmutableArray<MovedGroup> Groups(WhatMoves m, CultureInfo culture)
    {
        List<MovedGroup> groups = [.. m.Parts.Select(p => new MovedGroup(p.Component.Length > 0 ? p.Component : "The mixture", [.. p.Figures.Select(f => new MovedLine(f.Name, Text(f.Before, f), Text(f.After, f))), .. p.Set.Select(s => new MovedLine(s, "", ""))]))];
        groups.Add(new MovedGroup("Allergens", m.AllergensIn.IsEmpty && m.AllergensOut.IsEmpty ? [new MovedLine("none come, none go", "", "")] : [.. m.AllergensIn.Select(a => new MovedLine("comes: " + a, "", "")), .. m.AllergensOut.Select(a => new MovedLine("goes: " + a, "", ""))]));
        if (!m.Panel.IsEmpty || m.IngredientsBefore != m.IngredientsAfter)
        {
            groups.Add(new MovedGroup("Label, per 100 g", [.. m.Panel.Select(r => new MovedLine(r.Name, $"{r.Before} {r.Unit}", $"{r.After} {r.Unit}")), .. m.IngredientsBefore == m.IngredientsAfter ? Array.Empty<MovedLine>() : [new MovedLine(m.IngredientsAfter, "", "")]]));
        }

        if (m.CostBefore is { } before && m.CostAfter is { } after)
        {
            groups.Add(new MovedGroup("Cost of the card", [new MovedLine(m.NotPriced.IsEmpty ? "food" : "food, without the lines that have no price", string.Create(culture, $"{before.Amount:0.00} {before.Currency}"), string.Create(culture, $"{after.Amount:0.00} {after.Currency}")), .. m.NotPriced.Select(n => new MovedLine(n, "", ""))]));
        }

        return [.. groups];

        string Text(double? value, MovedFigure f) => value is { } v ? Figure(v, f.Decimals, culture) + (f.Unit.Length > 0 ? "\u202F" + f.Unit : "") : "not known";
    }

    private static string Figure(double value, int decimals, CultureInfo culture) => value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), culture).Replace('-', '\u2212');
}

/// <summary>What was asked, as typed.</summary>
/// <param name="Line">Food that goes: name or card line.</param>
/// <param name="With">Food that comes.</param>
/// <param name="Keep">What stays the same; empty for the weight.</param>
/// <param name="Balance">Line that gives way; empty for none.</param>
/// <param name="Part">Component; empty for the only one.</param>
/// <param name="Targets">Targets, "; " between.</param>
/// <param name="Move">Lines that may move, "; " between; empty for all.</param>
/// <param name="AnyWeight">True when the component's weight may change.</param>
public sealed record TryForm(string Line, string With, string Keep, string Balance, string Part, string Targets, string Move, bool AnyWeight);

/// <summary>What moves of one kind.</summary>
/// <param name="Name">Of what.</param>
/// <param name="Lines">Figures before and after.</param>
public sealed record MovedGroup(string Name, ImmutableArray<MovedLine> Lines);

/// <summary>A figure before and after; both empty for a sentence.</summary>
/// <param name="Name">Name, or the sentence.</param>
/// <param name="Before">Before.</param>
/// <param name="After">After.</param>
public sealed record MovedLine(string Name, string Before, string After);
