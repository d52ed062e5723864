using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using NodaTime;

namespace Coulisse.Gauge.Planning;

/// <summary>A made-up banquet: cards and a sheet written as text and read like any other, so that its tasks come about as all tasks do.</summary>
internal static class Banquet
{
    private static readonly string[] Bases = ["Carrot", "Celeriac", "Barley", "Trout", "Lentil", "Quince", "Fennel", "Almond", "Leek", "Cherry", "Oat", "Parsnip", "Mushroom", "Plum", "Pumpkin", "Rye"];
    private static readonly string[] Forms = ["purée", "crumb", "gel", "glaze", "custard", "salad", "tart", "broth", "cream", "crisp"];

    /// <summary>Builds one.</summary>
    /// <param name="dishes">Dishes; one of them is about thirty tasks.</param>
    /// <param name="people">People.</param>
    /// <param name="seed">Seed.</param>
    public static (Occasion Occasion, ImmutableArray<Batch> Batches) Make(int dishes, int people, int seed)
    {
        Random r = new(seed);
        Dictionary<string, string> cards = [];
        StringBuilder rows = new();
        for (int d = 0; d < dishes; d++)
        {
            string path = string.Create(CultureInfo.InvariantCulture, $"cards/dish-{d + 1}.md");
            cards[path] = Card(d, r);
            rows.AppendLine(CultureInfo.InvariantCulture, $"| Course {d + 1} | {path} | 40 plates | served at 19:00 |");
        }

        string sheet = Sheet(rows.ToString(), people, Math.Max(2, people / 3));
        OccasionSheet read = OccasionReader.Read(sheet, new LocalDate(2026, 10, 1)).Match(s => s, Refused<OccasionSheet>);
        Occasion occasion = OccasionBuilder.Build(read, path => CardReader.Read(new CardText(cards[path], path)).Match(x => x, Refused<Dish>)).Match(o => o, Refused<Occasion>);
        return (occasion, OccasionBatches.Make(occasion).Match(b => b, Refused<ImmutableArray<Batch>>));
    }

    private static T Refused<T>(ImmutableArray<Problem> p) => throw new InvalidOperationException(string.Join("; ", p));

    private static string Card(int d, Random r)
    {
        StringBuilder b = new();
        b.AppendLine(CultureInfo.InvariantCulture, $"# Course {d + 1}").AppendLine().AppendLine("Serves 40.").AppendLine();
        for (int c = 0; c < 4; c++)
        {
            string name = $"{Bases[r.Next(Bases.Length)]} {Forms[r.Next(Forms.Length)]} {(char)('A' + c)}";
            b.AppendLine("## " + name).AppendLine().AppendLine("Keeps 3 days at 5 °C or less.").AppendLine();
            b.AppendLine(CultureInfo.InvariantCulture, $"- {1000 + (100 * r.Next(20))} g carrots, peeled").AppendLine(CultureInfo.InvariantCulture, $"- {200 + (50 * r.Next(6))} g {(r.Next(2) == 0 ? "whole milk" : "water")}").AppendLine();
            b.AppendLine(CultureInfo.InvariantCulture, $"1. Weigh and cut everything small. (hands {10 + r.Next(20)} min)");
            b.AppendLine(r.Next(4) switch
            {
                0 => string.Create(CultureInfo.InvariantCulture, $"2. Roast at {150 + (10 * r.Next(4))} °C for {20 + (5 * r.Next(8))} min."),
                1 => string.Create(CultureInfo.InvariantCulture, $"2. Simmer on the hob {15 + (5 * r.Next(6))} min. (hands 5 min)"),
                2 => string.Create(CultureInfo.InvariantCulture, $"2. Blend it {1 + r.Next(3)} min in the jug blender and sieve. (hands {8 + r.Next(10)} min)"),
                _ => string.Create(CultureInfo.InvariantCulture, $"2. Bake at {150 + (10 * r.Next(4))} °C for {12 + (4 * r.Next(6))} min, turn at 10 min."),
            });
            b.AppendLine(CultureInfo.InvariantCulture, $"3. Season, taste and fill into boxes. (hands {5 + r.Next(12)} min)");
            b.AppendLine(r.Next(2) == 0 ? "4. Fridge 60 min." : "4. Cool on a rack 30 min.");
            b.AppendLine(CultureInfo.InvariantCulture, $"5. Portion for the plates. (hands {6 + r.Next(14)} min)").AppendLine();
        }

        return b.ToString();
    }

    private static string Sheet(string dishes, int people, int ovens)
    {
        StringBuilder b = new();
        b.AppendLine("# Banquet").AppendLine();
        b.AppendLine("Saturday 10 October 2026, live 19:00 to 19:20 in the hall.").AppendLine();
        b.AppendLine("40 guests and no over, so 40 plates of each course.").AppendLine();
        b.AppendLine("Prep windows: Thursday 8 October 08:00 to 17:00; Friday 9 October 08:00 to 17:00; Saturday 10 October 08:00 to 19:00. Meals: Friday 12:00 to 12:30, Saturday 12:00 to 12:30, nobody works then.").AppendLine();
        b.AppendLine("## Dishes").AppendLine().AppendLine("| Dish | Card | How many | For |").AppendLine("|---|---|---|---|").AppendLine(dishes);
        b.AppendLine("## Hands").AppendLine().AppendLine("| Name | Role | Place | Thursday | Friday | Saturday | Skills | Language | Notes |").AppendLine("|---|---|---|---|---|---|---|---|---|");
        for (int p = 0; p < people; p++)
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"| Cook {p + 1} | {(p == 0 ? "chef, presents" : "cook")} | {(p == 0 ? "hall" : "back")} | 08:00 to 17:00 | 08:00 to 17:00 | 08:00 to 19:20 | {(p % 3 == 0 ? "all" : "cold kitchen, hob, oven, knife, plating")} | English | |");
        }

        b.AppendLine().AppendLine("## Kit").AppendLine().AppendLine("| Code | What | Place | Number | Capacity | Temperatures | Power, kW | Circuit |").AppendLine("|---|---|---|---|---|---|---|---|");
        for (int o = 0; o < ovens; o++)
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"| O{o + 1} | convection oven | back | 1 | 6 shelves, one GN 1/1 each | one at a time, to 250 °C | – | – |");
        }

        for (int h = 0; h < 2 * ovens; h++)
        {
            b.AppendLine(CultureInfo.InvariantCulture, $"| H{h + 1} | hob ring | back | 1 | one pan | – | – | – |");
        }

        b.AppendLine("| BL1 | jug blender | back | 1 | 2 L | – | – | – |").AppendLine("| BL2 | jug blender | back | 1 | 2 L | – | – | – |");
        b.AppendLine("| FR | upright fridge | back | 1 | 40 slots of GN 1/1 | 3 °C | – | – |");
        return b.ToString();
    }
}
