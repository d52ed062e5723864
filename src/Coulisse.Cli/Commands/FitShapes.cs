using System.CommandLine;
using System.Globalization;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse fit tin, roll, fold, tray: the shapes that need figures of their own.</summary>
internal static class FitShapes
{
    private static readonly Option<bool> Json = new("--json") { Description = "One JSON document" };
    private static readonly Option<bool> Svg = new("--svg") { Description = "The drawing to scale, as SVG" };
    private static readonly Option<double> Density = new("--density") { Description = "g/mL", DefaultValueFactory = _ => 1 };

    public static IEnumerable<Command> Create() => [Tin(), Roll(), Fold(), Tray()];

    private static Command Tin()
    {
        Argument<string> size = new("TIN") { Description = "Diameter x depth, or length x width x depth, mm" };
        Option<string?> to = new("--to") { Description = "Another tin: how the amount and the depth change" };
        Option<double> fill = new("--fill") { Description = "Share of the volume that is filled, 0 to 1", DefaultValueFactory = _ => 0.6 };
        Command command = new("tin", "What a tin takes, and the same in another tin.\nExample: coulisse fit tin 200x50 --fill 0.6 --density 0.85 --to 380x280x50") { size, to, fill, Density, Json };
        command.SetAction(parsed => Guard(() =>
        {
            Mould? from = Mould(parsed.GetRequiredValue(size));
            Mould? other = parsed.GetValue(to) is { } t ? Mould(t) : null;
            if (from is null || (parsed.GetValue(to) is not null && other is null) || parsed.GetValue(fill) is not (> 0 and <= 1))
            {
                return Input.Fail(Exit.Usage, "a tin is diameter x depth (200x50) or length x width x depth (330x230x45) in mm; --fill is more than 0 and at most 1.");
            }

            MouldFill held = MouldFill.Share(from, Coulisse.Matter.Quantities.Density.FromGramsPerMillilitre(parsed.GetValue(Density)), Fraction.FromValue(parsed.GetValue(fill)));
            MouldScaling? change = other is null ? null : MouldScaling.SameDepth(from, other, held.Depth);
            return Give(parsed, new
            {
                schema = "coulisse/fit-tin/1", volumeMillilitres = from.Volume.Millilitres, grams = held.Mass.Grams, depthMillimetres = held.Depth.Millimetres, headroomMillimetres = held.Headroom.Millimetres,
                factor = change?.Factor, newDepthMillimetres = change?.NewDepth.Millimetres, minutesFactorLow = change?.MinutesFactorLow, minutesFactorHigh = change?.MinutesFactorHigh, warning = change?.Warning,
            }, FormattableString.Invariant($"{from.Volume.Millilitres:0} mL; filled {held.Mass.Grams:0} g, {held.Depth.Millimetres:0.0} mm deep, {held.Headroom.Millimetres:0.0} mm free")
                + (change is null ? "" : FormattableString.Invariant($"; other tin: × {change.Factor:0.###} at {change.NewDepth.Millimetres:0.0} mm. {change.Warning}")), null);
        }));
        return command;
    }

    private static Command Roll()
    {
        Argument<double> hole = new("HOLE") { Description = "Diameter of the hole or core, mm" };
        Argument<double> thickness = new("THICKNESS") { Description = "Thickness of the sheet, mm" };
        Option<int> turns = new("--turns") { DefaultValueFactory = _ => 1, Description = "Whole turns" };
        Option<double> overlap = new("--overlap") { Description = "Overlap at the seam, mm" };
        Option<double> height = new("--height") { DefaultValueFactory = _ => 40, Description = "Height of the tube, mm" };
        Option<double?> length = new("--length") { Description = "A sheet so long rolled up as a spiral instead, mm" };
        Command command = new("roll", "A strip rolled to a tube, or a sheet to a spiral.\nExample: coulisse fit roll 14 1.2 --overlap 8 --height 40 --density 1.02") { hole, thickness, turns, overlap, height, length, Density, Json, Svg };
        command.SetAction(parsed => Guard(() =>
        {
            (Length h, Length t) = (Mm(parsed.GetRequiredValue(hole)), Mm(parsed.GetRequiredValue(thickness)));
            if (parsed.GetValue(length) is { } sheet)
            {
                SpiralRoll spiral = SpiralRoll.Of(t, Mm(sheet), h / 2);
                return Give(parsed, new { schema = "coulisse/fit-roll/1", outerMillimetres = spiral.Diameter.Millimetres, spiral.Turns }, FormattableString.Invariant($"{spiral.Diameter.Millimetres:0.0} mm across, {spiral.Turns:0.00} turns"), null);
            }

            RolledTube tube = RolledTube.Of(h, t, parsed.GetValue(turns), Mm(parsed.GetValue(overlap)), Mm(parsed.GetValue(height)));
            double grams = tube.Filling(Coulisse.Matter.Quantities.Density.FromGramsPerMillilitre(parsed.GetValue(Density)), Fraction.FromValue(1)).Grams;
            return Give(parsed, new { schema = "coulisse/fit-roll/1", stripMillimetres = tube.StripLength.Millimetres, outerMillimetres = tube.Outer.Millimetres, atSeamMillimetres = tube.AtSeam.Millimetres, tube.Turns, grams },
                FormattableString.Invariant($"strip {tube.StripLength.Millimetres:0.0} mm, {tube.Outer.Millimetres:0.0} mm across, {tube.AtSeam.Millimetres:0.0} mm at the seam, filled full {grams:0.0} g"), tube.Draw());
        }));
        return command;
    }

    private static Command Fold()
    {
        Argument<double> disc = new("DISC") { Description = "Diameter, mm" };
        Argument<double> mouth = new("MOUTH") { Description = "How far the rim stands open, mm" };
        Option<double> reach = new("--reach") { Description = "How far from the fold the filling goes, mm", Required = true };
        Command command = new("fold", "A disc folded over a filling.\nExample: coulisse fit fold 60 6 --reach 18 --density 1.02") { disc, mouth, reach, Density, Json, Svg };
        command.SetAction(parsed => Guard(() =>
        {
            FoldedDisc f = FoldedDisc.Of(Mm(parsed.GetRequiredValue(disc)), Mm(parsed.GetRequiredValue(mouth)), Mm(parsed.GetRequiredValue(reach)), Coulisse.Matter.Quantities.Density.FromGramsPerMillilitre(parsed.GetValue(Density)));
            return Give(parsed, new { schema = "coulisse/fit-fold/1", grams = f.Mass.Grams, fillingMillilitres = f.Filling.Millilitres, wedgeMillilitres = f.Wedge.Millilitres, sharePercent = f.FilledShare.Percent, cleanRimMillimetres = f.CleanRim.Millimetres },
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
        Command command = new("tray", "Boxes or plates on trays and in slots.\nExample: coulisse fit tray 530x325 160 --count 52 --slots 12") { tray, piece, count, slots, gap, Json, Svg };
        command.SetAction(parsed => Guard(() =>
        {
            double[]? t = Sizes(parsed.GetRequiredValue(tray));
            double[]? p = Sizes(parsed.GetRequiredValue(piece));
            if (t is not { Length: 2 } || p is not { Length: 1 or 2 } || parsed.GetValue(count) < 1)
            {
                return Input.Fail(Exit.Usage, "a tray is length x width (530x325), a piece length x width or a diameter; --count is 1 or more.");
            }

            (int held, Drawing drawing) = p.Length == 1
                ? RoundsOnTray.Fit(Mm(t[0]), Mm(t[1]), Mm(p[0]), Mm(parsed.GetValue(gap))) is var r ? (r.Count, r.Drawing) : default
                : BoxesOnTray.Fit(Mm(t[0]), Mm(t[1]), Mm(p[0]), Mm(p[1]), Mm(parsed.GetValue(gap))) is var b ? (b.PerTray, b.Layout.Drawing) : default;
            int? trays = parsed.GetValue(count) is { } n && held > 0 ? (n + held - 1) / held : null;
            bool? fits = parsed.GetValue(slots) is { } s ? trays is { } needed && needed <= s : null;
            return Give(parsed, new { schema = "coulisse/fit-tray/1", perTray = held, trays, fits, slots = parsed.GetValue(slots) },
                FormattableString.Invariant($"{held} a tray") + (trays is { } x ? FormattableString.Invariant($", {x} trays") : "") + (fits switch { true => ", fits", false => ", does not fit", null => "" }), drawing);
        }));
        return command;
    }

    private static int Guard(Func<int> fit)
    {
        try
        {
            return fit();
        }
        catch (ArgumentOutOfRangeException e)
        {
            return Input.Fail(Exit.Problems, e.Message.Split(" (Parameter", StringSplitOptions.None)[0]);
        }
    }

    private static int Give(ParseResult parsed, object document, string text, Drawing? drawing)
    {
        if (parsed.GetValue(Json))
        {
            return Input.Json(document);
        }

        Console.Out.WriteLine(drawing is not null && parsed.GetValue(Svg) ? SvgDrawing.Write(drawing) : text);
        return Exit.Done;
    }

    private static Mould? Mould(string text) => Sizes(text) switch
    {
        { Length: 2 } round => new RoundMould(Mm(round[0]), Mm(round[1])),
        { Length: 3 } box => new BoxMould(Mm(box[0]), Mm(box[1]), Mm(box[2])),
        _ => null,
    };

    private static double[]? Sizes(string text)
    {
        string[] parts = text.ToLowerInvariant().Replace("mm", "", StringComparison.Ordinal).Split('x', '×');
        double[] sizes = [.. parts.Select(p => double.TryParse(p.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double v) ? v : double.NaN)];
        return sizes.Any(s => !(s > 0)) ? null : sizes;
    }

    private static Length Mm(double mm) => Length.FromMillimetres(mm);
}
