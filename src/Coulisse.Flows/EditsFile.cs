using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Coulisse.Cards;
using Coulisse.Kitchen.Planning.Edits;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Flows;

/// <summary>Reads what a person has fixed from JSON: a document of its own, or a plan that carries it under "edits".</summary>
/// <remarks><c>{"pins": [{"task": "curd-34", "start": "2026-10-10T09:30", "person": "Ada", "kit": "BO"}], "forbids": [{"task": …, "from": …, "to": …, "person": …, "kit": …}], "sequences": [{"first": …, "then": …}]}</c></remarks>
public static class EditsFile
{
    /// <summary>Reads edits.</summary>
    /// <param name="json">The document.</param>
    public static Parsed<PlanEdits> Read(string json)
    {
        JsonObject? root;
        try
        {
            root = JsonNode.Parse(json) as JsonObject;
        }
        catch (JsonException e)
        {
            return new Parsed<PlanEdits>.Failed([new Problem("PLN013", (int)(e.LineNumber ?? 0) + 1, "This is not JSON: " + e.Message, "Write {\"pins\": [{\"task\": …, \"start\": …}]}, or give the document that plan --json printed.")]);
        }

        if (root is null)
        {
            return new Parsed<PlanEdits>.Failed([new Problem("PLN013", 0, "The document is not one JSON object.", "Write {\"pins\": [{\"task\": …, \"start\": …}]}, or give the document that plan --json printed.")]);
        }

        List<Problem> problems = [];
        JsonObject held = root["edits"] as JsonObject ?? root;
        PlanEdits edits = new()
        {
            Pins = [.. Rows(held, "pins").Select((n, i) => new Pin(Text(n, "task", Row("Pin", i), problems), Moment(n, "start", problems), Maybe(n, "person"), Maybe(n, "kit")))],
            Forbids = [.. Rows(held, "forbids").Select((n, i) => new Forbid(Text(n, "task", Row("Ban", i), problems), Moment(n, "from", problems), Moment(n, "to", problems), Maybe(n, "person"), Maybe(n, "kit")))],
            Sequences = [.. Rows(held, "sequences").Select((n, i) => new Sequence(Text(n, "first", Row("Order", i), problems), Text(n, "then", Row("Order", i), problems)))],
        };
        foreach (Pin p in edits.Pins.Where(p => p is { Start: null, Person: null, Kit: null }))
        {
            problems.Add(new Problem("PLN013", 0, $"The pin of “{p.Task}” fixes nothing.", "Give it a start, a person or a kit."));
        }

        foreach (Forbid f in edits.Forbids.Where(f => f is { Person: null, Kit: null } && (f.From is null || f.To is null || f.To <= f.From)))
        {
            problems.Add(new Problem("PLN013", 0, $"The ban of “{f.Task}” forbids nothing.", "Give it a person, a kit, or from and to with the earlier first."));
        }

        return problems.Count > 0 ? new Parsed<PlanEdits>.Failed([.. problems]) : new Parsed<PlanEdits>.Ok(edits);
    }

    private static string Row(string what, int i) => what + " " + (i + 1).ToString(CultureInfo.InvariantCulture);

    private static IEnumerable<JsonNode?> Rows(JsonObject held, string key) => held[key] as JsonArray ?? [];

    private static string? Maybe(JsonNode? n, string key) => n is JsonObject o && o[key] is JsonValue v && v.TryGetValue(out string? text) && text.Length > 0 ? text : null;

    private static string Text(JsonNode? n, string key, string where, List<Problem> problems)
    {
        if (Maybe(n, key) is { } text)
        {
            return text;
        }

        problems.Add(new Problem("PLN013", 0, $"{where} lacks “{key}”.", "Name the task by its key as plan prints it."));
        return "";
    }

    private static LocalDateTime? Moment(JsonNode? n, string key, List<Problem> problems)
    {
        if (Maybe(n, key) is not { } text)
        {
            return null;
        }

        foreach (string form in (ReadOnlySpan<string>)["uuuu-MM-dd'T'HH:mm:ss", "uuuu-MM-dd'T'HH:mm"])
        {
            if (LocalDateTimePattern.CreateWithInvariantCulture(form).Parse(text).TryGetValue(default, out LocalDateTime at))
            {
                return at;
            }
        }

        problems.Add(new Problem("PLN013", 0, $"“{text}” is no moment.", "Write it as 2026-10-10T09:30."));
        return null;
    }
}
