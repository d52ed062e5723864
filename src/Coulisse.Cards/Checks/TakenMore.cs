using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Checks;

/// <summary>More is taken than there is: a step that takes 300 g of 200 listed, 500 g of a part that makes 300 g, half and three quarters of one food.</summary>
internal static class TakenMore
{
    private const double Slack = 1.01;
    private static readonly string[] Besides = ["another", "extra", "more", "additional", "encore", "weitere", "weiteren", "otro", "otros", "altri"];
    private static readonly (string Word, double Share)[] Shares = [("three quarters of the ", 0.75), ("three-quarters of the ", 0.75), ("two thirds of the ", 2 / 3.0), ("two-thirds of the ", 2 / 3.0), ("half of the ", 0.5), ("half the ", 0.5), ("a third of the ", 1 / 3.0), ("one third of the ", 1 / 3.0), ("a quarter of the ", 0.25), ("one quarter of the ", 0.25)];

    public static IEnumerable<Remark> Of(Dish dish)
    {
        // A method written once for several lists stands under one of them: all of the dish is there to be taken.
        SpanTable<Weight> listed = Listed(dish);
        foreach (Component c in dish.Components)
        {
            SpanTable<double> shares = new(anyCase: true, ofText: true);
            foreach (Step s in c.Steps.Where(s => !s.Operations.IsEmpty))
            {
                foreach ((string head, double grams) in Amounted(s.Text, listed, dish.Language))
                {
                    if (listed.TryGetValue(head, out Weight weight) && weight.Grams is { } there && grams > there * Slack)
                    {
                        yield return new Remark(s.Span.Line, "divided uses", System.FormattableString.Invariant($"The step takes {grams:0.##} g of {head}, {there:0.##} g are listed: “{s.Text}”."));
                    }
                }

                foreach ((string word, double share) in Shares)
                {
                    for (int at = Places.FindWord(s.Text, word.TrimEnd()); at >= 0; at = Places.FindWord(s.Text, word.TrimEnd(), at + word.Length))
                    {
                        int food = at + word.Length;
                        int end = food < s.Text.Length ? Places.WordEnd(s.Text, food) : food;
                        string head = food < end ? Head(s.Text[food..end]) : "";
                        if (listed.Contains(head) && !s.Text[..at].EndsWith("other ", StringComparison.OrdinalIgnoreCase))
                        {
                            double taken = shares.At(head, head) += share;
                            if (taken is > 1.05 and < 5 && taken - share <= 1.05)
                            {
                                yield return new Remark(s.Span.Line, "divided uses", System.FormattableString.Invariant($"The steps up to here take {taken * 100:0} % of the {head}: “{s.Text}”."));
                            }
                        }
                    }
                }
            }
        }

        foreach (Component made in dish.Components.Where(c => c.Name.Length > 0 && c.Makes.Any(m => m.Unit is "g" or "kg" && m.AmountMax is null)))
        {
            CardYield makes = made.Makes.First(m => m.Unit is "g" or "kg");
            double there = makes.Amount * (makes.Unit == "kg" ? 1000 : 1);
            (IngredientLine Line, double Grams)[] taken = [.. dish.Components.SelectMany(c => c.Ingredients).SelectMany(l => l.Foods.Where(f => f.FromComponent == made.Name && f.Grams is not null).Select(f => (l, f.Grams!.Value)))];
            if (taken.Sum(t => t.Grams) is var sum && sum > there * Slack)
            {
                yield return new Remark(taken[^1].Line.Span.Line, "divided uses", System.FormattableString.Invariant($"{sum:0.##} g of “{made.Name}” are taken; it makes {there:0.##} g."));
            }
        }
    }

    /// <summary>What is listed under the last word of a name; null where a line of it has no weight.</summary>
    private static SpanTable<Weight> Listed(Dish dish)
    {
        SpanTable<Weight> all = new(anyCase: true, ofText: true);
        foreach (FoodAmount f in dish.Components.SelectMany(c => c.Ingredients).Where(l => l.Kind == LineKind.Ingredient).SelectMany(l => l.Foods))
        {
            string head = Head(f.Food[(f.Food.LastIndexOf(' ') + 1)..]);
            double? grams = f.Use is null && f.FromComponent is null ? f.GramsMax ?? f.Grams : null;
            if (head.Length > 0)
            {
                Weight sum = new(all.TryGetValue(head, out Weight before) ? before.Grams + grams : grams);
                all.At(head, head) = sum;
            }
        }

        return all;
    }

    /// <summary>"300 g sugar", "300 g of the caster sugar": an amount with a listed food right behind it.</summary>
    private static IEnumerable<(string Head, double Grams)> Amounted(string s, SpanTable<Weight> listed, string lang)
    {
        for (int i = 0; i < s.Length; i++)
        {
            if (!char.IsAsciiDigit(s[i]) || (i > 0 && (char.IsLetterOrDigit(s[i - 1]) || s[i - 1] is '.' or ',' or '-' or '–')) || Amounts.At(s, i, lang) is not { Unit: { Kind: "mass", Base: { } b }, Number.Max: null } m)
            {
                continue;
            }

            bool besides = Places.HasAny(s[Math.Max(0, i - 14)..i], Besides);
            int at = Places.Skip(s, m.End);
            for (int words = 0; !besides && words < 4 && at < s.Length && char.IsLetter(s[at]); words++)
            {
                int end = Places.WordEnd(s, at);
                if (listed.Contains(Head(s[at..end])))
                {
                    yield return (Head(s[at..end]), m.Number.Min * b);
                    break;
                }

                at = end < s.Length && s[end] == ' ' ? end + 1 : s.Length;
            }

            i = Math.Max(i, m.End - 1);
        }
    }

    private static string Head(string word) => word.Length > 3 ? word.TrimEnd('s').ToLowerInvariant() : word.ToLowerInvariant();

    /// <summary>What is listed of a food; null where a line of it has no weight.</summary>
    private readonly record struct Weight(double? Grams);
}
