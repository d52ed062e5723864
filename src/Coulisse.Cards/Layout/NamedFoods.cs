using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"Coating: egg, flour, breadcrumbs": a name parts are called by, and behind its colon foods without a figure, nearly all of them known to everybody. "Contains: milk, wheat" names no part.</summary>
internal static class NamedFoods
{
    private const int LongestLabel = 30;
    private const int Longest = 160;

    /// <summary>Adds the name and its foods; false for any other line.</summary>
    public static bool Cut(RawLine raw, string lang, List<Piece> into)
    {
        string s = Folding.Line(raw.Text).TrimEnd('.');
        int colon = s.Length > Longest ? -1 : s.IndexOf(':');
        if (colon is < 3 or > LongestLabel || s.AsSpan().IndexOfAnyInRange('0', '9') >= 0 || s.IndexOf(". ", colon, StringComparison.Ordinal) > 0 || Marks.Strip(s[..colon]).Trim() is not { Length: > 2 } label || !Parts.Called(label, lang) || FoodIds.Match(s[(colon + 1)..].Trim(), lang) is not null)
        {
            return false;
        }

        string[] foods = s[(colon + 1)..].Replace(Conjunction.Spaced(lang), ", ", StringComparison.OrdinalIgnoreCase).Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        int known = foods.Count(f => f.Length < 40 && FoodIds.Match(f, lang) is not null);
        if (foods.Length < 2 || known < Math.Max(2, foods.Length - 1) || foods.Any(f => f.Length >= 40 || Looks.Timed(f, lang)))
        {
            return false;
        }

        into.Add(new Piece(PieceKind.Heading, label, raw.Span, 2));
        into.AddRange(foods.Select(f => new Piece(PieceKind.Item, f, raw.Span)));
        return true;
    }
}
