using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Cards.Writing;
using Coulisse.Formats.In;
using Coulisse.Formats.Out;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse read CARD: what the reader understood, line by line.</summary>
internal static class ReadCommand
{
    public static Command Create()
    {
        Argument<string> card = new("CARD") { Description = "Card file, saved page, recipe data in JSON, or - for standard input", Arity = ArgumentArity.ZeroOrOne };
        Option<string?> lines = new("--lines") { Description = "Read each line of FILE as an ingredient line; prints one JSON array" };
        Option<string?> steps = new("--steps") { Description = "Read each line of FILE as a step; prints one JSON array" };
        Option<bool> why = new("--why") { Description = "Print token by token what became of each line" };
        Option<string?> form = new("--as") { Description = "Print the dish as a tidy card, or as schema.org data: card, jsonld" };
        form.AcceptOnlyFromAmong("card", "jsonld");
        Option<bool> json = new("--json") { Description = "Print one JSON document" };
        Command command = new("read", "Reads a card and shows what was understood.\nExample: coulisse read examples/demo/cards/starter.md") { card, lines, steps, why, form, json };
        command.SetAction(parsed =>
        {
            string? file = parsed.GetValue(lines) ?? parsed.GetValue(steps) ?? parsed.GetValue(card);
            if (file is null)
            {
                return Input.Fail(Exit.Usage, "name a card, or --lines FILE, or --steps FILE.");
            }

            if (Input.Bytes(file, out int exit) is not { } bytes)
            {
                return exit;
            }

            if (TextBytes.Read(bytes) is not Parsed<string>.Ok { Value: var text })
            {
                return TextBytes.Read(bytes).Match(_ => Exit.Done, problems => Input.Fail(file, problems));
            }

            if (parsed.GetValue(lines) is not null)
            {
                return Input.Json(Rows(text).Select(LineJson).ToArray());
            }

            if (parsed.GetValue(steps) is not null)
            {
                return Input.Json(Rows(text).Select(s => (Lang: CardReader.LanguageOf(s), Text: s)).Select(s => StepJson(CardReader.ReadStep(s.Text, s.Lang), s.Lang)).ToArray());
            }

            return Incoming.ToCard(text, file).Match(
                from => CardReader.Read(from).Match(
                    dish => parsed.GetValue(form) is { } written ? Text(written == "card" ? CardWriter.Write(dish) : RecipeData.Write(dish)) : parsed.GetValue(json) ? Input.Json(DishJson(from, dish)) : Text(Understood.Write(from, dish, parsed.GetValue(why))),
                    problems => Input.Fail(file, problems)),
                problems => Input.Fail(file, problems));
        });
        return command;
    }

    private static int Text(string text)
    {
        Input.Print(text.EndsWith('\n') ? text : text + "\n");
        return Exit.Done;
    }

    private static IEnumerable<string> Rows(string text) => text.Split('\n').Select(l => l.TrimEnd('\r')).Where(l => l.Length > 0);

    private static object LineJson(string text)
    {
        (IngredientLine line, ImmutableArray<Doubt> doubts) = CardReader.ReadLineWithDoubts(text, CardReader.LanguageOf(text));
        return new { text, kind = line.Kind.ToString().ToLowerInvariant(), foods = line.Foods.Select(FoodJson), doubts = doubts.Select(DoubtJson) };
    }

    private static object FoodJson(FoodAmount f) => new { f.Food, f.FoodId, f.Amount, f.AmountMax, f.Unit, f.Preparation, f.Optional, f.Grams, f.GramsMax, f.SecondMeasure, f.Alternative, f.State, f.Use, f.Grade, f.Fill, f.Percent, f.PercentOf, f.FromComponent };

    private static object DoubtJson(Doubt d) => new { d.Line, d.Question, candidates = d.Candidates.Select(c => c.Text), d.Moves };

    // The other way's figures stand behind the step's own, marked: they are told, and in no sum.
    private static object StepJson(Step s, string lang) => CardReader.ReadOtherWay(s, lang) is { } other ? StepJson(s, [.. other.Times], [.. other.Temperatures]) : StepJson(s, [], []);

    private static object StepJson(Step s, StepTime[] otherTimes, StepTemperature[] otherHeats) => new
    {
        line = s.Span.Line, s.Text, anchor = string.Create(CultureInfo.InvariantCulture, $"{s.Anchor.Component}/{s.Anchor.Order}/{s.Anchor.Fingerprint}"), s.Operation,
        times = s.Times.Concat(otherTimes).Select((t, i) => new { t.MinutesMin, t.MinutesMax, kind = JsonNamingPolicy.CamelCase.ConvertName(t.Kind.ToString()), t.Words, bound = JsonNamingPolicy.CamelCase.ConvertName(t.Bound.ToString()), t.Repeats, otherWay = i >= s.Times.Length }),
        temperatures = s.Temperatures.Concat(otherHeats).Select((t, i) => new { what = JsonNamingPolicy.CamelCase.ConvertName(t.Of.ToString()), t.Celsius, t.CelsiusMax, t.Fan, otherWay = i >= s.Temperatures.Length }),
        s.Kit, s.People, tending = JsonNamingPolicy.CamelCase.ConvertName(s.Tending.ToString()), s.TendAt, storage = s.Storage.Select(x => new { x.Where, x.Days }), s.Until, s.Alternative,
    };

    private static object DishJson(CardText card, Dish d) => new
    {
        schema = "coulisse/read/1", d.Title, d.Language, measures = new { d.Measures.System, d.Measures.Settled, d.Measures.Because }, yields = d.Yields.Select(Yield),
        components = d.Components.Select(c => new
        {
            c.Name, makes = c.Makes.Select(Yield), keeps = c.Keeps.Select(k => new { k.Hours, k.Celsius, k.CelsiusMax, k.Where, k.SameDay, k.Text }),
            ingredients = c.Ingredients.Select(IngredientJson),
            steps = c.Steps.Select(s => StepJson(s, d.Language)), notes = c.Notes.Select(NoteJson),
        }),
        variants = d.Variants.Select(v => new { line = v.Span.Line, v.Component, v.Name, ingredients = v.Ingredients.Select(IngredientJson) }), plate = d.Plate.Select(p => new { p.Component, p.Text, p.Pieces, p.Grams }), notes = d.Notes.Select(NoteJson),
        doubts = d.Doubts.Select(DoubtJson), remarks = d.Remarks.Select(r => new { r.Line, r.Kind, r.What }), unread = d.Unread.Select(NoteJson), rest = Understood.Rest(card, d).Select(NoteJson),
    };

    private static object IngredientJson(IngredientLine l) => new { line = l.Span.Line, l.Text, kind = l.Kind.ToString().ToLowerInvariant(), foods = l.Foods.Select(FoodJson) };

    private static object NoteJson(Note n) => new { line = n.Span.Line, n.Text };

    private static object Yield(CardYield y) => new { y.Amount, y.AmountMax, y.Unit, y.EachGrams, y.Text };
}
