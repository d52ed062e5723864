using System.Collections.Concurrent;
using System.Collections.Immutable;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Foods;

/// <summary>Our foods, by id and by the names cooks write.</summary>
/// <remarks>Names are indexed on first use and a row's figures are parsed when it is first asked for, so that a command that needs ten foods pays for ten.</remarks>
public sealed class FoodTable
{
    private static readonly string[] Languages = ["en", "fr", "de", "es", "it", "ja"];
    private static readonly Lazy<FoodTable> Shipped = new(() => new FoodTable(ReferenceTable.Load("foods/foods.tsv")));

    private readonly ReferenceTable _table;
    private readonly Dictionary<string, int> _rows;
    private readonly Dictionary<string, List<(int Row, int Language, string Alias, bool Plain)>> _names = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<int, Food> _parsed = new();
    private readonly FoodTable? _beneath;
    private readonly Dictionary<string, Food> _own = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (Food Food, string Alias)> _ownNames = new(StringComparer.Ordinal);

    /// <summary>A table of foods.</summary>
    /// <param name="table">Rows in the columns of foods/foods.tsv.</param>
    public FoodTable(ReferenceTable table)
    {
        _table = table;
        int id = table.Column("id");
        _rows = new Dictionary<string, int>(table.Rows.Count, StringComparer.Ordinal);
        for (int row = 0; row < table.Rows.Count; row++)
        {
            _rows.Add(table.Rows[row][id], row);
            for (int lang = 0; lang < Languages.Length; lang++)
            {
                foreach (string alias in table.Rows[row][table.Column(Languages[lang])].Split(';', StringSplitOptions.RemoveEmptyEntries))
                {
                    string folded = FoodName.Fold(alias);
                    Index(folded, row, lang, alias, true);
                    string singular = FoodName.Singular(folded);
                    if (singular != folded)
                    {
                        Index(singular, row, lang, alias, false);
                    }
                }
            }
        }
    }

    private FoodTable(FoodTable beneath, IEnumerable<Food> own)
    {
        (_beneath, _table, _rows) = (beneath, beneath._table, []);
        foreach (Food food in own)
        {
            _own[food.Id] = food;
            foreach (string alias in food.Names.Values.SelectMany(n => n))
            {
                string folded = FoodName.Fold(alias);
                _ownNames[folded] = (food, alias);
                _ownNames.TryAdd(FoodName.Singular(folded), (food, alias));
            }
        }
    }

    /// <summary>This table with foods of the house laid over it: a name of theirs is theirs in every language, an id of theirs hides the row beneath.</summary>
    public FoodTable With(IEnumerable<Food> own) => new(this, own);

    /// <summary>True when a food of the house stands behind an id.</summary>
    public bool IsOwn(string id) => _own.ContainsKey(id);

    /// <summary>The foods that ship with the program.</summary>
    public static FoodTable Default => Shipped.Value;

    /// <summary>Ids of all foods, in the order of the table.</summary>
    public IEnumerable<string> Ids => _own.Keys.Union(_beneath?.Ids ?? _rows.Keys, StringComparer.Ordinal);

    /// <summary>The food of an id; null when there is none.</summary>
    public Food? Find(string id) => _own.TryGetValue(id, out Food? own) ? own : _beneath is not null ? _beneath.Find(id) : _rows.TryGetValue(id, out int row) ? _parsed.GetOrAdd(row, Parse) : null;

    /// <summary>The food a cook's words mean; null when none is sure enough.</summary>
    /// <param name="name">Food as written, without amount and unit.</param>
    /// <param name="language">ISO 639-1 code of the card; names of other languages are taken too, with less confidence.</param>
    /// <remarks>Only words that never change the food are let go ("cold", "organic"). A word that might ("almond butter") leaves the name unmatched: a wrong food is worse than none.</remarks>
    public FoodMatch? Match(string name, string language)
    {
        string folded = FoodName.Fold(name);
        if (folded.Length == 0)
        {
            return null;
        }

        if (_beneath is not null)
        {
            return (_ownNames.TryGetValue(folded, out var named) || _ownNames.TryGetValue(FoodName.Singular(folded), out named)) ? new FoodMatch(named.Food.Id, 1, named.Alias) : _beneath.Match(name, language);
        }

        if (Look(folded, language, 1) is { } exact)
        {
            return exact;
        }

        string singular = FoodName.Singular(folded);
        if (Look(singular, language, 0.97) is { } one)
        {
            return one;
        }

        // Take harmless words from both ends, one at a time, nearest to the written form first.
        string[] words = folded.Split(' ');
        for (int dropped = 1; dropped < words.Length; dropped++)
        {
            for (int front = dropped; front >= 0; front--)
            {
                int back = dropped - front;
                string kept = string.Join(' ', words.Skip(front).Take(words.Length - dropped));
                if (!words.Take(front).Concat(words.Skip(words.Length - back)).All(w => FoodName.IsModifier(w, kept)))
                {
                    continue;
                }

                double confidence = Math.Max(0.7, 0.95 - (0.05 * dropped));
                if ((Look(kept, language, confidence) ?? Look(FoodName.Singular(kept), language, confidence)) is { } bare)
                {
                    return bare;
                }
            }
        }

        return null;
    }

    private FoodMatch? Look(string key, string language, double confidence)
    {
        if (!_names.TryGetValue(key, out List<(int Row, int Language, string Alias, bool Plain)>? found))
        {
            return null;
        }

        int wanted = Array.IndexOf(Languages, language);
        (int Row, int Language, string Alias, bool Plain) best = found.OrderBy(f => f.Language == wanted ? 0 : f.Language == 0 ? 1 : 2).ThenBy(f => f.Plain ? 0 : 1).First();
        if (best.Language == wanted)
        {
            return new FoodMatch(_table.Rows[best.Row][0], confidence, best.Alias);
        }

        // Another language's word: sure only when all languages that have it mean the same food.
        return found.Select(f => f.Row).Distinct().Count() == 1 ? new FoodMatch(_table.Rows[best.Row][0], confidence * 0.9, best.Alias) : null;
    }

    private void Index(string key, int row, int lang, string alias, bool plain)
    {
        if (!_names.TryGetValue(key, out List<(int Row, int Language, string Alias, bool Plain)>? list))
        {
            _names.Add(key, list = []);
        }

        list.Add((row, lang, alias, plain));
    }

    private Food Parse(int row)
    {
        string[] cells = _table.Rows[row];
        string Cell(string column) => cells[_table.Column(column)];
        double? N(string column) => ReferenceTable.Number(Cell(column));
        ImmutableDictionary<string, ImmutableArray<string>> names = Languages.ToImmutableDictionary(l => l, l => Cell(l).Split(';', StringSplitOptions.RemoveEmptyEntries).ToImmutableArray());
        return new Food(Cell("id"), names["en"][0], Cell("source"), Cell("why"), new Composition
        {
            Water = N("water"), Protein = N("protein"), NitrogenFactor = N("nfactor"), Fat = N("fat"), Saturates = N("sat"), Carbohydrate = N("carbohydrate"), Sugars = N("sugars"),
            Sucrose = N("sucrose"), Glucose = N("glucose"), Fructose = N("fructose"), Lactose = N("lactose"), Maltose = N("maltose"), Starch = N("starch"), Fibre = N("fibre"),
            Polyols = N("polyols"), Alcohol = N("alcohol"), Acid = N("acid"), Ash = N("ash"), SodiumMilligrams = N("sodium"), PotassiumMilligrams = N("potassium"),
            CalciumMilligrams = N("calcium"), IronMilligrams = N("iron"), VitaminCMilligrams = N("vitc"),
            TransFat = N("trans"), CholesterolMilligrams = N("cholesterol"), AddedSugars = Cell("added") is "1" ? N("sugars") : Cell("added") is "0" ? 0 : null,
        })
        {
            Densities = Pairs(Cell("density")), Units = Pairs(Cell("units")), EdiblePercent = N("edible"), Names = names, Class = Cell("class"),
            Contains = [.. Cell("contains").Split(' ', StringSplitOptions.RemoveEmptyEntries)], Depends = [.. Cell("depends").Split(' ', StringSplitOptions.RemoveEmptyEntries)],
        };
    }

    private static ImmutableDictionary<string, Held> Pairs(string cell) => cell.Split(';', StringSplitOptions.RemoveEmptyEntries)
        .Select(p => p.Split('='))
        .ToImmutableDictionary(p => p[0], p => new Held(ReferenceTable.Number(p[1].TrimEnd('*')) ?? throw new FormatException($"\"{cell}\" lacks a figure."), p[1].EndsWith('*')), StringComparer.Ordinal);
}
