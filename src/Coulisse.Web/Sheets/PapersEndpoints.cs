using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using Coulisse.Flows;
using Coulisse.Formats.Out;
using Coulisse.Kitchen.Planning;
using Coulisse.Papers;
using Coulisse.Papers.Html;
using Coulisse.Papers.Pages;
using Coulisse.Views.Papers;
using Coulisse.Views.Web;
using Coulisse.Web.Pages;
using Coulisse.Web.Plans;
using Microsoft.AspNetCore.Http.HttpResults;
using NodaTime;

namespace Coulisse.Web.Sheets;

/// <summary>The papers of an occasion: chosen, shown as print pages, handed out as PDF, and named when they no longer hold.</summary>
internal static class PapersEndpoints
{
    private const int MostCopies = 50;

    public static void MapPapers(this WebApplication app)
    {
        app.MapGet("/plan/{id}/papers", ListAsync);
        app.MapPost("/plan/{id}/papers", PrintAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere
        app.MapPost("/plan/{id}/papers/down", DownAsync).DisableAntiforgery();
        app.MapGet("/plan/{id}/papers/pages", PagesAsync);
        app.MapGet("/plan/{id}/papers/{sheet}.pdf", PdfAsync);
        app.MapGet("/plan/{id}/papers/kitchen.xlsx", TablesAsync);
        app.MapGet("/plan/{id}/papers/plan.ics", CalendarAsync);
    }

    private static async Task<IResult> ListAsync(string id, KeptPlans plans, SheetWall hung, PaperBundles bundles, CancellationToken cancel, string who = "", string day = "", bool stale = false)
        => await plans.OpenAsync(id, cancel) is var (kept, planned)
            ? new RazorComponentResult<PapersPage>(new { View = PapersView.From(id, await bundles.OfAsync(kept.OccasionId, planned, cancel), await hung.OfAsync(kept.OccasionId, cancel), new PaperNarrowing(who, day, stale)) with { LabelSheets = [.. LabelSheet.All.Select(l => l.Name)] } })
            : Results.NotFound();

    /// <summary>What was chosen is noted as printed and then opened, as pages or as files.</summary>
    private static async Task<IResult> PrintAsync(string id, HttpContext context, KeptPlans plans, SheetWall hung, PaperBundles bundles, CancellationToken cancel)
    {
        if (await plans.OpenAsync(id, cancel) is not var (kept, planned))
        {
            return Results.NotFound();
        }

        IFormCollection form = await context.Request.ReadFormAsync(cancel);
        Chosen chosen = new(
            [.. form["sheet"].OfType<string>().Select(s => (s, Math.Clamp(int.TryParse(form["copies." + s], NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : 1, 1, MostCopies)))],
            form["large"] == "yes", form["size"] == "letter" ? PageFormat.Letter : PageFormat.A4) { Labels = LabelSheet.Find(form["labels"].ToString()) };
        if (chosen.Sheets.IsEmpty)
        {
            return Results.Redirect($"/plan/{id}/papers");
        }

        PaperBundle bundle = await bundles.OfAsync(kept.OccasionId, planned, cancel);
        ImmutableArray<Paper> papers = PaperPrinter.Papers(bundle, chosen.Choice);
        await hung.NoteAsync(kept.OccasionId, id, papers.Select(p => (p, chosen.Copies(p.Id))), cancel);
        return form["as"] == "files" ? Files(bundle, chosen) : form["as"] == "bundle" ? OneFile(bundle, papers, chosen) : Results.Redirect($"/plan/{id}/papers/pages?{chosen.Query}");
    }

    private static async Task<IResult> DownAsync(string id, KeptPlans plans, SheetWall hung, PaperBundles bundles, CancellationToken cancel)
    {
        if (await plans.OpenAsync(id, cancel) is not var (kept, planned))
        {
            return Results.NotFound();
        }

        await hung.TakeDownAsync(kept.OccasionId, [.. PaperShelf.Papers(await bundles.OfAsync(kept.OccasionId, planned, cancel)).Select(p => p.Id)], cancel);
        return Results.Redirect($"/plan/{id}/papers");
    }

    private static async Task<IResult> PagesAsync(string id, HttpContext context, KeptPlans plans, PaperBundles bundles, CancellationToken cancel, string sheets = "", bool large = false, string size = "a4")
    {
        if (await plans.OpenAsync(id, cancel) is not var (kept, planned))
        {
            return Results.NotFound();
        }

        Chosen chosen = Chosen.Read(sheets, large, size);
        ImmutableArray<Paper> papers = PaperPrinter.Papers(await bundles.OfAsync(kept.OccasionId, planned, cancel), chosen.Choice);
        return PrintPages.Serve(context, HtmlPaper.Write([.. papers.SelectMany(p => Enumerable.Repeat(p, chosen.Copies(p.Id)))], chosen.Format), $"/plan/{id}/papers");
    }

    private static async Task<IResult> PdfAsync(string id, string sheet, KeptPlans plans, PaperBundles bundles, CancellationToken cancel)
        => await plans.OpenAsync(id, cancel) is var (kept, planned) && PaperPrinter.Print(await bundles.OfAsync(kept.OccasionId, planned, cancel), new PaperChoice { Ids = [sheet] }) is [var printed, ..]
            ? Results.Bytes(printed.Pdf.Bytes, "application/pdf")
            : Results.NotFound();

    private static async Task<IResult> TablesAsync(string id, KeptPlans plans, PaperBundles bundles, CancellationToken cancel)
        => await plans.OpenAsync(id, cancel) is var (kept, planned) && await bundles.OfAsync(kept.OccasionId, planned, cancel) is { } bundle
            ? Results.File(await KitchenTables.XlsxAsync(bundle, cancel), "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", $"kitchen-{bundle.Mark.Version}.xlsx")
            : Results.NotFound();

    private static async Task<IResult> CalendarAsync(string id, KeptPlans plans, TimeProvider clock, CancellationToken cancel, string who = "")
        => await plans.OpenAsync(id, cancel) is var (_, planned) && planned.Outcome is Plan plan
            ? Results.File(Encoding.UTF8.GetBytes(CalendarFile.Write(plan, who.Length > 0 ? who : null, Instant.FromDateTimeOffset(clock.GetUtcNow()))), "text/calendar", "plan.ics")
            : Results.NotFound();

    /// <summary>All that was chosen in one file, each sheet as often as was asked.</summary>
    private static IResult OneFile(PaperBundle bundle, ImmutableArray<Paper> papers, Chosen chosen)
        => Results.File(PaperPrinter.PrintOne([.. papers.SelectMany(p => Enumerable.Repeat(p, chosen.Copies(p.Id)))], chosen.Choice).Bytes, "application/pdf", $"papers-{bundle.Mark.Version}.pdf");

    private static IResult Files(PaperBundle bundle, Chosen chosen)
    {
        MemoryStream packed = new();
        using (ZipArchive zip = new(packed, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (PrintedPaper paper in PaperPrinter.PrintEach(PaperPrinter.Papers(bundle, chosen.Choice), chosen.Choice))
            {
                for (int copy = 1; copy <= chosen.Copies(paper.Paper.Id); copy++)
                {
                    using Stream entry = zip.CreateEntry(paper.Paper.Id + (copy > 1 ? string.Create(CultureInfo.InvariantCulture, $", copy {copy}") : "") + ".pdf", CompressionLevel.Fastest).Open();
                    entry.Write(paper.Pdf.Bytes);
                }
            }
        }

        packed.Position = 0;
        return Results.File(packed, "application/zip", $"papers-{bundle.Mark.Version}.zip");
    }

    /// <summary>Sheets with their copies, as a person chose them.</summary>
    private sealed record Chosen(ImmutableArray<(string Id, int Copies)> Sheets, bool Large, PageFormat Format)
    {
        /// <summary>How labels are parted; null for scissors.</summary>
        public LabelSheet? Labels { get; init; }

        public PaperChoice Choice => new() { Ids = [.. Sheets.Select(s => s.Id)], Large = Large, Format = Format, Labels = Labels };

        public string Query => $"sheets={Uri.EscapeDataString(string.Join(',', Sheets.Select(s => s.Copies == 1 ? s.Id : string.Create(CultureInfo.InvariantCulture, $"{s.Id}*{s.Copies}"))))}{(Large ? "&large=true" : "")}{(Format == PageFormat.Letter ? "&size=letter" : "")}";

        public int Copies(string id) => Sheets.FirstOrDefault(s => s.Id == id) is { Copies: > 0 } found ? found.Copies : 1;

        public static Chosen Read(string sheets, bool large, string size) => new(
            [.. sheets.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(s => s.Split('*')).Select(s => (s[0], s.Length > 1 && int.TryParse(s[1], NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? Math.Clamp(n, 1, MostCopies) : 1))],
            large, size == "letter" ? PageFormat.Letter : PageFormat.A4);
    }
}
