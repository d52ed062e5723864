using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse label CARD: allergens by part with their reasons, list of ingredients, nutrition panel.</summary>
internal static class LabelCommand
{
    public static Command Create()
    {
        Argument<string> card = new("CARD") { Description = "Card to label; - for standard input" };
        Option<string> code = new("--code") { Description = "Whose law: au, nz, uk, eu, us", DefaultValueFactory = _ => "au" };
        code.AcceptOnlyFromAmong("au", "nz", "uk", "eu", "us");
        Option<string?> measures = WeighCommand.Measures();
        Option<double?> final = new("--final") { Description = "Grams of the whole, weighed at the end; without it the panel is as mixed" };
        Option<double?> servings = new("--servings") { Description = "Servings for the panel" };
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("label", "Allergens of a card by part, each with the line that brings it; list of ingredients; nutrition panel.\nExample: coulisse label card.md --code uk --final 1450") { card, code, measures, final, servings, json };
        command.SetAction(parsed => WeighCommand.Read(parsed.GetRequiredValue(card), parsed.GetValue(measures), weighed => Panels.Of(weighed, AllergenNames.RegimeOf(parsed.GetRequiredValue(code)), parsed.GetValue(final), parsed.GetValue(servings)).Match(
                panel => Show(weighed, panel, parsed.GetRequiredValue(code), parsed.GetValue(final), parsed.GetValue(json)),
                problems => Input.Fail(parsed.GetRequiredValue(card), problems))));
        return command;
    }

    private static int Show(WeighedDish weighed, NutritionPanel panel, string code, double? final, bool json)
    {
        AllergenSheet sheet = Allergens.Of(weighed, AllergenNames.RegimeOf(code));
        IngredientList list = Ingredients.Of(weighed, sheet.Regime);
        Sulphites? sulphites = Sulphites.Of(weighed, sheet.Regime, final);
        DateMark? date = DateMark.Of(weighed);
        return json ? Input.Json(new
        {
            schema = "coulisse/label/1", title = weighed.Dish.Title, code,
            allergens = sheet.Dish.Select(Line),
            parts = sheet.Parts.Select(p => new { component = p.Component, allergens = p.Lines.Select(Line) }),
            summary = sheet.Summary, ingredientList = list.Text,
            ingredients = list.Items.Select(i => new { food = i.Name, foodId = i.FoodId, grams = WeighCommand.Round(i.Grams), percent = WeighCommand.Round(i.Percent), stated = i.Stated, allergens = i.Allergens }),
            panel = new { basis = panel.Basis, servingGrams = panel.ServingGrams, rows = panel.Rows.Select(r => new { name = r.Name, unit = r.Unit, computed = WeighCommand.Round(r.Computed), declared = r.Declared, serving = r.Serving }), missing = panel.Missing },
            sulphites = sulphites is null ? null : new { mostMilligramsPerKilogram = sulphites.MostMilligramsPerKilogram, belowLimit = sulphites.BelowLimit, text = sulphites.Text, unsaid = sulphites.Unsaid },
            dateMark = date is null ? null : new { mark = date.Mark, hours = date.Hours, celsius = date.Celsius, frozen = date.Frozen, component = date.Component, line = date.Line, text = date.Text },
            remarks = list.Remarks,
        }) : Print(weighed, sheet, list, panel, [.. new[] { date?.Text, sulphites?.Text }.OfType<string>()]);
    }

    private static object Line(AllergenLine l) => new { name = l.Name, status = l.Status, because = l.Because.Select(b => new { b.Component, line = b.Line, food = b.Food, reason = b.Because }) };

    private static int Print(WeighedDish weighed, AllergenSheet sheet, IngredientList list, NutritionPanel panel, string[] marks)
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

        Console.Out.WriteLine($"\n{list.Text}\n\nPer 100 g, {panel.Basis}:");
        foreach (PanelRow r in panel.Rows)
        {
            Console.Out.WriteLine($"  {r.Name,-22} {r.Declared,12} {r.Unit}{(r.Serving is null ? "" : $"   serving {r.Serving} {r.Unit}")}");
        }

        foreach (string mark in marks)
        {
            Console.Out.WriteLine(mark);
        }

        foreach (string remark in panel.Missing.Concat(list.Remarks))
        {
            Console.Out.WriteLine("  " + remark);
        }

        return Exit.Done;
    }
}
