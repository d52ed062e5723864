using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>What the head of a column says it holds, where that is no amount of the food: a price, a share, a rate, a number of the row, what the food is made of.</summary>
internal static class ColumnHeads
{
    private static readonly System.Buffers.SearchValues<char> Money = System.Buffers.SearchValues.Create("€£$¥￥円");

    private static readonly string[] Prices =
    [
        "cost", "costs", "price", "prices", "value", "preis", "preise", "ek", "vk", "kosten", "wareneinsatz", "prix", "coût", "coûts", "valeur", "montant", "pu", "pht", "coste", "costes", "costo", "costi", "precio", "importe", "valor", "pvp", "prezzo", "prezzi", "valore", "importo", "wert", "betrag", "eur", "euro", "usd", "gbp", "単価", "原価", "価格", "金額",
    ];

    private static readonly string[] ShareWords = ["percent", "percentage", "prozent", "anteil", "pourcentage", "porcentaje", "percentuale", "merma", "waste", "loss", "verlust", "perte", "scarto", "calo", "割合", "比率", "対粉", "歩留まり"];

    private static readonly HashSet<string> Numbers = new(StringComparer.OrdinalIgnoreCase)
    {
        "#", "no", "no.", "nr", "nr.", "n°", "nº", "n.", "№", "pos", "pos.", "position", "line", "row", "zeile", "ligne", "línea", "riga", "num", "num.", "番号", "行",
        "code", "item code", "item no", "item no.", "item #", "item number", "sku", "plu", "ean", "gtin", "art.-nr.", "art.-nr", "art. nr.", "art.nr.", "art-nr", "artikelnummer", "artikelnr.", "artikel-nr.", "ref", "ref.", "réf", "réf.", "référence", "code article", "cód.", "cod.", "código", "referencia", "codice", "cod. art.", "品番", "コード", "商品コード",
    };

    private static readonly string[] Makeup =
    [
        "fat", "fats", "sugar", "sugars", "msnf", "snf", "solids", "protein", "proteins", "carbs", "carbohydrate", "carbohydrates", "fibre", "fiber", "lactose", "alcohol", "pod", "pac", "water",
        "mg", "matière grasse", "matières grasses", "graisses", "lipides", "sucre", "sucres", "esd", "est", "esdl", "extrait sec", "matière sèche", "protéines", "glucides", "eau",
        "fett", "zucker", "trockenmasse", "trockensubstanz", "eiweiß", "eiweiss", "kohlenhydrate", "ballaststoffe", "wasser",
        "grasa", "grasas", "azúcar", "azúcares", "sólidos", "proteína", "proteínas", "hidratos", "agua",
        "grassi", "zucchero", "zuccheri", "slng", "solidi", "proteine", "carboidrati", "acqua",
        "脂質", "脂肪", "糖質", "糖分", "糖類", "固形分", "たんぱく質", "炭水化物", "水分",
    ];

    private static readonly string[] Measured =
    [
        "weight", "amount", "quantity", "qty", "mass", "volume", "batch", "poids", "quantité", "quantités", "qté", "qte", "qtés", "menge", "mengen", "gewicht", "einwaage", "charge", "ansatz", "cantidad", "cantidades", "cant", "cdad", "peso", "quantità", "quantitativo", "qtà", "q.tà", "q.ta", "q.té", "dose", "dosi", "分量", "重量", "数量", "使用量",
    ];

    private static readonly string[] Asides = ["allerg", "allerg.", "allergen", "allergens", "allergene", "allergènes", "allergène", "alérgenos", "alérgeno", "allergeni", "アレルゲン", "アレルギー", "supplier", "lieferant", "fournisseur", "proveedor", "fornitore", "仕入先"];

    private static readonly HashSet<string> Handled = new(StringComparer.OrdinalIgnoreCase)
    {
        "note", "notes", "remark", "remarks", "comment", "comments", "hinweis", "hinweise", "bemerkung", "bemerkungen", "anmerkung", "anmerkungen", "notiz", "notizen", "remarque", "remarques", "observation", "observations", "commentaire", "commentaires", "nota", "notas", "observación", "observaciones", "comentario", "comentarios", "osservazioni", "annotazioni", "備考", "メモ", "注意", "注意点",
        "cut", "cuts", "preparation", "prep", "prep.", "corte", "cortes", "preparación", "taglio", "tagli", "taille", "coupe", "découpe", "préparation", "schnitt", "zuschnitt", "vorbereitung", "verarbeitung", "切り方", "下処理", "下ごしらえ", "状態",
        "temp", "temp.", "temperature", "temperatur", "température", "temperatura", "温度",
    };

    private static readonly HashSet<string> Times = new(StringComparer.OrdinalIgnoreCase)
    {
        "day", "days", "hour", "hours", "hrs", "minutes", "mins", "min", "time", "shelf life", "tag", "tage", "stunde", "stunden", "std", "std.", "minuten", "zeit", "dauer", "jours", "heures", "durée", "temps", "días", "horas", "minutos", "tiempo", "duración", "giorni", "ore", "minuti", "tempo", "durata", "日数", "時間", "分数",
    };

    private static readonly string[] Eaters = ["plate", "portion", "serving", "person", "cover", "guest", "head", "pax", "teller", "gast", "assiette", "personne", "couvert", "convive", "plato", "ración", "persona", "comensal", "piatto", "porzione", "coperto"];

    private static readonly string[] GrossNet = ["gross", "net", "brutto", "netto", "brut", "brute", "nette", "bruto", "bruta", "neto", "neta", "lordo", "lorda", "netta", "ap", "ep", "総量", "正味"];

    /// <summary>Money: never an amount of a food.</summary>
    public static bool Price(string head) => head.AsSpan().ContainsAny(Money) || Places.HasAny(head, Prices);

    /// <summary>A share of the whole: never an amount of a food.</summary>
    public static bool Share(string head) => head.AsSpan().IndexOfAny('%', '‰', '％') >= 0 || Places.HasAny(head, ShareWords);

    /// <summary>Energy: never an amount of a food.</summary>
    public static bool Energy(string head) => Places.HasAny(head, "kcal", "kj", "calories", "energy", "energie", "brennwert", "énergie", "calorías", "energía", "calorie", "energia", "カロリー");

    /// <summary>"g/kg", "per litre": a rate, which says how much a food takes and not how much stands on the table.</summary>
    public static bool Rate(string head)
    {
        for (int i = 1; i + 1 < head.Length; i++)
        {
            if (head[i] == '/' && (Places.WordAt(head, i + 1, "kg") || Places.WordAt(head, i + 1, "l") || Places.WordAt(head, i + 1, "100")))
            {
                return true;
            }
        }

        return Over(head, "kg", "kilo", "litre", "liter", "litro", "l");
    }

    /// <summary>"per plate", "je Portion", "1人分": what one guest gets.</summary>
    public static bool Each(string head) => Over(head, Eaters) || head.Contains("1人", StringComparison.Ordinal) || head.Contains("一人", StringComparison.Ordinal);

    /// <summary>"per portion", "je Teller", "一人前": a row that opens so tells what one guest gets; "Chops, 2 per portion" is a food.</summary>
    public static bool ForEach(string row) => row.Length is > 2 and < 30 && (row[0] is '1' or '一' or '１' ? row.Length < 6 && (row[1] == '人' || row[1] == '皿') : Array.Exists(Bys, by => Places.WordAt(row, 0, by)) && Over(row, Eaters));

    /// <summary>Gross or net: the same food before and after its trimming, never both.</summary>
    public static bool Trimmed(string head) => Places.HasAny(head, GrossNet);

    /// <summary>Number of the row, or the number a supplier gives its goods.</summary>
    public static bool Number(string head) => Numbers.Contains(head.Trimmed(" :*"));

    /// <summary>What a food is made of: fat, sugars, solids.</summary>
    public static bool Of(string head) => Places.HasAny(head, Makeup);

    /// <summary>A column that says of itself that it weighs: "Weight g", "Menge", "g", "Gross (kg)".</summary>
    public static bool Weighs(string head, string lang) => Places.HasAny(head, Measured) || TableColumns.UnitOf(head, lang) is not null && (!head.Contains(' ') || Trimmed(head));

    /// <summary>"Quantity", "Qty", "Menge": a head that says how much, and nothing else.</summary>
    public static bool Quantity(string head) => Quantities.Contains(head.Trimmed(" :*."));

    private static readonly HashSet<string> Quantities = new(StringComparer.OrdinalIgnoreCase) { "amount", "quantity", "qty", "qté", "qte", "q.té", "quantité", "quantités", "menge", "mengen", "cantidad", "cantidades", "cant", "cdad", "quantità", "quantita", "qtà", "q.tà", "q.ta", "分量", "数量" };

    /// <summary>Allergens, suppliers: said of a food, and neither its name nor what is done to it.</summary>
    public static bool Aside(string head) => Places.HasAny(head, Asides);

    /// <summary>What is said of a food or done to it: "18 °C" of a note, "6 cm cubes" of a cut. A figure there weighs nothing.</summary>
    public static bool Note(string head) => Handled.Contains(head.Trimmed(" :*"));

    /// <summary>"Temp. °C", "Water (°F)": how warm a food is, and no amount of it. "Levain (26 °C)" names a stage.</summary>
    public static bool Degrees(string head) => head.Contains('℃') || head.IndexOf('°') is >= 0 and var at && at + 1 < head.Length && head[at + 1] is 'C' or 'F' && !(head.AsSpan(0, at).TrimEnd() is { Length: > 0 } figure && char.IsAsciiDigit(figure[^1])) && (at + 2 == head.Length || !char.IsLetter(head[at + 2]));

    /// <summary>"Days", "min": how long, and never how much of a food.</summary>
    public static bool Time(string head) => Times.Contains(head.Trimmed(" :*")) || head.Length > 4 && head[^1] == ')' && head.LastIndexOf('(') is > 1 and var open && Times.Contains(head[(open + 1)..^1]);

    /// <summary>"1° impasto", "2nd dough", "Stage 1", "Teig 2": a stage with its number, no size.</summary>
    public static bool Stages(IReadOnlyList<string> heads)
    {
        for (int k = 0; k < heads.Count; k++)
        {
            if (!Nth(heads[k], k + 1))
            {
                return false;
            }
        }

        return heads.Count > 1;
    }

    private static bool Nth(string head, int n)
    {
        string h = head.IndexOf('(') is > 1 and var open ? head[..open].TrimEnd() : head;
        string figure = n.ToString(System.Globalization.CultureInfo.InvariantCulture);
        if (h.StartsWith(figure, StringComparison.Ordinal) && h.Length > figure.Length)
        {
            string rest = h[figure.Length..];
            return rest[0] is '°' or 'º' or 'ª' or '.' && rest.Length > 1 && !char.IsAsciiDigit(rest[1])
                || ((ReadOnlySpan<string>)["st", "nd", "rd", "th", "er", "re", "ère", "e", "ème", "nde"]).Contains(rest.Split(' ')[0]) && rest.Contains(' ');
        }

        // "Version 1" and "Version 2" are two lists to choose from.
        return h.Length > figure.Length + 2 && h.EndsWith(figure, StringComparison.Ordinal) && h[^(figure.Length + 1)] is ' ' && h.AsSpan(0, h.Length - figure.Length).IndexOfAnyInRange('0', '9') < 0
            && Places.HasAny(h, "stage", "step", "phase", "dough", "build", "layer", "stufe", "teig", "phase", "étape", "pâte", "fase", "masa", "impasto", "etapa");
    }

    private static readonly string[] Bys = ["per", "pro", "je", "par", "por", "al", "each", "a", "/"];

    private static bool Over(string head, params ReadOnlySpan<string> nouns)
    {
        foreach (string by in Bys)
        {
            int at = by == "/" ? head.IndexOf('/') : Places.FindWord(head, by);
            int from = at < 0 ? -1 : Places.Skip(head, at + by.Length);
            foreach (string noun in nouns)
            {
                if (from > 0 && Places.WordAt(head, from, noun))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
