using System.Globalization;

namespace Coulisse.Cards.Reading;

/// <summary>Questions a single line raises. Each has a near miss that stays silent.</summary>
internal static class LineDoubts
{
    private const double MostShells = 6;

    /// <summary>Adds the questions of one food of a line.</summary>
    public static void Of(Draft d, string line, string lang, int number, List<Doubt> doubts)
    {
        // Written out only where something is asked: most lines ask nothing.
        string Say() => d.Amount is { } x ? x.ToString("0.####", CultureInfo.InvariantCulture) : "";
        string Read() => $"{Say()} {d.Unit?.Unit}".Trim();
        void Ask(string question, string? asked, string moves, double weight, params (string Says, string Words)[] answers) =>
            doubts.Add(AmountWords.Ask(number, line, $"“{line}”{question}", asked, d.Food, moves, weight, answers));

        if (d.Repaired)
        {
            string read = Read();
            Ask($": letters stand where digits should. Is it {read}?", AmountWords.Garbled(d, line), $"{read} or another amount", Weight(d), (read, read), ("another amount", line));
        }

        if (d.Bare)
        {
            string? figure = AmountWords.Of(d, line, lang);
            Ask($": {Say()} {BareGrams.Question}", figure, $"{Say()} g or {Say()} ml", 10, ($"{Say()} g", $"{figure ?? Say()} g"), ($"{Say()} ml", $"{figure ?? Say()} ml"));
        }

        if (d is { Unit.Unit: "g", Amount: >= 1 and <= MostShells and { } shells, AmountMax: null, Second: null, Bare: false, Repaired: false, Known.Id: "egg" } && shells == Math.Floor(shells))
        {
            // A column of grams, and in it the eggs: "Uova | 2".
            string? told = AmountWords.Of(d, line, lang);
            Ask($": {Say()} g of egg, or {Say()} eggs?", told, $"{Say()} g or {Say()} eggs", shells * 50, ($"{Say()} g", told ?? $"{Say()} g"), ($"{Say()} eggs", Say()));
        }

        if (d.Less is { } less)
        {
            string first = Read();
            Ask($": {less} is how much?", line.StartsWith(less, StringComparison.Ordinal) ? less : null, $"{first} or less", Weight(d), (first, first), ("another amount", "… ml"));
        }

        TwoAmounts.Of(d, line, lang, number, doubts);
        if (d is { Unit: null, Amount: { } bare } && d.Food.StartsWith("1 ", StringComparison.Ordinal) && d.Food.Length > 4 && char.IsLetter(d.Food[2]))
        {
            int at = line.IndexOf(d.Food, StringComparison.Ordinal);
            string? figures = at > 0 && AmountWords.In(line, bare, null, lang) is var (from, to) && to <= at ? line[from..(at + 1)] : null;
            Ask($": is the second figure a litre? {Say()} l of {d.Food[2..]}, or something else?", figures, $"{(bare * 1000).ToString("0.####", CultureInfo.InvariantCulture)} ml", 1000 * bare, ($"{Say()} l", $"{Say()} l"), ("as written", line));
        }

        if (d.Minus)
        {
            string? told = AmountWords.Of(d, line, lang);
            string read = Read();
            string amount = told ?? (read.Length > 0 ? read : "an amount");
            Ask($": a minus stands before the amount. Is it {(read.Length > 0 ? read : "an amount")}, or none?", told is null ? null : "-" + told, $"{read} or nothing", Weight(d), (read.Length > 0 ? read : "an amount", amount), ("none", "0 g"));
        }

        if (d.Milli)
        {
            string? milli = AmountWords.Of(d, line, lang) is { } figure && line.IndexOf(figure, StringComparison.Ordinal) is var at and >= 0 && Words.Places.Skip(line, at + figure.Length) is var m && Words.Places.WordAt(line, m, "m") ? line[at..(m + 1)] : AmountWords.Of(d, line, lang);
            Ask($": “m” is no unit of amount. Is it {Say()} ml?", milli?.EndsWith('m') == true ? milli : null, $"{Say()} ml or {Say()} g", Weight(d), ($"{Say()} ml", $"{Say()} ml"), ($"{Say()} g", $"{Say()} g"));
        }

        if (d.EachOrAll is { } weight)
        {
            Ask($": does each weigh {weight}, or all of them together?", weight, $"{weight} or {Say()} times that", Weight(d), ("all together", $"{weight} in all"), ("each", $"{weight} each"));
        }

        if (Held(d, lang) is var (word, sizes))
        {
            // "2 glasses milk" are two of what one holds; a vessel that shops sell keeps its name.
            string times = d.Amount is { } n && n != 1 || d.Unit?.Unit is "jar" or "carton" or "tin" ? $"{Say()} × " : "";
            Ask($": how much does the {word} hold?", AmountWords.Of(d, line, lang), $"{sizes[0]} to {sizes[^1]}", 100, [.. sizes.Select(size => (size, times + size))]);
        }

        if (lang == "en" && d.Unit is null && d.Amount is not null && d.Food.Equals("cloves", StringComparison.OrdinalIgnoreCase) && !Words.Places.HasAny(line, "spice", "whole", "ground", "garlic", "studded", "stuck", "spiked"))
        {
            string? cloves = line.Contains($"{Say()} {d.Food}", StringComparison.Ordinal) ? $"{Say()} {d.Food}" : null;
            Ask(": the spice, or garlic?", cloves, "0.2 g or 6 g", 6, ("cloves, the spice", $"{Say()} cloves{(cloves is null ? "" : " (spice)")}"), ("cloves of garlic", $"{Say()} cloves garlic"));
        }

        if (lang == "es" && d.Food.Equals("manteca", StringComparison.OrdinalIgnoreCase))
        {
            doubts.Add(new Doubt(number, $"“{line}”: lard or butter?", [new Candidate("manteca de cerdo (lard)", "manteca de cerdo"), new Candidate("mantequilla (butter)", "mantequilla")], "milk as an allergen, or pork", 100) { Asked = d.Food });
        }
    }

    /// <summary>A vessel without its size: what it is called, and the sizes it comes in.</summary>
    private static (string Word, string[] Sizes)? Held(Draft d, string lang) => d switch
    {
        { Unit.Unit: "glass", Grams: null, Second: null } => ("glass", ["120 ml", "200 ml", "250 ml"]),
        { Unit.Unit: "cup", Grams: null, Second: null } when lang is "de" or "fr" or "es" or "it" => ("cup", ["150 ml", "250 ml"]),
        { Unit.Unit: { } held, Amount: not null, Grams: null, PackGrams: null, Second: null, Food.Length: > 0 } when Sizes.TryGetValue(held, out (string Word, string[] Sizes) vessel) && !(held == "tin" && d.Grade is not null) => vessel,
        _ => null,
    };

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
