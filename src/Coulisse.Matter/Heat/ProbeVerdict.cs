using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Heat;

/// <summary>What a measured curve shows, as read and with every reading off by the probe's accuracy on the wrong side.</summary>
/// <param name="Hottest">Highest reading.</param>
/// <param name="Reached">Minute at which the target is first reached; null when it is not, or none was asked.</param>
/// <param name="Held">Longest unbroken minutes at or above the target.</param>
/// <param name="Cooling">Stages of the cooling rule from the hottest reading on; empty when no rule was asked.</param>
/// <param name="Lethality">Log reduction by organism id.</param>
/// <param name="Gaps">Stretches without readings: minute and length. Nothing above the colder of both ends is credited in them.</param>
public sealed record ProbeVerdict(
    Temperature Hottest,
    (double? Best, double? Cautious) Reached,
    (double Best, double Cautious) Held,
    ImmutableArray<(CoolingStage Stage, double? Hours, double? CautiousHours, bool Kept)> Cooling,
    ImmutableArray<(Organism Organism, double Best, double Cautious)> Lethality,
    ImmutableArray<(double Minute, double Long)> Gaps)
{
    private const double LongGap = 5;   // minutes, and five times the usual interval

    /// <summary>Judges a channel.</summary>
    /// <param name="channel">At the slowest point; at least two readings.</param>
    /// <param name="accuracy">What a reading may be off, 0 to 5 K.</param>
    /// <param name="target">Wanted; null for none.</param>
    /// <param name="rule">Cooling stages; null for none.</param>
    /// <param name="organisms">Whose reduction is asked.</param>
    /// <exception cref="ArgumentException">Fewer than two readings, or an accuracy outside its range.</exception>
    public static ProbeVerdict Of(ProbeChannel channel, TemperatureDelta accuracy, Temperature? target, CoolingRule? rule, ImmutableArray<Organism> organisms)
    {
        ArgumentNullException.ThrowIfNull(channel);
        if (channel.Readings.Length < 2 || accuracy.Kelvin is not (>= 0 and <= 5))
        {
            throw new ArgumentException("A curve has two readings or more, and a probe is accurate to 0 to 5 K.", nameof(channel));
        }

        ImmutableArray<(double Minute, double Long)> gaps = Missing(channel.Readings);
        ImmutableArray<(double Minute, Temperature At)> read = Bridged(channel.Readings, gaps, coldest: true);
        ImmutableArray<(double Minute, Temperature At)> low = Off(read, -accuracy.Kelvin);
        return new ProbeVerdict(
            channel.Readings.Max(r => r.At),
            (target is { } t ? First(read, t) : null, target is { } u ? First(low, u) : null),
            (target is { } v ? Longest(read, v) : 0, target is { } w ? Longest(low, w) : 0),
            rule is null ? [] : Cool(channel.Readings, gaps, rule, accuracy.Kelvin),
            [.. organisms.Select(o => (o, o.Log10(read, low))).Select(x => (x.o, x.Item2.Best, x.Item2.Cautious))],
            gaps);
    }

    private static ImmutableArray<(CoolingStage Stage, double? Hours, double? CautiousHours, bool Kept)> Cool(ImmutableArray<(double Minute, Temperature At)> readings, ImmutableArray<(double Minute, double Long)> gaps, CoolingRule rule, double accuracy)
    {
        int top = 0;
        for (int i = 1; i < readings.Length; i++)
        {
            top = readings[i].At >= readings[top].At ? i : top;
        }

        // A cooling that was not seen from its beginning shows nothing: the first stage is then not kept.
        ImmutableArray<(double Minute, Temperature At)> fall = [.. readings.Skip(top)];
        ImmutableArray<(double Minute, Temperature At)> slow = Off(Bridged(fall, gaps, coldest: false), accuracy);
        return [.. rule.Judge(fall).Zip(rule.Judge(slow), (best, cautious) => (best.Stage, Seen(best), Seen(cautious), cautious.Kept && Seen(cautious) is not null))];
        double? Seen((CoolingStage Stage, double? Hours, bool Kept) s) => fall[0].At.Celsius >= s.Stage.From.Celsius ? s.Hours : null;
    }

    private static ImmutableArray<(double Minute, double Long)> Missing(ImmutableArray<(double Minute, Temperature At)> readings)
    {
        double[] steps = [.. readings.Zip(readings.Skip(1), (a, b) => b.Minute - a.Minute)];
        double usual = steps.Order().ElementAt(steps.Length / 2);
        return [.. steps.Select((s, i) => (readings[i].Minute, s)).Where(x => x.s > Math.Max(LongGap, 5 * usual))];
    }

    /// <summary>Over a gap the temperature is taken flat at one end's reading: the colder for what heat did, the hotter for cooling.</summary>
    private static ImmutableArray<(double Minute, Temperature At)> Bridged(ImmutableArray<(double Minute, Temperature At)> readings, ImmutableArray<(double Minute, double Long)> gaps, bool coldest)
    {
        List<(double, Temperature)> all = [];
        for (int i = 0; i < readings.Length; i++)
        {
            all.Add(readings[i]);
            if (i + 1 < readings.Length && gaps.Any(g => g.Minute == readings[i].Minute))
            {
                (Temperature a, Temperature b) = (readings[i].At, readings[i + 1].At);
                Temperature flat = (a < b) == coldest ? a : b;
                all.Add((readings[i].Minute + 1e-6, flat));
                all.Add((readings[i + 1].Minute - 1e-6, flat));
            }
        }

        return [.. all];
    }

    private static ImmutableArray<(double Minute, Temperature At)> Off(ImmutableArray<(double Minute, Temperature At)> readings, double kelvin)
        => [.. readings.Select(r => (r.Minute, r.At + TemperatureDelta.FromKelvin(kelvin)))];

    private static double? First(ImmutableArray<(double Minute, Temperature At)> r, Temperature target)
    {
        for (int i = 0; i < r.Length; i++)
        {
            if (r[i].At >= target)
            {
                return i == 0 ? r[0].Minute : Cross(r[i - 1], r[i], target);
            }
        }

        return null;
    }

    private static double Longest(ImmutableArray<(double Minute, Temperature At)> r, Temperature target)
    {
        double best = 0;
        double? since = null;
        for (int i = 0; i < r.Length; i++)
        {
            if (r[i].At >= target)
            {
                since ??= i == 0 ? r[0].Minute : Cross(r[i - 1], r[i], target);
                best = Math.Max(best, r[i].Minute - since.Value);
            }
            else if (since is { } from)
            {
                best = Math.Max(best, Cross(r[i - 1], r[i], target) - from);
                since = null;
            }
        }

        return best;
    }

    private static double Cross((double Minute, Temperature At) a, (double Minute, Temperature At) b, Temperature target)
        => a.Minute + ((b.Minute - a.Minute) * (target.Celsius - a.At.Celsius) / (b.At.Celsius - a.At.Celsius));
}
