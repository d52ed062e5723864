using System.Globalization;

namespace Coulisse.Gauge.Planning;

/// <summary>What is known of an instance from outside.</summary>
/// <param name="Lower">Best proven bound; null when none is known.</param>
/// <param name="Upper">Best known value; null when none is known.</param>
/// <param name="Status">closed, open, infeasible or unknown.</param>
internal sealed record Known(int? Lower, int? Upper, string Status)
{
    public static Dictionary<(string Set, string Instance), Known> Read(string path)
    {
        Dictionary<(string, string), Known> all = [];
        foreach (string[] c in File.ReadLines(path).Skip(1).Select(l => l.Split('\t')).Where(c => c.Length > 5))
        {
            all[(c[0], c[1])] = new Known(Number(c[3]), Number(c[4]), c[5]);
        }

        return all;
    }

    private static int? Number(string cell) => int.TryParse(cell, NumberStyles.None, CultureInfo.InvariantCulture, out int v) ? v : null;
}
