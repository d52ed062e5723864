using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A list in brackets behind its name: "Dressing (3 tbsp oil, 1 tbsp vinegar, salt)". The name is what the foods are for; it has no amount of its own.</summary>
internal static class SubList
{
    private const int LongestName = 40;

    /// <summary>The foods of the bracket; null when the line is no such list.</summary>
    /// <param name="s">The line.</param>
    /// <param name="lang">Language code.</param>
    /// <param name="whole">The name before the bracket.</param>
    public static List<string>? Parts(string s, string lang, out string? whole)
    {
        whole = null;
        int open = s.IndexOf('(');
        if (open < 0)
        {
            return Labelled(s, lang, out whole);
        }

        string t = s.TrimmedEnd(" .");
        if (open is < 3 or > LongestName || !char.IsLetter(s[0]) || s.AsSpan(0, open).IndexOfAnyInRange('0', '9') >= 0 || t[^1] != ')' || t.LastIndexOf('(') != open)
        {
            return null;
        }

        List<string>? pieces = Pieces(t[(open + 1)..^1], lang);
        whole = pieces is null ? null : s[..open].Trimmed(" :");
        return pieces;
    }

    /// <summary>"crust: 200 g flour, 100 g butter, 1 egg": the same behind a colon, where the name is no food and foods everybody knows follow.</summary>
    private static List<string>? Labelled(string s, string lang, out string? whole)
    {
        whole = null;
        int colon = s.IndexOf(": ", StringComparison.Ordinal);
        if (colon is < 3 or > LongestName || !char.IsLetter(s[0]) || s.AsSpan(0, colon).IndexOfAnyInRange('0', '9') >= 0 || Pieces(s[(colon + 2)..], lang) is not { } pieces || FoodIds.Match(s[..colon], lang) is not null)
        {
            return null;
        }

        foreach (string p in pieces)
        {
            if (Amounts.At(p, 0, lang) is not { } m || FoodIds.Match(p[PartReader.Of(p, Places.Skip(p, m.End), lang)..], lang) is null)
            {
                return null;
            }
        }

        whole = s[..colon];
        return pieces;
    }

    private static List<string>? Pieces(string inside, string lang)
    {
        string[] pieces = inside.Split([", ", "; ", " + "], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        int amounts = pieces.Count(p => Amounts.At(p, 0, lang) is { Unit: { Kind: not ("length" or "container") } } m && PartReader.Of(p, Places.Skip(p, m.End), lang) + 2 < p.Length && char.IsLetter(p[PartReader.Of(p, Places.Skip(p, m.End), lang)]));
        if (pieces.Length < 2 || amounts < 2 || amounts * 3 < pieces.Length * 2)
        {
            return null;
        }

        return [.. pieces];
    }
}
