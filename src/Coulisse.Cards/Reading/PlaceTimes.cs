using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"In frigo 2-3 giorni", "Fridge: 3 days", "3d fridge / 3m freezer": a remark of nothing but places and days, which says how long a thing keeps. Any other word may be work ("marinate in the fridge 2 days"); under a day nobody speaks of keeping.</summary>
internal static class PlaceTimes
{
    private const int Longest = 90;
    private const double Day = 1440;
    private const double Month = 30 * Day;
    private const double MostMonths = 18;
    private static readonly WordSet Words = new(anyCase: true,
        "fridge", "refrigerator", "refrigerated", "chiller", "chilled", "walk-in", "freezer", "frozen", "room", "temperature", "temp", "ambient", "airtight", "tin", "box", "pantry", "larder", "sealed", "vacuum", "vac",
        "frigo", "réfrigérateur", "frais", "congélateur", "congélo", "congelé", "congelée", "surgelé", "surgelée", "chambre", "froide", "température", "ambiante", "boîte", "hermétique",
        "Kühlschrank", "Kühlraum", "Kühlhaus", "gekühlt", "Kühlung", "Tiefkühler", "Tiefkühlfach", "Tiefkühlschrank", "Gefrierschrank", "Gefrierfach", "Froster", "TK", "tiefgekühlt", "gefroren", "Zimmertemperatur", "Raumtemperatur", "luftdicht", "Dose",
        "nevera", "frigorífico", "cámara", "congelador", "congelado", "congelada", "temperatura", "ambiente", "hermético", "frigorifero", "cella", "freezer", "congelatore", "congelato", "congelata", "ermetico",
        "in", "the", "at", "a", "an", "up", "to", "for", "about", "max", "maximum", "max.", "or", "and", "ok",
        "au", "à", "en", "le", "la", "de", "jusqu'à", "ou", "et", "environ", "maxi", "im", "bei", "bis", "zu", "ca", "ca.", "etwa", "oder", "und", "der", "höchstens", "maximal",
        "el", "o", "y", "hasta", "unos", "máximo", "fino", "al", "circa", "e", "massimo", "nel", "nella");

    // "Zum Einfrieren" alone is work.
    private static readonly string[] Freezers = ["freez", "frozen", "cong", "surgel", "gefr", "tiefk", "frost", "TK", "冷凍"];

    /// <summary>What a Japanese remark of this kind is made of beside its figures.</summary>
    private static readonly string[] Japanese = ["冷蔵庫", "冷凍庫", "冷蔵", "冷凍", "常温", "室温", "なら", "では", "程度", "くらい", "ほど", "まで", "約", "間", "で", "は", "可", "、", "。", "・", "/", ":", "(", ")", " "];

    /// <summary>True for such a remark.</summary>
    public static bool Is(string s, string lang)
    {
        if (s.Length is < 4 or > Longest || s.AsSpan().IndexOfAnyInRange('0', '9') < 0 || !(StoragePlaces.In(s).Length > 0))
        {
            return false;
        }

        double most = 0;
        bool lettered = false;
        for (int i = 0; i < s.Length;)
        {
            if (char.IsAsciiDigit(s[i]))
            {
                if ((Letter(s, i) ?? Clock.At(s, i, lang) ?? KeepTimes.Told(s, i, lang)) is not { } t || t.Min < Day)
                {
                    return false;
                }

                lettered |= t.Min >= Month && s[t.End - 1] is 'm' or 'M';
                (most, i) = (Math.Max(most, t.Max), t.End);
                continue;
            }

            int end = Small(s, i, lang);
            if (end == i)
            {
                return false;
            }

            i = end;
        }

        // "Freezer 10m" alone may be ten minutes.
        return most > 0 && (!lettered || Label(s) || StoragePlaces.Cooled(s));
    }

    /// <summary>True where such a remark can be no work: two places, or a label ("Fridge: 3 days").</summary>
    public static bool Surely(string s, string lang) => s.Length <= Longest && s.AsSpan().IndexOfAnyInRange('0', '9') >= 0 && (Label(s) || StoragePlaces.FrozenIn(s) && Array.Exists(Freezers, f => s.Contains(f, StringComparison.OrdinalIgnoreCase)) && StoragePlaces.Cooled(s)) && Is(s, lang);

    /// <summary>"3m freezer", "freezer: 3 m": months where the letter stands beside a freezer, and nothing there is done in minutes.</summary>
    public static (double Min, double Max, int Start, int End)? Letter(string s, int at)
    {
        int m = at;
        while (m < s.Length && (char.IsAsciiDigit(s[m]) || s[m] is '-' or ' '))
        {
            m++;
        }

        if (m >= s.Length || s[m] is not ('m' or 'M') || m + 1 < s.Length && (char.IsLetterOrDigit(s[m + 1]) || s[m + 1] == '\'') || Numbers.Range(s, at, "en") is not { InWords: false, Min: >= 1 and <= MostMonths } n || Places.Skip(s, n.End) != m)
        {
            return null;
        }

        return StoragePlaces.FrozenIn(StoragePlaces.Part(s, s[at..(m + 1)])) ? (n.Min * Month, (n.Max ?? n.Min) * Month, at, m + 1) : null;
    }

    private static bool Label(string s) => s.IndexOf(':') is > 2 and < 24 and var colon && StoragePlaces.In(s[..colon]).Length > 0;

    /// <summary>The place behind a word or sign that such a remark may hold; the place itself for any other.</summary>
    private static int Small(string s, int i, string lang)
    {
        if (lang == "ja")
        {
            foreach (string w in Japanese)
            {
                if (string.CompareOrdinal(s, i, w, 0, w.Length) == 0)
                {
                    return i + w.Length;
                }
            }

            return i;
        }

        if (!char.IsLetter(s[i]))
        {
            return s[i] is ' ' or ',' or '/' or ':' or '.' or ';' or '(' or ')' or '+' or '|' ? i + 1 : i;
        }

        int end = Places.WordEnd(s, i);
        return Words.Contains(s.AsSpan(i, end - i)) ? end : i;
    }
}
