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

    /// <summary>Looks at the head and at every cell once.</summary>
    public static TableColumns Of(string[] names, IEnumerable<string[]> body, int columns, string lang)
    {
        int[] amounts = new int[columns];
        int[] words = new int[columns];
        int[] units = new int[columns];
        foreach (string[] cells in body)
        {
            for (int c = 0; c < Math.Min(columns, cells.Length); c++)
            {
                string cell = cells[c];
                if (cell.Length == 0 || cell[^1] == '%')
                {
                    continue;
                }

                units[c] += cell.Length < 12 && Lexicon.LongestUnit(cell, 0, lang, out int whole) is { Kind: not "length" } && whole >= cell.Length ? 1 : 0;
                bool amount = char.IsAsciiDigit(cell[0]) || Numbers.Vulgar(cell[0]) > 0 || cell.Length < 30 && (Coulisse.Cards.Reading.Amounts.At(cell, 0, lang) is not null || Said(cell, lang));
                amounts[c] += amount ? 1 : 0;
                words[c] += amount ? 0 : 1;
            }
        }

        int unit = Array.FindIndex(units, n => n > 1);
        unit = unit >= 0 && units[unit] == words[unit] + amounts[unit] ? unit : -1;
        int food = -1;
        for (int c = 0; c < columns; c++)
        {
            if (c != unit && words[c] > amounts[c] && (food < 0 || (words[c] > words[food] && !Opening(names, food))))
            {
                food = c;
            }
        }

        List<int> counted = [];
        for (int c = 0; c < columns; c++)
        {
            string head = c < names.Length ? names[c] : "";
            if (c != food && amounts[c] > 0 && amounts[c] >= words[c] && !Repeats(head, lang))
            {
                counted.Add(c);
            }
        }

        int preparation = -1;
        for (int c = 0; c < columns; c++)
        {
            preparation = c != food && c != unit && !counted.Contains(c) && words[c] > 0 && preparation < 0 ? c : preparation;
        }

        IEnumerable<string> heads = counted.Select(c => c < names.Length ? names[c] : "");
        bool told = counted.Count == 2 && heads.All(h => UnitOf(h, lang) is not null && !Named(h));
        bool sizes = counted.Count > 1 && heads.All(h => h.AsSpan().IndexOfAnyInRange('0', '9') >= 0 || Places.HasAny(h, "small", "large", "medium", "half", "double", "petit", "grand", "klein", "groß", "pequeño", "grande", "piccolo"));
        // A table without a head of its own and with several amount columns says nothing of what they are.
        return names.Length == 0 && counted.Count > 1 ? new TableColumns(-1, -1, [], false, false) : new TableColumns(food, preparation, counted, sizes, told) { Units = unit };
    }

    /// <summary>"q.b.", "to taste", "大さじ2", "少々": what stands for an amount without beginning with a figure.</summary>
    public static bool Said(string cell, string lang) => lang == "ja"
        ? Coulisse.Cards.Reading.JapanesePart.Reads(cell) && Coulisse.Cards.Reading.JapanesePart.Read(cell, false) is { Food.Length: 0 } d && (d.Amount is not null || d.Use is not null)
        : char.IsLetter(cell[0]) && Lexicon.Longest("use", cell, 0, 3, lang, out int end) is not null && end >= cell.Length;

    /// <summary>"Poolish (g)" names a stage; "Weight (g)" and "g" are measures alone.</summary>
    private static bool Named(string head) => head.IndexOf('(') is > 1 and var open && !Places.HasAny(head[..open], "weight", "amount", "quantity", "qty", "mass", "volume", "metric", "imperial", "us", "poids", "quantité", "qté", "menge", "gewicht", "cantidad", "peso", "quantità", "分量", "重量");

    /// <summary>The unit a column's head states: "Grams", "Weight (g)", "ml".</summary>
    public static string? UnitOf(string head, string lang)
    {
        string h = head.IndexOf('(') is var open and >= 0 ? head[(open + 1)..].TrimmedEnd(") ") : head;
        int last = h.LastIndexOf(' ');
        string word = last >= 0 ? h[(last + 1)..] : h;
        return word.Length > 0 && Lexicon.LongestUnit(word, 0, lang, out int end) is { Kind: "mass" or "volume" or "cup" or "spoon" } unit && end == word.Length ? unit.Unit : null;
    }

    /// <summary>True for a head that says the column holds the foods.</summary>
    public static bool Opens(string name) => Places.HasAny(name, "ingredient", "ingredients", "item", "food", "product", "ingrédient", "ingrédients", "produit", "denrées", "zutat", "zutaten", "ingrediente", "ingredientes", "ingredienti", "producto", "name", "材料");

    private static bool Opening(string[] names, int c) => c < names.Length && Opens(names[c]);

    /// <summary>True for columns that repeat others: totals, shares.</summary>
    private static bool Repeats(string head, string lang) =>
        head.Contains('%') || Places.HasAny(head, "percent", "cost", "price") || (head.Length > 0 && Lexicon.Longest("total", head, 0, 2, lang, out _) is not null);
}
