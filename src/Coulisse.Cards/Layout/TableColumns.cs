using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>What each column of a table holds.</summary>
/// <param name="Food">Column of the names; -1 when there is none.</param>
/// <param name="Preparation">Column of what is done to it; -1 when there is none.</param>
/// <param name="Amounts">Columns of amounts that count.</param>
/// <param name="Sizes">True when the columns are sizes of one list, which must never be added.</param>
/// <param name="SecondMeasures">True when the columns tell one amount in two units.</param>
internal sealed record TableColumns(int Food, int Preparation, IReadOnlyList<int> Amounts, bool Sizes, bool SecondMeasures)
{
    /// <summary>Column that holds nothing but units ("g", "pc"), beside the column of figures; -1 when there is none.</summary>
    public int Units { get; private init; } = -1;

    /// <summary>True when two columns tell one amount in a big and a small unit: "LB" and "OZ" of 4 lb 8 oz.</summary>
    public bool Compound { get; private init; }

    /// <summary>Columns that say something else of a food (its price, its allergens, its fat): shown beside the list, never read as amounts.</summary>
    public IReadOnlyList<int> Beside { get; private init; } = [];

    /// <summary>Looks at the head and at every cell once.</summary>
    public static TableColumns Of(string[] names, IEnumerable<string[]> body, int columns, string lang)
    {
        int[] amounts = new int[columns];
        int[] words = new int[columns];
        int[] units = new int[columns];
        string[][] rows = [.. body];
        foreach (string[] cells in rows)
        {
            for (int c = 0; c < Math.Min(columns, cells.Length); c++)
            {
                string cell = cells[c];
                // A share is no amount; "Dry butter 84%" is a food.
                if (cell.Length == 0 || cell[^1] == '%' && !(cell.Length > 6 && char.IsLetter(cell[0]) && cell.IndexOf(' ') > 2))
                {
                    continue;
                }

                units[c] += cell.Length < 12 && Lexicon.LongestUnit(cell, 0, lang, out int whole) is { Kind: not "length" } && whole >= cell.Length ? 1 : 0;
                bool amount = !ColumnHeads.Note(At(names, c)) && !ColumnHeads.Degrees(At(names, c)) && !Degrees(cell) && (char.IsAsciiDigit(cell[0]) || Numbers.Vulgar(cell[0]) > 0 || cell.Length < 30 && (Coulisse.Cards.Reading.Amounts.At(cell, 0, lang) is not null || Said(cell, lang)));
                amounts[c] += amount ? 1 : 0;
                words[c] += amount ? 0 : 1;
            }
        }

        int unit = Array.FindIndex(units, n => n > 1) is >= 0 and var many ? many : Enumerable.Range(0, columns).FirstOrDefault(c => units[c] > 0 && UnitHeads.Contains(At(names, c)), -1);
        // Under a head that says so, one word of the house's own ("gousses") takes the others nothing.
        unit = unit >= 0 && (units[unit] == words[unit] + amounts[unit] || UnitHeads.Contains(At(names, unit)) && amounts[unit] == 0 && units[unit] * 2 >= words[unit]) ? unit : -1;
        // "Cut" beside the foods tells their cut; alone it is the column of the foods itself.
        int food = Named(names, c => c != unit && words[c] > amounts[c] && !Says(At(names, c)) && !ColumnHeads.Note(At(names, c)), words);
        food = food >= 0 ? food : Named(names, c => c != unit && words[c] > amounts[c] && !Says(At(names, c)), words);

        int[] figures = [.. Enumerable.Range(0, columns).Where(c => c != food && c != unit && amounts[c] > 0 && amounts[c] >= words[c])];
        List<int> counted = ColumnKinds.Counted(figures, names, rows, lang);

        int preparation = Enumerable.Range(0, columns).FirstOrDefault(c => c != food && words[c] > 0 && ColumnHeads.Note(At(names, c)), -1);
        for (int c = 0; c < columns; c++)
        {
            preparation = c != food && c != unit && !counted.Contains(c) && !figures.Contains(c) && !Says(At(names, c)) && !Opening(names, c) && words[c] > 0 && preparation < 0 ? c : preparation;
        }

        string[] heads = [.. counted.Select(c => At(names, c))];
        bool told = counted.Count == 2 && heads.All(h => UnitOf(h, lang) is not null && !Named(h) && !ColumnHeads.Trimmed(h)) || ColumnKinds.Twice(counted, heads, rows, lang);
        bool compound = told && ColumnKinds.Compound(counted, heads, rows, lang);
        bool sizes = counted.Count > 1 && !told && ColumnKinds.Sizes(counted, heads, rows, lang);
        int[] beside = [.. Enumerable.Range(0, columns).Where(c => c != food && c != unit && c != preparation && !counted.Contains(c) && Kept(At(names, c)))];
        // A table without a head of its own and with several amount columns says nothing of what they are.
        return names.Length == 0 && counted.Count > 1 ? new TableColumns(-1, -1, [], false, false) : new TableColumns(food, preparation, counted, sizes, told) { Units = unit, Compound = compound, Beside = beside };
    }

    /// <summary>The column of most words among those that may hold the foods; one whose head says so keeps its place. -1 for none.</summary>
    private static int Named(string[] names, Predicate<int> may, int[] words)
    {
        int food = -1;
        for (int c = 0; c < words.Length; c++)
        {
            food = may(c) && (food < 0 || !Opening(names, food) && (words[c] > words[food] || Opening(names, c))) ? c : food;
        }

        return food;
    }

    /// <summary>"18 °C": how warm a food is, and no amount of it.</summary>
    private static bool Degrees(string told) => told.TrimStart('≥', '≤', '<', '>', '~', ' ', '-', '−') is { Length: > 0 and < 16 } cell && cell.IndexOf('°') is > 0 and var at && char.IsAsciiDigit(cell[0]) && at + 1 < cell.Length && cell.AsSpan(at + 1).Trim() is "C" or "F" or "c" or "f";

    /// <summary>"q.b.", "to taste", "大さじ2", "少々": what stands for an amount without beginning with a figure.</summary>
    public static bool Said(string cell, string lang) => lang == "ja"
        ? Coulisse.Cards.Reading.JapanesePart.Reads(cell) && Coulisse.Cards.Reading.JapanesePart.Read(cell, false) is { Food.Length: 0 } d && (d.Amount is not null || d.Use is not null)
        : char.IsLetter(cell[0]) && Lexicon.Longest("use", cell, 0, 3, lang, out int end) is not null && end >= cell.Length;

    /// <summary>"Poolish (g)" names a stage; "Weight (g)" and "g" are measures alone.</summary>
    private static bool Named(string head) => head.IndexOf('(') is > 1 and var open && !Places.HasAny(head[..open], "weight", "amount", "quantity", "qty", "mass", "volume", "metric", "imperial", "us", "poids", "quantité", "qté", "menge", "gewicht", "cantidad", "peso", "quantità", "分量", "重量");

    /// <summary>The unit a column's head states: "Grams", "Weight (g)", "ml".</summary>
    public static string? UnitOf(string head, string lang)
    {
        string h = head.IndexOfAny(['(', '[']) is var open and >= 0 ? head[(open + 1)..].TrimmedEnd(")] ") : head;
        int last = h.LastIndexOf(' ');
        string word = last >= 0 ? h[(last + 1)..] : h;
        // "batch 10 kg" says how large the batch is, "g/kg" how much a kilo takes.
        bool counts = last > 0 && char.IsAsciiDigit(h[last - 1]);
        return word.Length > 0 && !counts && Lexicon.LongestUnit(word, 0, lang, out int end) is { Kind: "mass" or "volume" or "cup" or "spoon" } unit && end == word.Length ? unit.Unit : null;
    }

    private static readonly HashSet<string> UnitHeads = new(StringComparer.OrdinalIgnoreCase) { "unit", "units", "uom", "u/m", "measure", "unité", "unités", "u", "unite", "einheit", "einheiten", "eh", "me", "unidad", "unidades", "ud", "ud.", "medida", "unità", "u.m.", "um", "u.d.m.", "udm", "misura", "単位" };

    /// <summary>True for a head that says the column holds the foods.</summary>
    public static bool Opens(string name) => Places.HasAny(name, "ingredient", "ingredients", "item", "food", "product", "ingrédient", "ingrédients", "produit", "denrée", "denrées", "zutat", "zutaten", "ingrediente", "ingredientes", "ingredienti", "producto", "name", "commodity", "raw material", "raw materials", "matière première", "matières premières", "artikel", "rohstoff", "rohstoffe", "bezeichnung", "género", "géneros", "artículo", "materia prima", "materias primas", "materie prime", "articolo", "prodotto", "description", "désignation", "libellé", "benennung", "descripción", "denominación", "descrizione", "denominazione", "材料", "品名", "原材料", "食材");

    private static bool Opening(string[] names, int c) => c < names.Length && Opens(names[c]);

    /// <summary>A head that says the column tells no food.</summary>
    private static bool Says(string head) => ColumnHeads.Number(head) || ColumnHeads.Aside(head) || ColumnHeads.Price(head) || ColumnHeads.Share(head) || ColumnHeads.Degrees(head);

    /// <summary>What is worth showing beside the list: numbers of rows and shares are not.</summary>
    private static bool Kept(string head) => head.Length > 0 && (ColumnHeads.Aside(head) || ColumnHeads.Price(head) || ColumnHeads.Energy(head) || ColumnHeads.Of(head) || ColumnHeads.Rate(head) || ColumnHeads.Time(head) || ColumnHeads.Degrees(head));

    /// <summary>The cell of a row; empty where the row has none.</summary>
    internal static string At(string[] cells, int column) => column >= 0 && column < cells.Length ? cells[column] : "";
}
