using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Foods;

/// <summary>Our foods, by id and by the names cooks write.</summary>
/// <remarks>A row's figures are parsed when it is first asked for, so that a command that needs ten foods pays for ten.</remarks>
public sealed class FoodTable
{
    private static readonly Lazy<FoodTable> Shipped = new(() => new FoodTable(ReferenceTable.Load("foods/foods.tsv")));

    private readonly FoodRows _rows;
    private readonly FoodNames _names;
    private readonly FoodTable? _beneath;
    private readonly Dictionary<string, Food> _own = new(StringComparer.Ordinal);
    private readonly Dictionary<string, OwnName> _ownNames = new(StringComparer.Ordinal);

    /// <summary>A table of foods.</summary>
    /// <param name="table">Rows in the columns of foods/foods.tsv.</param>
    public FoodTable(ReferenceTable table)
    {
        _rows = new FoodRows(table);
        _names = new FoodNames(table, _rows);
    }

    private FoodTable(FoodTable beneath, IEnumerable<Food> own)
    {
        (_beneath, _rows, _names) = (beneath, beneath._rows, beneath._names);
        foreach (Food food in own)
        {
            _own[food.Id] = food;
            foreach (string alias in food.Names.Values.SelectMany(n => n))
            {
                string folded = FoodName.Fold(alias);
                OwnName named = new(food, alias);
                _ownNames[folded] = named;
                _ownNames.TryAdd(FoodName.Singular(folded), named);
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
    public IEnumerable<string> Ids => _own.Keys.Union(_beneath?.Ids ?? _rows.Ids, StringComparer.Ordinal);

    /// <summary>The food of an id; null when there is none.</summary>
    public Food? Find(string id) => _own.TryGetValue(id, out Food? own) ? own : _beneath is not null ? _beneath.Find(id) : _rows.Find(id);

    /// <summary>The food a cook's words mean; null when none is sure enough.</summary>
    /// <param name="name">Food as written, without amount and unit.</param>
    /// <param name="language">ISO 639-1 code of the card; names of other languages are taken too, with less confidence.</param>
    /// <remarks>Only words that never change the food are let go ("cold", "organic"). A word that might ("almond butter") leaves the name unmatched: a wrong food is worse than none.</remarks>
    public FoodMatch? Match(string name, string language)
    {
        if (_beneath is null)
        {
            return _names.Match(name, language);
        }

        string folded = FoodName.Fold(name);
        return folded.Length == 0 ? null
            : _ownNames.TryGetValue(folded, out OwnName? named) || _ownNames.TryGetValue(FoodName.Singular(folded), out named) ? new FoodMatch(named.Food.Id, 1, named.Alias)
            : _beneath.Match(name, language);
    }

    private sealed record OwnName(Food Food, string Alias);
}
