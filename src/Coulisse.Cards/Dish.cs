using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Coulisse.Matter.Foods;

namespace Coulisse.Cards;

/// <summary>What a card says: every piece with the span it was read from. Nothing of the text is lost: what was not understood is in <see cref="Unread"/>.</summary>
public sealed record Dish
{
    /// <summary>Title as written; "Untitled" when the text has none.</summary>
    public required string Title { get; init; }

    /// <summary>ISO 639-1 code of the language found.</summary>
    public string Language { get; init; } = "en";

    /// <summary>Whose spoons, cups and pints it means.</summary>
    public MeasureSystem Measures { get; init; } = MeasureSystem.Assumed;

    /// <summary>What the card serves or makes as a whole.</summary>
    public ImmutableArray<CardYield> Yields { get; init; } = [];

    /// <summary>Parts of one plate with their weights, when the card states them.</summary>
    public ImmutableArray<PlatePart> Plate { get; init; } = [];

    /// <summary>The components in the order of the text. A plain recipe has one.</summary>
    public ImmutableArray<Component> Components { get; init; } = [];

    /// <summary>Lists of another size that stand beside a component's list: never added to it.</summary>
    public ImmutableArray<Variant> Variants { get; init; } = [];

    /// <summary>Notes that belong to the whole dish.</summary>
    public ImmutableArray<Note> Notes { get; init; } = [];

    /// <summary>Questions, ranked by what their answer moves.</summary>
    public ImmutableArray<Doubt> Doubts { get; init; } = [];

    /// <summary>What the text says against itself; never a silent correction.</summary>
    public ImmutableArray<Remark> Remarks { get; init; } = [];

    /// <summary>Lines the reader did not understand, as written.</summary>
    public ImmutableArray<Note> Unread { get; init; } = [];

    /// <summary>The foods the card is weighed and judged with: those that ship, with the house's own laid over.</summary>
    [JsonIgnore]
    public FoodTable Foods { get; init; } = FoodTable.Default;

    /// <summary>The row of a food of this card: the house's own by its name, else what the reader found; null when there is none.</summary>
    public Food? Row(FoodAmount food)
    {
        ArgumentNullException.ThrowIfNull(food);
        return Foods.Match(food.Food, Language) is { } match && (food.FoodId is null || Foods.IsOwn(match.Id)) ? Foods.Find(match.Id) : food.FoodId is { } id ? Foods.Find(id) : null;
    }
}

/// <summary>A component of the dish: one formula with its own list and method.</summary>
public sealed record Component
{
    /// <summary>Name as written, without heading marks; empty for the single component of a plain recipe.</summary>
    public required string Name { get; init; }

    /// <summary>Leading code of the name ("C1", "C2"), when it has one.</summary>
    public string? Code { get; init; }

    /// <summary>Heading's span.</summary>
    public Span Span { get; init; }

    /// <summary>What it makes: weight, pieces, tins.</summary>
    public ImmutableArray<CardYield> Makes { get; init; } = [];

    /// <summary>How long it keeps.</summary>
    public ImmutableArray<Keeping> Keeps { get; init; } = [];

    /// <summary>Tins, moulds, frames, rings named for it.</summary>
    public ImmutableArray<Vessel> Vessels { get; init; } = [];

    /// <summary>Ingredient lines in order.</summary>
    public ImmutableArray<IngredientLine> Ingredients { get; init; } = [];

    /// <summary>Steps in order.</summary>
    public ImmutableArray<Step> Steps { get; init; } = [];

    /// <summary>Statements and notes that belong to it.</summary>
    public ImmutableArray<Note> Notes { get; init; } = [];

    /// <summary>True for a component that only puts the others together (plate-up).</summary>
    public bool IsAssembly { get; init; }
}

/// <summary>Another size of a component's list.</summary>
/// <param name="Component">Name of the component whose list was taken.</param>
/// <param name="Name">Heading of this list as written ("Pastry, 28 cm").</param>
/// <param name="Ingredients">Its lines.</param>
/// <param name="Span">Where its heading stands.</param>
public sealed record Variant(string Component, string Name, ImmutableArray<IngredientLine> Ingredients, Span Span);

/// <summary>A sentence kept as written.</summary>
/// <param name="Text">The sentence.</param>
/// <param name="Span">Where it stands.</param>
public sealed record Note(string Text, Span Span);

/// <summary>A statement of yield.</summary>
/// <param name="Amount">How many or how much.</param>
/// <param name="Unit">"plates", "pieces", "g", "tin" … in our spelling; "portions" for serves.</param>
/// <param name="Text">As written.</param>
/// <param name="Span">Where.</param>
public sealed record CardYield(double Amount, string Unit, string Text, Span Span)
{
    /// <summary>Weight of one, grams, when stated.</summary>
    public double? EachGrams { get; init; }

    /// <summary>Upper end of a range.</summary>
    public double? AmountMax { get; init; }

    /// <summary>What good runs came to, in <see cref="Unit"/>; then <see cref="Amount"/> is their mean. Null when the card's own word stands.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Measured? Measured { get; init; }
}

/// <summary>One part of the plate.</summary>
/// <param name="Component">Name of the component it comes from, as matched; null when no component fits.</param>
/// <param name="Text">As written.</param>
/// <param name="Pieces">Pieces on one plate; null when weighed only.</param>
/// <param name="Grams">Grams on one plate; null when counted only.</param>
public sealed record PlatePart(string? Component, string Text, double? Pieces, double? Grams);

/// <summary>A keeping statement.</summary>
/// <param name="Hours">How long, hours; null when the text gives no figure ("same day" is 24 with <see cref="SameDay"/>).</param>
/// <param name="Celsius">At which temperature, when stated.</param>
/// <param name="Where">"fridge", "freezer", "airtight", "room", "dry" or empty.</param>
/// <param name="Text">As written.</param>
/// <param name="Span">Where it stands.</param>
public sealed record Keeping(double? Hours, double? Celsius, string Where, string Text, Span Span)
{
    /// <summary>High end where the text tells a range ("2–4 °C"), whose low end is <see cref="Celsius"/>; null for a single figure.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? CelsiusMax { get; init; }

    /// <summary>The warmest it may be kept at, as told.</summary>
    [JsonIgnore]
    public double? Warmest => CelsiusMax ?? Celsius;

    /// <summary>Must be served the day it is made.</summary>
    public bool SameDay { get; init; }

    /// <summary>True when it speaks of quality ("soften within half an hour"), false for a limit.</summary>
    public bool Quality { get; init; }
}

/// <summary>A tin, mould, frame, ring, tray or plate with its size.</summary>
/// <param name="Kind">"tin", "frame", "mould", "ring", "tray", "pouch", "terrine" …</param>
/// <param name="Millimetres">Sizes in the order written; one figure for a round.</param>
/// <param name="Count">How many.</param>
/// <param name="Text">As written.</param>
/// <param name="Span">Where.</param>
public sealed record Vessel(string Kind, ImmutableArray<double> Millimetres, int Count, string Text, Span Span);
