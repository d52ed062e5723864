namespace Coulisse.Kitchen.Needs;

/// <summary>Something that must be bought: for a dish, a twin, a spare or a guest's diet.</summary>
/// <param name="Food">Food as named.</param>
/// <param name="Grams">Grams ready to use; 0 for a need counted in pieces.</param>
/// <param name="For">What it is for, in words.</param>
public sealed record Need(string Food, double Grams, string For)
{
    /// <summary>Whole pieces, when geometry or a count decides and not weight.</summary>
    public int Pieces { get; init; }

    /// <summary>Share of the bought weight that is ready to use; 1 when it is used as bought.</summary>
    public double UsableShare { get; init; } = 1;

    /// <summary>Grams to buy.</summary>
    public double BuyGrams => Grams / UsableShare;
}
