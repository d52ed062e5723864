using System.Collections.Immutable;

namespace Coulisse.Kitchen.Needs;

/// <summary>A pack that covers some of a need.</summary>
/// <param name="Size">Content, more than 0.</param>
/// <param name="Price">Price, 0 or more.</param>
/// <param name="Supplier">Who sells it.</param>
public readonly record struct SupplierOffer(decimal Size, decimal Price, string Supplier);

/// <summary>Packs for several needs from several suppliers with minimum orders: the cheapest found, and the least that any choice must cost.</summary>
/// <param name="Packs">For each need, how many of each of its offers.</param>
/// <param name="Goods">Sum of the packs.</param>
/// <param name="TopUp">What must be spent besides to reach minimum orders, by supplier: goods that keep, or a small-order charge.</param>
/// <param name="Bound">No choice costs less than this, top-ups counted.</param>
public sealed record SupplierChoice(ImmutableArray<ImmutableArray<int>> Packs, decimal Goods, ImmutableSortedDictionary<string, decimal> TopUp, decimal Bound)
{
    /// <summary>Goods and top-ups.</summary>
    public decimal Cost => Goods + TopUp.Values.Sum();

    /// <summary>The choice is proven cheapest, to half a cent.</summary>
    public bool Proven => Cost - Bound < 0.005m;

    /// <summary>Minimises Σ over suppliers of max(minimum, goods) for those that are ordered from.</summary>
    /// <param name="needs">Needs with their offers, one or more each.</param>
    /// <param name="minimums">Minimum order by supplier; 0 where none is named.</param>
    /// <remarks>
    /// Every set of suppliers with a minimum is looked at (up to 10 of them). Within a set needs are separate but for the minimums, which are priced:
    /// for any w in 0..1, max(minimum, x) ≥ w·minimum + (1 − w)·x, so the cheapest packs at prices (1 − w)·price give a bound, and their true cost a choice; w follows the shortfalls.
    /// </remarks>
    public static SupplierChoice Cheapest(IReadOnlyList<(decimal Need, IReadOnlyList<SupplierOffer> Offers)> needs, IReadOnlyDictionary<string, decimal>? minimums = null)
    {
        string[] strict = [.. (minimums ?? new Dictionary<string, decimal>()).Where(m => m.Value > 0 && needs.Any(n => n.Offers.Any(o => o.Supplier == m.Key))).Select(m => m.Key).Order(StringComparer.Ordinal)];
        ArgumentOutOfRangeException.ThrowIfGreaterThan(strict.Length, 10, nameof(minimums));
        Search search = new(needs, strict, [.. strict.Select(s => minimums![s])]);
        return search.Best();
    }

    private sealed class Search(IReadOnlyList<(decimal Need, IReadOnlyList<SupplierOffer> Offers)> needs, string[] strict, decimal[] minimum)
    {
        private const int Steps = 40;

        private ImmutableArray<int>[]? _best;
        private decimal _cost = decimal.MaxValue;
        private decimal _bound = decimal.MaxValue;

        public SupplierChoice Best()
        {
            // Sets with a small bound first, so that most others are closed by it at once.
            List<(int Set, decimal Bound)> sets = [];
            for (int set = 0; set < 1 << strict.Length; set++)
            {
                if (Choose(set, new decimal[strict.Length], out decimal bound) is { } mix)
                {
                    Keep(mix);
                    sets.Add((set, bound));
                }
            }

            foreach ((int set, decimal first) in sets.OrderBy(s => s.Bound))
            {
                _bound = Math.Min(_bound, first >= _cost ? first : Tighten(set, first));
            }

            if (_best is null)
            {
                throw new ArgumentOutOfRangeException(nameof(needs), "A need has no offer.");
            }

            decimal[] goods = Goods(_best, out decimal all);
            return new([.. _best], all, strict.Select((s, i) => (s, Short: goods[i] > 0 ? Math.Max(0, minimum[i] - goods[i]) : 0)).Where(x => x.Short > 0).ToImmutableSortedDictionary(x => x.s, x => x.Short, StringComparer.Ordinal), Math.Min(_bound, _cost));
        }

        private decimal Tighten(int set, decimal first)
        {
            decimal best = first;
            decimal[] weight = new decimal[strict.Length];
            decimal stride = 0.5m;
            for (int step = 0; step < Steps && best < _cost - 0.005m; step++)
            {
                if (Choose(set, weight, out decimal bound) is not { } mix)
                {
                    return decimal.MaxValue;
                }

                Keep(mix);
                stride = bound > best ? stride : stride * 0.85m;
                best = Math.Max(best, bound);
                decimal[] goods = Goods(mix, out _);
                for (int i = 0; i < strict.Length; i++)
                {
                    weight[i] = (set >> i & 1) == 0 ? 0 : Math.Clamp(weight[i] + (stride * (minimum[i] - goods[i]) / minimum[i]), 0, 1);
                }
            }

            return best;
        }

        // Cheapest packs from the suppliers of a set (those without a minimum always belong), at weighted prices; null when a need has no offer left.
        private ImmutableArray<int>[]? Choose(int set, decimal[] weight, out decimal bound)
        {
            ImmutableArray<int>[] packs = new ImmutableArray<int>[needs.Count];
            bound = 0;
            for (int i = 0; i < strict.Length; i++)
            {
                bound += (set >> i & 1) == 0 ? 0 : weight[i] * minimum[i];
            }

            for (int n = 0; n < needs.Count; n++)
            {
                (decimal need, IReadOnlyList<SupplierOffer> offers) = needs[n];
                List<int> open = [];
                List<(decimal, decimal)> priced = [];
                for (int o = 0; o < offers.Count; o++)
                {
                    int s = Array.IndexOf(strict, offers[o].Supplier);
                    if (s < 0 || (set >> s & 1) == 1)
                    {
                        open.Add(o);
                        priced.Add((offers[o].Size, offers[o].Price * (s < 0 ? 1 : 1 - weight[s])));
                    }
                }

                if (open.Count == 0)
                {
                    return null;
                }

                PackMix mix = PackMix.Cheapest(need, priced);
                bound += mix.Cost;
                int[] all = new int[offers.Count];
                for (int k = 0; k < open.Count; k++)
                {
                    all[open[k]] = mix.Packs[k];
                }

                packs[n] = [.. all];
            }

            return packs;
        }

        private decimal[] Goods(ImmutableArray<int>[] packs, out decimal all)
        {
            decimal[] goods = new decimal[strict.Length];
            all = 0;
            for (int n = 0; n < needs.Count; n++)
            {
                for (int o = 0; o < packs[n].Length; o++)
                {
                    decimal cost = packs[n][o] * needs[n].Offers[o].Price;
                    all += cost;
                    int s = cost == 0 ? -1 : Array.IndexOf(strict, needs[n].Offers[o].Supplier);
                    if (s >= 0)
                    {
                        goods[s] += cost;
                    }
                }
            }

            return goods;
        }

        private void Keep(ImmutableArray<int>[] packs)
        {
            decimal[] goods = Goods(packs, out decimal all);
            for (int i = 0; i < strict.Length; i++)
            {
                all += goods[i] > 0 ? Math.Max(0, minimum[i] - goods[i]) : 0;
            }

            if (all < _cost)
            {
                (_best, _cost) = (packs, all);
            }
        }
    }
}
