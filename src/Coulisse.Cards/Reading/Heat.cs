using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Finds the temperatures of a sentence and what each is of.</summary>
internal static class Heat
{
    /// <summary>All temperatures in order; one setting told in two scales is one.</summary>
    public static List<StepTemperature> In(string s, string lang, string? main, List<(int At, string Id)> operations)
    {
        List<StepTemperature> found = [];
        for (int i = 0; i < s.Length; i++)
        {
            if (!char.IsAsciiDigit(s[i]) || i > 0 && (char.IsAsciiLetterOrDigit(s[i - 1]) || s[i - 1] is '.' or ','))
            {
                continue;
            }

            if (Numbers.Range(s, i, lang) is not { } n)
            {
                continue;
            }

            int j = Places.Skip(s, n.End);
            bool degree = j < s.Length && s[j] == '°';
            int k = degree ? Places.Skip(s, j + 1) : j;
            char scale = k < s.Length && s[k] is 'C' or 'F' && (k + 1 == s.Length || !char.IsLetterOrDigit(s[k + 1])) ? s[k] : ' ';
            int end = scale != ' ' ? k + 1 : j + 1;
            bool fanWord = !degree && scale == ' ' && Places.WordAt(s, j, "fan") && n.Min is >= 80 and <= 280;
            if (!degree && scale == ' ' && !fanWord)
            {
                i = Math.Max(i, n.End - 1);
                continue;
            }

            double celsius = scale == 'F' ? Math.Round((n.Min - 32) * 5 / 9, 1) : n.Min;
            string before = s[Math.Max(0, i - 40)..i].ToLowerInvariant();
            string after = s[Math.Min(end, s.Length)..Math.Min(s.Length, end + 26)].ToLowerInvariant();
            string words = s[i..Math.Min(end, s.Length)];
            i = Math.Min(end, s.Length) - 1;
            if (celsius is < -60 or > 400)
            {
                continue;
            }

            // "325°F/160°C": one setting
            if (found.Count > 0 && scale == 'C' && found[^1].Words.Contains('F') && Math.Abs(found[^1].Celsius - celsius) < 6 && before.TrimEnd().Length > 0 && before.TrimEnd()[^1] is '/' or '(')
            {
                found[^1] = found[^1] with { Celsius = celsius, Words = found[^1].Words + " / " + words };
                continue;
            }

            string? op = operations.LastOrDefault(o => o.At < i).Id ?? main;
            bool? fan = fanWord || Near(after, "fan", "chaleur tournante", "heißluft", "umluft", "ventil", "convection") || Near(before[Math.Max(0, before.Length - 6)..], "fan ") ? true : Near(after, "static", "statico", "ober-/unter") || Near(before, "statico") ? false : null;
            found.Add(new StepTemperature(Of(before, after, op, main, celsius), celsius, words)
            {
                Fan = fan,
                Bound = Near(after, " or more", " or above", "以上") || before.TrimEnd().EndsWith("above", StringComparison.Ordinal) ? Bound.AtLeast
                    : Near(after, " or less", " or below") || before.Contains("not get warmer than", StringComparison.Ordinal) || before.Contains("below", StringComparison.Ordinal) ? Bound.AtMost : Bound.At,
            });
        }

        return found;
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

    private static TemperatureOf Of(string before, string after, string? op, string? main, double c)
    {
        bool Has(string w) => before.Contains(w, StringComparison.Ordinal) || after.StartsWith(" " + w, StringComparison.Ordinal);
        if (Has("centre") || Has("center") || Has("core") || Has("kerntemperatur") || Has("cœur") || Has("middle"))
        {
            return TemperatureOf.Core;
        }

        if (Has("fridge") || Has("kühlschrank"))
        {
            return TemperatureOf.Fridge;
        }

        if (Has("freezer"))
        {
            return TemperatureOf.Freezer;
        }

        if (Has("oven") || Has("ofen") || Has("four") || Has("horno") || Has("forno") || Has("オーブン") || after.Contains("オーブン", StringComparison.Ordinal))
        {
            return TemperatureOf.Oven;
        }

        if (Has("water bath") || Has("bain-marie") || op is "water_bath" or "fill_bath" || before.Contains("bath", StringComparison.Ordinal) && c is > 40 and < 100)
        {
            return TemperatureOf.Bath;
        }

        return op switch
        {
            "bake" or "roast" or "blind_bake" or "preheat_oven" or "cool_oven" => c >= 60 ? TemperatureOf.Oven : TemperatureOf.Food,
            "dehydrate" => TemperatureOf.Dryer,
            "deep_fry" or "preheat_fryer" or "saute" => TemperatureOf.Pan,
            _ => main is "bake" or "roast" && c >= 120 ? TemperatureOf.Oven : c >= 150 ? TemperatureOf.Oven : TemperatureOf.Food,
        };
    }
}
