using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Kern 75 °C", "Fühler 54 °C", "bis im Inneren 74 °C", "temperatura interna llegue a 74 °C", "hasta que el corazón alcance 45 °C", "58 °C on the probe": the middle of a food, told right beside its figure. Nothing but small words stands between, so that "den Kern entfernen, bei 80 °C trocknen" names none.</summary>
internal static class MiddleWords
{
    private const double Least = 35;
    private const double Most = 99;
    private static readonly WordSet Names = new(anyCase: false,
        "kern", "kerntemp", "fühler", "kernfühler", "bratenthermometer", "inneren", "innen", "innentemperatur", "interna", "interior", "corazón", "centro", "cuore", "sonda", "interne", "sonde", "core", "probe");

    // What may stand between the middle and its figure.
    private static readonly WordSet Smalls = new(anyCase: false,
        "auf", "bis", "bei", "von", "zu", "mind", "mindestens", "min", "ca", "etwa", "eine", "hat", "erreicht", "beträgt", "zeigt", "muss",
        "a", "de", "en", "los", "al", "menos", "unos", "mínimo", "mínima", "llegue", "llega", "alcance", "alcanza", "alcanzar", "marque", "marca", "sea", "esté", "di", "almeno", "circa", "raggiunge", "raggiunga", "segna", "segni", "arriva", "arrivi",
        "à", "atteint", "atteigne", "indique", "environ", "au", "moins", "to", "at", "of", "temperature", "temp", "temperatura", "température", "set", "reads", "hits", "reaches", "is", "around", "about", "=", "+", "≥", ">");

    private static readonly string[] Probes = [" on the probe", " on a probe", " on the thermometer", " on a thermometer", " by probe", " am fühler", " am kernfühler", " à la sonde", " alla sonda", " en la sonda", " con sonda", " interna", " im inneren", " de corazón"];
    private static readonly WordList Elsewhere = new("oil", "syrup", "sugar", "caramel", "öl", "zucker", "sirup", "aceite", "almíbar", "azúcar", "olio", "zucchero", "sciroppo", "huile", "sirop", "sucre");
    private static readonly WordList Trays = new("horno", "forno", "bandeja", "teglia", "ofen", "blech", "four", "plaque", "rejilla");

    /// <summary>True for a figure of the middle.</summary>
    /// <param name="before">What stands before it in its sentence, in small letters.</param>
    /// <param name="after">What stands behind it, in small letters.</param>
    /// <param name="celsius">The figure.</param>
    public static bool Of(string before, string after, double celsius) =>
        celsius is >= Least and <= Most && (Led(before) || Places.Begins(after, Probes)) && !Elsewhere.In(before);

    private static bool Led(string before)
    {
        int end = before.Length;
        for (int guard = 0; guard < 6; guard++)
        {
            while (end > 0 && before[end - 1] is ' ' or ':' or '.' or '(')
            {
                end--;
            }

            int from = end;
            while (from > 0 && before[from - 1] is not (' ' or '(' or '/' or '\''))
            {
                from--;
            }

            string word = before[from..end];
            if (Names.Contains(word))
            {
                // "Bandeja en el centro a 90 °C" is a place.
                return word is not ("centro" or "interior") || !Trays.In(before);
            }

            if (!Smalls.Contains(word))
            {
                return false;
            }

            end = from;
        }

        return false;
    }

    /// <summary>"In a 140 °C oven to 75 °C", "au four à 150 °C jusqu'à 70 °C": what the food is brought to, behind the hotter heat it is cooked in; an oven turned down "from 200 to 90 °C" is one oven.</summary>
    /// <param name="before">What stands before the figure, in small letters.</param>
    /// <param name="celsius">The figure.</param>
    /// <param name="last">The heat told before it.</param>
    public static bool Goal(string before, double celsius, StepTemperature? last)
    {
        if (celsius is < Least or > Most || last is not { Of: TemperatureOf.Oven or TemperatureOf.Pan } || last.Celsius < celsius + Cooler || !before.EndsWith(" to ", StringComparison.Ordinal) || Turned.In(before))
        {
            return false;
        }

        int told = before.AsSpan().LastIndexOfAnyInRange('0', '9');
        string between = told < 0 ? "" : before[(told + 1)..^" to ".Length];
        return told >= 0 && !between.Contains(';') && !Set.In(between);
    }

    private const double Cooler = 20;
    private static readonly WordList Turned = new("from", "lower", "drop", "turn", "reduce", "down", "cool", "fall");
    private static readonly WordList Set = new("set", "switch", "hold", "let", "oven to", "preheat", "heat the oven");

    /// <summary>"Bake at 200 °C, then reduce to 90 °C": the oven told before goes on with less.</summary>
    public static bool Lowered(string before, double celsius, StepTemperature? last) => last is { Of: TemperatureOf.Oven } && celsius >= 60 && celsius < last.Celsius && BareHeat.Ends(before.TrimEnd(), Lowers);

    private static readonly string[] Lowers = ["reduce to", "lower to", "drop to", "turn down to", "down to", "reduzieren auf", "herunterschalten auf", "baisser à", "réduire à", "bajar a", "reducir a", "abbassare a", "ridurre a"];

    private static readonly string[] Beaten = ["whisk to", "whisk until", "whisk it to", "stir to", "stir until", "beat to", "whisking to", "stirring to", "cook to", "whisk them to", "fouetter jusqu'à", "remuer jusqu'à", "batir hasta", "remover hasta", "montare fino a", "mescolare fino a"];

    /// <summary>"Over a bain-marie whisk to 65 °C": what is stirred there is the food.</summary>
    public static bool Stirred(string before) => BareHeat.Ends(before.TrimEnd(), Beaten);

    /// <summary>"Core 58 °C, then rest at 55 °C": another doing lies between the middle and the figure.</summary>
    public static bool Past(string before)
    {
        int at = Math.Max(before.LastIndexOf("core", StringComparison.Ordinal), Math.Max(before.LastIndexOf("kern", StringComparison.Ordinal), before.LastIndexOf("cœur", StringComparison.Ordinal)));
        return at >= 0 && before[at..] is var rest && (Thens.In(rest) || rest.AsSpan().IndexOfAnyInRange('0', '9') >= 0 && Later.In(rest));
    }

    private static readonly WordList Thens = new("then hold", "then rest", "then chill", "then sear", "then keep", "then cool", "then reduce", "puis refroidir", "puis tenir");
    private static readonly WordList Later = new("rest", "chill to", "cool to", "hold at", "puis repos", "reposer", "refroidir", "tenir", "ruhen", "dann", "abkühlen");

    private static readonly string[] Holds = ["hold", "hot hold", "hot-hold", "keep warm", "keep hot", "keep", "serve", "warm halten", "warmhalten", "tenir", "maintenir", "mantener", "mantenere"];
    private static readonly WordList Vessels = new("oven", "bath", "bain", "four", "ofen", "horno", "forno", "wasserbad", "water");

    /// <summary>"Bake to 80 °C core. Hold at 63 °C": the sentence opens with what is done to the finished food.</summary>
    public static bool Held(string before)
    {
        int from = Places.Skip(before, 0);
        return Array.Exists(Holds, h => Places.WordAt(before, from, h)) && !Vessels.In(before);
    }

    /// <summary>"75 °C inside."; "to 5 °C inside 90 minutes" and "inside the oven" say something else.</summary>
    public static bool Inside(string after) =>
        after.StartsWith(" inside", StringComparison.Ordinal) && Places.Skip(after, " inside".Length) is var next && (next >= after.Length || !char.IsAsciiDigit(after[next]) && !Places.WordAt(after, next, "the") && !Places.WordAt(after, next, "a") && !Places.WordAt(after, next, "an") && !Places.WordAt(after, next, "of"));
}
