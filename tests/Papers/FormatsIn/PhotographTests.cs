using System.Buffers.Binary;
using System.Text;
using Coulisse.Cards;
using Coulisse.Formats.In;

namespace Coulisse.Papers.Tests.FormatsIn;

public sealed class PhotographTests
{
    private const string Secret = "48.8584N 2.2945E";

    private static byte[] Segment(byte marker, byte[] body) => [0xFF, marker, (byte)((body.Length + 2) >> 8), (byte)((body.Length + 2) & 255), .. body];

    private static byte[] Exif(byte orientation) => Segment(0xE1, [.. "Exif\0\0"u8, (byte)'I', (byte)'I', 42, 0, 8, 0, 0, 0, 1, 0, 0x12, 0x01, 3, 0, 1, 0, 0, 0, orientation, 0, 0, 0, 0, 0, 0, 0, .. Encoding.ASCII.GetBytes(Secret)]);

    private static byte[] Jpeg(byte orientation = 6, int width = 4000, int height = 3000) =>
    [
        0xFF, 0xD8, .. Segment(0xE0, [.. "JFIF\0"u8, 1, 1, 0, 0, 1, 0, 1, 0, 0]), .. Exif(orientation), .. Segment(0xE1, Encoding.ASCII.GetBytes("http://ns.adobe.com/xap/1.0/\0" + Secret)), .. Segment(0xFE, Encoding.ASCII.GetBytes(Secret)),
        .. Segment(0xC0, [8, (byte)(height >> 8), (byte)(height & 255), (byte)(width >> 8), (byte)(width & 255), 1, 1, 0x11, 0]), .. Segment(0xDA, [1, 1, 0, 0, 63, 0]), 1, 2, 0xFF, 0, 3, 0xFF, 0xD9, .. Encoding.ASCII.GetBytes("a film after the end " + Secret),
    ];

    private static byte[] Chunk(string kind, byte[] body)
    {
        byte[] length = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(length, body.Length);
        byte[] named = [.. Encoding.ASCII.GetBytes(kind), .. body];
        return [.. length, .. named, 0, 0, 0, 0];
    }

    private static byte[] Png(int width = 40, int height = 30)
    {
        byte[] head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, width);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), height);
        return [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10, .. Chunk("IHDR", head), .. Chunk("tEXt", Encoding.ASCII.GetBytes("Place\0" + Secret)), .. Chunk("eXIf", Encoding.ASCII.GetBytes(Secret)), .. Chunk("IDAT", [1, 2, 3]), .. Chunk("IEND", []), .. Encoding.ASCII.GetBytes(Secret)];
    }

    private static byte[] Webp()
    {
        static byte[] Riff(string kind, byte[] body)
        {
            byte[] length = new byte[4];
            BinaryPrimitives.WriteInt32LittleEndian(length, body.Length);
            return [.. Encoding.ASCII.GetBytes(kind), .. length, .. body, .. body.Length % 2 == 1 ? new byte[1] : []];
        }

        byte[] inside = [.. "WEBP"u8, .. Riff("VP8X", [0b0000_1100, 0, 0, 0, 99, 0, 0, 49, 0, 0]), .. Riff("VP8 ", new byte[11]), .. Riff("EXIF", Encoding.ASCII.GetBytes(Secret)), .. Riff("XMP ", Encoding.ASCII.GetBytes(Secret))];
        return Riff("RIFF", inside);
    }

    private static Photograph Ok(byte[] bytes) => Assert.IsType<Parsed<Photograph>.Ok>(Photograph.Read(bytes)).Value;

    private static bool Holds(byte[] bytes, string words) => bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes(words)) >= 0;

    [Fact]
    public void Where_and_when_it_was_taken_is_taken_out_and_which_way_up_it_is_stays()
    {
        Photograph p = Ok(Jpeg());
        Assert.Equal(("image/jpeg", 4000, 3000), (p.Type, p.Width, p.Height));
        Assert.False(Holds(p.Bytes, Secret));
        Assert.False(Holds(p.Bytes, "adobe"));
        Assert.True(Holds(p.Bytes, "JFIF"));
        int exif = p.Bytes.AsSpan().IndexOf("Exif\0\0MM"u8);
        Assert.True(exif > 0);
        Assert.Equal(6, p.Bytes[exif + 25]);
        Assert.Equal([0xFF, 0xD9], p.Bytes[^2..]);
        // an upright one needs no mark, and what is clean already comes through unchanged
        Assert.False(Holds(Ok(Jpeg(1)).Bytes, "Exif"));
        Assert.Equal(Ok(Jpeg()).Bytes, Ok(Ok(Jpeg()).Bytes).Bytes);
    }

    [Fact]
    public void A_png_and_a_webp_lose_their_words_and_keep_their_picture()
    {
        Photograph png = Ok(Png());
        Assert.Equal(("image/png", 40, 30), (png.Type, png.Width, png.Height));
        Assert.False(Holds(png.Bytes, Secret));
        Assert.True(Holds(png.Bytes, "IDAT"));
        Photograph webp = Ok(Webp());
        Assert.Equal(("image/webp", 100, 50), (webp.Type, webp.Width, webp.Height));
        Assert.False(Holds(webp.Bytes, Secret));
        Assert.Equal(webp.Bytes.Length - 8, BinaryPrimitives.ReadInt32LittleEndian(webp.Bytes.AsSpan(4)));
        Assert.Equal(0, webp.Bytes[20] & 0b1100);
    }

    [Theory]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>")]
    [InlineData("<?xml version=\"1.0\"?><!DOCTYPE b [<!ENTITY a \"aa\"><!ENTITY b \"&a;&a;\">]><b>&b;</b>")]
    [InlineData("GIF89a;<script>alert(1)</script>")]
    [InlineData("")]
    public void What_is_no_photograph_is_not_kept(string text)
        => Assert.Equal("FMT112", Assert.Single(Assert.IsType<Parsed<Photograph>.Failed>(Photograph.Read(Encoding.UTF8.GetBytes(text))).Problems).Code);

    [Fact]
    public void A_small_file_that_says_it_is_a_huge_picture_and_a_huge_file_are_not_kept()
    {
        Assert.Equal("FMT113", Code(Png(60_000, 60_000)));
        Assert.Equal("FMT113", Code(Jpeg(1, 65_000, 65_000)));
        Assert.Equal("FMT110", Code(new byte[Photograph.MostBytes + 1]));
        Ok(Png(10_000, 9_000));
    }

    [Fact]
    public void Cut_anywhere_or_changed_anywhere_it_is_kept_clean_or_refused_and_never_breaks()
    {
        Random random = new(20261128);
        foreach (byte[] whole in new[] { Jpeg(), Png(), Webp() })
        {
            for (int cut = 0; cut < whole.Length; cut++)
            {
                _ = Photograph.Read(whole[..cut]);
                byte[] changed = [.. whole];
                changed[cut] = (byte)random.Next(256);
                _ = Photograph.Read(changed);
            }
        }
    }

    private static string Code(byte[] bytes) => Assert.Single(Assert.IsType<Parsed<Photograph>.Failed>(Photograph.Read(bytes)).Problems).Code;
}
