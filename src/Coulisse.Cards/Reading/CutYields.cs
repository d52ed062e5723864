using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>
/// "Glaze and cut into 20." as the end of a bake, "Zu 8 Broten aufarbeiten" of a dough: on a card that tells no yield in any other way the last cut, or the shaping of its loaves, tells it.
/// What is cut has to be the whole: "cut the lemon into 8", "cut into 20 mm dice" tell nothing.
/// </summary>
internal static class CutYields
{
    private const int LastSteps = 2;
    private const int Fewest = 4;
    private const int Most = 500;
    private static readonly string[] Cuts = ["cut into", "cut in", "cut it into", "cut the slab into", "cut the cake into", "cut the tray into", "slice into", "slice it into", "portion into", "couper en", "coupez en", "découper en", "découpez en", "détailler en", "détaillez en", "tailler en", "cortar en", "cortarlo en", "cortarla en", "corta en", "porcionar en", "tagliare in", "tagliarla in", "tagliarlo in", "tagliate in", "porzionare in"];
    private static readonly string[] German = ["schneiden", "teilen", "aufschneiden", "portionieren"];
    private static readonly string[] Pieces = ["bar", "square", "finger", "rectangle", "triangle", "riegel", "quadrat", "rechteck", "schnitte", "carré", "barre", "trozo", "cuadrado", "barrita", "quadrat", "barrett", "rettangol", "quadrott", "portion", "porcion", "porzion"];
    private static readonly string[] Shapes = ["shape", "shape into", "mould into", "mold into", "form into", "shape to", "divide into", "façonner", "façonner en", "former", "diviser en", "formar", "dividir en", "formare", "dividere in"];
    private static readonly string[] Shaping = ["aufarbeiten", "formen", "wirken", "rundwirken", "langwirken", "aufmachen"];
    private static readonly string[] Loaves = ["loaf", "loaves", "baguette", "brot", "laib", "pain", "bâtard", "boule", "hogaza", "panes", "barra", "pani", "pagnott", "filon", "stollen", "bloomer"];
    private static readonly string[] Ready = ["peel", "drain", "wash", "trim", "roll", "core", "halve", "hull", "stone", "boil", "épluch", "égoutt", "lav", "étal", "abaiss", "pelar", "pela", "escurr", "estir", "sbucc", "scol", "stend"];
    private static readonly WordList AnyShape = new([.. Shapes, .. Shaping]);

    /// <summary>The yield such a step tells; null for a card without one, or with two that differ.</summary>
    public static CardYield? Of(List<Component> components, string lang)
    {
        List<Step> steps = [];
        foreach (Component c in components)
        {
            steps.AddRange(c.Steps);
        }

        if (steps.Count < 2 || !steps.Exists(Baked))
        {
            return null;
        }

        for (int i = steps.Count - 1; i >= Math.Max(1, steps.Count - LastSteps); i--)
        {
            if (Cut(steps[i].Text, lang) is { } pieces && steps.FindLastIndex(Baked) <= i)
            {
                return new CardYield(pieces, "pieces", steps[i].Text, steps[i].Span);
            }
        }

        CardYield? told = null;
        foreach (Step s in steps)
        {
            if (Shaped(s.Text, lang) is { } loaves)
            {
                if (told is not null)
                {
                    return null;
                }

                told = new CardYield(loaves, "pieces", s.Text, s.Span);
            }
        }

        return told;
    }

    private static bool Baked(Step s) => s.Operations.Contains("bake") || s.Temperatures.Any(t => t.Of == TemperatureOf.Oven && t.Celsius >= 100);

    /// <summary>Into how many the whole is cut in the last clause of a step.</summary>
    private static double? Cut(string s, string lang)
    {
        if (lang == "ja")
        {
            return Japanese(s);
        }

        if (lang == "de")
        {
            // "In 20 Stücke schneiden.", "Auskühlen lassen und in 20 Riegel schneiden."
            string bare = s.TrimEnd('.', ' ');
            return Array.Exists(German, v => bare.EndsWith(" " + v, StringComparison.Ordinal)) && bare.LastIndexOf("in ", bare.LastIndexOf(' '), StringComparison.OrdinalIgnoreCase) is >= 0 and var into && (into == 0 || into > 4 && bare[..(into - 1)] is var before && (before[^1] is ',' or '.' || before.EndsWith(" und", StringComparison.Ordinal))) ? Whole(bare[..bare.LastIndexOf(' ')], into + 3, lang) : null;
        }

        foreach (string w in Cuts)
        {
            int at = Places.FindWord(s, w);
            if (at >= 0 && !Readied(s, at) && Whole(s, Places.Skip(s, at + w.Length), lang) is { } n)
            {
                return n;
            }
        }

        return null;
    }

    /// <summary>"Peel the eggs and cut into 4": a food made ready in the same sentence is what is cut.</summary>
    private static bool Readied(string s, int at)
    {
        int from = s.AsSpan(0, at).LastIndexOf(". ") is >= 0 and var stop ? stop + 2 : 0;
        for (int i = from; i < at; i++)
        {
            if (char.IsLetter(s[i]) && (i == from || !char.IsLetter(s[i - 1])) && YieldWords.Begins(s[i..at], Ready))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The count at a place where nothing stands behind it, or pieces and the end of the sentence; "20 mm dice" counts none.</summary>
    private static double? Whole(string s, int i, string lang)
    {
        i = Lexicon.Longest("hedge", s, i, 2, lang, out int end) is not null ? Places.Skip(s, end) : i;
        if (i >= s.Length || !char.IsAsciiDigit(s[i]) || Numbers.Range(s, i, lang) is not { Max: null, Min: >= Fewest and <= Most } n || n.Min % 1 > 0)
        {
            return null;
        }

        string rest = s[n.End..].Trim();
        rest = rest.AsSpan().IndexOfAny(".,;") is >= 0 and var stop ? rest[..stop] : rest;
        string noun = rest[..Places.WordEnd(rest, 0)];
        bool pieces = rest.Length == 0 || rest.Count(' ') < 3 && rest.AsSpan().IndexOfAnyInRange('0', '9') < 0 && (YieldWords.Begins(noun, Pieces) || YieldWords.Begins(rest[(rest.LastIndexOf(' ') + 1)..], Pieces) || YieldWords.PiecesOf(string.Concat(n.Min.ToString(CultureInfo.InvariantCulture), " ", noun), lang) is not null);
        return pieces ? n.Min : null;
    }

    private static double? Japanese(string s)
    {
        foreach (string w in (ReadOnlySpan<string>)["等分に切る", "等分に切り分ける", "個に切る", "個に切り分ける", "切れに切る", "切れに切り分ける", "枚に切り分ける"])
        {
            int at = s.IndexOf(w, StringComparison.Ordinal);
            int from = at;
            while (from > 0 && char.IsAsciiDigit(s[from - 1]))
            {
                from--;
            }

            if (at > 0 && from < at && at - from < 4 && (from == 0 || s[from - 1] is '、' or 'ら' or 'て' or '、' or '。') && double.Parse(s.AsSpan(from, at - from), CultureInfo.InvariantCulture) is >= Fewest and var n)
            {
                return n;
            }
        }

        return null;
    }

    /// <summary>"Zu 8 Broten aufarbeiten", "Shape 6 loaves", "Formar 4 barras": loaves, and the verb that shapes them.</summary>
    private static double? Shaped(string s, string lang)
    {
        if (lang == "ja" || s.Length > 120 || !AnyShape.In(s))
        {
            return null;
        }

        for (int i = 2; i < s.Length; i++)
        {
            if (!char.IsAsciiDigit(s[i]) || s[i - 1] != ' ' || Numbers.Range(s, i, lang) is not { Max: null, Min: >= 2 and <= Most } n || n.Min % 1 > 0)
            {
                continue;
            }

            string noun = Places.Letters(s, Places.Skip(s, n.End));
            string before = s[..i].TrimEnd();
            bool shaped = lang == "de" ? before.EndsWith("zu", StringComparison.OrdinalIgnoreCase) && Array.Exists(Shaping, v => Places.FindWord(s, v, n.End) > 0) : Array.Exists(Shapes, v => before.EndsWith(v, StringComparison.OrdinalIgnoreCase) && (before.Length == v.Length || before[^(v.Length + 1)] == ' '));
            if (shaped && YieldWords.Begins(noun, Loaves))
            {
                return n.Min;
            }
        }

        return null;
    }
}
