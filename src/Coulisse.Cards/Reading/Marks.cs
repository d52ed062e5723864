namespace Coulisse.Cards.Reading;

/// <summary>Bullets, check boxes, list numbers: what stands before a line and says only that it is one.</summary>
internal static class Marks
{
    /// <summary>The line without what marks it as an item.</summary>
    public static string Strip(string s)
    {
        int i = 0;
        for (int guard = 0; guard < 4 && i < s.Length; guard++)
        {
            int before = i;
            char c = s[i];
            if (c is '-' or '•' or '+' or '◦' or '▪' or '●' or '○' or '■' or '□' or '◆' or '◇' or '★' or '☐' or '·' or '*' or '>' or '・' or '–')
            {
                i++;
            }
            else if (c == '[' && i + 2 < s.Length && s[i + 2] == ']')
            {
                i += 3;
            }
            else if (ListNumber(s, i) is var end and > 0 && !(i > 0 && end < s.Length && char.IsAsciiDigit(s[end])))
            {
                // Behind the mark of an item "12. 5 g" is a figure the print broke.
                i = end;
            }

            while (i < s.Length && s[i] == ' ')
            {
                i++;
            }

            if (i == before)
            {
                break;
            }
        }

        return i == 0 ? s : s[i..];
    }

    /// <summary>End of "1." or "12)" or "#." before a space; 0 when there is none. "1.30 g" is no list number.</summary>
    public static int ListNumber(string s, int at)
    {
        // ① to ⑳
        if (at < s.Length && s[at] is >= '\u2460' and <= '\u2473')
        {
            return at + 1;
        }

        int i = at;
        while (i < s.Length && i - at < 2 && (char.IsAsciiDigit(s[i]) || (s[i] == '#' && i == at)))
        {
            i++;
        }

        return i > at && i + 1 < s.Length && s[i] is '.' or ')' && i > at && i + 1 < s.Length && s[i + 1] is ' ' or '\t' ? i + 2
            : i > at && i < s.Length && s[i] is '．' or '、' && i > at ? i + 1 : 0;
    }
}
