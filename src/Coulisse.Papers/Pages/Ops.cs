using System.Collections.Immutable;

namespace Coulisse.Papers.Pages;

/// <summary>One thing drawn on a page, points from the upper left corner.</summary>
public abstract record Op
{
    private protected Op()
    {
    }

    /// <summary>The same thing moved.</summary>
    public abstract Op Moved(double dx, double dy);
}

/// <summary>A line of text whose left end stands at X on the baseline Y.</summary>
public sealed record TextOp(double X, double Y, string Text, double Size, bool Strong) : Op
{
    public override Op Moved(double dx, double dy) => this with { X = X + dx, Y = Y + dy };
}

/// <summary>A straight rule; grey is 0 black to 1 white.</summary>
public sealed record RuleOp(double X1, double Y1, double X2, double Y2, double Weight, double Grey = 0, bool Dashed = false) : Op
{
    public override Op Moved(double dx, double dy) => this with { X1 = X1 + dx, X2 = X2 + dx, Y1 = Y1 + dy, Y2 = Y2 + dy };
}

/// <summary>A rectangle; fill below 0 is none, weight 0 is no outline.</summary>
public sealed record BoxOp(double X, double Y, double Width, double Height, double Weight, double Fill = -1) : Op
{
    public override Op Moved(double dx, double dy) => this with { X = X + dx, Y = Y + dy };
}

/// <summary>A circle.</summary>
public sealed record CircleOp(double X, double Y, double Radius, double Weight, double Fill = -1, bool Dashed = false) : Op
{
    public override Op Moved(double dx, double dy) => this with { X = X + dx, Y = Y + dy };
}

/// <summary>A polygon or an open row of lines.</summary>
public sealed record PathOp(ImmutableArray<(double X, double Y)> Points, bool Closed, double Weight, double Fill = -1, bool Dashed = false) : Op
{
    public override Op Moved(double dx, double dy) => this with { Points = [.. Points.Select(p => (p.X + dx, p.Y + dy))] };
}

/// <summary>What a piece of the page is, for screen readers.</summary>
public enum PieceTag
{
    Artifact,
    Title,
    Heading1,
    Heading2,
    Paragraph,
    ListItem,
    HeadCell,
    Cell,
    Figure,
}

/// <summary>Things drawn that are one thing to a reader.</summary>
/// <param name="Tag">What it is.</param>
/// <param name="Ops">What is drawn.</param>
/// <param name="Alternative">Words for those who cannot see it.</param>
public sealed record Piece(PieceTag Tag, ImmutableArray<Op> Ops, string Alternative = "");

/// <summary>What is never cut by the end of a page: a line of text, a row, a drawing.</summary>
public sealed record Slab
{
    /// <summary>Its height.</summary>
    public required double Height { get; init; }

    /// <summary>White before it, unless it begins a page.</summary>
    public double Before { get; init; }

    /// <summary>Stays on the page of the slab that follows.</summary>
    public bool KeepNext { get; init; }

    /// <summary>Rather stays on the page of the slab that follows, when both chains fit one page.</summary>
    public bool KeepIfCan { get; init; }

    /// <summary>Begins a page.</summary>
    public bool PageFirst { get; init; }

    /// <summary>Table it belongs to; 0 for none.</summary>
    public int Table { get; init; }

    /// <summary>Head of its table, drawn again when a page begins inside the table.</summary>
    public Slab? Head { get; init; }

    /// <summary>Its pieces, from its own upper left corner.</summary>
    public ImmutableArray<Piece> Pieces { get; init; } = [];
}

/// <summary>A slab on its page.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Upper edge.</param>
/// <param name="Slab">What stands there.</param>
public sealed record Laid(double X, double Y, Slab Slab)
{
    /// <summary>What is drawn, in page coordinates.</summary>
    public IEnumerable<Op> Ops => Slab.Pieces.SelectMany(p => p.Ops).Select(o => o.Moved(X, Y));
}

/// <summary>A page laid out.</summary>
/// <param name="Width">Width, points.</param>
/// <param name="Height">Height, points.</param>
/// <param name="Body">Body in reading order.</param>
/// <param name="Furniture">Head and foot.</param>
public sealed record LaidPage(double Width, double Height, ImmutableArray<Laid> Body, Piece Furniture);
