using System.Globalization;
using System.Text;

namespace Coulisse.Cards.Words;

/// <summary>Makes a line easy to read: one kind of digit, dash, quote and space; entities and inline marks resolved. Letters and accents stay.</summary>
internal static class Folding
{
    private const int LongestEntity = 12;
    private static readonly char[] LatinSmall = Small(0x250);

    /// <summary>The line as the readers want it; the same string when it is so already.</summary>
    public static string Line(string text) => text.Length > 0 && text[0] > ' ' && text[^1] > ' ' && IsPlain(text) ? text : (_recent ??= new FoldedLines()).Of(text);

    // A line is folded when it is laid out, when its neighbours are, and when it is read.
    [ThreadStatic]
    private static FoldedLines? _recent;

    /// <summary>The line as the readers want it. Linear in its length.</summary>
    public static string Line(ReadOnlySpan<char> text)
    {
        if (IsPlain(text))
        {
            return text.Trim().ToString();
        }

        StringBuilder b = new(text.Length + 8);
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (c == '&' && Entity(text[i..], out string? decoded, out int length))
            {
                foreach (char d in decoded)
                {
                    One(b, d, text, i);
                }

                i += length - 1;
            }
            else if (c == '<' && Tag(text[i..], out int tag))
            {
                b.Append(' ');
                i += tag - 1;
            }
            else if (c == '!' && i + 1 < text.Length && text[i + 1] == '[')
            {
                continue;
            }
            else if (c == '[' && Link(text[i..], out int open, out int close))
            {
                // [words](target): the words stay.
                b.Append(Line(text.Slice(i + 1, open - 1)));
                i += close;
            }
            else
            {
                One(b, c, text, i);
            }
        }

        return b.ToString().Trim();
    }

    /// <summary>Key for look-ups: lower case, no accents, no full stops. Writes into <paramref name="into"/> and gives the length, or -1 when it does not fit.</summary>
    public static int Key(ReadOnlySpan<char> word, Span<char> into) => Key(word, into, 0);

    /// <summary>Goes on with a key behind the first <paramref name="n"/> letters: a phrase's key is its words' keys in a row.</summary>
    public static int Key(ReadOnlySpan<char> word, Span<char> into, int n)
    {
        foreach (char c in word)
        {
            if (c == '.')
            {
                continue;
            }

            if (n + 2 > into.Length)
            {
                return -1;
            }

            if (c < 128)
            {
                into[n++] = c is >= 'A' and <= 'Z' ? (char)(c | 0x20) : c;
            }
            else
            {
                n = Accent(c, into, n);
            }
        }

        return n;
    }

    /// <summary>The same key as a string.</summary>
    public static string Key(ReadOnlySpan<char> word)
    {
        Span<char> buffer = word.Length <= 120 ? stackalloc char[256] : new char[word.Length * 2 + 2];
        int n = Key(word, buffer);
        return n < 0 ? word.ToString() : buffer[..n].ToString();
    }

    /// <summary>The small letter of a letter. Signs and the scripts without case, which are most of what is asked, cost no call into the system.</summary>
    public static char Lower(char c) => c < LatinSmall.Length ? LatinSmall[c] : c is >= '\u2000' and <= '\u20FF' or >= '\u2E80' and <= '\uA63F' ? c : char.ToLowerInvariant(c);

    /// <summary>The text in small letters, of the same length.</summary>
    public static string Lower(string s)
    {
        int i = 0;
        while (i < s.Length && Lower(s[i]) == s[i])
        {
            i++;
        }

        return i == s.Length ? s : string.Create(s.Length, s, static (into, from) =>
        {
            for (int k = 0; k < from.Length; k++)
            {
                into[k] = Lower(from[k]);
            }
        });
    }

    private static int Accent(char c, Span<char> into, int n)
    {
        char l = Lower(c);
        switch (l)
        {
            case 'œ': into[n++] = 'o'; into[n++] = 'e'; break;
            case 'æ': into[n++] = 'a'; into[n++] = 'e'; break;
            case 'ß': into[n++] = 's'; into[n++] = 's'; break;
            case 'à' or 'á' or 'â' or 'ã' or 'ä' or 'å': into[n++] = 'a'; break;
            case 'è' or 'é' or 'ê' or 'ë': into[n++] = 'e'; break;
            case 'ì' or 'í' or 'î' or 'ï': into[n++] = 'i'; break;
            case 'ò' or 'ó' or 'ô' or 'õ' or 'ö': into[n++] = 'o'; break;
            case 'ù' or 'ú' or 'û' or 'ü': into[n++] = 'u'; break;
            case 'ç': into[n++] = 'c'; break;
            case 'ñ': into[n++] = 'n'; break;
            default:
                // A combining accent after its letter says nothing more.
                if (CharUnicodeInfo.GetUnicodeCategory(l) != UnicodeCategory.NonSpacingMark || l is '\u3099' or '\u309A')
                {
                    into[n++] = l;
                }

                break;
        }

        return n;
    }

    /// <summary>True for a mark that says which way to write, and nothing else.</summary>
    public static bool IsDirection(char c) => c is '\u061C' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    // What would be written as anything but itself. Letters with accents, the sign of degrees and fractions stay what they are.
    private static readonly System.Buffers.SearchValues<char> Plain = PlainLetters();

    private static bool IsPlain(ReadOnlySpan<char> text) => text.IndexOfAnyExcept(Plain) < 0;

    private static void One(StringBuilder b, char c, ReadOnlySpan<char> text, int i)
    {
        switch (c)
        {
            case '\u3000' or '\u00A0' or '\t' or (>= '\u2000' and <= '\u200A') or '\u202F': b.Append(' '); break;
            case '\u00AD' or '\uFEFF' or '\0' or (>= '\u200B' and <= '\u200D') or (>= '\u2060' and <= '\u2064'): break;
            case var mark when IsDirection(mark): break;
            case '\u2019' or '\u2018' or '\u02BC' or '\u00B4' or '\u2032' or '`': if (c != '`') { b.Append('\''); } break;
            case '\u201C' or '\u201D' or '\u2033' or '\u00AB' or '\u00BB' or '\u201E': b.Append('"'); break;
            case '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2014' or '\u2212' or '\uFF0D': b.Append('-'); break;
            case '\u301C' or '\uFF5E': b.Append('~'); break;
            case '\u2044' or '\u2215': b.Append('/'); break;
            case '\uFB00': b.Append("ff"); break;
            case '\uFB01': b.Append("fi"); break;
            case '\uFB02': b.Append("fl"); break;
            case '\uFB03': b.Append("ffi"); break;
            case '\uFB04': b.Append("ffl"); break;
            case '\u33C4': b.Append("cc"); break;
            case '\u2103': b.Append("°C"); break;
            case '\u2109': b.Append("°F"); break;
            case '\u00BA' or '\u02DA': b.Append('°'); break;
            case '\u2113' or '\u3397': b.Append('l'); break;
            case '\u338F': b.Append("kg"); break;
            case '\u338E': b.Append("mg"); break;
            case '\u3396': b.Append("ml"); break;
            case '\u339C': b.Append("mm"); break;
            case '\u339D': b.Append("cm"); break;
            case '*':
                // A star between figures is a product; elsewhere it is emphasis.
                if (i > 0 && i + 1 < text.Length && text[i - 1] == ' ' && text[i + 1] == ' ') { b.Append('×'); }
                break;
            case '_':
                if (i > 0 && i + 1 < text.Length && char.IsLetterOrDigit(text[i - 1]) && char.IsLetterOrDigit(text[i + 1])) { b.Append(c); }
                break;
            case '~':
                if (!(i + 1 < text.Length && text[i + 1] == '~') && !(i > 0 && text[i - 1] == '~')) { b.Append(c); }
                break;
            case >= '\uFF01' and <= '\uFF5D': b.Append((char)(c - 0xFEE0)); break;
            case < ' ' or '\u007F' or (>= '\u0080' and <= '\u009F'): b.Append(' '); break;
            default: b.Append(c); break;
        }
    }

    private static bool Entity(ReadOnlySpan<char> s, out string decoded, out int length)
    {
        decoded = "";
        length = 0;
        int end = s[..Math.Min(s.Length, LongestEntity)].IndexOf(';');
        if (end < 2)
        {
            return false;
        }

        ReadOnlySpan<char> name = s[1..end];
        length = end + 1;
        if (name[0] == '#')
        {
            bool hex = name.Length > 1 && name[1] is 'x' or 'X';
            if (int.TryParse(hex ? name[2..] : name[1..], hex ? NumberStyles.AllowHexSpecifier : NumberStyles.None, CultureInfo.InvariantCulture, out int code)
                && code is > 31 and < 0xD800 or > 0xDFFF and < 0x10FFFF)
            {
                decoded = char.ConvertFromUtf32(code);
                return true;
            }

            return false;
        }

        decoded = name switch
        {
            "amp" => "&", "lt" => "<", "gt" => ">", "quot" => "\"", "apos" => "'", "nbsp" => " ", "deg" => "°", "frac12" => "½", "frac14" => "¼", "frac34" => "¾", "times" => "×",
            "ndash" => "-", "mdash" => "-", "rsquo" => "'", "lsquo" => "'", "eacute" => "é", "egrave" => "è", "agrave" => "à", "ccedil" => "ç", "ouml" => "ö", "uuml" => "ü", "auml" => "ä",
            "szlig" => "ß", "ntilde" => "ñ", "hellip" => "…", "oelig" => "œ", "ecirc" => "ê", "acirc" => "â", "micro" => "µ", "middot" => "·", "bull" => "•", _ => "",
        };
        return decoded.Length > 0;
    }

    private static bool Tag(ReadOnlySpan<char> s, out int length)
    {
        length = 0;
        if (s.Length < 3 || !(char.IsAsciiLetter(s[1]) || (s[1] == '/' && char.IsAsciiLetter(s[2]))))
        {
            return false;
        }

        int end = s[..Math.Min(s.Length, 400)].IndexOf('>');
        length = end + 1;
        return end > 0;
    }

    private static bool Link(ReadOnlySpan<char> s, out int open, out int close)
    {
        close = 0;
        open = s[..Math.Min(s.Length, 300)].IndexOf(']');
        if (open < 2 || open + 1 >= s.Length || s[open + 1] != '(')
        {
            return false;
        }

        int end = s[open..Math.Min(s.Length, open + 600)].IndexOf(')');
        close = open + end;
        return end > 0;
    }

    private static char[] Small(int count)
    {
        char[] small = new char[count];
        for (int c = 0; c < count; c++)
        {
            small[c] = char.ToLowerInvariant((char)c);
        }

        return small;
    }

    private static System.Buffers.SearchValues<char> PlainLetters()
    {
        Span<char> plain = stackalloc char[0x100];
        int n = 0;
        for (char c = ' '; c < plain.Length; c++)
        {
            if (c is not ('&' or '<' or '[' or '*' or '`' or '_' or '~' or '!' or '\u007F' or (>= '\u0080' and <= '\u00AF') or '\u00B4' or '\u00BA' or '\u00BB'))
            {
                plain[n++] = c;
            }
        }

        return System.Buffers.SearchValues.Create(plain[..n]);
    }
}
