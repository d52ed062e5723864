using Coulisse.Gauge.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>One dish in many dresses: every combination of language, title, head, bullet, place of the amount and way to tell the method that is drawn is read whole. `gauge reading --layout NUMBER` prints a dress again.</summary>
public sealed class LayoutMatrixTests
{
    private const int Many = 1_500;

    [Fact]
    public void Every_dress_of_the_dish_is_read_whole()
    {
        Assert.Empty(LayoutMatrix.Drawn(Many).AsParallel().Select(n => (n, Wrong: LayoutMatrix.Wrong(n))).Where(w => w.Wrong.Length > 0).Select(w => $"{w.n}: {w.Wrong}"));
    }
}
