using System.CommandLine;
using System.Text;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse safety CARD: what the rules find, with the remedy.</summary>
internal static class SafetyCommand
{
    public static Command Create()
    {
        Argument<string> card = new("CARD") { Description = "Card to judge; - for standard input" };
        Option<string> code = new("--code") { Description = "Code of practice: au, nz, uk, eu, us", DefaultValueFactory = _ => "au" };
        code.AcceptOnlyFromAmong("au", "nz", "uk", "eu", "us");
        Option<bool> vulnerable = new("--vulnerable") { Description = "Pregnant, very young, old or ill guests" };
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("safety", "Lays the rules of a code of practice over a card.\nExample: coulisse safety card.md --code uk") { card, code, vulnerable, json };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(card), parsed.GetRequiredValue(code), parsed.GetValue(vulnerable), parsed.GetValue(json)));
        return command;
    }

    private static int Run(string path, string code, bool vulnerable, bool json)
    {
        if (Input.Bytes(path, out int exit) is not { } bytes)
        {
            return exit;
        }

        return CardReader.Read(new CardText(Encoding.UTF8.GetString(bytes), path)).Match(
            dish => OwnFoodsFile.Beside(path, out int failed) is { } foods ? WeighCommand.Sound(path, Weighing.Weigh(dish with { Foods = foods }), weighed => Show(weighed, code, vulnerable, json)) : failed,
            problems => Input.Fail(path, problems));
    }

    private static int Show(WeighedDish weighed, string code, bool vulnerable, bool json)
    {
        Findings found = SafetyReview.Review(weighed, code, vulnerable);
        int exit = found.All.Any(f => f.Severity == Severity.Stop) ? Exit.Problems : Exit.Done;
        if (json)
        {
            Input.Json(new
            {
                schema = "coulisse/safety/1",
                code,
                caution = Findings.Caution,
                judged = SafetyReview.Judged,
                findings = found.All.Select(f => new { f.Severity, f.Component, step = f.Line, f.Rule, f.Source, f.Value, f.Limit, f.Margin, f.What, f.Remedy }),
                controlPoints = found.ControlPoints,
                judgedAgain = found.Again.Select(a => new { a.Component, step = a.Line, a.Limit, minutesGiven = a.Minutes, minutesNeeded = a.Needed, minutesNeededOff = a.Off, a.Kept }),
            });
            return exit;
        }

        foreach (Finding f in found.All)
        {
            Console.Out.WriteLine($"{f.Severity.ToString().ToUpperInvariant()} line {f.Line.ToString(System.Globalization.CultureInfo.InvariantCulture)}, {f.Component} ({f.Rule}): {f.What} {f.Remedy}");
        }

        foreach (JudgedAgain again in found.Again)
        {
            Console.Out.WriteLine($"Judged again, line {again.Line.ToString(System.Globalization.CultureInfo.InvariantCulture)}, {again.Words}");
        }

        Console.Out.WriteLine("Judged: " + SafetyReview.Judged + ". " + Findings.Caution);
        return exit;
    }
}
