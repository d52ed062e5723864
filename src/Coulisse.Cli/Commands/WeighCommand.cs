using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Trials;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse weigh CARD: every line in grams, with its range and why.</summary>
internal static class WeighCommand
{
    public static Command Create()
    {
        Argument<string> card = new("CARD") { Description = "Card to weigh; - for standard input" };
        Option<string?> measures = Measures();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("weigh", "Turns every amount of a card into grams.\nExample: coulisse weigh examples/demo/cards/slice-buckwheat-plum-loose.md --measures au") { card, measures, json };
        command.SetAction(parsed => Read(parsed.GetRequiredValue(card), parsed.GetValue(measures), weighed => parsed.GetValue(json) ? Json(weighed) : Print(weighed)));
        return command;
    }

    internal static Option<string?> Measures()
    {
        Option<string?> measures = new("--measures") { Description = "Whose spoons and cups: au, nz, uk, us, jp, metric" };
        measures.AcceptOnlyFromAmong("au", "nz", "uk", "us", "jp", "metric");
        return measures;
    }

    /// <summary>Reads and weighs a card, then goes on; prints what is wrong and gives the exit code when it cannot.</summary>
    /// <param name="path">Card.</param>
    /// <param name="measures">Size system; null lets the card decide.</param>
    /// <param name="then">What is done with it.</param>
    /// <param name="trials">Trials whose lessons are laid over the card; null for none.</param>
    internal static int Read(string path, string? measures, Func<WeighedDish, int> then, List<Trial>? trials = null) => Input.Bytes(path, out int exit) is not { } bytes
        ? exit
        : CardReader.Read(new CardText(Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF'), path)).Match(
            dish => OwnFoodsFile.Beside(path, out int failed) is { } foods ? Sound(path, Weighing.Weigh(TrialFiles.Onto(dish with { Foods = foods }, trials ?? []), measures), then) : failed,
            problems => Input.Fail(path, problems));

    // A circle of components, a weight of nothing, shares above the whole: nothing may be built on them, so no command goes on.
    internal static int Sound(string path, WeighedDish weighed, Func<WeighedDish, int> then)
        => Soundness.Of(weighed) is { IsEmpty: false } faults ? Input.Fail(path, faults) : then(weighed);

    private static int Json(WeighedDish w) => Input.Json(new
    {
        schema = "coulisse/weigh/1", title = w.Dish.Title, measures = w.Measures,
        components = w.Components.Select(c => new
        {
            name = c.Component.Name, grams = Round(c.Grams), grade = c.Grade,
            lines = c.Lines.Select(l => new { line = l.Source.Span.Line, text = l.Source.Text, food = l.Food.Food, foodId = l.Food.FoodId, grams = l.Grade == WeightGrade.Unknown ? null : (double?)Round(l.Grams), low = Round(l.Low), high = Round(l.High), grade = l.Grade, why = l.Why.Text, source = l.Why.Source, foodSource = l.Known?.Source }),
        }),
        doubts = w.Doubts.Select(d => new { d.Line, d.Question, candidates = d.Candidates.Select(x => x.Text), d.Moves }),
    });

    private static int Print(WeighedDish w)
    {
        Console.OutputEncoding = new UTF8Encoding(false);
        Console.Out.WriteLine($"{w.Dish.Title} (measures: {w.Measures})");
        foreach (WeighedComponent c in w.Components)
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\n{(c.Component.Name.Length > 0 ? c.Component.Name : "(the dish)")}: {c.Grams:0.#} g, {c.Grade.ToString().ToLowerInvariant()}"));
            foreach (WeighedLine l in c.Lines)
            {
                string grams = l.Grade == WeightGrade.Unknown ? "no weight" : string.Create(CultureInfo.InvariantCulture, $"{l.Grams:0.#} g{(l.High > l.Low ? string.Create(CultureInfo.InvariantCulture, $" ({l.Low:0.#} to {l.High:0.#})") : "")}");
                Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {l.Source.Span.Line,4}  {grams,-24} {l.Food.Food}  [{l.Grade.ToString().ToLowerInvariant()}: {l.Why.Text}]"));
            }
        }

        foreach (Doubt d in w.Doubts)
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\nline {d.Line}: {d.Question} {d.Moves}."));
        }

        return Exit.Done;
    }

    internal static double Round(double grams) => Math.Round(grams, 3, MidpointRounding.AwayFromZero);
}
