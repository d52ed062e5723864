using System.Globalization;
using System.Text;

namespace Coulisse.Cards.Layout;

/// <summary>A small picture before a heading or an item ("🍯 Honey butter", "🥚 2 eggs"), as telephones put it there: it says nothing that the words do not.</summary>
internal static class Emblems
{
    private const int Most = 8;

    /// <summary>The lines without such pictures; what is nothing but pictures stays.</summary>
    public static List<RawLine> Off(List<RawLine> lines)
    {
        List<RawLine>? changed = null;
        for (int i = 0; i < lines.Count; i++)
        {
            string s = lines[i].Text;
            if (s[0] >= '\u2190' && End(s) is > 0 and var end && s.AsSpan(end).TrimStart() is { Length: > 1 } words && char.IsLetterOrDigit(words[0]))
            {
                changed ??= [.. lines];
                changed[i] = lines[i] with { Text = words.ToString() };
            }
        }

        return changed ?? lines;
    }

    /// <summary>Where the pictures end; 0 when the line opens with none. Signs that mark items and flags of headings are no pictures.</summary>
    private static int End(string s)
    {
        int i = 0;
        bool picture = false;
        while (i < s.Length && i < Most * 2 && Rune.TryGetRuneAt(s, i, out Rune r))
        {
            bool drawn = r.Value >= 0x1F000 && Rune.GetUnicodeCategory(r) is UnicodeCategory.OtherSymbol or UnicodeCategory.ModifierSymbol;
            if (!drawn && r.Value is not (0xFE0F or 0x200D or 0x20E3) && !(picture && r.Value is >= 0x2600 and <= 0x27BF))
            {
                break;
            }

            picture |= drawn;
            i += r.Utf16SequenceLength;
        }

        return picture ? i : 0;
    }
}
