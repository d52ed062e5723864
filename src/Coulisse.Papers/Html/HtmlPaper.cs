using System.Globalization;
using System.Net;
using System.Text;
using Coulisse.Matter.Shapes;
using Coulisse.Papers.Pages;
using Coulisse.Views.Papers;

namespace Coulisse.Papers.Html;

/// <summary>Print pages for a browser from the same blocks as the PDF: the same words in the same order, heads of tables repeated, page counts by the browser.</summary>
public static class HtmlPaper
{
    /// <summary>One document with each paper on pages of its own.</summary>
    public static string Write(IReadOnlyList<Paper> papers, PageFormat format)
    {
        StringBuilder b = new();
        string language = papers.Count > 0 ? papers[0].Language : "en";
        b.Append(CultureInfo.InvariantCulture, $"<!doctype html>\n<html lang=\"{E(language)}\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>{E(string.Join(" · ", papers.Select(p => p.Title).Distinct().Take(4)))}</title>\n<style>\n");
        b.Append(Style(format)).Append("</style>\n</head>\n<body>\n");
        foreach (Paper paper in papers)
        {
            Append(b, paper);
        }

        return b.Append("</body>\n</html>\n").ToString();
    }

    private static void Append(StringBuilder b, Paper paper)
    {
        b.Append(CultureInfo.InvariantCulture, $"<article id=\"{E(paper.Id)}\" class=\"{(paper.Landscape ? "across" : "upright")}\" style=\"font-size:{paper.TextSize:0.##}pt\">\n");
        b.Append(CultureInfo.InvariantCulture, $"<header><b>{E(paper.Dish)}{(paper.Occasion.Length > 0 && paper.Occasion != paper.Dish ? " · " + E(paper.Occasion) : "")}</b></header>\n<h1>{E(paper.Title)}</h1>\n");
        bool breaks = false;
        foreach (Block block in paper.Blocks)
        {
            if (block is PageBreakBlock)
            {
                breaks = true;
                continue;
            }

            b.Append(breaks ? "<div class=\"new-page\">" : "").Append(Of(block)).Append(breaks ? "</div>\n" : "\n");
            breaks = false;
        }

        b.Append(CultureInfo.InvariantCulture, $"<footer>version {E(paper.Mark.Version)} · sheet {paper.Content} · printed {E(paper.Mark.Printed)}</footer>\n</article>\n");
    }

    private static string Of(Block block) => block switch
    {
        HeadingBlock h => h.Level <= 1 ? $"<h2>{E(h.Text)}</h2>" : $"<h3>{E(h.Text)}</h3>",
        ParagraphBlock p => $"<p{(p.Strong ? " class=\"strong\"" : p.Small ? " class=\"small\"" : "")}>{E(p.Text)}</p>",
        FactsBlock f => "<dl>" + string.Concat(f.Facts.Select(x => $"<div><dt>{E(x.Label)}</dt><dd>{(x.Value.Length > 0 ? E(x.Value) : "<span class=\"pen\"></span>")}</dd></div>")) + "</dl>",
        ListBlock l => "<ul>" + string.Concat(l.Entries.Select(x => $"<li><b>{E(x.Mark)}</b><span>{E(x.Text)}</span></li>")) + "</ul>",
        TableBlock t => Table(t),
        FigureBlock f => $"<figure>{SvgDrawing.Write(f.Drawing)}<figcaption>{E(f.Caption)}</figcaption></figure>",
        CalloutBlock c => $"<aside><b>{E(c.Title)}</b><br>{E(c.Text)}</aside>",
        LabelBlock l => $"<section class=\"label\">{(l.Code.Length > 0 ? SvgDrawing.Write(SquareCode.Draw(l.Code, 18)) : "")}<h2>{E(l.Name)}</h2><dl>{string.Concat(l.Facts.Select(x => $"<div><dt>{E(x.Label)}</dt><dd>{(x.Value.Length > 0 ? E(x.Value) : "<span class=\"pen\"></span>")}</dd></div>"))}</dl>{string.Concat(l.Texts.Select(x => $"<p>{E(x)}</p>"))}</section>",
        PenLinesBlock p => $"<p class=\"strong\">{E(p.Label)}</p>" + string.Concat(Enumerable.Repeat("<div class=\"line\"></div>", p.Count)),
        _ => "",
    };

    private static string Table(TableBlock t)
    {
        StringBuilder b = new();
        b.Append("<table>");
        if (t.Caption.Length > 0)
        {
            b.Append("<caption>").Append(E(t.Caption)).Append("</caption>");
        }

        b.Append("<thead><tr>").AppendJoin("", t.Columns.Select(c => $"<th scope=\"col\" class=\"{Class(c)}\">{E(c.Head)}</th>")).Append("</tr></thead><tbody>");
        foreach (PaperRow row in t.Rows)
        {
            if (row.Kind == RowKind.Group)
            {
                b.Append(CultureInfo.InvariantCulture, $"<tr class=\"group\"><th colspan=\"{t.Columns.Length}\" scope=\"rowgroup\">{E(row.Cells[0].Text)}</th></tr>");
                continue;
            }

            b.Append(row.Kind == RowKind.Total ? "<tr class=\"total\">" : "<tr>");
            for (int i = 0; i < t.Columns.Length; i++)
            {
                PaperCell cell = i < row.Cells.Length ? row.Cells[i] : new PaperCell("");
                string hand = cell.Hand switch { ByHand.Tick => "<span class=\"tick\" role=\"img\" aria-label=\"to tick\"></span>", ByHand.Write => "<span class=\"pen\"></span>", _ => "" };
                string text = (cell.Lead.Length > 0 ? $"<b>{E(cell.Lead)}</b><br>" : "") + (cell.Strong || t.Columns[i].Strong ? $"<b>{E(cell.Text)}</b>" : E(cell.Text));
                b.Append(CultureInfo.InvariantCulture, $"<td class=\"{Class(t.Columns[i])}\">{text}{hand}</td>");
            }

            b.Append("</tr>");
        }

        return b.Append("</tbody></table>").ToString();
    }

    private static string Class(PaperColumn c) => c.Side switch { Side.Right => "right", Side.Centre => "centre", _ => c.Pen > 0 ? "by-hand" : "left" };

    private static string E(string text) => WebUtility.HtmlEncode(text).Replace("\n", "<br>", StringComparison.Ordinal);

    private static string Style(PageFormat f) => string.Create(CultureInfo.InvariantCulture, $$"""
        @page upright { size: {{f.Width / PageFormat.Millimetre:0.#}}mm {{f.Height / PageFormat.Millimetre:0.#}}mm; }
        @page across { size: {{f.Height / PageFormat.Millimetre:0.#}}mm {{f.Width / PageFormat.Millimetre:0.#}}mm; }
        @page { margin: 14mm 15mm 16mm; @bottom-right { content: "page " counter(page) " of " counter(pages); font: bold 8.5pt "Source Sans 3", sans-serif; } }
        body { margin: 0 auto; max-width: 190mm; padding: 4mm; color: #000; background: #fff; font-family: "Source Sans 3", "Noto Sans JP", sans-serif; font-variant-numeric: tabular-nums; line-height: 1.3; }
        article { break-before: page; margin-bottom: 12mm; } article:first-child { break-before: auto; } .upright { page: upright; } .across { page: across; }
        header { font-size: 8.5pt; border-bottom: .5pt solid #000; padding-bottom: 1mm; } footer { font-size: 8.5pt; border-top: .5pt solid #000; margin-top: 6mm; padding-top: 1mm; }
        h1 { font-size: 1.9em; line-height: 1.12; margin: .4em 0 .2em; } h2 { font-size: 1.3em; margin: 1em 0 .2em; } h3 { font-size: 1.08em; margin: .8em 0 .1em; } h1, h2, h3, caption { break-after: avoid; } p { margin: .45em 0; orphans: 2; widows: 2; } .strong { font-weight: 700; } .small { font-size: .86em; }
        dl { display: grid; grid-template-columns: repeat(auto-fit, minmax(11em, 1fr)); gap: .5em 1.2em; margin: .5em 0; } dt { font-size: .8em; } dd { margin: 0; font-weight: 700; }
        ul { list-style: none; padding: 0; margin: .4em 0; } li { display: grid; grid-template-columns: 1.7em 1fr; margin: .4em 0; break-inside: avoid; }
        table { border-collapse: collapse; width: 100%; margin: .6em 0; } caption { text-align: left; } thead { display: table-header-group; } th { font-size: .86em; text-align: left; vertical-align: bottom; border-bottom: .9pt solid #000; padding: .2em .45em; } td { vertical-align: top; border-bottom: .3pt solid #888; padding: .3em .45em; } tr { break-inside: avoid; } .group, .group + tr { break-before: auto; } .group { break-after: avoid; } .group th { font-size: 1em; border-bottom: .5pt solid #000; padding-top: .6em; } .total td { font-weight: 700; border-top: .9pt solid #000; border-bottom: 0; } .total { break-before: avoid; }
        .right { text-align: right; white-space: nowrap; } .centre { text-align: center; } .by-hand { min-width: 18mm; } .tick { display: inline-block; width: 1em; height: 1em; border: .8pt solid #000; } .pen { display: inline-block; width: 100%; min-width: 12mm; height: 1.5em; border-bottom: .5pt dashed #444; } .line { height: 8mm; border-bottom: .5pt dashed #444; }
        aside { border-left: 3pt solid #000; padding-left: .8em; margin: .7em 0; break-inside: avoid; } figure { margin: .8em 0; break-inside: avoid; } figcaption { font-size: .9em; } svg { max-width: 100%; height: auto; } .new-page { break-before: page; } .label { border: .5pt dashed #444; padding: 3mm; margin: 0 0 3mm; break-inside: avoid; } .label svg { float: right; width: 20mm; height: 20mm; } .label h2 { margin-top: 0; }

        """);
}
