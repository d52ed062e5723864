using System.Collections.Immutable;

namespace Coulisse.Cards;

/// <summary>What a line of an ingredient list is.</summary>
public enum LineKind
{
    /// <summary>One or more foods.</summary>
    Ingredient,

    /// <summary>A printed total that must not be added.</summary>
    Total,

    /// <summary>A heading inside the list.</summary>
    Heading,

    /// <summary>A remark of the writer.</summary>
    Note,
}

/// <summary>One line of an ingredient list and how it was read.</summary>
public sealed record IngredientLine
{
    /// <summary>Where it stands.</summary>
    public required Span Span { get; init; }

    /// <summary>As written, without the bullet.</summary>
    public required string Text { get; init; }

    /// <summary>What the line is.</summary>
    public LineKind Kind { get; init; } = LineKind.Ingredient;

    /// <summary>The foods it names: usually one, two for "salt and pepper".</summary>
    public ImmutableArray<FoodAmount> Foods { get; init; } = [];

    /// <summary>Sub-list it stands under ("The base, 1,489.5 g"), when there is one.</summary>
    public string? Group { get; init; }

    /// <summary>Confidence of the reading, 0 to 1.</summary>
    public double Confidence { get; init; } = 1;
}

/// <summary>A piece of a line and what the reader took it for.</summary>
/// <param name="Text">The characters.</param>
/// <param name="Role">"amount", "unit", "food", "preparation", "note" …</param>
/// <param name="Meaning">What it became.</param>
public sealed record ReadToken(string Text, string Role, string Meaning);

/// <summary>A food with its amount as read from a line.</summary>
public sealed record FoodAmount
{
    /// <summary>Food as written, without amount, unit and preparation.</summary>
    public required string Food { get; init; }

    /// <summary>Our canonical food name; null when none is sure enough (a wrong match is worse than none).</summary>
    public string? FoodId { get; init; }

    /// <summary>How sure the food is, 0 to 1.</summary>
    public double FoodConfidence { get; init; }

    /// <summary>Amount, low end of a range; null when none is stated.</summary>
    public double? Amount { get; init; }

    /// <summary>High end of a range; null for a single amount.</summary>
    public double? AmountMax { get; init; }

    /// <summary>Unit in one spelling: g kg ml cl dl l tsp dsp tbsp cup floz oz lb pint pinch piece leaf pack tin stick …; null when no amount.</summary>
    public string? Unit { get; init; }

    /// <summary>"level", "rounded", "heaped", "scant", "generous", "packed", "sifted" or null.</summary>
    public string? Fill { get; init; }

    /// <summary>Size or grade word: "large", "M", "200 bloom", "3.6 % fat".</summary>
    public string? Grade { get; init; }

    /// <summary>Peeled, chopped, drained, melted …</summary>
    public string? Preparation { get; init; }

    /// <summary>May be left out.</summary>
    public bool Optional { get; init; }

    /// <summary>"to taste", "as needed", "for dusting", "to serve" …: what it is for when no amount binds it.</summary>
    public string? Use { get; init; }

    /// <summary>Grams, where the text itself fixes them; low end of a range.</summary>
    public double? Grams { get; init; }

    /// <summary>High end of <see cref="Grams"/>.</summary>
    public double? GramsMax { get; init; }

    /// <summary>The second measure as written ("9 oz").</summary>
    public string? SecondMeasure { get; init; }

    /// <summary>Another food that may stand in its place.</summary>
    public string? Alternative { get; init; }

    /// <summary>Temperature or state of the food ("cold", "20 °C", "frozen").</summary>
    public string? State { get; init; }

    /// <summary>As-bought grams, when the line gives both ("from 415 g").</summary>
    public double? BoughtGrams { get; init; }

    /// <summary>Share of a base in percent ("2 % salt on flour"); the base's name in <see cref="PercentOf"/>.</summary>
    public double? Percent { get; init; }

    /// <summary>What <see cref="Percent"/> is of.</summary>
    public string? PercentOf { get; init; }

    /// <summary>Name of the component of this dish it is taken from ("140 g hot C1 base"); null for a food.</summary>
    public string? FromComponent { get; init; }

    /// <summary>Content of one pack or tin, grams ("2 x 400 g tins": 400).</summary>
    public double? PackGrams { get; init; }
}
