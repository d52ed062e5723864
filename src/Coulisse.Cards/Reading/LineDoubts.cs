using System.Globalization;

namespace Coulisse.Cards.Reading;

/// <summary>Questions a single line raises. Each has a near miss that stays silent.</summary>
internal static class LineDoubts
{
    /// <summary>Adds the questions of one food of a line.</summary>
    public static void Of(Draft d, string line, string lang, int number, List<Doubt> doubts)
    {
        string Say(double? v) => v is { } x ? x.ToString("0.####", CultureInfo.InvariantCulture) : "";
        if (d.Repaired)
        {
            string read = $"{Say(d.Amount)} {d.Unit?.Unit}".Trim();
            doubts.Add(new Doubt(number, $"“{line}”: letters stand where digits should. Is it {read}?", [new Candidate(read, $"{read} {d.Food}"), new Candidate("another amount", line)], $"{read} or another amount", Weight(d)));
        }

        if (d.Bare)
        {
            doubts.Add(new Doubt(number, $"“{line}”: {Say(d.Amount)} of which unit? Grams are taken.", [new Candidate($"{Say(d.Amount)} g", $"{Say(d.Amount)} g {d.Food}"), new Candidate($"{Say(d.Amount)} ml", $"{Say(d.Amount)} ml {d.Food}")], $"{Say(d.Amount)} g or {Say(d.Amount)} ml", 10));
        }

        if (d is { Unit: { Kind: "mass", Base: { } own }, Amount: { } a, AmountMax: null, Second: { } second } && Amounts.At(second, 0, lang) is { Unit: { Kind: "mass", Base: { } other } } told && Math.Abs(a * own - told.Number.Min * other) is var apart && apart > 0.05 * a * own && apart < 0.15 * a * own && d.Bought is null)
        {
            doubts.Add(new Doubt(number, $"“{line}”: {Say(Math.Round(a * own, 1))} g and {Say(Math.Round(told.Number.Min * other, 1))} g are told for one amount. Which is meant?", [new Candidate($"{Say(Math.Round(a * own, 1))} g", $"{Say(Math.Round(a * own, 1))} g {d.Food}"), new Candidate($"{Say(Math.Round(told.Number.Min * other, 1))} g", $"{Say(Math.Round(told.Number.Min * other, 1))} g {d.Food}")], $"{Say(Math.Round(apart, 1))} g", apart));
        }

        if (d.Minus)
        {
            string read = $"{Say(d.Amount)} {d.Unit?.Unit}".Trim();
            doubts.Add(new Doubt(number, $"“{line}”: a minus stands before the amount. Is it {(read.Length > 0 ? read : "an amount")}, or none?", [new Candidate(read.Length > 0 ? read : "an amount", $"{read} {d.Food}".Trim()), new Candidate("none", $"0 g {d.Food}")], $"{read} or nothing", Weight(d)));
        }

        if (d.Milli)
        {
            doubts.Add(new Doubt(number, $"“{line}”: “m” is no unit of amount. Is it {Say(d.Amount)} ml?", [new Candidate($"{Say(d.Amount)} ml", $"{Say(d.Amount)} ml {d.Food}"), new Candidate($"{Say(d.Amount)} g", $"{Say(d.Amount)} g {d.Food}")], $"{Say(d.Amount)} ml or {Say(d.Amount)} g", Weight(d)));
        }

        if (d.Unit?.Unit == "glass" && d.Grams is null)
        {
            doubts.Add(new Doubt(number, $"“{line}”: how much does the glass hold?", [new Candidate("120 ml", $"120 ml {d.Food}"), new Candidate("200 ml", $"200 ml {d.Food}"), new Candidate("250 ml", $"250 ml {d.Food}")], "120 to 250 ml", 100));
        }

        if (d.Unit?.Unit == "cup" && lang is "de" or "fr" or "es" or "it" && d.Grams is null)
        {
            doubts.Add(new Doubt(number, $"“{line}”: how much does the cup hold?", [new Candidate("150 ml", $"150 ml {d.Food}"), new Candidate("250 ml", $"250 ml {d.Food}")], "150 to 250 ml", 100));
        }

        if (d.Unit?.Unit is { } held && Sizes.TryGetValue(held, out (string Word, string[] Sizes) vessel) && d is { Amount: not null, Grams: null, PackGrams: null, Second: null, Food.Length: > 0 } && !(d.Unit.Unit == "tin" && d.Grade is not null))
        {
            doubts.Add(new Doubt(number, $"“{line}”: how much does the {vessel.Word} hold?", [.. vessel.Sizes.Select(size => new Candidate(size, $"{Say(d.Amount)} × {size} {d.Food}"))], $"{vessel.Sizes[0]} to {vessel.Sizes[^1]}", 100));
        }

        if (lang == "en" && d.Unit is null && d.Amount is not null && d.Food.Equals("cloves", StringComparison.OrdinalIgnoreCase))
        {
            doubts.Add(new Doubt(number, $"“{line}”: the spice, or garlic?", [new Candidate("cloves, the spice", $"{Say(d.Amount)} cloves (spice)"), new Candidate("cloves of garlic", $"{Say(d.Amount)} cloves garlic")], "0.2 g or 6 g", 6));
        }

        if (lang == "es" && d.Food.Equals("manteca", StringComparison.OrdinalIgnoreCase))
        {
            doubts.Add(new Doubt(number, $"“{line}”: lard or butter?", [new Candidate("manteca de cerdo (lard)", "manteca de cerdo"), new Candidate("mantequilla (butter)", "mantequilla")], "milk as an allergen, or pork", 100));
        }
    }

    // Vessels that come in many sizes; a pack of baking powder and a bottle of wine have their usual one. Sizes as shops sell them: common practice, no source.
    private static readonly Dictionary<string, (string Word, string[] Sizes)> Sizes = new(StringComparer.Ordinal)
    {
        ["jar"] = ("jar", ["200 g", "350 g", "500 g"]),
        ["carton"] = ("carton or punnet", ["125 g", "250 g", "500 g"]),
        ["tin"] = ("tin", ["200 g", "400 g", "800 g"]),
        ["small cup"] = ("cup", ["50 ml", "80 ml", "150 ml"]),
        ["mug"] = ("mug", ["250 ml", "300 ml", "350 ml"]),
        ["bowl"] = ("bowl", ["250 ml", "350 ml", "500 ml"]),
    };

    private static double Weight(Draft d) => d.Unit is { Base: { } b } && d.Amount is { } a ? a * b : d.Amount ?? 1;
}
