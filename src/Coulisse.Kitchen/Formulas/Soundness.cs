using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;

namespace Coulisse.Kitchen.Formulas;

/// <summary>What keeps a card's figures from being built on: each fault with its line. A card that fails here gives no mixture, no panel and no list of ingredients.</summary>
public static class Soundness
{
    /// <summary>Every fault; empty when figures may be built.</summary>
    public static ImmutableArray<Problem> Of(WeighedDish dish)
    {
        ArgumentNullException.ThrowIfNull(dish);
        List<Problem> found = [];
        if (Takes.Circle(dish.Dish) is { } circle)
        {
            found.Add(circle);
        }

        foreach (WeighedComponent component in dish.Components)
        {
            foreach (WeighedLine line in component.Lines)
            {
                if (line.Grade != WeightGrade.Unknown && line.Grams <= 0)
                {
                    found.Add(new Problem("WGH008", line.Source.Span.Line, $"“{line.Source.Text}” weighs nothing.", "Give it a weight above 0 g, or take the line out."));
                }

                if (line.Food.Grade is { } grade && grade.Contains('%', StringComparison.Ordinal) && Percent(grade) is > 100)
                {
                    found.Add(new Problem("MIX008", line.Source.Span.Line, $"“{line.Source.Text}”: {grade} is more than the whole.", "A share is 100 % at most."));
                }
            }

            double shares = component.Lines.Where(l => l.Food.Percent is not null && IsWhole(l.Food.PercentOf)).Sum(l => l.Food.Percent!.Value);
            if (shares > 100.5)
            {
                WeighedLine last = component.Lines.Last(l => l.Food.Percent is not null && IsWhole(l.Food.PercentOf));
                found.Add(new Problem("MIX008", last.Source.Span.Line, string.Create(CultureInfo.InvariantCulture, $"The shares of the whole in “{component.Component.Name}” sum to {shares:0.#} %."), "Shares of one whole are 100 % together at most."));
            }

            found.AddRange(component.Component.Steps.Where(s => s.LossPercent is { } loss && !(loss is >= 0 and < 100)).Select(s => new Problem("MIX010", s.Span.Line, string.Create(CultureInfo.InvariantCulture, $"A loss of {s.LossPercent:0.#} % cannot be."), "A loss is 0 % or more and less than all of it.")));
            found.AddRange(component.Component.Steps.Where(s => NegativeLoss(s.Text)).Select(s => new Problem("MIX010", s.Span.Line, $"“{s.Text}” states a loss below 0.", "A loss is 0 % or more; write a gain as what is taken up.")));
        }

        return [.. found];
    }

    private static bool IsWhole(string? of) => of is not null && (of.Contains("total", StringComparison.OrdinalIgnoreCase) || of.Contains("whole", StringComparison.OrdinalIgnoreCase) || of.Contains("batch", StringComparison.OrdinalIgnoreCase));

    private static double? Percent(string grade)
    {
        string digits = grade[..grade.IndexOf('%', StringComparison.Ordinal)].Trim().Replace(',', '.');
        int start = digits.LastIndexOf(' ') + 1;
        return double.TryParse(digits[start..], NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : null;
    }

    // "loses -5 %", "loss: −5 %": the reader takes the figure without its sign, so the words are looked at.
    private static bool NegativeLoss(string text)
    {
        string t = text.Replace('−', '-').ToLowerInvariant();
        foreach (string word in (string[])["loses", "lose", "loss of", "loss:", "loss"])
        {
            int at = t.IndexOf(word, StringComparison.Ordinal);
            string rest = at < 0 ? "" : t[(at + word.Length)..].TrimStart(' ', ':');
            if (rest.Length > 1 && rest[0] == '-' && char.IsDigit(rest[1]))
            {
                return true;
            }
        }

        return false;
    }
}
