using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Trials;

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
        Option<double?> final = new("--final") { Description = "Grams of the whole, weighed at the end; without it the panel is as the method leaves it" };
        Option<double?> servings = new("--servings") { Description = "Servings for the panel" };
        Option<string[]> trials = Trials();
        Option<bool> asMixed = new("--as-mixed") { Description = "Panel of what was mixed, before any step" };
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("label", "Allergens of a card by part, each with the line that brings it; list of ingredients; nutrition panel as the method leaves it.\nExample: coulisse label card.md --code uk --final 1450") { card, code, measures, final, servings, trials, asMixed, json };
        command.SetAction(parsed => TrialFiles.Read(parsed.GetValue(trials) ?? [], out int unread) is not { } made ? unread
            : WeighCommand.Read(parsed.GetRequiredValue(card), parsed.GetValue(measures), weighed => Panels.Of(weighed, AllergenNames.RegimeOf(parsed.GetRequiredValue(code)), parsed.GetValue(final), parsed.GetValue(servings), TrialLosses.Of(weighed.Dish, made), parsed.GetValue(asMixed)).Match(
                panel => Show(weighed, panel, parsed.GetRequiredValue(code), parsed.GetValue(final), parsed.GetValue(json)),
                problems => Input.Fail(parsed.GetRequiredValue(card), problems))));
        return command;
    }

    internal static Option<string[]> Trials() => new("--trial") { Description = "Filled trial sheet: what a part lost is taken from it where the card does not say; may be given several times", AllowMultipleArgumentsPerToken = false };

    private static int Show(WeighedDish weighed, NutritionPanel panel, string code, double? final, bool json)
    {
        AllergenSheet sheet = Allergens.Of(weighed, AllergenNames.RegimeOf(code));
        IngredientList list = Ingredients.Of(weighed, sheet.Regime);
        Sulphites? sulphites = Sulphites.Of(weighed, sheet.Regime, final);
        DateMark? date = DateMark.Of(weighed);
        string[] remarks = [.. list.Remarks, .. Finished(list, panel)];
        return json ? Input.Json(new
        {
            schema = "coulisse/label/1", title = weighed.Dish.Title, code,
            allergens = sheet.Dish.Select(Line),
            parts = sheet.Parts.Select(p => new { component = p.Component, allergens = p.Lines.Select(Line) }),
            summary = sheet.Summary, ingredientList = list.Text,
            ingredients = list.Items.Select(i => new { food = i.Name, foodId = i.FoodId, grams = WeighCommand.Round(i.Grams), percent = WeighCommand.Round(i.Percent), stated = i.Stated, allergens = i.Allergens }),
            panel = new { basis = panel.Basis, grade = panel.Grade, servingGrams = panel.ServingGrams, rows = panel.Rows.Select(r => new { name = r.Name, unit = r.Unit, computed = WeighCommand.Round(r.Computed), declared = r.Declared, serving = r.Serving, dailyValuePercent = r.DailyValue, low = r.Range is { } w ? (double?)WeighCommand.Round(w.Low) : null, high = r.Range is { } x ? (double?)WeighCommand.Round(x.High) : null }), notStated = panel.NotStated, changes = panel.Changes, missing = panel.Missing },
            sulphites = sulphites is null ? null : new { mostMilligramsPerKilogram = sulphites.MostMilligramsPerKilogram, belowLimit = sulphites.BelowLimit, text = sulphites.Text, unsaid = sulphites.Unsaid },
            dateMark = date is null ? null : new { mark = date.Mark, hours = date.Hours, celsius = date.Celsius, frozen = date.Frozen, component = date.Component, line = date.Line, text = date.Text },
            remarks,
        }) : Print(weighed, sheet, list, panel, [.. new[] { date?.Text, sulphites?.Text }.OfType<string>()], remarks);
    }

    // Regulation (EU) 1169/2011, annex VIII, 3(a): of a food that lost moisture the share is of the finished food, above 100 % the grams that go into 100 g of it.
    private static IEnumerable<string> Finished(IngredientList list, NutritionPanel panel) => panel.Regime != AllergenRegime.Eu || panel.Grams is not { } grams || grams > 0.995 * list.Grams ? []
        : list.Items.Where(i => i.Stated).Select(i => string.Create(CultureInfo.InvariantCulture, $"“{i.Name}” stands in the title: {i.Percent:0.#} % at mixing, of the finished food ({grams:0} g) {(i.Grams <= grams ? $"{100 * i.Grams / grams:0.#} %" : $"{100 * i.Grams / grams:0} g go into 100 g")}."));

    private static object Line(AllergenLine l) => new { name = l.Name, status = l.Status, because = l.Because.Select(b => new { b.Component, line = b.Line, food = b.Food, reason = b.Because }) };

    private static int Print(WeighedDish weighed, AllergenSheet sheet, IngredientList list, NutritionPanel panel, string[] marks, string[] remarks)
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

        Console.Out.WriteLine($"\n{list.Text}\n\nPer 100 g, {panel.Basis}{(panel.Grade == WeightGrade.Weighed ? "" : $"; weights {panel.Grade.ToString().ToLowerInvariant()}")}:");
        foreach (PanelRow r in panel.Rows)
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {r.Name,-22} {r.Declared,12} {r.Unit}{(r.Serving is null ? "" : $"   serving {r.Serving} {r.Unit}")}{(r.DailyValue is null ? "" : $"   {r.DailyValue} % of the daily value{(r.Serving is null ? " in 100 g" : "")}")}{(r.Range is { } w && w.High - w.Low > 0.02 * r.Computed ? $"   ({w.Low:0.##} to {w.High:0.##} by the range of the loss)" : "")}"));
        }

        if (!panel.NotStated.IsEmpty)
        {
            Console.Out.WriteLine($"  not known, so not stated (never 0): {string.Join(", ", panel.NotStated)}");
        }

        foreach (string change in panel.Changes)
        {
            Console.Out.WriteLine("  " + change);
        }

        foreach (string mark in marks)
        {
            Console.Out.WriteLine(mark);
        }

        foreach (string remark in panel.Missing.Concat(remarks))
        {
            Console.Out.WriteLine("  " + remark);
        }

        return Exit.Done;
    }
}
