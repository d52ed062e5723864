using System.CommandLine;
using System.Globalization;
using Coulisse.Flows;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Formulas.Targets;
using Coulisse.Kitchen.Needs;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse substitute CARD: another food on a line, and everything that moves with it.</summary>
internal static class SubstituteCommand
{
    public static Command Create()
    {
        Argument<string> card = new("CARD") { Description = "Card to try the change on; it is not written; - for standard input" };
        Option<string> line = new("--line") { Description = "Food that goes: its name on the card, or its card line", Required = true };
        Option<string> with = new("--with") { Description = "Food that comes, with or without an amount", Required = true };
        Option<string?> component = new("--component") { Description = "Component to look in" };
        Option<string?> keep = new("--keep") { Description = "What stays the same: salt, fat, sugars, water, energy, freezing point … (default: the weight)" };
        Option<string?> balance = new("--balance") { Description = "Line that gives way so that the component keeps its weight" };
        Option<string> code = MovesText.Code();
        Option<string?> prices = new("--prices") { Description = "Price list, to see what the cost does" };
        Option<string?> measures = WeighCommand.Measures();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("substitute", "Exchanges a line and says what moves: mixture, set, allergens, label, cost.\nExample: coulisse substitute card.md --line \"fine sea salt\" --with \"soy sauce\" --keep salt --balance water") { card, line, with, component, keep, balance, code, prices, measures, json };
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(card);
            return MovesText.Prices(parsed.GetValue(prices), out PriceList? list) is { } failed ? failed
                : WeighCommand.Read(path, parsed.GetValue(measures), weighed => ChangeFlow.Substitute(weighed, parsed.GetRequiredValue(line), parsed.GetRequiredValue(with), parsed.GetValue(component), parsed.GetValue(keep), parsed.GetValue(balance), parsed.GetRequiredValue(code), list).Match(
                    done => parsed.GetValue(json) ? Json(done.Change, done.Moves) : Print(done.Change, done.Moves),
                    problems => Input.Fail(path, problems)));
        });
        return command;
    }

    private static int Json(Exchanged c, WhatMoves moves) => Input.Json(new
    {
        schema = "coulisse/substitute/1", title = c.Before.Dish.Title,
        @out = new { line = c.Out.Source.Span.Line, text = c.Out.Source.Text, grams = WeighCommand.Round(c.Out.Grams) },
        @in = new { food = c.In.Food.Food, foodId = c.In.Food.FoodId, grams = c.In.Grade == WeightGrade.Unknown ? null : (double?)WeighCommand.Round(c.In.Grams), grade = c.In.Grade },
        notes = c.Notes, moves = MovesText.Json(moves),
    });

    private static int Print(Exchanged c, WhatMoves moves)
    {
        MovesText.Utf8();
        Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{c.Before.Dish.Title}, line {c.Out.Source.Span.Line}: {c.Out.Grams:0.##} g {c.Out.Food.Food} → {(c.In.Grade == WeightGrade.Unknown ? "no weight" : c.In.Grams.ToString("0.##", CultureInfo.InvariantCulture) + " g")} {c.In.Food.Food}"));
        foreach (string note in c.Notes)
        {
            Console.Out.WriteLine("  " + note);
        }

        MovesText.Print(moves);
        return Exit.Done;
    }
}
