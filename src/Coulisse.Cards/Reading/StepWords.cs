using System.Collections.Immutable;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>What the words of a step say beside times and temperatures: kit, until when, how thick, what is left at the end.</summary>
internal static class StepWords
{
    private static readonly WordList KitWords = new("jug blender", "blender", "blend", "water bath", "bath", "oven", "bake", "roast", "sieve", "mandoline", "dehydrator", "blast chill", "fridge", "freezer", "pan", "simmer", "boil", "reduce", "seal", "piping bags", "probe", "mixer");
    private static readonly string[] KitNames = ["jug blender", "jug blender", "jug blender", "water bath", "water bath", "oven", "oven", "oven", "sieve", "mandoline", "dehydrator", "blast chiller", "fridge", "freezer", "pan", "hob", "hob", "hob", "vacuum sealer", "piping bag", "probe thermometer", "mixer"];
    private static readonly string[] EndsAt = ["you should have ", "weigh about ", "weighs about ", "weighing about ", "they weigh ", "it weighs ", "should weigh ", "so roughly ", "so about ", "when it weighs ", "drain: ", "reduce to ", "reduced to ", "reduce it to ", "boil down to ", "boil it down to ", "the pan plus ", "doit peser ", "doivent peser ", "pèse environ ", "il doit rester ", "soll etwa ", "wiegt etwa ", "wiegen etwa ", "debe pesar ", "pesa unos ", "deve pesare ", "pesa circa "];
    private static readonly Beginnings FirstOfEnds = new(EndsAt);
    private static readonly string[] Untils = ["until ", "jusqu'à ce que ", "hasta que ", "finché ", "bis "];
    private static readonly Beginnings FirstOfUntils = new(Untils);
    private static readonly string[] Losses = ["loses about ", "lose about ", "expect to lose ", "loses "];
    private static readonly Beginnings FirstOfLosses = new(Losses);

    public static ImmutableArray<string> Kit(string s)
    {
        // Most sentences have none of them.
        ImmutableArray<string>.Builder? kit = null;
        for (int k = KitWords.Next(s, 0); k >= 0; k = KitWords.Next(s, k + 1))
        {
            if (kit?.Contains(KitNames[k]) != true && Places.FindWord(s, KitWords[k]) >= 0)
            {
                (kit ??= ImmutableArray.CreateBuilder<string>()).Add(KitNames[k]);
            }
        }

        return kit?.ToImmutable() ?? [];
    }

    public static string? Until(string s)
    {
        foreach (string w in FirstOfUntils.MayIn(s) ? Untils : [])
        {
            int at = s.IndexOf(w, StringComparison.OrdinalIgnoreCase);
            if (at >= 0)
            {
                return s[(at + w.Length)..ClauseEnd(s, at)].Trimmed(" ,");
            }
        }

        return null;
    }

    /// <summary>End of a clause; the point of a decimal ends none.</summary>
    private static int ClauseEnd(string s, int from)
    {
        for (int i = from; i < s.Length; i++)
        {
            if (s[i] is ';' or ')' || s[i] == '.' && !(i + 1 < s.Length && char.IsAsciiDigit(s[i - 1]) && char.IsAsciiDigit(s[i + 1])))
            {
                return i;
            }
        }

        return s.Length;
    }

    public static double? Thickness(string s)
    {
        if (!s.Contains("mm", StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }

        for (int i = 0; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) && (i == 0 || !char.IsLetterOrDigit(s[i - 1]) && s[i - 1] is not '.') && Numbers.Single(s, i, "en") is { } n)
            {
                int j = Places.Skip(s, n.End);
                bool mm = Places.WordAt(s, j, "mm");
                string after = mm ? s[Math.Min(s.Length, j + 2)..Math.Min(s.Length, j + 10)] : "";
                string before = mm ? s[Math.Max(0, i - 16)..i] : "";
                if (mm && (after.StartsWith(" thick", StringComparison.Ordinal) || after.StartsWith(" deep", StringComparison.Ordinal) || before.Contains("thicker than", StringComparison.Ordinal) || before.EndsWith("level, about ", StringComparison.Ordinal)))
                {
                    return n.Min;
                }

                i = Math.Max(i, n.End - 1);
            }
        }

        return null;
    }

    public static double? End(string s)
    {
        if (FirstOfEnds.MayIn(s))
        {
            foreach (string w in EndsAt)
            {
                int at = s.IndexOf(w, StringComparison.OrdinalIgnoreCase);
                if (at >= 0 && Amounts.At(s, at + w.Length, "en") is { Unit: { Kind: "mass", Base: { } b } } m)
                {
                    return m.Number.Min * b;
                }
            }
        }

        // a weight that is a sentence of its own: "688 g."
        foreach (Range part in s.AsSpan().SplitAny('.', ';'))
        {
            ReadOnlySpan<char> told = s.AsSpan(part).Trim();
            if (told.Length is > 0 and < 12 && char.IsAsciiDigit(told[0]) && told.ToString() is var sentence && Amounts.At(sentence, 0, "en") is { Unit: { Kind: "mass", Base: { } b } } m && m.End >= sentence.Length)
            {
                return m.Number.Min * b;
            }
        }

        return null;
    }

    public static double? Loss(string s)
    {
        foreach (string w in FirstOfLosses.MayIn(s) ? Losses : [])
        {
            int at = s.IndexOf(w, StringComparison.OrdinalIgnoreCase);
            if (at >= 0 && Numbers.Single(s, at + w.Length, "en") is { } n && Places.Skip(s, n.End) is var j && j < s.Length && s[j] == '%')
            {
                return n.Min;
            }
        }

        return null;
    }
}
