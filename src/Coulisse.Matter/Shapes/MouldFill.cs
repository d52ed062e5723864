using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>How much batter, cream or dough a mould takes, and how deep it stands.</summary>
/// <param name="Mould">The mould.</param>
/// <param name="Volume">Volume of the filling.</param>
/// <param name="Mass">Mass of the filling.</param>
/// <param name="Depth">Depth it stands at.</param>
/// <param name="Headroom">What is left to the rim, for rise.</param>
public sealed record MouldFill(Mould Mould, Volume Volume, Mass Mass, Length Depth, Length Headroom)
{
    /// <summary>Fills a share of the mould's volume.</summary>
    /// <param name="mould">The mould.</param>
    /// <param name="density">Of the raw filling.</param>
    /// <param name="share">Share of the full volume: 0.6 creamed, 0.7 muffins, 0.45 lidded loaf, 0.9 set creams (common practice, no source).</param>
    public static MouldFill Share(Mould mould, Density density, Fraction share) => Of(mould, density, mould.Volume * share.Value);

    /// <summary>Fills to a depth.</summary>
    /// <param name="mould">The mould.</param>
    /// <param name="density">Of the raw filling.</param>
    /// <param name="depth">From the bottom.</param>
    public static MouldFill To(Mould mould, Density density, Length depth) => Of(mould, density, mould.VolumeTo(depth));

    /// <summary>Fills with what there is.</summary>
    /// <param name="mould">The mould.</param>
    /// <param name="density">Of the raw filling, more than 0.</param>
    /// <param name="mass">What there is.</param>
    /// <exception cref="ArgumentOutOfRangeException">It does not go in.</exception>
    public static MouldFill With(Mould mould, Density density, Mass mass) => Of(mould, density, mass / density);

    private static MouldFill Of(Mould mould, Density density, Volume volume)
    {
        if (density.GramsPerMillilitre <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(density), density.GramsPerMillilitre, "The density of a filling is more than 0 g/mL.");
        }

        Length depth = mould.DepthFor(volume);
        return new(mould, volume, volume * density, depth, Length.FromMillimetres(Math.Max(0, mould.Depth.Millimetres - depth.Millimetres)));
    }
}
