using System.CommandLine;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse fit roll, fold, tray: the shapes that need figures of their own.</summary>
internal static class FitShapes
{
    public static IEnumerable<Command> Create() => [FitTin.Create(), Roll(), Fold(), Tray(), FitRoot.Create(), .. FitPiped.Create()];

    private static Command Roll()
    {
        Argument<double> hole = new("HOLE") { Description = "Diameter of the hole or core, mm" };
        Argument<double> thickness = new("THICKNESS") { Description = "Thickness of the sheet, mm" };
        Option<int> turns = new("--turns") { DefaultValueFactory = _ => 1, Description = "Whole turns" };
        Option<double> overlap = new("--overlap") { Description = "Overlap at the seam, mm" };
        Option<double> height = new("--height") { DefaultValueFactory = _ => 40, Description = "Height of the tube, mm" };
        Option<double?> length = new("--length") { Description = "A sheet so long rolled up as a spiral instead, mm" };
        Command command = new("roll", "A strip rolled to a tube, or a sheet to a spiral.\nExample: coulisse fit roll 14 1.2 --overlap 8 --height 40 --density 1.02") { hole, thickness, turns, overlap, height, length, FitParts.Density, FitParts.Json, FitParts.Svg };
        command.SetAction(parsed => FitParts.Guard(() =>
        {
            (Length h, Length t) = (FitParts.Mm(parsed.GetRequiredValue(hole)), FitParts.Mm(parsed.GetRequiredValue(thickness)));
            if (parsed.GetValue(length) is { } sheet)
            {
                SpiralRoll spiral = SpiralRoll.Of(t, FitParts.Mm(sheet), h);
                return FitParts.Give(parsed, new { schema = "coulisse/fit-roll/1", outerMillimetres = spiral.Diameter.Millimetres, spiral.Turns }, FormattableString.Invariant($"{spiral.Diameter.Millimetres:0.0} mm across, {spiral.Turns:0.00} turns"), ShapeDrawings.Of(spiral, t));
            }

            RolledTube tube = RolledTube.Of(h, t, parsed.GetValue(turns), FitParts.Mm(parsed.GetValue(overlap)), FitParts.Mm(parsed.GetValue(height)));
            double grams = tube.Filling(Density.FromGramsPerMillilitre(parsed.GetValue(FitParts.Density)), Fraction.FromValue(1)).Grams;
            return FitParts.Give(parsed, new { schema = "coulisse/fit-roll/1", stripMillimetres = tube.StripLength.Millimetres, outerMillimetres = tube.Outer.Millimetres, atSeamMillimetres = tube.AtSeam.Millimetres, tube.Turns, grams },
                FormattableString.Invariant($"strip {tube.StripLength.Millimetres:0.0} mm, {tube.Outer.Millimetres:0.0} mm across, {tube.AtSeam.Millimetres:0.0} mm at the seam, filled full {grams:0.0} g"), tube.Draw());
        }));
        return command;
    }

    private static Command Fold()
    {
        Argument<double> disc = new("DISC") { Description = "Diameter, mm" };
        Argument<double> mouth = new("MOUTH") { Description = "How far the rim stands open, mm" };
        Option<double> reach = new("--reach") { Description = "How far from the fold the filling goes, mm", Required = true };
        Command command = new("fold", "A disc folded over a filling.\nExample: coulisse fit fold 60 6 --reach 18 --density 1.02") { disc, mouth, reach, FitParts.Density, FitParts.Json, FitParts.Svg };
        command.SetAction(parsed => FitParts.Guard(() =>
        {
            FoldedDisc f = FoldedDisc.Of(FitParts.Mm(parsed.GetRequiredValue(disc)), FitParts.Mm(parsed.GetRequiredValue(mouth)), FitParts.Mm(parsed.GetRequiredValue(reach)), Density.FromGramsPerMillilitre(parsed.GetValue(FitParts.Density)));
            return FitParts.Give(parsed, new { schema = "coulisse/fit-fold/1", grams = f.Mass.Grams, fillingMillilitres = f.Filling.Millilitres, wedgeMillilitres = f.Wedge.Millilitres, sharePercent = f.FilledShare.Percent, cleanRimMillimetres = f.CleanRim.Millimetres },
                FormattableString.Invariant($"{f.Mass.Grams:0.00} g of filling ({f.Filling.Millilitres:0.00} mL), {f.CleanRim.Millimetres:0.0} mm of clean rim"), f.Draw());
        }));
        return command;
    }

    private static Command Tray()
    {
        Argument<string> tray = new("TRAY") { Description = "Length x width, mm" };
        Argument<string> piece = new("PIECE") { Description = "Length x width of a box, or the diameter of a plate, mm" };
        Option<int?> count = new("--count") { Description = "How many must stand" };
        Option<int?> slots = new("--slots") { Description = "Slots there are" };
        Option<double> gap = new("--gap") { Description = "Room between two, mm" };
        Command command = new("tray", "Boxes or plates on trays and in slots.\nExample: coulisse fit tray 530x325 160 --count 52 --slots 12") { tray, piece, count, slots, gap, FitParts.Json, FitParts.Svg };
        command.SetAction(parsed => FitParts.Guard(() =>
        {
            double[]? t = FitParts.Sizes(parsed.GetRequiredValue(tray));
            double[]? p = FitParts.Sizes(parsed.GetRequiredValue(piece));
            if (t is not { Length: 2 } || p is not { Length: 1 or 2 } || parsed.GetValue(count) < 1)
            {
                return Input.Fail(Exit.Usage, "a tray is length x width (530x325), a piece length x width or a diameter; --count is 1 or more.");
            }

            (int held, Drawing drawing) = p.Length == 1
                ? RoundsOnTray.Fit(FitParts.Mm(t[0]), FitParts.Mm(t[1]), FitParts.Mm(p[0]), FitParts.Mm(parsed.GetValue(gap))) is var r ? (r.Count, r.Drawing) : default
                : BoxesOnTray.Fit(FitParts.Mm(t[0]), FitParts.Mm(t[1]), FitParts.Mm(p[0]), FitParts.Mm(p[1]), FitParts.Mm(parsed.GetValue(gap))) is var b ? (b.PerTray, b.Layout.Drawing) : default;
            int? trays = parsed.GetValue(count) is { } n && held > 0 ? (n + held - 1) / held : null;
            bool? fits = parsed.GetValue(slots) is { } s ? trays is { } needed && needed <= s : null;
            return FitParts.Give(parsed, new { schema = "coulisse/fit-tray/1", perTray = held, trays, fits, slots = parsed.GetValue(slots) },
                FormattableString.Invariant($"{held} a tray") + (trays is { } x ? FormattableString.Invariant($", {x} trays") : "") + (fits switch { true => ", fits", false => ", does not fit", null => "" }), drawing);
        }));
        return command;
    }
}
