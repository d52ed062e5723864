using System.Collections.Immutable;
using System.Globalization;

namespace Coulisse.Kitchen.Needs;

/// <summary>Needs added by hand: spares, staff food, anything no card states. "swede=1 piece", "beetroot=500 g".</summary>
public static class AddedNeeds
{
    /// <summary>Reads one a text; null when one of them is no amount.</summary>
    /// <param name="texts">Food and amount, an equals sign between: g, kg or whole pieces.</param>
    public static ImmutableArray<Need>? Read(IEnumerable<string> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        List<Need> needs = [];
        foreach (string text in texts)
        {
            int eq = text.LastIndexOf('=');
            string[] amount = eq > 0 ? text[(eq + 1)..].Trim().Split(' ', 2) : [];
            if (amount.Length != 2 || text[..eq].Trim().Length == 0 || !decimal.TryParse(amount[0], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal n) || n is <= 0 or > 1_000_000)
            {
                return null;
            }

            bool pieces = amount[1].Trim() is "piece" or "pieces" or "each";
            double factor = amount[1].Trim() switch { "g" => 1, "kg" => 1000, _ => 0 };
            if (pieces ? n != decimal.Truncate(n) : factor == 0)
            {
                return null;
            }

            needs.Add(new(text[..eq].Trim(), pieces ? 0 : (double)n * factor, "added") { Pieces = pieces ? (int)n : 0, Role = NeedRole.Added });
        }

        return [.. needs];
    }
}
