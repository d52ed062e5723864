using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using Coulisse.Cards;

namespace Coulisse.Formats.In;

/// <summary>A photograph fit to be kept: its picture and which way up it is, and nothing else of what a camera writes (place, time, owner, thumbnails).</summary>
/// <remarks>
/// Containers are walked, pictures are never unpacked, so a small file that unpacks to a huge picture costs nothing here; one whose stated
/// size no camera makes is refused all the same, since a browser would unpack it. JPEG: ITU-T T.81 annex B; PNG: ISO/IEC 15948; WebP: RFC 9649.
/// </remarks>
/// <param name="Bytes">The file without its metadata.</param>
/// <param name="Type">Media type.</param>
/// <param name="Width">Pixels across.</param>
/// <param name="Height">Pixels down.</param>
public sealed record Photograph(byte[] Bytes, string Type, int Width, int Height)
{
    /// <summary>Most bytes a photograph may have.</summary>
    public const int MostBytes = 10 * 1024 * 1024;

    /// <summary>Most pixels a photograph may state: more than any kitchen's camera has, few enough for any browser.</summary>
    public const long MostPixels = 100_000_000;

    private static ReadOnlySpan<byte> PngMark => [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10];

    /// <summary>Takes a photograph in.</summary>
    /// <param name="bytes">The file.</param>
    public static Parsed<Photograph> Read(byte[] bytes)
    {
        if (bytes.Length > MostBytes)
        {
            return Fail("FMT110", string.Create(CultureInfo.InvariantCulture, $"The photograph has {bytes.Length / 1048576.0:0.#} MB."), "10 MB is the most; make it smaller.");
        }

        Photograph? photograph;
        try
        {
            photograph = bytes.AsSpan().StartsWith(PngMark) ? Png(bytes)
                : bytes is [0xFF, 0xD8, 0xFF, ..] ? Jpeg(bytes)
                : bytes.Length > 12 && bytes.AsSpan(0, 4).SequenceEqual("RIFF"u8) && bytes.AsSpan(8, 4).SequenceEqual("WEBP"u8) ? Webp(bytes)
                : null;
        }
        catch (Exception e) when (e is ArgumentOutOfRangeException or IndexOutOfRangeException or OverflowException)
        {
            return Fail("FMT111", "The photograph ends in the middle or its pieces do not fit together.", "Save it again as JPEG, PNG or WebP.");
        }

        return photograph is null || photograph.Width == 0 || photograph.Height == 0 ? Fail("FMT112", "This is no photograph we keep.", "JPEG, PNG and WebP are kept; drawings with scripts in them (SVG) and other kinds are not.")
            : (long)photograph.Width * photograph.Height > MostPixels ? Fail("FMT113", string.Create(CultureInfo.InvariantCulture, $"The photograph says it is {photograph.Width} by {photograph.Height} pixels."), "A hundred million pixels are the most.")
            : new Parsed<Photograph>.Ok(photograph);
    }

    private static Parsed<Photograph> Fail(string code, string what, string right) => new Parsed<Photograph>.Failed([new Problem(code, 0, what, right)]);

    private static Photograph Jpeg(byte[] b)
    {
        using MemoryStream kept = new();
        kept.Write([0xFF, 0xD8]);
        int orientation = 1;
        (int width, int height) = (0, 0);
        for (int at = 2; ;)
        {
            while (b[at] == 0xFF && b[at + 1] == 0xFF)
            {
                at++; // fill bytes
            }

            if (b[at] != 0xFF)
            {
                throw new ArgumentOutOfRangeException(nameof(b));
            }

            byte marker = b[at + 1];
            int length = BinaryPrimitives.ReadUInt16BigEndian(b.AsSpan(at + 2, 2));
            ReadOnlySpan<byte> segment = b.AsSpan(at, length + 2);
            if (marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC))
            {
                (height, width) = (BinaryPrimitives.ReadUInt16BigEndian(segment[5..7]), BinaryPrimitives.ReadUInt16BigEndian(segment[7..9]));
            }

            if (marker == 0xE1 && segment[4..].StartsWith("Exif\0\0"u8))
            {
                orientation = Orientation(segment[10..]);
            }
            // of the application segments only the frame of JFIF, the colour profile and Adobe's colour mark belong to the picture
            else if (marker is not ((>= 0xE1 and <= 0xEF) or 0xFE) || (marker == 0xE2 && segment[4..].StartsWith("ICC_PROFILE\0"u8)) || (marker == 0xEE && segment[4..].StartsWith("Adobe"u8)))
            {
                if (marker == 0xDA)
                {
                    if (orientation is > 1 and <= 8)
                    {
                        Upright(kept, orientation);
                    }

                    // What follows the end of the picture (a second one, a film) is not kept.
                    kept.Write(b.AsSpan(at, End(b, at + segment.Length) - at));
                    return new Photograph(kept.ToArray(), "image/jpeg", width, height);
                }

                kept.Write(segment);
            }

            at += length + 2;
        }
    }

    /// <summary>Where the picture ends: its end mark, wherever scans and tables between them lie.</summary>
    private static int End(byte[] b, int at)
    {
        while (true)
        {
            if (b[at] == 0xFF && b[at + 1] == 0xD9)
            {
                return at + 2;
            }

            at++;
        }
    }

    /// <summary>Tag 0x0112 of the first directory of a TIFF; 1 when there is none.</summary>
    private static int Orientation(ReadOnlySpan<byte> tiff)
    {
        bool little = tiff[0] == (byte)'I';
        int Two(ReadOnlySpan<byte> s, int i) => little ? BinaryPrimitives.ReadUInt16LittleEndian(s[i..]) : BinaryPrimitives.ReadUInt16BigEndian(s[i..]);
        uint at = little ? BinaryPrimitives.ReadUInt32LittleEndian(tiff[4..]) : BinaryPrimitives.ReadUInt32BigEndian(tiff[4..]);
        if (at > tiff.Length - 2)
        {
            return 1;
        }

        int entries = Two(tiff, (int)at);
        for (int i = 0; i < entries && (int)at + 14 + (12 * i) <= tiff.Length; i++)
        {
            ReadOnlySpan<byte> entry = tiff.Slice((int)at + 2 + (12 * i), 12);
            if (Two(entry, 0) == 0x0112)
            {
                return Two(entry, 8);
            }
        }

        return 1;
    }

    /// <summary>The least Exif that says which way up the picture is.</summary>
    private static void Upright(MemoryStream kept, int orientation)
        => kept.Write([0xFF, 0xE1, 0, 34, .. "Exif\0\0"u8, (byte)'M', (byte)'M', 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)orientation, 0, 0, 0, 0, 0, 0]);

    private static Photograph Png(byte[] b)
    {
        string[] picture = ["IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "sBIT", "pHYs"];
        using MemoryStream kept = new();
        kept.Write(PngMark);
        (int width, int height) = (0, 0);
        for (int at = 8; ;)
        {
            int length = checked((int)BinaryPrimitives.ReadUInt32BigEndian(b.AsSpan(at, 4)));
            string kind = Encoding.ASCII.GetString(b.AsSpan(at + 4, 4));
            ReadOnlySpan<byte> chunk = b.AsSpan(at, checked(length + 12));
            if (kind == "IHDR")
            {
                (width, height) = (checked((int)BinaryPrimitives.ReadUInt32BigEndian(chunk[8..12])), checked((int)BinaryPrimitives.ReadUInt32BigEndian(chunk[12..16])));
            }

            if (picture.Contains(kind))
            {
                kept.Write(chunk);
            }

            if (kind == "IEND")
            {
                return new Photograph(kept.ToArray(), "image/png", width, height);
            }

            at = checked(at + length + 12);
        }
    }

    private static Photograph Webp(byte[] b)
    {
        using MemoryStream kept = new();
        kept.Write(b.AsSpan(0, 12));
        (int width, int height) = (0, 0);
        int end = Math.Min(b.Length, checked((int)BinaryPrimitives.ReadUInt32LittleEndian(b.AsSpan(4, 4)) + 8));
        for (int at = 12; at + 8 <= end;)
        {
            string kind = Encoding.ASCII.GetString(b.AsSpan(at, 4));
            int length = checked((int)BinaryPrimitives.ReadUInt32LittleEndian(b.AsSpan(at + 4, 4)));
            byte[] chunk = b.AsSpan(at, checked(8 + length + (length & 1))).ToArray();
            ReadOnlySpan<byte> body = chunk.AsSpan(8);
            switch (kind)
            {
                case "VP8X":
                    chunk[8] &= 0b1111_0011; // says no longer that Exif and XMP follow
                    (width, height) = (1 + body[4] + (body[5] << 8) + (body[6] << 16), 1 + body[7] + (body[8] << 8) + (body[9] << 16));
                    break;
                case "VP8 " when width == 0:
                    (width, height) = (BinaryPrimitives.ReadUInt16LittleEndian(body[6..8]) & 0x3FFF, BinaryPrimitives.ReadUInt16LittleEndian(body[8..10]) & 0x3FFF);
                    break;
                case "VP8L" when width == 0:
                    uint bits = BinaryPrimitives.ReadUInt32LittleEndian(body[1..5]);
                    (width, height) = ((int)(bits & 0x3FFF) + 1, (int)((bits >> 14) & 0x3FFF) + 1);
                    break;
                default:
                    break;
            }

            if (kind is "VP8X" or "VP8 " or "VP8L" or "ALPH" or "ICCP" or "ANIM" or "ANMF")
            {
                kept.Write(chunk);
            }

            at = checked(at + chunk.Length);
        }

        byte[] all = kept.ToArray();
        BinaryPrimitives.WriteUInt32LittleEndian(all.AsSpan(4, 4), (uint)(all.Length - 8));
        return new Photograph(all, "image/webp", width, height);
    }
}
