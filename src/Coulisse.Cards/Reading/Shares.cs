using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Shares of a base: "2 % salt on flour".</summary>
internal static class Shares
{
    /// <summary>"2% salt (on flour)", "0.8% agar (of total)": a base in brackets is put back into the line, where a share is read.</summary>
    public static string OnBracket(string s, List<string> brackets)
    {
        if (brackets.Count == 0 || s.Length == 0 || !s.Contains('%'))
        {
            return s;
        }

        // Where the food stands first, only the sign itself may end the line: "Malt extract 3% (on flour)".
        bool front = char.IsAsciiDigit(s[0]);
        for (int i = 0; i < brackets.Count && (front || s[^1] == '%'); i++)
        {
            string b = brackets[i];
            bool any = front && (b.StartsWith("on ", StringComparison.OrdinalIgnoreCase) || b.StartsWith("of ", StringComparison.OrdinalIgnoreCase));
            if (any || ShareBases.At(b, 0, behind: true) > 0)
            {
                brackets.RemoveAt(i);
                return any ? $"{s} on {b[3..]}" : $"{s} {b}";
            }
        }

        return s;
    }

    /// <summary>"Salt, 2.2% of flour weight", "Sugar 12-15 % of fruit weight": the share behind the food. The line itself when there is none.</summary>
    public static string Behind(string s, string lang, Draft d)
    {
        int sign = s.IndexOf('%');
        int what = sign > 3 ? Base(s, Places.Skip(s, sign + 1)) : 0;
        if (what == 0)
        {
            return sign > 3 || s.EndsWith("ppm", StringComparison.OrdinalIgnoreCase) ? DosedShares.Behind(s, lang, d) : s;
        }

        int from = sign;
        while (from > 0 && (char.IsAsciiDigit(s[from - 1]) || s[from - 1] is ' ' or '.' or '-' || s[from - 1] == ',' && from > 1 && char.IsAsciiDigit(s[from]) && char.IsAsciiDigit(s[from - 2])))
        {
            from--;
        }

        // "Salt - 2% of flour": the dash parts the food from its share.
        string food = s[..from].TrimmedEnd(" ,:-");
        if (food.Length < 3 || Numbers.Range(s, from + s.AsSpan(from).Length - s.AsSpan(from).TrimStart(" -").Length, lang) is not { InWords: false } n)
        {
            return s;
        }

        d.Percent = n.Min;
        d.PercentOf = ShareBases.Name(s[what..]);
        d.Tokens?.Add(new ReadToken(s[from..], "share", System.FormattableString.Invariant($"{n.Min} % of {d.PercentOf}")));
        return food;
    }

    /// <summary>Where the base of a share begins whose sign stands right before; 0 when none does. English "of" needs no known base.</summary>
    private static int Base(string s, int i) => Places.WordAt(s, i, "of") && i + 3 < s.Length ? i + 3 : ShareBases.At(s, i, behind: true);

    /// <summary>"2% salt (on flour)", "2 % salt on flour", "2,2 % Salz auf Gesamtmehl", "20% of the syrup": a share of a base.</summary>
    public static string? Percent(string s, string lang, Draft d)
    {
        if (Numbers.Single(s, 0, lang) is not { InWords: false } n)
        {
            return null;
        }

        int i = Places.Skip(s, n.End);
        if (i >= s.Length || s[i] != '%')
        {
            return null;
        }

        int j = Places.Skip(s, i + 1);
        int of = Places.WordAt(s, j, "of the") ? j + 6 : Places.WordAt(s, j, "of") ? j + 2 : j;
        d.Percent = n.Min;
        if (of > j)
        {
            d.PercentOf = s[of..].Trim();
            return s[of..].Trim();
        }

        int on = Math.Max(s.IndexOf(" on ", StringComparison.OrdinalIgnoreCase), s.IndexOf("(on ", StringComparison.OrdinalIgnoreCase));
        if (on < 0)
        {
            on = s.IndexOf("(of ", StringComparison.OrdinalIgnoreCase);
        }

        if (on > 0)
        {
            d.PercentOf = ShareBases.Name(s[(on + 4)..]);
            // "1.8 % on the meat" names no food
            return s[j..Math.Max(j, on)].Trim();
        }

        for (int gap = s.IndexOf(' ', j); gap > j; gap = s.IndexOf(' ', gap + 1))
        {
            if (ShareBases.At(s, gap + 1, behind: false) is var what and > 0)
            {
                d.PercentOf = ShareBases.Name(s[what..]);
                return s[Math.Min(PartReader.Of(s, j, lang), gap)..gap].Trimmed(" ,");
            }
        }

        d.PercentOf = Places.HasAny(s, "hydration", "Hydratation") ? "flour" : null;
        if (d.PercentOf is not null)
        {
            return s[j..];
        }

        // "1.2 % salt": a share of the flour or the mass; "38 % cream" is a grade of the food.
        if (DosedShares.Is(s[j..]))
        {
            return s[PartReader.Of(s, j, lang)..];
        }

        d.Percent = null;
        return null;
    }
}
