using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Flows.Fits;

/// <summary>Tins and moulds as a cook writes them, sizes in millimetres.</summary>
public static class TinText
{
    /// <summary>Every way, with an example.</summary>
    public const string Ways = "200x50 (round), 330x230x45 (box), taper 180x200x50 (bottom, top, depth), loaf 200x90x220x110x65 (bottom, top, depth), ring 240x80 (outside, tube), chimney 240x70x90 (outside, chimney, depth), dome 70 or 70x30 (rim, depth), shell 75x45x15, GN 1/2 65";

    /// <summary>The mould; null when it is written in none of the ways.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It cannot be: a dome deeper than half its rim.</exception>
    public static Mould? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] words = text.Trim().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
        {
            return null;
        }

        string first = words[0].ToLowerInvariant();
        if (first.StartsWith("gn", StringComparison.Ordinal))
        {
            string[] rest = [.. words.Select(w => w.ToLowerInvariant().Replace("gn", "", StringComparison.Ordinal)).SelectMany(w => w.Split('x')).Where(w => w.Length > 0)];
            return rest.Length == 2 && Gastronorm.Find(rest[0]) is { } gn && FitValues.Sizes(rest[1]) is [> 0 and < 1000 and var depth] ? gn.Box(Length.FromMillimetres(depth)) : null;
        }

        double[] sizes = FitValues.Sizes(words[^1]);
        if (words.Length > 2 || sizes.Any(s => !(s is > 0 and <= 10_000)))
        {
            return null;
        }

        Length[] s = [.. sizes.Select(Length.FromMillimetres)];
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
