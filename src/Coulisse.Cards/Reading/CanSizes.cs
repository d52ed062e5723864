using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"#10 can tomatoes", "1 No. 2 1/2 can peaches", "2 #303 cans": the figure behind the sign is the size of the can, never an amount.</summary>
internal static class CanSizes
{
    /// <summary>What is left behind the can; null when no size of a can stands here.</summary>
    public static string? Take(string s, string lang, Draft d)
    {
        double count = 1;
        int i = 0;
        if (s.Length > 0 && char.IsAsciiDigit(s[0]) && Numbers.Single(s, 0, lang) is { } n)
        {
            count = n.Min;
            i = Places.Skip(s, n.End);
        }

        int sign = i;
        if (i < s.Length && s[i] == '#')
        {
            i++;
        }
        else if (Places.WordAt(s, i, "No"))
        {
            i = Places.Skip(s, i + 2 < s.Length && s[i + 2] == '.' ? i + 3 : i + 2);
        }
        else
        {
            return null;
        }

        if (i >= s.Length || !char.IsAsciiDigit(s[i]) || Numbers.Single(s, i, lang) is not { } size || Lexicon.LongestUnit(s, Places.Skip(s, size.End), lang, out int end) is not { Kind: "container" } can)
        {
            return null;
        }

        d.Amount = count;
        d.Unit = can;
        d.Graded(s[sign..size.End]);
        d.Tokens?.Add(new ReadToken(s[sign..size.End], "grade", "size of the can"));
        return s[Places.Skip(s, PartReader.Of(s, Places.Skip(s, end), lang))..];
    }
}
