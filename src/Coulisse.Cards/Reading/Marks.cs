namespace Coulisse.Cards.Reading;

/// <summary>Bullets, check boxes, list numbers: what stands before a line and says only that it is one.</summary>
internal static class Marks
{
    // Bullets, boxes and ticks as word processors, web pages and notebooks print them.
    private static readonly System.Buffers.SearchValues<char> Glyphs = System.Buffers.SearchValues.Create("▢⬜◻•◦▪▫●○■□◆◇★☆☐☑☒✓✔✗✘✅❑❏❒➢➤►▶▸→»›‣⁃∙·・–—\uF0B7\uF0A7\uF0D8\uF0FC§◉◎");

    /// <summary>True for a sign that only marks an item.</summary>
    public static bool Glyph(char c) => Glyphs.Contains(c);

    /// <summary>The line without what marks it as an item.</summary>
    public static string Strip(string s)
    {
        int i = 0;
        for (int guard = 0; guard < 4 && i < s.Length; guard++)
        {
            int before = i;
            char c = s[i];
            if ((c is '-' or '+' or '*' or '>' or '–' || Glyphs.Contains(c)) && !Minus.Opens(s, i))
            {
                i++;
            }
            else if (c == '[' && i + 2 < s.Length && s[i + 2] == ']')
            {
                i += 3;
            }
            else if (c == 'o' && i == 0 && s.Length > 2 && s[1] == ' ' && char.IsAsciiDigit(s[2]))
            {
                // The hollow bullet of a word processor comes out as a letter.
                i++;
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

    /// <summary>End of "1." or "12)" or "#." before a space, "1/ ", "1.- ", "1º ", "(1) ", "１．"; 0 when there is none. "1.30 g" is no list number.</summary>
    public static int ListNumber(string s, int at)
    {
        if (at >= s.Length)
        {
            return 0;
        }

        // ① to ⑳
        if (s[at] is >= '\u2460' and <= '\u2473')
        {
            return at + 1;
        }

        bool boxed = s[at] == '(';
        int from = boxed ? at + 1 : at;
        int i = from;
        while (i < s.Length && i - from < 2 && (char.IsAsciiDigit(s[i]) || s[i] is >= '\uFF10' and <= '\uFF19' || (s[i] == '#' && i == at)))
        {
            i++;
        }

        if (i == from || i >= s.Length)
        {
            return 0;
        }

        char mark = s[i];
        if (boxed)
        {
            return mark == ')' && i + 2 < s.Length && s[i + 1] == ' ' && char.IsLetter(s[i + 2]) ? i + 2 : 0;
        }

        if (mark is '．' or '、' or '）')
        {
            return i + 1;
        }

        char next = i + 1 < s.Length ? s[i + 1] : '\0';
        bool word = i + 2 < s.Length && char.IsLetter(s[i + 2]);
        return mark is '.' or ')' && next is ' ' or '\t' ? i + 2
            : mark is '.' or ')' && next is '-' or '–' && i + 2 < s.Length && s[i + 2] == ' ' ? i + 3
            : mark is '/' or 'º' or '°' or ':' && next == ' ' && word ? i + 2
            : mark is '-' or '–' && next == ' ' && i + 2 < s.Length && char.IsUpper(s[i + 2]) ? i + 2
            : mark is '.' or ')' && (char.IsUpper(next) || Words.Places.IsJapanese(next)) && i + 3 < s.Length && char.IsLetter(s[i + 2]) ? i + 1
            : mark == ')' && char.IsAsciiDigit(next) && i + 2 < s.Length && Words.Places.IsJapanese(s[i + 2]) ? i + 1
            : mark is '\u3000' or ' ' && s[^1] == '。' && (Words.Places.IsJapanese(next) || char.IsAsciiDigit(next)) ? i + 1
            : mark is '\u3000' or ' ' && s[from] is >= '\uFF10' && i + 1 < s.Length && Words.Places.IsJapanese(next) ? i + 1 : 0;
    }
}
