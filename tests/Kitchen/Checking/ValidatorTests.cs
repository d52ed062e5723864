using System.Collections.Immutable;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Planning.Checking;
using Coulisse.Tests;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Kitchen.Tests.Checking;

public sealed class ValidatorTests
{
    private static readonly LocalDateTime Eight = new(2026, 10, 9, 8, 0);

    private static readonly Occasion Small = new()
    {
        Title = "small", Sheet = new OccasionSheet { Title = "small" }, SlotStart = Eight.PlusHours(6), SlotLength = Duration.FromSeconds(100), SlotPlace = "front", Guests = 1, Covers = 1,
        People = [new("Ann", "", "", [new(Eight, Eight.PlusHours(8), 1)], ["all"], [], [], 1)],
        Kit = [new SheetKit("OV", "oven", "oven", "back", 1, "", 1) { Shelves = 2, CelsiusMax = 250, Kilowatts = 2, Circuit = "K" }, new SheetKit("BL", "blender", "blender", "back", 1, "", 2) { Kilowatts = 1, Circuit = "K" }],
        Circuits = [new("K", 12, 230, 2.76, ["OV", "BL"], 1)],
        Meals = [new(Eight.PlusHours(4), Eight.PlusHours(5), 1)],
    };

    // A fault of 5 minutes (or the size named), and the near miss that must stay silent.
    public static TheoryData<string, string, double, bool> Planted => new()
    {
        { "person-twice", "a 0 30 Ann;b 25 40 Ann", 5, true },
        { "person-twice", "a 0 30 Ann;b 30 40 Ann", 0, false },
        { "person-outside-hours", "a -5 30 Ann", 5, true },
        { "person-outside-hours", "a 470 480 Ann", 0, false },
        { "person-at-meal", "a 200 245 Ann", 5, true },
        { "person-at-meal", "a 200 240 Ann", 0, false },
        { "person-unknown", "a 0 10 Bob", 1, true },
        { "kit-unknown", "a 0 10 - XX", 1, true },
        { "kit-twice", "a 0 30 - BL;b 25 40 - BL", 1, true },
        { "kit-twice", "a 0 30 - BL;b 30 40 - BL", 0, false },
        { "two-set-points", "a 0 30 - OV 170;b 25 40 - OV 160", 5, true },
        { "two-set-points", "a 0 30 - OV 170;b 25 40 - OV 170", 0, false },
        { "set-point-out-of-range", "a 0 30 - OV 260", 10, true },
        { "set-point-out-of-range", "a 0 30 - OV 250", 0, false },
        { "circuit-overloaded", "a 0 30 - OV;b 25 40 - BL", 0.24, true },
        { "circuit-overloaded", "a 0 30 - OV;b 30 40 - BL", 0, false },
        { "moment-outside", "a 0 30 - OV;m 25 35 Ann OV - a", 5, true },
        { "moment-outside", "a 0 30 - OV;m 30 35 Ann OV - a", 0, false },
        { "moment-other-kit", "a 0 30 - OV;m 5 6 Ann BL - a", 1, true },
        { "moment-of-nothing", "m 5 6 Ann OV - z", 1, true },
        { "run-sheet-sum", "s 0 60 10;s 60 35 10", -5, true },
        { "run-sheet-sum", "s 0 60 10;s 60 40 10", 0, false },
        { "segment-not-contiguous", "s 0 60 10;s 65 35 10", 5, true },
        { "too-little-droppable", "s 0 100 5", 5, true },
        { "too-little-droppable", "s 0 100 10", 0, false },
        { "twin-missing", "s 0 100 10 1", 1, true },
        { "twin-missing", "s 0 100 10 1;w 1 355 0", 0, false },
        { "twin-unused", "s 0 100 10;w 1 355 0", 1, true },
        { "twin-late", "s 0 100 10 1;w 1 365 0", 5, true },
        { "twin-late", "s 0 100 10 1;w 1 360 0", 0, false },
        { "twin-not-set-out", "b 350 365 Ann;s 0 100 10 1;w 1 345 0 b", 5, true },
        { "twin-not-set-out", "b 350 360 Ann;s 0 100 10 1;w 1 345 0 b", 0, false },
        { "twin-not-set-out", "a 300 345 -;b 340 350 Ann;s 0 100 10 1;w 1 345 0 b a", 5, true },
        { "twin-not-set-out", "a 300 340 -;b 340 350 Ann;s 0 100 10 1;w 1 340 0 b a", 0, false },
        { "twin-not-set-out", "s 0 100 10 1;w 1 345 0 z", 1, true },
    };

    [Theory]
    [MemberData(nameof(Planted))]
    public void A_planted_fault_is_found_by_its_size_and_a_near_miss_is_silent(string code, string plan, double by, bool found)
    {
        PlanFault[] faults = [.. PlanValidator.Check(Small, Parse(plan)).Where(f => f.Code == code)];

        if (!found)
        {
            Assert.Empty(faults);
            return;
        }

        Assert.Equal(by, Assert.Single(faults).By, 6);
    }

    [Fact]
    public void The_hand_made_plan_has_one_fault_of_the_rules_checked()
    {
        string sheetText = File.ReadAllText(SharedData.Path("examples/demo-scenario/occasion.md"));
        OccasionSheet sheet = Assert.IsType<Parsed<OccasionSheet>.Ok>(OccasionReader.Read(sheetText, new LocalDate(2026, 9, 1))).Value;
        Occasion occasion = Small with
        {
            People = [.. sheet.People.Select(p => new Person(p.Name, p.Role, p.Place, p.Hours, p.Skills, p.Without, p.Languages, p.Speed))],
            Kit = sheet.Kit, Circuits = sheet.Circuits, Meals = sheet.Meals, Windows = sheet.Windows,
        };
        using JsonDocument json = JsonDocument.Parse(File.ReadAllText(Path.Combine(SharedData.Repository, "tests", "Shared", "hand-plan.json")));
        JsonElement root = json.RootElement;
        ImmutableArray<PlannedTask> tasks = [.. root.GetProperty("tasks").EnumerateArray().Select(t => Task(root.GetProperty("days"), t))];

        ImmutableArray<PlanFault> faults = PlanValidator.Check(occasion, Empty with { Tasks = tasks, SlotStart = sheet.SlotStart!.Value, SlotLength = sheet.SlotLength!.Value });

        Assert.True(tasks.Length > 100);
        Assert.NotEmpty(occasion.Circuits);
        // The crisps (51 at 5 s by two hands: 128 s from 21:15) end at 23:23, segment 9 at 23:15: eight seconds run on into the close.
        PlanFault fault = Assert.Single(faults);
        Assert.Equal(("moment-outside", "L9a L9"), (fault.Code, string.Join(' ', fault.TaskIds)));
        Assert.Equal(8.0 / 60, fault.By, 6);
    }

    private static Plan Empty => new() { Title = "p", SlotStart = Small.SlotStart, SlotLength = Small.SlotLength };

    private static PlannedTask Task(JsonElement days, JsonElement t)
    {
        LocalDate day = LocalDatePattern.Iso.Parse(days.GetProperty(t.GetProperty("day").GetString()!).GetString()!).Value;
        LocalDateTime At(string key) => day + LocalTimePattern.ExtendedIso.Parse(t.GetProperty(key).GetString()!).Value;
        string text = t.GetProperty("text").GetString()!;
        string kind = t.GetProperty("kind").GetString()!;
        return new PlannedTask
        {
            Id = t.GetProperty("id").GetString()!, Text = text, Start = At("start"), End = At("end"),
            Kind = text.StartsWith("meal", StringComparison.Ordinal) ? TaskKind.Meal : kind switch { "moment" => TaskKind.Moment, "wash" => TaskKind.Wash, "unattended" => TaskKind.Unattended, _ => TaskKind.Work },
            People = [.. t.GetProperty("people").EnumerateArray().Select(p => p.GetString()!)],
            // The hand plan writes the stage, a place, among the kit.
            Kit = [.. t.GetProperty("kit").EnumerateArray().Select(p => p.GetString()!).Where(k => k != "stage")],
            Celsius = t.GetProperty("celsius") is { ValueKind: JsonValueKind.Number } c ? c.GetDouble() : null,
            Within = t.TryGetProperty("within", out JsonElement w) ? w.GetString() : null,
        };
    }

    private static Plan Parse(string text)
    {
        Plan plan = Empty;
        foreach (string[] c in text.Split(';').Select(p => p.Split(' ')))
        {
            int from = int.Parse(c[1], System.Globalization.CultureInfo.InvariantCulture);
            int to = int.Parse(c[2], System.Globalization.CultureInfo.InvariantCulture);
            plan = c[0] switch
            {
                "s" => plan with { RunSheet = plan.RunSheet.Add(new RunSegment { Number = plan.RunSheet.Length + 1, StartSecond = from, Seconds = to, Show = "", DroppableSeconds = int.Parse(c[3], System.Globalization.CultureInfo.InvariantCulture), Twins = c.Length > 4 ? [1] : [] }) },
                "w" => plan with { Twins = plan.Twins.Add(new Twin { Number = from, Component = "x", State = "set", ReadyBy = Eight.PlusMinutes(to), CueSecond = 0, SetOutBy = c.Length > 4 ? c[4] : null, MadeBy = c.Length > 5 ? c[5] : null }) },
                _ => plan with
                {
                    Tasks = plan.Tasks.Add(new PlannedTask
                    {
                        Id = c[0], Text = c[0], Kind = c.Length > 6 || c[0] == "m" ? TaskKind.Moment : TaskKind.Work, Start = Eight.PlusMinutes(from), End = Eight.PlusMinutes(to),
                        People = c.Length > 3 && c[3] != "-" ? [c[3]] : [], Kit = c.Length > 4 ? [c[4]] : [],
                        Celsius = c.Length > 5 && c[5] != "-" ? double.Parse(c[5], System.Globalization.CultureInfo.InvariantCulture) : null, Within = c.Length > 6 ? c[6] : null,
                    }),
                },
            };
        }

        return plan;
    }
}
