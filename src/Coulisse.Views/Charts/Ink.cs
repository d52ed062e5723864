using System.Globalization;
using System.Text;

namespace Coulisse.Views.Charts;

/// <summary>Writes the marks of a chart as SVG. All text is encoded; nothing is told by colour: lines differ by dash, areas by hatch.</summary>
internal sealed class Ink(double width, double height, string title)
{
    /// <summary>Dashes of the first, second … line.</summary>
    public static readonly string[] Dashes = ["", "7 4", "2 3", "10 3 2 3", "1 5"];

    private readonly StringBuilder _b = new(string.Create(CultureInfo.InvariantCulture,
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width:0.#} {height:0.#}\" class=\"chart\" role=\"img\" aria-label=\"{E(title)}\" color=\"#1c1e20\" font-family=\"Figures, 'Source Sans 3', 'Noto Sans', sans-serif\" font-size=\"13\"><title>{E(title)}</title>"));

    public static string E(string text) => System.Net.WebUtility.HtmlEncode(text);

    public Ink Line(double x1, double y1, double x2, double y2, double stroke = 1, string dash = "", double opacity = 1)
        => Add($"<line x1=\"{x1:0.##}\" y1=\"{y1:0.##}\" x2=\"{x2:0.##}\" y2=\"{y2:0.##}\" stroke=\"currentColor\" stroke-width=\"{stroke:0.##}\" stroke-opacity=\"{opacity:0.##}\" stroke-dasharray=\"{dash}\"/>");

    public Ink Path(IEnumerable<(double X, double Y)> points, double stroke = 2, string dash = "")
        => Add($"<polyline fill=\"none\" stroke=\"currentColor\" stroke-width=\"{stroke:0.##}\" stroke-linejoin=\"round\" stroke-dasharray=\"{dash}\" points=\"{string.Join(' ', points.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.X:0.##},{p.Y:0.##}")))}\"/>");

    public Ink Text(double x, double y, string text, string anchor = "start", double size = 13, int weight = 400)
        => Add($"<text x=\"{x:0.##}\" y=\"{y:0.##}\" fill=\"currentColor\" text-anchor=\"{anchor}\" font-size=\"{size:0.#}\" font-weight=\"{weight}\">{E(text)}</text>");

    /// <summary>A box filled by the n-th hatch: solid, ruled, dotted, crossed, empty.</summary>
    public Ink Box(double x, double y, double w, double h, int hatch)
    {
        Add($"<rect x=\"{x:0.##}\" y=\"{y:0.##}\" width=\"{Math.Max(0, w):0.##}\" height=\"{h:0.##}\" fill=\"{(hatch % 5 == 0 ? "currentColor" : "none")}\" stroke=\"currentColor\" stroke-width=\"1\"/>");
        double step = hatch % 5 == 3 ? 4 : 6;
        for (double at = step / 2; hatch % 5 is 1 or 3 && at < w; at += step)
        {
            Line(x + at, y, x + at, y + h, 1);
        }

        for (double at = step; hatch % 5 is 2 or 3 && at < h; at += step)
        {
            Line(x, y + at, x + w, y + at, 1, hatch % 5 == 2 ? "2 3" : "");
        }

        return this;
    }

    public Ink Add(FormattableString mark)
    {
        _b.Append(mark.ToString(CultureInfo.InvariantCulture));
        return this;
    }

    public string Svg => _b + "</svg>";
}
