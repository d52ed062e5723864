using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Coulisse.Matter.Shapes;

/// <summary>Writes a <see cref="Drawing"/> as SVG whose size is given in millimetres, so that printed at 100 % it lies over the real thing.</summary>
public static class SvgDrawing
{
    private const double Margin = 2;

    /// <summary>The drawing as an SVG document.</summary>
    /// <param name="drawing">What to write.</param>
    /// <remarks>Kinds of marks differ by line and hatch as well as by grey, so the drawing can be read without colour.</remarks>
    public static string Write(Drawing drawing)
    {
        StringBuilder b = new();
        double w = drawing.Width + (2 * Margin);
        double h = drawing.Height + (2 * Margin);
        b.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{N(w)}mm\" height=\"{N(h)}mm\" viewBox=\"{N(-Margin)} {N(-Margin)} {N(w)} {N(h)}\" role=\"img\">\n");
        b.Append("<title>").Append(Escape(drawing.Title)).Append("</title>\n");
        b.Append("<defs><pattern id=\"hatch\" width=\"3\" height=\"3\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><line x1=\"0\" y1=\"0\" x2=\"0\" y2=\"3\" stroke=\"#999\" stroke-width=\"0.4\"/></pattern></defs>\n");
        foreach (Mark mark in drawing.Marks)
        {
            b.Append(Element(mark)).Append('\n');
        }

        return b.Append("</svg>\n").ToString();
    }

    private static string Element(Mark mark) => mark switch
    {
        RectMark r => Of($"<rect x=\"{N(r.X)}\" y=\"{N(r.Y)}\" width=\"{N(r.Width)}\" height=\"{N(r.Height)}\" {Style(r.Ink)}/>"),
        CircleMark c => Of($"<circle cx=\"{N(c.X)}\" cy=\"{N(c.Y)}\" r=\"{N(c.Radius)}\" {Style(c.Ink)}/>"),
        LineMark l => Of($"<line x1=\"{N(l.X1)}\" y1=\"{N(l.Y1)}\" x2=\"{N(l.X2)}\" y2=\"{N(l.Y2)}\" {Style(l.Ink)}/>"),
        PolygonMark { Closed: true } p => Of($"<polygon points=\"{Points(p)}\" {Style(p.Ink)}/>"),
        PolygonMark p => Of($"<polyline points=\"{Points(p)}\" {Style(Ink.Guide)}/>"),
        TextMark t => Of($"<text x=\"{N(t.X)}\" y=\"{N(t.Y)}\" font-size=\"{N(t.Size)}\" text-anchor=\"middle\" font-family=\"sans-serif\">{Escape(t.Text)}</text>"),
        _ => throw new UnreachableException(),
    };

    private static string Style(Ink ink) => ink switch
    {
        Ink.Outline => "fill=\"none\" stroke=\"#000\" stroke-width=\"0.6\"",
        Ink.Piece => "fill=\"#f2f2f2\" stroke=\"#000\" stroke-width=\"0.3\"",
        Ink.PieceTwo => "fill=\"#d4d4d4\" stroke=\"#000\" stroke-width=\"0.3\" stroke-dasharray=\"1.5 0.7\"",
        Ink.Trim => "fill=\"url(#hatch)\" stroke=\"#999\" stroke-width=\"0.2\"",
        Ink.Solid => "fill=\"#000\" stroke=\"none\"",
        Ink.Guide => "fill=\"none\" stroke=\"#555\" stroke-width=\"0.2\" stroke-dasharray=\"2 1\"",
        _ => throw new UnreachableException(),
    };

    private static string Points(PolygonMark p) => string.Join(' ', p.Points.Select(q => Of($"{N(q.X)},{N(q.Y)}")));

    private static string N(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Of(FormattableString s) => FormattableString.Invariant(s);

    private static string Escape(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal)
        .Replace("\"", "&quot;", StringComparison.Ordinal);
}
