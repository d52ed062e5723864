using System.CommandLine;
using System.Text;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Formats.In;
using Coulisse.Matter.Foods;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse foods: search the food table as typed, or see what the foods of a card were taken for.</summary>
internal static class FoodsCommand
{
    private const int Most = 12;

    public static Command Create()
    {
        Argument<string[]> words = new("WORDS") { Description = "Part of a name, in any of the six languages", Arity = ArgumentArity.ZeroOrMore };
        Option<string?> card = new("--card") { Description = "List the foods of CARD with the food of the table each was taken for; unknown ones with what they may mean" };
        Option<bool> json = new("--json") { Description = "Print one JSON document" };
        Command command = new("foods", "Searches the food table, or names the foods of a card.\nExample: coulisse foods hazeln\nExample: coulisse foods --card examples/demo/cards/starter.md") { words, card, json };
        command.SetAction(parsed =>
        {
            Console.OutputEncoding = new UTF8Encoding(false);
            if (parsed.GetValue(card) is { } file)
            {
                return OfCard(file, parsed.GetValue(json));
            }

            string typed = string.Join(' ', parsed.GetValue(words) ?? []);
            if (typed.Length == 0)
            {
                return Input.Fail(Exit.Usage, "name part of a food, or --card FILE.");
            }

            if (OwnFoodsFile.Beside("-", out int unread) is not { } foods)
            {
                return unread;
            }

            IReadOnlyList<FoundFood> found = FoodSearch.In(foods, typed, Most);
            bool apart = found.Count > 0 && found[0].Rank > 3;
            if (found.Count == 0)
            {
                (found, apart) = (FoodSearch.Default.DidYouMean(typed, Most), true);
            }

            return parsed.GetValue(json) ? Input.Json(new { schema = "coulisse/foods/1", typed, didYouMean = apart, foods = found.Select(f => new { f.Id, f.Name, f.Alias }) }) : Print(typed, found, apart);
        });
        return command;
    }

    private static int Print(string typed, IReadOnlyList<FoundFood> found, bool apart)
    {
        if (found.Count == 0)
        {
            Console.Out.WriteLine($"No food of the table is like “{typed}”. Type part of its name, in English, French, German, Spanish, Italian or Japanese.");
            return Exit.Done;
        }

        if (apart)
        {
            Console.Out.WriteLine($"No food is called “{typed}”. Did you mean:");
        }

        foreach (FoundFood f in found)
        {
            Console.Out.WriteLine($"{f.Id,-24} {f.Name}{(f.Alias == f.Name ? "" : $" ({f.Alias})")}");
        }

        return Exit.Done;
    }

    private static int OfCard(string file, bool json)
    {
        if (Input.Bytes(file, out int exit) is not { } bytes)
        {
            return exit;
        }

        return TextBytes.Read(bytes).Match(
            text => Incoming.ToCard(text, file).Match(CardReader.Read, problems => new Parsed<Dish>.Failed(problems)).Match(
                dish => OwnFoodsFile.Beside(file, out int unread) is { } foods ? Named(dish with { Foods = foods }, json) : unread,
                problems => Input.Fail(file, problems)),
            problems => Input.Fail(file, problems));
    }

    private static int Named(Dish dish, bool json)
    {
        (int Line, FoodAmount Food, IReadOnlyList<FoundFood> Near)[] rows = [.. dish.Components.SelectMany(c => c.Ingredients).Where(l => l.Kind == LineKind.Ingredient)
            .SelectMany(l => l.Foods.Where(f => f.FromComponent is null && f.Food.Length > 0).Select(f => f with { FoodId = dish.Row(f)?.Id }).Select(f => (l.Span.Line, f, f.FoodId is null ? FoodSearch.Default.DidYouMean(f.Food, 3) : (IReadOnlyList<FoundFood>)[])))];
        if (json)
        {
            return Input.Json(new { schema = "coulisse/foods/1", foods = rows.Select(r => new { line = r.Line, food = r.Food.Food, r.Food.FoodId, confidence = r.Food.FoodConfidence, didYouMean = r.Near.Select(n => n.Id) }) });
        }

        foreach ((int line, FoodAmount f, IReadOnlyList<FoundFood> near) in rows)
        {
            Console.Out.WriteLine(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{line,4}  {f.Food,-36} {f.FoodId ?? (near.Count > 0 ? "unknown; did you mean " + string.Join(", ", near.Select(n => $"{n.Id} ({n.Alias})")) + "?" : "unknown")}"));
        }

        return Exit.Done;
    }
}
