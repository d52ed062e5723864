using System.Buffers;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A weight to each kilogram, litre or hundred grams: "Sel 18 g/kg", "18 g Nitritpökelsalz/kg", "10 g Meersalz pro kg Fleisch", "Sugar 30 g per litre", "Agar 1.2 g per 100 g liquid". It is a share and no amount: read flat, ten kilograms would be cured with the salt of one. A litre is taken for a kilogram, which holds for what is watery; of oil and spirits such a line says too little.</summary>
internal static class KiloRates
{
    private static readonly SearchValues<char> Money = SearchValues.Create("€£$¥");
    private static readonly string[] Leads = ["/", "/ ", "pro ", "je ", "per ", "par ", "por ", "al ", "au ", "auf "];
    private static readonly Base[] Bases =
    [
        new("kg", "kilogram", 1000), new("kilo", "kilogram", 1000), new("chilo", "kilogram", 1000), new("1 kg", "kilogram", 1000), new("1kg", "kilogram", 1000),
        new("l", "litre", 1000), new("ltr", "litre", 1000), new("litre", "litre", 1000), new("liter", "litre", 1000), new("litro", "litre", 1000), new("1 l", "litre", 1000), new("1 litre", "litre", 1000), new("1 Liter", "litre", 1000),
        new("100 g", "hundred grams", 100), new("100g", "hundred grams", 100), new("100 ml", "hundred millilitres", 100), new("100ml", "hundred millilitres", 100),
    ];

    private static readonly Base[] Joints = NewJoints();
    private static readonly WordList Lighter = new("oil", "oils", "huile", "Öl", "aceite", "olio", "vodka", "rum", "gin", "spirit", "alcohol", "alcool", "Alkohol", "alcol", "honey", "miel", "Honig", "miele");
    private static readonly string[] Signs = ["no.", "no", "n°", "nº", "Nr.", "nr."];

    /// <summary>The figure in grams to a kilogram, where the amount ends, where the words of the base stand, and what they call it.</summary>
    public readonly record struct Rate(double Grams, int From, int AmountEnd, int Joint, int End, string Base);

    /// <summary>What a rate is told by, with its joint before it or not.</summary>
    private readonly record struct Base(string Words, string Name, double Grams);

    private static Base[] NewJoints()
    {
        Base[] joints = new Base[Leads.Length * Bases.Length];
        int n = 0;
        foreach (string lead in Leads)
        {
            foreach (Base b in Bases)
            {
                joints[n++] = b with { Words = lead + b.Words };
            }
        }

        return joints;
    }

    // Asked of every line: most have no joint, and one pass over their letters says so.
    private static bool Any(string s)
    {
        for (int i = 0; i < s.Length - 1; i++)
        {
            if ((s[i] | 0x20) is '/' or 'p' or 'j' or 'a' && (i == 0 || s[i] == '/' || !char.IsAsciiLetterOrDigit(s[i - 1])) && JointAt(s.AsSpan(i)))
            {
                return true;
            }
        }

        return false;
    }

    private static bool JointAt(ReadOnlySpan<char> s)
    {
        foreach (string lead in Leads)
        {
            if (s.StartsWith(lead, StringComparison.OrdinalIgnoreCase))
            {
                foreach (Base b in Bases)
                {
                    if (s[lead.Length..].StartsWith(b.Words, StringComparison.OrdinalIgnoreCase))
                    {
                        return true;
                    }
                }
            }
        }

        return false;
    }

    /// <summary>The rate a line tells; null when it tells none.</summary>
    public static Rate? In(string s, string lang)
    {
        if (!Any(s))
        {
            return null;
        }

        foreach ((string joint, string name, double of) in Joints)
        {
            int at = joint[0] == '/' ? s.IndexOf(joint, StringComparison.OrdinalIgnoreCase) : Places.FindWord(s, joint);
            int end = at + joint.Length;
            if (at < 3 || end < s.Length && (char.IsLetterOrDigit(s[end]) || s[end] == '\''))
            {
                continue;
            }

            // The weight stands right before the kilogram, or in front of the food.
            for (int i = s.AsSpan(0, at).IndexOfAnyInRange('0', '9'); i >= 0 && i < at; i++)
            {
                if (char.IsAsciiDigit(s[i]) && (i == 0 || !char.IsLetterOrDigit(s[i - 1]) && s[i - 1] is not ('.' or ',' or '-' or '–' or '#')) && Amounts.At(s, i, lang) is { Unit: { Kind: "mass", Unit: "g" or "mg", Base: { } b }, Number: { InWords: false, Max: null } } m && m.End <= at && (i == 0 || Places.Skip(s, m.End) >= at))
                {
                    return new Rate(m.Number.Min * b * 1000 / of, i, m.End, at, end, name);
                }
            }
        }

        return null;
    }

    /// <summary>The rate that a head tells for the whole list under it, "Cure per kg of meat", and what it is of; null for any other. A price is none.</summary>
    public static (string Base, double Grams, string? Of)? Heading(string s, string lang)
    {
        if (!Any(s) || s.AsSpan().ContainsAny(Money))
        {
            return null;
        }

        foreach ((string joint, string name, double of) in Joints)
        {
            int at = joint[0] == '/' ? s.IndexOf(joint, StringComparison.OrdinalIgnoreCase) : Places.FindWord(s, joint);
            int end = at + joint.Length;
            if (at < 0 || end < s.Length && (char.IsLetterOrDigit(s[end]) || s[end] == '\'') || LineKinds.HasAmount(s[..at], lang))
            {
                continue;
            }

            string behind = s[PartReader.Of(s, Places.Skip(s, end), lang)..].Trimmed(" ).,:");
            return (name, of, behind.Length > 1 && char.IsLetter(behind[0]) ? ShareBases.Name(behind) : null);
        }

        return null;
    }

    /// <summary>Takes the rate off a line: its share and, where it is named, what it is of.</summary>
    public static string Take(string s, string lang, Draft d)
    {
        if (In(s, lang) is not var (grams, from, amountEnd, joint, end, name))
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

        if (food.Length < 2 || !char.IsLetter(food[0]) || !Named(food) || name[0] is 'l' or 'h' && Lighter.In(s[end..]))
        {
            return s;
        }

        d.Percent = Math.Round(grams / 10, 6);
        d.PercentOf = behind.Length > 0 ? ShareBases.Name(behind) : null;
        d.Tokens?.Add(new ReadToken(s[from..end], "share", System.FormattableString.Invariant($"{d.Percent} %")));
        return rest.Length > 0 ? $"{food}, {rest}" : food;
    }

    /// <summary>True for a name: "Rinderhack 500 g 9 €" is none. A grade may hold figures, "Nitrite salt (0.6 %)", "Cure #2", "curing salt no. 1".</summary>
    private static bool Named(string food)
    {
        int depth = 0;
        for (int i = 0; i < food.Length; i++)
        {
            depth += food[i] == '(' ? 1 : food[i] == ')' ? -1 : 0;
            if (Money.Contains(food[i]) || depth <= 0 && char.IsAsciiDigit(food[i]) && food[i - 1] != '#' && !Array.Exists(Signs, n => food.AsSpan(0, i).TrimEnd().EndsWith(n, StringComparison.OrdinalIgnoreCase)))
            {
                return false;
            }
        }

        // "beef mince (12.50/kg)": a bracket that the rate stands in is a price.
        return depth == 0;
    }
}
