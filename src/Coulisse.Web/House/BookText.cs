using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Web.House;

/// <summary>The kitchen's book as text: one table a heading, in the form of an occasion sheet, so that it can be read, exported and pasted into one.</summary>
internal static class BookText
{
    /// <summary>Head of the column that names the site; empty cells are at every site.</summary>
    public const string SiteColumn = "Site";

    /// <summary>Heads of the kit table that not every kind of kit has a use for.</summary>
    public const string Capacity = "Capacity", Temperatures = "Temperatures", Rates = "Heats, °C/min", Power = "Power, kW", Circuit = "Circuit";

    /// <summary>Its tables. The first three are those of an occasion sheet.</summary>
    public static ImmutableArray<BookTable> Tables { get; } =
    [
        new("Hands", "Who works here, with the hours of a usual week. A name in the sentence under a card takes its hours, skills, speed, place and language from here.", ["Name", "Role", "Place", "Hours", "Skills", "Speed", "Language", "Notes"]) { One = "a person" },
        new("Kit", "Taken for every occasion that lists none, scales too. A kitchen of several sites names the site; a row without one is at all of them. What was understood stands beside each row. How fast it heats and cools is used in place of what is usual, once it was measured: “8 up, 3 down”.", ["Code", "What", "Place", "Number", Capacity, Temperatures, Rates, Power, Circuit, SiteColumn]) { One = "a piece of kit", Named = [0, 1] },
        new("Circuits", "What may be drawn at once.", [Circuit, "Rating, A", "Volts", "Limit, kW", "Kit on it", SiteColumn]) { One = "a circuit" },
        new("Suppliers", "Terms by the name the price list uses.", ["Supplier", "Minimum order", "Delivers on"]) { One = "a supplier" },
        new("Larder", "What is there, at the site of the occasion, is used first, the oldest before the newer.", ["Food", "Grams or pieces", "Since", SiteColumn]) { One = "a food" },
    ];

    /// <summary>A usual small kitchen, to begin with.</summary>
    public static string Usual
    {
        get
        {
            Dictionary<string, List<string[]>> rows = Tables.ToDictionary(t => t.Key, _ => new List<string[]>(), StringComparer.Ordinal);
            rows["Hands"].AddRange([["Chef", "chef, presents", "stage", "", "all", "usual", "English", ""], ["Helper 1", "helper", "back", "", "all", "usual", "English", ""], ["Helper 2", "helper", "back", "", "all", "usual", "English", ""]]);
            foreach (SheetKit k in DefaultKitchen.Kit("stage"))
            {
                string capacity = k.CapacityText.Length > 0 ? k.CapacityText : k.Litres is { } l ? string.Create(CultureInfo.InvariantCulture, $"{l:0.#} L") : k.Shelves is { } n ? string.Create(CultureInfo.InvariantCulture, $"{n} {(k.Type == "dehydrator" ? "trays of 330 × 300 mm" : "shelves")}") : "";
                rows["Kit"].Add([k.Code, k.What, k.Place, k.Number.ToString(CultureInfo.InvariantCulture), capacity,
                    k.CelsiusMax is { } max ? string.Create(CultureInfo.InvariantCulture, $"{(k.CelsiusMin is { } min ? $"{min:0} " : "")}to {max:0} °C") : "", "", k.Kilowatts?.ToString("0.0", CultureInfo.InvariantCulture) ?? "", "", ""]);
            }

            // two scales of any kitchen; the weigh-out page says which lines they cannot weigh
            rows["Kit"].AddRange([["", "scale 5 kg × 1 g", "back", "1", "", "", "", "", "", ""], ["", "fine scale 200 g × 0.01 g", "back", "1", "", "", "", "", "", ""]]);
            return Write(rows);
        }
    }

    /// <summary>Writes the book.</summary>
    public static string Write(IReadOnlyDictionary<string, List<string[]>> rows)
    {
        StringBuilder b = new("# Kitchen\n");
        foreach (BookTable table in Tables)
        {
            b.Append(CultureInfo.InvariantCulture, $"\n## {table.Key}\n\n| {string.Join(" | ", table.Columns)} |\n|{string.Concat(Enumerable.Repeat("---|", table.Columns.Length))}\n");
            foreach (string[] row in rows.GetValueOrDefault(table.Key) ?? [])
            {
                b.Append("| ").AppendJoin(" | ", row.Select(Cell)).Append(" |\n");
            }
        }

        return b.ToString();
    }

    /// <summary>Rows of each table with the line each stands on.</summary>
    public static Dictionary<string, List<(int Line, string[] Cells)>> Read(string text)
    {
        Dictionary<string, List<(int, string[])>> all = Tables.ToDictionary(t => t.Key, _ => new List<(int, string[])>(), StringComparer.Ordinal);
        List<(int, string[])>? open = null;
        ImmutableArray<string> columns = [];
        int[] from = [];
        int seen = 0;
        foreach ((int n, string line) in text.Split('\n').Select((l, i) => (i + 1, l.Trim())))
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
            {
                open = all.GetValueOrDefault(line[3..].Trim());
                columns = Tables.FirstOrDefault(t => t.Key == line[3..].Trim())?.Columns ?? [];
                seen = 0;
            }
            else if (line.StartsWith('|') && open is not null)
            {
                string[] cells = [.. line.Trim('|').Split('|').Select(c => c.Trim())];
                if (seen++ == 0)
                {
                    // a book kept before a column was added has fewer of them: cells are told by their head, not by their place
                    from = [.. columns.Select(c => Array.FindIndex(cells, head => head.Equals(c, StringComparison.OrdinalIgnoreCase)))];
                }
                else if (seen > 2)
                {
                    open.Add((n, [.. from.Select(i => i >= 0 && i < cells.Length ? cells[i] : "")]));
                }
            }
        }

        return all;
    }

    /// <summary>Sites the book names, in its order; none for a kitchen of one place.</summary>
    public static ImmutableArray<string> Sites(string text)
    {
        Dictionary<string, List<(int Line, string[] Cells)>> rows = Read(text);
        return [.. Tables.SelectMany(t => rows[t.Key].Select(r => Site(t, r.Cells))).Where(s => s.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>The site that is taken when one is asked for: that one, else the first of the book, else none.</summary>
    public static string Taken(string text, string asked)
    {
        ImmutableArray<string> sites = Sites(text);
        return sites.FirstOrDefault(s => s.Equals(asked.Trim(), StringComparison.OrdinalIgnoreCase)) ?? sites.FirstOrDefault() ?? "";
    }

    /// <summary>Whether a row is at a site: one that names none is everywhere.</summary>
    public static bool IsAt(string table, string[] cells, string site)
        => Site(Tables.First(t => t.Key == table), cells) is var at && (at.Length == 0 || at.Equals(site, StringComparison.OrdinalIgnoreCase));

    /// <summary>The part that is an occasion sheet, hands, kit and circuits, as it is at a site, with the line of the book that each of its lines is.</summary>
    public static (string Text, ImmutableArray<int> Lines) SheetOf(string text, string site)
    {
        Dictionary<string, List<(int Line, string[] Cells)>> rows = Read(text);
        StringBuilder b = new();
        ImmutableArray<int>.Builder lines = ImmutableArray.CreateBuilder<int>();
        void Add(string line, int of)
        {
            b.Append(line).Append('\n');
            lines.Add(of);
        }

        Add("# Kitchen", 1);
        foreach (BookTable table in Tables.Take(SheetTables))
        {
            ImmutableArray<string> columns = table.Columns.Remove(SiteColumn);
            Add("", 0);
            Add("## " + table.Key, 0);
            Add("", 0);
            Add("| " + string.Join(" | ", columns) + " |", 0);
            Add("|" + string.Concat(Enumerable.Repeat("---|", columns.Length)), 0);
            foreach ((int line, string[] cells) in rows[table.Key].Where(r => IsAt(table.Key, r.Cells, site)))
            {
                Add("| " + string.Join(" | ", cells.Take(columns.Length)) + " |", line);
            }
        }

        return (b.ToString(), lines.ToImmutable());
    }

    private const int SheetTables = 3;

    private static string Site(BookTable table, string[] cells) => table.Columns.IndexOf(SiteColumn) is >= 0 and var at && at < cells.Length ? cells[at].Trim() : "";

    /// <summary>A bar or a line break would end the cell.</summary>
    private static string Cell(string text) => text.Replace('|', '/').ReplaceLineEndings(" ").Trim();
}

/// <summary>A table of the book.</summary>
/// <param name="Key">Heading.</param>
/// <param name="Says">What it is for.</param>
/// <param name="Columns">Column heads.</param>
internal sealed record BookTable(string Key, string Says, ImmutableArray<string> Columns)
{
    /// <summary>What one row is, with its article.</summary>
    public required string One { get; init; }

    /// <summary>Cells a row is called by.</summary>
    public ImmutableArray<int> Named { get; init; } = [0];

    /// <summary>What a row is called; one without a name of its own by whatever is written in it.</summary>
    public string NameOf(string[] cells) => string.Join(" ", Named.Select(i => cells[i]).Where(c => c.Length > 0)) is { Length: > 0 } name ? name : cells.FirstOrDefault(c => c.Length > 0) ?? "";

    /// <summary>How a cell may be written, by its column; shown in blank rows.</summary>
    public static IReadOnlyDictionary<string, string> Examples { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["Hours"] = "Tue to Sat 08:00 to 16:30", ["Skills"] = "knife, oven, no pastry", ["Speed"] = "20 % slower", ["Language"] = "Polish, English", [BookText.Capacity] = "4 shelves; 20 L", [BookText.Temperatures] = "30 to 250 °C", [BookText.Rates] = "8 up, 3 down", ["Delivers on"] = "Tue, Fri", ["Grams or pieces"] = "2.5 kg",
    };
}
