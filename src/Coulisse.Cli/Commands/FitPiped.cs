using System.CommandLine;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse fit piped, dumpling, square: what is piped, closed over a filling, or set out in a square.</summary>
internal static class FitPiped
{
    public static IEnumerable<Command> Create() => [Piping(), Closed(), Square()];

    private static Command Piping()
    {
        Argument<string> shape = new("SHAPE") { Description = "line 8x35 (nozzle x length), drop 35x12 (base x height), disc 100x6, quenelle 60x30x25" };
        Argument<string> size = new("SIZE") { Description = "mm" };
        Option<int> count = new("--count") { Description = "How many", DefaultValueFactory = _ => 1 };
        Option<double> stays = new("--stays") { Description = "Per cent that stays in bag and nozzle (4 to 8, common practice, no source)", DefaultValueFactory = _ => 6 };
        Command command = new("piped", "Grams of what is piped or spooned, and how much goes into the bag.\nExample: coulisse fit piped line 8x35 --density 1.02 --count 265") { shape, size, count, stays, FitParts.Density, FitParts.Json, FitParts.Svg };
        command.SetAction(parsed => FitParts.Guard(() =>
        {
            Length[]? s = FitParts.Sizes(parsed.GetRequiredValue(size))?.Select(FitParts.Mm).ToArray();
            Volume? one = (parsed.GetRequiredValue(shape), s) switch
            {
                ("line", { Length: 2 }) => Piped.Line(s[0], s[1]),
                ("drop", { Length: 2 }) => Piped.Drop(s[0], s[1]),
                ("disc", { Length: 2 }) => Piped.Disc(s[0], s[1]),
                ("quenelle", { Length: 3 }) => Piped.Quenelle(s[0], s[1], s[2]),
                _ => null,
            };
            if (one is not { } volume || parsed.GetValue(count) < 1 || parsed.GetValue(stays) is not (>= 0 and < 100))
            {
                return Input.Fail(Exit.Usage, "give line 8x35 (nozzle x length), drop 35x12 (base x height), disc 100x6 or quenelle 60x30x25, in mm; --count is 1 or more, --stays 0 to under 100 per cent.");
            }

            Mass each = volume * Density.FromGramsPerMillilitre(parsed.GetValue(FitParts.Density));
            Mass all = each * parsed.GetValue(count);
            Mass bag = Piped.IntoTheBag(all, Fraction.FromPercent(parsed.GetValue(stays)));
            return FitParts.Give(parsed, new { schema = "coulisse/fit-piped/1", pieceMillilitres = volume.Millilitres, pieceGrams = each.Grams, grams = all.Grams, intoTheBagGrams = bag.Grams },
                FormattableString.Invariant($"{each.Grams:0.00} g each ({volume.Millilitres:0.00} mL), {all.Grams:0} g in all, {bag.Grams:0} g into the bag"), parsed.GetRequiredValue(shape) is "line" ? ShapeDrawings.Piped(s![1], s[0], pointed: false) : ShapeDrawings.Piped(s![0], s.Length == 3 ? s[1] : s[0], pointed: true));
        }));
        return command;
    }

    private static Command Closed()
    {
        Argument<double> disc = new("DISC") { Description = "Diameter of the disc, mm" };
        Argument<double> thickness = new("THICKNESS") { Description = "Of the dough, mm" };
        Option<double> seam = new("--seam") { Description = "Width pressed together, mm", DefaultValueFactory = _ => 8 };
        Option<double> dough = new("--dough-density") { Description = "g/mL", DefaultValueFactory = _ => 1.2 };
        Command command = new("dumpling", "Dough and filling of a disc closed in two.\nExample: coulisse fit dumpling 90 2 --seam 8 --density 1.02") { disc, thickness, seam, dough, FitParts.Density, FitParts.Json, FitParts.Svg };
        command.SetAction(parsed => FitParts.Guard(() =>
        {
            Dumpling d = Dumpling.Of(FitParts.Mm(parsed.GetRequiredValue(disc)), FitParts.Mm(parsed.GetRequiredValue(thickness)), FitParts.Mm(parsed.GetValue(seam)), Density.FromGramsPerMillilitre(parsed.GetValue(dough)), Density.FromGramsPerMillilitre(parsed.GetValue(FitParts.Density)));
            return FitParts.Give(parsed, new { schema = "coulisse/fit-dumpling/1", doughGrams = d.DoughMass.Grams, fillingGrams = d.FillingMass.Grams, fillingMillilitres = d.Filling.Millilitres, assumed = "The leaves belly out to 0.6 of the free radius (common practice, no source): weigh one." },
                FormattableString.Invariant($"{d.DoughMass.Grams:0.0} g of dough, {d.FillingMass.Grams:0.0} g of filling; the bellying is assumed, weigh one"), ShapeDrawings.Closed(FitParts.Mm(parsed.GetRequiredValue(disc)), FitParts.Mm(parsed.GetValue(seam))));
        }));
        return command;
    }

    private static Command Square()
    {
        Argument<double> side = new("SIDE") { Description = "Inside of the square, mm" };
        Argument<double> round = new("ROUND") { Description = "Diameter, mm" };
        Command command = new("square", "Rounds in a square plate or box.\nExample: coulisse fit square 120 22") { side, round, FitParts.Json, FitParts.Svg };
        command.SetAction(parsed => FitParts.Guard(() =>
        {
            RoundsInSquare r = RoundsInSquare.Fit(FitParts.Mm(parsed.GetRequiredValue(side)), FitParts.Mm(parsed.GetRequiredValue(round)));
            return FitParts.Give(parsed, new { schema = "coulisse/fit-square/1", r.Count, r.InRows, largestMillimetres = r.LargestRound.Millimetres, nextMoreMillimetres = r.NextRound?.Millimetres },
                FormattableString.Invariant($"{r.Count} rounds ({r.InRows} in plain or offset rows); up to {r.LargestRound.Millimetres:0.00} mm as many{(r.NextRound is { } n ? FormattableString.Invariant($", one more from {n.Millimetres:0.00} mm down") : "")}"), r.Rows.Drawing);
        }));
        return command;
    }
}
