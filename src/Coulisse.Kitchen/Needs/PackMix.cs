using System.Collections.Immutable;

namespace Coulisse.Kitchen.Needs;

/// <summary>The cheapest mix of packs that covers a need, proven: every other mix costs more, or as much with more left over.</summary>
/// <param name="Packs">How many of each pack, in the order given.</param>
/// <param name="Cost">Total price.</param>
/// <param name="Bought">Total content.</param>
public sealed record PackMix(ImmutableArray<int> Packs, decimal Cost, decimal Bought)
{
    /// <summary>Minimise Σ price·n subject to Σ size·n ≥ need, by branch and bound; the bound is the rest at the best price a unit.</summary>
    /// <param name="need">What must be covered.</param>
    /// <param name="offers">Size and price of each pack; sizes more than 0.</param>
    /// <remarks>Check: 1,320 g from packs of 500 at 3.00 and 1,000 at 5.20: one of each, 8.20.</remarks>
    public static PackMix Cheapest(decimal need, IReadOnlyList<(decimal Size, decimal Price)> offers)
    {
        ArgumentOutOfRangeException.ThrowIfZero(offers.Count, nameof(offers));
        int[] order = [.. Enumerable.Range(0, offers.Count).OrderBy(i => offers[i].Price / offers[i].Size)];
        Search search = new(offers, order);
        search.Go(0, Math.Max(0, need), 0, 0);
        return new([.. search.Best!], search.BestCost, search.BestBought);
    }

    private sealed class Search(IReadOnlyList<(decimal Size, decimal Price)> offers, int[] order)
    {
        private readonly int[] _now = new int[offers.Count];

        public int[]? Best { get; private set; }

        public decimal BestCost { get; private set; } = decimal.MaxValue;

        public decimal BestBought { get; private set; }

        public void Go(int at, decimal left, decimal cost, decimal bought)
        {
            if (left <= 0)
            {
                if (Best is null || cost < BestCost || (cost == BestCost && bought < BestBought))
                {
                    (Best, BestCost, BestBought) = ([.. _now], cost, bought);
                }

                return;
            }

            if (at == order.Length)
            {
                return;
            }

            (decimal size, decimal price) = offers[order[at]];
            if (Best is not null && cost + (left * (price / size)) > BestCost)
            {
                return;
            }

            int i = order[at];
            for (int n = (int)Math.Ceiling(left / size); n >= 0; n--)
            {
                _now[i] = n;
                Go(at + 1, left - (n * size), cost + (n * price), bought + (n * size));
            }

            _now[i] = 0;
        }
    }
}
