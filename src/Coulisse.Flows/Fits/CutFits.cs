using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Flows.Fits;

/// <summary>Blocks, frames and sheets cut into pieces and strips.</summary>
internal static class CutFits
{
    public static ImmutableArray<FitKind> Kinds { get; } =
    [
        new("grid", "Pieces from a block", "Pieces cut from a block, frame or sheet, both ways round and mixed", "fit grid 330x220x18 40x30 --edge 5 --density 1.03 --count 50",
            [Fields.Needed("block", "Block, length x width (x height), mm", FitInput.Sizes, "330x220x18", 2, 3), Fields.Needed("piece", "Piece, length x width, mm", FitInput.Sizes, "40x30", 1, 2), Fields.Gap, Fields.Edge, Fields.Density with { Default = "" },
                new("one-way", "Pieces may not be turned", FitInput.Flag), Fields.Count], Grid),
        new("strips", "Strips from a sheet", "A sheet cut into strips along its length", "fit strips 380x280 56 --thickness 1.2 --density 1.1 --count 30",
            [Fields.Needed("block", "Sheet, length x width, mm", FitInput.Sizes, "380x280", 2, 2), Fields.Needed("width", "Width of a strip, mm", FitInput.Millimetres, "56"), Fields.Gap, Fields.Edge, new("thickness", "Thickness, mm; gives grams", FitInput.Millimetres), Fields.Density, Fields.Count], Strip),
    ];

    private static FitAnswer Grid(FitValues v)
    {
        (Length along, Length across, Length a, Length b) = (v.Mm("block", 0), v.Mm("block", 1), v.Mm("piece", 0), v.Mm("piece", 1));
        FitFlow.NotTooMany(along * across / (a * b));
        CutPlan p = v.Flag("one-way") ? Cutting.Fit(along, across, a, b, v.Mm("gap"), v.Mm("edge"), mayTurn: false) : Cutting.Fit(along, across, a, b, v.Mm("gap"), v.Mm("edge"));
        if (p.Count == 0)
        {
            throw new ArgumentOutOfRangeException(nameof(v), FormattableString.Invariant($"Not one piece of {a.Millimetres:0.#} × {b.Millimetres:0.#} mm comes from {along.Millimetres:0.#} × {across.Millimetres:0.#} mm once the edges are off."));
        }

        FrameCut? frame = v.Lengths("block") > 2 && v.Has("density") && !v.Flag("one-way") ? FrameCut.Of(new BoxMould(along, across, v.Mm("block", 2)), v.Density(), a, b, v.Mm("gap"), v.Mm("edge")) : null;
        List<string> says = [Text($"{p.Count} pieces ({p.Straight} straight, {p.Turned} turned), trim {p.TrimShare.Percent:0.0} %{(p.Proven ? "" : ", not proven to be the most")}")];
        if (frame is not null)
        {
            says.Add(Text($"Fill {frame.FillMass.Grams:#,0} g; {frame.PieceMass.Grams:0.0} g a piece, trim {frame.TrimMass.Grams:#,0} g"));
        }

        says.Add(Beside(p));
        List<FitEven> even = v.Count("count") is { } n ? [FitEven.Whole("pieces", n, p.Count, "block", "blocks")] : [];
        return new(
            [("count", p.Count), ("straight", p.Straight), ("turned", p.Turned), ("layout", p.Layout), ("proven", p.Proven), ("trimPercent", p.TrimShare.Percent), ("grams", frame?.FillMass.Grams), ("pieceGrams", frame?.PieceMass.Grams), ("trimGrams", frame?.TrimMass.Grams),
                ("stretched", Even(p.Even)), ("nextFewer", Even(p.NextFewer)), ("nextMore", Even(p.NextMore))],
            [.. says], [.. even], p.Drawing);
    }

    private static FitAnswer Strip(FitValues v)
    {
        FitFlow.NotTooMany(v.Mm("block", 1) / v.Mm("width"));
        Strips s = Strips.Of(v.Mm("block", 0), v.Mm("block", 1), v.Mm("width"), v.Mm("gap"), v.Mm("edge"));
        if (s.Count == 0)
        {
            throw new ArgumentOutOfRangeException(nameof(v), "The strip is wider than the sheet.");
        }

        double? grams = v.Has("thickness") ? (s.Plan.Block * v.Mm("thickness") * v.Density()).Grams : null;
        double? used = grams * (1 - s.Plan.TrimShare.Value);
        List<FitEven> even = [FitEven.Size("Strip width", s.Widths, "mm", "strips", "strip")];
        if (v.Count("count") is { } n)
        {
            even.Add(FitEven.Whole("strips", n, s.Count, "sheet", "sheets"));
        }

        return new(
            [("count", s.Count), ("trimPercent", s.Plan.TrimShare.Percent), ("grams", grams), ("stripGrams", used / s.Count), ("trimGrams", grams - used)],
            [Text($"{s.Count} strips, trim {s.Plan.TrimShare.Percent:0.0} %"), .. grams is null ? [] : (string[])[Text($"{used / s.Count:0.0} g a strip, trim {grams - used:0.0} g of {grams:#,0} g")]],
            [.. even], s.Plan.Drawing);
    }

    private static string Beside(CutPlan p)
    {
        (double a, double b) = p.Pieces.IsEmpty ? (0, 0) : (p.Pieces[0].Width, p.Pieces[0].Height);
        string Of(EvenCut c) => Text($"{Down(c.Along)} × {Down(c.Across)} mm ({c.Columns} × {c.Rows} = {c.Count})");
        string smaller = p.NextMore is { } more ? "next smaller piece that comes out even: " + Of(more) : "";
        string larger = p.NextFewer is { } fewer ? "next larger: " + Of(fewer) : "";
        string here = p.Even is { } e && e.Count == p.Count ? e.Along.Millimetres - a < 0.05 && e.Across.Millimetres - b < 0.05 ? "these use it up" : Text($"stretched to {Down(e.Along)} × {Down(e.Across)} mm these {e.Count} use it up") : "";
        string all = string.Join("; ", new[] { here, smaller, larger }.Where(t => t.Length > 0));
        return all.Length == 0 ? "" : char.ToUpperInvariant(all[0]) + all[1..] + ".";
    }

    // Cut off, not rounded: a hair too large and the last row is lost.
    private static string Down(Length l) => (Math.Floor((l.Millimetres * 10) + 1e-6) / 10).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture);

    private static object? Even(EvenCut? cut) => cut is null ? null : new { cut.Count, cut.Columns, cut.Rows, alongMillimetres = cut.Along.Millimetres, acrossMillimetres = cut.Across.Millimetres };

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
