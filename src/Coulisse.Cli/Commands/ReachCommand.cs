using System.CommandLine;
using System.Globalization;
using Coulisse.Flows;
using Coulisse.Kitchen.Formulas.Targets;
using Coulisse.Kitchen.Needs;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse reach CARD: new grams for a target, or the nearest that can be had.</summary>
internal static class ReachCommand
{
    public static Command Create()
    {
        Argument<string> card = new("CARD") { Description = "Card to work on; it is not written; - for standard input" };
        Option<string[]> target = new("--target") { Description = "\"freezes at -3\", \"18 % fat\", \"salt at most 1.2 %\"; may be given several times", Required = true, AllowMultipleArgumentsPerToken = false };
        Option<string?> component = new("--component") { Description = "Component, when the card has several" };
        Option<string[]> move = new("--move") { Description = "Line that may move, with bounds in grams if wanted: \"caster sugar\", \"water=0..400\"; a food that is not on the card may be added; may be given several times (default: every food, half to twice its grams)" };
        Option<bool> anyWeight = new("--any-weight") { Description = "Let the component's weight change" };
        Option<string> code = MovesText.Code();
        Option<string?> prices = new("--prices") { Description = "Price list, to see what the cost does" };
        Option<string?> measures = WeighCommand.Measures();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("reach", "Finds the smallest change of grams that brings a component to a target, or says that it cannot and what is nearest.\nExample: coulisse reach sorbet.md --target \"freezes at -3\" --move \"caster sugar\" --move water") { card, target, component, move, anyWeight, code, prices, measures, json };
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(card);
            MayMove?[] moves = [.. (parsed.GetValue(move) ?? []).Select(MayMove.Read)];
            if (moves.Any(m => m is null))
            {
                return Input.Fail(Exit.Usage, "--move takes a food, or a food and its bounds in grams: \"water=0..400\".");
            }

            return MovesText.Prices(parsed.GetValue(prices), out PriceList? list) is { } failed ? failed
                : WeighCommand.Read(path, parsed.GetValue(measures), weighed => ChangeFlow.Reach(weighed, parsed.GetValue(component), parsed.GetRequiredValue(target), [.. moves.OfType<MayMove>()], !parsed.GetValue(anyWeight), parsed.GetRequiredValue(code), list).Match(
                    done => parsed.GetValue(json) ? Json(weighed.Dish.Title, done.Answer, done.Moves) : Print(weighed.Dish.Title, done.Answer, done.Moves),
                    problems => Input.Fail(path, problems)));
        });
        return command;
    }

    private static int Json(string title, TargetAnswer a, WhatMoves moves)
    {
        Input.Json(new
        {
            schema = "coulisse/reach/1", title, reached = a.Reached,
            targets = a.Targets.Select(t => new { property = t.Target.Property.Name, unit = t.Target.Property.Unit, bound = t.Target.Bound, wanted = t.Target.Value, before = Math.Round(t.Before, 4), after = Math.Round(t.After, 4) }),
            lines = a.Lines.Select(l => new { line = l.Line.Line, food = l.Line.Name, asWritten = WeighCommand.Round(l.Line.Grams), grams = WeighCommand.Round(l.Grams), low = WeighCommand.Round(l.Line.Low), high = WeighCommand.Round(l.Line.High) }),
            stoppedBy = a.Stopped, moves = MovesText.Json(moves),
        });
        return a.Reached ? Exit.Done : Exit.Problems;
    }

    private static int Print(string title, TargetAnswer a, WhatMoves moves)
    {
        MovesText.Utf8();
        Console.Out.WriteLine($"{title}: {(a.Reached ? "reached" : "cannot be reached within these bounds; the nearest is")}");
        foreach (TargetFigure t in a.Targets)
        {
            Console.Out.WriteLine($"  {t.Target.Words}: {MovesText.Figure(t.Before, t.Target.Property.Decimals)} → {MovesText.Figure(t.After, t.Target.Property.Decimals)} {t.Target.Property.Unit}".TrimEnd());
        }

        if (a.Stopped.Length > 0)
        {
            Console.Out.WriteLine("  at their bounds: " + string.Join(", ", a.Stopped));
        }

        foreach (TargetGrams l in a.Lines.Where(l => l.Line.Moves))
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {l.Line.Name}: {l.Line.Grams:0.##} → {l.Grams:0.##} g{(Math.Abs(l.Moved) < 0.005 ? " (as written)" : "")}"));
        }

        MovesText.Print(moves);
        return a.Reached ? Exit.Done : Exit.Problems;
    }
}
