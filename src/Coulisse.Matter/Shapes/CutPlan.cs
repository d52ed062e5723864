using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>How the pieces lie.</summary>
public enum CutLayout
{
    /// <summary>All pieces with their length along the block's length.</summary>
    Straight,

    /// <summary>All pieces turned by a quarter.</summary>
    Turned,

    /// <summary>Some one way, some the other, still all cuts from edge to edge of what is left.</summary>
    Mixed,
}

/// <summary>A block cut into equal pieces.</summary>
public sealed record CutPlan
{
    /// <summary>Pieces gained.</summary>
    public required int Count { get; init; }

    /// <summary>Pieces with all of them straight.</summary>
    public required int Straight { get; init; }

    /// <summary>Pieces with all of them turned.</summary>
    public required int Turned { get; init; }

    /// <summary>The layout chosen; a plain grid when it gives as many as a mixed one.</summary>
    public required CutLayout Layout { get; init; }

    /// <summary>True when no layout of edge-to-edge cuts gives more (exhausted, or equal to the bound by area).</summary>
    public required bool Proven { get; init; }

    /// <summary>The pieces with their places in the block, mm from its corner.</summary>
    public required ImmutableArray<CutPiece> Pieces { get; init; }

    /// <summary>Area of the block before the edges are trimmed.</summary>
    public required Area Block { get; init; }

    /// <summary>Area of all pieces.</summary>
    public required Area Used { get; init; }

    /// <summary>What falls away: edges, kerf and rest.</summary>
    public Area Trim => Area.FromSquareMillimetres(Math.Max(0, Block.SquareMillimetres - Used.SquareMillimetres)); // strips that fill a sheet may be over it by a last bit

    /// <summary>Share of the block that falls away.</summary>
    public Fraction TrimShare => Fraction.FromValue(Math.Clamp(Trim / Block, 0, 1));

    /// <summary>Nearest larger piece that comes out even, with fewer pieces; null when one piece is all there is.</summary>
    public EvenCut? NextFewer { get; init; }

    /// <summary>The same rows and columns stretched to use the block up.</summary>
    public EvenCut? Even { get; init; }

    /// <summary>Nearest smaller piece that comes out even, with more pieces.</summary>
    public EvenCut? NextMore { get; init; }

    /// <summary>The block with its pieces, to scale.</summary>
    public required Drawing Drawing { get; init; }
}

/// <summary>One piece in its place.</summary>
/// <param name="X">Left edge from the block's corner, mm.</param>
/// <param name="Y">Upper edge from the block's corner, mm.</param>
/// <param name="Width">Along the block's length, mm.</param>
/// <param name="Height">Along the block's width, mm.</param>
/// <param name="Turned">Lies a quarter turn round.</param>
public readonly record struct CutPiece(double X, double Y, double Width, double Height, bool Turned);

/// <summary>A cut that leaves nothing over but kerf and edges.</summary>
/// <param name="Columns">Pieces along the block's length.</param>
/// <param name="Rows">Pieces along its width.</param>
/// <param name="Along">Piece along the block's length.</param>
/// <param name="Across">Piece along its width.</param>
public sealed record EvenCut(int Columns, int Rows, Length Along, Length Across)
{
    /// <summary>Pieces.</summary>
    public int Count => Columns * Rows;
}
