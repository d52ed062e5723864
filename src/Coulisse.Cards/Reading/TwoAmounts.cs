using System.Globalization;
using Coulisse.Cards.Checks;

namespace Coulisse.Cards.Reading;

/// <summary>One line, two amounts: two measures of one food that do not agree, or two foods under one mark.</summary>
internal static class TwoAmounts
{
    /// <summary>Adds the question of one food of a line.</summary>
    public static void Of(Draft d, string line, string lang, int number, List<Doubt> doubts)
    {
        static string Say(double v) => Math.Round(v, 1).ToString("0.####", CultureInfo.InvariantCulture);
        if (d is { Unit: { Kind: "mass", Base: { } own }, Amount: { } a, AmountMax: null, Second: { } second } && CompoundAmounts.At(second, 0, lang) is { Unit: { Kind: "mass", Base: { } other } } told
            && Math.Abs(a * own - told.Number.Min * other) is var apart && apart > 0.05 * a * own && (apart < 0.15 * a * own || Translated(d, told, line, lang)) && !PrintedOunces.Agree(a * own, told.Number.Min * other) && d.Bought is null)
        {
            (string one, string two) = (Say(a * own) + " g", Say(told.Number.Min * other) + " g");
            (int From, int To)? own0 = AmountWords.In(line, a, d.Unit?.Unit, lang);
            int at = line.IndexOf(second, StringComparison.OrdinalIgnoreCase);
            (int From, int To)? behind = at >= 0 ? (at, at + second.Length) : AmountWords.In(line, told.Number.Min, told.Unit.Unit, lang, own0?.To ?? 0);
            Region? r = Region.Of(line, own0, behind);
            doubts.Add(AmountWords.Ask(number, line, $"“{line}”: {one} and {two} are told for one amount. Which is meant?", r?.Asked, d.Food, $"{Say(apart)} g", apart, (one, r?.First ?? one), (two, r?.Second ?? two)));
        }

        if (d is { Unit: { Unit: "ml" or "cl" or "dl" or "l", Base: { } holds }, Amount: { } poured, AmountMax: null, Second: { } also2, Bought: null } && CompoundAmounts.At(also2, 0, lang) is { Unit: { Unit: "ml" or "cl" or "dl" or "l", Base: { } beside }, Number.Max: null } volume && Math.Abs(poured * holds - volume.Number.Min * beside) is var off && off > 0.05 * poured * holds && Alone(line, volume, lang, AmountWords.In(line, poured, d.Unit.Unit, lang)?.To ?? 0) is var (v0, v1))
        {
            // "250 ml (½ litro)": one of the two is a slip
            (string one, string two) = (Say(poured * holds) + " ml", Say(volume.Number.Min * beside) + " ml");
            Region? r = Region.Of(line, AmountWords.In(line, poured, d.Unit.Unit, lang), (v0, v1));
            doubts.Add(AmountWords.Ask(number, line, $"“{line}”: {one} and {two} are told for one amount. Which is meant?", r?.Asked, d.Food, $"{Say(off)} ml", off, (one, r?.First ?? one), (two, r?.Second ?? two)));
        }

        if (MeasuredWeights.Clash(d, lang) is var (usual, cups))
        {
            int at = line.IndexOf(d.Second!, StringComparison.OrdinalIgnoreCase);
            Region? r = Region.Of(line, AmountWords.In(line, d.Amount, d.Unit?.Unit, lang), at < 0 ? null : (at, at + d.Second!.Length));
            doubts.Add(AmountWords.Ask(number, line, $"“{line}”: {cups} of it is about {Say(usual)} g, and {d.Second} is told. Which is meant?", r?.Asked, d.Food, $"{Say(Math.Abs(usual - d.Grams!.Value))} g", Math.Abs(usual - d.Grams.Value), (cups, r?.First ?? cups), (d.Second!, r?.Second ?? d.Second!)));
        }

        if (d is { Unit: { } taken, Amount: { } first, Second: null } && (Inside(d.Food, lang) ?? Beside(line, lang)) is { } also)
        {
            string both = $"{first.ToString("0.####", CultureInfo.InvariantCulture)} {taken.Unit}";
            double weight = d.Unit is { Base: { } b } ? first * b : first;
            (int From, int To)? own1 = AmountWords.In(line, first, taken.Unit, lang);
            int at = line.IndexOf(also, own1?.To ?? 0, StringComparison.Ordinal);
            if (own1 is var (from, to) && at > to && Apart(line, from, to, lang) is { } parted)
            {
                doubts.Add(new Doubt(number, $"“{line}” tells two amounts. Are they of two foods?", [new Candidate("of two foods", parted.Plain), new Candidate($"{both} of one", parted.Asked)], $"{also} of another food", weight) { Asked = parted.Asked });
            }
            else
            {
                Region? r = at < 0 ? null : Region.Of(line, own1, (at, at + also.Length));
                doubts.Add(AmountWords.Ask(number, line, $"“{line}” tells two amounts. Is {both} meant, or {also}?", r?.Asked, d.Food, $"{both} or {also}", weight, (both, r?.First ?? line), (also, r?.Second ?? also)));
            }
        }
    }

    /// <summary>True for grams told in ounces and nothing else beside them: one was reckoned from the other. Two weights in grams may be gross and net, and "(500 g meat)" is of what is in it.</summary>
    private static bool Translated(Draft d, Measure told, string line, string lang) =>
        (d.Unit?.Unit is "g" or "kg") != (told.Unit?.Unit is "g" or "kg") && (AmountWords.In(line, told.Number.Min, told.Unit?.Unit, lang, 1) is not var (from, to) || line[from - 1] != '(' || to >= line.Length || line[to] == ')');

    /// <summary>Where the second measure stands by itself: alone in its bracket, or behind a stroke. "(500 ml for the glaze)" is a part, and "(2 x 500 ml)" how it is sold.</summary>
    private static (int From, int To)? Alone(string line, Measure told, string lang, int from) =>
        AmountWords.In(line, told.Number.Min, told.Unit?.Unit, lang, from) is var (f, to) && f > 0 && line[f - 1] is '(' or '/' or '=' && (line[f - 1] != '(' || to < line.Length && line[to] == ')') ? (f, to) : null;

    /// <summary>Two amounts of one line with what stands between them, and what each answer leaves of it.</summary>
    private sealed record Region(string Asked, string First, string Second)
    {
        public static Region? Of(string line, (int From, int To)? one, (int From, int To)? two)
        {
            if (one is not var (f0, f1) || two is not var (s0, s1) || (f0 < s1 && s0 < f1))
            {
                return null;
            }

            bool swapped = s0 < f0;
            (int a0, int a1, int b0, int b1) = swapped ? (s0, s1, f0, f1) : (f0, f1, s0, s1);
            int cut = b0;
            while (cut > a1 && line[cut - 1] is ' ' or '(' or '/' or '=' or '[')
            {
                cut--;
            }

            int end = b1;
            while (end < line.Length && line[end] is ')' or ']' && line[cut..b0].AsSpan().IndexOfAny('(', '[') >= 0)
            {
                end++;
            }

            string between = line[a1..cut];
            (string kept, string other) = (line[a0..a1] + between, line[b0..b1] + between);
            return new Region(line[a0..end], swapped ? other : kept, swapped ? kept : other);
        }
    }

    /// <summary>"100 g icing sugar 100 g flour": the amounts with the comma that parts their foods; null when no food stands behind the second.</summary>
    private static (string Asked, string Plain)? Apart(string line, int from, int to, string lang)
    {
        (string plain, int last, int end) = ("", from, to);
        for (int i = to + 1; i < line.Length; i++)
        {
            if (char.IsAsciiDigit(line[i]) && line[i - 1] == ' ' && Amounts.At(line, i, lang) is { Unit.Kind: "mass" or "volume" or "spoon" } m && m.End + 2 < line.Length && char.IsLetter(line[Words.Places.Skip(line, m.End)..].FirstOrDefault()))
            {
                plain += line[last..i].TrimEnd().TrimEnd(',') + ", ";
                (last, end) = (i, m.End);
                i = m.End;
            }
        }

        return plain.Length == 0 ? null : (line[from..end].TrimEnd(), plain + line[last..end].TrimEnd());
    }

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
}
