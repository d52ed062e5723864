using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Coulisse.Papers.Tests;

/// <summary>Text and places read back from a PDF by a library that did not write it.</summary>
internal static class ReadBack
{
    public static PdfDocument Open(byte[] pdf) => PdfDocument.Open(pdf);

    /// <summary>Letters of a page in the order written, without blanks.</summary>
    public static string Letters(Page page) => Squeeze(string.Concat(page.Letters.Select(l => l.Value)));

    public static string Letters(byte[] pdf)
    {
        using PdfDocument d = Open(pdf);
        return string.Concat(d.GetPages().Select(Letters));
    }

    /// <summary>Text without any blank: where lines end is layout, not content.</summary>
    public static string Squeeze(string text)
    {
        StringBuilder b = new(text.Length);
        foreach (char c in text)
        {
            if (!char.IsWhiteSpace(c))
            {
                b.Append(c);
            }
        }

        return b.ToString();
    }
}
