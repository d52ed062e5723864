using System.Text;
using Coulisse.Cards;

namespace Coulisse.Formats.In;

/// <summary>Bytes of a file to its text, whatever it was saved as.</summary>
public static class TextBytes
{
    private const int Looked = 8192;
    private const int Dirt = 3;
    // What Windows programs write in the places where Latin-1 has control characters.
    private const string Windows = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008DŽ\u008F\u0090‘’“”•–—˜™š›œ\u009DžŸ";

    /// <summary>The text: UTF-8, UTF-16 or UTF-32 by their marks, UTF-16 without a mark by its zero bytes, UTF-8 when it is valid, else Latin-1 as Windows writes it. Refuses what is no text.</summary>
    /// <param name="bytes">The whole file.</param>
    public static Parsed<string> Read(byte[] bytes)
    {
        if (bytes.Length > CardText.MostCharacters * 4L)
        {
            return Refuse("CRD002", "The file is longer than 20 MB.", "A card is a few pages; split it into cards of one dish each.");
        }

        if (OtherKind(bytes) is { } other)
        {
            return other;
        }

        string text = Decode(bytes);
        int control = 0;
        int looked = Math.Min(text.Length, Looked);
        foreach (char c in text.AsSpan(0, looked))
        {
            control += c is '\uFFFF' || c < ' ' && c is not ('\n' or '\r' or '\t' or '\f' or '\v') ? 1 : 0;
        }

        // A stray control character is dirt; one in twenty is another kind of file.
        return control > Math.Max(Dirt, looked / 20) ? Refuse("CRD003", "This is a binary file, not a text.", "Save it as text, Markdown or HTML.") : new Parsed<string>.Ok(text);
    }

    private static string Decode(byte[] b)
    {
        switch (b)
        {
            case [0xFF, 0xFE, 0, 0, ..]: return Encoding.UTF32.GetString(b, 4, b.Length - 4);
            case [0xEF, 0xBB, 0xBF, ..]: return Encoding.UTF8.GetString(b, 3, b.Length - 3);
            case [0xFF, 0xFE, ..]: return Encoding.Unicode.GetString(b, 2, b.Length - 2);
            case [0xFE, 0xFF, ..]: return Encoding.BigEndianUnicode.GetString(b, 2, b.Length - 2);
        }

        if (Zeroes(b) is { } little)
        {
            return (little ? Encoding.Unicode : Encoding.BigEndianUnicode).GetString(b);
        }

        if (JapaneseBytes.Wide(b) is { } wide)
        {
            return wide;
        }

        try
        {
            return new UTF8Encoding(false, true).GetString(b);
        }
        catch (DecoderFallbackException)
        {
            if (JapaneseBytes.Narrow(b) is { } narrow)
            {
                return narrow;
            }

            return string.Create(b.Length, b, static (span, bytes) =>
            {
                for (int i = 0; i < bytes.Length; i++)
                {
                    span[i] = bytes[i] is >= 0x80 and < 0xA0 ? Windows[bytes[i] - 0x80] : (char)bytes[i];
                }
            });
        }
    }

    /// <summary>Files of programs whose words can be pasted but whose bytes are none; null for any other.</summary>
    internal static Parsed<string>.Failed? OtherKind(ReadOnlySpan<byte> head)
    {
        ReadOnlySpan<byte> start = head[..Math.Min(head.Length, 1024)];
        return start.IndexOf("%PDF-"u8) is >= 0 and < 64 ? Refuse("CRD006", "This is a PDF, not a text.", "Open it, select its text, copy it and paste that.")
            : start.StartsWith("PK\u0003\u0004"u8) ? Refuse("CRD006", "This is a file of a word processor or a spreadsheet, or a packed folder, not a text.", "Open it, copy its text and paste that, or save it as text.")
            : start.StartsWith("{\\rtf"u8) ? Refuse("CRD006", "This is rich text with its codes, not a text.", "Open it, copy its text and paste that, or save it as text.")
            : null;
    }

    /// <summary>True for UTF-16 with the low byte first, false for the high byte first, null for neither: letters of Europe leave every second byte zero.</summary>
    private static bool? Zeroes(byte[] b)
    {
        int n = Math.Min(b.Length, Looked) & ~1;
        if (n < 4)
        {
            return null;
        }

        (int even, int odd) = (0, 0);
        for (int i = 0; i < n; i += 2)
        {
            even += b[i] == 0 ? 1 : 0;
            odd += b[i + 1] == 0 ? 1 : 0;
        }

        int half = n / 2;
        return odd * 10 > half * 7 && even * 20 < half ? true : even * 10 > half * 7 && odd * 20 < half ? false : null;
    }

    private static Parsed<string>.Failed Refuse(string code, string message, string hint) => new([new Problem(code, 0, message, hint)]);
}
