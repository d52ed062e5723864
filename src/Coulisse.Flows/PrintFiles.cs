using System.Collections.Immutable;
using System.Text;
using Coulisse.Papers;
using Coulisse.Papers.Html;
using Coulisse.Papers.Pdf;
using Coulisse.Views.Papers;

namespace Coulisse.Flows;

/// <summary>A file written, with the sheet it holds.</summary>
/// <param name="Id">Sheet or document.</param>
/// <param name="Kind">Kind of paper, or what the document is.</param>
/// <param name="Title">Title.</param>
/// <param name="File">Path.</param>
/// <param name="Pages">Pages; 0 where pages are not known.</param>
/// <param name="Content">Hash of what it says; empty for a document that is no sheet.</param>
/// <param name="Remarks">Signs that could not be printed, and the like.</param>
public sealed record PrintedFile(string Id, string Kind, string Title, string File, int Pages, string Content, ImmutableArray<string> Remarks);

/// <summary>Papers as files in a folder; nothing is left half-written.</summary>
public static class PrintFiles
{
    /// <summary>Every sheet as a PDF of its own.</summary>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    public static ImmutableArray<PrintedFile> Pdf(ImmutableArray<Paper> papers, PaperChoice choice, string folder)
        => [.. PaperPrinter.PrintEach(papers, choice).Select(p => new PrintedFile(p.Paper.Id, p.Paper.Kind, p.Paper.Title, Save(folder, FileName(p.Paper.Id) + ".pdf", p.Pdf.Bytes), p.Pdf.Pages, p.Paper.Content, p.Pdf.Remarks))];

    /// <summary>All sheets in one PDF.</summary>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    public static ImmutableArray<PrintedFile> OnePdf(PaperBundle bundle, ImmutableArray<Paper> papers, PaperChoice choice, string folder)
    {
        WrittenPdf pdf = PaperPrinter.PrintOne(papers, choice);
        return [new PrintedFile("bundle", "bundle", bundle.Title, Save(folder, "bundle.pdf", pdf.Bytes), pdf.Pages, "", pdf.Remarks)];
    }

    /// <summary>All sheets as one page for a browser.</summary>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    public static ImmutableArray<PrintedFile> Html(ImmutableArray<Paper> papers, PaperChoice choice, string folder)
    {
        string file = Save(folder, "papers.html", Encoding.UTF8.GetBytes(HtmlPaper.Write(papers, choice.Format)));
        return [.. papers.Select(p => new PrintedFile(p.Id, p.Kind, p.Title, file, 0, p.Content, []))];
    }

    /// <summary>Writes a file under its name only when it is whole.</summary>
    /// <returns>Its path.</returns>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    public static string Save(string folder, string name, ReadOnlySpan<byte> bytes)
    {
        Directory.CreateDirectory(folder);
        string path = Path.Combine(folder, name);
        string part = path + ".part";
        using (FileStream stream = File.Create(part))
        {
            stream.Write(bytes);
        }

        File.Move(part, path, true);
        return path;
    }

    private static string FileName(string id) => string.Concat(id.Select(c => char.IsLetterOrDigit(c) || c is '-' or '_' ? c : '-'));
}
