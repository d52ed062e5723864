using System.Collections.Immutable;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Foods;

/// <summary>The names of a food by language; those of a row of the table are cut out only when asked for, which most readers of a food never do.</summary>
internal sealed class FoodNameList : IEquatable<FoodNameList>
{
    /// <summary>The list of a food without names.</summary>
    public static readonly FoodNameList None = new(ImmutableDictionary<string, ImmutableArray<string>>.Empty);

    private readonly ReferenceTable? _table;
    private readonly int _row;
    private ImmutableDictionary<string, ImmutableArray<string>>? _byLanguage;

    /// <summary>Names that are given.</summary>
    public FoodNameList(ImmutableDictionary<string, ImmutableArray<string>> byLanguage) => _byLanguage = byLanguage;

    /// <summary>The names of a row.</summary>
    public FoodNameList(ReferenceTable table, int row) => (_table, _row) = (table, row);

    /// <summary>The names by language, the usual one first.</summary>
    public ImmutableDictionary<string, ImmutableArray<string>> ByLanguage => Volatile.Read(ref _byLanguage) ?? Interlocked.CompareExchange(ref _byLanguage, Cut(), null) ?? _byLanguage!;

    /// <summary>Two foods have the same names when they hold the same dictionary.</summary>
    public bool Equals(FoodNameList? other) => other is not null && (ReferenceEquals(this, other) || ReferenceEquals(ByLanguage, other.ByLanguage));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as FoodNameList);

    /// <inheritdoc/>
    public override int GetHashCode() => ByLanguage.GetHashCode();

    private ImmutableDictionary<string, ImmutableArray<string>> Cut() => FoodLanguages.Codes.ToImmutableDictionary(
        l => l,
        l => new string(_table!.Cell(_row, _table.Column(l))).Split(';', StringSplitOptions.RemoveEmptyEntries).ToImmutableArray());
}
