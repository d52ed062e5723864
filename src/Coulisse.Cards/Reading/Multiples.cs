using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A count of things whose size is told: "2 x 400 g tins", "4 x 150 g fillets", "1 x 5cm piece".</summary>
internal static class Multiples
{
    /// <summary>"2 x 400 g tins", "4 x 150 g fillets", "8 60 g pieces".</summary>
    public static int Take(string s, int i, string lang, Draft d)
    {
        if (d.Unit is not null || d.Amount is null)
        {
            return i;
        }

        int j = Places.Skip(s, i);
        bool times = j < s.Length && (s[j] is '×' || (s[j] is 'x' or 'X' && (j + 1 == s.Length || !char.IsLetter(s[j + 1]))));
        int k = times ? Places.Skip(s, j + 1) : j;
        if (!times && (k >= s.Length || !char.IsAsciiDigit(s[k])))
        {
            return i;
        }

        if (times && k < s.Length && char.IsLetter(s[k]) && FrontMarks.Times(s, j, lang, d) is var named and > 0)
        {
            return named;
        }

        if (times && Amounts.At(s, k, lang) is { Unit.Kind: "length" } size && Places.Skip(s, size.End) is var noun && Lexicon.LongestUnit(s, noun, lang, out int nounEnd) is { Unit: "piece" or "stick" or "cube" or "block" or "slice" or "sheet" } pieces)
        {
            // "1 x 5cm piece of ginger"
            d.Graded(s[k..size.End]);
            d.Unit = pieces.Unit == "piece" ? null : pieces;
            return nounEnd;
        }

        if (Amounts.At(s, k, lang) is not { Unit.Kind: "mass" or "volume" } each)
        {
            return FrontMarks.Times(s, j, lang, d) is var of and > 0 ? of : i;
        }

        int e = Places.Skip(s, each.End);
        e = e < s.Length && s[e] == '/' && Amounts.At(s, Places.Skip(s, e + 1), lang) is { Unit.Kind: "mass" or "volume" } twice ? Places.Skip(s, twice.End) : e;
        if (PartReader.Container(s, e, lang, out int ce) is { } box)
        {
            d.Unit = box;
            PartReader.Content(d, each.Number.Min, each.Unit!);
            return ce;
        }

        if (Lexicon.LongestUnit(s, e, lang, out int spoonEnd) is { Kind: "spoon" } spoon)
        {
            // "2 x 15 ml tbsp": the size of the spoon is said beside it
            d.Unit = spoon;
            return spoonEnd;
        }

        if (each.Unit!.Kind == "volume")
        {
            d.PackGrams = null;
            d.Amount *= each.Number.Min;
            d.Unit = each.Unit;
            d.Tokens?.Add(new ReadToken(s[j..each.End], "amount", "times " + s[k..each.End]));
            return each.End;
        }

        PartReader.Content(d, each.Number.Min, each.Unit);
        if (d.Grams is { } g && each.Number.Max is { } max)
        {
            d.GramsMax = g / each.Number.Min * max;
        }

        return each.End;
    }
}
