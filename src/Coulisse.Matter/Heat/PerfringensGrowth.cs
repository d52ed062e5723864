using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Heat;

/// <summary>How many tenfold Clostridium perfringens may grow while cooked food cools: a second figure beside the rule, never in its place.</summary>
/// <remarks>
/// Rate with cardinal temperatures (Rosso's form, assumed for the abstract's parameters): roasted chicken 8.8, 46.4, 51.5 °C and 6.06 /h; braised beef 10.3, 43.5, 53.4 °C and 5.64 /h (one-step dynamic fits, Food Control, abstracts only). Lag by Baranyi with h₀ 4.9 (Le Marc and others 2008, Int. J. Food Microbiol. 128, 41; from memory).
/// No death is counted and no ceiling: above about six the figure only says that it fails. Check: the two stages of FSANZ 3.2.2 in straight lines give 0.8 to 1.0 log.
/// </remarks>
public static class PerfringensGrowth
{
    private const double Lag = 4.9;   // h₀ = µ·lag
    private static readonly (double Min, double Best, double Max, double Most)[] Sets = [(8.8, 46.4, 51.5, 6.06), (10.3, 43.5, 53.4, 5.64)];

    /// <summary>Tenfold growth over a history of the slowest point, least and greatest of the two sets.</summary>
    /// <param name="history">Minute and temperature, minutes rising.</param>
    /// <param name="lag">With the time the spores need to begin; without it is the worst case.</param>
    public static (double Least, double Most) Log10(ImmutableArray<(double Minute, Temperature At)> history, bool lag = true)
    {
        double[] logs = [.. Sets.Select(s =>
        {
            double grown = 0;
            for (int i = 1; i < history.Length; i++)
            {
                // the rate bends sharply at its top: a ramp is cut into pieces of half a kelvin or less
                double hours = (history[i].Minute - history[i - 1].Minute) / 60;
                (double a, double b) = (history[i - 1].At.Celsius, history[i].At.Celsius);
                int parts = Math.Clamp((int)Math.Ceiling(Math.Abs(b - a) * 2), 1, 400);
                for (int p = 0; p < parts; p++)
                {
                    grown += Rate(s, a + ((b - a) * (p + 0.5) / parts)) * hours / parts;
                }
            }

            double first = 1 / (Math.Exp(Lag) - 1);
            return (lag ? grown + Math.Log((Math.Exp(-grown) + first) / (1 + first)) : grown) / Math.Log(10);
        })];
        return (logs.Min(), logs.Max());
    }

    private static double Rate((double Min, double Best, double Max, double Most) s, double t)
        => t <= s.Min || t >= s.Max ? 0 : s.Most * (t - s.Max) * (t - s.Min) * (t - s.Min) / ((s.Best - s.Min) * (((s.Best - s.Min) * (t - s.Best)) - ((s.Best - s.Max) * (s.Best + s.Min - (2 * t)))));
}
