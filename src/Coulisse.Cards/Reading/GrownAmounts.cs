using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"牛肉200g", "人参1/2本", "塩少々": a Japanese amount grown onto the name of its food, without a gap. "10分煮る", "材料4人分", "手順2" are none.</summary>
internal static class GrownAmounts
{
    private const int Longest = 30;
    private static readonly string[] Uses = ["少々", "適量", "適宜", "少量"];

    /// <summary>True where the line is a name and the amount on it, and nothing else but a bracket.</summary>
    public static bool In(string s)
    {
        if (s.Length is < 3 or > Longest || !Places.IsJapanese(s[0]) || s.AsSpan().IndexOfAny('、', '。') >= 0)
        {
            return false;
        }

        int figure = s.AsSpan().IndexOfAnyInRange('0', '9');
        if (figure < 0)
        {
            return Array.Exists(Uses, u => s.EndsWith(u, StringComparison.Ordinal) && s.Length > u.Length && FoodIds.Match(s[..^u.Length], "ja") is not null);
        }

        return figure > 0 && Places.IsJapanese(s[figure - 1]) && s[figure - 1] is not ('約' or '第') && Clock.At(s, figure, "ja") is null
            && Amounts.At(s, figure, "ja") is { Unit.Kind: "mass" or "volume" or "count" or "container" or "spoon" or "cup" } m && (m.End >= s.Length || s[m.End] is '(' && s[^1] == ')');
    }
}
