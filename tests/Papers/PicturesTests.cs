using System.Diagnostics;
using System.Text;
using Coulisse.Papers.Pages;
using Coulisse.Papers.Pdf;
using Coulisse.Tests;
using Coulisse.Views.Papers;

namespace Coulisse.Papers.Tests;

/// <summary>Every page of the example as a coarse picture (a grey step a cell of 6.35 mm), compared with the approved one. A page that looks different on purpose is approved anew with COULISSE_APPROVE=1.</summary>
public sealed class PicturesTests
{
    // Cells that may differ by more than two of ten grey steps: a word changed, not a layout.
    private const double Tolerance = 0.06;

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    public void Pages_look_as_they_were_approved(string sheet)
    {
        string? pdftoppm = Environment.GetEnvironmentVariable("PATH")?.Split(Path.PathSeparator).Select(p => Path.Combine(p, "pdftoppm")).FirstOrDefault(File.Exists);
        Assert.SkipWhen(pdftoppm is null, "pdftoppm is not installed, so no picture can be taken.");
        PageFormat format = sheet == "a4" ? PageFormat.A4 : PageFormat.Letter;
        string approved = Path.Combine(SharedData.Repository, "tests/Papers/Approved", $"pages-{sheet}.txt");
        Dictionary<string, string> now = [];
        foreach (Paper paper in PaperShelf.Papers(Demo.Planned()))
        {
            int n = 0;
            foreach (string picture in Pictures(pdftoppm!, PdfWriter.Write(PagePlan.Of(paper, format)).Bytes))
            {
                now[$"{paper.Id} page {++n}"] = picture;
            }
        }

        if (Environment.GetEnvironmentVariable("COULISSE_APPROVE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(approved)!);
            File.WriteAllText(approved, string.Join("\n\n", now.Select(p => p.Key + "\n" + p.Value)) + "\n");
        }

        Dictionary<string, string> before = File.ReadAllText(approved).TrimEnd().Split("\n\n").ToDictionary(p => p[..p.IndexOf('\n', StringComparison.Ordinal)], p => p[(p.IndexOf('\n', StringComparison.Ordinal) + 1)..]);
        List<string> different = [];
        foreach ((string page, string picture) in now)
        {
            if (!before.TryGetValue(page, out string? was) || was.Length != picture.Length)
            {
                different.Add($"{page} is new or of another size");
            }
            else if (was.Zip(picture).Count(c => Math.Abs(c.First - c.Second) > 2) is var cells && cells > picture.Length * Tolerance)
            {
                different.Add($"{page} differs in {cells} of {picture.Length} cells");
            }
        }

        different.AddRange(before.Keys.Except(now.Keys).Select(p => p + " is gone"));
        Assert.True(different.Count == 0, string.Join("; ", different) + ". Look at the pages; COULISSE_APPROVE=1 approves them.");
    }

    [Fact]
    public void A_page_turned_upside_down_would_be_seen()
    {
        string page = string.Concat(Enumerable.Range(0, 40).Select(y => new string((char)('0' + (y < 20 ? 0 : 7)), 30) + "\n"));
        string turned = string.Concat(page.Reverse());
        Assert.True(page.Zip(turned).Count(c => c.First != '\n' && Math.Abs(c.First - c.Second) > 2) > page.Length * Tolerance);
    }

    private static IEnumerable<string> Pictures(string pdftoppm, byte[] pdf)
    {
        string folder = Directory.CreateTempSubdirectory("coulisse-pictures-").FullName;
        try
        {
            string file = Path.Combine(folder, "x.pdf");
            File.WriteAllBytes(file, pdf);
            using Process p = Process.Start(new ProcessStartInfo(pdftoppm, ["-gray", "-r", "16", file, Path.Combine(folder, "p")]) { RedirectStandardError = true, UseShellExecute = false })!;
            p.StandardError.ReadToEnd();
            p.WaitForExit();
            return [.. Directory.GetFiles(folder, "*.pgm").Order(StringComparer.Ordinal).Select(f => Coarse(File.ReadAllBytes(f)))];
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    // Four by four pixels to one cell: 0 white, 9 black.
    private static string Coarse(byte[] pgm)
    {
        int at = 0;
        int Next()
        {
            while (pgm[at] is (byte)' ' or (byte)'\n')
            {
                at++;
            }

            int n = 0;
            while (char.IsAsciiDigit((char)pgm[at]))
            {
                n = (n * 10) + pgm[at++] - '0';
            }

            return n;
        }

        at = 2;
        (int width, int height, int _) = (Next(), Next(), Next());
        at++;
        StringBuilder b = new();
        for (int y = 0; y + 4 <= height; y += 4)
        {
            for (int x = 0; x + 4 <= width; x += 4)
            {
                int sum = 0;
                for (int k = 0; k < 16; k++)
                {
                    sum += 255 - pgm[at + ((y + (k / 4)) * width) + x + (k % 4)];
                }

                b.Append((char)('0' + Math.Min(9, sum * 20 / (16 * 255))));
            }

            b.Append('\n');
        }

        return b.ToString().TrimEnd('\n');
    }
}
