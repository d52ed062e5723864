using System.CommandLine;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse fit root: discs or dice out of a root or bulb, how many to buy, how much of it is used.</summary>
internal static class FitRoot
{
    public static Command Create()
    {
        Argument<string> root = new("ROOT") { Description = "Widest diameter x height, mm; one figure for a ball" };
        Argument<double> piece = new("PIECE") { Description = "Diameter of a disc, or side of a die, mm" };
        Option<double> slice = new("--slice") { Description = "Thickness of a slice, mm", DefaultValueFactory = _ => 1 };
        Option<bool> dice = new("--dice") { Description = "Dice instead of discs; the slice is as thick as the die" };
        Option<double> peel = new("--peel") { Description = "Peeled all round, mm", DefaultValueFactory = _ => 3 };
        Option<double> lost = new("--lost") { Description = "Lost, per cent", DefaultValueFactory = _ => 10 };
        Option<int?> count = new("--count") { Description = "Good pieces wanted" };
        Option<int> spare = new("--spare") { Description = "Whole ones over" };
        Command command = new("root", "Discs or dice from a root or bulb, and how many to buy.\nExample: coulisse fit root 92x80 60 --slice 1.2 --peel 3 --count 280") { root, piece, slice, dice, peel, lost, count, spare, FitParts.Density, FitParts.Json, FitParts.Svg };
        command.SetAction(parsed => FitParts.Guard(() =>
        {
            double[]? size = FitParts.Sizes(parsed.GetRequiredValue(root));
            if (size is not { Length: 1 or 2 } || parsed.GetValue(lost) is not (>= 0 and < 100) || parsed.GetValue(count) < 1 || parsed.GetValue(spare) < 0)
            {
                return Input.Fail(Exit.Usage, "a root is its diameter x height (92x80) or one figure for a ball; --lost is 0 to under 100 per cent; --count is 1 or more.");
            }

            Bulb whole = new(FitParts.Mm(size[0]), FitParts.Mm(size[^1]));
            Fraction loss = Fraction.FromPercent(parsed.GetValue(lost));
            BulbCut cut = parsed.GetValue(dice)
                ? BulbCut.Dice(whole, FitParts.Mm(parsed.GetValue(peel)), FitParts.Mm(parsed.GetRequiredValue(piece)), loss)
                : BulbCut.Discs(whole, FitParts.Mm(parsed.GetValue(peel)), FitParts.Mm(parsed.GetValue(slice)), FitParts.Mm(parsed.GetRequiredValue(piece)), loss);
            if (cut.Good == 0)
            {
                return Input.Fail(Exit.Problems, "not one good piece comes from one of these; take larger ones or a smaller piece.");
            }

            Density density = Density.FromGramsPerMillilitre(parsed.GetValue(FitParts.Density));
            double each = (whole.Volume * density).Grams;
            int? buy = parsed.GetValue(count) is { } n ? cut.ToBuy(n, parsed.GetValue(spare)) : null;
            return FitParts.Give(parsed, new
            {
                schema = "coulisse/fit-root/1", grams = each, cut.Slices, slicesByPieces = cut.Counts.Select(c => new { c.Slices, pieces = c.Each }), cut.Pieces, cut.Good,
                pieceGrams = (cut.PieceVolume * density).Grams, usablePercent = cut.UsableShare.Percent, buy, boughtGrams = buy * each,
            }, FormattableString.Invariant($"{cut.Slices} slices, {cut.Pieces} pieces, {cut.Good} good; {cut.UsableShare.Percent:0} % of it is used")
                + (buy is { } b ? FormattableString.Invariant($"; buy {b} ({b * each:0} g)") : ""), cut.Drawing);
        }));
        return command;
    }
}
