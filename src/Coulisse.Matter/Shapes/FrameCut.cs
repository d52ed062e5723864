using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>A frame filled, trimmed and cut: grams to pour, grams a piece, grams of trim.</summary>
/// <param name="Fill">Volume poured.</param>
/// <param name="FillMass">Grams poured.</param>
/// <param name="Cut">Pieces and their places.</param>
/// <param name="PieceVolume">Volume of one piece.</param>
/// <param name="PieceMass">Grams of one piece.</param>
/// <param name="TrimMass">Grams that fall away; pieces and trim make up the fill exactly.</param>
public sealed record FrameCut(Volume Fill, Mass FillMass, CutPlan Cut, Volume PieceVolume, Mass PieceMass, Mass TrimMass)
{
    /// <summary>Fills a frame and cuts it.</summary>
    /// <param name="frame">Inside measures.</param>
    /// <param name="density">Of the set mass.</param>
    /// <param name="pieceAlong">Length of a piece.</param>
    /// <param name="pieceAcross">Width of a piece.</param>
    /// <param name="kerf">Width lost at each cut.</param>
    /// <param name="edge">Trimmed from every side.</param>
    /// <remarks>Check: 330 × 220 × 18 mm at 1.03 g/mL takes 1,346 g; trimmed 5 mm it gives 56 pieces of 40 × 30 mm, 22.2 g each, and 100 g of trim.</remarks>
    public static FrameCut Of(BoxMould frame, Density density, Length pieceAlong, Length pieceAcross, Length kerf = default, Length edge = default)
    {
        CutPlan cut = Cutting.Fit(frame.Along, frame.Across, pieceAlong, pieceAcross, kerf, edge);
        Volume piece = pieceAlong * pieceAcross * frame.Depth;
        Mass each = piece * density;
        Mass all = frame.Volume * density;
        return new(frame.Volume, all, cut, piece, each, Mass.FromGrams(Math.Max(0, all.Grams - (each.Grams * cut.Count))));
    }
}
