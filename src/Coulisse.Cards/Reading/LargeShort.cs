using Coulisse.Cards.Words;
using Coulisse.Matter.Foods;

namespace Coulisse.Cards.Reading;

/// <summary>"1 gr. Zwiebel", "2 gr. Eier", "1 gr. Bund Petersilie": the German short for "große" before what is counted; "1 gr. Safran" and "200 gr. Mehl" are grams.</summary>
internal static class LargeShort
{
    /// <summary>Nobody lists more large pieces of one food, and few foods that have pieces are weighed by fewer grams.</summary>
    private const double Most = 12;

    /// <summary>True where the word at a place, read as grams, is a size.</summary>
    public static bool Is(string s, int at, int end, UnitWord unit, Numeral number, string lang)
    {
        if (lang != "de" || unit.Unit != "g" || end - at != 3 || s[end - 1] != '.' || s[at] != 'g' || s[at + 1] != 'r' || number.Min > Most || number.Min is not 0.5 && number.Min % 1 != 0)
        {
            return false;
        }

        int noun = Places.Skip(s, end);
        if (noun >= s.Length || !char.IsUpper(s[noun]))
        {
            return false;
        }

        string food = s[noun..Places.WordEnd(s, noun)];
        return Lexicon.LongestUnit(s, noun, lang, out _) is { Kind: "count" or "container" or "word" }
            || FoodIds.Match(food, lang) is { } match && FoodTable.Default.Find(match.Id) is { } known && known.Units.Keys.Any(k => k is "piece" or "fruit" or "large");
    }
}
