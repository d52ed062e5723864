using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Views.Web;

/// <summary>The figures of a finding under its sentence: only what sentence and remedy do not already tell. By how much it misses is the difference of the two, so it is told only where one of them is missing.</summary>
internal static partial class ToldFigures
{
    public static string Of(Finding f)
    {
        if (f.Value.Length == 0 || f.Limit.Length == 0)
        {
            return string.Join(", ", new[] { f.Value + f.Limit, f.Margin }.Where(t => t.Length > 0));
        }

        HashSet<(double, string)> told = [.. Figures(f.What + " " + f.Remedy)];
        (double Number, string Unit)[] asked = [.. Figures(f.Value + " " + f.Limit)];
        // 56.9 min needed is told by "57 min": a remedy is rounded to the safe side
        return asked.Length > 0 && asked.All(n => told.Contains(n) || (n.Unit == "min" && told.Contains((Math.Ceiling(n.Number), n.Unit)))) ? "" : $"{f.Value} against {f.Limit}";
    }

    private static IEnumerable<(double Number, string Unit)> Figures(string text) => Figure().Matches(text).Select(m => (double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture), m.Groups[2].Value));

    [GeneratedRegex(@"(\d+(?:\.\d+)?)\s*(°C|[\p{L}%]*)")]
    private static partial Regex Figure();
}
