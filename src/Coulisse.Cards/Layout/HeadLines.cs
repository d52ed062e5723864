using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Lines over the first list that look like foods with an amount and tell of the whole: "For 2 kg", "Dough weight 3.6 kg, 4 loaves at 900 g", "Cost per portion 1.20", "Station 3, chef 2", "10 pots @ 120 g".</summary>
internal static class HeadLines
{
    private const int Longest = 80;
    private static readonly string[] Fors = ["for", "für", "pour", "para", "per"];
    private static readonly WordSet Weighing = new(anyCase: true, "weight", "poids", "gewicht", "peso");
    private static readonly WordSet Beside = new(anyCase: true,
        "station", "version", "chef", "section", "page", "sheet", "card", "batch", "rev", "revision", "issue", "posten", "seite", "stand", "poste", "saison", "partida", "página", "hoja", "reparto", "pagina", "scheda",
        "cost", "costs", "price", "food cost", "cost per portion", "cost price", "selling price", "margin", "loss", "prep loss", "cooking loss", "trim loss", "baking loss", "waste", "coût", "coût matière", "prix", "prix de revient", "marge", "perte", "pertes", "perte à la cuisson", "kosten", "wareneinsatz", "preis", "verlust", "putzverlust", "backverlust", "garverlust", "coste", "precio", "margen", "merma", "costo", "prezzo", "margine", "perdita", "calo peso", "scarto", "food cost %");

    /// <summary>True for such a line.</summary>
    public static bool Is(string s, string lang) => Aside(s) || Weight(s, lang) is var weight && (weight > 0 || Yield(s, default, lang, weight) is not null);

    /// <summary>What such a line says the card makes; null when it says nothing of it.</summary>
    public static CardYield? Yield(string s, Span span, string lang) => Yield(s, span, lang, Weight(s, lang));

    private static CardYield? Yield(string s, Span span, string lang, int at)
    {
        if (s.Length is < 5 or > Longest)
        {
            return null;
        }

        if (char.IsAsciiDigit(s[0]))
        {
            return Sized(s, span, lang);
        }

        if (at > 0 && Amounts.At(s, at, lang) is { Unit: { Kind: "mass" } made } m)
        {
            // What one piece weighs is no yield.
            return Single(s.AsSpan(0, at)) ? null : new CardYield(m.Number.Min, made.Unit, s, span) { AmountMax = m.Number.Max };
        }

        foreach (string w in Fors)
        {
            int figure = Places.WordAt(s, 0, w) ? Places.Skip(s, w.Length) : s.Length;
            if (figure >= s.Length || Amounts.At(s, figure, lang) is not { Unit: { } unit } told)
            {
                continue;
            }

            if (unit.Kind == "container" && char.IsAsciiDigit(s[figure]) && told.End >= s.TrimEnd('.', ':').Length)
            {
                // "For 36 pots", and no food behind them
                return new CardYield(told.Number.Min, unit.Unit, s, span) { AmountMax = told.Number.Max };
            }

            if (unit.Kind is not ("mass" or "volume"))
            {
                continue;
            }

            int times = s.AsSpan(0, told.End).IndexOfAny('x', '×');
            string rest = s[told.End..].Trim();
            if (rest.Length == 0 || rest[0] == '(' && rest[^1] == ')' || rest == ".")
            {
                return times > 0 ? null : new CardYield(told.Number.Min, unit.Unit, s, span) { AmountMax = told.Number.Max };
            }
        }

        return Crossed(s, span, lang);
    }

    /// <summary>"For 6 × 250 g": how many, and what each weighs.</summary>
    private static CardYield? Crossed(string s, Span span, string lang)
    {
        string? w = Array.Find(Fors, f => Places.WordAt(s, 0, f));
        if (w is null || Numbers.Single(s, Places.Skip(s, w.Length), lang) is not { InWords: false } n || Places.Skip(s, n.End) is var sign && (sign >= s.Length || s[sign] is not ('x' or '×' or 'à' or '@')))
        {
            return null;
        }

        int each = Places.Skip(s, sign + 1);
        return Amounts.At(s, each, lang) is { Unit: { Kind: "mass" or "volume" } unit } m && Places.Skip(s, m.End) >= s.Length ? new CardYield(n.Min, "pieces", s, span) { EachGrams = unit.Kind == "mass" ? m.Number.Min * unit.Base : null } : null;
    }

    /// <summary>"10 pots @ 120 g", "2 Bleche à 12 Stück", "4 loaves at 900 g": a thing it is made in, and the size or the count of each.</summary>
    private static CardYield? Sized(string s, Span span, string lang)
    {
        if (YieldWords.Whole(s, lang) is not { } end && (Amounts.At(s, 0, lang) is not { Unit.Kind: "container" } held || (end = held.End) < 0))
        {
            return null;
        }

        string rest = s[end..].Trim();
        int figure = rest.Length > 2 && rest[0] is '@' or 'à' ? Places.Skip(rest, 1) : rest.StartsWith("at ", StringComparison.Ordinal) || rest.StartsWith("zu ", StringComparison.Ordinal) ? 3 : rest.StartsWith("zu je ", StringComparison.Ordinal) ? 6 : 0;
        if (figure == 0 || Numbers.Single(s, 0, lang) is not { InWords: false } n || Amounts.At(rest, figure, lang) is not { } each || !(each.Unit is { Kind: "mass" or "volume" } ? Places.Skip(rest, each.End) >= rest.TrimEnd('.').Length : YieldWords.PiecesOf(rest[figure..], lang) is not null))
        {
            return null;
        }

        string noun = s[Places.Skip(s, n.End)..end].Trim().ToLowerInvariant();
        return each.Unit is { Kind: "mass" or "volume" } u ? new CardYield(n.Min, YieldWords.Form(noun) ? noun : "pieces", s, span) { EachGrams = u.Kind == "mass" ? each.Number.Min * u.Base : null } : new CardYield(n.Min * each.Number.Min, "pieces", s, span);
    }

    /// <summary>Where the figure stands behind "Dough weight", "Poids total", "Dough: 3.6 kg total"; 0 when the line tells no such weight.</summary>
    private static int Weight(string s, string lang)
    {
        int figure = s.AsSpan().IndexOfAnyInRange('0', '9');
        if (figure is < 5 or > 30 || s.Length > Longest || !char.IsLetter(s[0]) || !char.IsWhiteSpace(s[figure - 1]) && s[figure - 1] != ':' || Amounts.At(s, figure, lang) is not { Unit.Kind: "mass" } m)
        {
            return 0;
        }

        ReadOnlySpan<char> head = s.AsSpan(0, figure).TrimEnd(" :=-");
        int gap = head.LastIndexOf(' ');
        bool named = Weighing.Contains(head[(gap + 1)..]) || lang == "de" && head.EndsWith("gewicht", StringComparison.OrdinalIgnoreCase) && gap < 0 || lang == "de" && head is "Teigeinlage" || lang is "fr" or "es" or "it" && head.Length > 4 && (head.StartsWith("poids ", StringComparison.OrdinalIgnoreCase) || head.StartsWith("peso ", StringComparison.OrdinalIgnoreCase));
        bool total = s.AsSpan(m.End).TrimStart() is var rest && (rest.StartsWith("total", StringComparison.OrdinalIgnoreCase) || rest.StartsWith("in total", StringComparison.OrdinalIgnoreCase) || rest.StartsWith("gesamt", StringComparison.OrdinalIgnoreCase)) && head.Count(' ') < 3;
        return named || total ? figure : 0;
    }

    private static bool Single(ReadOnlySpan<char> head) => head.StartsWith("loaf", StringComparison.OrdinalIgnoreCase) || head.StartsWith("piece", StringComparison.OrdinalIgnoreCase) || head.StartsWith("portion", StringComparison.OrdinalIgnoreCase) || head.StartsWith("unit", StringComparison.OrdinalIgnoreCase) || head.StartsWith("ball", StringComparison.OrdinalIgnoreCase) || head.StartsWith("stück", StringComparison.OrdinalIgnoreCase) || head.StartsWith("teigeinlage", StringComparison.OrdinalIgnoreCase) || head.Contains("pièce", StringComparison.OrdinalIgnoreCase) || head.Contains("pâton", StringComparison.OrdinalIgnoreCase) || head.Contains("pieza", StringComparison.OrdinalIgnoreCase) || head.Contains("pezzo", StringComparison.OrdinalIgnoreCase) || head.Contains("per ", StringComparison.OrdinalIgnoreCase) || head.Contains("each", StringComparison.OrdinalIgnoreCase);

    /// <summary>"Station 3, chef 2", "Cost per portion 1.20", "Prep loss 15 %": a word of the house's own, a figure, and no unit of a food behind it.</summary>
    private static bool Aside(string s)
    {
        int figure = s.AsSpan().IndexOfAnyInRange('0', '9');
        if (figure is < 4 or > 28 || s.Length > Longest)
        {
            return false;
        }

        ReadOnlySpan<char> head = s.AsSpan(0, figure).TrimEnd(" :=-€£$");
        return Beside.Contains(head) && Amounts.At(s, figure, "en") is not { Unit.Kind: "mass" or "volume" or "spoon" or "cup" };
    }
}
