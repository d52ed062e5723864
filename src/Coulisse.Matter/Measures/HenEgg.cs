using Coulisse.Matter.Quantities;
using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Measures;

/// <summary>A hen egg by country and size, and the weight of its parts.</summary>
/// <param name="Regime">uk (and EU), us, jp, au, nz, ca, za.</param>
/// <param name="Size">Size word of that country.</param>
/// <param name="InShell">Planning weight in the shell.</param>
/// <param name="Least">Lightest of the class.</param>
/// <param name="Most">Heaviest of the class.</param>
/// <param name="Source">Where the class is from.</param>
public sealed record HenEgg(string Regime, string Size, Mass InShell, Mass Least, Mass Most, string Source)
{
    /// <summary>Share of the shell in the whole egg, and of yolk and white in what is left.</summary>
    /// <remarks>USDA SR28: 01123 refuse 12 %; 01124 white 33 g and 01125 yolk 17 g of a 50 g egg.</remarks>
    private const double Edible = 0.88, Yolk = 0.34, White = 0.66;

    private static readonly Lazy<(HenEgg Egg, bool Usual)[]> All = new(() => [.. ReferenceTable.Load("measures/eggs.tsv").Rows.Select(r =>
    {
        // An open end of a class is taken 12 % beyond its planning weight.
        double mid = ReferenceTable.Number(r[4])!.Value;
        return (new HenEgg(r[0], r[1], Mass.FromGrams(mid), Mass.FromGrams(ReferenceTable.Number(r[2]) ?? (mid * 0.88)), Mass.FromGrams(ReferenceTable.Number(r[3]) ?? (mid * 1.12)), r[6]), r[5] == "yes");
    })]);

    /// <summary>Share of the egg that a part is.</summary>
    /// <param name="part">"egg", "yolk" or "white".</param>
    public static double ShareOf(string part) => part switch
    {
        "egg" => Edible,
        "yolk" => Edible * Yolk,
        "white" => Edible * White,
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "A part is egg, yolk or white."),
    };

    /// <summary>The egg a card means.</summary>
    /// <param name="system">Size system of the card; metric is read as the EU's classes.</param>
    /// <param name="size">Size word on the card, or null for the usual one.</param>
    public static HenEgg Of(string system, string? size)
    {
        string regime = system == "metric" ? "uk" : system;
        string wanted = size?.Trim().ToLowerInvariant() ?? "";
        string letter = wanted switch { "small" => "S", "medium" => "M", "large" => "L", "extra large" or "extra-large" or "very large" => "XL", _ => wanted };
        foreach ((HenEgg egg, bool _) in All.Value)
        {
            if (egg.Regime == regime && wanted.Length > 0 && (egg.Size.Equals(wanted, StringComparison.OrdinalIgnoreCase) || egg.Size.Equals(letter, StringComparison.OrdinalIgnoreCase) || egg.Size.Contains($"({wanted})", StringComparison.OrdinalIgnoreCase)))
            {
                return egg;
            }
        }

        return All.Value.First(e => e.Egg.Regime == regime && e.Usual).Egg;
    }
}
