namespace Coulisse.Kitchen.Needs;

/// <summary>Which items of a price list a food may be: all its words stand in the item's name. More than one is a question, never a guess.</summary>
internal static class PriceMatch
{
    public static string[] Items(string food, PriceList prices)
    {
        HashSet<string> words = Words(food);
        string[] all = [.. prices.Rows.Select(r => r.Item).Distinct().Where(i => words.IsSubsetOf(Words(i)))];
        string[] equal = [.. all.Where(i => words.SetEquals(Words(i)))];
        return words.Count == 0 ? [] : equal.Length == 1 ? equal : all;
    }

    private static HashSet<string> Words(string text) => [.. text.ToLowerInvariant()
        .Split([' ', ',', '(', ')', '%', ';', '/'], StringSplitOptions.RemoveEmptyEntries)];
}
