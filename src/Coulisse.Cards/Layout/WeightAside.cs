using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"The joint - pork loin, rind scored, 2.5 kg - rub it with …", "the joint (pork loin, 2.5 kg)": what something is, told between dashes or in brackets with its weight last. What follows is no food of that weight.</summary>
internal static class WeightAside
{
    private const int Longest = 80;

    /// <summary>The food before such a weight; null where the weight stands otherwise.</summary>
    public static string? Before(string s, int at, int end)
    {
        int close = Places.Skip(s, end);
        bool dashed = close + 1 < s.Length && s[close] == '-' && s[close + 1] == ' ' && close > end;
        if (at < 3 || s[at - 2] != ',' || !dashed && !(close < s.Length && s[close] == ')'))
        {
            return null;
        }

        int open = dashed ? s.LastIndexOf(" - ", at - 3, StringComparison.Ordinal) : s.LastIndexOf('(', at - 3);
        int from = open < 0 ? -1 : open + (dashed ? 3 : 1);
        return from > 3 && at - from is > 4 and < Longest && s.IndexOf(". ", from, at - from, StringComparison.Ordinal) < 0 && char.IsLetter(s[from]) && s.AsSpan(from, at - from).IndexOfAnyInRange('0', '9') < 0 ? s[from..(at - 2)].Trim() : null;
    }
}
