using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
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
                return Input.Json(Rows(text).Select(s => StepJson(CardReader.ReadStep(s, CardReader.LanguageOf(s)))).ToArray());
            }

            return Incoming.ToCard(text, file).Match(CardReader.Read, problems => new Parsed<Dish>.Failed(problems)).Match(
                dish => parsed.GetValue(form) is { } written ? Text(written == "card" ? CardWriter.Write(dish) : RecipeData.Write(dish)) : parsed.GetValue(json) ? Input.Json(DishJson(dish)) : Print(dish, parsed.GetValue(why)),
                problems => Input.Fail(file, problems));
        });
        return command;
    }

    private static int Text(string text)
    {
        Console.OutputEncoding = new UTF8Encoding(false);
        Console.Out.Write(text.EndsWith('\n') ? text : text + "\n");
        return Exit.Done;
    }

    private static IEnumerable<string> Rows(string text) => text.Split('\n').Select(l => l.TrimEnd('\r')).Where(l => l.Length > 0);

    private static object LineJson(string text)
    {
        (IngredientLine line, ImmutableArray<Doubt> doubts) = CardReader.ReadLineWithDoubts(text, CardReader.LanguageOf(text));
        return new { text, kind = line.Kind.ToString().ToLowerInvariant(), foods = line.Foods.Select(FoodJson), doubts = doubts.Select(DoubtJson) };
    }

    private static object FoodJson(FoodAmount f) => new { f.Food, f.FoodId, f.Amount, f.AmountMax, f.Unit, f.Preparation, f.Optional, f.Grams, f.GramsMax, f.SecondMeasure, f.Alternative, f.State, f.Use, f.Grade, f.FromComponent };

    private static object DoubtJson(Doubt d) => new { d.Line, d.Question, candidates = d.Candidates.Select(c => c.Text), d.Moves };

    private static object StepJson(Step s) => new
    {
        line = s.Span.Line, s.Text, anchor = string.Create(CultureInfo.InvariantCulture, $"{s.Anchor.Component}/{s.Anchor.Order}/{s.Anchor.Fingerprint}"), s.Operation,
        times = s.Times.Select(t => new { t.MinutesMin, t.MinutesMax, kind = JsonNamingPolicy.CamelCase.ConvertName(t.Kind.ToString()), t.Words }),
        temperatures = s.Temperatures.Select(t => new { what = JsonNamingPolicy.CamelCase.ConvertName(t.Of.ToString()), t.Celsius, t.Fan }),
        s.Kit, s.People, tending = JsonNamingPolicy.CamelCase.ConvertName(s.Tending.ToString()), s.TendAt, storage = s.Storage.Select(x => new { x.Where, x.Days }), s.Until,
    };

    private static object DishJson(Dish d) => new
    {
        schema = "coulisse/read/1", d.Title, d.Language, measures = new { d.Measures.System, d.Measures.Settled, d.Measures.Because }, yields = d.Yields.Select(Yield),
        components = d.Components.Select(c => new
        {
            c.Name, makes = c.Makes.Select(Yield), keeps = c.Keeps.Select(k => new { k.Hours, k.Celsius, k.Where, k.SameDay, k.Text }),
            ingredients = c.Ingredients.Select(l => new { line = l.Span.Line, l.Text, kind = l.Kind.ToString().ToLowerInvariant(), foods = l.Foods.Select(FoodJson) }),
            steps = c.Steps.Select(StepJson),
        }),
        doubts = d.Doubts.Select(DoubtJson), remarks = d.Remarks.Select(r => new { r.Line, r.Kind, r.What }), unread = d.Unread.Select(u => new { line = u.Span.Line, u.Text }),
    };

    private static object Yield(CardYield y) => new { y.Amount, y.AmountMax, y.Unit, y.EachGrams, y.Text };

    private static int Print(Dish dish, bool why)
    {
        Console.OutputEncoding = new UTF8Encoding(false);
        Console.Out.WriteLine($"{dish.Title} ({dish.Language}; {dish.Measures.Because})");
        foreach (Component c in dish.Components)
        {
            Console.Out.WriteLine($"\n{(c.Name.Length > 0 ? c.Name : "(the dish)")}");
            foreach (IngredientLine line in c.Ingredients)
            {
                foreach (FoodAmount f in line.Foods)
                {
                    Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {line.Span.Line,4}  {f.Amount}{(f.AmountMax is { } m ? $" to {m.ToString(CultureInfo.InvariantCulture)}" : "")} {f.Unit} | {f.Food} | {f.Preparation}"));
                }

                if (why)
                {
                    foreach (ReadToken t in CardReader.Why(line.Text, dish.Language))
                    {
                        Console.Out.WriteLine($"          “{t.Text}” {t.Role}: {t.Meaning}");
                    }
                }
            }

            foreach (Step s in c.Steps)
            {
                Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {s.Span.Line,4}  [{s.Operation}] {string.Join(", ", s.Times.Select(t => t.Words))} {string.Join(", ", s.Temperatures.Select(t => t.Words))} | {s.Text}"));
            }
        }

        foreach (Remark r in dish.Remarks)
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\nline {r.Line}: {r.Kind}. {r.What}"));
        }

        foreach (Doubt d in dish.Doubts)
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\nline {d.Line}: {d.Question} ({d.Moves})"));
        }

        return Exit.Done;
    }
}
