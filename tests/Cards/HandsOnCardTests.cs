using Coulisse.Cards.Reading;
using Coulisse.Cards.Writing;

namespace Coulisse.Cards.Tests;

/// <summary>Corrected minutes are written where the reader finds them, and nothing else of the card becomes another.</summary>
public sealed class HandsOnCardTests
{
    private const string Card = """
        # Slice

        Makes 28 pieces.

        - 150 g butter
        - 145 g caster sugar

        1. Cream butter and sugar 4 min. (hands 20 min)
        2. Spread level and bake 12 min at 170 °C.
        3. Plate with care (three people, 40 min for 52).
        """;

    [Theory]
    [InlineData(8, 12, "1. Cream butter and sugar 4 min. (hands 12 min)")]
    [InlineData(9, 2.5, "2. Spread level and bake 12 min at 170 °C. (hands 2.5 min)")]
    [InlineData(10, 31, "3. Plate with care (three people, 31 min).")]
    public void The_minutes_stand_in_the_step(int line, double minutes, string written)
    {
        string text = HandsOnCard.Write(Card, line, minutes)!;
        string[] lines = text.Split('\n');
        Assert.Equal(written, lines[line - 1]);
        Assert.Equal(Card.Split('\n').Where((_, i) => i != line - 1), lines.Where((_, i) => i != line - 1));
        Dish dish = CardReader.Read(new CardText(text)).Match(d => d, p => throw new InvalidOperationException(string.Join("; ", p)));
        Assert.Equal(minutes, dish.Components.SelectMany(c => c.Steps).First(s => s.Span.Line == line).HandsMinutes);
    }

    [Fact]
    public void A_line_that_is_no_step_is_left_alone() => Assert.Null(HandsOnCard.Write(Card, 5, 10));
}
