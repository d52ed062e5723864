using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Measures;

/// <summary>A leaf of gelatine by grade.</summary>
/// <param name="Grade">titanium, bronze, silver, gold, platinum.</param>
/// <param name="Bloom">Gel strength, g bloom.</param>
/// <param name="Leaf">Weight of one leaf.</param>
/// <param name="Source">Where it is from.</param>
public sealed record GelatineLeaf(string Grade, double Bloom, Mass Leaf, string Source)
{
    /// <summary>The grades, weakest first.</summary>
    public static ImmutableArray<GelatineLeaf> Grades { get; } = [.. ReferenceTable.Load("measures/leaves.tsv").Rows
        .Select(r => new GelatineLeaf(r[0], ReferenceTable.Number(r[1])!.Value, Mass.FromGrams(ReferenceTable.Number(r[2])!.Value), r[3]))];

    /// <summary>The leaf a grade word or a bloom means; null when neither is known.</summary>
    /// <param name="grade">"gold", "200 bloom", "silver leaf" …</param>
    public static GelatineLeaf? Find(string grade)
    {
        string g = grade.ToLowerInvariant();
        if (Grades.FirstOrDefault(l => g.Contains(l.Grade, StringComparison.Ordinal)) is { } named)
        {
            return named;
        }

        string digits = string.Concat(g.SkipWhile(c => !char.IsAsciiDigit(c)).TakeWhile(char.IsAsciiDigit));
        return double.TryParse(digits, System.Globalization.CultureInfo.InvariantCulture, out double bloom) ? Grades.FirstOrDefault(l => Math.Abs(l.Bloom - bloom) <= 15) : null;
    }
}
