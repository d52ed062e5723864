using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Plating;

namespace Coulisse.Views.Web;

/// <summary>The kitchen: its people, kit, circuits, suppliers, larder, prices, code of practice and spoons.</summary>
/// <param name="Version">Version of the kitchen's book; 0 while the usual kitchen stands there unkept.</param>
/// <param name="Says">What is to be known, one sentence.</param>
/// <param name="Faults">What cannot be read, in words.</param>
/// <param name="Sections">Tables of the book.</param>
/// <param name="Prices">The price list.</param>
/// <param name="Code">Code of practice.</param>
/// <param name="Measures">Spoons and cups; empty when each card decides.</param>
public sealed record KitchenView(int Version, string Says, ImmutableArray<string> Faults, ImmutableArray<KitchenSection> Sections, PricesView Prices, string Code, string Measures)
{
    /// <summary>The house's own foods and suppliers' specifications.</summary>
    public OwnFoodsView OwnFoods { get; init; } = new(0, "", "", []);

    /// <summary>What the bench understands of a piece of kit, in words: the physics it plans with.</summary>
    public static string ReadAs(SheetKit kit, IEnumerable<SheetCircuit> circuits, CultureInfo culture)
    {
        List<string> says = [kit.Type == "other" ? "small kit" : kit.Type];
        if (kit.Shelves is { } shelves)
        {
            says.Add(string.Create(culture, $"{shelves} {(shelves == 1 ? "shelf" : "shelves")}"));
        }

        if (kit.Litres is { } litres)
        {
            says.Add(litres.ToString("0.##", culture) + " L");
        }

        if (kit.CelsiusMax is { } max)
        {
            says.Add(kit.CelsiusMin is { } min && min < max ? Figures.Celsius(min, culture) + " to " + Figures.Celsius(max, culture) : Figures.Celsius(max, culture));
        }

        if (kit.Kilowatts is { } kw && circuits.FirstOrDefault(c => c.Code == kit.Circuit) is { Volts: > 0 } circuit)
        {
            says.Add(string.Create(culture, $"{kw * 1000 / circuit.Volts:0.0} A of {circuit.Amperes:0.#} A on {circuit.Code}"));
        }
        else if (kit.Kilowatts is { } power)
        {
            says.Add(power.ToString("0.##", culture) + " kW");
        }

        if (kit.RisePerMinute is not null || kit.FallPerMinute is not null)
        {
            says.Add(string.Join(", ", new[] { kit.RisePerMinute is { } up ? string.Create(culture, $"heats {up:0.##} °C a minute") : "", kit.FallPerMinute is { } down ? string.Create(culture, $"cools {down:0.##} °C a minute") : "" }.Where(w => w.Length > 0)));
        }

        if (KitchenScale.Of(kit) is { } scale)
        {
            says.Add(string.Create(culture, $"weighs to {Figures.Grams(scale.CapacityGrams, culture)} in steps of {scale.StepGrams:0.###} g; within 2 % from {scale.LeastGrams:0.##} g up"));
        }

        if (!kit.Millimetres.IsEmpty)
        {
            says.Add(string.Join(" × ", kit.Millimetres.Select(m => m.ToString("0.#", culture))) + " mm");
        }

        return string.Join(", ", says);
    }

    /// <summary>What the bench understands of a person.</summary>
    public static string ReadAs(SheetPerson person) => string.Join("; ", new[]
    {
        person.Week.IsEmpty ? "there in every window" : WeekHours.Words(person.Week),
        Math.Abs(person.Speed - 1) < 0.005 ? "" : SheetPace.Words(person.Speed),
        person.Skills.IsEmpty || person.Skills.Contains("all") ? "can do everything" : "can do " + string.Join(", ", person.Skills),
        person.Without.IsEmpty ? "" : "never " + string.Join(", ", person.Without),
        person.Languages.IsEmpty ? "" : "brief in " + person.Languages[0],
    }.Where(t => t.Length > 0));
}

/// <summary>A table of the kitchen's book.</summary>
/// <param name="Key">Heading in the book.</param>
/// <param name="Says">What it is for.</param>
/// <param name="Columns">Column heads.</param>
/// <param name="Rows">Rows; a few blank ones at the end.</param>
public sealed record KitchenSection(string Key, string Says, ImmutableArray<string> Columns, ImmutableArray<KitchenRow> Rows)
{
    private const int Named = 4;

    /// <summary>What one row is, with its article: "a person".</summary>
    public required string One { get; init; }

    /// <summary>What is in it, in one line, so that it can stay folded.</summary>
    public string Holds
    {
        get
        {
            string[] names = [.. Rows.Select(r => r.Name).Where(n => n.Length > 0)];
            return names.Length == 0 ? "none written" : string.Join(", ", names.Take(Named)) + (names.Length > Named ? string.Create(CultureInfo.InvariantCulture, $" and {names.Length - Named} more") : "");
        }
    }
}

/// <summary>A row.</summary>
/// <param name="Cells">As written.</param>
/// <param name="ReadAs">What was understood; empty for a blank row.</param>
public sealed record KitchenRow(ImmutableArray<string> Cells, string ReadAs)
{
    /// <summary>What it is called when it is folded; empty for a blank row.</summary>
    public required string Name { get; init; }

    /// <summary>Columns that its kind has no use for; a cell with something in it is shown all the same.</summary>
    public ImmutableArray<string> Useless { get; init; } = [];

    /// <summary>Whether a cell is asked for only when all fields are wanted.</summary>
    public bool Spare(int cell, string column) => Cells[cell].Length == 0 && Useless.Contains(column);
}

/// <summary>The price list with what was read of it.</summary>
/// <param name="Version">Its version; 0 when none is kept.</param>
/// <param name="Text">As written.</param>
/// <param name="Says">How much was read.</param>
/// <param name="Faults">Lines that could not be read.</param>
/// <param name="Rows">The beginning of what was read.</param>
/// <param name="Heads">Heads to be explained, each with what it is taken for; empty when all that is needed was found.</param>
public sealed record PricesView(int Version, string Text, string Says, ImmutableArray<string> Faults, ImmutableArray<PriceRowView> Rows, ImmutableArray<(string Head, string Is)> Heads)
{
    private const int Most = 200;

    /// <summary>Lays a price list out.</summary>
    public static PricesView From(int version, string text, PriceList list, CultureInfo culture)
    {
        int suppliers = list.Rows.Select(r => r.Supplier).Where(s => s.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase).Count();
        return new PricesView(version, text, string.Create(culture, $"{list.Rows.Length} packs of {suppliers} suppliers, in {list.Currency}."), [],
            [.. list.Rows.Take(Most).Select(r => new PriceRowView(r.Item, r.Supplier, string.Create(culture, $"{r.PackSize:#,0.##} {r.Unit}"), string.Create(culture, $"{r.Price.Amount:0.00} {r.Price.Currency}"),
                r.Unit == "each" ? string.Create(culture, $"{r.PerUnit:0.00} each") : string.Create(culture, $"{r.PerUnit * 1000:0.00} a {(r.Unit == "g" ? "kg" : "L")}"), r.LeadDays is { } d ? d.ToString(culture) : ""))], []);
    }
}

/// <summary>A pack on offer.</summary>
public sealed record PriceRowView(string Item, string Supplier, string Pack, string Price, string Rate, string Lead);

/// <summary>Own foods as kept.</summary>
/// <param name="Version">Version; 0 while none is kept.</param>
/// <param name="Text">As written.</param>
/// <param name="Says">How many are used, or why none.</param>
/// <param name="Faults">Lines that could not be read.</param>
public sealed record OwnFoodsView(int Version, string Text, string Says, ImmutableArray<string> Faults);
