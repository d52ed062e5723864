using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Finds the temperatures of a sentence and what each is of.</summary>
internal static class Heat
{
    /// <summary>The words for an oven whose air is moved, in small letters.</summary>
    public static readonly string[] Fans = ["fan", "chaleur tournante", "heißluft", "heissluft", "umluft", "ventilato", "ventilata", "ventilado", "con ventilador", "aire", "ventil", "convection", "コンベクション"];

    /// <summary>How far behind a figure its words are looked for: "in the middle of the smoker".</summary>
    private const int Behind = 32;

    private const double MostFridge = 15;
    private static readonly string[] Untils = ["until", "until it reaches", "till", "jusqu'à", "jusqu'à atteindre", "bis", "bis zu", "hasta", "hasta los", "fino a"];

    /// <summary>All temperatures in order; one setting told in two scales is one.</summary>
    public static List<StepTemperature> In(string s, string lang, string? main, List<(int At, string Id)> operations)
    {
        if (lang == "ja" && KanjiAmounts.Degrees(s) is var figures && !ReferenceEquals(figures, s))
        {
            // "八十五度の湯で"
            return [.. In(figures, lang, main, operations).Select(t => s.Contains(t.Words, StringComparison.Ordinal) ? t : t with { Words = KanjiAmounts.Written(s, figures, t.Words) })];
        }

        List<StepTemperature> found = [];
        List<int> marks = [];
        string? lower = null;
        for (int i = 0; i < s.Length; i++)
        {
            if (s[i] is 'g' or 'G' or 't' or 'T' && (i == 0 || !char.IsLetterOrDigit(s[i - 1])) && GasMarks.At(s, i, lang, out int markEnd) is { } mark)
            {
                // "200 °C/180 °C fan/gas 6" is one setting told three ways.
                if (!Oven(found, mark, null))
                {
                    marks.Add(found.Count);
                    found.Add(new StepTemperature(TemperatureOf.Oven, mark, s[i..markEnd]));
                }

                i = markEnd - 1;
                continue;
            }

            if (!char.IsAsciiDigit(s[i]) || i > 0 && (char.IsAsciiLetterOrDigit(s[i - 1]) || s[i - 1] is '.' or ','))
            {
                continue;
            }

            if (Clock.At(s, i, lang) is { } time)
            {
                // "1 ora e 20 a 160 °C": the minutes are no lower end of the degrees.
                i = time.End - 1;
                continue;
            }

            if (Numbers.Range(s, i, lang) is not { } n)
            {
                continue;
            }

            (double Low, double High, int End)? ends = HeatRanges.At(s, i, n, lang);
            n = ends is { } both ? n with { Min = Math.Abs(both.High), Max = null, End = both.End } : n;
            int j = Places.Skip(s, n.End);
            int sign = DegreeSigns.Degree(s, j);
            bool degree = sign > j;
            int k = degree ? Places.Skip(s, sign) : j;
            char scale = DegreeSigns.Scale(s, k, n, out int scaleEnd);
            int end = scale != ' ' ? scaleEnd : degree ? sign : j + 1;
            bool fanWord = !degree && scale == ' ' && Places.WordAt(s, j, "fan") && n.Min is >= 80 and <= 280;
            bool core = false;
            TemperatureOf? jotted = null;
            bool bare = !degree && scale == ' ' && !fanWord && (BareHeat.Oven(s, i, n, operations, lang) || BareHeat.Bath(s, i, n, operations, lang) || BareHeat.Food(s, i, n, lang, out core) || NoteHeats.At(s, i, n, operations, lang, out jotted));
            end = bare ? n.End : fanWord ? j + "fan".Length : end;
            if (!degree && scale == ' ' && !fanWord && !bare)
            {
                i = Math.Max(i, n.End - 1);
                continue;
            }

            bool fahrenheit = scale == 'F' || (scale == ' ' && lang == "en" && n.Min is >= 300 and <= 550);
            ends ??= Ends(n, Minus.At(s, i));
            double celsius = fahrenheit ? OfFahrenheit(ends.Value.Low) : ends.Value.Low;
            double? most = ends.Value.High <= ends.Value.Low ? null : fahrenheit ? OfFahrenheit(ends.Value.High) : ends.Value.High;
            lower ??= Folding.Lower(s);
            string before = lower[From(s, i)..i];
            string after = lower[Math.Min(end, s.Length)..Math.Min(s.Length, end + Behind)];
            string words = s[i..Math.Min(end, s.Length)];
            i = Math.Min(end, s.Length) - 1;
            if (celsius is < -60 or > 600)
            {
                continue;
            }

            // "200 °C (fan 180 °C/400 °F)": told before in the other scale
            if (fahrenheit && scale == 'F' && before.TrimEnd(' ', '-') is { Length: > 0 } slash && slash[^1] is '/' or '(' or ',' && InCelsius(found, celsius) is var same and >= 0)
            {
                found[same] = found[same] with { Words = found[same].Words + " / " + words };
                continue;
            }

            // "325°F/160°C": one setting
            if (found.Count > 0 && scale == 'C' && found[^1].Words.Contains('F') && Math.Abs(found[^1].Celsius - celsius) < 6 && before.TrimEnd().Length > 0 && before.TrimEnd()[^1] is '/' or '(')
            {
                found[^1] = found[^1] with { Celsius = celsius, CelsiusMax = most, Words = found[^1].Words + " / " + words };
                continue;
            }

            // "82 °C (180 °F)": the same, the other way round
            if (found.Count > 0 && fahrenheit && Math.Abs(found[^1].Celsius - celsius) < 6 && before.TrimEnd() is { Length: > 0 } lead && lead[^1] is '/' or '(')
            {
                found[^1] = found[^1] with { Words = found[^1].Words + " / " + words };
                continue;
            }

            string? op = Operations.Before(operations, i - 1) ?? main;
            string own = Own(s, end, after, lang);
            bool? fan = fanWord || Near(own, Fans) || Closes(before, Fans) || before.Contains("fan oven,", StringComparison.Ordinal) ? true : Near(own, "static", "statico", "ober-/unter") || Near(before, "statico") ? false : null;
            TemperatureOf of = jotted ?? (core ? TemperatureOf.Core : Of(before, Past(s, Math.Min(end, s.Length), after), op, main, celsius, found.Count > 0 ? found[^1] : null));
            of = of == TemperatureOf.Food && (fan == true && celsius >= 60 || Airs.Of(before, op, celsius)) ? TemperatureOf.Oven : of;
            found.Add(new StepTemperature(of, celsius, words)
            {
                Fan = fan, CelsiusMax = most,
                Bound = Airs.Passed(before) ? Bound.AtMost
                    : Near(after, " or more", " or above", "以上") || before.TrimEnd() is var edge && (edge.EndsWith("above", StringComparison.Ordinal) || edge.EndsWith('>') || edge.EndsWith('≥')) ? Bound.AtLeast
                    : Near(after, " or less", " or below", "以下") || before.Contains("not get warmer than", StringComparison.Ordinal) || before.Contains("below", StringComparison.Ordinal) ? Bound.AtMost : Bound.At,
            });
        }

        if (found.Count == 0 && Operations.Any(operations, "temper_chocolate"))
        {
            return Tempering.In(s);
        }

        // "gas mark 6 (200C, fan 180C)": the degrees say it better.
        for (int m = marks.Count - 1; m >= 0; m--)
        {
            StepTemperature mark = found[marks[m]];
            if (Oven(found, lang == "de" ? null : mark.Celsius, mark))
            {
                found.RemoveAt(marks[m]);
            }
        }

        return found;
    }

    /// <summary>The ends of a figure: "-18-22 °C" is as cold at either end, and the colder one is the lower.</summary>
    private static (double Low, double High, int End) Ends(Numeral n, bool minus) => minus ? (-Math.Max(n.Min, n.Max ?? n.Min), -n.Min, n.End) : (n.Min, n.Max ?? n.Min, n.End);

    /// <summary>True when an oven's figure near another is told; any figure where no other is given.</summary>
    private static bool Oven(List<StepTemperature> found, double? near, StepTemperature? but)
    {
        foreach (StepTemperature t in found)
        {
            if (!ReferenceEquals(t, but) && t.Of == TemperatureOf.Oven && (near is not { } c || Math.Abs(t.Celsius - c) < 25))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Place of a figure told in °C that is the same heat; -1 when none is.</summary>
    private static int InCelsius(List<StepTemperature> found, double celsius)
    {
        for (int k = 0; k < found.Count; k++)
        {
            if (!found[k].Words.Contains('F') && Math.Abs(found[k].Celsius - celsius) < 6)
            {
                return k;
            }
        }

        return -1;
    }

    /// <summary>Where the words before a figure begin that say what it is of: its own sentence, as far as it reaches. A figure that opens a sentence leans on the one before.</summary>
    private static int From(string s, int i)
    {
        int floor = Math.Max(0, i - 40);
        int own = i;
        while (own > floor && !Sentences.Ends(s, own - 1))
        {
            own--;
        }

        for (int k = own; k < i; k++)
        {
            if (char.IsLetter(s[k]))
            {
                return own;
            }
        }

        return floor;
    }

    /// <summary>Degrees Celsius of degrees Fahrenheit, to a tenth.</summary>
    public static double OfFahrenheit(double degrees) => Math.Round((degrees - 32) * 5 / 9, 1);

    /// <summary>What stands behind a figure and before the next one; a "fan" right before the next figure is of that.</summary>
    private static string Own(string s, int end, string after, string lang)
    {
        int next = after.AsSpan().IndexOfAnyInRange('0', '9');
        string own = next < 0 ? after : after[..next];
        // "180 °C Umluft 25 Minuten": minutes have no fan.
        return next >= 0 && Closes(own, Fans) && Clock.At(s, end + next, lang) is null ? "" : own;
    }

    /// <summary>What stands behind a figure and the same told in the other scale: "(200-205 °F) inside", "/205 °F in the middle".</summary>
    private static string Past(string s, int end, string after)
    {
        int i = Places.Skip(s, end);
        int from = i;
        if (i >= s.Length || s[i] is not ('(' or '/'))
        {
            return after;
        }

        i = Places.Skip(s, i + 1);
        int figure = i;
        while (i < s.Length && (char.IsAsciiDigit(s[i]) || s[i] is '-' or ' ' or '°' or '.' || s[i] is 'C' or 'F' && (i + 1 == s.Length || !char.IsLetter(s[i + 1]))))
        {
            i++;
        }

        bool told = i > figure && char.IsAsciiDigit(s[figure]) && s.AsSpan(figure, i - figure).ContainsAny('C', 'F') && (s[from] == '/' || i < s.Length && s[i] == ')');
        int rest = s[from] == '(' ? i + 1 : i > 0 && s[i - 1] == ' ' ? i - 1 : i;
        return told ? Folding.Lower(s[Math.Min(rest, s.Length)..Math.Min(s.Length, rest + Behind)]) : after;
    }

    /// <summary>True when one of the words is the last before the figure: "Umluft 160", "fan: 180", "chaleur tournante à 160".</summary>
    private static bool Closes(string before, string[] words)
    {
        ReadOnlySpan<char> t = before.AsSpan().TrimEnd(" :,=");
        foreach (string lead in (ReadOnlySpan<string>)[" à", " a", " bei", " at", " auf", " de"])
        {
            t = t.EndsWith(lead, StringComparison.Ordinal) ? t[..^lead.Length].TrimEnd() : t;
        }

        foreach (string w in words)
        {
            if (t.EndsWith(w, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Near(string s, params ReadOnlySpan<string> words)
    {
        foreach (string w in words)
        {
            int at = s.IndexOf(w, StringComparison.Ordinal);
            if (at >= 0 && at < 14)
            {
                return true;
            }
        }

        return false;
    }

    private static bool Leads(string after, params ReadOnlySpan<string> words)
    {
        foreach (string w in words)
        {
            if (after.StartsWith(w, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    private static TemperatureOf Of(string before, string after, string? op, string? main, double c, StepTemperature? last)
    {
        bool Has(string w) => before.Contains(w, StringComparison.Ordinal) || after.StartsWith(" " + w, StringComparison.Ordinal);
        if (Leads(after, " oven", " ofen"))
        {
            // "82 °C core / 85 °C oven"
            return TemperatureOf.Oven;
        }

        if (BareCores.Named(before, after) && !MiddleWords.Past(before) || BareCores.Probed(before, after, c) || MiddleWords.Of(before, after, c))
        {
            return TemperatureOf.Core;
        }

        if (c is >= 120 and <= 230 && op is not ("bake" or "roast") && !FatBaths.Coats(before, after) && !Airs.Oven(before, after) && (Places.HasAny(before, "oil", "öl", "huile", "aceite", "olio", "frying fat") || after.StartsWith("の油", StringComparison.Ordinal)))
        {
            return TemperatureOf.Pan;
        }

        if (MiddleWords.Goal(before, c, last) || MiddleWords.Stirred(before) && c < 100)
        {
            return TemperatureOf.Food;
        }

        if (MiddleWords.Lowered(before, c, last))
        {
            return TemperatureOf.Oven;
        }

        if (FatBaths.Of(before, after, c))
        {
            return TemperatureOf.Pan;
        }

        if (Baths.Of(before, after, c))
        {
            return TemperatureOf.Bath;
        }

        // No fridge is warm: such a word is of another figure.
        if (c <= MostFridge && (Has("fridge") || Has("kühlschrank")))
        {
            return TemperatureOf.Fridge;
        }

        if (c <= 0 && Has("freezer"))
        {
            return TemperatureOf.Freezer;
        }

        if (c <= 0 || c < 100 && MiddleWords.Held(before))
        {
            // Nothing is fried or baked below zero; what is held is done.
            return TemperatureOf.Food;
        }

        if (c >= 60 && (OvenPlaces.Oven(before) || OvenPlaces.Oven(after)))
        {
            // "on the middle shelf at 95 °C"
            return TemperatureOf.Oven;
        }

        if (Airs.Sugar(before, op, c))
        {
            return TemperatureOf.Food;
        }

        if (Airs.Oven(before, after))
        {
            return TemperatureOf.Oven;
        }

        if (c is >= 40 and <= 95 && (Places.FindWord(before, "sv") >= 0 || Has("sous vide") || Has("sous-vide") || Has("sottovuoto") || Has("al vacío") || Has("vakuum")))
        {
            return TemperatureOf.Bath;
        }

        if (c > 100 && (op is "bake" or "roast" or "blind_bake" or "gratinate" || main is "bake" or "roast") && Places.HasAny(before, "bain-marie", "water bath", "wasserbad", "baño maría", "bagnomaria", "bagno maria"))
        {
            // Water is no hotter than 100 °C: the oven around the bath.
            return TemperatureOf.Oven;
        }

        if (Has("water bath") || Has("bain-marie") || c > 30 && op is "water_bath" or "fill_bath" || c is >= 40 and <= 95 && Airs.Bath(after) || before.Contains("bath", StringComparison.Ordinal) && c is > 40 and < 100)
        {
            return TemperatureOf.Bath;
        }

        if (c < 100 && op is "bake" or "roast" && Places.Ends(before.TrimEnd(), Untils))
        {
            // "cuire jusqu'à 84 °C": nothing is baked until the oven is so hot.
            return TemperatureOf.Food;
        }

        return op switch
        {
            "bake" or "roast" or "blind_bake" or "preheat_oven" or "cool_oven" => c >= 60 ? TemperatureOf.Oven : TemperatureOf.Food,
            "dehydrate" => TemperatureOf.Dryer,
            "deep_fry" or "preheat_fryer" or "saute" => TemperatureOf.Pan,
            _ => main is "deep_fry" && c is >= 120 and <= 210 ? TemperatureOf.Pan : main is "bake" or "roast" && c >= 120 ? TemperatureOf.Oven : c >= 150 ? TemperatureOf.Oven : TemperatureOf.Food,
        };
    }
}
