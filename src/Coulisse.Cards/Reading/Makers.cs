using System.Text;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A maker's name: a capitalised word before a percentage or, in lower-case languages, in the middle or at the end without a preposition.</summary>
internal static class Makers
{
    /// <summary>Takes it from the food.</summary>
    public static void Take(Draft d, string lang)
    {
        if (lang is "de" or "ja" || d.Amount is null || lang == "en" && !d.Food.Contains('%') || !d.Food.AsSpan().ContainsAnyInRange('A', 'Z') && Ascii.IsValid(d.Food))
        {
            return;
        }

        string[] w = d.Food.Split(' ');
        if (w.Length < 2)
        {
            return;
        }

        bool percent = d.Food.Contains('%');
        int first = -1;
        int last = -1;
        for (int i = lang == "en" ? 0 : 1; i < w.Length; i++)
        {
            bool name = w[i].Length >= 4 && (lang == "en" || Lexicon.Word("variety", Folding.Key(w[i]), lang) is null) && char.IsUpper(w[i][0]) && char.IsLower(w[i][^1]) && char.IsLower(w[i][1]) && w[i].AsSpan().IndexOfAnyInRange('0', '9') < 0;
            bool joint = i > 0 && w[i - 1] is "de" or "di" or "du" or "d'" or "del" or "della" or "des" or "la" or "à" or "al" or "alla" or "Saint" or "Sainte" or "St" or "St." or "Ste" or "San" or "Santa" or "Sant'";
            if (name && !joint && (lang != "en" || (percent && i + 1 < w.Length && w[i + 1].Contains('%'))))
            {
                first = first < 0 ? i : first;
                last = i;
            }
            else if (first >= 0)
            {
                break;
            }
        }

        if (first < 0)
        {
            return;
        }

        if (!w[..first].Concat(w[(last + 1)..]).Any(k => k.Length > 1 && char.IsLetter(k[0])))
        {
            // "Cream 35 %": without the word no food is left.
            return;
        }

        string brand = string.Join(' ', w[first..(last + 1)]);
        if (FoodIds.Match(brand, lang) is not null)
        {
            // "Milk 3.5% fat", "Cream 36% fat": the word before the percent is the food itself.
            return;
        }

        d.Tokens?.Add(new ReadToken(brand, "brand", brand));
        d.Food = string.Join(' ', w[..first].Concat(w[(last + 1)..]));
    }
}
