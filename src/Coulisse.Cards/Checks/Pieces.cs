using Coulisse.Cards.Words;

namespace Coulisse.Cards.Checks;

/// <summary>How many it says it makes against how many the method makes.</summary>
internal static class Pieces
{
    private static readonly string[] Portions = ["glasses", "ramekins", "moulds", "molds", "bowls", "plates", "cups", "verrines", "ramequins", "Gläser", "vasos", "bicchieri"];

    public static IEnumerable<Remark> Of(Dish dish)
    {
        return dish.Yields.Select(y => Against(y, dish.Components.SelectMany(c => c.Steps), dish.Language))
            .Concat(dish.Components.SelectMany(c => c.Makes.Select(y => Against(y, c.Steps, dish.Language)))).OfType<Remark>();
    }

    /// <summary>The first step that makes another number than the yield says; null when none does.</summary>
    private static Remark? Against(CardYield y, IEnumerable<Step> steps, string lang)
    {
        if (y.AmountMax is not null || y.Amount < 2 || y.Unit is "g" or "kg" or "ml" or "l")
        {
            return null;
        }

        foreach (Step s in steps)
        {
            if (Made(s.Text, y.Unit, lang) is { } n && Math.Abs(n - y.Amount) > 0.01)
            {
                return new Remark(s.Span.Line, "yield mismatch", System.FormattableString.Invariant($"The card says {y.Amount:0.##} {y.Unit}, this step makes {n:0.##}: “{s.Text}”."));
            }
        }

        return null;
    }

    /// <summary>"in 6 glasses", "20 dumplings": a count of the same thing, at the end of the work.</summary>
    private static double? Made(string text, string unit, string lang)
    {
        bool portions = unit == "portions";
        foreach (string noun in portions ? Portions : [unit])
        {
            int at = noun.Length > 3 ? Places.FindWord(text, noun) : -1;
            int space = at > 1 ? text.LastIndexOf(' ', at - 2) : -1;
            if (at < 2)
            {
                continue;
            }

            bool into = !portions || space < 1 || text[..space].EndsWith(" in", StringComparison.OrdinalIgnoreCase) || text[..space].EndsWith("into", StringComparison.OrdinalIgnoreCase) || text[..space].EndsWith("between", StringComparison.OrdinalIgnoreCase) || text[..space].EndsWith("dans", StringComparison.OrdinalIgnoreCase);
            // "4 bars at a time" and "each of 3 bars" are no yield.
            // "8 × 7 bars" is a cut, and its product the count.
            bool cut = space > 0 && text[..space].TrimEnd() is [.., '×' or 'x'];
            if (into && !cut && char.IsAsciiDigit(text[space + 1]) && Numbers.Single(text, space + 1, lang) is { } n && !text.AsSpan(at).Contains("at a time", StringComparison.OrdinalIgnoreCase) && !Places.HasAny(text, "first", "each tray", "per tray"))
            {
                return n.Min;
            }
        }

        return null;
    }
}
