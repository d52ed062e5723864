using System.Globalization;
using System.Text.RegularExpressions;

namespace Coulisse.Tests;

/// <summary>The table of worked values (75 rows), read whole: each room answers for its own rows, and together they answer for all.</summary>
internal static partial class CheckValues
{
    /// <summary>Rows that need a card, a scale or a price: the kitchen's room answers for them, the room of matter for all others.</summary>
    public static readonly string[] OfKitchen = ["bp1", "bp2", "bp3", "bp4", "bp5", "pt1", "pt2", "sc1", "br1", "br2", "yi1", "yi2", "mo1", "mo2", "mo3", "mo4", "mo5", "mo6", "mo7", "un1", "un2", "un3"];

    /// <summary>Ids of a room's rows.</summary>
    public static string[] Of(bool kitchen) => [.. Rows().Select(r => r["id"]).Where(id => OfKitchen.Contains(id) == kitchen)];

    /// <summary>The table.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows() => SharedData.Rows("data/measures/check-values.tsv");

    /// <summary>What misses, in words: a row that nobody answered, an answer that is not the row's.</summary>
    /// <param name="kitchen">True for the kitchen's rows.</param>
    /// <param name="ours">Figures by id, in the order the row names them.</param>
    /// <param name="apart">How much further a row may lie, in its last unit, with the reason beside the figure where it is given.</param>
    /// <remarks>Allowed is the row's own tolerance, or half of the last digit it prints where that is more.</remarks>
    public static string[] Misses(bool kitchen, IReadOnlyDictionary<string, double[]> ours, IReadOnlyDictionary<string, double>? apart = null)
    {
        List<string> off = [];
        foreach (IReadOnlyDictionary<string, string> row in Rows().Where(r => OfKitchen.Contains(r["id"]) == kitchen))
        {
            string id = row["id"];
            string[] printed = [.. Figure().Matches(row["expected"]).Select(m => m.Value)];
            if (!ours.TryGetValue(id, out double[]? got) || got.Length != printed.Length || printed.Length == 0)
            {
                off.Add($"{id}: {(got is null ? "not answered" : $"{got.Length} figures")} for “{row["expected"]}”");
                continue;
            }

            double tolerance = double.TryParse(row["tol"], CultureInfo.InvariantCulture, out double t) ? t : 0;
            for (int i = 0; i < got.Length; i++)
            {
                int point = printed[i].IndexOf('.', StringComparison.Ordinal);
                double half = 0.5 * Math.Pow(10, point < 0 ? 0 : -(printed[i].Length - point - 1));
                double allowed = Math.Max(tolerance, half) + (apart?.GetValueOrDefault(id) ?? 0);
                if (!(Math.Abs(got[i] - double.Parse(printed[i], CultureInfo.InvariantCulture)) <= allowed * (1 + 1e-9)))
                {
                    off.Add(string.Create(CultureInfo.InvariantCulture, $"{id}: {got[i]:0.#####} for {printed[i]} of “{row["expected"]}”"));
                }
            }
        }

        off.AddRange(ours.Keys.Where(k => !Of(kitchen).Contains(k)).Select(k => $"{k} is no row of this room"));
        return [.. off];
    }

    // "NaNO2" and "32.5-43.8" hold digits and a dash that are none of a figure.
    [GeneratedRegex(@"(?<![\w.])-?\d+(\.\d+)?")]
    private static partial Regex Figure();
}
