using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Temperatures without a sign: "bake at 220", "warm to 60, add the iota", "core 63". Only where a verb of heat or cold leads to the figure and nothing counted stands behind it.</summary>
internal static class BareHeat
{
    private const int Reach = 60;
    private const double Widest = 40; // "bake at 160-180"
    private const double WidestFahrenheit = 75;
    private const double WidestBath = 5;
    private static readonly string[] Heats = ["warm", "heat", "reheat", "cook", "bring", "boil", "melt", "temper", "caramelise", "caramelize", "toast", "blend", "chauffer", "chauffez", "cuire", "cuisez", "monter", "porter", "tiédir", "fondre", "réchauffer", "erhitzen", "erwärmen", "kochen", "schmelzen", "garen", "abziehen", "calentar", "llevar", "cocer", "fundir", "subir", "scaldare", "scalda", "portare", "cuocere", "sciogliere", "fondere"];
    private static readonly string[] Cools = ["cool", "chill", "refroidir", "refroidissez", "descendre", "abkühlen", "kühlen", "enfriar", "bajar", "abatir", "raffreddare", "abbattere"];
    public static readonly string[] Leads = ["to", "until", "at", "reaches", "reads", "à", "jusqu'à", "auf", "bei", "bis", "a", "hasta", "fino a", "sur"];

    /// <summary>"Bake at 220 for 10 min", "reduce to 180", "fan 160": a bare figure that only an oven has.</summary>
    public static bool Oven(string s, int i, Numeral n, List<(int At, string Id)> operations, string lang)
    {
        if (lang == "ja" || n.Min % 5 != 0 || n.Max is { } most && (most % 5 != 0 || most <= n.Min || most - n.Min > (n.Min >= 300 ? WidestFahrenheit : Widest)))
        {
            return false;
        }

        if (n.Min is >= 100 and <= 280 && Places.Skip(s, n.End) is var open && open < s.Length && s[open] == '(' && s.IndexOf(')', open) is > 0 and var close && close - open < 12 && char.IsAsciiDigit(s[open + 1]) && Places.HasAny(s[open..close], "fan"))
        {
            // "170 (150 fan)"
            return true;
        }

        if (Alone(s, i, n, lang) || Turned(s, i, n, lang))
        {
            return true;
        }

        if (!(n.Min is >= 100 and <= 280 || (lang == "en" && n.Min is >= 300 and <= 500)) || !(Operations.Any(operations, "bake", "roast", "blind_bake", "preheat_oven", "gratinate", "braise") || Places.HasAny(s, "oven", "four", "horno", "forno", "Ofen")))
        {
            return false;
        }

        string before = Folding.Lower(s[Math.Max(0, i - 9)..i].TrimEnd());
        int k = Places.Skip(s, n.End);
        if (k > n.End && Behind(s, k, "oven", "fan oven", "er ofen") && Ends(before, "a", "an", "in", "into", "the", "hot", "moderate"))
        {
            // "into a 190 oven"
            return true;
        }

        if (lang == "en" && n.Min >= 300 && Places.WordAt(s, k, "to") && Ends(before, "at") && Places.Skip(s, k + 2) is var aim && aim < s.Length && char.IsAsciiDigit(s[aim]))
        {
            // "Roast at 325 to 145 degrees in the middle."
            return true;
        }

        if (k < s.Length && k + 1 < s.Length && n.Min >= 140 && (s[k] == ',' ? Ends(before, "roast", "bake", "oven", "backen", "enfourner", "hornear", "infornare", "four", "horno", "forno", "ofen") : k > n.End && (lang != "en" || before.EndsWith("oven", StringComparison.Ordinal)) && Ends(before, "oven", "four", "horno", "forno", "ofen")) && Places.Skip(s, s[k] == ',' ? k + 1 : k) is var told && told < s.Length && char.IsAsciiDigit(s[told]) && Clock.At(s, told, lang) is not null)
        {
            // "Roast 220, 20 mins"
            return true;
        }

        if (k < s.Length && (Ends(before, "then", "puis", "dann", "luego", "poi") || before.EndsWith(';')) && Places.Skip(s, s[k] == ',' ? k + 1 : k) is var timed && timed > n.End && timed < s.Length && char.IsAsciiDigit(s[timed]) && Clock.At(s, timed, lang) is not null)
        {
            // "Oven 240, 8 mins; 180, 20 mins"
            return true;
        }

        bool leads = before.EndsWith('@') || Ends(before, "at", "to", "à", "auf", "bei", "a", "fan", "oven", "umluft", "heißluft", "ventilato", "ventilado");
        bool ends = k >= s.Length || s[k] is ',' or ';' or ')' or '(' or '/' || (s[k] == '.' && (k + 1 == s.Length || s[k + 1] == ' ')) || Behind(s, k, "for", "and", "until", "till", "pendant", "durante", "per", "fan", "et", "y", "e", "und", "then", "puis", "dann", "with", "on", "poi", "luego", "unos", "about", "approx", "etwa", "ca", "circa", "environ", "lid", "steam") || k < s.Length && k > n.End && char.IsAsciiDigit(s[k]) && Clock.At(s, k, lang) is not null;
        return leads && ends || Verbal(s, n, k, before, lang);
    }

    /// <summary>"375 9-11 min", "180 25 min" on a line of their own: a figure and minutes right behind it, and nothing else, are an oven and how long.</summary>
    public static bool Alone(string s, int i, Numeral n, string lang) =>
        i == 0 && (n.Min is >= 140 and <= 260 || lang == "en" && n.Min is >= 300 and <= 500) && Places.Skip(s, n.End) is var k && k > n.End && k < s.Length && char.IsAsciiDigit(s[k]) && Clock.At(s, k, lang) is { Min: >= 3 and <= 240 } t && (s.AsSpan(t.End).Trim(" .").Length == 0 || s[t.End] is ',' or ';' or '.' || Behind(s, Places.Skip(s, t.End), "then", "until", "till", "puis", "jusqu'à", "dann", "bis", "luego", "hasta", "poi", "fino"));

    /// <summary>"220 for 20 min then 180 for 55 min": a note that opens with the oven's figure, or goes on with it, and tells how long right behind. Nothing else lasts by its count.</summary>
    private static bool Turned(string s, int i, Numeral n, string lang)
    {
        if (n.InWords || n.Min is < 150 or > 280 && !(lang == "en" && n.Min is >= 300 and <= 500))
        {
            return false;
        }

        int k = Places.Skip(s, n.End);
        string last = lang switch { "fr" => "pendant", "de" => "für", "es" => "durante", "it" => "per", _ => "for" };
        if (k == n.End || !Behind(s, k, last) || Clock.At(s, Places.Skip(s, k + last.Length), lang) is null)
        {
            return false;
        }

        ReadOnlySpan<char> before = s.AsSpan(0, i).TrimEnd();
        return before.Length == 0 || before[^1] is ',' or ';' or '.' or '/' || Places.EndsIn(before, "then") || Places.EndsIn(before, "puis") || Places.EndsIn(before, "dann") || Places.EndsIn(before, "luego") || Places.EndsIn(before, "poi");
    }

    /// <summary>True for a line that opens so.</summary>
    public static bool Opens(string s, string lang) => char.IsAsciiDigit(s[0]) && s.Length > 8 && Numbers.Range(s, 0, lang) is { Max: null } n && n.Min % 5 == 0 && Turned(s, 0, n, lang);

    /// <summary>"Bake 180 20 min", "roast 200 until brown": the figure right behind its verb, with what only a heat goes on with. "Bake 120 rolls" counts.</summary>
    private static bool Verbal(string s, Numeral n, int k, string before, string lang)
    {
        if (n.Min is < 120 or > 260 || k == n.End || k >= s.Length || !Ends(before, "bake", "roast", "backen", "hornear", "enfourner", "infornare"))
        {
            return false;
        }

        int time = Behind(s, k, "for") ? Places.Skip(s, k + 3) : k;
        return Behind(s, k, "until", "till", "fan") || char.IsAsciiDigit(s[time < s.Length ? time : k]) && Clock.At(s, time, lang) is not null;
    }

    /// <summary>"sous vide 63.5/45 min", "bath 56, 2 h": a bare figure of a water bath with its time right behind it.</summary>
    public static bool Bath(string s, int i, Numeral n, List<(int At, string Id)> operations, string lang)
    {
        if (lang == "ja" || n.InWords || n.Max - n.Min is > WidestBath or <= 0 || n.Min is < 40 or > 95 || !Operations.Any(operations, "water_bath", "fill_bath"))
        {
            return false;
        }

        int k = Places.Skip(s, n.End);
        if ((k >= s.Length || s[k] is ',' or ';' || s[k] == '.' && (k + 1 == s.Length || s[k + 1] == ' ')) && Ends(Folding.Lower(s[Math.Max(0, i - 12)..i].TrimEnd()), "bath to", "bath at"))
        {
            // "Set the water bath to 62."
            return true;
        }

        int time = k < s.Length && s[k] is '/' or ',' or '@' ? Places.Skip(s, k + 1) : k;
        time = Places.WordAt(s, time, "for") ? Places.Skip(s, time + 3) : time;
        return time > n.End && time < s.Length && char.IsAsciiDigit(s[time]) && Clock.At(s, time, lang) is not null && (i == 0 || s[i - 1] != '-');
    }

    /// <summary>"warm to 60", "cook to 84, strain", "cool to 4", "core 54": a figure a food is brought to.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="i">Where the figure stands.</param>
    /// <param name="n">The figure.</param>
    /// <param name="lang">Language.</param>
    /// <param name="core">True when the words say it is the middle's.</param>
    public static bool Food(string s, int i, Numeral n, string lang, out bool core)
    {
        core = false;
        if (n.InWords || n.Min is < 1 or > 230 || lang == "ja")
        {
            return core = lang == "ja" && BareCores.Japanese(s, i, n);
        }

        int k = Places.Skip(s, n.End);
        bool ends = k >= s.Length || s[k] is ',' or ';' or ')' or '+' || s[k] == '/' && k > n.End || (s[k] == '.' && (k + 1 == s.Length || s[k + 1] == ' ')) || s[k] == '-' && k > n.End || Behind(s, k, "and", "then", "before", "core", "internal", "stirring", "over", "et", "puis", "avant", "en", "und", "dann", "y", "luego", "antes", "e", "poi", "prima", "if", "off", "in the middle", "in the centre", "while", "at least", "for", "pendant", "für", "durante", "per") || BareCores.Behind(s, k);
        if (!ends)
        {
            return false;
        }

        string before = Folding.Lower(s[Math.Max(0, i - Reach)..i].TrimEnd());
        core = BareCores.At(s, k, n, before, lang);
        if (core)
        {
            return true;
        }

        if (lang == "en" && n.Min is > 99 and <= 212 && (Ends(before, BareCores.Names) || Ends(before, "until", "to") && Behind(s, k, "internal", "inside", "core") || Ends(before, "registers", "register", "registering") || Ends(before, "hits", "reads", "reaches", "shows", "should be", "is") && Places.HasAny(before, "core", "centre", "center", "middle", "probe", "thermometer", "internal")))
        {
            // Fahrenheit without its sign; sugar and oil are hotter than any middle.
            core = !Sweet.In(s);
            return true;
        }

        int stop = before.AsSpan().LastIndexOfAny(";()");
        int full = before.LastIndexOf(". ", StringComparison.Ordinal);
        string clause = before[(Math.Max(stop, full) + 1)..];
        if (clause.LastIndexOf(',') is var comma and > 0 && Verb(clause[comma..], Heats, Cools))
        {
            clause = clause[comma..];
        }

        return Ends(clause, Leads) && (n.Min >= 20 && Verb(clause, Heats, Cools) || Verb(clause, Cools, []));
    }

    /// <summary>What a thermometer stands in that is no middle of a food.</summary>
    public static readonly WordList Sweet = new("sugar", "syrup", "caramel", "oil", "fat", "jam", "jelly", "toffee", "fudge", "honey", "candy", "milk");

    private static bool Verb(string clause, string[] one, string[] other) => Places.HasAny(clause, one) || other.Length > 0 && Places.HasAny(clause, other);

    private static bool Behind(string s, int k, params ReadOnlySpan<string> words) => Places.Behind(s, k, words) > 0;

    internal static bool Ends(string before, params ReadOnlySpan<string> words)
    {
        foreach (string w in words)
        {
            if (before.EndsWith(w, StringComparison.Ordinal) && (before.Length == w.Length || !char.IsLetterOrDigit(before[before.Length - w.Length - 1])))
            {
                return true;
            }
        }

        return false;
    }
}
