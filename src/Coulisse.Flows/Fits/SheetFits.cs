using System.Collections.Immutable;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Flows.Fits;

/// <summary>Strips rolled on a core, sheets rolled whole.</summary>
internal static class SheetFits
{
    public static ImmutableArray<FitKind> Kinds { get; } =
    [
        new("roll", "Rolls and tubes", "A strip rolled on a core into a tube, or a sheet rolled whole", "fit roll 14 1.2 --overlap 8 --height 40 --density 1.02 --sheet 530x325 --count 96",
            [new("hole", "Hole or core, mm (0 for none)", FitInput.Room) { Needed = true, Example = "14" }, Fields.Needed("thickness", "Thickness of the sheet, mm", FitInput.Millimetres, "1.2"), new("turns", "Whole turns", FitInput.Count, "1"), new("overlap", "Overlap at the seam, mm", FitInput.Room),
                new("strip", "A strip so long instead of whole turns, mm", FitInput.Millimetres), new("height", "Height of the tube, mm", FitInput.Millimetres, "40"), new("length", "A sheet so long rolled whole, mm", FitInput.Millimetres), Fields.Density with { Label = "Density of filling or sheet, g/mL" },
                new("full", "Filled, per cent of the hole", FitInput.Number, "100"), Fields.Sheet, Fields.Edge, Fields.Count with { Label = "Tubes wanted" }], Roll),
    ];

    private static FitAnswer Roll(FitValues v) => v.Has("length") ? Spiral(v) : Tube(v);

    private static FitAnswer Spiral(FitValues v)
    {
        (Length core, Length t, Length length, Length high) = (v.Mm("hole"), v.Mm("thickness"), v.Mm("length"), v.Mm("height"));
        SpiralRoll roll = SpiralRoll.Of(t, length, core);
        FitFlow.NotTooMany(roll.Turns);
        double grams = (length * high * t * v.Density()).Grams;
        return new([("outerMillimetres", roll.Diameter.Millimetres), ("turns", roll.Turns), ("grams", grams)],
            [Text($"{roll.Diameter.Millimetres:0.0} mm across, {roll.Turns:0.00} turns; {grams:0.#} g rolled at {high.Millimetres:0.#} mm wide.")],
            [FitEven.Size("Sheet length", SpiralRoll.WholeTurns(t, length, core), "mm", "whole turns", "whole turn")], ShapeDrawings.Of(roll, t));
    }

    private static FitAnswer Tube(FitValues v)
    {
        (Length hole, Length t, Length overlap, Length high) = (v.Mm("hole"), v.Mm("thickness"), v.Mm("overlap"), v.Mm("height"));
        if (v.Number("full") > 100)
        {
            throw new ArgumentOutOfRangeException(nameof(v), "A hole is filled to 100 per cent at most.");
        }

        int turns = v.Count("turns") ?? 1;
        ComesOutEven? asked = v.Has("strip") ? RolledTube.WholeTurns(hole, t, overlap, v.Mm("strip")) : null;
        RolledTube tube = RolledTube.Of(hole, t, asked is null ? turns : Math.Max(1, (asked.Exactly ?? asked.Smaller)?.Units ?? 1), overlap, high);
        ComesOutEven lengths = asked ?? RolledTube.WholeTurns(hole, t, overlap, tube.StripLength);
        double grams = tube.Filling(v.Density(), Fraction.FromPercent(v.Number("full"))).Grams;
        List<string> says = [Text($"Strip {tube.StripLength.Millimetres:0.0} mm for {tube.Turns} {(tube.Turns == 1 ? "turn" : "turns")}, {tube.Outer.Millimetres:0.0} mm across, {tube.AtSeam.Millimetres:0.0} mm at the seam; {grams:0.0} g of filling.")];
        List<FitEven> even = [FitEven.Size("Strip length", lengths, "mm", "whole turns", "whole turn")];
        CutPlan? cut = v.Has("sheet") ? tube.FromSheet(v.Mm("sheet", 0), v.Mm("sheet", 1), edge: v.Mm("edge")) : null;
        if (cut is not null)
        {
            says.Add(Text($"{cut.Count} strips from a sheet, trim {cut.TrimShare.Percent:0.0} %."));
            if (v.Count("count") is { } n && cut.Count > 0)
            {
                even.Add(FitEven.Whole("tubes", n, cut.Count, "sheet", "sheets"));
            }
        }

        if (v.Count("count") is { } all)
        {
            says.Add(Text($"{all} take {all * grams:#,0} g of filling."));
        }

        return new([("stripMillimetres", tube.StripLength.Millimetres), ("outerMillimetres", tube.Outer.Millimetres), ("atSeamMillimetres", tube.AtSeam.Millimetres), ("turns", tube.Turns), ("grams", grams), ("stripsASheet", cut?.Count), ("trimPercent", cut?.TrimShare.Percent)],
            [.. says], [.. even], tube.Draw());
    }

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
