using System.Collections.Immutable;
using Coulisse.Kitchen.Planning;
using NodaTime;

namespace Coulisse.Web.Tests;

/// <summary>A small plan made by hand: an onion tart shown in five minutes by two people, with one twin.</summary>
internal static class HandPlan
{
    private static readonly LocalDateTime Slot = new(2026, 3, 7, 14, 0);

    public static Plan Tart { get; } = new()
    {
        Title = "Onion tart <b>at noon</b>",
        SlotStart = Slot,
        SlotLength = Duration.FromMinutes(5),
        Tasks =
        [
            Task("t1", "Slice onions", TaskKind.Work, 0, 30, ["Ada"], []) with { Component = "Onions", Because = "before the pan is hot", Slack = Duration.FromMinutes(20), Line = 7 },
            Task("t2", "Oven to 180", TaskKind.Preheat, 30, 45, [], ["BO"]) with { Celsius = 180 },
            Task("t3", "Bake", TaskKind.Unattended, 45, 90, [], ["BO"]) with { Celsius = 180, Component = "Onions" },
            Task("t4", "Turn the tart", TaskKind.Moment, 60, 62, ["Ada"], ["BO"]) with { Within = "t3", Component = "Onions" },
            Task("t5", "Cool", TaskKind.Unattended, 90, 90 + (15 * 60), [], ["F1"]) with { Component = "Onions" },
            Task("t6", "Set up", TaskKind.House, 23 * 60, (23 * 60) + 20, ["Ben"], []),
        ],
        Twins = [new Twin { Number = 1, Component = "Onions", State = "baked, cold", Count = 2, Grams = 1000, MadeBy = "t5", ReadyBy = Slot.PlusHours(-20), CueSecond = 120, Holds = "3 °C", Place = "F1", BroughtBy = "Ben", Replaces = "45 min baking", Afterwards = "eaten" }],
        RunSheet =
        [
            new RunSegment { Number = 1, StartSecond = 0, Seconds = 120, Show = "Slice one onion", Component = "Onions", Gate = true, Who = ImmutableSortedDictionary<string, string>.Empty.Add("Ada", "slices").Add("Ben", "keeps the time") },
            new RunSegment { Number = 2, StartSecond = 120, Seconds = 180, Show = "Cut the baked tart", Component = "Onions", Twins = [1], DroppableSeconds = 30, DropRank = 1, Who = ImmutableSortedDictionary<string, string>.Empty.Add("Ada", "cuts") },
        ],
        Assumed = ["the oven starts cold"],
    };

    private static PlannedTask Task(string id, string text, TaskKind kind, int from, int to, ImmutableArray<string> people, ImmutableArray<string> kit) => new()
    {
        Id = id, Text = text, Kind = kind, Start = Slot.PlusDays(-1).PlusMinutes(from), End = Slot.PlusDays(-1).PlusMinutes(to), People = people, Kit = kit,
    };
}
