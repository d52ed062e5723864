using System.Collections.Immutable;
using System.Numerics;

namespace Coulisse.Kitchen.Plating;

/// <summary>A part put on each plate.</summary>
/// <param name="Name">Part.</param>
/// <param name="Seconds">Seconds a plate, more than 0.</param>
public sealed record PlatingTask(string Name, double Seconds);

/// <summary>People who do the same parts on every n-th plate.</summary>
/// <param name="Tasks">Parts they do, in plating order.</param>
/// <param name="People">How many they are.</param>
public sealed record Station(ImmutableArray<PlatingTask> Tasks, int People)
{
    /// <summary>Seconds between two plates that leave the station.</summary>
    public double Pace => Tasks.Sum(t => t.Seconds) / People;
}

/// <summary>A plating line: who does which parts, and how fast plates leave it.</summary>
/// <param name="Stations">Stations; every part stands in one.</param>
/// <param name="Plates">Plates.</param>
public sealed record PlatingLine(ImmutableArray<Station> Stations, int Plates)
{
    /// <summary>The slowest station: the narrow place.</summary>
    public Station Narrow => Stations.MaxBy(s => s.Pace)!;

    /// <summary>Seconds between two finished plates.</summary>
    public double Pace => Narrow.Pace;

    /// <summary>Minutes for all plates at the narrow place's pace; fetching, wiping and carrying are not in it.</summary>
    public double Minutes => Pace * Plates / 60;

    /// <summary>Hands on the plates, person-minutes.</summary>
    public double PersonMinutes => Stations.Sum(s => s.Tasks.Sum(t => t.Seconds)) * Plates / 60;

    /// <summary>Pace that no split of the work can beat: all seconds over all people.</summary>
    public double LeastPace => Stations.Sum(s => s.Tasks.Sum(t => t.Seconds)) / Stations.Sum(s => s.People);

    /// <summary>The fastest split, proven: every way of giving the parts to stations and the people to stations is covered.</summary>
    /// <param name="tasks">Parts in plating order, 1 to 12.</param>
    /// <param name="people">People, 1 or more.</param>
    /// <param name="plates">Plates.</param>
    /// <param name="mostTogether">Most people at one station: that many can reach one set of tools. Everybody doing everything is always fastest on paper, and on paper only.</param>
    /// <remarks>
    /// best(parts, people) = least over one station's share of the larger of its pace and best(rest). Of equal paces the one with fewer stations that get the plate back, then with fewer people.
    /// Check: 8, 6, 30, 8 and 6 s, three people, two together: 20 s, so 52 plates in 17.3 min.
    /// </remarks>
    public static PlatingLine Best(IReadOnlyList<PlatingTask> tasks, int people, int plates, int mostTogether = 2)
    {
        if (tasks.Count is < 1 or > 12 || tasks.Any(t => t.Seconds is not (> 0 and < 1e6)))
        {
            throw new ArgumentOutOfRangeException(nameof(tasks), tasks.Count, "A line has 1 to 12 parts, each taking more than 0 s.");
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(people, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(plates);
        ArgumentOutOfRangeException.ThrowIfLessThan(mostTogether, 1);
        people = Math.Min(people, tasks.Count * mostTogether);
        int all = (1 << tasks.Count) - 1;
        (double Pace, int Returns, int Used, int Sub, int Own)[,] best = new (double, int, int, int, int)[all + 1, people + 1];
        for (int parts = 1; parts <= all; parts++)
        {
            int first = parts & -parts;
            for (int n = 0; n <= people; n++)
            {
                (double Pace, int Returns, int Used, int Sub, int Own) least = (double.PositiveInfinity, 0, 0, 0, 0);

                // The station that does the first part: each set of stations is looked at once.
                for (int sub = parts; sub > 0 && n > 0; sub = (sub - 1) & parts)
                {
                    if ((sub & first) == 0)
                    {
                        continue;
                    }

                    double seconds = Seconds(tasks, sub);
                    for (int own = 1; own <= Math.Min(n, mostTogether); own++)
                    {
                        (double pace, int returns, int used) = sub == parts ? (0, 0, 0) : (best[parts ^ sub, n - own].Pace, best[parts ^ sub, n - own].Returns, best[parts ^ sub, n - own].Used);
                        (double, int, int, int, int) now = (Math.Max(pace, seconds / own), returns + Runs(sub) - 1, used + own, sub, own);
                        if ((now.Item1, now.Item2, now.Item3).CompareTo((least.Pace, least.Returns, least.Used)) < 0)
                        {
                            least = now;
                        }
                    }
                }

                best[parts, n] = least;
            }
        }

        ImmutableArray<Station>.Builder stations = ImmutableArray.CreateBuilder<Station>();
        for ((int parts, int n) = (all, people); parts != 0;)
        {
            (double _, int _, int _, int sub, int own) = best[parts, n];
            stations.Add(new([.. tasks.Where((_, i) => (sub >> i & 1) == 1)], own));
            (parts, n) = (parts ^ sub, n - own);
        }

        return new(stations.ToImmutable(), plates);
    }

    /// <summary>Waves in whole trays, so that no plate of a wave is out of the fridge longer than allowed.</summary>
    /// <param name="trayHolds">Plates a tray.</param>
    /// <param name="mostMinutes">Longest time out for a wave, working time only.</param>
    /// <returns>Plates of each wave, as even as whole trays allow; empty when not even one tray can be done in time.</returns>
    public ImmutableArray<int> Waves(int trayHolds, double mostMinutes)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trayHolds, 1);
        int trays = (Plates + trayHolds - 1) / trayHolds;
        int mostTrays = (int)Math.Floor((mostMinutes * 60 / Pace / trayHolds) + 1e-9);
        if (mostTrays < 1)
        {
            return [];
        }

        int waves = (trays + mostTrays - 1) / mostTrays;
        ImmutableArray<int>.Builder sizes = ImmutableArray.CreateBuilder<int>();
        for ((int left, int i) = (Plates, 0); i < waves; i++)
        {
            int own = Math.Min(left, ((trays / waves) + (i < trays % waves ? 1 : 0)) * trayHolds);
            sizes.Add(own);
            left -= own;
        }

        return sizes.ToImmutable();
    }

    private static double Seconds(IReadOnlyList<PlatingTask> tasks, int set)
    {
        double sum = 0;
        for (int i = 0; i < tasks.Count; i++)
        {
            sum += (set >> i & 1) == 1 ? tasks[i].Seconds : 0;
        }

        return sum;
    }

    // Runs of neighbouring parts: more than one means the plate comes back.
    private static int Runs(int set) => BitOperations.PopCount((uint)(set & ~(set << 1)));
}
