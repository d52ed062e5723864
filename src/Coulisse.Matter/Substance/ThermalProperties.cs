using Coulisse.Matter.Quantities;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Substance;

/// <summary>How a mixture of known parts takes up and conducts heat at one temperature.</summary>
/// <param name="At">Temperature.</param>
/// <param name="Density">Density without air.</param>
/// <param name="Heat">Specific heat; below the freezing point the apparent one, which carries the ice.</param>
/// <param name="Fast">Conductivity with the parts side by side: upper bound.</param>
/// <param name="Slow">Conductivity with the parts one behind the other: lower bound.</param>
/// <param name="IceShare">Ice, mass fraction of the whole.</param>
/// <remarks>
/// Density by volumes, 1/ρ = Σ x/ρᵢ; specific heat Σ x·cᵢ; conductivity Σ v·kᵢ and 1/Σ(v/kᵢ), v by volume.
/// Ice below the freezing point t_f: (x_w − x_b)·(1 − t_f/t), bound water x_b = 0.4·x_protein (handbook form, from memory).
/// Source: Choi and Okos 1986. Range −40 to 150 °C. Diffusivity is k/(ρ·c), not the separate fit, which strays up to 4 %.
/// Check: 75 % water, 21 % protein, 3 % fat, 1 % ash at 60 °C: 1040 kg/m³, 3.652 kJ/(kg·K), 0.565 and 0.468 W/(m·K).
/// </remarks>
public sealed record ThermalProperties(Temperature At, Density Density, SpecificHeat Heat, Conductivity Fast, Conductivity Slow, double IceShare)
{
    /// <summary>Heat of fusion of ice at 0 °C, kJ/kg (steam tables, from memory).</summary>
    public const double Fusion = 333.6;
    private static readonly Lazy<Polynomials> Fits = new(Polynomials.Load);

    /// <summary>Part of the apparent heat that melts ice, kJ/(kg·K).</summary>
    internal double MeltingHeat { get; init; }

    /// <summary>Diffusivity from the upper bound of conductivity.</summary>
    public Diffusivity FastDiffusivity => Spread(Fast.WattsPerMetreKelvin);

    /// <summary>Diffusivity from the lower bound of conductivity.</summary>
    public Diffusivity SlowDiffusivity => Spread(Slow.WattsPerMetreKelvin);

    /// <summary>Properties at a temperature.</summary>
    /// <param name="parts">Mass fractions.</param>
    /// <param name="at">−40 to 150 °C.</param>
    /// <param name="freezing">Where freezing begins, below 0 °C; null when freezing is not asked for, and then nothing below 0 °C is answered.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the fitted range, or below 0 °C without a freezing point.</exception>
    public static ThermalProperties Of(ThermalParts parts, Temperature at, Temperature? freezing = null)
    {
        ArgumentNullException.ThrowIfNull(parts);
        double t = at.Celsius;
        if (t is not (>= -40 and <= 150))
        {
            throw new ArgumentOutOfRangeException(nameof(at), t, "Outside the model: the fits run from -40 to 150 °C.");
        }

        if (freezing is { Celsius: not (< 0 and > -20) } || (t < 0 && freezing is null))
        {
            throw new ArgumentOutOfRangeException(nameof(freezing), freezing, "Below 0 °C a freezing point between 0 and -20 °C is needed.");
        }

        double free = Math.Max(0, parts.Water - (0.4 * parts.Protein));
        double ice = freezing is { } f && t < f.Celsius ? free * (1 - (f.Celsius / t)) : 0;
        double melting = ice > 0 ? Fusion * free * -freezing!.Value.Celsius / (t * t) : 0;   // kJ/(kg·K)
        (string Name, double Share)[] all =
        [
            ("water", parts.Water - ice), ("ice", ice), ("protein", parts.Protein), ("fat", parts.Fat), ("carb", parts.Carbohydrate), ("fibre", parts.Fibre), ("ash", parts.Ash),
        ];
        Polynomials fits = Fits.Value;
        double volume = 0;
        double heat = melting;
        double side = 0;
        double behind = 0;
        foreach ((string name, double share) in all.Where(x => x.Share > 0))
        {
            double v = share / fits.At("rho", name, t);
            double k = fits.At("k", name, t);
            volume += v;
            heat += share * fits.At("cp", name, t);
            side += v * k;
            behind += v / k;
        }

        return new ThermalProperties(
            at,
            Density.FromGramsPerMillilitre(1 / volume / 1000),
            SpecificHeat.FromKilojoulesPerKilogramKelvin(heat),
            Conductivity.FromWattsPerMetreKelvin(side / volume),
            Conductivity.FromWattsPerMetreKelvin(volume / behind),
            ice)
        {
            MeltingHeat = melting,
        };
    }

    private Diffusivity Spread(double k) => Diffusivity.FromSquareMetresPerSecond(k / (Density.GramsPerMillilitre * 1000 * Heat.KilojoulesPerKilogramKelvin * 1000));

    /// <summary>The fitted polynomials by property and constituent.</summary>
    private sealed class Polynomials
    {
        private readonly Dictionary<(string, string), List<(double A, double B, double C, double Least, double Most)>> _fits = [];

        public static Polynomials Load()
        {
            ReferenceTable table = ReferenceTable.Load("heat/constituents.tsv");
            Polynomials all = new();
            foreach (string[] row in table.Rows)
            {
                double N(string column) => ReferenceTable.Number(row[table.Column(column)]) ?? throw new FormatException($"{table.Name}: {column} is empty.");
                (string, string) key = (row[table.Column("property")], row[table.Column("constituent")]);
                if (!all._fits.TryGetValue(key, out List<(double, double, double, double, double)>? fits))
                {
                    all._fits[key] = fits = [];
                }

                fits.Add((N("a"), N("b"), N("c"), N("least"), N("most")));
            }

            return all;
        }

        public double At(string property, string constituent, double t)
        {
            // Water below 0 °C has its own specific heat; where only the warm fit exists (k, rho of unfrozen water) it is carried on to the cold end, as the handbook does.
            List<(double A, double B, double C, double Least, double Most)> fits = _fits[(property, constituent)];
            int best = 0;
            for (int i = 1; i < fits.Count; i++)
            {
                best = Away(fits[i], t) < Away(fits[best], t) ? i : best;
            }

            (double a, double b, double c, _, _) = fits[best];
            return a + (b * t) + (c * t * t);
        }

        private static double Away((double A, double B, double C, double Least, double Most) fit, double t) => Math.Max(0, Math.Max(fit.Least - t, t - fit.Most));
    }
}
