using System.Collections.Immutable;
using Coulisse.Papers;
using Coulisse.Views.Papers;

namespace Coulisse.Flows;

/// <summary>What was written, and which sheets must come down.</summary>
/// <param name="Files">Files, in the order of the shelf.</param>
/// <param name="Stale">Sheets that hang and say something else by now.</param>
/// <param name="Gone">Of those, what nothing prints any more.</param>
/// <param name="OnlyStale">Only stale sheets were asked for.</param>
public sealed record PrintedSet(ImmutableArray<PrintedFile> Files, ImmutableArray<string> Stale, ImmutableArray<string> Gone, bool OnlyStale);

/// <summary>Prints a bundle into a folder and remembers what hangs.</summary>
public static class PrintOut
{
    /// <summary>Writes the sheets chosen.</summary>
    /// <param name="bundle">The bundle.</param>
    /// <param name="choice">Which sheets, on which paper.</param>
    /// <param name="folder">Where to; made when it is not there.</param>
    /// <param name="form">pdf, html, xlsx, csv, ics, json or jsonld.</param>
    /// <param name="onlyStale">Only what says something else than the copy that hangs, with a change note for each helper.</param>
    /// <exception cref="IOException">The folder cannot be written or read.</exception>
    /// <exception cref="FormatException">The list of hung sheets is damaged.</exception>
    public static PrintedSet Write(PaperBundle bundle, PaperChoice choice, string folder, string form = "pdf", bool onlyStale = false)
    {
        ArgumentNullException.ThrowIfNull(bundle);
        ArgumentNullException.ThrowIfNull(choice);
        if (form is not ("pdf" or "html"))
        {
            return new PrintedSet(Documents.Write(bundle, choice, folder, form), [], [], false);
        }

        ImmutableArray<Paper> shelf = PaperShelf.Papers(bundle);
        ImmutableArray<Paper> now = PaperPrinter.Chosen(shelf, choice);
        ImmutableArray<HungSheet> hung = HungSheets.Read(folder);
        ImmutableArray<string> all = PaperShelf.Stale(hung.ToDictionary(h => h.Id, h => h.Content, StringComparer.Ordinal), PaperPrinter.Chosen(shelf, choice with { Kinds = [], Ids = [], People = [], Days = [] }));
        HashSet<string> ids = [.. shelf.Select(p => p.Id)];
        ImmutableArray<string> gone = [.. all.Where(id => !ids.Contains(id))];
        ImmutableArray<string> stale = [.. all.Where(ids.Contains)];
        ImmutableArray<Paper> print = onlyStale ? [.. ChangeNotePaper.Of(bundle, [.. hung.Select(h => new HungCopy(h.Id, h.Version, h.Printed, h.Lines))], now), .. now.Where(p => stale.Contains(p.Id))] : now;
        ImmutableArray<PrintedFile> files = form == "html" ? PrintFiles.Html(print, choice, folder) : choice.OneFile ? PrintFiles.OnePdf(bundle, print, choice, folder) : PrintFiles.Pdf(print, choice, folder);
        HungSheets.Write(folder, hung, print.Where(p => p.Kind != ChangeNotePaper.Kind), gone);
        return new PrintedSet(files, onlyStale ? stale : [], gone, onlyStale);
    }
}
