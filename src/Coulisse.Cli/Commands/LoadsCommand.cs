using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Flows;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Shapes;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse loads OCCASION: power on each circuit and shelves in each piece of kit by the minute, from a plan.</summary>
internal static class LoadsCommand
{
    public static Command Create()
    {
        Argument<string> sheet = new("OCCASION") { Description = "Occasion sheet; it is planned first" };
        Option<double> seconds = new("--seconds") { Description = "Time to look for a better plan", DefaultValueFactory = _ => 10 };
        Option<string?> svg = new("--svg") { Description = "Folder for a drawing of each" };
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("loads", "Load of circuits and shelves by the minute, against their limits.\nExample: coulisse loads examples/demo/occasion.md") { sheet, seconds, svg, json };
        command.SetAction(parsed => PlanCommand.Load([parsed.GetRequiredValue(sheet)], null, out int exit) is not { } occasion ? exit
            : PlanFlow.Plan(occasion, new PlanOptions(parsed.GetValue(seconds)), CodeOfPractice.Of(occasion).Code).Match(
                p => p.Outcome is Plan plan ? Give([.. LoadProfile.Circuits(plan, occasion.Kit, occasion.Circuits), .. ShelfLoads.Of(plan, occasion), .. p.Batches.IsEmpty ? [] : WaitingLoads.Of(plan, occasion, p.Batches)], parsed.GetValue(svg), parsed.GetValue(json)) : Input.Fail(Exit.Problems, "there is no plan, so there are no loads: " + string.Join("; ", p.Outcome is NoPlan no ? no.Conflicts : ["none was found in the time given"])),
                problems => Input.Fail(parsed.GetRequiredValue(sheet), problems)));
        return command;
    }

    private static int Give(ImmutableArray<LoadProfile> loads, string? svg, bool json)
    {
        if (svg is not null)
        {
            try
            {
                foreach (LoadProfile l in loads.Where(l => !l.Stretches.IsEmpty))
                {
                    PrintFiles.Save(svg, string.Concat(l.Title.Select(c => char.IsLetterOrDigit(c) ? c : '-')) + ".svg", Encoding.UTF8.GetBytes(SvgDrawing.Write(l.Draw())));
                }
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                return Input.Fail(Exit.Storage, $"{svg} cannot be written: {e.Message}");
            }
        }

        bool over = loads.Any(l => !l.Over.IsEmpty);
        if (json)
        {
            Input.Json(new
            {
                schema = "coulisse/loads/1",
                loads = loads.Select(l => new { title = l.Title, unit = l.Unit, limit = l.Limit, most = l.Peak?.Amount ?? 0, over = !l.Over.IsEmpty, stretches = l.Stretches.Select(s => new { from = PlanOutput.Iso(s.Start), to = PlanOutput.Iso(s.End), amount = Math.Round(s.Amount, 3), what = s.What }) }),
            });
            return over ? Exit.Problems : Exit.Done;
        }

        Console.OutputEncoding = new UTF8Encoding(false);
        foreach (LoadProfile l in loads)
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\n{l.Title}: limit {l.Limit:0.##} {l.Unit}{(l.Peak is { } p ? string.Create(CultureInfo.InvariantCulture, $", most {p.Amount:0.##} from {p.Start:ddd HH:mm}{(l.Over.IsEmpty ? "" : "  TOO MUCH")}") : ", nothing on it")}"));
            foreach (LoadStretch s in l.Stretches.Where(s => s.Amount > 0))
            {
                Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {s.Start:ddd HH:mm} to {s.End:ddd HH:mm}  {s.Amount,6:0.##}  {string.Join(", ", s.What.Distinct())}{(s.Amount > l.Limit + 1e-9 ? "  TOO MUCH" : "")}"));
            }
        }

        return over ? Input.Fail(Exit.Problems, "a load is above its limit.") : Exit.Done;
    }
}
