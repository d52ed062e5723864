using Coulisse.Gauge.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>One line in every dress: language, food, figures, place of the amount, and what is said behind it. `gauge reading --line-dresses` prints the share by each choice.</summary>
public sealed class LineMatrixTests
{
    [Fact]
    public void Every_dress_of_a_line_is_read_whole()
    {
        Assert.True(LineMatrix.Count > 15_000, $"only {LineMatrix.Count} dresses");
        Assert.Empty(Enumerable.Range(0, LineMatrix.Count).AsParallel().Select(n => (n, Wrong: LineMatrix.Wrong(n))).Where(w => w.Wrong.Length > 0).OrderBy(w => w.n).Select(w => $"{w.n}: {w.Wrong}"));
    }
}
