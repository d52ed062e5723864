using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Edits;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Flows;

/// <summary>Reads what happened so far, and the plan that was followed, from JSON.</summary>
/// <remarks>
/// State: <c>{"now": "2026-10-10T09:30", "events": [{"at": "2026-10-10T09:12", "kind": "done", "subject": "Sa003", "by": "Ada", "text": ""}]}</c>,
/// and under <c>"plan"</c>, if wanted, the document that <c>plan --json</c> printed. Moments are those of the kitchen's clock.
/// </remarks>
public static class StateFile
{
    private static readonly string[] Kinds = ["start", "done", "undo", "skip", "lost", "note", "drop", "early", "gate", "gone", "broken"];

    /// <summary>What was read.</summary>
    /// <param name="Now">The moment it speaks of.</param>
    /// <param name="Log">What happened; moments are the kitchen's own, written as if it stood in UTC.</param>
    /// <param name="Plan">The plan, when the file holds one.</param>
    public sealed record State(LocalDateTime Now, LiveLog Log, Plan? Plan);

    /// <summary>Reads a state.</summary>
    public static Parsed<State> Read(string json, Occasion occasion)
    {
        if (Document(json, out JsonObject? root) is { } broken)
        {
            return new Parsed<State>.Failed([broken]);
        }

        List<Problem> problems = [];
        if (Moment(root!["now"]) is not { } now)
        {
            return new Parsed<State>.Failed([new Problem("STA002", 0, "The state does not say what time it is.", "Write \"now\": \"2026-10-10T09:30\".")]);
        }

        ImmutableArray<LiveEvent>.Builder events = ImmutableArray.CreateBuilder<LiveEvent>();
        JsonArray list = root["events"] as JsonArray ?? [];
        for (int i = 0; i < list.Count; i++)
        {
            string where = string.Create(CultureInfo.InvariantCulture, $"Event {i + 1}");
            string kind = Text(list[i], "kind");
            if (!Kinds.Contains(kind))
            {
                problems.Add(new Problem("STA003", 0, $"{where} is of kind “{kind}”.", $"Write one of {string.Join(", ", Kinds)}."));
            }
            else if (Moment(list[i]?["at"]) is not { } at)
            {
                problems.Add(new Problem("STA003", 0, $"{where} does not say when.", "Write \"at\": \"2026-10-10T09:12\"."));
            }
            else
            {
                string id = Text(list[i], "id");
                events.Add(new LiveEvent(id.Length > 0 ? id : where, at.InUtc().ToInstant(), kind, Text(list[i], "subject"), Text(list[i], "by"), Text(list[i], "text")));
            }
        }

        Plan? plan = root["plan"] is JsonObject held ? Planned(held, occasion, problems) : null;
        return problems.Count > 0 ? new Parsed<State>.Failed([.. problems]) : new Parsed<State>.Ok(new State(now, new LiveLog("state", events.ToImmutable()), plan));
    }

    /// <summary>Reads back what re-planning needs of the document that <c>plan --json</c> printed.</summary>
    public static Parsed<Plan> ReadPlan(string json, Occasion occasion)
    {
        if (Document(json, out JsonObject? root) is { } broken)
        {
            return new Parsed<Plan>.Failed([broken]);
        }

        List<Problem> problems = [];
        Plan? plan = Planned(root!, occasion, problems);
        return plan is null || problems.Count > 0 ? new Parsed<Plan>.Failed([.. problems]) : new Parsed<Plan>.Ok(plan);
    }

    private static Problem? Document(string json, out JsonObject? root)
    {
        root = null;
        try
        {
            root = JsonNode.Parse(json) as JsonObject;
            return root is null ? new Problem("STA001", 0, "The document is not one JSON object.", "Give the file that was written as state, or by plan --json.") : null;
        }
        catch (JsonException e)
        {
            return new Problem("STA001", (int)(e.LineNumber ?? 0) + 1, "This is not JSON: " + e.Message, "Give the file that was written as state, or by plan --json.");
        }
    }

    private static Plan? Planned(JsonObject root, Occasion occasion, List<Problem> problems)
    {
        if (root["tasks"] is not JsonArray { Count: > 0 } list)
        {
            problems.Add(new Problem("STA004", 0, "The plan has no tasks.", "Give the document that plan --json printed."));
            return null;
        }

        ImmutableArray<PlannedTask>.Builder tasks = ImmutableArray.CreateBuilder<PlannedTask>();
        foreach (JsonNode? t in list)
        {
            if (Text(t, "id") is not { Length: > 0 } id || Moment(t?["start"]) is not { } start || Moment(t?["end"]) is not { } end || !Enum.TryParse(Text(t, "kind"), ignoreCase: true, out TaskKind kind))
            {
                problems.Add(new Problem("STA004", 0, string.Create(CultureInfo.InvariantCulture, $"Task {tasks.Count + 1} of the plan lacks id, kind, start or end."), "Give the document that plan --json printed."));
                return null;
            }

            tasks.Add(new PlannedTask
            {
                Id = id,
                Key = Text(t, "key"),
                Text = Text(t, "text"),
                Kind = kind,
                Start = start,
                End = end,
                Component = Text(t, "component") is { Length: > 0 } c ? c : null,
                Line = Number(t, "step") is { } line ? (int)line : 0,
                People = Texts(t, "people"),
                Kit = Texts(t, "kit"),
                Celsius = Number(t, "celsius"),
                Within = Text(t, "within") is { Length: > 0 } w ? w : null,
            });
        }

        return new Plan
        {
            Title = Text(root, "title"),
            SlotStart = occasion.SlotStart,
            SlotLength = occasion.SlotLength,
            Tasks = tasks.ToImmutable(),
            Edits = root["edits"] is JsonObject ? EditsFile.Read(root.ToJsonString()).Match(e => e, p => { problems.AddRange(p); return PlanEdits.None; }) : PlanEdits.None,
            RunSheet = [.. (root["runSheet"] as JsonArray ?? []).Select(s => new RunSegment
            {
                Number = (int)(Number(s, "segment") ?? 0),
                StartSecond = (int)(Number(s, "start") ?? 0),
                Seconds = (int)(Number(s, "seconds") ?? 0),
                Show = Text(s, "show"),
                DroppableSeconds = (int)(Number(s, "droppableSeconds") ?? 0),
                DropRank = (int)(Number(s, "dropRank") ?? 0),
            })],
        };
    }

    private static string Text(JsonNode? node, string key) => node is JsonObject o && o[key] is JsonValue v && v.TryGetValue(out string? text) ? text : "";

    private static double? Number(JsonNode? node, string key) => node is JsonObject o && o[key] is JsonValue v && v.TryGetValue(out double number) ? number : null;

    private static ImmutableArray<string> Texts(JsonNode? node, string key) => node is JsonObject o && o[key] is JsonArray a ? [.. a.Select(x => x is JsonValue v && v.TryGetValue(out string? text) ? text : "").Where(x => x.Length > 0)] : [];

    private static LocalDateTime? Moment(JsonNode? node)
    {
        if (node is not JsonValue v || !v.TryGetValue(out string? text))
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

        return null;
    }
}
