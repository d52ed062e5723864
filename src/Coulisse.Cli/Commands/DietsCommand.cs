using System.Collections.Immutable;
using System.CommandLine;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Slot;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse diets OCCASION: seat by seat what is left out, what comes instead, what is still found; batches for diets; twins traced.</summary>
internal static class DietsCommand
{
    public static Command Create()
    {
        Argument<string> sheet = new("OCCASION") { Description = "Occasion sheet with a diets table" };
        Option<string> code = MovesText.Code();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("diets", "Declared diets seat by seat, smallest batches made for them, twins traced to their batch.\nExample: coulisse diets examples/demo/occasion.md --code au") { sheet, code, json };
        command.SetAction(parsed => PlanCommand.Load([parsed.GetRequiredValue(sheet)], null, out int exit) is { } occasion ? Show(occasion, AllergenNames.RegimeOf(parsed.GetRequiredValue(code)), parsed.GetValue(json)) : exit);
        return command;
    }

    private static int Show(Occasion occasion, AllergenRegime regime, bool json)
    {
        ImmutableArray<GuestRow> rows = Guests.Of(occasion, regime);
        ImmutableArray<DietBatch> batches = DietBatches.Of(occasion, rows, regime);
        ImmutableArray<TracedTwin> twins = occasion.People.IsEmpty || occasion.SlotLength <= Duration.Zero ? [] : TracedTwin.Trace(occasion, LiveSlot.Decide(occasion).Twins, regime);
        return json ? Input.Json(new
        {
            schema = "coulisse/diets/1", title = occasion.Title,
            seats = rows.Select(r => new { line = r.Line, seats = r.Seats, declared = r.Declared, codes = r.Codes, plates = r.Plates.Select(p => new { dish = p.Dish, served = p.Served, without = p.Without, instead = p.Instead, found = p.Found.Select(f => new { name = f.Name, status = f.Status, because = f.Because.Select(b => b.Because) }), crossContact = p.CrossContact, minds = p.Minds }) }),
            batches = batches.Select(b => new { dish = b.Dish, component = b.Component, seats = b.Seats, needed = b.Needed, makes = b.Makes, unit = b.Unit, batches = b.Batches, allergens = b.Allergens.Select(a => new { name = a.Name, status = a.Status }) }),
            twins = twins.Select(t => new { number = t.Number, dish = t.Dish, component = t.Component, state = t.State, of = t.Of, allergens = t.Allergens.Select(a => new { name = a.Name, status = a.Status }) }),
        }) : Print(occasion.Title, rows, batches, twins);
    }

    private static int Print(string title, ImmutableArray<GuestRow> rows, ImmutableArray<DietBatch> batches, ImmutableArray<TracedTwin> twins)
    {
        MovesText.Utf8();
        Console.Out.WriteLine(title);
        foreach (GuestRow row in rows)
        {
            Console.Out.WriteLine($"\nSeat {string.Join(", ", row.Seats)}: {row.Declared}{(row.Codes.IsEmpty ? " (names no allergen that is known: ask)" : "")}");
            foreach (GuestPlate p in row.Plates)
            {
                Console.Out.WriteLine($"  {p.Dish}: {(p.Served ? p.Text.Length > 0 ? p.Text : "as it is" : "none of it")}");
                foreach (AllergenLine f in p.Found)
                {
                    Console.Out.WriteLine($"    still {f.Status.ToString().ToLowerInvariant()}: {f.Name} ({f.Because[0].Because})");
                }

                foreach (string note in p.CrossContact)
                {
                    Console.Out.WriteLine("    cross-contact: " + note);
                }
            }
        }

        if (!batches.IsEmpty)
        {
            Console.Out.WriteLine("\nMade for diets alone:");
        }

        foreach (DietBatch b in batches)
        {
            Console.Out.WriteLine($"  {b.Text}; {Names(b.Allergens)}");
        }

        if (!twins.IsEmpty)
        {
            Console.Out.WriteLine("\nTwins:");
        }

        foreach (TracedTwin t in twins)
        {
            Console.Out.WriteLine(FormattableString.Invariant($"  {t.Number} {t.Component}, {t.State}: of {t.Of}; {Names(t.Allergens)}"));
        }

        return Exit.Done;
    }

    private static string Names(ImmutableArray<AllergenLine> lines) => lines.IsEmpty ? "no allergen known" : string.Join(", ", lines.Select(l => l.Status == AllergenStatus.Contains ? l.Name : $"{l.Name} ({l.Status.ToString().ToLowerInvariant()})"));
}
