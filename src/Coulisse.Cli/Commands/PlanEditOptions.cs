using System.CommandLine;
using System.Text;
using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Edits;

namespace Coulisse.Cli.Commands;

/// <summary>What a person fixes, by options of plan: a file of edits, pins, bans, orders.</summary>
internal sealed class PlanEditOptions
{
    public Option<string?> File { get; } = new("--edits") { Description = "What is fixed, as JSON, or a plan printed by plan --json that carries it" };

    public Option<string[]> Pin { get; } = new("--pin") { Description = "TASK=MOMENT, PERSON or KIT: \"curd-34=Sat 09:30\" (keys of tasks are printed by plan)" };

    public Option<string[]> Forbid { get; } = new("--forbid") { Description = "TASK=STRETCH, PERSON or KIT: \"curd-34=Sat 09:00 to 11:00\"" };

    public Option<string[]> Before { get; } = new("--before") { Description = "FIRST=THEN: the first has ended when the other begins" };

    /// <summary>Reads them for an occasion; null after its problems were printed.</summary>
    public Func<Occasion, PlanEdits?> Reader(ParseResult parsed)
    {
        string? file = parsed.GetValue(File);
        string[] pins = parsed.GetValue(Pin) ?? [];
        string[] forbids = parsed.GetValue(Forbid) ?? [];
        string[] orders = parsed.GetValue(Before) ?? [];
        return occasion =>
        {
            List<Problem> problems = [];
            PlanEdits edits = PlanEdits.None;
            if (file is not null)
            {
                if (Input.Bytes(file, out _) is not { } bytes)
                {
                    return null;
                }

                edits = Take(EditsFile.Read(Encoding.UTF8.GetString(bytes)), problems) ?? edits;
            }

            edits = edits with
            {
                Pins = [.. edits.Pins, .. pins.Select(p => Take(EditReader.Pin(p, occasion), problems)).OfType<Pin>()],
                Forbids = [.. edits.Forbids, .. forbids.Select(f => Take(EditReader.Forbid(f, occasion), problems)).OfType<Forbid>()],
                Sequences = [.. edits.Sequences, .. orders.Select(o => Take(EditReader.Sequence(o), problems)).OfType<Sequence>()],
            };
            if (problems.Count > 0)
            {
                Input.Fail(file ?? "edits", [.. problems]);
                return null;
            }

            return edits;
        };
    }

    private static T? Take<T>(Parsed<T> read, List<Problem> problems)
        where T : class
        => read.Match<T?>(r => r, p => { problems.AddRange(p); return null; });
}
