using System.Globalization;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Reading;

namespace Coulisse.Gauge.Reading;

/// <summary>Labelled lines (TASTEset, MIT, every second of a sample; about 8 % of its labels are wrong): first amount and its unit. The labels are read here by other code than the reader's.</summary>
internal static class Labelled
{
    private static readonly Dictionary<string, string> Units = new(StringComparer.OrdinalIgnoreCase)
    {
        ["ounce"] = "oz", ["pound"] = "lb", ["tablespoon"] = "tbsp", ["tbs"] = "tbsp", ["tbl"] = "tbsp", ["teaspoon"] = "tsp", ["gram"] = "g", ["kilogram"] = "kg", ["litre"] = "l", ["liter"] = "l", ["milliliter"] = "ml", ["millilitre"] = "ml",
        ["c"] = "cup", ["package"] = "pack", ["packet"] = "pack", ["pkg"] = "pack", ["box"] = "pack", ["can"] = "tin", ["quart"] = "quart", ["qt"] = "quart", ["gallon"] = "gallon", ["leave"] = "leaf", ["loave"] = "loaf", ["gm"] = "g", ["bag"] = "pack", ["envelope"] = "pack", ["container"] = "carton", ["fluid ounce"] = "floz", ["small spoon"] = "tsp", ["rounded teaspoon"] = "tsp",
    };

    public static IEnumerable<Score> Run(string data)
    {
        Score amounts = new("labelled lines: first amount");
        Score units = new("labelled lines: its unit");
        foreach (JsonElement e in File.ReadLines(Path.Combine(data, "reading/labelled-lines.jsonl")).Select(l => JsonDocument.Parse(l).RootElement))
        {
            string line = e.GetProperty("line").GetString()!;
            JsonElement[] labels = [.. e.GetProperty("labels").EnumerateArray()];
            string? quantity = Text(labels, "QUANTITY");
            if (quantity is null || Number(quantity) is not { } want)
            {
                continue;
            }

            FoodAmount? f = CardReader.ReadLine(line, "en").Foods.FirstOrDefault(x => x.Amount is not null);
            double told = Unit(labels) == "dozen" && f?.Unit == "piece" ? 12 * want : want;
            amounts.Add(f?.Amount is { } a && (Math.Abs(a - told) < 0.01 || Math.Abs(a - want) < 0.01 || (f.Grams is not null && f.Amount is not null && Math.Abs((f.AmountMax ?? a) - want) < 0.01)), () => $"“{line}” is {want}, read {f?.Amount}");
            if (Unit(labels) is { } one)
            {
                units.Add(f?.Unit is { } u && (u == "piece" && one == "dozen" || u == one || u.Contains(one, StringComparison.OrdinalIgnoreCase) || one.Contains(u, StringComparison.OrdinalIgnoreCase)), () => $"“{line}” is {one}, read {f?.Unit}");
            }
        }

        return [amounts, units];
    }

    private static string? Text(JsonElement[] labels, string type) => labels.Where(l => l.GetProperty("type").GetString() == type).Select(l => l.GetProperty("text").GetString()).FirstOrDefault();

    /// <summary>The unit of the first quantity: the first one that stands behind it, or before it, with no other quantity between; in our spelling.</summary>
    private static string? Unit(JsonElement[] labels)
    {
        JsonElement[] order = [.. labels.OrderBy(l => l.GetProperty("start").GetInt32())];
        int quantity = Array.FindIndex(order, l => l.GetProperty("type").GetString() == "QUANTITY");
        foreach (JsonElement l in order.Skip(quantity + 1))
        {
            if (l.GetProperty("type").GetString() is "QUANTITY")
            {
                return null;
            }

            if (l.GetProperty("type").GetString() is "UNIT")
            {
                return Singular(l.GetProperty("text").GetString()!);
            }
        }

        return null;
    }

    private static string Singular(string unit)
    {
        string u = unit.Trim(' ', '.', ',').ToLowerInvariant();
        u = u.EndsWith("ches", StringComparison.Ordinal) || u.EndsWith("xes", StringComparison.Ordinal) ? u[..^2] : u.EndsWith('s') && u.Length > 2 ? u[..^1] : u;
        return Units.GetValueOrDefault(u, u);
    }

    /// <summary>"3", "1/2", "1 1/2", "1 ½", "2-3" (its low end); null for words.</summary>
    private static double? Number(string s)
    {
        double sum = 0;
        bool any = false;
        foreach (string part in s.Replace("½", " 1/2", StringComparison.Ordinal).Replace("¼", " 1/4", StringComparison.Ordinal).Replace("¾", " 3/4", StringComparison.Ordinal).Split(["-", " to ", "–"], StringSplitOptions.RemoveEmptyEntries)[0].Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string[] f = part.Split('/');
            if (f.Length > 2 || !double.TryParse(f[0], NumberStyles.Float, CultureInfo.InvariantCulture, out double n))
            {
                return null;
            }

            double d = 1;
            if (f.Length == 2 && !double.TryParse(f[1], NumberStyles.Float, CultureInfo.InvariantCulture, out d))
            {
                return null;
            }

            sum += n / d;
            any = true;
        }

        return any ? sum : null;
    }
}
