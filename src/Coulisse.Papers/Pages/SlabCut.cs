using System.Collections.Immutable;

namespace Coulisse.Papers.Pages;

/// <summary>Cuts a slab of text that is taller than most of a page between its lines: a title of sixty lines must not run off the sheet.</summary>
internal static class SlabCut
{
    private const double MostOfPage = 0.6;
    private const double Ascent = 0.75;

    /// <summary>The slab itself, or one slab a line of it.</summary>
    /// <param name="slab">Any slab; rows of tables and drawings are left whole, they are cut or shrunk where they are made.</param>
    /// <param name="room">Height of the body of a page, points.</param>
    public static IEnumerable<Slab> Cut(Slab slab, double room)
    {
        if (slab.Height <= room * MostOfPage || slab.Table != 0 || !slab.Pieces.All(p => p.Ops.All(o => o is TextOp or RuleOp)))
        {
            return [slab];
        }

        ImmutableArray<(double Top, double Bottom)> bands = Bands(slab);
        return bands.Length < 2 ? [slab] : Lines(slab, bands);
    }

    /// <summary>Heights that no cut may go through: lines of text side by side that overlap are one band.</summary>
    private static ImmutableArray<(double Top, double Bottom)> Bands(Slab slab)
    {
        List<(double Top, double Bottom)> bands = [];
        foreach (TextOp text in slab.Pieces.SelectMany(p => p.Ops).OfType<TextOp>().OrderBy(t => t.Y - (t.Size * Ascent)))
        {
            double top = text.Y - (text.Size * Ascent);
            if (bands.Count > 0 && top < bands[^1].Bottom)
            {
                bands[^1] = (bands[^1].Top, Math.Max(bands[^1].Bottom, text.Y));
            }
            else
            {
                bands.Add((top, text.Y));
            }
        }

        return [.. bands];
    }

    private static IEnumerable<Slab> Lines(Slab slab, ImmutableArray<(double Top, double Bottom)> bands)
    {
        // A cut lies a little above the next band, so that descenders stay with their own line.
        double[] cuts = [0, .. bands.Skip(1).Zip(bands, (next, here) => here.Bottom + ((next.Top - here.Bottom) * 0.7)), slab.Height];
        for (int i = 0; i < bands.Length; i++)
        {
            double from = cuts[i];
            double to = cuts[i + 1];
            bool last = i == bands.Length - 1;
            yield return slab with
            {
                Height = to - from,
                Before = i == 0 ? slab.Before : 0,
                PageFirst = i == 0 && slab.PageFirst,
                KeepNext = last && slab.KeepNext,
                KeepIfCan = last && slab.KeepIfCan,
                Pieces = [.. slab.Pieces
                    .Select(p => p with { Ops = [.. p.Ops.Where(o => At(o) is { } y && y >= (i == 0 ? double.MinValue : from) && y < (last ? double.MaxValue : to)).Select(o => o.Moved(0, -from))] })
                    .Where(p => !p.Ops.IsEmpty)],
            };
        }
    }

    private static double At(Op op) => op switch { TextOp t => t.Y, RuleOp r => r.Y1, _ => 0 };
}
