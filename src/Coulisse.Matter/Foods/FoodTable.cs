using System.Collections.Concurrent;
using System.Collections.Immutable;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Foods;

/// <summary>Our foods, by id and by the names cooks write.</summary>
/// <remarks>Names are indexed on first use and a row's figures are parsed when it is first asked for, so that a command that needs ten foods pays for ten.</remarks>
public sealed class FoodTable
{
    private static readonly string[] Languages = ["en", "fr", "de", "es", "it", "ja"];

    // Words that look like a name of ours and mean no food, or two: dough is no pasta, "Paprika" a spice and a fruit, coffee to grind none to drink, "pimento" allspice to the trade and a sweet pepper to a kitchen.
    private static readonly HashSet<(string Language, string Folded)> Unsure =
    [
        ("fr", "pate"), ("de", "paprika"), ("en", "ground coffee"), ("en", "roasted coffee"), ("en", "freshly ground coffee"), ("en", "fresh ground coffee"), ("de", "gemahlener kaffee"), ("fr", "cafe moulu"), ("es", "cafe molido"), ("it", "caffe macinato"), ("en", "hot dog"), ("en", "pimento"), ("en", "pimentos"), ("en", "frozen yoghurt"), ("en", "frozen yogurt"), ("es", "lomo de bacalao"), ("es", "lomos de bacalao"),
    ];

    private static readonly Lazy<FoodTable> Shipped = new(() => new FoodTable(ReferenceTable.Load("foods/foods.tsv")));

    private readonly ReferenceTable _table;
    private readonly Dictionary<string, int> _rows;
    private readonly Dictionary<string, List<(int Row, int Language, string Alias, bool Plain)>> _names = new(StringComparer.Ordinal);
    private readonly Lazy<Dictionary<string, (int Row, string Alias)>>[] _forms;
    private readonly ConcurrentDictionary<int, Food> _parsed = new();
    private readonly FoodTable? _beneath;
    private readonly Dictionary<string, Food> _own = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (Food Food, string Alias)> _ownNames = new(StringComparer.Ordinal);

    /// <summary>A table of foods.</summary>
    /// <param name="table">Rows in the columns of foods/foods.tsv.</param>
    public FoodTable(ReferenceTable table)
    {
        _table = table;
        // Made only for a language that is asked for and whose plain names do not answer.
        _forms = [.. Languages.Select((_, lang) => new Lazy<Dictionary<string, (int Row, string Alias)>>(() => Forms(lang)))];
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
        (_beneath, _table, _rows, _forms) = (beneath, beneath._table, [], []);
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

        if (Unsure.Contains((language, folded)))
        {
            return null;
        }

        if (Named(folded, language, 1, 0.97, 0.95) is { } whole)
        {
            return whole;
        }

        // Take harmless words from both ends, one at a time, nearest to the written form first.
        string[] words = folded.Split(' ');
        for (int dropped = 1; dropped < words.Length; dropped++)
        {
            for (int front = dropped; front >= 0; front--)
            {
                int back = dropped - front;
                string kept = string.Join(' ', words.Skip(front).Take(words.Length - dropped));
                string[] let = [.. words[..front], .. words[(words.Length - back)..]];
                bool cut = !let.All(w => FoodModifiers.Is(w, kept, language));
                if (Unsure.Contains((language, kept)) || cut && !let.All(w => FoodModifiers.CutsFish(w) || FoodModifiers.Is(w, kept, language)))
                {
                    continue;
                }

                double confidence = Math.Max(0.7, (95 - (5 * dropped)) / 100.0);
                if (Named(kept, language, confidence, confidence, confidence) is { } bare && (!cut || Find(bare.Id)?.Class == "fish"))
                {
                    return bare;
                }
            }
        }

        return null;
    }

    /// <summary>The food of a whole name: as written, in its singular, in another form of its language; another language's word comes last.</summary>
    private FoodMatch? Named(string folded, string language, double exact, double one, double form)
    {
        int wanted = Array.IndexOf(Languages, language);
        string singular = FoodName.Singular(folded);
        return Look(folded, language, exact, own: true) ?? Look(singular, language, one, own: true) ?? Form(folded, wanted, form) ?? Look(folded, language, exact, own: false) ?? Look(singular, language, one, own: false);
    }

    private FoodMatch? Form(string folded, int wanted, double confidence) =>
        wanted > 0 && _forms[wanted].Value.TryGetValue(FoodForms.Key(folded, Languages[wanted]), out (int Row, string Alias) found) && found.Row >= 0 ? new FoodMatch(_table.Rows[found.Row][0], confidence, found.Alias) : null;

    /// <summary>Names of one language by the key of their forms; -1 where two foods meet, as such a form names neither.</summary>
    private Dictionary<string, (int Row, string Alias)> Forms(int lang)
    {
        Dictionary<string, (int Row, string Alias)> forms = new(StringComparer.Ordinal);
        int column = _table.Column(Languages[lang]);
        for (int row = 0; row < _table.Rows.Count; row++)
        {
            foreach (string alias in _table.Rows[row][column].Split(';', StringSplitOptions.RemoveEmptyEntries))
            {
                string key = FoodForms.Key(FoodName.Fold(alias), Languages[lang]);
                forms[key] = forms.TryGetValue(key, out (int Row, string Alias) had) && had.Row != row ? (-1, alias) : (row, alias);
            }
        }

        return forms;
    }

    private FoodMatch? Look(string key, string language, double confidence, bool own)
    {
        if (!_names.TryGetValue(key, out List<(int Row, int Language, string Alias, bool Plain)>? found))
        {
            return null;
        }

        int wanted = Array.IndexOf(Languages, language);
        (int Row, int Language, string Alias, bool Plain) best = found.OrderBy(f => f.Language == wanted ? 0 : f.Language == 0 ? 1 : 2).ThenBy(f => f.Plain ? 0 : 1).First();
        if (own)
        {
            return best.Language == wanted ? new FoodMatch(_table.Rows[best.Row][0], confidence, best.Alias) : null;
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
            CalciumMilligrams = N("calcium"), IronMilligrams = N("iron"), VitaminCMilligrams = N("vitc"), VitaminAMicrograms = N("vita"), VitaminDMicrograms = N("vitd"),
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
