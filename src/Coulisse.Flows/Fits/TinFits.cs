using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Flows.Fits;

/// <summary>Tins and moulds: what one takes, how many for what there is, the same formula in another.</summary>
internal static class TinFits
{
    public static ImmutableArray<FitKind> Kinds { get; } =
    [
        new("tin", "Tins and moulds", "What a tin or mould takes, and the same in another", "fit tin 200x50 --fill 60 --density 0.85 --have 2000 --to \"GN 1/2 65\"",
            [new("tin", "Tin, as " + TinText.Ways, FitInput.Tin) { Needed = true, Example = "200x50" }, new("fill", "Filled, per cent of the volume (0.6 is read as 60; usual for creamed batter)", FitInput.Number, "60"), new("depth", "or filled so deep, mm", FitInput.Millimetres), new("rise", "or so that it just reaches the rim when it rises by so many per cent", FitInput.Number),
                Fields.Density, Fields.Have with { Label = "Batter or cream there is, g" },
                Fields.Count with { Label = "Pieces wanted" }, new("pieces", "Pieces from one tin", FitInput.Count), new("to", "Another tin, written the same way", FitInput.Tin)], Tin),
    ];

    private static FitAnswer Tin(FitValues v)
    {
        Mould from = TinText.Read(v.Text("tin")) ?? throw NoTin(v.Text("tin"));
        Mould? to = !v.Has("to") ? null : TinText.Read(v.Text("to")) ?? throw NoTin(v.Text("to"));
        double share = v.Has("rise") ? 1 / (1 + (v.Number("rise") / 100)) : v.Number("fill") is <= 1 and var part ? part : v.Number("fill") / 100;
        if (share > 1)
        {
            throw new ArgumentOutOfRangeException(nameof(v), "A tin is filled to 100 per cent at most.");
        }

        MouldFill held = v.Has("depth") ? MouldFill.To(from, v.Density(), v.Mm("depth")) : MouldFill.Share(from, v.Density(), Fraction.FromValue(share));
        List<string> says = [Text($"{from.Volume.Millilitres:#,0} mL; filled {held.Mass.Grams:#,0} g, {held.Depth.Millimetres:0.0} mm deep, {held.Headroom.Millimetres:0.0} mm free to rise into")];
        List<FitEven> even = [];
        if (v.Has("have"))
        {
            even.Add(FitEven.UsedUp("g", v.Number("have"), held.Mass.Grams, "tin", "tins"));
            says.AddRange(Shared(v, from, even[0].Even));
        }

        if (v.Count("pieces") is { } pieces && v.Count("count") is { } wanted)
        {
            even.Add(FitEven.Whole("pieces", wanted, pieces, "tin", "tins"));
        }

        List<(string, object?)> figures = [("volumeMillilitres", from.Volume.Millilitres), ("grams", held.Mass.Grams), ("depthMillimetres", held.Depth.Millimetres), ("headroomMillimetres", held.Headroom.Millimetres)];
        if (to is not null)
        {
            Another(held, to, says, figures);
        }

        return new([.. figures], [.. says], [.. even], ShapeDrawings.Of(held));
    }

    // The same batter in one tin fewer or shared over one more: how deep it then stands.
    private static IEnumerable<string> Shared(FitValues v, Mould tin, ComesOutEven even)
    {
        foreach (int n in new[] { even.Smaller?.Units, even.Taken }.OfType<int>().Distinct())
        {
            Mass each = Mass.FromGrams(v.Number("have") / n);
            yield return (each / v.Density()) <= tin.Volume
                ? Text($"All of it in {n} {(n == 1 ? "tin" : "tins")}: {each.Grams:#,0} g each, {MouldFill.With(tin, v.Density(), each).Depth.Millimetres:0.0} mm deep.")
                : Text($"All of it in {n} {(n == 1 ? "tin" : "tins")} runs over.");
        }
    }

    private static void Another(MouldFill held, Mould to, List<string> says, List<(string, object?)> figures)
    {
        MouldScaling? depth = held.Depth <= to.Depth ? MouldScaling.SameDepth(held.Mould, to, held.Depth) : null;
        MouldScaling share = MouldScaling.SameShare(held.Mould, to, held.Depth);
        MouldScaling? batter = held.Volume <= to.Volume ? MouldScaling.SameBatter(held.Mould, to, held.Depth) : null;
        says.Add(depth is null ? Text($"The other tin is only {to.Depth.Millimetres:0.#} mm deep: the depth cannot stay.") : Text($"Other tin, same depth: × {depth.Factor:0.###} the formula, {held.Mass.Grams * depth.Factor:#,0} g."));
        says.Add(Text($"Filled as full: × {share.Factor:0.###}, {share.NewDepth.Millimetres:0.0} mm deep. {Deeper(share)}").TrimEnd());
        says.Add(batter is null ? "The same batter runs over in it." : Text($"The same batter stands {batter.NewDepth.Millimetres:0.0} mm deep in it. {Deeper(batter)}").TrimEnd());
        figures.AddRange([("factor", depth?.Factor), ("newDepthMillimetres", depth?.NewDepth.Millimetres), ("sameShare", Json(share)), ("sameBatter", batter is null ? null : Json(batter)), ("warning", (batter ?? share).Warning)]);
    }

    private static object Json(MouldScaling s)
    {
        DepthHeating? heat = Heated(s);
        return new { s.Factor, newDepthMillimetres = s.NewDepth.Millimetres, s.MinutesFactorLow, s.MinutesFactorHigh, conductionFactor = heat?.Best, conductionFactorCautious = heat?.Cautious };
    }

    // two bounds that differ by less than the model can tell are one figure
    private static string Between(double a, double b) => Math.Abs(a - b) < 0.05 * Math.Max(a, b) ? Text($"about {Math.Max(a, b):0.##}") : Text($"{Math.Min(a, b):0.##} to {Math.Max(a, b):0.##}");

    private static string Deeper(MouldScaling s) => s.Warning.Length == 0 ? "" : s.Warning + (Heated(s) is { } h ? Text($" By conduction alone the middle takes {Between(h.Best, h.Cautious)} times as long ({DepthHeating.Assumed}).") : "");

    private static DepthHeating? Heated(MouldScaling s) => Math.Abs((s.NewDepth / s.OldDepth) - 1) <= 0.1 ? null : DepthHeating.Of(s.OldDepth, s.NewDepth);

    private static ArgumentOutOfRangeException NoTin(string text) => new(nameof(text), $"“{text}” is no tin. In mm: {TinText.Ways}.");

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
