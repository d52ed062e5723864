using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Reference;

namespace Coulisse.Kitchen.Method;

/// <summary>Oil that deep-frying leaves in a food, by what clothes it.</summary>
/// <param name="Kind">"plain", "battered", "breaded", "potato", "wrapper", "dough".</param>
/// <param name="Low">Least, g in 100 g of the fried food.</param>
/// <param name="Best">Middle.</param>
/// <param name="High">Most.</param>
/// <remarks>Differences between fried and raw rows of published tables (`data/measures/frying-uptake.tsv`); a range over foods, not an uncertainty: time, temperature and draining move it.</remarks>
public sealed record Frying(string Kind, double Low, double Best, double High)
{
    private static readonly Lazy<Frying[]> Table = new(() => [.. ReferenceTable.Load("measures/frying-uptake.tsv").Rows.Select(r => new Frying(r[0], N(r[1]), N(r[2]), N(r[3])))]);

    private static readonly (string Kind, string[] Words)[] Clothes =
    [
        ("battered", ["batter", "tempura", "pâte à frire", "backteig", "pastella", "rebozad", "天ぷら"]), ("breaded", ["breadcrumb", "bread crumb", "panko", "panure", "pané", "panier", "empanad", "impanat", "パン粉"]),
        ("wrapper", ["spring roll", "wonton", "wrapper", "samosa"]), ("dough", ["doughnut", "beignet", "churro", "fritter", "krapfen", "buñuelo"]), ("potato", ["chips", "fries", "potato", "frites", "kartoffel", "patata"]),
    ];

    /// <summary>By the words of a step.</summary>
    public static Frying Of(Step step)
    {
        ArgumentNullException.ThrowIfNull(step);
        string kind = Clothes.FirstOrDefault(c => c.Words.Any(w => step.Text.Contains(w, StringComparison.OrdinalIgnoreCase))).Kind ?? "plain";
        return Table.Value.First(f => f.Kind == kind);
    }

    /// <summary>Oil in a weight of fried food, g.</summary>
    public double Oil(double friedGrams) => friedGrams * Best / 100;

    /// <summary>In words, for a fried weight.</summary>
    public string Say(double friedGrams) => string.Create(CultureInfo.InvariantCulture, $"about {Oil(friedGrams):0.#} g of oil taken up ({friedGrams * Low / 100:0.#} to {friedGrams * High / 100:0.#} g: {Kind}, {Low:0.#} to {High:0.#} g in 100 g fried); weigh the oil once");

    internal static (Mixture After, string Said) Of(Mixture before, Step step, double left)
    {
        Frying taken = Of(step);
        if (left == before.Grams)
        {
            return (before, string.Create(CultureInfo.InvariantCulture, $"oil taken up and water lost are not worked out without the weight after frying; a {taken.Kind} food takes up {taken.Low:0.#} to {taken.High:0.#} g of oil in 100 g fried"));
        }

        double oil = taken.Oil(left);
        double water = before.Grams + oil - left;
        return water >= 0 && water <= before.Water
            ? (before with { Grams = left, Fat = before.Fat + oil, Water = before.Water - water }, $"{taken.Say(left)}; {water.ToString("0.#", CultureInfo.InvariantCulture)} g of water out")
            : (before, string.Create(CultureInfo.InvariantCulture, $"The weight of {left:0.#} g after frying would take {water:0.#} g of water, and there are {before.Water ?? 0:0.#} g; nothing was taken off"));
    }

    private static double N(string cell) => ReferenceTable.Number(cell) ?? throw new FormatException($"measures/frying-uptake.tsv lacks a figure.");
}
