using System.Globalization;

namespace Coulisse.Cards.Words;

/// <summary>Reads numbers as people print them: fractions, mixed numbers, decimal commas, thousands, ranges, words, letters for digits.</summary>
internal static class Numbers
{
    /// <summary>A number or range at a place; null when none begins there.</summary>
    public static Numeral? Range(string s, int at, string lang) => at < s.Length && char.IsAsciiDigit(s[at]) ? Figures.Range(s, at, lang) : RangeOf(s, at, lang);

    /// <summary>The same, read anew.</summary>
    internal static Numeral? RangeOf(string s, int at, string lang)
    {
        int i = at;
        bool between = Places.WordAt(s, i, "between") || (lang == "es" && Places.WordAt(s, i, "entre")) || (lang == "fr" && Places.WordAt(s, i, "entre")) || (lang == "de" && Places.WordAt(s, i, "zwischen"));
        bool from = (lang is "es" or "fr" && Places.WordAt(s, i, "de")) || Places.WordAt(s, i, "from") || (lang == "it" && Places.WordAt(s, i, "da"));
        if (between || from)
        {
            i = Places.Skip(s, Places.WordEnd(s, i));
        }

        if (Single(s, i, lang) is not { } first)
        {
            return null;
        }

        Numeral? range = Upper(s, first, lang, between);
        if (range is null && (between || from))
        {
            return null;
        }

        return range ?? first;
    }

    /// <summary>One number at a place; null when none begins there.</summary>
    public static Numeral? Single(string s, int at, string lang)
    {
        if (at >= s.Length)
        {
            return null;
        }

        char c = s[at];
        if (char.IsAsciiDigit(c) || (c is '.' or ',' && at + 1 < s.Length && char.IsAsciiDigit(s[at + 1])) || Vulgar(c) > 0)
        {
            return Digits(s, at, lang);
        }

        if (PrintedFractions.At(s, at) is { } printed)
        {
            return printed;
        }

        if (c is 'O' or 'o' or 'l' or 'I' or 'S' && Misprints.At(s, at, lang) is { } repaired)
        {
            return repaired;
        }

        if (!char.IsLetter(c) || !NumberBeginnings.May(s, at))
        {
            return null;
        }

        if (NumberWords.Hundreds(s, at, lang, out double hundreds, out int behind))
        {
            (hundreds, behind) = NumberWords.Compound(s, hundreds, behind, lang);
            return new Numeral(hundreds, null, behind) { InWords = true };
        }

        string? word = Lexicon.Longest("num", s, at, 5, lang, out int end);
        if (word is null || (Places.IsJapanese(c) && lang == "ja" && c is not '半'))
        {
            return null;
        }

        // "a few", "un peu": no number, however they begin.
        if (Lexicon.Longest("use", s, at, 3, lang, out int vague) is not null && vague > end)
        {
            return null;
        }

        double value = double.Parse(word, CultureInfo.InvariantCulture);
        // "un demi-pomelo", "two hundred": what follows multiplies or adds.
        int next = Places.Skip(s, end);
        if (value == 1 && s.AsSpan(next).StartsWith("demi-"))
        {
            return new Numeral(0.5, null, next + 5) { InWords = true };
        }

        if (value == 1 && Lexicon.Longest("num", s, next, 3, lang, out int halfEnd) is { } half && double.Parse(half, CultureInfo.InvariantCulture) < 1)
        {
            return new Numeral(double.Parse(half, CultureInfo.InvariantCulture), null, halfEnd) { InWords = true };
        }

        (value, end) = NumberWords.Compound(s, value, end, lang);
        return new Numeral(value, null, end) { InWords = true };
    }

    /// <summary>Value of a fraction character; 0 when it is none.</summary>
    public static double Vulgar(char c) => c switch
    {
        '½' => 0.5, '¼' => 0.25, '¾' => 0.75, '⅓' => 1.0 / 3, '⅔' => 2.0 / 3, '⅛' => 0.125, '⅜' => 0.375, '⅝' => 0.625, '⅞' => 0.875, '⅙' => 1.0 / 6, '⅚' => 5.0 / 6, '⅕' => 0.2, '⅖' => 0.4, '⅗' => 0.6, '⅘' => 0.8, _ => 0,
    };

    private static Numeral? Upper(string s, Numeral first, string lang, bool between)
    {
        int i = Places.Skip(s, first.End);
        if (i >= s.Length)
        {
            return null;
        }

        bool spaced = i > first.End;
        int j;
        if (s[i] == '-' && Hanging(s, i + 1) is var over and > 0)
        {
            // "3- to 4-pound"
            j = over;
        }
        else if (s[i] is '-' or '~')
        {
            j = i + 1;
        }
        else if (s[i] == '/' && !spaced && i + 1 < s.Length && char.IsAsciiDigit(s[i + 1]))
        {
            j = i + 1;
        }
        else if (s.AsSpan(i).StartsWith("から"))
        {
            j = i + 2;
        }
        else if (Joins(s, i, lang, between) is var length and > 0)
        {
            j = i + length;
            if (j < s.Length && s[j] != ' ')
            {
                return null;
            }
        }
        else
        {
            return null;
        }

        int k = Places.Skip(s, j);
        if (Single(s, k, lang) is not { } second || second.Min <= first.Min || (second.InWords && !first.InWords))
        {
            return null;
        }

        // "1-1/2 cups" is one and a half; "1 - 1 1/2" and "3-4" are ranges.
        return new Numeral(first.Min, second.Min, second.End) { Repaired = first.Repaired || second.Repaired, InWords = first.InWords };
    }

    /// <summary>Place behind "to" or "or" of a first figure whose noun hangs over; 0 when none stands there.</summary>
    private static int Hanging(string s, int i)
    {
        int j = Places.Skip(s, i);
        return j < s.Length && s[j] is 't' or 'o' && (Places.WordAt(s, j, "to") || Places.WordAt(s, j, "or")) && Places.Skip(s, j + 2) is var k && k < s.Length && char.IsAsciiDigit(s[k]) ? j + 2 : 0;
    }

    private static int Joins(string s, int i, string lang, bool between)
    {
        ReadOnlySpan<string> words = lang switch
        {
            "fr" => ["à", "ou", "et"],
            "de" => ["bis", "oder", "und"],
            "es" => ["a", "o", "y"],
            "it" when s.AsSpan(i).StartsWith("a") && (Places.WordAt(s, i, "alle") || Places.WordAt(s, i, "ai") || Places.WordAt(s, i, "agli")) => [s[i..Places.WordEnd(s, i)], "o", "e"],
            "it" => ["a", "o", "e"],
            _ => ["to", "or", "and"],
        };
        for (int w = 0; w < words.Length; w++)
        {
            if (Places.WordAt(s, i, words[w]) && (w < 2 || between))
            {
                return words[w].Length;
            }
        }

        return Places.WordAt(s, i, "to") ? 2 : 0;
    }

    private static Numeral? Digits(string s, int at, string lang)
    {
        double vulgar = Vulgar(s[at]);
        if (vulgar > 0)
        {
            return new Numeral(vulgar, null, at + 1);
        }

        int i = at;
        while (i < s.Length && char.IsAsciiDigit(s[i]))
        {
            i++;
        }

        int whole = i - at;
        if (whole > 12)
        {
            return null;
        }

        bool decimalComma = lang is "fr" or "de" or "es" or "it";
        bool spaced = false;
        bool grouped = false;
        Span<char> digits = stackalloc char[40];
        int n = 0;
        s.AsSpan(at, whole).CopyTo(digits);
        n = whole;

        // groups of three
        while (i + 3 < s.Length + 0 && whole is > 0 and <= 3 && n < 12 && s[i] is ',' or '.' or ' ' or '\'' && ThreeDigits(s, i + 1))
        {
            char sep = s[i];
            bool group = sep switch
            {
                ' ' => whole <= 3 && !(s[at] == '0'),
                ',' => !decimalComma && s[at] != '0',
                '.' => decimalComma && s[at] != '0' || (i + 4 < s.Length && s[i + 4] == ',' && ThreeDigits(s, i + 5)),
                _ => true,
            };
            if (!group)
            {
                break;
            }

            spaced |= sep == ' ';
            grouped |= sep is ',' or '.';
            s.AsSpan(i + 1, 3).CopyTo(digits[n..]);
            n += 3;
            i += 4;
        }

        if (i < s.Length && i + 1 < s.Length && s[i] is '.' or ',' && char.IsAsciiDigit(s[i + 1]) && !(s[i] == ',' && grouped && !decimalComma))
        {
            digits[n++] = '.';
            i++;
            while (i < s.Length && char.IsAsciiDigit(s[i]) && n < 30)
            {
                digits[n++] = s[i++];
            }
        }

        if (i < s.Length && s[i] is 'O' or 'o' or 'S' && Misprints.At(s, at, lang) is { } repaired)
        {
            return repaired;
        }

        if (!Value(digits[..n], out double value))
        {
            return null;
        }

        Numeral number = new(value, null, i) { Spaced = spaced, Grouped = grouped };
        // "2 oo g"; but "2 o 3 minutos" is two or three.
        if (i < s.Length && s[i] == ' ' && i + 2 < s.Length && s[i + 1] is 'o' or 'O' && (s[i + 2] is 'o' or 'O' || lang is not ("es" or "it")) && Misprints.At(s, at, lang) is { } apart)
        {
            return apart;
        }

        int behind = Places.Skip(s, i);
        return value == 1 && lang == "fr" && s.AsSpan(behind).StartsWith("demi-") ? new Numeral(0.5, null, behind + 5) : Fraction(s, at, number, lang) ?? number;
    }

    /// <summary>The value of digits with at most one stop; most are short and whole.</summary>
    private static bool Value(ReadOnlySpan<char> digits, out double value)
    {
        if (digits.Length is > 0 and < 9 && !digits.Contains('.'))
        {
            int whole = 0;
            foreach (char c in digits)
            {
                whole = whole * 10 + c - '0';
            }

            value = whole;
            return true;
        }

        return double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out value);
    }

    /// <summary>A fraction or mixed number that goes on from a whole one.</summary>
    private static Numeral? Fraction(string s, int at, Numeral whole, string lang)
    {
        int i = whole.End;
        // 1/2
        if (i + 1 < s.Length && s[i] == '/' && Denominator(s, i + 1, out double d, out int end) && IsFraction(whole.Min, d, lang) && !Counts(s, whole.Min, d, end, lang) && s.AsSpan(at, i - at).IndexOfAnyExceptInRange('0', '9') < 0)
        {
            return new Numeral(whole.Min / d, null, end);
        }

        if (whole.Min != Math.Floor(whole.Min))
        {
            return null;
        }

        // "1 /2 tsp", "1 / 2 tsp": the print parted one fraction
        int slash = Places.Skip(s, i);
        if (whole.Min == 1 && slash > i && slash < s.Length && s[slash] == '/' && Places.Skip(s, slash + 1) is var below && below < s.Length && s[below] is '2' or '3' or '4' or '8' && (below + 1 == s.Length || s[below + 1] is ' ' or 't' or 'c'))
        {
            return new Numeral(1.0 / (s[below] - '0'), null, below + 1) { Repaired = true };
        }

        // "1 1 / 2 cups": the same behind a whole one
        int top = slash;
        if (top > i && top + 2 < s.Length && s[top] is >= '1' and <= '7' && Places.Skip(s, top + 1) is var stroke && stroke > top + 1 && stroke < s.Length && s[stroke] == '/' && Places.Skip(s, stroke + 1) is var under && under < s.Length && s[under] is '2' or '3' or '4' or '8' && s[under] > s[top] && under + 1 < s.Length && s[under + 1] == ' ')
        {
            return new Numeral(whole.Min + ((s[top] - '0') / (double)(s[under] - '0')), null, under + 1) { Repaired = true };
        }

        int j = i;
        if (j < s.Length && Vulgar(s[j]) > 0)
        {
            return new Numeral(whole.Min + Vulgar(s[j]), null, j + 1);
        }

        if (PrintedFractions.Glued(s, Places.Skip(s, j), out int printedEnd) is var printed and > 0)
        {
            return new Numeral(whole.Min + printed, null, printedEnd);
        }

        j = Places.Skip(s, j);
        if (j < s.Length && s[j] == '-' && j == i)
        {
            j++;
        }
        else if (j < s.Length && s[j] is 'と' or '&')
        {
            j = Places.Skip(s, j + 1);
        }
        else if (Places.WordAt(s, j, "and") || (lang == "fr" && Places.WordAt(s, j, "et")) || (lang == "es" && Places.WordAt(s, j, "y")) || (lang == "it" && Places.WordAt(s, j, "e")) || (lang == "de" && Places.WordAt(s, j, "und")))
        {
            int k = Places.Skip(s, Places.WordEnd(s, j));
            if (Places.WordAt(s, k, "a half")) { return new Numeral(whole.Min + 0.5, null, k + 6); }
            if (lang == "fr" && Places.WordAt(s, k, "demi")) { return new Numeral(whole.Min + 0.5, null, k + 4); }
            if (lang == "fr" && Places.WordAt(s, k, "demie")) { return new Numeral(whole.Min + 0.5, null, k + 5); }
            if (lang == "es" && (Places.WordAt(s, k, "medio") || Places.WordAt(s, k, "media"))) { return new Numeral(whole.Min + 0.5, null, k + 5); }
            if (lang == "it" && (Places.WordAt(s, k, "mezzo") || Places.WordAt(s, k, "mezza"))) { return new Numeral(whole.Min + 0.5, null, k + 5); }
            j = k;
        }

        if (j >= s.Length || j == i)
        {
            return null;
        }

        if (Vulgar(s[j]) > 0)
        {
            return new Numeral(whole.Min + Vulgar(s[j]), null, j + 1);
        }

        int e = j;
        while (e < s.Length && char.IsAsciiDigit(s[e]) && e - j < 3)
        {
            e++;
        }

        if (e > j && e < s.Length && s[e] == '/' && Denominator(s, e + 1, out double den, out int mixedEnd))
        {
            double num = double.Parse(s.AsSpan(j, e - j), CultureInfo.InvariantCulture);
            if (num < den && IsFraction(num, den, lang))
            {
                return new Numeral(whole.Min + num / den, null, mixedEnd);
            }
        }

        return null;
    }

    private static bool Denominator(string s, int i, out double value, out int end)
    {
        end = i;
        while (end < s.Length && char.IsAsciiDigit(s[end]) && end - i < 3)
        {
            end++;
        }

        value = end > i ? double.Parse(s.AsSpan(i, end - i), CultureInfo.InvariantCulture) : 0;
        return value > 0 && !(end < s.Length && char.IsAsciiDigit(s[end]));
    }

    /// <summary>1/2, 3/4, 1/8 are fractions; 10/12, 18/20 are ranges; 5/6 and 3/4 minutes depend on the country and stay fractions when the lower number is a usual denominator.</summary>
    private static bool IsFraction(double numerator, double denominator, string lang) =>
        numerator < denominator && (denominator is 2 or 3 or 4 or 8 or 16 || (denominator is 5 or 6 or 32 && (lang is "en" or "ja" || numerator == 1)));

    /// <summary>"6/8 foglie", "4/6 minuti": nobody writes three quarters so; only of a cup or spoon is it what is left of a sum.</summary>
    private static bool Counts(string s, double numerator, double denominator, int end, string lang) =>
        (numerator, denominator) is (2, 4) or (4, 6) or (4, 8) or (6, 8) && Lexicon.LongestUnit(s, Places.Skip(s, end), lang, out _) is not { Kind: "cup" or "spoon" or "length" or "dozen" };

    private static bool ThreeDigits(string s, int i) =>
        i + 3 <= s.Length && char.IsAsciiDigit(s[i]) && char.IsAsciiDigit(s[i + 1]) && char.IsAsciiDigit(s[i + 2]) && !(i + 3 < s.Length && char.IsAsciiDigit(s[i + 3]));
}
