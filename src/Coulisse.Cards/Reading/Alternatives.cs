using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"or 100 g turnip", "ou de sapin", "ドライなら3g": another food in its place.</summary>
internal static class Alternatives
{
    private static readonly string[] French = ["ou bien", "ou", "sinon"];
    private static readonly string[] German = ["oder", "ersatzweise", "bzw"];
    private static readonly string[] Spanish = ["o bien", "o", "u"];
    private static readonly string[] Italian = ["oppure", "o"];
    private static readonly string[] English = ["or else", "or", "alternatively"];
    private static readonly Beginnings First = new([.. French, .. German, .. Spanish, .. Italian, .. English]);

    /// <summary>Words that open an alternative, by language.</summary>
    public static string[] Ors(string lang) => lang switch { "fr" => French, "de" => German, "es" => Spanish, "it" => Italian, _ => English };

    /// <summary>True when the words are an alternative; they are taken in.</summary>
    public static bool In(string w, string lang, Draft d)
    {
        if (lang == "ja")
        {
            string t = w.StartsWith("または", StringComparison.Ordinal) ? w[3..] : w.StartsWith("又は", StringComparison.Ordinal) ? w[2..] : "";
            int nara = w.IndexOf("なら", StringComparison.Ordinal);
            if (nara > 0)
            {
                t = w[..nara] + " " + w[(nara + 2)..];
            }

            if (t.Length == 0)
            {
                return false;
            }

            d.Alternative = t;
            return true;
        }

        foreach (string or in First.May(w, 0) ? Ors(lang) : [])
        {
            if (Places.WordAt(w, 0, or) && w.Length > or.Length + 1)
            {
                string rest = w[(or.Length + 1)..].Trim();
                if (rest.StartsWith("more", StringComparison.OrdinalIgnoreCase) || rest.StartsWith("less", StringComparison.OrdinalIgnoreCase) || rest.StartsWith("to taste", StringComparison.OrdinalIgnoreCase))
                {
                    d.Tokens?.Add(new ReadToken(w, "note", w));
                    return true;
                }

                d.Alternative = rest;
                d.Tokens?.Add(new ReadToken(w, "alternative", rest));
                return true;
            }
        }

        return false;
    }

    /// <summary>"minced or 1 tsp garlic powder": behind what is done to the food another stands in its place, with an amount of its own. "cut into 2 or 3 pieces" tells none.</summary>
    public static bool Within(string w, string lang, Draft d)
    {
        foreach (string or in d.Alternative is null && d.Amount is not null && lang != "ja" && First.MayIn(w) ? Ors(lang) : [])
        {
            int at = Places.FindWord(w, or, 3);
            int behind = at < 0 ? w.Length : Places.Skip(w, at + or.Length);
            if (behind < w.Length && w[at - 1] == ' ' && char.IsAsciiDigit(w[behind]) && Amounts.At(w, behind, lang) is { Unit.Kind: "mass" or "volume" or "spoon" or "cup" } m && FoodIds.Match(w[PartReader.Of(w, Places.Skip(w, m.End), lang)..], lang) is not null)
            {
                d.Prepare(w[..at]);
                d.Alternative = w[behind..];
                d.Tokens?.Add(new ReadToken(w[at..], "alternative", d.Alternative));
                return true;
            }
        }

        return false;
    }

    /// <summary>"2 small or 1 large fennel bulb": the other size is the alternative, the food stands behind it.</summary>
    public static string OfSize(string s, string lang, Draft d)
    {
        if (d.Grade is null || d.Unit is not null || d.Amount is null)
        {
            return s;
        }

        foreach (string or in Ors(lang))
        {
            if (Places.WordAt(s, 0, or) && Places.Skip(s, or.Length) is var at && at < s.Length && char.IsAsciiDigit(s[at]) && Amounts.At(s, at, lang) is { Unit: null, Size: not null } m)
            {
                d.Alternative = s[at..];
                return s[Places.Skip(s, m.End)..];
            }
        }

        return s;
    }

    /// <summary>Splits "quark or thick yoghurt" in the food itself.</summary>
    public static void Split(Draft d, string lang)
    {
        foreach (string or in First.MayIn(d.Food) ? Ors(lang) : [])
        {
            int at = Places.FindWord(d.Food, or, 2);
            if (at > 1 && at + or.Length + 1 < d.Food.Length && d.Food[at - 1] == ' ')
            {
                string rest = d.Food[(at + or.Length)..].Trim();
                d.Food = d.Food[..at].TrimmedEnd(" ,");
                if (!rest.StartsWith("more", StringComparison.OrdinalIgnoreCase))
                {
                    d.Food = lang == "en" ? SharedHead.Of(d.Food, rest) : d.Food;
                    d.Alternative ??= rest;
                    d.Tokens?.Add(new ReadToken(rest, "alternative", rest));
                }

                return;
            }
        }
    }

    /// <summary>"Lemon verbena 8g or lemon balm 10g": both with their amounts behind them; the line up to the other food.</summary>
    public static string Behind(string s, string lang, Draft d)
    {
        foreach (string or in lang != "ja" && s.Length is > 10 and < 120 && char.IsLetter(s[0]) && First.MayIn(s) ? Ors(lang) : [])
        {
            int at = Places.FindWord(s, or, 3);
            if (at > 3 && s[at - 1] == ' ' && at + or.Length + 3 < s.Length && Amounts.At(s, 0, lang) is null)
            {
                (Draft one, Draft other) = (new(why: false), new(why: false));
                string rest = s[(at + or.Length)..].Trim();
                if (BackAmount.Take(s[..at].TrimEnd(' ', ','), lang, one) is { Length: > 1 } && one.Unit is { Kind: "mass" or "volume" or "spoon" } && char.IsLetter(rest[0]) && BackAmount.Take(rest, lang, other) is { Length: > 1 } name && other is { Amount: { } amount, Unit: { Kind: "mass" or "volume" or "spoon" } unit } && !name.Contains(','))
                {
                    d.Alternative = System.FormattableString.Invariant($"{amount} {unit.Unit} {name}");
                    d.Tokens?.Add(new ReadToken(rest, "alternative", d.Alternative));
                    return s[..at].TrimEnd(' ', ',');
                }
            }
        }

        return s;
    }

    /// <summary>"150 g crème fraîche/sour cream": two foods everybody knows, and no one food of that name.</summary>
    public static void Slashed(Draft d, string lang)
    {
        int slash = d.Amount is null ? -1 : d.Food.IndexOf('/');
        if (slash < 3 || slash != d.Food.LastIndexOf('/') || slash + 3 >= d.Food.Length || char.IsAsciiDigit(d.Food[slash + 1]) || char.IsAsciiDigit(d.Food[slash - 1]))
        {
            return;
        }

        string one = d.Food[..slash].Trim();
        string other = d.Food[(slash + 1)..].Trim();
        if (FoodIds.Match(one, lang) is not null && FoodIds.Match(other, lang) is not null)
        {
            d.Food = one;
            d.Alternative ??= other;
            d.Tokens?.Add(new ReadToken(other, "alternative", other));
        }
    }

    /// <summary>Gives the alternative its amount and its kind: "ou de sapin" after "90 g de miel de sarrasin" is 90 g of miel de sapin.</summary>
    public static void Complete(Draft d, string lang)
    {
        if (d.Alternative is not { } a)
        {
            return;
        }

        Measure? own = Amounts.At(a, 0, lang);
        string food = own is { Unit: not null } o ? a[o.End..].Trim() : a;
        food = food[PartReader.Of(food, 0, lang)..];
        string head = d.Food.Split(' ')[0];
        bool hanging = lang is "fr" or "es" or "it" && PartReader.Of(a, 0, lang) > 0 && own is null;
        if (hanging)
        {
            food = head + " " + a;
        }
        else if (food.StartsWith("quello ", StringComparison.Ordinal) || food.StartsWith("quella ", StringComparison.Ordinal))
        {
            food = Headless(d.Food) + " " + food[7..];
        }
        else if (own is not null && !food.Contains(' ') && lang is "es" or "it" && LastWord(d.Food) is { } last && last.Length > 3 && food.Length > 3 && last[^1] == food[^1] && d.Food.Contains(' '))
        {
            food = Headless(d.Food) + " " + food;
        }
        else if (lang == "ja" && own is null && food.IndexOf(' ') is var sp and > 0 && Amounts.At(food, sp + 1, "ja") is { Unit: not null } back)
        {
            string name = food[..sp];
            string rest = d.Food.StartsWith('生') ? d.Food[1..] : d.Food;
            d.Alternative = System.FormattableString.Invariant($"{back.Number.Min} {back.Unit.Unit} {name}{(name is "ドライ" ? rest : "")}");
            return;
        }

        if (own is { Unit: { } unit } m)
        {
            d.Alternative = System.FormattableString.Invariant($"{m.Number.Min} {unit.Unit} {food}");
        }
        else if (d.Amount is { } amount && d.Unit is { Kind: "mass" or "volume" })
        {
            d.Alternative = System.FormattableString.Invariant($"{amount} {d.Unit.Unit} {food}");
        }
        else
        {
            d.Alternative = food;
        }
    }

    private static string Headless(string food) => food.LastIndexOf(' ') is var i and > 0 ? food[..i] : food;

    private static string? LastWord(string food) => food.LastIndexOf(' ') is var i and > 0 ? food[(i + 1)..] : null;
}
