using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>A disc of dough closed over a filling.</summary>
/// <param name="DoughMass">Grams of dough a piece.</param>
/// <param name="Filling">Most filling that leaves the seam free.</param>
/// <param name="FillingMass">Grams of it.</param>
public sealed record Dumpling(Mass DoughMass, Volume Filling, Mass FillingMass)
{
    /// <summary>Closes a disc in two, a seam round the half.</summary>
    /// <param name="disc">Diameter of the disc.</param>
    /// <param name="thickness">Of the dough.</param>
    /// <param name="seam">Width pressed together.</param>
    /// <param name="dough">Density of the dough.</param>
    /// <param name="filling">Density of the filling.</param>
    /// <remarks>
    /// The two leaves, free inside the seam of radius a, are taken to belly out to 0.6 a at the thickest:
    /// a half-ellipse of half-axes a and a on the board and 0.3 a up and down gives V = (2/3)·π·a·a·(0.3 a) = 0.2·π·a³. Assumed (common practice, no source): weigh one.
    /// </remarks>
    public static Dumpling Of(Length disc, Length thickness, Length seam, Density dough, Density filling)
    {
        if (thickness.Millimetres <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(thickness), thickness.Millimetres, "Dough is thicker than 0 mm.");
        }

        double a = (disc.Millimetres / 2) - seam.Millimetres;
        if (a <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(seam), seam.Millimetres, FormattableString.Invariant($"A seam on a disc of {disc.Millimetres:0.#} mm is narrower than half of it."));
        }

        Volume skin = Volume.FromMillilitres(Math.PI * disc.Millimetres * disc.Millimetres / 4 * thickness.Millimetres / 1000);
        Volume room = Volume.FromMillilitres(0.2 * Math.PI * a * a * a / 1000);
        return new(skin * dough, room, room * filling);
    }

    /// <summary>Seam that is left round a filling; null when it needs more than the disc has.</summary>
    /// <param name="disc">Diameter of the disc.</param>
    /// <param name="filling">Volume of the filling.</param>
    public static Length? SeamFor(Length disc, Volume filling)
    {
        double a = Math.Cbrt(filling.Millilitres * 1000 / (0.2 * Math.PI));
        return a < disc.Millimetres / 2 ? Length.FromMillimetres((disc.Millimetres / 2) - a) : null;
    }
}
