namespace Coulisse.Papers.Pages;

/// <summary>A sheet of paper, points.</summary>
/// <param name="Name">Name of the format.</param>
/// <param name="Width">Width upright.</param>
/// <param name="Height">Height upright.</param>
/// <param name="Margin">Margin at the sides.</param>
public sealed record PageFormat(string Name, double Width, double Height, double Margin)
{
    /// <summary>Points in a millimetre.</summary>
    public const double Millimetre = 72 / 25.4;

    /// <summary>210 × 297 mm.</summary>
    public static PageFormat A4 { get; } = new("A4", 210 * Millimetre, 297 * Millimetre, 15 * Millimetre);

    /// <summary>8.5 × 11 in.</summary>
    public static PageFormat Letter { get; } = new("Letter", 612, 792, 15 * Millimetre);

    /// <summary>105 × 148 mm, for labels.</summary>
    public static PageFormat A6 { get; } = new("A6", 105 * Millimetre, 148 * Millimetre, 7 * Millimetre);

    /// <summary>The same sheet on its side.</summary>
    public PageFormat Turn() => this with { Width = Height, Height = Width };
}
