using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Roast 20 min per 500 g plus 20 min": a time that goes by the weight. Asked, with what the heaviest line of its part would take.</summary>
internal static class Rates
{
    private const double AskedWeight = 150;
    private static readonly string[] Pers = ["per", "for every", "for each", "pro", "je", "par", "pour", "por", "cada", "al", "per ogni", "ogni"];
    private static readonly string[] Kilos = ["kilo", "chilo", "kg"];

    /// <summary>One question for each step whose only time is such a rate.</summary>
    public static IEnumerable<Doubt> Of(Dish dish)
    {
        foreach (Component c in dish.Components)
        {
            foreach (Step s in c.Steps)
            {
                if (s.Times.IsEmpty && In(s.Text, dish.Language) is { } rate)
                {
                    FoodAmount? heaviest = c.Ingredients.SelectMany(l => l.Foods).Where(f => f.Grams > 0).MaxBy(f => f.Grams);
                    string told = heaviest is { Grams: { } g } && g >= rate.Grams ? string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(rate.Minutes * g / rate.Grams + rate.Plus):0} min") : "";
                    string asked = s.Text[rate.From..rate.To];
                    Candidate[] ways = told.Length > 0 ? [new Candidate($"{told} for the {heaviest!.Food}", told), new Candidate("another time", "… min")] : [new Candidate("… min", "… min"), new Candidate("as written", asked)];
                    yield return new Doubt(s.Span.Line, $"“{s.Text}”: the time goes by the weight. How long is it for this one?", [.. ways], told.Length > 0 ? $"{told} or another time" : "no time or the right one", AskedWeight) { Asked = asked };
                }
            }
        }
    }

    /// <summary>Minutes for so many grams, and what comes on top; null where no time goes by the weight.</summary>
    private static (double Minutes, double Grams, double Plus, int From, int To)? In(string s, string lang)
    {
        for (int i = 0; i < s.Length; i++)
        {
            if (!char.IsAsciiDigit(s[i]) || i > 0 && char.IsLetterOrDigit(s[i - 1]) || Clock.At(s, i, lang) is not { } t)
            {
                continue;
            }

            int k = Places.Skip(s, t.End);
            if (Array.Find(Pers, w => Places.WordAt(s, k, w)) is { } per && Weight(s, Places.Skip(s, k + per.Length), lang) is var (grams, end))
            {
                (double plus, int to) = Plus(s, end, lang);
                return (t.Max, grams, plus, i, to);
            }

            i = t.End - 1;
        }

        return null;
    }

    private static (double Grams, int End)? Weight(string s, int at, string lang)
    {
        foreach (string kilo in Kilos)
        {
            if (Places.WordAt(s, at, kilo))
            {
                return (1000, at + kilo.Length);
            }
        }

        foreach (string pound in (ReadOnlySpan<string>)["lb", "pound"])
        {
            if (Places.WordAt(s, at, pound))
            {
                return (453.592, at + pound.Length);
            }
        }

        return at < s.Length && char.IsAsciiDigit(s[at]) && Amounts.At(s, at, lang) is { Unit: { Kind: "mass", Base: { } b } } m && m.Number.Min > 0 ? (m.Number.Min * b, m.End) : null;
    }

    /// <summary>"plus 20 min", "and 20 minutes over".</summary>
    private static (double Minutes, int End) Plus(string s, int end, string lang)
    {
        int i = end < s.Length && s[end] == ',' ? Places.Skip(s, end + 1) : Places.Skip(s, end);
        foreach (string w in (ReadOnlySpan<string>)["plus", "and", "+", "et", "und", "más", "più", "y", "e"])
        {
            if (i < s.Length && (w == "+" ? s[i] == '+' : Places.WordAt(s, i, w)))
            {
                int figure = Places.Skip(s, i + w.Length);
                figure = Places.WordAt(s, figure, "another") ? Places.Skip(s, figure + "another".Length) : figure;
                return figure < s.Length && char.IsAsciiDigit(s[figure]) && Clock.At(s, figure, lang) is { } more ? (more.Max, more.End) : (0, end);
            }
        }

        return (0, end);
    }
}
