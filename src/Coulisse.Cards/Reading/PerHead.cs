using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"3 noix de Saint-Jacques par pers." on a card for six: as many to each guest, and never so many in all. Where the card does not tell for how many it is, that is asked.</summary>
internal static class PerHead
{
    private const double AskedWeight = 200;
    private static readonly string[] Words = ["par personne", "par pers.", "par pers", "/personne", "/pers.", "/pers", "par convive", "per person", "per head", "per guest", "pro Person", "pro Pers.", "pro Kopf", "por persona", "por comensal", "por cabeza", "a persona", "per persona", "a testa", "per commensale"];

    /// <summary>The line without the words.</summary>
    /// <param name="s">The line.</param>
    /// <param name="lang">Language code.</param>
    /// <param name="words">The words; null when the line has none at its end.</param>
    public static string Take(string s, string lang, out string? words)
    {
        words = null;
        if (s.Length < 12 || !char.IsAsciiDigit(s[0]) || At(s) is not (> 3 and var at) || Amounts.At(s, 0, lang) is not { } m || m.End >= at || s.AsSpan(m.End, at - m.End).IndexOfAnyInRange('0', '9') >= 0)
        {
            return s;
        }

        words = s[at..];
        return s[..at].TrimmedEnd(" ,(");
    }

    /// <summary>The dish with such amounts told for all guests.</summary>
    public static Dish Of(Dish dish, List<Doubt> doubts)
    {
        if (!dish.Components.Any(c => c.Ingredients.Any(Is)))
        {
            return dish;
        }

        double[] heads = [.. dish.Yields.Where(y => y.Unit is "portion" or "person" or "serving" or "portions" or "servings" or "people").Select(y => y.Amount).Distinct()];
        if (heads is [> 1 and var n])
        {
            return dish with { Components = [.. dish.Components.Select(c => c.Ingredients.Any(Is) ? c with { Ingredients = [.. c.Ingredients.Select(l => Is(l) ? l with { Foods = [Times(l.Foods[0], n)] } : l)] } : c)] };
        }

        foreach (IngredientLine line in dish.Components.SelectMany(c => c.Ingredients).Where(Is))
        {
            Measure m = Amounts.At(line.Text, 0, dish.Language)!.Value;
            string food = line.Text[..At(line.Text)].TrimmedEnd(" ,(");
            string told = line.Text[..m.End].Trim();
            doubts.Add(new Doubt(line.Span.Line, $"“{line.Text}”: so much for each guest. How much is it for all?", [new Candidate("for all guests", "… " + food[m.Number.End..].TrimStart()), new Candidate($"{told} in all", food)], string.Create(CultureInfo.InvariantCulture, $"{told} or as many times that as there are guests"), AskedWeight) { Asked = line.Text });
        }

        return dish;
    }

    private static bool Is(IngredientLine line) => line.Foods is [{ Amount: not null, Use: { } use }] && At(use) == 0 && At(line.Text) > 0;

    private static FoodAmount Times(FoodAmount food, double n) => food with { Amount = food.Amount * n, AmountMax = food.AmountMax * n, Grams = food.Grams * n, GramsMax = food.GramsMax * n };

    /// <summary>Where the words stand that end a line; -1 where none do.</summary>
    private static int At(string s)
    {
        ReadOnlySpan<char> t = s.AsSpan().TrimEnd(" )");
        // Most lines end otherwise.
        if (t.Length < 5 || !Heads(t))
        {
            return -1;
        }

        foreach (string w in Words)
        {
            if (t.EndsWith(w, StringComparison.OrdinalIgnoreCase) && t.Length - w.Length is var at && (at == 0 || w[0] == '/' || !char.IsLetterOrDigit(t[at - 1])))
            {
                return at;
            }
        }

        return -1;
    }

    /// <summary>True where a word for a guest stands near the end.</summary>
    private static bool Heads(ReadOnlySpan<char> t)
    {
        ReadOnlySpan<char> end = t[^Math.Min(t.Length, 16)..];
        return end.Contains("pers", StringComparison.OrdinalIgnoreCase) || end.EndsWith("head", StringComparison.OrdinalIgnoreCase) || end.EndsWith("guest", StringComparison.OrdinalIgnoreCase) || end.EndsWith("Kopf", StringComparison.Ordinal) || end.EndsWith("cabeza", StringComparison.Ordinal) || end.EndsWith("testa", StringComparison.Ordinal) || end.Contains("con", StringComparison.Ordinal) || end.Contains("com", StringComparison.Ordinal);
    }
}
