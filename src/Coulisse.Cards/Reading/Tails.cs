using System.Buffers;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>What stands after the commas: preparation, grade, state, use, an alternative, "optional", a size.</summary>
internal static class Tails
{
    private static readonly SearchValues<char> Stops = SearchValues.Create(",:;、-");

    /// <summary>Reads food and tails; the food is the first segment that is not only preparation.</summary>
    public static void Read(string s, string lang, Draft d)
    {
        if (s.AsSpan().IndexOfAny(Stops) < 0)
        {
            d.Food = Places.Bare(s);
            return;
        }

        List<string> segments = Segments(s);
        int food = 0;
        while (food < segments.Count - 1 && (OnlyPreparation(segments[food], lang) || segments[food].Length == 0))
        {
            food++;
        }

        if (food > 0 && food == segments.Count - 1 && segments[0].Length > 0 && OnlyPreparation(segments[food], lang))
        {
            // "pelati, sgocciolati": words of work alone; the first is what the shop calls it
            food = 0;
        }

        if (food == 1 && segments.Count > 2 && d.Amount is not null && s.Length > segments[0].Length && s[segments[0].Length] == ':')
        {
            // "2 lb mirepoix: onions, carrots, celery": the name of a mixture, and what it is of
            food = 0;
        }

        for (int i = 0; i < food; i++)
        {
            d.Prepare(segments[i]);
        }

        d.Food = segments.Count > 0 ? segments[food] : "";
        for (int i = food + 1; i < segments.Count; i++)
        {
            One(segments[i], lang, d);
        }
    }

    private static List<string> Segments(string s)
    {
        List<string> all = [];
        int start = 0;
        for (int i = 0; i < s.Length; i++)
        {
            bool comma = s[i] is ',' && !(i > 0 && i + 1 < s.Length && char.IsAsciiDigit(s[i - 1]) && char.IsAsciiDigit(s[i + 1]));
            bool colon = s[i] == ':' && i + 1 < s.Length;
            if (comma || colon || s[i] is ';' or '、' || (s[i] == '-' && i > 0 && s[i - 1] == ' ' && i + 1 < s.Length && s[i + 1] == ' '))
            {
                all.Add(s[start..i].Trim());
                start = i + 1;
            }
        }

        string last = Places.Bare(s[start..]);
        if (last.Length > 0 || all.Count == 0)
        {
            all.Add(last);
        }

        return all;
    }

    /// <summary>True for words of work alone: "finely chopped".</summary>
    internal static bool OnlyPreparation(string s, string lang)
    {
        int i = 0;
        bool any = false;
        while (i < s.Length)
        {
            if (Lexicon.Longest("prep", s, i, 3, lang, out int end) is null)
            {
                return false;
            }

            any = true;
            i = Places.Skip(s, end);
        }

        return any;
    }

    private static void One(string w, string lang, Draft d)
    {
        if (w.Length == 0)
        {
            return;
        }

        if (Lexicon.Longest("optional", w, 0, 3, lang, out _) is not null)
        {
            d.Optional = true;
            d.Tokens?.Add(new ReadToken(w, "optional", "may be left out"));
        }
        else if (Alternatives.In(w, lang, d) || Pointers.In(w, d))
        {
        }
        else if (Lexicon.Longest("use", w, 0, 3, lang, out int use) is { } meaning && use >= w.Length - 1)
        {
            d.Use = meaning;
            d.Tokens?.Add(new ReadToken(w, "use", meaning));
        }
        else if (Uses.Begins(w, lang))
        {
            d.Use = d.Use is null or "divided" ? w : d.Use + ", " + w;
            d.Tokens?.Add(new ReadToken(w, "use", w));
        }
        else if (Brackets.Temperature(w, d))
        {
        }
        else if ((w.Contains('%') || Places.HasAny(w, "bloom")) && w.Length < 40)
        {
            d.Graded(w);
            d.Tokens?.Add(new ReadToken(w, "grade", w));
        }
        else if (EachWeight(w, lang, d) || Whole(w, lang, d))
        {
        }
        else if (d.Unit is null && d.Amount is not null && Brackets.IsSize(w))
        {
            d.Graded(w);
            d.Tokens?.Add(new ReadToken(w, "grade", w));
        }
        else if (d.Amount is null && d.Percent is null && Bare(w, lang, d) || Fill(w, d) || Alternatives.Within(w, lang, d))
        {
        }
        else
        {
            d.Prepare(w);
        }
    }

    /// <summary>"Salt, pinch", "parsley, small bunch": a measure in one word behind the food means one.</summary>
    private static bool Bare(string w, string lang, Draft d)
    {
        if (Amounts.At(w, 0, lang) is { Unit: { Kind: "word" or "mass" or "volume" or "spoon" or "cup" or "container" or "count" } unitTold, Number: { InWords: true, Max: null } } told && (told.End >= w.Length || unitTold.Unit == "batch" && Pointers.Numbered(w[told.End..])) && (unitTold.Kind != "count" || unitTold.Unit == "batch"))
        {
            // "Maldon, a good pinch", "loaf sugar, one pound", "crema pastelera, media receta de la pág. 23"
            PartReader.Take(d, told, w);
            if (told.End < w.Length)
            {
                d.Prepare(w[told.End..].Trim());
            }

            return true;
        }

        int from = Lexicon.Longest("size", w, 0, 1, lang, out int size) is not null ? Places.Skip(w, size) : 0;
        if (Lexicon.LongestUnit(w, from, lang, out int end) is not { Kind: "word" } unit || end < w.Length || unit.Unit is "part" or "nut" or "glass" or "scoop")
        {
            return false;
        }

        d.Amount = 1;
        d.Unit = unit;
        if (from > 0)
        {
            d.Graded(w[..size]);
        }

        d.Tokens?.Add(new ReadToken(w, "amount", "1 " + unit.Unit));
        return true;
    }

    /// <summary>"6 quail, 180-200 g each", "10-12 langoustines, 80-90 g apiece".</summary>
    private static bool EachWeight(string w, string lang, Draft d)
    {
        if (d.Amount is null || w.AsSpan().IndexOfAnyInRange('0', '9') < 0 || !OfOne.Closes(w) || Amounts.At(w, 0, lang) is not { Unit: { Kind: "mass" } unit } m)
        {
            return false;
        }

        PartReader.Content(d, m.Number.Min, unit, m.Number.Max);
        return true;
    }

    /// <summary>"1 shoulder of pork, about 2.5 kg": the weight of what was counted.</summary>
    private static bool Whole(string w, string lang, Draft d)
    {
        if (d.Amount is null || d.Unit is { Kind: not "count" } || d.Grams is not null || Amounts.At(w, 0, lang) is not { Unit: { Kind: "mass" } } m || m.Number.InWords)
        {
            return false;
        }

        m = SameTwice.Of(w, m, lang) ?? m;
        string rest = w[Math.Min(m.End, w.Length)..].Trim();
        if (rest.Length > 0 && !EndWeight.Total(rest))
        {
            return false;
        }

        PartReader.SecondMeasure(d, m, w[..m.End]);
        return true;
    }

    private static bool Fill(string w, Draft d)
    {
        // "1 cup brown sugar, packed": the word after the comma says how the cup is filled; "flour, sifted" is a later task.
        if (d.Unit is { Kind: "cup" or "spoon" } && w is "packed" or "firmly packed" or "lightly packed" or "level" or "heaped")
        {
            d.Fill = w.EndsWith("packed", StringComparison.Ordinal) ? "packed" : w;
            d.Tokens?.Add(new ReadToken(w, "fill", d.Fill));
            return true;
        }

        return false;
    }
}
