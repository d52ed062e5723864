using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Heat;

/// <summary>A moment of a heating or cooling body.</summary>
/// <param name="Time">Since the start.</param>
/// <param name="Core">Slowest point.</param>
/// <param name="Mean">Mean over the food's volume, by heat content for one material, by cells for several.</param>
/// <param name="Surface">Middle of the outer face of the first axis.</param>
public readonly record struct BodyMoment(Duration Time, Temperature Core, Temperature Mean, Temperature Surface);

/// <summary>A followed body.</summary>
/// <param name="Moments">Evenly spaced.</param>
/// <param name="StoredKilojoules">Heat the cells hold more at the end than at the start; negative when it cooled.</param>
/// <param name="TakenKilojoules">Heat that crossed the faces, reckoned apart.</param>
/// <param name="Steps">Accepted time steps.</param>
/// <remarks>Heats are of the modelled part (half a slab of one square metre, one octant of a brick).</remarks>
public sealed record BodyRun(System.Collections.Immutable.ImmutableArray<BodyMoment> Moments, double StoredKilojoules, double TakenKilojoules, int Steps)
{
    /// <summary>How well the balance closes, as a share of the heat moved.</summary>
    public double Unbalanced => Math.Abs(StoredKilojoules - TakenKilojoules) / Math.Max(Math.Abs(StoredKilojoules), 1e-12);

    /// <summary>Middle's history as lethality takes it.</summary>
    public System.Collections.Immutable.ImmutableArray<(double Minute, Temperature At)> History => [.. Moments.Select(m => (m.Time.TotalMinutes, m.Core))];

    /// <summary>Time until the slowest point passes a temperature for good, between the moments by a straight line; null when it does not.</summary>
    public Duration? TimeTo(Temperature target)
    {
        bool rising = Moments[^1].Core >= Moments[0].Core;
        bool There(BodyMoment m) => rising ? m.Core >= target : m.Core <= target;
        for (int i = Moments.Length - 1; i >= 0; i--)
        {
            if (!There(Moments[i]))
            {
                if (i == Moments.Length - 1)
                {
                    return null;
                }

                (BodyMoment a, BodyMoment b) = (Moments[i], Moments[i + 1]);
                return a.Time + ((b.Time - a.Time) * ((target.Celsius - a.Core.Celsius) / (b.Core.Celsius - a.Core.Celsius)));
            }
        }

        return Duration.Zero;
    }
}
