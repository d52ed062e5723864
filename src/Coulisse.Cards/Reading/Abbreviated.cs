using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Words a list writes short or in one breath, said in the way in which they are read everywhere: "Schmand od. saure Sahne", "kilo y medio de patatas", "125 g (+ 20 g pour les moules)".</summary>
internal static class Abbreviated
{
    private static readonly string[] Spanish = ["kilo", "litro"];
    private static readonly string[] Italian = ["chilo", "litro"];

    /// <summary>The line with such words written out; the line itself when it has none.</summary>
    public static string Out(string s, string lang)
    {
        if (s.Length is < 8 or > 200)
        {
            return s;
        }

        s = Added(s, lang);
        return lang switch
        {
            "de" => s.Replace(" od. ", " oder ", StringComparison.Ordinal).Replace(" bzw. ", " oder ", StringComparison.Ordinal),
            "es" => OneAndAHalf(s, Spanish, " y medio", "un "),
            "it" => OneAndAHalf(s, Italian, " e mezzo", "un "),
            _ => s,
        };
    }

    /// <summary>"kilo y medio de patatas": a measure without its "one", and a half more.</summary>
    private static string OneAndAHalf(string s, string[] measures, string half, string one)
    {
        foreach (string w in measures)
        {
            if (s.StartsWith(w, StringComparison.OrdinalIgnoreCase) && s.AsSpan(w.Length).StartsWith(half, StringComparison.OrdinalIgnoreCase))
            {
                return one + char.ToLowerInvariant(s[0]) + s[1..];
            }
        }

        return s;
    }

    /// <summary>"125 g (+ 20 g pour les moules)": what is added in a bracket that ends the line is added.</summary>
    private static string Added(string s, string lang)
    {
        int open = s.EndsWith(')') ? s.IndexOf('(') : -1;
        if (open < 4 || open + 3 >= s.Length || s[open + 1] != '+' || s.IndexOf(')') != s.Length - 1 || Amounts.At(s, Places.Skip(s, open + 2), lang) is not { Unit.Kind: "mass" or "volume" or "spoon" or "cup" })
        {
            return s;
        }

        return $"{s[..open].TrimEnd()} + {s[Places.Skip(s, open + 2)..^1]}";
    }
}
