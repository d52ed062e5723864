using System.Text;

namespace Coulisse.Matter.Reference;

/// <summary>Turns a shipped table into characters.</summary>
internal static class TableText
{
    /// <summary>The characters of a table, straight into one array: a reader would hold the largest of them three times.</summary>
    /// <param name="stream">UTF-8, with or without its mark in front.</param>
    /// <param name="length">Characters; the array may be longer, as a letter takes up to four bytes.</param>
    public static char[] Decode(Stream stream, out int length)
    {
        Decoder decoder = Encoding.UTF8.GetDecoder();
        char[] text = new char[stream.Length];
        Span<byte> piece = stackalloc byte[4096];
        length = 0;
        bool first = true;
        for (int read = stream.ReadAtLeast(piece, piece.Length, false); read > 0; read = stream.ReadAtLeast(piece, piece.Length, false))
        {
            ReadOnlySpan<byte> bytes = piece[..read];
            length += decoder.GetChars(first && bytes.StartsWith(Encoding.UTF8.Preamble) ? bytes[Encoding.UTF8.Preamble.Length..] : bytes, text.AsSpan(length), false);
            first = false;
        }

        length += decoder.GetChars([], text.AsSpan(length), true);
        return text;
    }
}
