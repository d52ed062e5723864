using System.Collections.Immutable;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Planning;
using Coulisse.Tests;
using Coulisse.Views.Papers;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Papers.Tests;

/// <summary>Bundles to print: one made by hand here, one from the outside plan made by hand.</summary>
internal static class Bundles
{
    public static readonly PaperMark Mark = new("3f9c1a", "Fri 9 Oct 2026 18:20");

    public static Batch Card(string text, ScaleTo? to = null)
    {
        Dish dish = CardReader.Read(new CardText(text, "card.md")).Match(d => d, p => throw new InvalidOperationException(p[0].Message));
        return Scaling.Scale(Weighing.Weigh(dish, null), to ?? new ScaleTo.Factor(1)).Match(b => b, p => throw new InvalidOperationException(p[0].Message));
    }

    public const string Tart = """
        # Pear and oat tart

        Serves 8.

        ## Crust

        - 250 g plain flour
        - 125.5 g cold butter
        - 2 tbsp caster sugar
        - salt to taste

        1. Rub the butter into the flour and sugar.
        2. Bake at 170 °C for 25 min.

        ## Filling

        - 600 g pears, peeled
        - 3.5 g ground ginger

        1. Simmer the pears 10 min with the ginger. (hands 5 min)
        """;

    public static PaperBundle Small(double factor = 1) => new() { Mark = Mark, Batches = [Card(Tart, new ScaleTo.Factor(factor))], Plan = Plan() };

    public static Plan Plan()
    {
        LocalDateTime noon = new(2026, 10, 10, 12, 0);
        return new Plan
        {
            Title = "Orchard evening", SlotStart = noon, SlotLength = Duration.FromMinutes(10),
            Tasks =
            [
                new() { Id = "a", Text = "weigh and rub the crust", Kind = TaskKind.Work, Start = noon.PlusHours(-26), End = noon.PlusHours(-25), People = ["Ada", "Bo"], Kit = ["bowl"], Grams = 400.5, Slack = Duration.FromMinutes(12), Component = "Crust" },
                new() { Id = "b", Text = "bake the crust", Kind = TaskKind.Unattended, Start = noon.PlusHours(-25), End = noon.PlusHours(-25).PlusMinutes(25), Kit = ["oven 1"], Celsius = 170, Component = "Crust" },
                new() { Id = "b1", Text = "turn the crust", Kind = TaskKind.Moment, Within = "b", Start = noon.PlusHours(-25).PlusMinutes(12), End = noon.PlusHours(-25).PlusMinutes(13), People = ["Bo"], Kit = ["oven 1"], Component = "Crust" },
                new() { Id = "w", Text = "bench and bowl", Kind = TaskKind.Wash, Start = noon.PlusHours(-24), End = noon.PlusHours(-24).PlusMinutes(8), People = ["Ada"], Removes = ["wheat", "milk"] },
                new() { Id = "c", Text = "peel and simmer the pears", Kind = TaskKind.Work, Start = noon.PlusHours(-3), End = noon.PlusHours(-3).PlusMinutes(15), People = ["Ada"], Kit = ["ring"], Grams = 603.5, Component = "Filling" },
            ],
            Twins =
            [
                new() { Number = 1, Component = "Crust", State = "baked, cold", Count = 2, MadeBy = "b", ReadyBy = noon.PlusHours(-24), Holds = "room", Place = "shelf 2", BroughtBy = "Bo", CueSecond = 95, Replaces = "25 min baking", Afterwards = "live one is baked on for the staff" },
                new() { Number = 2, Component = "Filling", State = "simmered", Grams = 603.5, MadeBy = "c", ReadyBy = noon.PlusHours(-2), Holds = "3 °C", Place = "fridge, slot 4", BroughtBy = "Ada", CueSecond = 270 },
            ],
            RunSheet =
            [
                new() { Number = 1, StartSecond = 0, Seconds = 90, Show = "welcome", Who = Who(("Ada", "speaks"), ("Bo", "hands washed in view")) },
                new() { Number = 2, StartSecond = 90, Seconds = 180, Show = "rub the crust, swap", Component = "Crust", Who = Who(("Ada", "rubs in 250 g of flour"), ("Bo", "brings the baked crust")), Kit = ["bowl"], Twins = [1], DroppableSeconds = 40, DropRank = 2 },
                new() { Number = 3, StartSecond = 270, Seconds = 240, Show = "purée the pears", Component = "Filling", Who = Who(("Ada", "blends")), Kit = ["blender"], Twins = [2], Gate = true, Silence = true, DroppableSeconds = 60, DropRank = 1 },
                new() { Number = 4, StartSecond = 510, Seconds = 90, Show = "close", Who = Who(("Ada", "questions"), ("Bo", "serves")) },
            ],
            Fallbacks = ["No oven: show the baked crust from the start."],
        };
    }

    /// <summary>The outside plan made by hand, with the demo cards of this repository.</summary>
    public static PaperBundle Demo()
    {
        using JsonDocument json = JsonDocument.Parse(File.ReadAllText(Path.Combine(SharedData.Repository, "tests", "Shared", "hand-plan.json")));
        Dictionary<string, LocalDate> days = json.RootElement.GetProperty("days").EnumerateObject().ToDictionary(d => d.Name, d => LocalDatePattern.Iso.Parse(d.Value.GetString()!).Value);
        JsonElement[] all = [.. json.RootElement.GetProperty("tasks").EnumerateArray()];
        int second = 0;
        RunSegment[] live = [.. all.Where(t => t.GetProperty("kind").GetString() == "live").Select((t, i) => new RunSegment
        {
            Number = i + 1, StartSecond = second, Seconds = Add(ref second, t.GetProperty("seconds").GetInt32()), Show = t.GetProperty("text").GetString()!,
            Who = t.GetProperty("actions").EnumerateObject().ToImmutableSortedDictionary(a => a.Name, a => a.Value.GetString()!), Kit = t.TryGetProperty("kitWords", out JsonElement words) ? [words.GetString()!] : [],
        })];
        PlannedTask[] tasks = [.. all.Where(t => t.GetProperty("kind").GetString() != "live").Select(t =>
        {
            LocalDate day = days[t.GetProperty("day").GetString()!];
            LocalTime At(string key) => LocalTimePattern.ExtendedIso.Parse(t.GetProperty(key).GetString()!).Value;
            string text = t.GetProperty("text").GetString()!;
            string? within = t.TryGetProperty("within", out JsonElement w) ? w.GetString() : null;
            return new PlannedTask
            {
                Id = t.GetProperty("id").GetString()!, Text = text, Start = day + At("start"), End = day + At("end"),
                Kind = within is not null ? TaskKind.Moment : t.GetProperty("kind").GetString() == "unattended" ? TaskKind.Unattended : text.Contains("WASH", StringComparison.Ordinal) ? TaskKind.Wash : TaskKind.Work,
                People = [.. t.GetProperty("people").EnumerateArray().Select(p => p.GetString()!)], Kit = [.. t.GetProperty("kit").EnumerateArray().Select(p => p.GetString()!)],
                Celsius = t.GetProperty("celsius").ValueKind == JsonValueKind.Number ? t.GetProperty("celsius").GetDouble() : null, Within = within,
                Component = t.GetProperty("component").GetString(),
            };
        })];
        string cards = Path.Combine(SharedData.Repository, "examples/demo/cards");
        return new PaperBundle
        {
            Mark = Mark,
            Batches = [Card(File.ReadAllText(Path.Combine(cards, "starter.md")), new ScaleTo.Covers(53)), .. Directory.GetFiles(cards, "slice-*.md").Where(f => !f.Contains("loose", StringComparison.Ordinal)).Order().Select(f => Card(File.ReadAllText(f)))],
            Plan = Plan() with { Title = "Demonstration by hand", SlotStart = new LocalDateTime(2026, 10, 10, 14, 0), SlotLength = Duration.FromMinutes(25), RunSheet = [.. live], Tasks = [.. tasks.OrderBy(t => t.Start)] },
        };
    }

    private static int Add(ref int clock, int seconds)
    {
        clock += seconds;
        return seconds;
    }

    private static ImmutableSortedDictionary<string, string> Who(params (string Name, string Does)[] who) => who.ToImmutableSortedDictionary(w => w.Name, w => w.Does);
}
