using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"chill 30", "prove 45", "bake 12-15": a chef's own note, a verb of waiting and a bare figure with nothing behind it. Minutes where nothing else is possible; else it is asked, as silence would leave the wait out of the plan.</summary>
internal static class BareWaits
{
    private const double Fewest = 5;
    private const double Most = 90; // no oven is so cool, no wait so long in minutes
    private const double Hottest = 280;
    private const double AskedWeight = 250;
    private static readonly string[] Waits = ["chill", "rest", "prove", "proof", "stand", "soak", "steep", "infuse", "marinate", "drain", "reposer", "repos", "reposar", "reposo", "riposare", "riposo", "lievitare"];
    private static readonly string[] Cooks = ["bake", "roast", "simmer", "steam", "boil", "enfourner", "mijoter", "hornear", "infornare", "sobbollire"];

    private static readonly string[] Joints = ["and", "then", "before", "et", "puis", "y", "luego", "e", "poi"];

    /// <summary>The minutes at a place; null when the figure there is none, or may be another thing.</summary>
    public static (double Min, double Max, int Start, int End)? At(string s, int at, string lang) =>
        char.IsAsciiDigit(s[at]) && Told(s, at, lang) is var (n, cooks) && Sure(n, cooks) ? (n.Min, n.Max ?? n.Min, at, n.End) : null;

    /// <summary>One question for the first figure of each step that may be minutes, hours, degrees or pieces.</summary>
    public static IEnumerable<Doubt> Of(Dish dish)
    {
        foreach (Step step in dish.Components.SelectMany(c => c.Steps))
        {
            if (Open(step, dish.Language) is { } asked)
            {
                yield return asked;
            }
        }
    }

    private static Doubt? Open(Step step, string lang)
    {
        string s = step.Text;
        for (int i = 1; i < s.Length; i++)
        {
            if (!char.IsAsciiDigit(s[i]) || s[i - 1] != ' ' || Told(s, i, lang) is not var (n, cooks) || Sure(n, cooks) || n.Min > Hottest)
            {
                continue;
            }

            string figure = s[i..n.End];
            if (Read(step, figure))
            {
                continue;
            }

            int verb = s.LastIndexOf(' ', i - 2) + 1;
            string lead = s[verb..i];
            Candidate minutes = new(figure + " minutes", $"{lead}{figure} min");
            Candidate other = n.Min > Most ? new(figure + " °C", $"{lead}{figure} °C") : n.Min < Fewest ? new(figure + " hours", $"{lead}{figure} h") : new("so many pieces", $"{lead}{figure} pieces");
            return new Doubt(step.Span.Line, $"“{s}”: {figure} of what?", [minutes, other], string.Create(CultureInfo.InvariantCulture, $"{minutes.Text} or {other.Text}"), AskedWeight) { Asked = lead + figure };
        }

        return null;
    }

    private static bool Read(Step step, string figure) => step.Times.Any(t => t.Words.Contains(figure, StringComparison.Ordinal)) || step.Temperatures.Any(t => t.Words.Contains(figure, StringComparison.Ordinal));

    private static bool Sure(Numeral n, bool cooks) => n.Min >= Fewest && (n.Max ?? n.Min) <= Most && (n.Max is not null ? n.Max > n.Min : !cooks || n.Min % 5 == 0);

    /// <summary>A bare figure right behind a verb of waiting, at the end of its clause; with whether the verb is of a heat.</summary>
    private static (Numeral Figure, bool Cooks)? Told(string s, int at, string lang)
    {
        if (at < 4 || s[at - 1] != ' ' || !char.IsLetter(s[at - 2]) || lang is "ja" or "de")
        {
            return null;
        }

        int from = at - 1;
        while (from > 0 && at - from < 14 && char.IsLetter(s[from - 1]))
        {
            from--;
        }

        ReadOnlySpan<char> verb = s.AsSpan(from..(at - 1));
        bool cooks = Among(verb, Cooks);
        if (!cooks && !Among(verb, Waits) || Numbers.Range(s, at, lang) is not { InWords: false } n)
        {
            return null;
        }

        // "the rest 20" is what is left over; "bake 30 g", "rest 2 to 3 days" tell their unit.
        bool closes = n.End >= s.Length || s[n.End] is ',' or ';' or ')' || s[n.End] == '.' && (n.End + 1 == s.Length || s[n.End + 1] == ' ') || s[n.End] == ' ' && Joined(s, n.End + 1);
        return closes && !(from > 4 && Places.WordAt(s, from - 4, "the")) ? (n, cooks) : null;
    }

    // Asked at every figure of every step: nothing is made for the asking.
    private static bool Among(ReadOnlySpan<char> verb, string[] words)
    {
        foreach (string w in words)
        {
            if (verb.Equals(w, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Joined(string s, int at)
    {
        foreach (string w in Joints)
        {
            if (Places.WordAt(s, at, w) && Places.Skip(s, at + w.Length) is var next && next < s.Length && char.IsLetter(s[next]))
            {
                return true;
            }
        }

        return false;
    }
}
