using System.Collections.Immutable;

namespace Coulisse.Matter.Shapes;

/// <summary>What a mark stands for. A writer may choose line, hatch and grey by it; never colour alone.</summary>
public enum Ink
{
    /// <summary>Edge of the tin, tray, block, plate.</summary>
    Outline,

    /// <summary>A piece that is used.</summary>
    Piece,

    /// <summary>A piece of a second kind (turned, another part).</summary>
    PieceTwo,

    /// <summary>What falls away.</summary>
    Trim,

    /// <summary>Filled black.</summary>
    Solid,

    /// <summary>Construction line, measure, fold.</summary>
    Guide,
}

/// <summary>One thing drawn. A closed family: rectangle, circle, line, polygon, text.</summary>
/// <param name="Ink">What it stands for.</param>
public abstract record Mark(Ink Ink);

/// <summary>A rectangle with its sides along the axes.</summary>
/// <param name="X">Left edge, mm.</param>
/// <param name="Y">Upper edge, mm.</param>
/// <param name="Width">Width, mm.</param>
/// <param name="Height">Height, mm.</param>
/// <param name="Ink">What it stands for.</param>
public sealed record RectMark(double X, double Y, double Width, double Height, Ink Ink) : Mark(Ink);

/// <summary>A circle.</summary>
/// <param name="X">Centre, mm.</param>
/// <param name="Y">Centre, mm.</param>
/// <param name="Radius">Radius, mm.</param>
/// <param name="Ink">What it stands for.</param>
public sealed record CircleMark(double X, double Y, double Radius, Ink Ink) : Mark(Ink);

/// <summary>A straight line.</summary>
/// <param name="X1">Start, mm.</param>
/// <param name="Y1">Start, mm.</param>
/// <param name="X2">End, mm.</param>
/// <param name="Y2">End, mm.</param>
/// <param name="Ink">What it stands for.</param>
public sealed record LineMark(double X1, double Y1, double X2, double Y2, Ink Ink) : Mark(Ink);

/// <summary>A polygon, or an open row of lines.</summary>
/// <param name="Points">Corners, mm.</param>
/// <param name="Closed">True for a filled outline, false for a row of lines.</param>
/// <param name="Ink">What it stands for.</param>
public sealed record PolygonMark(ImmutableArray<DrawnPoint> Points, bool Closed, Ink Ink) : Mark(Ink);

/// <summary>A short text, anchored at its middle.</summary>
/// <param name="X">Middle of the text, mm.</param>
/// <param name="Y">Baseline, mm.</param>
/// <param name="Text">The text.</param>
/// <param name="Size">Height of the letters, mm.</param>
/// <param name="Ink">What it stands for.</param>
public sealed record TextMark(double X, double Y, string Text, double Size, Ink Ink) : Mark(Ink);

/// <summary>A point, mm.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Downwards.</param>
public readonly record struct DrawnPoint(double X, double Y);
