using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A heat of the water around a food, told in the words of each language: "im Wasserbad bei 62 °C", "au bain à 64 °C", "a bagnomaria a 82 °C", "63℃の湯せんで", "13 min at 75 °C in the circulator". What is brought to a heat over such a bath is the food ("auf 65 °C aufschlagen", "湯せんで50℃まで"); ice and lime are no such bath.</summary>
internal static class Baths
{
    private const double Least = 40;
    private const double Most = 99;
    private static readonly string[] Names = ["wasserbad", "thermalisierer", "bain", "bain-marie", "thermoplongeur", "bain thermostaté", "baño", "baño maría", "bagnomaria", "bagno maria", "bagno", "bagno termostatico", "roner", "immersion bath", "circulator", "immersion circulator"];
    private static readonly WordList Named = new(Names);
    private static readonly WordList OtherBaths = new("ice bath", "calcium bath", "lime bath", "brine bath", "alginate bath", "bain de glace", "baño de hielo", "baño de calcio", "bagno di ghiaccio", "bagno d'olio");
    private static readonly string[] Ats = ["at", "bei", "à", "a", "im", "in", "in a", "en", "con", "unos", "ca.", "circa", "de", "von", "@", "with"];
    private static readonly string[] Directly = ["wasserbad auf", "bain-marie à", "bain à", "wasserbad", "baño", "bagno", "circulator to", "circulator"];
    private static readonly string[] Japanese = ["湯煎", "湯せん", "ウォーターバス", "低温調理器", "恒温槽"];
    private static readonly string[] Behind = [" bath", " water bath", " immersion bath", " warmen wasserbad", " heißen wasserbad", " wasserbad", " im wasserbad", " au bain", " al baño", " a bagnomaria"];
    private static readonly string[] Later = ["in the immersion bath", "in an immersion bath", "in the circulator", "in a circulator", "in the bath", "in a bath", "with the circulator", "im wasserbad", "au bain-marie", "au thermoplongeur", "al baño maría", "a bagnomaria", "con roner", "con el roner"];

    /// <summary>True for a figure of such water.</summary>
    /// <param name="before">What stands before it in its sentence, in small letters.</param>
    /// <param name="after">What stands behind it, in small letters.</param>
    /// <param name="celsius">The figure.</param>
    public static bool Of(string before, string after, double celsius)
    {
        if (celsius is < Least or > Most)
        {
            return false;
        }

        if (after.Length > 0 && Places.IsJapanese(after[0]) || before.Length > 0 && Places.IsJapanese(before[^1]))
        {
            return OfJapanese(before, after);
        }

        string lead = before.TrimEnd(' ', ':', '(');
        if (Places.Ends(lead, Directly))
        {
            // "Über dem Wasserbad auf 65 °C aufschlagen": the food.
            return !OtherBaths.In(before) && !(lead.EndsWith("wasserbad auf", StringComparison.Ordinal) && Places.Ends(lead[..^"wasserbad auf".Length].TrimEnd(), "dem", "einem", "im", "heißen", "warmen", "überm"));
        }

        bool at = Places.Ends(lead, Ats) && !Places.Ends(lead, "fino a", "hasta a");
        if (!at || OtherBaths.In(before))
        {
            return false;
        }

        return Named.In(before) && Nearest(before) || Places.Begins(after, Behind) || Places.HasAny(Clause(after), Later);
    }

    /// <summary>True where the bath is named behind the last sign that begins another doing.</summary>
    private static bool Nearest(string before) => before.AsSpan().LastIndexOfAny(",;") is var comma && (comma < 0 || Named.In(before[comma..]) || before.AsSpan(comma).IndexOfAnyInRange('0', '9') < 0 && Named.In(before[..comma]) && !Verbs.In(before[comma..]));

    private static readonly WordList Verbs = new("bake", "roast", "dry", "chill", "backen", "braten", "trocknen", "cuire", "enfourner", "hornear", "secar", "infornare", "then", "puis", "dann", "luego", "poi");

    private static bool OfJapanese(string before, string after)
    {
        if (after.StartsWith("まで", StringComparison.Ordinal) || after.StartsWith("にな", StringComparison.Ordinal))
        {
            return false;
        }

        foreach (string bath in Japanese)
        {
            if (after.StartsWith("の" + bath, StringComparison.Ordinal) || before.LastIndexOf(bath, StringComparison.Ordinal) is var at and >= 0 && before.AsSpan(at).IndexOfAny("、。)") < 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>What stands behind a figure before its clause ends.</summary>
    internal static string Clause(string after) => after.AsSpan().IndexOfAny(".,;") is var end and >= 0 ? after[..end] : after;
}
