using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>Chooses what is shown: the most weight whose shortest seconds fit, exactly (a knapsack solved over whole seconds).</summary>
internal static class ShowChoice
{
    /// <summary>Chosen rows in the order given.</summary>
    /// <param name="items">Rows.</param>
    /// <param name="seconds">Seconds there are, 0 to 4 hours.</param>
    public static ImmutableArray<ShowItem> Choose(ImmutableArray<ShowItem> items, int seconds)
    {
        if (seconds <= 0)
        {
            return [];
        }

        // best[i, s]: most weight from the rows from i on in s seconds. Earlier rows win ties, so the sheet's order decides.
        int[,] best = new int[items.Length + 1, seconds + 1];
        for (int i = items.Length - 1; i >= 0; i--)
        {
            for (int s = 0; s <= seconds; s++)
            {
                int with = items[i].Seconds.Least <= s ? best[i + 1, s - items[i].Seconds.Least] + Worth(items[i]) : int.MinValue;
                best[i, s] = Math.Max(with, best[i + 1, s]);
            }
        }

        ImmutableArray<ShowItem>.Builder chosen = ImmutableArray.CreateBuilder<ShowItem>();
        int left = seconds;
        for (int i = 0; i < items.Length; i++)
        {
            if (items[i].Seconds.Least <= left && best[i, left] == best[i + 1, left - items[i].Seconds.Least] + Worth(items[i]))
            {
                chosen.Add(items[i]);
                left -= items[i].Seconds.Least;
            }
        }

        return chosen.ToImmutable();
    }

    /// <summary>Weight of a row; 5 "must be seen" outranks any number of lesser ones.</summary>
    public static int Worth(ShowItem item) => item.Show.Weight >= 5 ? 1000 : Math.Max(1, item.Show.Weight);
}
