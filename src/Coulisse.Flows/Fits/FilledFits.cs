using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Flows.Fits;

/// <summary>Discs folded over a filling, dough closed round one, and what is piped or spooned.</summary>
internal static class FilledFits
{
    public static ImmutableArray<FitKind> Kinds { get; } =
    [
        new("fold", "Folded discs", "A disc folded over a filling", "fit fold 60 6 --reach 18 --density 1.02 --have 510 --count 265",
            [Fields.Needed("disc", "Diameter of the disc, mm", FitInput.Millimetres, "60"), Fields.Needed("mouth", "How far the rim stands open, mm", FitInput.Room, "6"), new("reach", "How far from the fold the filling goes, mm (the whole of it if not given)", FitInput.Millimetres), Fields.Density, Fields.Have, Fields.Count, Fields.Sheet], Fold),
        new("dumpling", "Dumplings", "Dough and filling of a disc closed in two", "fit dumpling 90 2 --seam 8 --density 1.02 --have 1200 --count 100",
            [Fields.Needed("disc", "Diameter of the disc, mm", FitInput.Millimetres, "90"), Fields.Needed("thickness", "Thickness of the dough, mm", FitInput.Millimetres, "2"), new("seam", "Width pressed together, mm", FitInput.Room, "8"), new("dough-density", "Density of the dough, g/mL", FitInput.Number, "1.2"), Fields.Density with { Label = "Density of the filling, g/mL" }, Fields.Have, Fields.Count, Fields.Sheet], Closed),
        new("piped", "Piped and spooned", "Grams of what is piped or spooned, and how much goes into the bag", "fit piped line 8x35 --density 1.02 --have 510 --count 265 --bag 250",
            [new("shape", "What: line, drop, disc or quenelle", FitInput.Word) { Needed = true, Example = "line", Words = ["line", "drop", "disc", "quenelle"] }, Fields.Needed("size", "Size, mm: line nozzle x length 8x35, drop base x height 35x12, disc 100x6, quenelle 60x30x25", FitInput.Sizes, "8x35", 2, 3), Fields.Density, Fields.Count with { Default = "1" }, Fields.Have,
                new("stays", "Stays in bag and nozzle, per cent (4 to 8, common practice, no source)", FitInput.Percent, "6"), new("bag", "What one bag takes, g", FitInput.Number)], Pipe),
    ];

    private static FitAnswer Fold(FitValues v)
    {
        (Length disc, Length mouth) = (v.Mm("disc"), v.Mm("mouth"));
        FoldedDisc f = FoldedDisc.Of(disc, mouth, v.Has("reach") ? v.Mm("reach") : disc / 2, v.Density());
        List<string> says = [Text($"{f.Mass.Grams:0.00} g of filling ({f.Filling.Millilitres:0.00} mL), {f.CleanRim.Millimetres:0.0} mm of clean rim")];
        List<FitEven> even = [];
        Filling(v, f.Mass, even, says, each => f.ReachFor(each / v.Density()) is { } reach ? Text($"filling to {reach.Millimetres:0.00} mm from the fold") : "more than goes in");
        return new([("grams", f.Mass.Grams), ("fillingMillilitres", f.Filling.Millilitres), ("wedgeMillilitres", f.Wedge.Millilitres), ("sharePercent", f.FilledShare.Percent), ("cleanRimMillimetres", f.CleanRim.Millimetres), .. Sheets(v, disc, even, says)], [.. says], [.. even], f.Draw());
    }

    private static FitAnswer Closed(FitValues v)
    {
        (Length disc, Length seam) = (v.Mm("disc"), v.Mm("seam"));
        Dumpling d = Dumpling.Of(disc, v.Mm("thickness"), seam, v.Density("dough-density"), v.Density());
        List<string> says = [Text($"{d.DoughMass.Grams:0.0} g of dough, {d.FillingMass.Grams:0.0} g of filling; the bellying is assumed, weigh one")];
        List<FitEven> even = [];
        Filling(v, d.FillingMass, even, says, each => Dumpling.SeamFor(disc, each / v.Density()) is { } left ? Text($"seam {left.Millimetres:0.00} mm") : "more than goes in");
        return new([("doughGrams", d.DoughMass.Grams), ("fillingGrams", d.FillingMass.Grams), ("fillingMillilitres", d.Filling.Millilitres), ("assumed", "The leaves belly out to 0.6 of the free radius (common practice, no source): weigh one."), .. Sheets(v, disc, even, says)], [.. says], [.. even], ShapeDrawings.Closed(disc, seam));
    }

    private static FitAnswer Pipe(FitValues v)
    {
        string shape = v.Text("shape");
        Length[] s = [.. Enumerable.Range(0, v.Lengths("size")).Select(i => v.Mm("size", i))];
        Volume one = (shape, s.Length) switch
        {
            ("line", 2) => Piped.Line(s[0], s[1]),
            ("drop", 2) => Piped.Drop(s[0], s[1]),
            ("disc", 2) => Piped.Disc(s[0], s[1]),
            ("quenelle", 3) => Piped.Quenelle(s[0], s[1], s[2]),
            _ => throw new ArgumentOutOfRangeException(nameof(v), "Give line 8x35 (nozzle x length), drop 35x12 (base x height), disc 100x6 or quenelle 60x30x25, in mm."),
        };
        int count = v.Count("count") ?? 1;
        Mass each = one * v.Density();
        Mass all = each * count;
        Mass bag = Piped.IntoTheBag(all, v.Share("stays"));
        List<string> says = [Text($"{each.Grams:0.00} g each ({one.Millilitres:0.00} mL), {all.Grams:#,0.#} g in all, {bag.Grams:#,0.#} g into the bag")];
        List<FitEven> even = [];
        Filling(v, each, even, says, grams => shape == "line"
            ? Text($"a line of {Piped.LineFor(s[0], grams / v.Density()).Millimetres:0.00} mm")
            : Text($"every measure × {Math.Cbrt(grams / each):0.###}"), v.Share("stays").Rest.Value);
        int? fromBag = v.Has("bag") ? (int)Math.Floor((v.Number("bag") * v.Share("stays").Rest.Value / each.Grams) + 1e-9) : null;
        if (fromBag is { } n)
        {
            says.Add(n > 0 ? Text($"{n} from a bag of {v.Number("bag"):0.#} g.") : "A bag takes less than one piece.");
            if (n > 0 && count > 1)
            {
                even.Add(FitEven.Whole("pieces", count, n, "bag", "bags"));
            }
        }

        return new([("pieceMillilitres", one.Millilitres), ("pieceGrams", each.Grams), ("grams", all.Grams), ("intoTheBagGrams", bag.Grams), ("fromABag", fromBag)], [.. says], [.. even],
            shape == "line" ? ShapeDrawings.Piped(s[1], s[0], pointed: false) : ShapeDrawings.Piped(s[0], s.Length == 3 ? s[1] : s[0], pointed: true));
    }

    // What there is over whole pieces, and the piece that uses it all up.
    private static void Filling(FitValues v, Mass each, List<FitEven> even, List<string> says, Func<Mass, string> shape, double comesOut = 1)
    {
        if (v.Count("count") is { } wanted && wanted > 1 && comesOut == 1)
        {
            says.Add(Text($"{wanted} take {wanted * each.Grams:#,0} g of filling."));
        }

        if (!v.Has("have") || each.Grams <= 0)
        {
            return;
        }

        double have = v.Number("have") * comesOut;
        FitFlow.NotTooMany(have / each.Grams / 100);
        even.Add(FitEven.UsedUp(comesOut < 1 ? "g out of the bag" : "g of filling", have, each.Grams, "piece", "pieces"));
        ComesOutEven sizes = ComesOutEven.Shares(each.Grams, have);
        even.Add(FitEven.Size("A piece of", sizes, "g", "pieces use it up"));
        string[] words = [.. new[] { sizes.Smaller, sizes.Larger }.OfType<EvenAmount>().Select(a => Text($"{a.Units} pieces of {a.Amount:0.000} g: {shape(Mass.FromGrams(a.Amount))}"))];
        if (words.Length > 0)
        {
            says.Add($"To use all of it: {string.Join("; ", words)}.");
        }
    }

    private static IEnumerable<(string Key, object? Value)> Sheets(FitValues v, Length disc, List<FitEven> even, List<string> says)
    {
        if (!v.Has("sheet"))
        {
            return [];
        }

        (Length l, Length w) = (v.Mm("sheet", 0), v.Mm("sheet", 1));
        FitFlow.NotTooMany(l * w / (disc * disc));
        int held = RoundsOnTray.Fit(l, w, disc).Count;
        double trim = 100 * (1 - (held * Math.PI * disc.Millimetres * disc.Millimetres / 4 / (l * w).SquareMillimetres));
        says.Add(Text($"{held} discs from a sheet, trim {trim:0.0} %."));
        if (held > 0 && v.Count("count") is { } n)
        {
            even.Add(FitEven.Whole("discs", n, held, "sheet", "sheets"));
        }

        return [("discsASheet", held), ("trimPercent", trim)];
    }

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
