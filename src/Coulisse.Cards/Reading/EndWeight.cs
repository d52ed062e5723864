using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"1 duck 2 kg", "1 side of trout 900g": the weight of what was counted, behind its name and without a comma. Of one it is the weight of it; of several it is asked whether each weighs so.</summary>
internal static class EndWeight
{
    private static readonly WordList Joints = new("of", "de", "à", "a", "je", "zu", "da", "at", "to", "or", "plus", "and", "x", "per", "von");

    /// <summary>Takes the weight off the end of the food; the words as they are when none stands there.</summary>
    public static string Take(string s, string lang, Draft d)
    {
        if (lang == "ja" || d.Amount is not (> 0 and < 100) || d.Unit is not (null or { Kind: "count" }) || d.Grams is not null || d.Second is not null)
        {
            return s;
        }

        int stop = s.IndexOf(", ", StringComparison.Ordinal) is var comma and > 0 ? comma : s.Length;
        int figure = -1;
        for (int i = 3; i < stop; i++)
        {
            if (char.IsAsciiDigit(s[i]) && s[i - 1] == ' ')
            {
                figure = i;
                break;
            }
        }

        if (figure < 0 || !char.IsLetter(s[0]) || !char.IsLetterOrDigit(s[figure - 2]) && s[figure - 2] != '-' || CompoundAmounts.At(s, figure, lang) is not { Unit: { Kind: "mass" } unit, Number.InWords: false } told)
        {
            return s;
        }

        Measure m = SameTwice.Of(s, told, lang) ?? told;
        string food = s[..figure].TrimmedEnd(" -");
        string rest = s[m.End..stop].Trim();
        if (food.Length < 3 || rest.Length > 0 && !OfOne.In(rest) && !Total(rest) || Lexicon.Longest("hedge", food, food.LastIndexOf(' ') + 1, 1, lang, out _) is not null || Joints.In(food[(food.LastIndexOf(' ') + 1)..]) || food.AsSpan().IndexOfAnyInRange('0', '9') >= 0)
        {
            return s;
        }

        if (OfOne.In(rest))
        {
            PartReader.Content(d, m.Number.Min, unit, m.Number.Max);
        }
        else
        {
            PartReader.SecondMeasure(d, m, s[figure..m.End]);
            d.EachOrAll = d.Amount > 1 && rest.Length == 0 ? s[figure..m.End].Trim() : null;
        }

        return food + s[stop..];
    }

    /// <summary>True for words that say a weight is of all pieces together.</summary>
    public static bool Total(string rest) => rest is "in total" or "total" or "in all" or "altogether" or "au total" or "insgesamt" or "en total" or "in totale" or "circa" or "environ" or "whole weight" or "total weight";
}
