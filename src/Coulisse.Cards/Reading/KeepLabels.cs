using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>The labels a kitchen puts before how long a thing keeps: "DLC : 3 jours", "MHD 5 Tage", "Vida útil: 4 días", "Scadenza: 3 giorni", "消費期限:冷蔵で3日", "DLC : J+3". What stands behind one is keeping and no wait. A date behind it ("DLC 12/05") says nothing of how long.</summary>
internal static class KeepLabels
{
    private const int Longest = 120;
    private const int Nearest = 40;
    private const double Day = 1440;
    private static readonly string[] Labels =
    [
        "use by", "use-by", "best before", "best by", "BBE", "shelf life", "shelf-life", "fridge life", "chilled life", "frozen life", "keeping time",
        "DLC", "DLC secondaire", "DDM", "DLUO", "durée de vie", "durée de conservation", "date limite de consommation", "MHD", "Mindesthaltbarkeit", "Mindesthaltbarkeitsdatum", "Haltbarkeit", "Haltbarkeitsdauer", "Verbrauchsdatum", "zu verbrauchen bis",
        "vida útil", "caducidad", "fecha de caducidad", "caduca", "consumo preferente", "duración", "scadenza", "data di scadenza", "scade", "TMC", "da consumarsi entro", "da consumare entro", "durata di conservazione", "消費期限", "賞味期限", "使用期限", "保存期間", "保存期限", "日持ち",
    ];

    private static readonly WordList Any = new(Labels);
    private static readonly Beginnings First = new(Labels);

    /// <summary>True where such a label stands anywhere.</summary>
    public static bool In(string s) => Any.In(s);

    /// <summary>True for a line that opens with such a label and tells behind it how long: it is a remark, whatever its verb.</summary>
    public static bool Opens(string s, string lang)
    {
        if (s.Length is < 5 or > Longest)
        {
            return false;
        }

        if (s[0] is 'm' or 'M' && Bounded(s, lang))
        {
            return true;
        }

        if (!First.May(s, 0))
        {
            return false;
        }

        foreach (string label in Labels)
        {
            if (Places.Opens(s, label))
            {
                return Told(s, label.Length, lang);
            }
        }

        return false;
    }

    /// <summary>"J+3", "D+3": so many days behind the one it was made; null where no such mark begins.</summary>
    public static (double Min, double Max, int Start, int End)? Day0(string s, int at)
    {
        int i = at + 1;
        if (s[at] is not ('J' or 'D' or 'T' or 'G') || i + 1 >= s.Length || s[i] != '+' || !char.IsAsciiDigit(s[++i]))
        {
            return null;
        }

        double days = s[i++] - '0';
        if (i < s.Length && char.IsAsciiDigit(s[i]))
        {
            days = days * 10 + s[i++] - '0';
        }

        return days > 0 && (i == s.Length || !char.IsLetterOrDigit(s[i])) ? (days * Day, days * Day, at, i) : null;
    }

    /// <summary>True where the days at a place are the day of a month: "消費期限 12月3日".</summary>
    public static bool Dated(string s, int at) => at > 0 && s[at - 1] == '月';

    /// <summary>"Max. 3 days at 4 °C." on a line of its own: an upper end of days, a cold, and nothing else.</summary>
    private static bool Bounded(string s, string lang)
    {
        int i = Places.Behind(s, 0, Maxes);
        while (i > 0 && i < s.Length && s[i] is '.' or ':' or ' ')
        {
            i++;
        }

        if (i == 0 || i >= s.Length || !char.IsAsciiDigit(s[i]) || Clock.At(s, i, lang) is not { Min: >= Day } t)
        {
            return false;
        }

        int at = Places.Skip(s, t.End);
        return Places.Behind(s, at, Ats) is > 0 and var lead && s.AsSpan(lead).Trim(" .+-0123456789°C").IsEmpty && s.AsSpan(at).Contains('°');
    }

    private static readonly string[] Maxes = ["max", "maximum", "maximal", "maximum of", "máximo", "massimo", "maxi"];
    private static readonly string[] Ats = ["at", "bei", "à", "a"];

    private static bool Told(string s, int from, string lang)
    {
        for (int i = from; i < s.Length && i - from < Nearest; i++)
        {
            if (char.IsAsciiDigit(s[i]) && !char.IsAsciiDigit(s[i - 1]) && !Dated(s, i) && (Clock.At(s, i, lang) ?? KeepTimes.Told(s, i, lang)) is not null || s[i - 1] is ' ' or ':' && Day0(s, i) is not null)
            {
                return true;
            }
        }

        return false;
    }
}
