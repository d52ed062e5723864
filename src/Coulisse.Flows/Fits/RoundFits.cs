using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Flows.Fits;

/// <summary>Rounds on trays, in rings and squares; boxes and plates on trays and in slots.</summary>
internal static class RoundFits
{
    private static readonly FitField Round = Fields.Needed("round", "Diameter of a round, mm", FitInput.Millimetres, "60");

    public static ImmutableArray<FitKind> Kinds { get; } =
    [
        new("rounds", "Rounds on a tray", "Rounds on a tray or cloth, in square and offset rows", "fit rounds 530x325 60 --gap 1 --count 280",
            [Fields.Needed("tray", "Tray, length x width, mm", FitInput.Sizes, "530x325", 2, 2), Round, Fields.Gap, Fields.Count, Fields.Each], Rounds),
        new("ring", "Rounds in a ring", "Rounds standing in a ring, by the best-known packings", "fit ring 80 16.4 --count 96",
            [Fields.Needed("ring", "Inside diameter of the ring, mm", FitInput.Millimetres, "80"), Round with { Example = "16.4" }, new("ease", "Taken off the ring so that they stand easily, mm", FitInput.Room), Fields.Count, Fields.Each], Ring),
        new("square", "Rounds in a square", "Rounds in a square plate or box", "fit square 120 22 --count 60",
            [Fields.Needed("side", "Inside of the square, mm", FitInput.Millimetres, "120"), Round with { Example = "22" }, Fields.Count, Fields.Each], Square),
        new("tray", "Boxes and plates on trays", "Boxes or plates on trays and in slots", "fit tray 530x325 160 --count 52 --slots 12",
            [Fields.Needed("tray", "Tray, length x width, mm", FitInput.Sizes, "530x325", 2, 2), Fields.Needed("piece", "Box, length x width, or a plate's diameter, mm", FitInput.Sizes, "160", 1, 2), Fields.Count, new("slots", "Slots there are", FitInput.Count), Fields.Gap, Fields.Each], Tray),
    ];

    private static FitAnswer Rounds(FitValues v)
    {
        (Length l, Length w, Length d, Length g) = (v.Mm("tray", 0), v.Mm("tray", 1), v.Mm("round"), v.Mm("gap"));
        FitFlow.NotTooMany(l * w / (d * d));
        RoundsOnTray t = RoundsOnTray.Fit(l, w, d, g);
        Held(t.Count);
        double free = 1 - (t.Count * Disc(d) / (l * w).SquareMillimetres);
        return Answer(v, t.Count, free, t.Drawing, "rounds", "tray", "trays", RoundsOnTray.Sizes(l, w, d, g), "on a tray",
            Text($"{t.Count} rounds (square {t.Square}, offset {t.OffsetAlong} along, {t.OffsetAcross} across)"),
            ("rows", t.Rows), ("square", t.Square), ("offsetAlong", t.OffsetAlong), ("offsetAcross", t.OffsetAcross), ("largestMillimetres", t.LargestRound.Millimetres), ("nextMoreMillimetres", t.NextMore?.Millimetres));
    }

    private static FitAnswer Ring(FitValues v)
    {
        (Length ring, Length d, Length ease) = (v.Mm("ring"), v.Mm("round"), v.Mm("ease"));
        FitFlow.NotTooMany(ring / d * (ring / d));
        RoundsInRing r = RoundsInRing.Fit(ring, d, ease);
        Held(r.Count);
        return Answer(v, r.Count, r.Covered.Rest.Value, r.Drawing, "rounds", "ring", "rings", RoundsInRing.Sizes(ring, d, ease), "in the ring",
            Text($"{r.Count} rounds{(r.Held ? "" : " at least: offset rows alone")}; a ring of {Math.Ceiling(r.SmallestRing.Millimetres * 10) / 10:0.0} mm still takes them, {Math.Ceiling(r.NextRing.Millimetres * 10) / 10:0.0} mm takes more"),
            ("held", r.Held), ("largestMillimetres", r.LargestRound.Millimetres), ("nextMoreMillimetres", r.NextRound.Millimetres), ("smallestRingMillimetres", r.SmallestRing.Millimetres), ("nextRingMillimetres", r.NextRing.Millimetres));
    }

    private static FitAnswer Square(FitValues v)
    {
        (Length side, Length d) = (v.Mm("side"), v.Mm("round"));
        FitFlow.NotTooMany(side / d * (side / d));
        RoundsInSquare r = RoundsInSquare.Fit(side, d);
        Held(r.Count);
        return Answer(v, r.Count, 1 - (r.Count * Disc(d) / (side * side).SquareMillimetres), r.Drawing, "rounds", "square", "squares", RoundsInSquare.Sizes(side, d), "in the square",
            Text($"{r.Count} rounds ({r.InRows} in plain or offset rows)"), ("inRows", r.InRows), ("largestMillimetres", r.LargestRound.Millimetres), ("nextMoreMillimetres", r.NextRound?.Millimetres));
    }

    private static FitAnswer Tray(FitValues v)
    {
        (Length l, Length w, Length g) = (v.Mm("tray", 0), v.Mm("tray", 1), v.Mm("gap"));
        FitFlow.NotTooMany(l * w / (v.Mm("piece", 0) * v.Mm("piece", 1)));
        bool plates = v.Lengths("piece") == 1;
        RoundsOnTray? round = plates ? RoundsOnTray.Fit(l, w, v.Mm("piece"), g) : null;
        CutPlan? box = plates ? null : BoxesOnTray.Fit(l, w, v.Mm("piece", 0), v.Mm("piece", 1), g).Layout;
        int held = round?.Count ?? box!.Count;
        Held(held);
        int? trays = v.Count("count") is { } n ? (n + held - 1) / held : null;
        bool? fits = v.Count("slots") is { } s && trays is { } needed ? needed <= s : null;
        double covered = plates ? held * Disc(v.Mm("piece")) / (l * w).SquareMillimetres : 1 - box!.TrimShare.Value;
        FitAnswer answer = Answer(v, held, 1 - covered, round?.Drawing ?? box!.Drawing, plates ? "plates" : "boxes", "tray", "trays", plates ? RoundsOnTray.Sizes(l, w, v.Mm("piece"), g) : null, "on a tray",
            Text($"{held} a tray") + (trays is { } x ? Text($", {x} trays") : "") + (fits switch { true => ", fits", false => ", does not fit", null => "" }),
            ("perTray", held), ("trays", trays), ("fits", fits), ("slots", v.Count("slots")));
        if (v.Count("slots") is not { } slots)
        {
            return answer;
        }

        return answer with { Says = answer.Says.Add(Text($"{slots} slots hold {slots * held} at most{(trays is { } used && used <= slots ? Text($"; {slots - used} slots stay free") : "")}.")) };
    }

    private static FitAnswer Answer(FitValues v, int count, double free, Drawing drawing, string what, string unit, string units, ComesOutEven? sizes, string per, string says, params (string Key, object? Value)[] figures)
    {
        double? each = v.Has("each") ? v.Number("each") : null;
        List<string> lines = [says + Text($"; {Math.Clamp(free, 0, 1) * 100:0.0} % of the {unit} stays free.")];
        if (each is { } grams)
        {
            lines.Add(Text($"{count * grams:#,0} g a {unit}{(v.Count("count") is { } all ? Text($", {all * grams:#,0} g in all") : "")}."));
        }

        List<FitEven> even = sizes is null ? [] : [FitEven.Size("Diameter", sizes, "mm", per)];
        if (v.Count("count") is { } n)
        {
            even.Add(FitEven.Whole(what, n, count, unit, units));
        }

        return new([("count", count), .. figures, ("freePercent", Math.Clamp(free, 0, 1) * 100), ("grams", count * each)], [.. lines], [.. even], drawing);
    }

    private static void Held(int count)
    {
        if (count == 0)
        {
            throw new ArgumentOutOfRangeException(nameof(count), "Not one goes in: it is larger than the place.");
        }
    }

    private static double Disc(Length d) => Math.PI * d.Millimetres * d.Millimetres / 4;

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
