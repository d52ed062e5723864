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
