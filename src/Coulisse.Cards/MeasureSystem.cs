namespace Coulisse.Cards;

/// <summary>Whose spoons, cups and pints a card means, and how sure that is.</summary>
/// <param name="System">au, nz, uk, us, jp or metric.</param>
/// <param name="Settled">True when the card says or shows it; false when it was inferred or assumed.</param>
/// <param name="Because">What it rests on, in words.</param>
public sealed record MeasureSystem(string System, bool Settled, string Because)
{
    /// <summary>What is taken when nothing speaks.</summary>
    public static MeasureSystem Assumed { get; } = new("metric", false, "no country is named, so metric spoons and cups are assumed");
}
