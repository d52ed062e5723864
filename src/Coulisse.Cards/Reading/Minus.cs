using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Whether a figure of heat is below zero: a sign that touches it ("-18 °C", "は−20℃"), a sign with a blank behind a word that leads to it ("at - 18 °C"), or the word. A dash between two figures is a range, and one behind a word is a dash.</summary>
internal static class Minus
{
    private static readonly string[] Leads = ["at", "to", "below", "à", "a", "bei", "auf", "unter", "bis", "de", "sotto", "sous"];

    /// <summary>True for a figure below zero.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="i">Where the figure begins.</param>
    public static bool At(string s, int i)
    {
        if (i > 0 && s[i - 1] == '-')
        {
            return i == 1 || Opens(s[i - 2]);
        }

        if (i > 0 && s[i - 1] == 'ー')
        {
            // The long vowel typed for the sign: "は ー20℃"; "フリーザー20℃" is a word.
            return i == 1 || s[i - 2] is < 'ァ' or > 'ヿ' && Opens(s[i - 2]);
        }

        if (i > 3 && s[i - 1] == ' ' && s[i - 2] == '-' && s[i - 3] == ' ')
        {
            return Places.Ends(Folding.Lower(s[Math.Max(0, i - 12)..(i - 3)]), Leads);
        }

        return i > 1 && Told(s, i);
    }

    /// <summary>True where a sign at a place belongs to a heat of the cold and is no bullet: "-20 °C for 24 h". No kitchen freezes below 60 under zero, so that "-180 °C" is an item.</summary>
    public static bool Opens(string s, int at)
    {
        int i = at + 1;
        int figure = 0;
        while (i < s.Length && i - at < 4 && char.IsAsciiDigit(s[i]))
        {
            figure = figure * 10 + s[i++] - '0';
        }

        int sign = Places.Skip(s, i);
        return i > at + 1 && figure is > 0 and <= 60 && sign < s.Length && (s[sign] is '°' or '℃' or '度' || s[sign] == 'C' && (sign + 1 == s.Length || !char.IsLetterOrDigit(s[sign + 1])));
    }

    /// <summary>What may stand before the sign: no figure, and no Latin word it would join.</summary>
    private static bool Opens(char before) => Places.IsJapanese(before) || !char.IsLetterOrDigit(before) && before is not ('-' or '°' or '%' or ')');

    /// <summary>"minus 18 °C", "moins 18 °C".</summary>
    private static bool Told(string s, int i)
    {
        string before = Folding.Lower(s[Math.Max(0, i - 6)..i].TrimEnd());
        return before.EndsWith("minus", StringComparison.Ordinal) || before.EndsWith("moins", StringComparison.Ordinal) || before.EndsWith("menos", StringComparison.Ordinal) || before.EndsWith(" meno", StringComparison.Ordinal) || before.EndsWith("マイナス", StringComparison.Ordinal) || before.EndsWith("零下", StringComparison.Ordinal) || before.EndsWith("氷点下", StringComparison.Ordinal);
    }
}
