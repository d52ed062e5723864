using System.CommandLine;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse fit: what fits on, in or out of what. Sizes are millimetres.</summary>
internal static class FitCommand
{
    private static readonly Option<double> Gap = new("--gap") { Description = "Room between two pieces, or the width a cut loses, mm" };
    private static readonly Option<double> Edge = new("--edge") { Description = "Trimmed from every side first, mm" };
    private static readonly Option<double?> Density = new("--density") { Description = "g/mL, to give grams where the block has a height" };

    public static Command Create()
    {
        Argument<string> first = new("BLOCK") { Description = "Length x width (x height), or the ring's diameter" };
        Argument<string> second = new("PIECE") { Description = "Length x width, or a diameter" };
        Command command = new("fit", "What fits.\nExample: coulisse fit grid 330x220x18 40x30 --edge 5 --density 1.03\n         coulisse fit rounds 530x325 60 --gap 1\n         coulisse fit ring 80 16.4 --svg");
        command.Subcommands.Add(Sub("grid", "Pieces cut from a block, frame or sheet; boxes on a tray", first, second, Grid));
        command.Subcommands.Add(Sub("rounds", "Rounds on a tray or cloth", first, second, Rounds));
        command.Subcommands.Add(Sub("ring", "Rounds in a ring", first, second, Ring));
        foreach (Command shape in FitShapes.Create())
        {
            command.Subcommands.Add(shape);
        }

        return command;
    }

    private static Command Sub(string name, string what, Argument<string> first, Argument<string> second, Func<double[], double[], ParseResult, (object Document, string Text, Drawing Drawing)> fit)
    {
        Command sub = new(name, what) { first, second, Gap, Edge, Density, FitParts.Json, FitParts.Svg };
        sub.SetAction(parsed =>
        {
            if (FitParts.Sizes(parsed.GetRequiredValue(first)) is not { } block || FitParts.Sizes(parsed.GetRequiredValue(second)) is not { } piece)
            {
                return Input.Fail(Exit.Usage, $"“{parsed.GetRequiredValue(first)}” and “{parsed.GetRequiredValue(second)}”: sizes are millimetres, each more than 0, such as 330x220 or 60.");
            }

            return FitParts.Guard(() =>
            {
                (object document, string text, Drawing drawing) = fit(block, piece, parsed);
                return FitParts.Give(parsed, document, text, drawing);
            });
        });
        return sub;
    }

    private static (object, string, Drawing) Grid(double[] block, double[] piece, ParseResult parsed)
    {
        CutPlan p = Cutting.Fit(Mm(block, 0), Mm(block, 1), Mm(piece, 0), Mm(piece, 1), Length.FromMillimetres(parsed.GetValue(Gap)), Length.FromMillimetres(parsed.GetValue(Edge)));
        FrameCut? frame = block.Length > 2 && parsed.GetValue(Density) is { } g
            ? FrameCut.Of(new BoxMould(Mm(block, 0), Mm(block, 1), Mm(block, 2)), Coulisse.Matter.Quantities.Density.FromGramsPerMillilitre(g), Mm(piece, 0), Mm(piece, 1), Length.FromMillimetres(parsed.GetValue(Gap)), Length.FromMillimetres(parsed.GetValue(Edge)))
            : null;
        string text = FormattableString.Invariant($"{p.Count} pieces ({p.Straight} straight, {p.Turned} turned), trim {p.TrimShare.Percent:0.0} %{(p.Proven ? "" : ", not proven to be the most")}")
            + (frame is null ? "" : FormattableString.Invariant($"; fill {frame.FillMass.Grams:0} g, {frame.PieceMass.Grams:0.0} g a piece, trim {frame.TrimMass.Grams:0} g"));
        return (new
        {
            schema = "coulisse/fit-grid/1",
            p.Count,
            p.Straight,
            p.Turned,
            p.Layout,
            p.Proven,
            trimPercent = p.TrimShare.Percent,
            grams = frame?.FillMass.Grams,
            pieceGrams = frame?.PieceMass.Grams,
            trimGrams = frame?.TrimMass.Grams,
            nextFewer = Even(p.NextFewer),
            nextMore = Even(p.NextMore),
        }, text, p.Drawing);
    }

    private static (object, string, Drawing) Rounds(double[] block, double[] piece, ParseResult parsed)
    {
        RoundsOnTray t = RoundsOnTray.Fit(Mm(block, 0), Mm(block, 1), Mm(piece, 0), Length.FromMillimetres(parsed.GetValue(Gap)));
        return (
            new { schema = "coulisse/fit-rounds/1", t.Count, t.Rows, t.Square, t.OffsetAlong, t.OffsetAcross, largestMillimetres = t.LargestRound.Millimetres, nextMoreMillimetres = t.NextMore?.Millimetres },
            FormattableString.Invariant($"{t.Count} rounds (square {t.Square}, offset {t.OffsetAlong} along, {t.OffsetAcross} across)"),
            t.Drawing);
    }

    private static (object, string, Drawing) Ring(double[] block, double[] piece, ParseResult parsed)
    {
        RoundsInRing r = RoundsInRing.Fit(Mm(block, 0), Mm(piece, 0));
        return (
            new { schema = "coulisse/fit-ring/1", r.Count, r.Held, largestMillimetres = r.LargestRound.Millimetres, nextMoreMillimetres = r.NextRound.Millimetres, smallestRingMillimetres = r.SmallestRing.Millimetres, nextRingMillimetres = r.NextRing.Millimetres },
            FormattableString.Invariant($"{r.Count} rounds; up to {r.LargestRound.Millimetres:0.00} mm as many, one more from {r.NextRound.Millimetres:0.00} mm down"),
            r.Drawing);
    }

    private static object? Even(EvenCut? cut) => cut is null ? null : new { cut.Count, cut.Columns, cut.Rows, alongMillimetres = cut.Along.Millimetres, acrossMillimetres = cut.Across.Millimetres };

    private static Length Mm(double[] sizes, int at) => Length.FromMillimetres(at < sizes.Length ? sizes[at] : sizes[^1]);
}
