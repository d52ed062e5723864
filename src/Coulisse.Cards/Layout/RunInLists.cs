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
        if (Parted(raw, lang, into))
        {
            return true;
        }

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

    /// <summary>"100 g rice / 1 l milk / 60 g sugar / nutmeg", "100 g rice - 1 l milk - knob of butter": the same parted by a bar or a dash. "250 g / 9 oz / 2 cups flour" is one food.</summary>
    private static bool Parted(RawLine raw, string lang, List<Piece> into)
    {
        ReadOnlySpan<char> typed = raw.Text;
        if (typed.Length is < 24 or > Longest || typed.IndexOfAnyInRange('0', '9') is < 0 or > 40 || typed.IndexOfAny("•|:°") >= 0)
        {
            return false;
        }

        foreach (string seam in Seams)
        {
            if (typed.Count(seam) < FewestFoods - 1)
            {
                continue;
            }

            string s = Folding.Line(raw.Text).TrimEnd('.');
            string[] foods = s.Split(seam == " – " ? " - " : seam, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            int told = foods.Count(f => Told(Head(f), lang));
            if (told >= FewestFoods && told * 3 >= foods.Length * 2 && Told(Head(foods[0]), lang) && !Looks.Timed(s, lang) && !Looks.Work(s, lang) && Array.TrueForAll(foods, f => Told(Head(f), lang) || Named(f, lang) || Measured(f, lang)))
            {
                into.AddRange(foods.Select(f => new Piece(PieceKind.Item, f, raw.Span)));
                return true;
            }
        }

        return false;
    }

    private static readonly string[] Seams = [" / ", " - ", " – "];

    /// <summary>Without how it is prepared: "1 vanilla pod, split".</summary>
    private static string Head(string f) => f.IndexOf(", ", StringComparison.Ordinal) is > 0 and var comma ? f[..comma] : f;

    /// <summary>"knob of butter": a measure in words and a food everybody knows.</summary>
    private static bool Measured(string f, string lang) => Amounts.At(f, 0, lang) is { Unit: not null } m && FoodIds.Match(f[PartReader.Of(f, Places.Skip(f, m.End), lang)..], lang) is not null || f.Length < 40 && f.IndexOf(' ') is > 0 and var first && FoodIds.Match(f[PartReader.Of(f, Places.Skip(f, first), lang)..], lang) is not null;

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
