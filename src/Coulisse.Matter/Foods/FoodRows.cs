using System.Collections.Immutable;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Foods;

/// <summary>The foods of a table by id; a row's figures are parsed when it is first asked for.</summary>
internal sealed class FoodRows
{
    private static readonly ImmutableDictionary<string, Held> NoPairs = ImmutableDictionary.Create<string, Held>(StringComparer.Ordinal);

    private readonly ReferenceTable _table;
    private readonly int _id;

    // The row behind an id and one more; 0 where there is none.
    private readonly int[] _slots;

    private readonly string?[] _ids;
    private readonly Food?[] _parsed;

    /// <summary>The foods of a table.</summary>
    /// <exception cref="ArgumentException">Two rows have the same id.</exception>
    public FoodRows(ReferenceTable table)
    {
        _table = table;
        _id = table.Column("id");
        NameColumns = table.Rows.Count == 0 ? [] : FoodLanguages.Columns(table);
        _ids = new string?[table.Rows.Count];
        _parsed = new Food?[table.Rows.Count];
        _slots = new int[NameHash.Slots(2 * table.Rows.Count)];
        for (int row = 0; row < table.Rows.Count; row++)
        {
            int slot = Slot(table.Cell(row, _id));
            if (_slots[slot] > 0)
            {
                throw new ArgumentException($"An item with the same key has already been added. Key: {Id(row)}");
            }

            _slots[slot] = row + 1;
        }
    }

    /// <summary>The column of names of each language; none in an empty table.</summary>
    public int[] NameColumns { get; }

    /// <summary>Ids in the order of the table.</summary>
    public IEnumerable<string> Ids
    {
        get
        {
            for (int row = 0; row < _ids.Length; row++)
            {
                yield return Id(row);
            }
        }
    }

    /// <summary>The id of a row.</summary>
    public string Id(int row) => _ids[row] ??= new string(_table.Cell(row, _id));

    /// <summary>The food of an id; null when there is none.</summary>
    public Food? Find(string id)
    {
        int row = _slots[Slot(id)] - 1;
        return row < 0 ? null : Volatile.Read(ref _parsed[row]) ?? Interlocked.CompareExchange(ref _parsed[row], Parse(row), null) ?? _parsed[row];
    }

    /// <summary>The slot of an id, or the empty one it would go to.</summary>
    private int Slot(ReadOnlySpan<char> id)
    {
        int at = NameHash.Of(id) & (_slots.Length - 1);
        while (_slots[at] > 0 && !_table.Cell(_slots[at] - 1, _id).SequenceEqual(id))
        {
            at = (at + 1) & (_slots.Length - 1);
        }

        return at;
    }

    private Food Parse(int row)
    {
        string[] cells = _table.Rows[row];
        string Cell(string column) => cells[_table.Column(column)];
        double? N(string column) => ReferenceTable.Number(Cell(column));
        return new Food(Cell("id"), Cell("en").Split(';', StringSplitOptions.RemoveEmptyEntries)[0], Cell("source"), Cell("why"), new Composition
        {
            Water = N("water"), Protein = N("protein"), NitrogenFactor = N("nfactor"), Fat = N("fat"), Saturates = N("sat"), Carbohydrate = N("carbohydrate"), Sugars = N("sugars"),
            Sucrose = N("sucrose"), Glucose = N("glucose"), Fructose = N("fructose"), Lactose = N("lactose"), Maltose = N("maltose"), Starch = N("starch"), Fibre = N("fibre"),
            Polyols = N("polyols"), Alcohol = N("alcohol"), Acid = N("acid"), Ash = N("ash"), SodiumMilligrams = N("sodium"), PotassiumMilligrams = N("potassium"),
            CalciumMilligrams = N("calcium"), IronMilligrams = N("iron"), VitaminCMilligrams = N("vitc"), VitaminAMicrograms = N("vita"), VitaminDMicrograms = N("vitd"),
            TransFat = N("trans"), CholesterolMilligrams = N("cholesterol"), AddedSugars = Cell("added") is "1" ? N("sugars") : Cell("added") is "0" ? 0 : null,
        })
        {
            Densities = Pairs(Cell("density")), Units = Pairs(Cell("units")), EdiblePercent = N("edible"), NamesInTable = new FoodNameList(_table, row), Class = Cell("class"),
            Contains = [.. Cell("contains").Split(' ', StringSplitOptions.RemoveEmptyEntries)], Depends = [.. Cell("depends").Split(' ', StringSplitOptions.RemoveEmptyEntries)],
        };
    }

    private static ImmutableDictionary<string, Held> Pairs(string cell)
    {
        if (cell.Length == 0)
        {
            return NoPairs;
        }

        ImmutableDictionary<string, Held>.Builder pairs = NoPairs.ToBuilder();
        foreach (string pair in cell.Split(';', StringSplitOptions.RemoveEmptyEntries))
        {
            string[] p = pair.Split('=');
            pairs.Add(p[0], new Held(ReferenceTable.Number(p[1].TrimEnd('*')) ?? throw new FormatException($"\"{cell}\" lacks a figure."), p[1].EndsWith('*')));
        }

        return pairs.ToImmutable();
    }
}
