using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A whole list in one paragraph: "Flour 400 g, icing sugar 150 g, butter 200 g, eggs 100 g.", "2 heads little gem, 100 g pea shoots, 1 pomegranate, vinaigrette (see below)". Three amounts at least, every piece but one a food with its own; work ("Add 200 g flour, …") is no list.</summary>
internal static class RunInLists
{
    private const int Longest = 400;
    private const int FewestFoods = 3;

    /// <summary>Adds the foods; false for any other line.</summary>
    public static bool Cut(RawLine raw, string lang, List<Piece> into)
    {
        ReadOnlySpan<char> typed = raw.Text;
        if (lang == "ja" || typed.Length is < 24 or > Longest || typed.Count(", ") < FewestFoods - 1 || typed.IndexOfAnyInRange('0', '9') is < 0 or > 40 || typed.IndexOfAny(":•|") >= 0)
        {
            return false;
        }

        string s = Folding.Line(raw.Text).TrimEnd('.');
        if (s.Length < 24 || !char.IsLetterOrDigit(s[0]) || s.Contains(". ", StringComparison.Ordinal) || s.Contains('°') || Looks.Timed(s, lang) || Looks.Work(s, lang))
        {
            return false;
        }

        List<string> foods = [.. ListLine.Pieces(s)];
        int told = foods.Count(f => Told(f, lang));
        if (told < FewestFoods || told < foods.Count - 1 || !Told(foods[0], lang) || foods.Count(f => f.AsSpan().IndexOfAnyInRange('0', '9') >= 0) > told || told < foods.Count && !Named(foods.Find(f => !Told(f, lang))!, lang))
        {
            return false;
        }

        into.AddRange(foods.Select(f => new Piece(PieceKind.Item, f, raw.Span)));
        return true;
    }

    /// <summary>"400 g flour", "flour 400 g", "1 pomegranate".</summary>
    private static bool Told(string f, string lang)
    {
        if (Amounts.At(f, 0, lang) is { Number.InWords: false } m)
        {
            int food = PartReader.Of(f, Places.Skip(f, m.End), lang);
            return m.Unit is not { Kind: "length" } && food + 2 < f.Length && char.IsLetter(f[food]) && !ManyAmounts.Said(f[food..], lang) && (m.Unit is not null && !FoodWords.IsPreparation(f[food..], lang) || FoodIds.Match(f[food..], lang) is not null);
        }

        return char.IsLetter(f[0]) && BackAmount.Unit(f, lang);
    }

    /// <summary>"nutmeg", "vinaigrette (see below)": a food without an amount, or one that a bracket points elsewhere for.</summary>
    private static bool Named(string f, string lang) =>
        f.IndexOf('(') is var open && (open < 0 ? f.Length < 40 && !FoodWords.IsPreparation(f, lang) && FoodIds.Match(f, lang) is not null : open > 2 && f[^1] == ')' && (Pointers.In(f[(open + 1)..^1], new Draft(why: false)) || FoodIds.Match(f[..open].Trim(), lang) is not null));
}
