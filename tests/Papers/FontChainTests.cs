using System.Text;
using Coulisse.Papers.Fonts;
using CsCheck;

namespace Coulisse.Papers.Tests;

public sealed class FontChainTests
{
    [Theory]
    [InlineData("a½≤→ł", "SourceSans3_400Regular")]
    [InlineData("λЖ", "SourceSans3_400Regular")]
    [InlineData("黄身", "NotoSansJP_400Regular")]
    [InlineData("ש", "DejaVuSansCondensed")]
    public void Signs_come_from_the_first_face_that_has_them(string text, string face)
        => Assert.All(text.EnumerateRunes(), r => Assert.Equal(face, FontChain.Regular.FaceFor(r)?.Name));

    [Fact]
    public void An_emoji_that_no_face_has_is_kept_in_a_run_without_a_face()
    {
        FaceRun[] runs = [.. FontChain.Regular.Split("pear 🥮 tart")];

        Assert.Equal(["pear ", "🥮", " tart"], runs.Select(r => r.Text));
        Assert.Null(runs[1].Face);
        Assert.NotNull(runs[2].Face);
    }

    [Fact]
    public void Runs_joined_again_are_the_text() => Gen.String.Where(s => !s.Any(char.IsSurrogate)).Sample(s =>
        string.Concat(FontChain.Bold.Split(s).Select(r => r.Text)) == s);

    [Theory]
    [InlineData("SourceSans3_400Regular")]
    [InlineData("SourceSans3_700Bold")]
    public void Figures_are_all_one_width_so_that_columns_line_up(string name)
        => Assert.Single("0123456789".EnumerateRunes().Select(r => FontFace.Open(name).Width(r, 1000)).Distinct());

    [Fact]
    public void Letters_differ_in_width() => Assert.True(
        FontChain.Regular.FaceFor(new Rune('m'))!.Width(new Rune('m'), 10) > FontChain.Regular.FaceFor(new Rune('i'))!.Width(new Rune('i'), 10) * 2);

    [Theory]
    [InlineData("SourceSans3-LICENSE.txt", "SIL Open Font License")]
    [InlineData("NotoSansJP-LICENSE.txt", "SIL Open Font License")]
    [InlineData("DejaVu-LICENSE.txt", "Bitstream")]
    public void Each_face_travels_with_its_licence(string name, string words)
    {
        using Stream? stream = typeof(FontFace).Assembly.GetManifestResourceStream("fonts/" + name);
        Assert.NotNull(stream);
        Assert.Contains(words, new StreamReader(stream).ReadToEnd());
    }
}
