using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Two lists that a page set side by side: two names over a wide gap, and under them amounts left and right. Read as lines, the right list would be swallowed by the left one.</summary>
internal static class TwoLists
{
    private const int FewestRows = 2;
    private const int FewestFronted = 3;
    private const string Gap = "   ";

    /// <summary>Adds both lists, one behind the other; false when there are none. <paramref name="end"/> is the place of the first line behind them.</summary>
    public static bool Cut(List<RawLine> lines, int at, string lang, List<Piece> into, out int end)
    {
        end = at;
        if (!lines[at].Text.Contains(Gap, StringComparison.Ordinal) || Halves(lines[at].Text) is not { Right: { } right } heads || !Name(heads.Left) || !Name(right))
        {
            return false;
        }

        List<(string Left, string? Right, Span Span)> rows = [];
        int i = at + 1;
        while (i < lines.Count && lines[i].Block - lines[at].Block is 0 or 1 && lines[i].Block == lines[at + 1].Block && Halves(lines[i].Text) is { } row && (row.Right is null || Amounted(row.Right, lang)) && (Amounted(row.Left, lang) || row.Right is null && rows.Count > 0))
        {
            rows.Add((row.Left, row.Right, lines[i].Span));
            i++;
        }

        // A line without a right half, and far in, belongs to the right list: none is guessed here, so such a page is left as it is.
        if (rows.Count(r => r.Right is not null) < FewestRows || !AllAmounted(rows, lang))
        {
            return false;
        }

        into.Add(new Piece(PieceKind.Heading, heads.Left, lines[at].Span, 2));
        into.AddRange(rows.Select(r => new Piece(PieceKind.Item, r.Left, r.Span)));
        into.Add(new Piece(PieceKind.Heading, right, lines[at].Span, 2));
        into.AddRange(rows.Where(r => r.Right is not null).Select(r => new Piece(PieceKind.Item, r.Right!, r.Span)));
        end = i;
        return true;
    }

    /// <summary>"Soy sauce 200 ml        Mirin 60 ml": two items of one list in every line of its block, each with its amount behind it. With the amounts in front it may be two lists, and is asked.</summary>
    public static bool Pairs(List<RawLine> lines, int at, string lang, List<Piece> into, out int end)
    {
        end = at;
        List<(string Text, Span Span)> items = [];
        int pairs = 0;
        while (end < lines.Count && lines[end].Block == lines[at].Block && Halves(lines[end].Text) is { } row && (row.Right is not null || pairs > 0) && Behind(row.Left, lang) && (row.Right is null || Behind(row.Right, lang)))
        {
            items.Add((row.Left, lines[end].Span));
            if (row.Right is { } right)
            {
                items.Add((right, lines[end].Span));
                pairs++;
            }

            end++;
        }

        if (pairs < FewestRows)
        {
            return Fronted(lines, at, lang, into, out end);
        }

        into.AddRange(items.Select(i => new Piece(PieceKind.Item, i.Text, i.Span)));
        return true;
    }

    /// <summary>"2 tbsp oil          1 tsp oregano": one list in two columns, each half with its amount in front or a food everybody knows without one. The same food left and right is one food in two sizes.</summary>
    private static bool Fronted(List<RawLine> lines, int at, string lang, List<Piece> into, out int end)
    {
        end = at;
        List<(string Left, string? Right, Span Span)> rows = [];
        int known = 0;
        while (end < lines.Count && lines[end].Block == lines[at].Block && Halves(lines[end].Text) is { } row && (row.Right is not null || rows.Count > 0) && Amounted(row.Left, lang) && (row.Right is null || Amounted(row.Right, lang) || Bare(row.Right, lang)))
        {
            if (row.Right is { } right)
            {
                string food = Food(right, lang);
                if (food.Equals(Food(row.Left, lang), StringComparison.OrdinalIgnoreCase))
                {
                    return false;
                }

                known += Reading.FoodIds.Match(food, lang) is not null || Bare(right, lang) || food.IndexOf(',') is > 2 and var cut && Reading.FoodIds.Match(food[..cut], lang) is not null ? 1 : 0;
            }

            rows.Add((row.Left, row.Right, lines[end].Span));
            end++;
        }

        int pairs = rows.Count(r => r.Right is not null);
        if (pairs < FewestFronted || known * 2 < pairs)
        {
            return false;
        }

        into.AddRange(rows.Select(r => new Piece(PieceKind.Item, r.Left, r.Span)));
        into.AddRange(rows.Where(r => r.Right is not null).Select(r => new Piece(PieceKind.Item, r.Right!, r.Span)));
        return true;
    }

    /// <summary>"salt and pepper": foods everybody knows, without an amount.</summary>
    private static bool Bare(string s, string lang) => s.Length is > 2 and < 40 && char.IsLetter(s[0]) && s.AsSpan().IndexOfAnyInRange('0', '9') < 0 && Array.TrueForAll(s.Replace(" & ", ", ", StringComparison.Ordinal).Replace(Conjunction.Spaced(lang), ", ", StringComparison.OrdinalIgnoreCase).Split(", "), f => Reading.FoodIds.Match(f, lang) is not null);

    /// <summary>What stands behind the amount in front.</summary>
    private static string Food(string s, string lang) => Reading.Amounts.At(s, 0, lang) is { } m && Places.Skip(s, m.End) is var from && from < s.Length ? s[Reading.PartReader.Of(s, from, lang)..] : s;

    /// <summary>A food, and behind it a weight, a volume or a spoon.</summary>
    private static bool Behind(string s, string lang)
    {
        Reading.Draft d = new(why: false);
        return s.Length > 4 && char.IsLetter(s[0]) && Reading.Amounts.At(s, 0, lang) is null && Reading.BackAmount.Take(s, lang, d) is { Length: > 1 } food && !food.Contains(',') && d is { Amount: not null, Unit.Kind: "mass" or "volume" or "spoon" or "cup" };
    }

    /// <summary>What stands left and right of the one wide gap of a line; null for a line with more gaps.</summary>
    private static (string Left, string? Right)? Halves(string s)
    {
        int gap = s.IndexOf(Gap, StringComparison.Ordinal);
        if (gap < 0)
        {
            return s.Length > 0 && !s.Contains('|') ? (Folding.Line(s), null) : null;
        }

        string right = s[gap..].Trim();
        return gap == 0 || right.Contains(Gap, StringComparison.Ordinal) || s.Contains('|') ? null : (Folding.Line(s.AsSpan(0, gap)), Folding.Line(right));
    }

    private static bool AllAmounted(List<(string Left, string? Right, Span Span)> rows, string lang) => rows.TrueForAll(r => Amounted(r.Left, lang));

    private static bool Name(string s) => s.AsSpan().IndexOfAnyInRange('0', '9') < 0 && Looks.Heading(s) && !TableColumns.Opens(s);

    /// <summary>An amount in front, and a food behind it.</summary>
    private static bool Amounted(string s, string lang) => s.Length > 3 && (char.IsAsciiDigit(s[0]) || Numbers.Vulgar(s[0]) > 0) && Reading.Amounts.At(s, 0, lang) is { } m && m.End + 1 < s.Length && char.IsLetter(s[^1]) && Looks.Amounted(s, lang);
}
