using System.IO.Compression;
using Coulisse.Cards;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using Coulisse.Web.Plans;
using Coulisse.Web.Tests;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

public sealed class PapersJourney
{
    private const string Card = "# Onion tart\n\nServes 8.\n\n- 1 kg onions\n- 250 g flour\n\n1. Slice the onions, 30 min.\n2. Bake 45 min at 180 °C.\n";

    /// <summary>An occasion that reads, with a plan made by hand.</summary>
    private static async Task<(string Occasion, string Plan)> KeepAsync(Bench bench, Plan plan)
    {
        KeptOccasion kept = Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepSentenceAsync("8 plates, 7 March 2026 14:00, 5 minutes, Ada and Ben", Card, TestContext.Current.CancellationToken)).Value;
        return (kept.Id, await bench.Store.KeepPlanAsync(kept.Id, kept.Version, TravelJson.Write(plan), ""));
    }

    [Fact]
    public async Task Sheets_are_chosen_by_person_opened_as_print_pages_with_copies_and_a_new_plan_names_the_stale_ones()
    {
        await using Bench bench = await Bench.OpenAsync();
        (string occasion, string plan) = await KeepAsync(bench, HandPlan.Tart);
        IPage page = await bench.PageAsync();
        await page.GotoAsync(bench.Named + "/plan/" + plan);
        await page.GetByRole(AriaRole.Link, new() { Name = "Papers" }).ClickAsync();
        await Bench.PictureAsync(page, "papers");
        Assert.Empty(await PageGeometry.BarriersAsync(page));

        await page.GetByRole(AriaRole.Link, new() { Name = "Ada", Exact = true }).ClickAsync();
        Assert.Equal(2, await page.Locator("input[name=sheet]").CountAsync());
        await page.GetByLabel("Copies of Brief for Ada").FillAsync("3");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open the print pages" }).ClickAsync();
        Assert.Equal(4, await page.Locator("article").CountAsync());
        Assert.Equal(3, await page.Locator("article#brief-ada").CountAsync());
        // the pages' own style is let through by its hash, so they are set and not bare
        Assert.Equal("18.6667px", await page.Locator("article#brief-ada").First.EvaluateAsync<string>("e => getComputedStyle(e).fontSize"));
        await page.GetByRole(AriaRole.Link, new() { Name = "Back to the papers" }).ClickAsync();
        Assert.Contains("2 on the wall still hold", await page.GetByRole(AriaRole.Status).InnerTextAsync());

        Plan later = HandPlan.Tart with { Tasks = [.. HandPlan.Tart.Tasks.Select(t => t.Id == "t1" ? t with { Start = t.Start.PlusMinutes(-20) } : t)] };
        string second = await bench.Store.KeepPlanAsync(occasion, 1, TravelJson.Write(later), "");
        await page.GotoAsync($"{bench.Named}/plan/{second}/papers?stale=true");

        Assert.Equal(2, await page.Locator(".papers .word-stop").CountAsync());
        Assert.Contains("2 on the wall say something else by now", await page.GetByRole(AriaRole.Status).InnerTextAsync());
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task Chosen_sheets_are_saved_as_PDF_files()
    {
        await using Bench bench = await Bench.OpenAsync();
        (_, string plan) = await KeepAsync(bench, HandPlan.Tart);
        IPage page = await bench.PageAsync(390);
        await page.GotoAsync($"{bench.Address}/plan/{plan}/papers?day=2026-03-06");
        int sheets = await page.Locator("input[name=sheet]").CountAsync();

        IDownload saved = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Save as PDF files" }).ClickAsync());

        using ZipArchive zip = await ZipFile.OpenReadAsync(await saved.PathAsync(), TestContext.Current.CancellationToken);
        Assert.Equal(sheets, zip.Entries.Count);
        Assert.All(zip.Entries, e =>
        {
            using StreamReader r = new(e.Open());
            Assert.StartsWith("%PDF-", r.ReadLine());
        });

        await page.GetByLabel("Labels").SelectOptionAsync("a4-21");
        IDownload one = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Save as one PDF" }).ClickAsync());
        Assert.EndsWith(".pdf", one.SuggestedFilename, StringComparison.Ordinal);
        Assert.StartsWith("%PDF-", (await File.ReadAllLinesAsync(await one.PathAsync(), TestContext.Current.CancellationToken))[0]);
        IAPIResponse book = await page.APIRequest.GetAsync($"{bench.Address}/plan/{plan}/papers/kitchen.xlsx");
        Assert.Equal("PK", System.Text.Encoding.ASCII.GetString((await book.BodyAsync())[..2]));
        IAPIResponse calendar = await page.APIRequest.GetAsync($"{bench.Address}/plan/{plan}/papers/plan.ics?who=Ada");
        Assert.StartsWith("BEGIN:VCALENDAR", await calendar.TextAsync(), StringComparison.Ordinal);
    }
}
