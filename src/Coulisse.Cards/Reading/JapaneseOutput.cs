using System.Globalization;

namespace Coulisse.Cards.Reading;

/// <summary>"クリームパン 24個取り", "約30個できる", "1kg取れます", "12枚作れます": how much comes out, told by the verb behind its count. "3個取り出す" takes out, "12個に分ける" parts.</summary>
internal static class JapaneseOutput
{
    private const int Longest = 60;
    private const string Counters = "個枚本皿杯台食切丁斤玉";
    private static readonly string[] Verbs = ["取り", "どり", "取れる", "取れます", "とれる", "とれます", "できる", "できます", "出来る", "出来ます", "できあがり", "出来上がり", "作れる", "作れます", "焼けます", "焼ける"];

    /// <summary>The yield such words tell; null for any other.</summary>
    public static CardYield? In(string s, Span span)
    {
        if (s.Length is < 4 or > Longest)
        {
            return null;
        }

        foreach (string verb in Verbs)
        {
            int at = s.IndexOf(verb, StringComparison.Ordinal);
            int end = at + verb.Length;
            if (at < 2 || end < s.Length && s[end] is not ('。' or ' ' or ')' or '）' or '、'))
            {
                continue;
            }

            int unit = at - 1;
            unit = s[unit] == '分' || s[unit] == 'が' && unit > 1 ? unit - 1 : unit;
            bool counted = Counters.Contains(s[unit]);
            int figure = counted ? unit : unit + 1;
            while (!counted && figure > 0 && (char.IsAsciiLetter(s[figure - 1]) || s[figure - 1] is 'リ' or 'ッ' or 'ト' or 'ル'))
            {
                figure--;
            }

            int from = figure;
            while (from > 0 && (char.IsAsciiDigit(s[from - 1]) || s[from - 1] == '.' && from < figure))
            {
                from--;
            }

            if (from == figure || figure - from > 5 || !double.TryParse(s.AsSpan(from, figure - from), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double count) || count <= 0)
            {
                continue;
            }

            if (counted)
            {
                return new CardYield(count, s[unit] is '皿' or '食' ? "portions" : s[unit..(unit + 1)], s, span);
            }

            return Amounts.At(s[from..(unit + 1)], 0, "ja") is { Unit: { Kind: "mass" or "volume" } m } ? new CardYield(count, m.Unit, s, span) : null;
        }

        return null;
    }
}
