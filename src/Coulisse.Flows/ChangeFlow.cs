using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Formulas.Targets;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Needs;
using Coulisse.Solver.Fitting;

namespace Coulisse.Flows;

/// <summary>Trying a change of a card before it is written into it: another food on a line, or new grams for a target.</summary>
public static class ChangeFlow
{
    private static readonly GlopFit Fit = new();

    /// <summary>Exchanges a line and says what moves.</summary>
    /// <param name="dish">The dish, weighed.</param>
    /// <param name="line">Food that goes: name or card line.</param>
    /// <param name="with">Food that comes, with or without an amount.</param>
    /// <param name="component">Component to look in; null for all.</param>
    /// <param name="keep">Name of what stays the same ("salt"); null for the same weight.</param>
    /// <param name="balance">Line that gives way so that the weight stays; null lets it change.</param>
    /// <param name="code">Code of practice whose names and panel are compared.</param>
    /// <param name="prices">Prices; null leaves cost out.</param>
    public static Parsed<(Exchanged Change, WhatMoves Moves)> Substitute(WeighedDish dish, string line, string with, string? component, string? keep, string? balance, string code, PriceList? prices)
    {
        if (keep is not null && MixtureProperty.Find(keep) is null)
        {
            return new Parsed<(Exchanged, WhatMoves)>.Failed([new Problem("MIX003", 0, $"“{keep}” is nothing that can be kept.", "It can be: " + string.Join(", ", MixtureProperty.All.Select(p => p.Name)) + ".")]);
        }

        return Substitution.Make(dish, line, with, keep is null ? null : MixtureProperty.Find(keep), balance, Fit, component).Match(
            made => WhatMoves.Of(dish, made.After, AllergenNames.RegimeOf(code), prices).Match<Parsed<(Exchanged, WhatMoves)>>(
                moves => new Parsed<(Exchanged, WhatMoves)>.Ok((made, moves)), p => new Parsed<(Exchanged, WhatMoves)>.Failed(p)),
            p => new Parsed<(Exchanged, WhatMoves)>.Failed(p));
    }

    /// <summary>Brings a component to its targets, or as near as can be, and says what moves.</summary>
    /// <param name="dish">The dish, weighed.</param>
    /// <param name="component">Component; null when the card has one.</param>
    /// <param name="targets">Targets as written ("18 % fat").</param>
    /// <param name="moves">Lines that may move; empty lets every food move.</param>
    /// <param name="keepWeight">True when the component keeps its weight.</param>
    /// <param name="code">Code of practice whose names and panel are compared.</param>
    /// <param name="prices">Prices; null leaves cost out.</param>
    public static Parsed<(TargetAnswer Answer, WhatMoves Moves)> Reach(WeighedDish dish, string? component, IEnumerable<string> targets, ImmutableArray<MayMove> moves, bool keepWeight, string code, PriceList? prices)
    {
        Parsed<Target>[] read = [.. targets.Select(Target.Read)];
        Problem[] unread = [.. read.OfType<Parsed<Target>.Failed>().SelectMany(f => f.Problems)];
        if (unread.Length > 0)
        {
            return new Parsed<(TargetAnswer, WhatMoves)>.Failed([.. unread]);
        }

        return ComponentTargets.Of(dish, component, [.. read.OfType<Parsed<Target>.Ok>().Select(o => o.Value)], moves, keepWeight).Match(
            task => TargetFit.Reach(task, Fit).Match(
                answer => WhatMoves.Of(dish, ComponentTargets.Apply(dish, component, answer), AllergenNames.RegimeOf(code), prices).Match<Parsed<(TargetAnswer, WhatMoves)>>(
                    m => new Parsed<(TargetAnswer, WhatMoves)>.Ok((answer, m)), p => new Parsed<(TargetAnswer, WhatMoves)>.Failed(p)),
                p => new Parsed<(TargetAnswer, WhatMoves)>.Failed(p)),
            p => new Parsed<(TargetAnswer, WhatMoves)>.Failed(p));
    }
}
