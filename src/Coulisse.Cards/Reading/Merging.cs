using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Puts the parts of a line together again: two figures of one food, a part on top for another use, two parts of one fruit.</summary>
internal static class Merging
{
    private static readonly string[] Toppings = ["extra", "more", "en plus", "supplémentaires", "zusätzlich", "más", "in più"];

    /// <summary>Adds a part to those before it: a second figure of the same food is summed or kept beside, "plus extra for the tin" is a use.</summary>
    public static void Merge(List<Draft> drafts, Draft d, string lang)
    {
        if (drafts.Count == 0)
        {
            drafts.Add(d);
            return;
        }

        Draft last = drafts[^1];
        if (d.Amount is null && Joins.Extra(d.Food) is { } extra)
        {
            last.Use = last.Use is null ? extra : last.Use + "; " + extra;
            last.Tokens?.Add(new ReadToken(d.Food, "use", extra));
            return;
        }

        if (d.Amount is not null && last.Food.Length > 0 && Purpose(d, lang) is { } purpose)
        {
            // "100 g butter + 20 g for the tin": the second is bought with the first and is a use of its own
            d.Use = purpose;
            d.Food = last.Food;
            drafts.Add(d);
            return;
        }

        if (d.Food.Length == 0 && last is { Unit: null, AmountMax: null, Amount: { } ofOne, Preparation: { } onePart } && d is { Unit: null, AmountMax: null, Amount: { } ofOther, Preparation: { } otherPart } && onePart != otherPart && IsPart(onePart, lang) && IsPart(otherPart, lang))
        {
            // "zest of 1 lemon + juice of 2": two parts of the same fruit, of which the most are needed
            last.Preparation = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{onePart} of {ofOne}, {otherPart} of {ofOther}");
            last.Amount = Math.Max(ofOne, ofOther);
            return;
        }

        bool noFood = d.Food.Length == 0 || d.Food.StartsWith("for ", StringComparison.OrdinalIgnoreCase) || d.Amount is not null && Uses.Begins(d.Food, lang);
        bool lastBare = last.Food.Length == 0 && last.Amount is not null;
        if ((noFood || lastBare) && d.Amount is { } more && last.Amount is { } had && last.AmountMax is null && d.AmountMax is null)
        {
            Sum(drafts, last, d, had, more, lastBare, lang);
            return;
        }

        if (noFood && d.Amount is null)
        {
            last.Use ??= d.Use;
            if (d.Preparation is { } p)
            {
                last.Prepare(p);
            }

            return;
        }

        // "salt, pepper, sumac – to taste": what is said of the last holds for all before it
        for (int k = drafts.Count - 1; k >= 0 && drafts[k] is { Amount: null, Use: null } && d is { Amount: null, Use: not null, Fronted: false }; k--)
        {
            drafts[k].Use = d.Use;
        }

        drafts.Add(d);
    }

    /// <summary>"for the tin", "extra pour le moule": what an amount without a food of its own is for; null for a food.</summary>
    private static string? Purpose(Draft d, string lang)
    {
        string words = d.Food;
        if (d.Use is not null && Array.Exists(Toppings, w => w.Equals(words, StringComparison.OrdinalIgnoreCase)))
        {
            return d.Use;
        }

        if (d.Use is { } use && words.Length > 0 && Tails.OnlyPreparation(words, lang))
        {
            // "plus 20 g melted for brushing"
            d.Prepare(words);
            return use;
        }

        foreach (string more in Toppings)
        {
            if (Places.WordAt(words, 0, more))
            {
                words = words[Places.Skip(words, more.Length)..];
                break;
            }
        }

        return !Uses.Begins(words, lang) ? null : d.Use is null ? words : d.Use + ", " + words;
    }

    private static bool IsPart(string words, string lang) => Lexicon.Longest("part", words, 0, 5, lang, out int end) is not null && end >= words.Length;

    private static void Sum(List<Draft> drafts, Draft last, Draft d, double had, double more, bool lastBare, string lang)
    {
        if (lastBare)
        {
            last.Food = d.Food;
            last.Preparation ??= d.Preparation;
            last.Use ??= d.Use;
            last.Alternative ??= d.Alternative;
        }

        if (lastBare && last.Unit is null && d.Unit is { Kind: "mass" or "volume" })
        {
            // "200+50 g sugar": the unit is told once
            last.Unit = d.Unit;
        }

        if (last.Unit?.Unit == d.Unit?.Unit)
        {
            last.Amount = had + more;
        }
        else if (last.Unit?.Base is { } a && d.Unit?.Base is { } b && last.Unit.Kind == d.Unit.Kind)
        {
            last.Amount = had + more * b / a;
        }
        else if (!AddedSpoons.Weighed(last, d, lang))
        {
            // "¾ cup and 2 tablespoons butter": two measures of one food stay two amounts.
            d.Food = last.Food;
            d.Preparation ??= last.Preparation;
            drafts.Add(d);
        }
    }
}
