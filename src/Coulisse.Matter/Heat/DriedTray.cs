using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>A thin layer that dries: its end weight from the solids, its time from one weighing on the way.</summary>
/// <param name="Start">Weight before.</param>
/// <param name="Water">Water before, mass fraction below 1.</param>
/// <remarks>
/// m_end = m·(1 − w₀)/(1 − w). Time by Lewis, X/X₀ = exp(−k·t), X water on dry basis, equilibrium taken as zero; k from the weighing.
/// Published k belong to their own layer, air and load, so none is shipped; published diffusivities are (<see cref="DryingFood"/>), with the layer they were measured at. Check: 240 g at 89 % to 10 % is 29.3 g (solids balance by hand).
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

    /// <summary>Time to an end weight by diffusion in a sheet, MR = 8/π²·Σ exp(−(2n+1)²·π²·D·t/(4·L²))/(2n+1)² (Crank), L the half thickness dried on both faces, the whole on one.</summary>
    /// <param name="end">End weight.</param>
    /// <param name="diffusion">D of the food, m²/s, measured at that thickness; moved to another it is a guess.</param>
    /// <param name="thickness">Thickness of the slices or sheet.</param>
    /// <param name="bothFaces">On a mesh; false on a tray.</param>
    /// <exception cref="ArgumentOutOfRangeException">The end is not between the solids alone and the start, or a figure is outside the model.</exception>
    public Duration TimeTo(Mass end, double diffusion, Length thickness, bool bothFaces)
    {
        if (end.Grams <= Solids || end >= Start || diffusion is not (>= 1e-13 and <= 1e-7) || thickness.Millimetres is not (>= 0.1 and <= 30))
        {
            throw new ArgumentOutOfRangeException(nameof(end), end.Grams, "Outside the model: the end lies between the solids alone and the start, D is 1e-13 to 1e-7 m²/s, the layer 0.1 to 30 mm.");
        }

        double wanted = (end.Grams - Solids) / (Start.Grams - Solids);
        double half = thickness.Metres / (bothFaces ? 2 : 1);
        double Left(double fourier) => 8 / (Math.PI * Math.PI) * Enumerable.Range(0, 60).Sum(n => Math.Exp(-((2 * n) + 1) * ((2 * n) + 1) * Math.PI * Math.PI * fourier / 4) / (((2 * n) + 1) * ((2 * n) + 1)));
        (double low, double high) = (0, 20);
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Left(middle) > wanted ? (middle, high) : (low, middle);
        }

        return Duration.FromSeconds(high * half * half / diffusion);
    }
}
