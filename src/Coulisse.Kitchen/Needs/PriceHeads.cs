using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Coulisse.Kitchen.Needs;

/// <summary>Which column of a price list is what: usual heads in six languages, and before them what this kitchen has said of its suppliers' lists.</summary>
public sealed partial record PriceHeads
{
    /// <summary>All that a column can be, in words, in order.</summary>
    public static ImmutableArray<(string Key, string Word)> Meanings { get; } =
    [
        ("item", "item"), ("supplier", "supplier"), ("size", "pack size"), ("unit", "unit"), ("price", "price of a pack"), ("perkg", "price of a kilogram"), ("perl", "price of a litre"), ("pereach", "price of a piece"), ("currency", "currency"), ("lead", "days ahead"),
        ("note", "note"), ("since", "price since"), ("until", "price until"), ("replace", "another article allowed"), ("", "nothing"),
    ];

    /// <summary>Columns whose price is for one unit and not for a pack: the meaning, the unit, and how many of our g, ml or pieces it is.</summary>
    internal static ImmutableArray<(string Key, string Unit, decimal Size)> PerOne { get; } = [("perkg", "g", 1000), ("perl", "ml", 1000), ("pereach", "each", 1)];

    private static readonly Dictionary<string, string[]> Usual = new(StringComparer.Ordinal)
    {
        ["item"] = ["item", "food", "article", "product", "name", "description", "item_description", "product_description", "product_name", "item_name", "artikel", "bezeichnung", "artikelbezeichnung", "produkt", "ware", "produit", "désignation", "designation", "libellé", "articulo", "artículo", "producto", "articolo", "prodotto", "descrizione", "descripción", "denominazione", "towar", "nazwa"],
        ["supplier"] = ["supplier", "vendor", "shop", "from", "lieferant", "fournisseur", "proveedor", "fornitore", "dostawca"],
        ["size"] = ["pack_size", "packsize", "pack", "size", "quantity", "amount", "content", "inhalt", "gebinde", "packung", "menge", "contenance", "conditionnement", "quantité", "contenido", "formato", "cantidad", "confezione", "quantità", "opakowanie", "ilość"],
        ["unit"] = ["unit", "uom", "pack_unit", "einheit", "unité", "unidad", "unità", "jednostka"],
        ["price"] = ["price", "cost", "pack_price", "price_per_pack", "net_price", "price_net", "price_ex_gst", "price_ex_vat", "price_excl_gst", "price_excl_vat", "price_excluding_vat", "price_excluding_gst", "preis", "nettopreis", "prix", "prix_ht", "precio", "prezzo", "cena", "cena_netto"],
        ["currency"] = ["currency", "cur", "währung", "devise", "moneda", "valuta", "waluta"],
        ["lead"] = ["lead_days", "lead", "lead_time", "vorlauf", "délai", "plazo", "termine"],
        ["note"] = ["note", "notes", "remark", "remarks", "bemerkung", "remarque", "nota", "notas", "uwagi"],
        ["since"] = ["since", "valid_from", "from_date", "price_since", "gültig_ab", "date", "datum", "depuis", "desde", "dal", "data", "od"],
        ["until"] = ["until", "valid_to", "valid_until", "to_date", "gültig_bis", "jusqu'au", "hasta", "al", "do"],
        ["replace"] = ["substitutes", "substitute", "another_article", "may_replace", "ersatz", "substitution"],
    };

    /// <summary>What this kitchen has said: head as <see cref="Fold"/> writes it, to what it is; an empty meaning is a column to pass over.</summary>
    public ImmutableSortedDictionary<string, string> Own { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>The usual heads alone.</summary>
    public static PriceHeads None { get; } = new();

    /// <summary>A head as it is compared: lower case, joined by low lines, without what stands in brackets.</summary>
    public static string Fold(string head)
    {
        ArgumentNullException.ThrowIfNull(head);
        int bracket = head.IndexOfAny(['(', '[']);
        string bare = (bracket > 0 ? head[..bracket] : head).Trim().ToLower(CultureInfo.InvariantCulture);
        return string.Join('_', bare.Split([' ', '_', '\u00A0'], StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.', ':');
    }

    /// <summary>What a head stands for; empty for a column to pass over, null when it is not known.</summary>
    public string? Of(string head)
    {
        string folded = Fold(head);
        if (Own.TryGetValue(folded, out string? own))
        {
            return own;
        }

        string? usual = Usual.FirstOrDefault(u => u.Value.Contains(folded)).Key;
        // "Price (per kg)" is no price of a pack, and a price with tax is none that food cost is reckoned by: that one is asked about
        return usual is null or "price" && PerUnit().Match(head.Trim()) is { Success: true } per ? PerOne.FirstOrDefault(o => (o.Unit, o.Size) == PriceCells.Unit(per.Groups["u"].Value)).Key
            : usual is "price" && WithTax().IsMatch(head) ? null : usual;
    }

    /// <summary>The unit a head names in brackets, as in "Pack size (kg)"; empty for none.</summary>
    internal static string UnitOf(string head) => head.IndexOfAny(['(', '[']) is > 0 and var at && head[(at + 1)..].TrimEnd(' ', ')', ']') is var inside && PriceCells.Unit(inside).Unit.Length > 0 ? inside.Trim() : "";

    [GeneratedRegex(@"^(price|cost|net price|preis|nettopreis|prix|precio|prezzo|cena|\p{Sc})\s{0,5}([(\[]\s{0,5})?(/|per|pro|je|par|por|al|za|ex gst per|ex vat per|(?<=[(\[]\s{0,5}))\s{0,5}(?<u>\p{L}{1,8})\s{0,5}[)\]]?$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex PerUnit();

    [GeneratedRegex(@"\b(inc|incl|including|inkl|brutto|gross|ttc|iva incl|con iva|with (vat|gst|tax))\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex WithTax();

    /// <summary>The same with one more head known.</summary>
    /// <param name="head">Head as the list writes it.</param>
    /// <param name="meaning">One of <see cref="Meanings"/>.</param>
    public PriceHeads With(string head, string meaning) => Meanings.Any(m => m.Key == meaning)
        ? this with { Own = Own.SetItem(Fold(head), meaning) }
        : throw new ArgumentOutOfRangeException(nameof(meaning), meaning, "No column of a price list is that.");

    /// <summary>What was said, a line a head: "meaning TAB head".</summary>
    public string Write() => string.Concat(Own.Select(o => $"{o.Value}\t{o.Key}\n"));

    /// <summary>Reads what <see cref="Write"/> wrote; lines that say nothing known are passed over.</summary>
    public static PriceHeads Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        PriceHeads heads = None;
        foreach (string[] pair in text.Split('\n').Select(l => l.TrimEnd('\r').Split('\t', 2)).Where(p => p.Length == 2 && p[1].Trim().Length > 0))
        {
            string meaning = pair[0].Trim();
            heads = Meanings.Any(m => m.Key == meaning) ? heads.With(pair[1], meaning) : heads;
        }

        return heads;
    }

    /// <summary>Usual heads of a meaning, for a remedy.</summary>
    internal static string Examples(string key) => string.Join(", ", Usual[key].Take(6));
}
