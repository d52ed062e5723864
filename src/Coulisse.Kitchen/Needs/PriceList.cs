using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coulisse.Cards;

namespace Coulisse.Kitchen.Needs;

/// <summary>A price list as read from CSV text with any sensible headers.</summary>
/// <param name="Rows">Packs on offer.</param>
/// <param name="Currency">The one currency of the list.</param>
public sealed record PriceList(ImmutableArray<PriceRow> Rows, string Currency)
{
    private static readonly Dictionary<string, string[]> Headers = new(StringComparer.Ordinal)
    {
        ["item"] = ["item", "food", "article", "product", "name", "description"],
        ["supplier"] = ["supplier", "vendor", "shop", "from"],
        ["size"] = ["pack_size", "packsize", "pack", "size", "quantity", "amount", "content"],
        ["unit"] = ["unit", "uom", "pack_unit"],
        ["price"] = ["price", "cost", "pack_price", "net_price"],
        ["currency"] = ["currency", "cur"],
        ["lead"] = ["lead_days", "lead", "lead_time"],
        ["note"] = ["note", "notes", "remark", "remarks"],
    };

    /// <summary>Reads CSV text; comma, semicolon or tab between cells, quotes doubled inside quotes.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="currency">Currency to take where the list has no such column.</param>
    public static Parsed<PriceList> Read(string text, string? currency = null)
    {
        List<(int Line, List<string> Cells)> lines = Split(text);
        List<Problem> problems = [];
        if (lines.Count == 0)
        {
            return new Parsed<PriceList>.Failed([new("PRI001", 0, "The price list is empty.", "Its first line names the columns: item, pack size, unit, price.")]);
        }

        Dictionary<string, int> columns = new(StringComparer.Ordinal);
        for (int i = 0; i < lines[0].Cells.Count; i++)
        {
            string head = lines[0].Cells[i].Trim().ToLowerInvariant().Replace(' ', '_');
            if (Headers.FirstOrDefault(h => h.Value.Contains(head)).Key is { } key)
            {
                columns.TryAdd(key, i);
            }
        }

        foreach (string key in (string[])["item", "size", "unit", "price"])
        {
            if (!columns.ContainsKey(key))
            {
                problems.Add(new("PRI001", lines[0].Line, $"The price list has no column for {key}.", $"Name one of its columns {string.Join(", ", Headers[key])}."));
            }
        }

        if (problems.Count > 0)
        {
            return new Parsed<PriceList>.Failed([.. problems]);
        }

        List<PriceRow> rows = [];
        foreach ((int line, List<string> cells) in lines.Skip(1))
        {
            string Cell(string key) => columns.TryGetValue(key, out int i) && i < cells.Count ? cells[i].Trim() : "";
            string money = Cell("currency") is { Length: > 0 } stated ? stated : currency ?? "";
            (string unit, decimal factor) = Unit(Cell("unit"));
            if (unit.Length == 0)
            {
                problems.Add(new("PRI002", line, $"\"{Cell("item")}\" has a price without a unit that is known (\"{Cell("unit")}\").", "Write g, kg, ml, l or each."));
            }
            else if (!Number(Cell("size"), out decimal size) || size <= 0 || !Number(Cell("price"), out decimal price) || price < 0)
            {
                problems.Add(new("PRI003", line, $"\"{Cell("item")}\" has pack size \"{Cell("size")}\" and price \"{Cell("price")}\".", "Both are plain numbers, the pack more than 0."));
            }
            else if (money.Length == 0)
            {
                problems.Add(new("PRI004", line, $"\"{Cell("item")}\" has no currency.", "Add a currency column, or name the currency with the list."));
            }
            else
            {
                int? lead = int.TryParse(Cell("lead"), NumberStyles.Integer, CultureInfo.InvariantCulture, out int days) ? days : null;
                rows.Add(new(line, Cell("item"), Cell("supplier"), size * factor, unit, new(price, money), lead, Cell("note")));
            }
        }

        string[] currencies = [.. rows.Select(r => r.Price.Currency).Distinct()];
        if (currencies.Length > 1)
        {
            problems.Add(new("PRI004", 0, $"The price list mixes currencies: {string.Join(", ", currencies)}.", "Prices of one order are in one currency."));
        }

        return problems.Count > 0
            ? new Parsed<PriceList>.Failed([.. problems])
            : new Parsed<PriceList>.Ok(new([.. rows], currencies.FirstOrDefault() ?? currency ?? ""));
    }

    private static (string Unit, decimal Factor) Unit(string text) => text.ToLowerInvariant() switch
    {
        "g" or "gram" or "grams" => ("g", 1),
        "kg" or "kilo" => ("g", 1000),
        "ml" => ("ml", 1),
        "l" or "litre" or "liter" => ("ml", 1000),
        "each" or "piece" or "pieces" or "pc" or "pcs" => ("each", 1),
        _ => ("", 0),
    };

    // "1.234,50" is not guessed at: a comma counts as the decimal sign only where no point stands beside it.
    private static bool Number(string text, out decimal value)
        => decimal.TryParse(text.Contains('.', StringComparison.Ordinal) ? text : text.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value);

    private static List<(int Line, List<string> Cells)> Split(string text)
    {
        text = text.TrimStart('\uFEFF');
        string first = text.Split('\n')[0];
        char between = first.Contains('\t', StringComparison.Ordinal) ? '\t' : first.Count(c => c == ';') > first.Count(c => c == ',') ? ';' : ',';
        List<(int, List<string>)> lines = [];
        List<string> cells = [];
        StringBuilder cell = new();
        bool quoted = false;
        int line = 1;
        int startLine = 1;
        for (int i = 0; i <= text.Length; i++)
        {
            char c = i < text.Length ? text[i] : '\n';
            if (quoted && i < text.Length)
            {
                if (c == '"' && i + 1 < text.Length && text[i + 1] == '"')
                {
                    cell.Append('"');
                    i++;
                }
                else if (c == '"')
                {
                    quoted = false;
                }
                else
                {
                    cell.Append(c);
                }
            }
            else if (c == '"')
            {
                quoted = true;
            }
            else if (c == between)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else if (c == '\n')
            {
                cells.Add(cell.ToString());
                cell.Clear();
                if (cells.Any(x => !string.IsNullOrWhiteSpace(x)))
                {
                    lines.Add((startLine, cells));
                }

                cells = [];
                startLine = line + 1;
            }
            else if (c != '\r')
            {
                cell.Append(c);
            }

            line += c == '\n' ? 1 : 0;
        }

        return lines;
    }
}
