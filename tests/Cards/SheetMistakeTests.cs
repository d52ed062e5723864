using Coulisse.Cards.Occasions;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Cards.Tests;

/// <summary>Mistakes people make in an occasion sheet or its one sentence: each is named with its line and remedy, each near miss is read.</summary>
public sealed class SheetMistakeTests
{
    private const string Day = "# Evening\nSaturday 10 October 2026, live 14:00 to 14:25 on stage. 40 guests. Prep windows: Friday 9 October 09:00 to 12:00.\n";
    private const string Kit = "## Kit\n| Code | What | Place | Number | Circuit |\n|---|---|---|---|---|\n| SO | oven | stage | 1 | K1 |\n";
    private static readonly LocalDate Today = new(2026, 10, 1);

    private static Parsed<OccasionSheet> Read(string text) => OccasionReader.Read(text, Today);

    [Theory]
    [InlineData("Saturday 10 October 2026, live 14:25 to 14:00 on stage. 40 guests.", "OCC009", 1)]
    [InlineData("53 plates, Saturday 25:00, 25 minutes, Ilse", "OCC011", 1)]
    [InlineData("53 plates, Saturday 14:75, 25 minutes, Ilse", "OCC011", 1)]
    [InlineData("53 plates, Satuday 14:00, 25 minutes, Ilse", "OCC010", 1)]
    [InlineData("53 plates, Friday 10 October 2026, 14:00, 25 minutes, Ilse", "OCC010", 1)]
    [InlineData("53 plates, 31 November 2026, 14:00, 25 minutes, Ilse", "OCC010", 1)]
    [InlineData(Day + "\n## Guestlist\n", "OCC004", 4)]
    [InlineData(Day + "| Dish | Card |\n|---|---|\n| A | a.md |", "OCC017", 3)]
    [InlineData(Day + "## Dishes\n| Dish | Card |\n|---|---|\n| A | a.md |", "OCC005", 4)]
    [InlineData(Day + "## Dishes\n| Dish | Card | How many |\n|---|---|---|\n| A | a.md | some |", "OCC007", 6)]
    [InlineData(Day + "## Dishes\n| Dish | Card | How many |\n|---|---|---|\n| A | a.md | 40 plates |\n| a | b.md | 40 plates |", "OCC013", 7)]
    [InlineData(Day + "## Hands\n| Name | Friday |\n|---|---|\n| Ilse | 12:00 to 09:00 |", "OCC009", 6)]
    [InlineData(Day + "## Hands\n| Name | Friday |\n|---|---|\n| Ilse | 18:00 to 20:00 |", "OCC006", 6)]
    [InlineData(Day + Kit + "| so | hob ring | stage | 1 | – |", "OCC012", 7)]
    [InlineData(Day + Kit + "\n## Circuits\n| Circuit | Limit, kW |\n|---|---|\n| K2 | 3.68 |", "OCC015", 6)]
    [InlineData(Day + Kit + "\n## Circuits\n| Circuit | Limit, kW | Kit on it |\n|---|---|---|\n| K1 | 3.68 | SO, BX2 |", "OCC015", 11)]
    [InlineData(Day + Kit + "\n## Circuits\n| Circuit | Limit, kW |\n|---|---|\n| K1 | – |", "OCC015", 11)]
    [InlineData(Day + "## Diets\n| Seat | Declared |\n|---|---|\n| 4 | vegetarian |\n| 4, 5 | vegan |", "OCC014", 7)]
    [InlineData(Day + "## Diets\n| Seat | Declared |\n|---|---|\n| 70 | vegetarian |", "OCC014", 6)]
    [InlineData(Day + "## Diets\n| Seat | Declared |\n|---|---|\n| four | vegetarian |", "OCC028", 6)]
    [InlineData(Day + "## Diets\n| Seat | Declared |\n|---|---|\n| 6 to 4 | vegetarian |", "OCC028", 6)]
    [InlineData(Day + "## What is shown\n| Component | Step | How |\n|---|---|---|\n| A | blend | partly |", "OCC008", 6)]
    [InlineData("# Lunch\nSaturday 10 October 2026, live 14:00 to 14:25. 48 guests and five over, so 50 plates.", "OCC031", 2)]
    [InlineData(Day + "## What is shown\n| Component | Step | How | Weight |\n|---|---|---|---|\n| A | blend | full | 9 |", "OCC032", 6)]
    [InlineData(Day + Kit + "| BL | blender | stge | 1 | – |", "OCC033", 7)]
    [InlineData(Day + "## Kit\n| Code | What | Place | Number | Temperatures |\n|---|---|---|---|---|\n| SO | oven | stage | 1 | to 25 °C |", "OCC034", 6)]
    [InlineData(Day + "## Kit\n| Code | What | Place | Number | Temperatures |\n|---|---|---|---|---|\n| FZ | freezer | back | 1 | 18 °C |", "OCC034", 6)]
    [InlineData(Day + "## Kit\n| Code | What | Place | Number | Power, kW |\n|---|---|---|---|---|\n| SO | oven | stage | 1 | 2900 |", "OCC035", 6)]
    [InlineData(Day + "Service 3/4/2026.", "OCC029", 3)]
    public void Each_mistake_is_named_with_its_line_and_remedy(string sheet, string code, int line)
    {
        Problem p = Assert.Single(Assert.IsType<Parsed<OccasionSheet>.Failed>(Read(sheet)).Problems);

        Assert.Equal((code, line), (p.Code, p.Line));
        Assert.True(p.Hint.Length > 10);
    }

    [Theory]
    [InlineData("Saturday 10 October 2026, live 14:00 to 14:25 on stage. 40 guests.")]
    [InlineData("53 plates, Saturday 23:59, 25 minutes, Ilse")]
    [InlineData("53 plates, Saturday 10 October 2026, 14:00, 25 minutes, Ilse")]
    [InlineData("53 plates, 30 November 2026, 14:00, 25 minutes, Ilse on her Birthday")]
    [InlineData(Day + "\n## Notes\nThe ratio is 1:60, lift at 12:30.")]
    [InlineData(Day + "## Dishes\n| Dish | Card | How many |\n|---|---|---|\n| A | a.md | 40 plates |\n| A, no nuts | a.md | 1 plate |")]
    [InlineData(Day + "## Hands\n| Name | Friday |\n|---|---|\n| Ilse | 09:00 to 12:30 |\n| Bram | – |")]
    [InlineData(Day + Kit + "| – | tray | stage | 4 | – |\n| – | tray | back | 4 | – |\n\n## Circuits\n| Circuit | Limit, kW | Kit on it |\n|---|---|---|\n| K1 | 3.68 | SO, camera, sound |")]
    [InlineData(Day + "## Diets\n| Seat | Declared |\n|---|---|\n| 4, 5 | vegetarian |\n| 40 | vegan |")]
    [InlineData(Day + "## Diets\n| Seat | Declared |\n|---|---|\n| 4 to 6 and 9 | vegetarian |\n| – | vegan, seat not known yet |\n| | coeliac |")]
    [InlineData("# Lunch\nSaturday 10 October 2026, live 14:00 to 14:25. 48 guests and five over, so 53 plates.")]
    [InlineData(Day + "## What is shown\n| Component | Step | How | Weight |\n|---|---|---|---|\n| A | blend | full | 5 |\n| B | blend | full | – |")]
    [InlineData(Day + Kit + "| BL | blender | rack | 1 | – |\n| BM | blender | stage | 1 | – |\n| BN | blender | back | 1 | – |\n| BO | blender | back | 1 | – |")]
    [InlineData(Day + "## Kit\n| Code | What | Place | Number | Temperatures |\n|---|---|---|---|---|\n| SO | oven | stage | 1 | to 250 °C |\n| FZ | freezer | back | 1 | −18 °C |\n| DH | dehydrator | back | 1 | 35 to 70 °C |")]
    [InlineData(Day + "We plate 2.5 plates a minute.")]
    public void Near_misses_are_read(string sheet) => Assert.IsType<Parsed<OccasionSheet>.Ok>(Read(sheet));

    [Theory]
    [InlineData("53 plates, Saturday 14:00, 25 minutes, 9999999999 others")]
    [InlineData(Day + "## Kit\n| Code | What | Place | Number | Capacity |\n|---|---|---|---|---|\n| SO | oven | stage | 9999999999 | 99999999999 shelves |")]
    [InlineData(Day + "## Dishes\n| Dish | Card | How many |\n|---|---|---|\n| A | a.md | 99999999999 plates |")]
    public void Numbers_beyond_any_kitchen_make_nothing_throw(string sheet) => Assert.NotNull(Read(sheet));

    [Fact]
    public void Watts_are_read_as_watts_and_what_is_eaten_before_it_is_served_is_said()
    {
        string kit = Day + "## Kit\n| Code | What | Place | Number | Power, kW |\n|---|---|---|---|---|\n| SO | oven | stage | 1 | 2900 W |\n| SH | hob | stage | 1 | 2.0 |\n";
        Assert.Equal([2.9, 2.0], Assert.IsType<Parsed<OccasionSheet>.Ok>(Read(kit)).Value.Kit.Select(k => k.Kilowatts!.Value));

        static string[] Remarks(string words) => [.. Assert.IsType<Parsed<OccasionSheet>.Ok>(Read(Day + words)).Value.Remarks.Select(r => r.Kind)];
        Assert.Equal(["eaten before"], Remarks("Eaten in the seat at 13:00."));
        Assert.Empty(Remarks("Eaten in the seat at 14:25."));
        Assert.Equal(["plates over covers"], Remarks("## Dishes\n| Dish | Card | How many |\n|---|---|---|\n| A | a.md | 53 plates |"));
        Assert.Empty(Remarks("## Dishes\n| Dish | Card | How many |\n|---|---|---|\n| A | a.md | 40 plates |\n| B | b.md | 53 pieces |"));
    }

    [Fact]
    public void A_day_that_is_past_is_said_and_the_sheet_is_read_all_the_same()
    {
        OccasionSheet past = Assert.IsType<Parsed<OccasionSheet>.Ok>(OccasionReader.Read(Day, new LocalDate(2026, 11, 2))).Value;

        Assert.Equal("date past", Assert.Single(past.Remarks).Kind);
        Assert.Empty(Assert.IsType<Parsed<OccasionSheet>.Ok>(Read(Day)).Value.Remarks);
    }
}
