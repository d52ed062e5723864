using System.Text;

namespace Coulisse.Formats.In;

/// <summary>Japanese text in encodings that no mark tells: UTF-16, Shift_JIS, EUC-JP. Taken only where the result is surely Japanese: kana, which no other text gives by chance.</summary>
internal static class JapaneseBytes
{
    private const double LeastKana = 0.15;
    private const double LeastKnown = 0.95;
    private const int LeastCharacters = 4;
    private const int Looked = 8192;

    /// <summary>UTF-16 by its kana; null when it is not surely so.</summary>
    public static string? Wide(byte[] b)
    {
        if (b.Length % 2 != 0 || b.Length < LeastCharacters * 2)
        {
            return null;
        }

        foreach (bool high in (ReadOnlySpan<bool>)[false, true])
        {
            int n = Math.Min(b.Length, Looked) & ~1;
            char[] seen = new char[n / 2];
            for (int i = 0; i < n; i += 2)
            {
                seen[i / 2] = (char)(high ? b[i] << 8 | b[i + 1] : b[i + 1] << 8 | b[i]);
            }

            if (Surely(seen, wide: true))
            {
                return (high ? Encoding.BigEndianUnicode : Encoding.Unicode).GetString(b);
            }
        }

        return null;
    }

    /// <summary>Shift_JIS or EUC-JP by their kana; null when it is surely neither.</summary>
    public static string? Narrow(byte[] b)
    {
        foreach (int page in (ReadOnlySpan<int>)[932, 51932])
        {
            try
            {
                string text = CodePagesEncodingProvider.Instance.GetEncoding(page, EncoderFallback.ExceptionFallback, DecoderFallback.ExceptionFallback)!.GetString(b);
                if (Surely(text.AsSpan(0, Math.Min(text.Length, Looked)), wide: false))
                {
                    return text;
                }
            }
            catch (DecoderFallbackException)
            {
                // not this one
            }
        }

        return null;
    }

    // Half-width kana stand for single bytes that other alphabets use, and so prove nothing.
    private static bool Surely(ReadOnlySpan<char> text, bool wide)
    {
        (int all, int kana, int known) = (0, 0, 0);
        foreach (char c in text)
        {
            if (!wide && c < 0x80)
            {
                continue;
            }

            all++;
            kana += c is >= '\u3041' and <= '\u30FE' ? 1 : 0;
            known += c is >= '\u3000' and <= '\u30FF' or >= '\u4E00' and <= '\u9FFF' or >= '\uFF01' and <= '\uFF5E' or '℃' or '×' or '°' or '±' or '→' or '½' || (c < 0x80 && (c >= ' ' || c is '\n' or '\r' or '\t')) ? 1 : 0;
        }

        return all >= LeastCharacters && kana >= all * LeastKana && known >= all * LeastKnown;
    }
}
