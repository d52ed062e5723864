using System.CommandLine;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse fit tin: what a tin or mould of any common shape takes, and the same formula in another one.</summary>
internal static class FitTin
{
    private const string Shapes = "200x50 (round), 330x230x45 (box), taper 180x200x50 (bottom, top, depth), loaf 200x90x220x110x65 (bottom, top, depth), ring 240x80 (outside, tube), chimney 240x70x90 (outside, chimney, depth), dome 70 or 70x30 (rim, depth), shell 75x45x15, GN 1/2 65";

    public static Command Create()
    {
        Argument<string[]> size = new("TIN") { Description = Shapes, Arity = ArgumentArity.OneOrMore };
        Option<string?> to = new("--to") { Description = "Another tin, written the same way: how the amount and the depth change" };
        Option<double> fill = new("--fill") { Description = "Share of the volume that is filled, 0 to 1", DefaultValueFactory = _ => 0.6 };
        Command command = new("tin", "What a tin takes, and the same in another tin.\nExample: coulisse fit tin 200x50 --fill 0.6 --density 0.85 --to \"GN 1/2 65\"") { size, to, fill, FitParts.Density, FitParts.Json, FitParts.Svg };
        command.SetAction(parsed => FitParts.Guard(() =>
        {
            Mould? from = Mould(string.Join(' ', parsed.GetRequiredValue(size)));
            Mould? other = parsed.GetValue(to) is { } t ? Mould(t) : null;
            if (from is null || (parsed.GetValue(to) is not null && other is null) || parsed.GetValue(fill) is not (> 0 and <= 1))
            {
                return Input.Fail(Exit.Usage, $"a tin is written, in mm: {Shapes}; --fill is more than 0 and at most 1.");
            }

            MouldFill held = MouldFill.Share(from, Density.FromGramsPerMillilitre(parsed.GetValue(FitParts.Density)), Fraction.FromValue(parsed.GetValue(fill)));
            MouldScaling? change = other is null ? null : MouldScaling.SameDepth(from, other, held.Depth);
            return FitParts.Give(parsed, new
            {
                schema = "coulisse/fit-tin/1", volumeMillilitres = from.Volume.Millilitres, grams = held.Mass.Grams, depthMillimetres = held.Depth.Millimetres, headroomMillimetres = held.Headroom.Millimetres,
                factor = change?.Factor, newDepthMillimetres = change?.NewDepth.Millimetres, minutesFactorLow = change?.MinutesFactorLow, minutesFactorHigh = change?.MinutesFactorHigh, warning = change?.Warning,
            }, FormattableString.Invariant($"{from.Volume.Millilitres:0} mL; filled {held.Mass.Grams:0} g, {held.Depth.Millimetres:0.0} mm deep, {held.Headroom.Millimetres:0.0} mm free")
                + (change is null ? "" : FormattableString.Invariant($"; other tin: × {change.Factor:0.###} at {change.NewDepth.Millimetres:0.0} mm. {change.Warning}")), ShapeDrawings.Of(held));
        }));
        return command;
    }

    private static Mould? Mould(string text)
    {
        string[] words = text.Trim().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        string first = words[0].ToLowerInvariant();
        if (first.StartsWith("gn", StringComparison.Ordinal))
        {
            string[] rest = [.. words.Select(w => w.ToLowerInvariant().Replace("gn", "", StringComparison.Ordinal)).SelectMany(w => w.Split('x')).Where(w => w.Length > 0)];
            return rest.Length == 2 && Gastronorm.Find(rest[0]) is { } gn && FitParts.Sizes(rest[1]) is { Length: 1 } depth ? gn.Box(FitParts.Mm(depth[0])) : null;
        }

        Length[]? s = FitParts.Sizes(words[^1])?.Select(FitParts.Mm).ToArray();
        return (words.Length == 1 ? "" : first, s) switch
        {
            ("" or "round", { Length: 2 }) => new RoundMould(s[0], s[1]),
            ("" or "box", { Length: 3 }) => new BoxMould(s[0], s[1], s[2]),
            ("taper", { Length: 3 }) => new TaperedMould(s[0], s[1], s[2]),
            ("loaf", { Length: 5 }) => new LoafMould(s[0], s[1], s[2], s[3], s[4]),
            ("ring", { Length: 2 }) => new RingMould(s[0], s[1]),
            ("chimney", { Length: 3 }) => new ChimneyMould(s[0], s[1], s[2]),
            ("dome", { Length: 1 }) => DomeMould.HalfSphere(s[0]),
            ("dome", { Length: 2 }) => new DomeMould(s[0], s[1]),
            ("shell", { Length: 3 }) => new ShellMould(s[0], s[1], s[2]),
            _ => null,
        };
    }
}
