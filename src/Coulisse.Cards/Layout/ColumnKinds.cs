using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Which columns of figures are amounts, and how they stand to one another: stages, sizes of one list, one amount in two units.</summary>
internal static class ColumnKinds
{
    private const int FewestScaled = 3;
    private static readonly string[] Systems = ["metric", "imperial", "us", "volume", "weight", "cups", "métrique", "métriques", "metrisch", "métrico", "metrico"];

    /// <summary>The columns that hold amounts. Money, shares, energy and times never do; numbers of rows, rates, repeated totals and what a food is made of do not where another column weighs.</summary>
    public static List<int> Counted(int[] figures, string[] names, string[][] rows, string lang)
    {
        List<int> left = [.. figures.Where(c => TableColumns.At(names, c) is var h && !ColumnHeads.Price(h) && !ColumnHeads.Share(h) && !ColumnHeads.Energy(h) && !ColumnHeads.Time(h))];
        Without(left, c => ColumnHeads.Number(TableColumns.At(names, c)));
        // "per plate" beside "total": the total is the other size, and repeats nothing.
        if (!(left.Count == 2 && left.Exists(c => ColumnHeads.Each(TableColumns.At(names, c)))))
        {
            Without(left, c => Total(TableColumns.At(names, c), lang));
        }

        Without(left, c => ColumnHeads.Rate(TableColumns.At(names, c)));
        if (left.Count > 2 && left.FindIndex(c => Sum(left, c, rows, lang)) is var sum and >= 0 && !Sizes(left, [.. left.Select(c => TableColumns.At(names, c))], rows, lang))
        {
            // "Formula" beside the stages: what they come to together, told once more.
            left.RemoveAt(sum);
        }

        int by = left.Find(c => ColumnHeads.Weighs(TableColumns.At(names, c), lang));
        // A table of doughs may have a column of fat too: only where nothing but a weight and what is in it stands side by side is it known.
        if (left.Contains(by) && left.TrueForAll(c => c == by || ColumnHeads.Of(TableColumns.At(names, c)) && Within(rows, c, by, lang)))
        {
            return [by];
        }

        return left.Count > 1 && Only(left, names, rows, lang) is { } one ? [one] : left;
    }

    /// <summary>The only column whose head says "quantity", where the others are full of figures and their heads say nothing of amounts, units, sizes or parts ("Supplier code", "Par level", "Lot"): they are no parts of the dish, which would weigh all that again. Parts side by side leave gaps.</summary>
    private static int? Only(List<int> left, string[] names, string[][] rows, string lang)
    {
        int one = -1;
        foreach (int c in left)
        {
            string head = TableColumns.At(names, c);
            if (ColumnHeads.Quantity(head))
            {
                if (one >= 0)
                {
                    return null;
                }

                one = c;
            }
            else if (head.Length < 2 || head.AsSpan().IndexOfAnyInRange('0', '9') >= 0 || ColumnHeads.Each(head) || ColumnHeads.Weighs(head, lang) || ColumnHeads.Trimmed(head) || Places.HasAny(head, Systems) || Parts.Called(head, lang) || Parts.Finish(head, lang))
            {
                return null;
            }
        }

        return one >= 0 && rows.All(r => TableColumns.At(r, one).Length == 0 || left.TrueForAll(c => TableColumns.At(r, c).Length > 0)) ? one : null;
    }

    /// <summary>One amount in a big and a small unit: the small one stays under the big one, and the two never tell the same.</summary>
    public static bool Compound(List<int> counted, string[] heads, string[][] rows, string lang)
    {
        if (Base(heads[0], lang) is not { } big || Base(heads[1], lang) is not { } small || big.Kind != small.Kind || (big.Unit, small.Unit) is not (("lb", "oz") or ("kg", "g") or ("l", "ml") or ("l", "cl") or ("l", "dl")))
        {
            return false;
        }

        int both = 0;
        int alone = 0;
        foreach (string[] cells in rows)
        {
            double? a = Figure(TableColumns.At(cells, counted[0]), lang);
            double? b = Figure(TableColumns.At(cells, counted[1]), lang);
            if (a is null && b is null)
            {
                continue;
            }

            if (a is null || b is null)
            {
                alone++;
                continue;
            }

            if (b * small.Base >= big.Base || a % 1 != 0)
            {
                return false;
            }

            both++;
        }

        return both + alone > 0;
    }

    /// <summary>One amount told twice, whatever the heads call it: "Metric" and "US", or two weights in other units that agree in every row.</summary>
    public static bool Twice(List<int> counted, string[] heads, string[][] rows, string lang)
    {
        if (heads.Length != 2)
        {
            return false;
        }

        if (Places.HasAny(heads[0], Systems) && Places.HasAny(heads[1], Systems))
        {
            return true;
        }

        int twins = 0;
        foreach (string[] cells in rows)
        {
            string a = TableColumns.At(cells, counted[0]);
            string b = TableColumns.At(cells, counted[1]);
            if (a.Length == 0 || b.Length == 0)
            {
                continue;
            }

            if (Reading.Amounts.At(a, 0, lang) is not { Unit: { Kind: "mass", Base: { } x } one } m || Reading.Amounts.At(b, 0, lang) is not { Unit: { Kind: "mass", Base: { } y } other } n
                || one.Unit == other.Unit || Math.Abs(m.Number.Min * x - n.Number.Min * y) > m.Number.Min * x * 0.06)
            {
                return false;
            }

            twins++;
        }

        return twins > 1;
    }

    /// <summary>Sizes of one list, of which one is taken: heads that count or size, what one guest gets, gross and net; and, whatever the heads say, figures that all stand in one ratio.</summary>
    public static bool Sizes(List<int> counted, string[] heads, string[][] rows, string lang)
    {
        if (Scaled(counted, rows, lang) || heads.Any(ColumnHeads.Each) || heads.All(ColumnHeads.Trimmed))
        {
            return true;
        }

        return !ColumnHeads.Stages(heads) && heads.All(h => h.AsSpan().IndexOfAnyInRange('0', '9') >= 0 || Places.HasAny(h, "small", "large", "medium", "half", "double", "petit", "grand", "klein", "groß", "pequeño", "grande", "piccolo"));
    }

    /// <summary>Every row grows by the same factor from column to column.</summary>
    private static bool Scaled(List<int> counted, string[][] rows, string lang)
    {
        for (int k = 1; k < counted.Count; k++)
        {
            double ratio = 0;
            int same = 0;
            foreach (string[] cells in rows)
            {
                if (Figure(TableColumns.At(cells, counted[0]), lang) is not > 0 || Figure(TableColumns.At(cells, counted[k]), lang) is not > 0)
                {
                    if (TableColumns.At(cells, counted[0]).Length > 0 != TableColumns.At(cells, counted[k]).Length > 0)
                    {
                        return false;
                    }

                    continue;
                }

                double now = Figure(TableColumns.At(cells, counted[k]), lang)!.Value / Figure(TableColumns.At(cells, counted[0]), lang)!.Value;
                ratio = ratio > 0 ? ratio : now;
                if (Math.Abs(now - ratio) > ratio * 0.02)
                {
                    return false;
                }

                same++;
            }

            if (same < FewestScaled || Math.Abs(ratio - 1) < 0.02)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>True for a column that is the sum of the others in every row where it says anything, and not of one alone. The row of totals proves nothing.</summary>
    private static bool Sum(List<int> columns, int whole, string[][] rows, string lang)
    {
        int agreed = 0;
        int shared = 0;
        foreach (string[] cells in rows)
        {
            if (Figure(TableColumns.At(cells, whole), lang) is not { } told || Array.Exists(cells, c => c.Length > 2 && char.IsLetter(c[0]) && Total(c, lang)))
            {
                continue;
            }

            double others = 0;
            int parts = 0;
            foreach (int c in columns)
            {
                if (c != whole && Figure(TableColumns.At(cells, c), lang) is { } part)
                {
                    others += part;
                    parts++;
                }
            }

            if (Math.Abs(others - told) > told * 0.005)
            {
                return false;
            }

            agreed++;
            shared += parts > 1 ? 1 : 0;
        }

        return agreed >= FewestScaled && shared > 1;
    }

    /// <summary>A column leaves where others stay.</summary>
    private static void Without(List<int> left, Predicate<int> gone)
    {
        if (left.Exists(c => !gone(c)))
        {
            left.RemoveAll(gone);
        }
    }

    /// <summary>A food holds no more fat than it weighs.</summary>
    private static bool Within(string[][] rows, int part, int whole, string lang) =>
        rows.All(r => Figure(TableColumns.At(r, part), lang) is not { } p || Figure(TableColumns.At(r, whole), lang) is not { } w || p <= w);

    private static bool Total(string head, string lang) => head.Length > 0 && Lexicon.Longest("total", head, 0, 2, lang, out _) is not null;

    private static UnitWord? Base(string head, string lang) => TableColumns.UnitOf(head, lang) is { } unit ? Lexicon.LongestUnit(unit, 0, lang, out _) : null;

    /// <summary>The amount a cell opens with, in the base of its unit where it has one.</summary>
    private static double? Figure(string cell, string lang) =>
        cell.Length > 0 && Reading.Amounts.At(cell, 0, lang) is { } m ? m.Number.Min * (m.Unit?.Base ?? 1) : null;
}
