using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Shapes;

/// <summary>A tin or mould by its inside measures: what it holds, full or to a depth.</summary>
/// <remarks>
/// Volumes are exact for the ideal shape; real corners are rounded, so a pressed mould holds 3 to 8 % less (common practice, no source).
/// Weighing the tin full of water (grams are millilitres) beats any formula. Zero or negative measures are refused.
/// </remarks>
public abstract record Mould
{
    private protected Mould()
    {
    }

    /// <summary>Inside depth.</summary>
    public abstract Length Depth { get; }

    /// <summary>Volume full to the rim.</summary>
    public Volume Volume => Volume.FromMillilitres(CubicMillimetresTo(Depth.Millimetres) / 1000);

    /// <summary>Volume when filled to a depth from the bottom.</summary>
    /// <param name="depth">0 to <see cref="Depth"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Deeper than the mould.</exception>
    public Volume VolumeTo(Length depth) => depth.Millimetres <= Depth.Millimetres * (1 + 1e-12)
        ? Volume.FromMillilitres(CubicMillimetresTo(depth.Millimetres) / 1000)
        : throw new ArgumentOutOfRangeException(nameof(depth), depth.Millimetres, FormattableString.Invariant($"The mould is {Depth.Millimetres:0.#} mm deep."));

    /// <summary>Depth that a volume reaches; the inverse of <see cref="VolumeTo"/> to 1e-9 of the depth.</summary>
    /// <param name="volume">0 to <see cref="Volume"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">More than the mould holds.</exception>
    public Length DepthFor(Volume volume)
    {
        double wanted = volume.Millilitres * 1000;
        if (wanted > CubicMillimetresTo(Depth.Millimetres) * (1 + 1e-9))
        {
            throw new ArgumentOutOfRangeException(nameof(volume), volume.Millilitres, FormattableString.Invariant($"The mould holds {Volume.Millilitres:0.#} mL."));
        }

        double low = 0;
        double high = Depth.Millimetres;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            if (CubicMillimetresTo(middle) < wanted)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return Length.FromMillimetres(high);
    }

    /// <summary>Volume below a depth, mm³.</summary>
    private protected abstract double CubicMillimetresTo(double depth);

    private protected static Length Positive(Length value, string name) => value.Millimetres > 0
        ? value
        : throw new ArgumentOutOfRangeException(name, value.Millimetres, "A tin's measure is more than 0 mm.");
}
