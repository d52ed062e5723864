using System.Buffers;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A weight to each kilogram: "Sel 18 g/kg", "18 g Nitritpökelsalz/kg", "10 g Meersalz pro kg Fleisch". It is a share of a thousand and no amount: read flat, ten kilograms would be cured with the salt of one.</summary>
internal static class KiloRates
{
    private static readonly SearchValues<char> Money = SearchValues.Create("0123456789€£$¥");
    private static readonly string[] Joints = ["/kg", "/ kg", "/kilo", "/Kilo", "pro kg", "pro Kilo", "je kg", "je Kilo", "per kg", "per kilo", "par kg", "par kilo", "por kg", "por kilo", "al kg", "al chilo", "per chilo"];

    /// <summary>The figure in grams, where the amount ends, and where the words of the kilogram stand.</summary>
    public readonly record struct Rate(double Grams, int From, int AmountEnd, int Joint, int End);

    /// <summary>The rate a line tells; null when it tells none.</summary>
    public static Rate? In(string s, string lang)
    {
        if (!s.Contains("kg", StringComparison.Ordinal) && !s.Contains("ilo", StringComparison.Ordinal))
        {
            return null;
        }

        foreach (string joint in Joints)
        {
            int at = joint[0] == '/' ? s.IndexOf(joint, StringComparison.Ordinal) : Places.FindWord(s, joint);
            int end = at + joint.Length;
            if (at < 3 || end < s.Length && char.IsLetterOrDigit(s[end]))
            {
                continue;
            }

            // The weight stands right before the kilogram, or in front of the food.
            for (int i = s.AsSpan(0, at).IndexOfAnyInRange('0', '9'); i >= 0 && i < at; i++)
            {
                if (char.IsAsciiDigit(s[i]) && (i == 0 || !char.IsLetterOrDigit(s[i - 1]) && s[i - 1] is not ('.' or ',' or '-' or '–')) && Amounts.At(s, i, lang) is { Unit: { Kind: "mass", Unit: "g" or "mg", Base: { } b }, Number: { InWords: false, Max: null } } m && m.End <= at && (i == 0 || Places.Skip(s, m.End) >= at))
                {
                    return new Rate(m.Number.Min * b, i, m.End, at, end);
                }
            }
        }

        return null;
    }

    /// <summary>Takes the rate off a line: its share and, where it is named, what it is of.</summary>
    public static string Take(string s, string lang, Draft d)
    {
        if (In(s, lang) is not var (grams, from, amountEnd, joint, end))
        {
            return s;
        }

        bool between = Places.Skip(s, amountEnd) < joint;
        int what = PartReader.Of(s, Places.Skip(s, end), lang);
        string behind = s[what..].Trimmed(" ).,");
        string food = between ? s[PartReader.Of(s, Places.Skip(s, amountEnd), lang)..joint].Trim() : s[..from].TrimmedEnd(" ,:-(");
        string rest = "";
        if (food.Length == 0)
        {
            // "18 g/kg salt": what stands behind is the food itself
            (food, behind) = (behind, "");
        }
        else if (behind.Length > 0 && ShareBases.At("on " + behind, 0, behind: true) == 0 && FoodIds.Match(behind, lang) is null)
        {
            // No base anybody knows: words about the food.
            (rest, behind) = (s[Places.Skip(s, end)..].TrimmedStart(" ,"), "");
        }

        // "500 g Rinderhack 9,90 €/kg" is a price.
        if (food.Length < 2 || !char.IsLetter(food[0]) || food.AsSpan().ContainsAny(Money))
        {
            return s;
        }

        d.Percent = Math.Round(grams / 10, 6);
        d.PercentOf = behind.Length > 0 ? ShareBases.Name(behind) : null;
        d.Tokens?.Add(new ReadToken(s[from..end], "share", System.FormattableString.Invariant($"{d.Percent} %")));
        return rest.Length > 0 ? $"{food}, {rest}" : food;
    }
}
