using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Tests;

public sealed class MassTests
{
    [Fact]
    public void A_negative_mass_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Mass.FromGrams(-1));

    [Fact]
    public void NaN_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Mass.FromGrams(double.NaN));

    [Fact]
    public void Mass_over_density_gives_volume()
        => Assert.Equal(100, (Mass.FromGrams(143) / Density.FromGramsPerMillilitre(1.43)).Millilitres, 9);
}
