using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>The middle of a food without a degree sign: "core should read 54", "54 à cœur", "al cuore deve segnare 54", "芯温54". Only where the words name the middle or the probe, and the figure is one a middle has.</summary>
internal static class BareCores
{
    private const double Least = 35;
    private const double Most = 99;

    /// <summary>Words right before such a figure.</summary>
    public static readonly string[] Names = ["core", "core of", "core temp", "core temperature", "core temperature of", "core temp of", "internal", "internal temp", "internal temperature", "internal temperature of", "probe", "probe temp", "à cœur", "à coeur", "kerntemperatur", "kt", "al cuore", "en el centro"];

    private static readonly string[] Middles = ["thickest part", "thermometer", "core", "centre", "center", "middle", "probe", "internal", "cœur", "coeur", "sonde", "kern", "kerntemperatur", "innentemperatur", "fühler", "cuore", "corazón", "sonda", "en el centro", "al centro"];
    private static readonly string[] OfFood = ["thickest part", "thermometer", "core", "probe", "internal", "cœur", "coeur", "sonde", "kern", "kerntemperatur", "innentemperatur", "fühler", "cuore", "corazón", "sonda"];
    private static readonly string[] Reads = ["hits", "hit", "reads", "read", "reading", "reaches", "reach", "reached", "shows", "show", "registers", "register", "registering", "says", "should be", "must be", "is", "at least", "for", "to", "at"];
    private static readonly string[] ReadsElsewhere = ["indique", "indiquer", "affiche", "afficher", "marque", "marquer", "atteint", "atteindre", "anzeigt", "zeigt", "erreicht", "beträgt", "ist", "hat", "bei", "auf", "marca", "marque", "marcar", "indica", "indicar", "alcance", "alcanza", "alcanzar", "segna", "segnare", "segni", "indicare", "raggiunge", "raggiunga", "raggiungere"];
    private static readonly string[] Pulls = ["pull at", "pull it at", "pull them at", "take out at", "take it out at", "take them out at", "remove at", "lift at"];
    private static readonly string[] Sides = ["inside", "internal", "in the middle", "in the centre", "in the center", "at the core", "at the centre", "at the center", "in the core", "à cœur", "à coeur", "au cœur", "im Kern", "in der Mitte", "al cuore", "al centro", "en el centro", "en el corazón"];
    private static readonly Beginnings FirstOfSides = new(Sides);

    /// <summary>True for a figure of the middle.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="k">What stands behind the figure.</param>
    /// <param name="n">The figure.</param>
    /// <param name="before">What stands before it, in small letters.</param>
    /// <param name="lang">Language.</param>
    public static bool At(string s, int k, Numeral n, string before, string lang)
    {
        if (n.Min is < Least or > Most || n.Max is > Most || OvenPlaces.Sets(before))
        {
            return false;
        }

        if (BareHeat.Ends(before, Names))
        {
            return true;
        }

        bool reads = BareHeat.Ends(before, Reads) || lang != "en" && BareHeat.Ends(before, ReadsElsewhere);
        return reads && Places.HasAny(before, OvenPlaces.In(before) ? OfFood : Middles) || (reads || BareHeat.Ends(before, BareHeat.Leads)) && Behind(s, k) || lang == "en" && BareHeat.Ends(before, Pulls) && Places.HasAny(s, "core", "probe", "in the middle", "in the centre", "in the center");
    }

    /// <summary>True where the words around a figure with its sign name the middle of a food; the middle of the oven is a place.</summary>
    /// <param name="before">What stands before it, in small letters.</param>
    /// <param name="after">What stands behind it, in small letters.</param>
    public static bool Named(string before, string after)
    {
        bool food = Any(before, after, "core", "internal", "thickest part", "kerntemperatur", "cœur", "coeur", "al cuore", "al corazón") || MiddleWords.Inside(after) || after.StartsWith(" au cœur", StringComparison.Ordinal) || after.StartsWith(" à cœur", StringComparison.Ordinal) || after.StartsWith(" à coeur", StringComparison.Ordinal) || after.StartsWith(" im kern", StringComparison.Ordinal) || after.StartsWith(" en el corazón", StringComparison.Ordinal) || Leads(after, "core") || Japanese(before);
        return (food || Any(before, after, "al centro", "centre", "center", "middle") || Leads(after, "centre", "center", "middle") || after.StartsWith(" en el centro", StringComparison.Ordinal) || after.StartsWith(" in der mitte", StringComparison.Ordinal))
            && !OvenPlaces.Sets(before) && (food || !OvenPlaces.In(before) && !OvenPlaces.In(after));
    }

    /// <summary>"Registers 165 °F", "probe: 48 °C", "54 °C for medium": what a probe reads in a food, and not in sugar or oil.</summary>
    public static bool Probed(string before, string after, double celsius)
    {
        if (celsius is < Least or > Most || BareHeat.Sweet.In(before))
        {
            return false;
        }

        string lead = before.TrimEnd(' ', ':');
        return BareHeat.Ends(lead, "registers", "register", "probe", "probe to", "probe at", "sonde", "sonda") || BareHeat.Ends(lead, "reads", "reaches", "hits", "shows") && Places.HasAny(lead, "thermometer", "probe")
            || after.StartsWith(" for rare", StringComparison.Ordinal) || after.StartsWith(" for medium", StringComparison.Ordinal) || after.StartsWith(" for well done", StringComparison.Ordinal);
    }

    /// <summary>True where a word stands anywhere before a figure, or right behind it.</summary>
    private static bool Any(string before, string after, params ReadOnlySpan<string> words)
    {
        foreach (string w in words)
        {
            // "Score the skin" names no core.
            if (before.IndexOf(w, StringComparison.Ordinal) is var at and >= 0 && (at == 0 || !char.IsLetter(before[at - 1])) || after.Length > w.Length && after[0] == ' ' && after.AsSpan(1).StartsWith(w))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>" in the middle", " at the core".</summary>
    private static bool Leads(string after, params ReadOnlySpan<string> words)
    {
        ReadOnlySpan<char> rest = after.StartsWith(" in the ", StringComparison.Ordinal) || after.StartsWith(" at the ", StringComparison.Ordinal) ? after.AsSpan(8) : default;
        foreach (string w in words)
        {
            if (rest.StartsWith(w))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True where the words behind a figure name the middle it is of.</summary>
    public static bool Behind(string s, int k)
    {
        foreach (string side in FirstOfSides.May(s, k) ? Sides : [])
        {
            if (Places.WordAt(s, k, side) && !OvenPlaces.Whole(s.AsSpan(k + side.Length)) && (side != "inside" || MiddleWords.Inside(" " + s[k..Math.Min(s.Length, k + 20)])))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"中心が54℃", "芯温54℃": true where the words stand before a figure and no other figure between.</summary>
    public static bool Japanese(string before)
    {
        int at = Math.Max(before.LastIndexOf("中心", StringComparison.Ordinal), before.LastIndexOf("芯温", StringComparison.Ordinal));
        return at >= 0 && before.AsSpan(at).IndexOfAnyInRange('0', '9') < 0;
    }

    /// <summary>"芯温54", "中心温度は63": the words stand before the figure, and no counter behind it.</summary>
    public static bool Japanese(string s, int i, Numeral n)
    {
        if (n.InWords || n.Min is < Least or > Most || n.End < s.Length && (char.IsLetterOrDigit(s[n.End]) && s[n.End] is not ('に' or 'で' or 'ま' or 'を' or 'が' or 'と') || s[n.End] == '%'))
        {
            return false;
        }

        ReadOnlySpan<char> before = s.AsSpan(0, i).TrimEnd(" :は=が");
        return before.EndsWith("芯温") || before.EndsWith("芯温度") || before.EndsWith("中心温度") || before.EndsWith("中心");
    }
}
