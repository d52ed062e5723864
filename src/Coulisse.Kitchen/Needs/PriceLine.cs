using System.Globalization;
using Coulisse.Cards;
using NodaTime;

namespace Coulisse.Kitchen.Needs;

/// <summary>One line of a price list: pack, price, currency and days. What is missing or could be two things is asked about.</summary>
internal static class PriceLine
{
    /// <summary>The pack on offer; null, with a problem added, when the line cannot be read.</summary>
    /// <param name="line">Line of the list.</param>
    /// <param name="packed">Whether the list has a column of packs.</param>
    /// <param name="cell">Cell of a column by its meaning; empty for none.</param>
    /// <param name="currency">Currency of a list that names none.</param>
    /// <param name="problems">Problems found so far.</param>
    public static PriceRow? Read(int line, bool packed, Func<string, string> cell, string? currency, List<Problem> problems)
    {
        string item = cell("item");
        // a list without a pack column prices what its unit column says: "1 kg", or one of the unit
        string written = packed ? cell("size") : cell("unit");
        string beside = packed ? cell("unit") : "";
        (string Key, string Unit, decimal Size) per = cell("price").Length > 0 ? default : PriceHeads.PerOne.FirstOrDefault(p => cell(p.Key).Length > 0);
        string asked = per.Key is null ? cell("price") : cell(per.Key);
        (decimal Size, string Unit)? pack = PriceCells.Pack(written) ?? (!packed && PriceCells.Unit(written).Unit.Length > 0 ? (1, written) : !packed && written.Length == 0 && per.Key is not null ? (per.Size, per.Unit) : null);
        (decimal Amount, string Currency)? price = PriceCells.Money(asked);
        string stated = beside.Length > 0 ? beside : pack?.Unit ?? "";
        (string unit, decimal factor) = PriceCells.Unit(stated);
        string money = cell("currency") is { Length: > 0 } column ? column : price?.Currency is { Length: > 0 } sign ? sign : currency ?? "";
        if (item.Length == 0)
        {
            problems.Add(new("PRI003", line, "A price stands without an item.", "Write what is sold, or delete the line."));
        }
        else if (unit.Length == 0 || (pack is { Unit.Length: > 0 } p && beside.Length > 0 && PriceCells.Unit(p.Unit) != (unit, factor)))
        {
            problems.Add(new("PRI002", line, $"\"{item}\" has a price without a unit that is known (\"{(unit.Length > 0 ? written + " " : "")}{stated}\").", "Write g, kg, ml, l or each."));
        }
        else if (per.Key is not null && per.Unit != unit)
        {
            problems.Add(new("PRI002", line, $"\"{item}\" is sold by \"{stated}\" and priced by another kind of unit.", "Write the price of a pack, or the pack in the unit the price is for."));
        }
        else if (pack is not { Size: > 0 } sized || price is not { Amount: >= 0 } paid)
        {
            problems.Add(new("PRI003", line, $"\"{item}\" has pack size \"{written}\" and price \"{asked}\".", "Both are plain numbers (1234.50, not 1,234), the pack more than 0."));
        }
        else if (money.Length == 0)
        {
            problems.Add(new("PRI004", line, $"\"{item}\" has no currency.", "Add a currency column, or name the currency with the list."));
        }
        else if (Day("since") is var since && Day("until") is var until && (since.Wrong || until.Wrong || (since.Day is { } a && until.Day is { } b && b < a)))
        {
            problems.Add(new("PRI006", line, $"\"{item}\" has a price from \"{cell("since")}\" to \"{cell("until")}\".", "Write days as 2026-10-08, the end not before the start."));
        }
        else
        {
            decimal size = sized.Size * factor;
            int? lead = int.TryParse(cell("lead"), NumberStyles.None, CultureInfo.InvariantCulture, out int days) ? days : null;
            bool? replace = cell("replace").ToLowerInvariant() switch { "yes" or "y" or "ok" or "allowed" => true, "no" or "n" or "not" or "none" => false, _ => null };
            return new(line, item, cell("supplier"), size, unit, new(per.Key is null ? paid.Amount : paid.Amount * size / per.Size, money), lead, cell("note")) { Since = Day("since").Day, Until = Day("until").Day, MayReplace = replace };
        }

        return null;

        (LocalDate? Day, bool Wrong) Day(string key) => cell(key) is not { Length: > 0 } text ? (null, false) : PriceCells.Day(text) is { } d ? (d, false) : (null, true);
    }
}
