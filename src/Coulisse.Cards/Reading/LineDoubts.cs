using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Checks;

namespace Coulisse.Cards.Reading;

/// <summary>Questions a single line raises. Each has a near miss that stays silent.</summary>
internal static class LineDoubts
{
    /// <summary>Adds the questions of one food of a line.</summary>
    public static void Of(Draft d, string line, string lang, int number, List<Doubt> doubts)
    {
        static string Say(double? v) => v is { } x ? x.ToString("0.####", CultureInfo.InvariantCulture) : "";
        if (d.Repaired)
        {
            string read = $"{Say(d.Amount)} {d.Unit?.Unit}".Trim();
            doubts.Add(new Doubt(number, $"“{line}”: letters stand where digits should. Is it {read}?", [new Candidate(read, $"{read} {d.Food}"), new Candidate("another amount", line)], $"{read} or another amount", Weight(d)));
        }

        if (d.Bare)
        {
            doubts.Add(new Doubt(number, $"“{line}”: {Say(d.Amount)} of which unit? Grams are taken.", [new Candidate($"{Say(d.Amount)} g", $"{Say(d.Amount)} g {d.Food}"), new Candidate($"{Say(d.Amount)} ml", $"{Say(d.Amount)} ml {d.Food}")], $"{Say(d.Amount)} g or {Say(d.Amount)} ml", 10));
        }

        if (d is { Unit: { Kind: "mass", Base: { } own }, Amount: { } a, AmountMax: null, Second: { } second } && Amounts.At(second, 0, lang) is { Unit: { Kind: "mass", Base: { } other } } told && Math.Abs(a * own - told.Number.Min * other) is var apart && apart > 0.05 * a * own && apart < 0.15 * a * own && !PrintedOunces.Agree(a * own, told.Number.Min * other) && d.Bought is null)
        {
            doubts.Add(new Doubt(number, $"“{line}”: {Say(Math.Round(a * own, 1))} g and {Say(Math.Round(told.Number.Min * other, 1))} g are told for one amount. Which is meant?", [new Candidate($"{Say(Math.Round(a * own, 1))} g", $"{Say(Math.Round(a * own, 1))} g {d.Food}"), new Candidate($"{Say(Math.Round(told.Number.Min * other, 1))} g", $"{Say(Math.Round(told.Number.Min * other, 1))} g {d.Food}")], $"{Say(Math.Round(apart, 1))} g", apart));
        }

        if (d is { Unit: null, Amount: { } bare } && d.Food.StartsWith("1 ", StringComparison.Ordinal) && d.Food.Length > 4 && char.IsLetter(d.Food[2]))
        {
            doubts.Add(new Doubt(number, $"“{line}”: is the second figure a litre? {Say(bare)} l of {d.Food[2..]}, or something else?", [new Candidate($"{Say(bare)} l", $"{Say(bare)} l {d.Food[2..]}"), new Candidate("as written", line)], $"{Say(bare * 1000)} ml", 1000 * bare));
        }

        if (d is { Unit: { } taken, Amount: { } first, Second: null } && (Inside(d.Food, lang) ?? Beside(line, lang)) is { } also)
        {
            string both = $"{Say(first)} {taken.Unit}";
            doubts.Add(new Doubt(number, $"“{line}” tells two amounts. Is {both} meant, or {also}?", [new Candidate(both, line), new Candidate(also, line)], $"{both} or {also}", Weight(d)));
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

        if (d is { Unit.Unit: "glass", Grams: null, Second: null })
        {
            doubts.Add(new Doubt(number, $"“{line}”: how much does the glass hold?", [new Candidate("120 ml", $"120 ml {d.Food}"), new Candidate("200 ml", $"200 ml {d.Food}"), new Candidate("250 ml", $"250 ml {d.Food}")], "120 to 250 ml", 100));
        }

        if (d is { Unit.Unit: "cup", Grams: null, Second: null } && lang is "de" or "fr" or "es" or "it")
        {
            doubts.Add(new Doubt(number, $"“{line}”: how much does the cup hold?", [new Candidate("150 ml", $"150 ml {d.Food}"), new Candidate("250 ml", $"250 ml {d.Food}")], "150 to 250 ml", 100));
        }

        if (d.Unit?.Unit is { } held && Sizes.TryGetValue(held, out (string Word, string[] Sizes) vessel) && d is { Amount: not null, Grams: null, PackGrams: null, Second: null, Food.Length: > 0 } && !(d.Unit.Unit == "tin" && d.Grade is not null))
        {
            doubts.Add(new Doubt(number, $"“{line}”: how much does the {vessel.Word} hold?", Sized(vessel.Sizes, Say(d.Amount), d.Food), $"{vessel.Sizes[0]} to {vessel.Sizes[^1]}", 100));
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

    private static ImmutableArray<Candidate> Sized(string[] sizes, string amount, string food) => [.. sizes.Select(size => new Candidate(size, $"{amount} × {size} {food}"))];

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

    /// <summary>A weight, volume or spoon with its food behind a wide gap in a line that begins with an amount: two lists side by side.</summary>
    private static string? Beside(string line, string lang)
    {
        int gap = line.IndexOf("   ", StringComparison.Ordinal);
        int at = gap < 0 ? 0 : Words.Places.Skip(line, gap);
        return gap > 3 && at < line.Length && char.IsAsciiDigit(line[0]) && char.IsAsciiDigit(line[at]) && char.IsLetter(line[gap - 1]) && Amounts.At(line, at, lang) is { Unit.Kind: "mass" or "volume" or "spoon" } m && m.End + 2 < line.Length && Amounts.At(line, 0, lang) is { } own && own.End + 1 < gap ? line[at..m.End].Trim() : null;
    }

    /// <summary>A weight or volume that is left inside the name of the food.</summary>
    private static string? Inside(string food, string lang)
    {
        for (int i = 1; i < food.Length; i++)
        {
            if (char.IsAsciiDigit(food[i]) && food[i - 1] == ' ' && Amounts.At(food, i, lang) is { Unit: { Kind: "mass" or "volume", Unit: "g" or "kg" or "ml" or "l" or "cl" or "dl" or "oz" or "lb" } } m)
            {
                return food[i..m.End].Trim();
            }
        }

        return null;
    }

    private static double Weight(Draft d) => d.Unit is { Base: { } b } && d.Amount is { } a ? a * b : d.Amount ?? 1;
}
