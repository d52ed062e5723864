using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coulisse.Papers.Fonts;
using Coulisse.Papers.Pages;
using Coulisse.Views.Papers;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Coulisse.Papers.Pdf;

/// <summary>A written PDF and what had to be said about it.</summary>
/// <param name="Bytes">The file.</param>
/// <param name="Pages">Number of pages.</param>
/// <param name="Remarks">Signs that no face has, each with its place; they are printed as boxes.</param>
public sealed record WrittenPdf(byte[] Bytes, int Pages, ImmutableArray<string> Remarks);

/// <summary>Writes laid-out pages as a tagged PDF with embedded subset fonts.</summary>
public static class PdfWriter
{
    /// <summary>Writes papers one after another into one file.</summary>
    public static WrittenPdf Write(params ReadOnlySpan<PagePlan> plans)
    {
        ImmutableArray<PagePlan> all = [.. plans];
        return Write([.. all.Select(p => p.Paper)], all);
    }

    /// <summary>Writes papers one after another into one file; each is laid out when its turn comes, so that a bundle holds one layout at a time.</summary>
    /// <param name="papers">The papers.</param>
    /// <param name="plans">Their layouts, in the same order.</param>
    public static WrittenPdf Write(ImmutableArray<Paper> papers, IEnumerable<PagePlan> plans)
    {
        ArgumentNullException.ThrowIfNull(plans);
        EmbeddedFonts.Use();
        using PdfDocument document = new();
        document.Info.Title = string.Join(" · ", papers.Select(p => p.Title).Distinct().Take(4));
        document.Info.Creator = "Coulisse";
        UAManager access = UAManager.ForDocument(document);
        access.SetDocumentLanguage(papers.IsEmpty ? "en" : papers[0].Language);
        Pen pen = new(access.StructureBuilder);
        int pages = 0;
        foreach (PagePlan plan in plans)
        {
            int n = 0;
            foreach (LaidPage laid in plan.Pages)
            {
                pages++;
                n++;
                PdfPage page = document.AddPage();
                page.Width = XUnit.FromPoint(laid.Width);
                page.Height = XUnit.FromPoint(laid.Height);
                using XGraphics graphics = XGraphics.FromPdfPage(page);
                pen.Page(graphics, laid, string.Create(CultureInfo.InvariantCulture, $"{plan.Paper.Title}, page {n}"));
            }
        }

        using MemoryStream stream = new();
        document.Save(stream, false);
        return new WrittenPdf(stream.ToArray(), pages, [.. pen.Remarks]);
    }

    /// <summary>Draws pages and tells the structure tree what each piece is.</summary>
    private sealed class Pen(StructureBuilder tags)
    {
        private readonly Dictionary<(string, double), XFont> _fonts = [];
        private readonly SortedSet<string> _remarks = new(StringComparer.Ordinal);

        public IEnumerable<string> Remarks => _remarks;

        private string _place = "";

        public void Page(XGraphics g, LaidPage page, string place)
        {
            _place = place;
            Furniture(g, page.Furniture);
            int table = 0;
            foreach (Laid laid in page.Body)
            {
                if (laid.Slab.Table != table)
                {
                    if (table != 0)
                    {
                        tags.End();
                    }

                    table = laid.Slab.Table;
                    if (table != 0)
                    {
                        tags.BeginElement(PdfBlockLevelElementTag.Table);
                    }
                }

                if (table != 0)
                {
                    tags.BeginElement(PdfBlockLevelElementTag.TableRow);
                }

                foreach (Piece piece in laid.Slab.Pieces)
                {
                    Draw(g, laid, piece);
                }

                if (table != 0)
                {
                    tags.End();
                }
            }

            if (table != 0)
            {
                tags.End();
            }
        }

        private void Furniture(XGraphics g, Piece furniture)
        {
            tags.BeginArtifact();
            foreach (Op op in furniture.Ops)
            {
                Draw(g, op);
            }

            tags.End();
        }

        private void Draw(XGraphics g, Laid laid, Piece piece)
        {
            if (piece.Ops.IsEmpty)
            {
                return;
            }

            switch (piece.Tag)
            {
                case PieceTag.Artifact:
                    tags.BeginArtifact();
                    break;
                case PieceTag.Figure:
                    tags.BeginElement(PdfIllustrationElementTag.Figure, piece.Alternative, new XRect(laid.X, laid.Y, 100, laid.Slab.Height));
                    break;
                default:
                    tags.BeginElement(piece.Tag switch
                    {
                        PieceTag.Title => PdfBlockLevelElementTag.Heading1,
                        PieceTag.Heading1 => PdfBlockLevelElementTag.Heading2,
                        PieceTag.Heading2 => PdfBlockLevelElementTag.Heading3,
                        PieceTag.HeadCell => PdfBlockLevelElementTag.TableHeaderCell,
                        PieceTag.Cell => PdfBlockLevelElementTag.TableDataCell,
                        _ => PdfBlockLevelElementTag.Paragraph,
                    });
                    break;
            }

            foreach (Op op in piece.Ops)
            {
                Draw(g, op.Moved(laid.X, laid.Y));
            }

            tags.End();
        }

        private void Draw(XGraphics g, Op op)
        {
            switch (op)
            {
                case TextOp t:
                    Text(g, t);
                    break;
                case RuleOp r:
                    g.DrawLine(Line(r.Weight, r.Grey, r.Dashed), r.X1, r.Y1, r.X2, r.Y2);
                    break;
                case BoxOp b:
                    g.DrawRectangle(Outline(b.Weight, false), Fill(b.Fill), b.X, b.Y, b.Width, b.Height);
                    break;
                case CircleOp c:
                    g.DrawEllipse(Outline(c.Weight, c.Dashed), Fill(c.Fill), c.X - c.Radius, c.Y - c.Radius, 2 * c.Radius, 2 * c.Radius);
                    break;
                case PathOp { Closed: true } p:
                    g.DrawPolygon(Outline(p.Weight, p.Dashed), Fill(p.Fill), [.. p.Points.Select(q => new XPoint(q.X, q.Y))], XFillMode.Winding);
                    break;
                case PathOp p:
                    g.DrawLines(Line(p.Weight, 0, p.Dashed), [.. p.Points.Select(q => new XPoint(q.X, q.Y))]);
                    break;
                default:
                    throw new System.Diagnostics.UnreachableException();
            }
        }

        private void Text(XGraphics g, TextOp t)
        {
            double x = t.X;
            foreach (FaceRun run in (t.Strong ? FontChain.Bold : FontChain.Regular).Split(RightToLeft.Visual(t.Text)))
            {
                if (run.Face is null)
                {
                    x = Boxes(g, run.Text, x, t);
                    continue;
                }

                if (run.Text.Trim(' ').Length > 0)
                {
                    g.DrawString(run.Text, Font(run.Face, t.Size), XBrushes.Black, x, t.Y, XStringFormats.BaseLineLeft);
                }

                x += run.Text.EnumerateRunes().Sum(r => run.Face.Width(r, t.Size));
            }

            if (t.Text.Any(c => c is >= '\u0600' and <= '\u06FF'))
            {
                _remarks.Add($"{_place}: Arabic letters stand unjoined in “{t.Text}”.");
            }
        }

        /// <summary>A sign that no face has is a crossed box of its own width, and is named in the remarks.</summary>
        private double Boxes(XGraphics g, string text, double x, TextOp t)
        {
            foreach (Rune rune in text.EnumerateRunes())
            {
                if (Measure.Mark(rune))
                {
                    continue;
                }

                double w = Measure.BoxEm * t.Size;
                XPen pen = new(XColors.Black, t.Size / 18);
                double inset = t.Size * 0.05;
                double top = t.Y - (t.Size * 0.68);
                g.DrawRectangle(pen, x + inset, top, w - (2 * inset), t.Size * 0.68);
                g.DrawLine(pen, x + inset, top, x + w - inset, t.Y);
                _remarks.Add(string.Create(CultureInfo.InvariantCulture, $"{_place}: the sign {rune} (U+{rune.Value:X4}) is in none of the faces and is printed as a crossed box, in “{t.Text}”."));
                x += w;
            }

            return x;
        }

        private XFont Font(FontFace face, double size)
        {
            if (!_fonts.TryGetValue((face.Name, size), out XFont? font))
            {
                _fonts[(face.Name, size)] = font = EmbeddedFonts.Font(face, size);
            }

            return font;
        }

        private static XPen Line(double weight, double grey, bool dashed)
        {
            int level = (int)Math.Round(grey * 255);
            XPen pen = new(XColor.FromArgb(level, level, level), weight);
            if (dashed)
            {
                pen.DashPattern = [4, 2];
            }

            return pen;
        }

        private static XPen? Outline(double weight, bool dashed) => weight > 0 ? Line(weight, 0, dashed) : null;

        private static XSolidBrush? Fill(double fill)
        {
            if (fill < 0)
            {
                return null;
            }

            int level = (int)Math.Round(fill * 255);
            return new XSolidBrush(XColor.FromArgb(level, level, level));
        }
    }
}
