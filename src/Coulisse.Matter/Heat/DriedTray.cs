using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>A thin layer that dries: its end weight from the solids, its time from one weighing on the way.</summary>
/// <param name="Start">Weight before.</param>
/// <param name="Water">Water before, mass fraction below 1.</param>
/// <remarks>
/// m_end = m·(1 − w₀)/(1 − w). Time by Lewis, X/X₀ = exp(−k·t), X water on dry basis, equilibrium taken as zero; k from the weighing.
/// Published k belong to their own layer, air and load, so none is shipped. Check: 240 g at 89 % to 10 % is 29.3 g (solids balance by hand).
/// </remarks>
public sealed record DriedTray(Mass Start, Fraction Water)
{
    private double Solids => Start.Grams * (1 - Water.Value);

    /// <summary>Weight at a wanted share of water.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not drier than before, or nothing but water.</exception>
    public Mass EndWeight(Fraction water) => water.Value < Water.Value && Water.Value < 1
        ? Mass.FromGrams(Solids / (1 - water.Value))
        : throw new ArgumentOutOfRangeException(nameof(water), water.Value, "The end is drier than the start, and the start holds some solids.");

    /// <summary>Time to an end weight, from one weighing on the way.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The weighing shows no loss, or less than the solids; or the end is below the solids.</exception>
    public Duration TimeTo(Mass end, Duration at, Mass weighed)
    {
        if (at <= Duration.Zero || weighed.Grams <= Solids || weighed >= Start || end.Grams <= Solids || end > Start)
        {
            throw new ArgumentOutOfRangeException(nameof(weighed), weighed.Grams, "The weighing and the end lie between the solids alone and the start, and the weighing is later than the start.");
        }

        double whole = Start.Grams - Solids;
        double k = Math.Log(whole / (weighed.Grams - Solids)) / at.TotalMinutes;
        return Duration.FromMinutes(Math.Log(whole / (end.Grams - Solids)) / k);
    }
}
