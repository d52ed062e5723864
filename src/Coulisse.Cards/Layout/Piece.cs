namespace Coulisse.Cards.Layout;

/// <summary>What a line is by its place among the others.</summary>
internal enum PieceKind
{
    /// <summary>Divides the card: a component, or one of the plain words (Ingredients, Method, Notes).</summary>
    Heading,

    /// <summary>A line of a list.</summary>
    Item,

    /// <summary>A step.</summary>
    Step,

    /// <summary>Any other sentence.</summary>
    Paragraph,

    /// <summary>Another size of the list before it: kept beside it, never added.</summary>
    Variant,
}

/// <summary>A line with its place in the card.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">Its words.</param>
/// <param name="Span">Where it stands.</param>
/// <param name="Level">Level of a heading, from 1.</param>
internal readonly record struct Piece(PieceKind Kind, string Text, Span Span, int Level = 0);

/// <summary>A line as typed that is not blank.</summary>
/// <param name="Text">Without the space around it.</param>
/// <param name="Span">Where.</param>
/// <param name="Indent">Spaces before it.</param>
/// <param name="Block">Number of the block it stands in: blank lines divide blocks.</param>
internal readonly record struct RawLine(string Text, Span Span, int Indent, int Block);
