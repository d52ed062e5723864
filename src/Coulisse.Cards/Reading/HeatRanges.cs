using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A range of heat whose ends stand apart: each with its sign ("180 °C-190 °C", "350°F to 375°F"), below zero ("-18 to -22 °C"), behind "between" ("entre 160 et 170 °C"), or with a stroke ("82/84 °C"). One end alone would be another heat. "Raise 160 °C to 180 °C", "from 40 °C to 60 °C" is a way from one to the other, and no range.</summary>
internal static class HeatRanges
{
    private const int Reach = 40;
    private const double Widest = 40;
    private const double WidestFahrenheit = 75;
    private const double WidestAroundZero = 10;
    private const double WidestStroke = 5;
    private static readonly string[] Betweens = ["between", "entre", "zwischen", "tra", "fra"];
    private static readonly string[] Ands = ["and", "et", "und", "y", "e"];
    private static readonly string[] Tos = ["to", "or", "bis", "à", "a", "ou", "o", "oder", "hasta"];
    private static readonly WordList Ways = new("from", "raise", "increase", "up", "down", "de", "depuis", "augmenter", "monter", "von", "erhöhen", "steigern", "desde", "subir", "aumentar", "da", "dai", "alzare", "aumentare", "passer", "passare", "pasar");

    /// <summary>The two ends and the place behind the figure of the second, signs told; null where the figure at a place opens no such range.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="i">Where the first figure begins.</param>
    /// <param name="n">The first figure.</param>
    /// <param name="lang">The language.</param>
    public static (double Low, double High, int End)? At(string s, int i, Numeral n, string lang)
    {
        if (n.InWords || n.Max is not null)
        {
            return n is { InWords: false, Max: { } most } && s.IndexOf('/', i, n.End - i) > 0 && most - n.Min > Math.Max(WidestStroke, n.Min / 4) ? Last(s, n.End) : null;
        }

        if (n.Min < 1 && Stroke(s, i, n.End) is > 0 and var fraction)
        {
            // "3/4 °C", "31/32 °C": nobody counts quarters of a degree
            return Second(s, fraction, Number(s, i), stroke: true, lang);
        }

        int j = Places.Skip(s, n.End);
        int sign = DegreeSigns.Degree(s, j);
        bool degree = sign > j;
        char scale = DegreeSigns.Scale(s, degree ? Places.Skip(s, sign) : j, n, out int scaleEnd);
        int end = Places.Skip(s, scale != ' ' ? scaleEnd : degree ? sign : n.End);
        if (end >= s.Length)
        {
            return null;
        }

        if (s[end] == '/')
        {
            return degree || scale != ' ' ? null : Second(s, end + 1, Minus.At(s, i) ? -n.Min : n.Min, stroke: true, lang);
        }

        bool dash = s[end] is '-' or '~';
        int next = dash ? Places.Skip(s, end + 1) : Behind(s, end, Tos);
        bool under = next > 0 && next < s.Length && s[next] == '-';
        if (next == 0)
        {
            next = Between(s, i) ? Behind(s, end, Ands) : 0;
            return next == 0 ? null : Second(s, next, Minus.At(s, i) ? -n.Min : n.Min, stroke: false, lang, scale);
        }

        double first = Minus.At(s, i) ? -n.Min : n.Min;

        return (degree || scale != ' ' || under || first < 0) && !Leads(s, i) ? Second(s, next, first, stroke: false, lang, scale) : null;
    }

    private static (double Low, double High, int End)? Second(string s, int at, double first, bool stroke, string lang, char scale = ' ')
    {
        at = Places.Skip(s, at);
        bool minus = at < s.Length && s[at] == '-';
        at += minus || at < s.Length && s[at] == '+' ? 1 : 0;
        if (at >= s.Length || !char.IsAsciiDigit(s[at]) || Numbers.Single(s, at, lang) is not { InWords: false } n)
        {
            return null;
        }

        int j = Places.Skip(s, n.End);
        int sign = DegreeSigns.Degree(s, j);
        char own = DegreeSigns.Scale(s, sign > j ? Places.Skip(s, sign) : j, n, out _);
        if (sign == j && own == ' ' || scale != ' ' && own != ' ' && scale != own || Clock.At(s, at, lang) is not null)
        {
            return null;
        }

        double second = minus || first < 0 && s[at - 1] != '+' ? -n.Min : n.Min;
        // Below zero the colder end is told last as often as first.
        (double low, double high) = first < 0 && second < first ? (second, first) : (first, second);
        double widest = stroke ? Math.Max(WidestStroke, low / 4) : low < 0 && high > 0 ? WidestAroundZero : own == 'F' ? WidestFahrenheit : Widest;
        return high > low && high - low <= widest ? (low, high, n.End) : null;
    }

    /// <summary>"GN 1/1 160 °C", "speed 4/90 °C": no ends of one heat; the figure right before the sign is it.</summary>
    private static (double Low, double High, int End) Last(string s, int end)
    {
        int from = end;
        while (char.IsAsciiDigit(s[from - 1]))
        {
            from--;
        }

        double heat = Number(s[from..end] + " ", 0);
        return (heat, heat, end);
    }

    /// <summary>Place behind the stroke of "3/4" where its second figure is the greater; 0 for any other number.</summary>
    private static int Stroke(string s, int i, int end)
    {
        int stroke = s.IndexOf('/', i, end - i);
        return stroke > i && s.AsSpan(i, stroke - i).IndexOfAnyExceptInRange('0', '9') < 0 ? stroke + 1 : 0;
    }

    private static double Number(string s, int i)
    {
        double value = 0;
        for (; char.IsAsciiDigit(s[i]); i++)
        {
            value = value * 10 + s[i] - '0';
        }

        return value;
    }

    private static int Behind(string s, int at, string[] words) => Places.Behind(s, at, words) is > 0 and var end ? Places.Skip(s, end) : 0;

    private static bool Between(string s, int i)
    {
        ReadOnlySpan<char> before = s.AsSpan(0, i).TrimEnd(" -+");
        foreach (string w in Betweens)
        {
            if (Places.EndsIn(before, w))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True where the words before tell a way from one heat to another.</summary>
    private static bool Leads(string s, int i)
    {
        int from = Math.Max(Sentences.Begin(s, i), i - Reach);
        int comma = s.AsSpan(from, i - from).LastIndexOf(',') + 1;
        return i > from && Ways.In(s[(from + comma)..i]);
    }
}
