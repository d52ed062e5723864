using System.Collections.Immutable;

namespace Coulisse.Views.Web;

/// <summary>Two texts line by line: what stayed, what went, what came.</summary>
public static class TextDifference
{
    private const int Most = 3000;

    /// <summary>Difference of two texts; only changed lines and two lines around them.</summary>
    public static ImmutableArray<DifferenceLine> Of(string from, string to)
    {
        string[] a = from.Split('\n');
        string[] b = to.Split('\n');
        int head = 0;
        while (head < a.Length && head < b.Length && a[head] == b[head])
        {
            head++;
        }

        int tail = 0;
        while (tail < a.Length - head && tail < b.Length - head && a[^(tail + 1)] == b[^(tail + 1)])
        {
            tail++;
        }

        List<DifferenceLine> all = [.. Enumerable.Range(0, head).Select(i => new DifferenceLine("same", i + 1, i + 1, a[i]))];
        Middle(a[head..(a.Length - tail)], b[head..(b.Length - tail)], head, all);
        all.AddRange(Enumerable.Range(0, tail).Select(i => new DifferenceLine("same", a.Length - tail + i + 1, b.Length - tail + i + 1, a[a.Length - tail + i])));
        return [.. all.Where((l, i) => l.Kind != "same" || Enumerable.Range(Math.Max(0, i - 2), Math.Min(all.Count, i + 3) - Math.Max(0, i - 2)).Any(n => all[n].Kind != "same"))];
    }

    // Longest common subsequence; texts that differ in thousands of lines are shown as replaced whole.
    private static void Middle(string[] a, string[] b, int before, List<DifferenceLine> into)
    {
        bool whole = a.Length > Most || b.Length > Most;
        int[,] common = whole ? new int[1, 1] : new int[a.Length + 1, b.Length + 1];
        for (int i = a.Length - 1; !whole && i >= 0; i--)
        {
            for (int j = b.Length - 1; j >= 0; j--)
            {
                common[i, j] = a[i] == b[j] ? common[i + 1, j + 1] + 1 : Math.Max(common[i + 1, j], common[i, j + 1]);
            }
        }

        (int x, int y) = (0, 0);
        while (x < a.Length || y < b.Length)
        {
            if (!whole && x < a.Length && y < b.Length && a[x] == b[y])
            {
                into.Add(new DifferenceLine("same", before + x + 1, before + y + 1, a[x]));
                (x, y) = (x + 1, y + 1);
            }
            else if (x < a.Length && (y == b.Length || whole || common[x + 1, y] >= common[x, y + 1]))
            {
                into.Add(new DifferenceLine("out", before + x + 1, null, a[x++]));
            }
            else
            {
                into.Add(new DifferenceLine("in", null, before + y + 1, b[y++]));
            }
        }
    }
}

/// <summary>A line of a difference.</summary>
/// <param name="Kind">same, out or in.</param>
/// <param name="From">Line in the older text; null for one that came.</param>
/// <param name="To">Line in the newer text; null for one that went.</param>
/// <param name="Text">The line.</param>
public sealed record DifferenceLine(string Kind, int? From, int? To, string Text);
