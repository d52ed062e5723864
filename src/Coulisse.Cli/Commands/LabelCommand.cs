using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse label CARD: allergens by part with their reasons.</summary>
internal static class LabelCommand
{
    public static Command Create()
    {
        Argument<string> card = new("CARD") { Description = "Card to label; - for standard input" };
        Option<string> code = new("--code") { Description = "Whose law: au, nz, uk, eu, us", DefaultValueFactory = _ => "au" };
        code.AcceptOnlyFromAmong("au", "nz", "uk", "eu", "us");
        Option<string?> measures = WeighCommand.Measures();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("label", "Allergens of a card by part, each with the line that brings it.\nExample: coulisse label card.md --code uk") { card, code, measures, json };
        command.SetAction(parsed => WeighCommand.Read(parsed.GetRequiredValue(card), parsed.GetValue(measures), weighed => Takes.Circle(weighed.Dish) is { } circle
            ? Input.Fail(parsed.GetRequiredValue(card), [circle])
            : Show(weighed, parsed.GetRequiredValue(code), parsed.GetValue(json))));
        return command;
    }

    private static int Show(WeighedDish weighed, string code, bool json)
    {
        AllergenSheet sheet = Allergens.Of(weighed, AllergenNames.RegimeOf(code));
        return json ? Input.Json(new
        {
            schema = "coulisse/label/1", title = weighed.Dish.Title, code,
            allergens = sheet.Dish.Select(Line),
            parts = sheet.Parts.Select(p => new { component = p.Component, allergens = p.Lines.Select(Line) }),
            summary = sheet.Summary,
        }) : Print(weighed, sheet);
    }

    private static object Line(AllergenLine l) => new { name = l.Name, status = l.Status, because = l.Because.Select(b => new { b.Component, line = b.Line, food = b.Food, reason = b.Because }) };

    private static int Print(WeighedDish weighed, AllergenSheet sheet)
    {
        Console.OutputEncoding = new UTF8Encoding(false);
        Console.Out.WriteLine(weighed.Dish.Title);
        Console.Out.WriteLine(sheet.Summary.Length > 0 ? sheet.Summary : "No allergen of this law is known to be in it.");
        foreach (AllergenLine l in sheet.Dish)
        {
            Console.Out.WriteLine($"\n{l.Status.ToString().ToLowerInvariant()}: {l.Name}");
            foreach (AllergenReason r in l.Because)
            {
                Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {(r.Component.Length > 0 ? r.Component + ", " : "")}line {r.Line}: {r.Because}"));
            }
        }

        return Exit.Done;
    }
}
