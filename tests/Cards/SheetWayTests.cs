using Coulisse.Cards.Occasions;
using NodaTime;

namespace Coulisse.Cards.Tests;

/// <summary>Ways between places on an occasion sheet.</summary>
public sealed class SheetWayTests
{
    [Theory]
    [InlineData("Carrying from the back to the stage takes 3 min.", "back", "stage", 3, false)]
    [InlineData("The way from kitchen to terrace is 4 minutes, one way.", "kitchen", "terrace", 4, true)]
    [InlineData("It is a walk of 1 h from the farm to the hall.", "farm", "hall", 60, false)]
    public void A_way_is_read(string sentence, string from, string to, double minutes, bool oneWay)
    {
        SheetWay way = Assert.Single(Read(sentence).Ways);
        Assert.Equal((from, to, minutes, oneWay), (way.From, way.To, way.Minutes, way.OneWay));
        Assert.Equal(5, way.Line);
    }

    [Theory]
    [InlineData("Tomasz and Noor carry boxes from 13:00 to 14:50.")]
    [InlineData("The way from the back to the stage is narrow.")]
    [InlineData("Bring everything from the back to the stage 30 min before.")]
    public void What_is_no_way_stays_a_note(string sentence) => Assert.Empty(Read(sentence).Ways);

    private static OccasionSheet Read(string sentence) => OccasionReader.Read($"# Lunch\n\nSaturday 10 October 2026, service 12:30, 20 guests.\n\n{sentence}\n", new LocalDate(2026, 10, 1)).Match(s => s, p => throw new InvalidOperationException(string.Join("; ", p)));
}
