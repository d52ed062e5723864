using System.Collections.Concurrent;
using Coulisse.Papers.Fonts;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace Coulisse.Papers.Pdf;

/// <summary>Gives the PDF library our embedded faces and no others, so that a sheet looks the same on every machine.</summary>
internal sealed class EmbeddedFonts : IFontResolver
{
    private static readonly Lock Gate = new();
    private static readonly ConcurrentDictionary<string, byte[]> Files = new();
    private static bool _set;

    public static void Use()
    {
        lock (Gate)
        {
            if (!_set)
            {
                GlobalFontSettings.FontResolver = new EmbeddedFonts();
                _set = true;
            }
        }
    }

    public static XFont Font(FontFace face, double size) => new(face.Name, size, XFontStyleEx.Regular, new XPdfFontOptions(PdfFontEncoding.Unicode));

    public byte[]? GetFont(string faceName) => Files.GetOrAdd(faceName, n => FontFace.Open(n).File.ToArray());

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(familyName);
}
