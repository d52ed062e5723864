using System.Collections.Immutable;
using Coulisse.Matter.Shapes;

namespace Coulisse.Flows.Fits;

/// <summary>Roots and bulbs to discs, dice, slices and sheets; what to buy for an amount that is ready to use.</summary>
internal static class RootFits
{
    private static readonly FitField Root = Fields.Needed("root", "Root, widest diameter x height, mm; one figure for a ball", FitInput.Sizes, "92x80", 1, 2);
    private static readonly FitField Spare = new("spare", "Whole ones over", FitInput.Spare, "0");
    private static readonly FitField Slice = new("slice", "Thickness of a slice, mm", FitInput.Millimetres, "1");
    private static readonly FitField Wanted = Fields.Count with { Label = "Good pieces wanted" };

    public static ImmutableArray<FitKind> Kinds { get; } =
    [
        new("root", "Discs and dice from roots", "Discs or dice from a root or bulb, and how many to buy", "fit root 92x80 60 --slice 1.2 --peel 3 --count 280",
            [Root, Fields.Needed("piece", "Diameter of a disc, or side of a die, mm", FitInput.Millimetres, "60"), Slice, new("dice", "Dice instead of discs; the slice is as thick as the die", FitInput.Flag), Fields.Peel, Fields.Lost, Wanted, Spare, Fields.Density], Pieces),
        new("slices", "Slices from roots", "Whole slices from a root or bulb, those wide enough", "fit slices 92x80 40 --slice 1.5 --peel 3 --count 120",
            [Root, Fields.Needed("least", "Narrowest slice that is of use, mm", FitInput.Millimetres, "40"), Slice, Fields.Peel, Fields.Lost, Wanted, Spare, Fields.Density], Slices),
        new("peel", "Sheets from roots", "A root turned into one sheet down to a core, and strips from it", "fit peel 70x120 1 --core 25 --strip 120x40 --count 30",
            [Fields.Needed("root", "Root, diameter x height once the ends are off, mm", FitInput.Sizes, "70x120", 2, 2), Fields.Needed("thickness", "Thickness of the sheet, mm", FitInput.Millimetres, "1"), new("core", "Core that is left, mm", FitInput.Room, "20"), Fields.Peel with { Default = "2" },
                new("strip", "Piece cut from the sheet, length x width, mm", FitInput.Sizes) { Numbers = (2, 2), Example = "120x40" }, Wanted, Spare, Fields.Density], Peel),
        new("buy", "What to buy", "What to buy for an amount that is ready to use", "fit buy 710 --share 72 --pack 1000",
            [Fields.Needed("ready", "Ready to use, g", FitInput.Number, "710"), new("share", "Usable share, per cent", FitInput.Number, "100"), new("pack", "One pack or piece as bought, g", FitInput.Number, "1000"), new("over", "At least so much over, per cent", FitInput.Percent, "1")], Buy),
    ];

    private static FitAnswer Pieces(FitValues v)
    {
        Bulb whole = Whole(v);
        BulbCut cut = v.Flag("dice") ? BulbCut.Dice(whole, v.Mm("peel"), v.Mm("piece"), v.Share("lost")) : BulbCut.Discs(whole, v.Mm("peel"), v.Mm("slice"), v.Mm("piece"), v.Share("lost"));
        return Roots(v, cut, v.Flag("dice") ? "dice" : "discs", Text($"{cut.Slices} slices, {cut.Pieces} pieces, {cut.Good} good"));
    }

    private static FitAnswer Slices(FitValues v)
    {
        BulbCut cut = BulbCut.SlicesOf(Whole(v), v.Mm("peel"), v.Mm("slice"), v.Mm("least"), v.Share("lost"));
        return Roots(v, cut, "slices", Text($"{cut.Slices} slices at least {v.Number("least"):0.#} mm wide, {cut.Good} good"));
    }

    private static Bulb Whole(FitValues v)
    {
        Bulb bulb = new(v.Mm("root", 0), v.Mm("root", 1));
        double thin = v.Flag("dice") ? v.Number("piece") : v.Number("slice");
        FitFlow.NotTooMany(bulb.Tall.Millimetres / thin);
        return bulb;
    }

    private static FitAnswer Roots(FitValues v, BulbCut cut, string what, string says)
    {
        if (cut.Good == 0)
        {
            throw new ArgumentOutOfRangeException(nameof(v), "Not one good piece comes from one of these; take larger ones or a smaller piece.");
        }

        double each = (cut.Whole.Volume * v.Density()).Grams;
        double used = cut.Good * (cut.PieceVolume * v.Density()).Grams;
        int? buy = v.Count("count") is { } n ? cut.ToBuy(n, v.Count("spare") ?? 0) : null;
        List<string> lines = [Text($"{says}; {cut.UsableShare.Percent:0} % of it is used: {used:#,0} g of {each:#,0} g, trim {each - used:#,0} g")];
        if (buy is { } b)
        {
            lines.Add(Text($"Buy {b} ({b * each:#,0} g){(v.Count("spare") is > 0 and var spare ? Text($", {spare} of them spare") : "")}."));
        }

        return new(
            [("grams", each), ("slices", cut.Slices), ("slicesByPieces", cut.Counts.Select(c => new { c.Slices, pieces = c.Each }).ToArray()), ("pieces", cut.Pieces), ("good", cut.Good), ("pieceGrams", (cut.PieceVolume * v.Density()).Grams), ("usablePercent", cut.UsableShare.Percent), ("trimGrams", each - used), ("buy", buy), ("boughtGrams", buy * each)],
            [.. lines], v.Count("count") is { } wanted ? [FitEven.Whole(what, wanted, cut.Good, "root", "roots")] : [], cut.Drawing);
    }

    private static FitAnswer Peel(FitValues v)
    {
        FitFlow.NotTooMany(v.Mm("root", 0) / v.Mm("thickness"));
        PeeledSheet p = PeeledSheet.Of(v.Mm("root", 0), v.Mm("root", 1), v.Mm("peel"), v.Mm("thickness"), v.Mm("core"));
        double whole = (p.Whole * v.Density()).Grams;
        double made = (p.Volume * v.Density()).Grams;
        List<string> says = [Text($"A sheet of {p.Sheet.Millimetres:#,0} × {p.Height.Millimetres:0.#} mm; {p.UsableShare.Percent:0} % of it is used: {made:#,0} g of {whole:#,0} g, trim {whole - made:#,0} g")];
        List<FitEven> even = [FitEven.Size("Piece length", ComesOutEven.Shares(v.Has("strip") ? v.Mm("strip", 0).Millimetres : p.Sheet.Millimetres, p.Sheet.Millimetres), "mm", "along the sheet")];
        int? each = null;
        if (v.Has("strip"))
        {
            FitFlow.NotTooMany(p.Sheet * p.Height / (v.Mm("strip", 0) * v.Mm("strip", 1)));
            CutPlan cut = Cutting.Fit(p.Sheet, p.Height, v.Mm("strip", 0), v.Mm("strip", 1), mayTurn: false);
            each = cut.Count;
            says.Add(Text($"{cut.Count} pieces of {v.Mm("strip", 0).Millimetres:0.#} × {v.Mm("strip", 1).Millimetres:0.#} mm from it, {cut.TrimShare.Percent:0.0} % of the sheet is left."));
            if (v.Count("count") is { } n && cut.Count > 0)
            {
                even.Add(FitEven.Whole("pieces", n, cut.Count, "root", "roots"));
                says.Add(Text($"Buy {((n + cut.Count - 1) / cut.Count) + (v.Count("spare") ?? 0)}."));
            }
        }

        return new([("sheetMillimetres", p.Sheet.Millimetres), ("grams", made), ("wholeGrams", whole), ("trimGrams", whole - made), ("usablePercent", p.UsableShare.Percent), ("pieces", each)], [.. says], [.. even], p.Drawing);
    }

    private static FitAnswer Buy(FitValues v)
    {
        if (v.Number("share") > 100)
        {
            throw new ArgumentOutOfRangeException(nameof(v), "A usable share is 100 per cent at most.");
        }

        double ready = v.Number("ready");
        double share = v.Number("share") / 100;
        double need = ready / share;
        int packs = (int)Math.Ceiling((need * (1 + v.Share("over").Value) / v.Number("pack")) - 1e-9);
        FitFlow.NotTooMany(packs);
        double bought = packs * v.Number("pack");
        double margin = (bought - need) / need * 100;
        return new([("needGrams", need), ("packs", packs), ("boughtGrams", bought), ("marginPercent", margin), ("trimGrams", need - ready)],
            [Text($"{need:#,0.#} g to buy for {ready:#,0.#} g, trim {need - ready:#,0.#} g; {packs} of {v.Number("pack"):#,0.#} g, {margin:0.0} % over{(margin < 5 ? ": little to spare" : "")}")],
            [FitEven.Whole("g ready to use", ready, v.Number("pack") * share, "pack", "packs")], Packs(packs, v.Number("pack"), need));
    }

    // One millimetre for ten grams, packs in a row, the need as a line above them.
    private static Drawing Packs(int packs, double pack, double need)
    {
        const double High = 20;
        double scale = 1 / Math.Max(10, packs * pack / 500);
        return new(Text($"{packs} packs of {pack:#,0.#} g over a need of {need:#,0.#} g; 1 mm is {1 / scale:0.#} g"), packs * pack * scale, High + 6,
            [.. Enumerable.Range(0, packs).Select(i => (Mark)new RectMark(i * pack * scale, 6, pack * scale, High, Ink.Piece)), new RectMark(need * scale, 6, ((packs * pack) - need) * scale, High, Ink.Trim), new LineMark(0, 3, need * scale, 3, Ink.Outline)]);
    }

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
