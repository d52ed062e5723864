using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Checks;

/// <summary>An ingredient used in parts: the parts the steps name against the listed amount.</summary>
internal static class DividedUses
{
    private static readonly string[] Divided = ["divided", "in parts", "en deux fois", "geteilt", "dividido", "diviso", "split"];

    public static IEnumerable<Remark> Of(Dish dish)
    {
        foreach (Component c in dish.Components)
        {
            foreach (IngredientLine l in c.Ingredients)
            {
                if (l.Foods.Length == 1 && Told(l, dish.Language) is { } told)
                {
                    yield return told;
                }

                if (l.Foods.Length != 1 || l.Foods[0] is not { Grams: { } listed, GramsMax: null } f || !(Places.HasAny(l.Text, Divided)))
                {
                    continue;
                }

                string head = f.Food.Split(' ')[^1].TrimEnd('s');
                double sum = 0;
                int parts = 0;
                bool open = false;
                foreach (Step s in c.Steps)
                {
                    foreach ((double grams, bool rest) in Parts(s.Text, head, dish.Language))
                    {
                        sum += grams;
                        parts++;
                        open |= rest && grams == 0;
                    }
                }

                if (parts > 1 && (open ? sum > listed * 1.005 : Math.Abs(sum - listed) > Math.Max(0.5, listed * 0.005)))
                {
                    yield return new Remark(l.Span.Line, "divided uses", System.FormattableString.Invariant($"“{l.Text}”: {listed:0.##} g are listed, the steps use {sum:0.##} g of it{(open ? " and a rest" : "")}."));
                }
            }
        }
    }

    /// <summary>"180 g butter, 120 g for the dough and 40 g for the filling": shares the line itself tells that do not come to its amount.</summary>
    private static Remark? Told(IngredientLine l, string lang)
    {
        if (l.Foods[0] is not { Preparation: { } words, Amount: { } whole, AmountMax: null } f || words.AsSpan().IndexOfAnyInRange('0', '9') is not (>= 0 and var first)
            || DividedShares.In(words, first, lang) is not { Purposes: true, Rest: false, Amounts.Count: > 1 } shares || shares.Sum(f.Unit is null or "piece" ? null : Lexicon.Unit(f.Unit, lang)) is not { } sum || DividedShares.Same(sum, whole))
        {
            return null;
        }

        string unit = f.Unit is null or "piece" ? "" : " " + f.Unit;
        return new Remark(l.Span.Line, "divided uses", System.FormattableString.Invariant($"“{l.Text}”: {whole:0.##}{unit} are told, its uses come to {sum:0.##}{unit}."));
    }

    /// <summary>"60 g for the cake, 40 g for the top": the amounts of a bracket that say what each is for.</summary>
    public static bool Told(string inside, string lang) => Shares(inside, lang).Count > 1;

    private static List<Measure> Shares(string inside, string lang)
    {
        List<Measure> shares = [];
        for (int i = 0; i < inside.Length && i < 200; i++)
        {
            if (char.IsAsciiDigit(inside[i]) && (i == 0 || inside[i - 1] is ' ' or ',' or ';' or '+') && Amounts.At(inside, i, lang) is { Unit: not null } m)
            {
                if (!Places.HasAny(inside[m.End..Math.Min(inside.Length, m.End + 9)], "for", "to", "in", "pour", "für", "zum", "para", "per"))
                {
                    return [];
                }

                shares.Add(m);
                i = m.End;
            }
        }

        return shares;
    }

    /// <summary>"65 g of the sugar", "the remaining 30 g", "the rest of the sugar" in one step; grams 0 for a rest without a figure.</summary>
    private static IEnumerable<(double Grams, bool Remainder)> Parts(string s, string head, string lang)
    {
        bool named = s.Contains(head, StringComparison.OrdinalIgnoreCase);
        for (int i = 0; i < s.Length; i++)
        {
            if (!char.IsAsciiDigit(s[i]) || (i > 0 && (char.IsLetterOrDigit(s[i - 1]) || s[i - 1] is '.' or ',')) || Amounts.At(s, i, lang) is not { Unit: { Kind: "mass", Base: { } b } } m)
            {
                continue;
            }

            string after = s[m.End..Math.Min(s.Length, m.End + 28)];
            bool ours = after.Contains(head, StringComparison.OrdinalIgnoreCase);
            bool rest = i > 10 && Places.HasAny(s[Math.Max(0, i - 14)..i], "remaining", "other", "restants", "restlichen", "restante");
            if (ours || rest)
            {
                yield return (m.Number.Min * b, rest);
            }

            i = Math.Max(i, m.End - 1);
        }

        if (named && Places.HasAny(s, "rest of the " + head, "remaining " + head, "the rest", "reste"))
        {
            yield return (0, true);
        }
    }
}
