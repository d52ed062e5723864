using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"3/4 foglie di salvia", "2/3 sprigs thyme", "2/3 Zehen Knoblauch": a stroke between two counts of what nobody takes two thirds of. A word for one ("3/4 fetta", "½ foglio di gelatina") and a half of anything stay a fraction.</summary>
internal static class SlashCounts
{
    // Said of several; of one sheet, clove or slice a part can be taken.
    private static readonly HashSet<string> Several = new(StringComparer.OrdinalIgnoreCase)
    {
        "sprigs", "leaves", "cloves", "slices", "stalks", "rashers", "feuilles", "brins", "branches", "gousses", "gousses d'ail", "tranches", "rondelles", "tiges", "rameaux", "Zweige", "Blätter", "Zehen", "Knoblauchzehen", "Scheiben", "Stiele", "Stängel", "hojas", "ramitas", "ramas", "dientes", "lonchas", "rebanadas", "rodajas", "tallos",
        "foglie", "fogli", "foglioline", "rametti", "rami", "spicchi", "fette", "fettine", "gambi", "coste", "ciuffi",
    };

    /// <summary>The number as the two counts it tells; as it is where it tells a part of one.</summary>
    public static Numeral Of(string s, Numeral number, UnitWord unit, int at, int end)
    {
        int i = number.End - 3;
        return number is { Max: null, InWords: false, Repaired: false, Min: > 0.5 and < 1 } && i >= 0 && unit.Kind is "count" or "word" && s[i + 1] == '/' && (s[i], s[i + 2]) is ('2', '3') or ('3', '4') or ('4', '5') or ('5', '6') && (i == 0 || s[i - 1] is ' ' or '(') && Several.Contains(s[at..end])
            ? number with { Min = s[i] - '0', Max = s[i + 2] - '0' }
            : number;
    }
}
