using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Gas marks and French thermostat figures: "gas mark 4", "gas 6", "th. 7".</summary>
/// <remarks>Mark n is 250 + 25 n °F for n of 1 and more, printed on British dials to the nearest 10 °C; a thermostat figure is 30 °C a step. Common charts; no standard fixes either, an oven is to be measured.</remarks>
internal static class GasMarks
{
    private static readonly (double Mark, double Celsius)[] Dial = [(0.25, 110), (0.5, 120), (1, 140), (2, 150), (3, 160), (4, 180), (5, 190), (6, 200), (7, 220), (8, 230), (9, 240), (10, 260)];

    /// <summary>Oven °C of a mark that begins at a place; null when none does.</summary>
    public static double? At(string s, int i, string lang, out int end)
    {
        end = i;
        int j = i;
        if (Places.WordAt(s, i, "gas"))
        {
            j = Places.Skip(s, i + 3);
            foreach (string w in (ReadOnlySpan<string>)["mark", "Stufe", "no.", "no"])
            {
                if (s.AsSpan(j).StartsWith(w, StringComparison.OrdinalIgnoreCase))
                {
                    j = Places.Skip(s, j + w.Length);
                    break;
                }
            }
        }
        else if (Places.WordAt(s, i, "GM") && i + 2 < s.Length)
        {
            j = Places.Skip(s, i + 2);
        }
        else if (Glued(s, i, "GM") || Glued(s, i, "gas"))
        {
            j = i + (char.ToUpperInvariant(s[i + 1]) == 'M' ? 2 : 3);
        }
        else if (lang == "fr" && (Places.WordAt(s, i, "th") || Places.WordAt(s, i, "thermostat")))
        {
            j = Places.Skip(s, Places.WordEnd(s, i) is var e && e < s.Length && s[e] == '.' ? e + 1 : e);
            if (j < s.Length && (char.IsAsciiDigit(s[j]) || Numbers.Vulgar(s[j]) > 0) && Numbers.Range(s, j, lang) is { Min: >= 1 and <= 10 } th && !Celsius(s, th.End))
            {
                end = th.End;
                return 30 * th.Min;
            }

            return null;
        }

        if (j == i || j >= s.Length || !(char.IsAsciiDigit(s[j]) || Numbers.Vulgar(s[j]) > 0) || Numbers.Single(s, j, lang) is not { } n || Celsius(s, n.End))
        {
            return null;
        }

        foreach ((double mark, double celsius) in Dial)
        {
            if (Math.Abs(mark - n.Min) < 0.001)
            {
                end = n.End;
                return celsius;
            }
        }

        return null;
    }

    /// <summary>"GM6", "Gas4": the mark touches its figure.</summary>
    private static bool Glued(string s, int i, string word) => i + word.Length < s.Length && char.IsAsciiDigit(s[i + word.Length]) && s.AsSpan(i).StartsWith(word, StringComparison.OrdinalIgnoreCase);

    private static bool Celsius(string s, int end) => Places.Skip(s, end) is var k && k < s.Length && s[k] == '°';
}
