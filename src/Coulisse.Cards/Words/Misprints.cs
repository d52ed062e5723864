using System.Globalization;

namespace Coulisse.Cards.Words;

/// <summary>Letters printed where digits should stand, as a scan gives them; what is read so is asked.</summary>
internal static class Misprints
{
    /// <summary>O for 0, l or I for 1, only in a run that has the shape of a number before a unit.</summary>
    public static Numeral? At(string s, int at, string lang)
    {
        Span<char> digits = stackalloc char[16];
        int n = 0;
        int i = at;
        int real = 0;
        int mended = 0;
        while (i < s.Length && n < 12)
        {
            char c = s[i];
            if (char.IsAsciiDigit(c)) { digits[n++] = c; real++; }
            else if (c is 'O' or 'o') { digits[n++] = '0'; mended++; }
            else if (c is 'l' or 'I' && n == 0) { digits[n++] = '1'; mended++; }
            else if (c == 'S' && n == 0 && i + 1 < s.Length && (char.IsAsciiDigit(s[i + 1]) || s[i + 1] == 'O')) { digits[n++] = '5'; mended++; }
            else if (c == 'S' && real > 0 && i + 1 < s.Length && char.IsAsciiDigit(s[i + 1])) { digits[n++] = '5'; mended++; }
            else if (c is '.' or ',' && i + 1 < s.Length && (char.IsAsciiDigit(s[i + 1]) || s[i + 1] is 'O' or 'o')) { digits[n++] = '.'; }
            else if (c == ' ' && i + 2 < s.Length && s[i + 1] is 'o' or 'O' && s[i + 2] is 'o' or 'O' or ' ') { i++; continue; }
            else { break; }
            i++;
        }

        bool ends = i >= s.Length || !char.IsLetter(s[i]) || (s[i] is 'g' or 'l' && (i + 1 >= s.Length || !char.IsLetter(s[i + 1]))) || s.AsSpan(i).StartsWith("ml") || s.AsSpan(i).StartsWith("kg");
        bool alone = n == 1 && real == 0 && i == at + 1 && i + 1 < s.Length && s[i] == ' ' && s[at] is 'I' or 'l' && !(lang == "it" && s[at] == 'I') && Lexicon.LongestUnit(s, i + 1, lang, out int unit) is { Kind: "spoon" or "mass" or "volume" or "word" or "container" or "cup" } && unit < s.Length;
        // "lO g", "lOO g", "lOOO ml"
        alone |= n is 2 or 3 or 4 && real == 0 && s[at] is 'l' or 'I' && Lexicon.LongestUnit(s, Places.Skip(s, i), "en", out int behind) is { Kind: "mass" or "volume" } && behind < s.Length;
        if (s[at] == 'S' && !(Lexicon.LongestUnit(s, Places.Skip(s, i), "en", out int measured) is { Kind: "mass" or "volume" } && measured < s.Length))
        {
            return null;
        }

        bool shape = mended > 0 && n > 0 && ends && (real > 0 || alone || (n > 2 && digits[1] == '.'));
        return shape && double.TryParse(digits[..n], NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            ? new Numeral(value, null, i) { Repaired = true }
            : null;
    }
}
