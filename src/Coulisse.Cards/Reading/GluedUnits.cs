namespace Coulisse.Cards.Reading;

/// <summary>"200gcaster sugar", "1,5kgMehl": the blank between unit and food was left out. Taken apart only where what is left is a food everybody knows and the letters together are none.</summary>
internal static class GluedUnits
{
    private const int ShortestFood = 4;
    private static readonly string[] Units = ["kg", "ml", "cl", "dl", "g", "l"];

    /// <summary>The line with the blank put in; the same string for any other line.</summary>
    public static string Apart(string s, string lang)
    {
        int i = 0;
        while (i < s.Length && (char.IsAsciiDigit(s[i]) || i > 0 && s[i] is '.' or ','))
        {
            i++;
        }

        if (i == 0 || i + ShortestFood + 1 > s.Length || !char.IsAsciiLetter(s[i]) || !char.IsAsciiDigit(s[i - 1]))
        {
            return s;
        }

        foreach (string unit in Units)
        {
            int food = i + unit.Length;
            if (s.AsSpan(i).StartsWith(unit, StringComparison.Ordinal) && food + ShortestFood <= s.Length && char.IsLetter(s[food]) && Food(s[food..]) is { } name && FoodIds.Match(name, lang) is not null && FoodIds.Match(s[i..(food + name.Length)], lang) is null)
            {
                return $"{s[..food]} {s[food..]}";
            }
        }

        return s;
    }

    private static string Food(string s) => s.AsSpan().IndexOfAny(",;(") is var end && end > 0 ? s[..end].TrimEnd() : s;
}
