using Coulisse.Cards;
using Coulisse.Store;
using Coulisse.Web.Plans;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>What is shown live, marked in the margin; and drawings saved as pictures.</summary>
public sealed class MarksJourney
{
    private const string Text = "# Onion tart\n\nServes 8.\n\n- 1 kg onions\n- 250 g flour\n\n1. Slice the onions thinly, 30 min.\n2. Roll the dough out, 10 min.\n3. Bake 45 min at 180 °C.\n";

    [Fact]
    public async Task A_step_is_marked_by_a_touch_keeps_its_mark_after_edits_and_is_shown_by_the_occasion_that_is_made_of_the_card()
    {
        await using Bench bench = await Bench.OpenAsync();
        string card = Assert.IsType<SaveOutcome.Saved>(await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Onion tart", Text, "test", "")).Id;
        IPage page = await bench.PageAsync(820, touch: true);
        await page.GotoAsync($"{bench.Address}/cards/{card}");

        await page.GetByRole(AriaRole.Button, new() { Name = "Show the step on line 9 live" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "the whole step" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Line 9, shown live. Change it." }).WaitForAsync();
        await Bench.PictureAsync(page, "card-marked");
        Assert.Empty(await PageGeometry.BarriersAsync(page));
        // a line more above it, and the words changed a little: the mark goes with its step
        await page.EvaluateAsync("t => { document.querySelector('card-manuscript').text = t; }", Text.Replace("- 250 g flour\n", "- 250 g flour\n- 5 g salt\n", StringComparison.Ordinal).Replace("Roll the dough out, 10 min", "Roll the dough out thin, 12 min", StringComparison.Ordinal));
        await page.GetByRole(AriaRole.Button, new() { Name = "Line 10, shown live. Change it." }).WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this card" }).ClickAsync();
        await page.GetByText("Version 2.").WaitForAsync();

        KeptOccasion kept = Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepSentenceAsync("8 plates, 7 March 2026 14:00, 5 minutes, Ada and Ben", (await bench.Store.OpenDocumentAsync(card, TestContext.Current.CancellationToken))!.Text, TestContext.Current.CancellationToken, card)).Value;
        Assert.Contains("Roll the dough out thin", Assert.Single(kept.Occasion.Shows).StepText);
        Assert.Equal(2, Assert.Single(kept.Cards).Value); // the very card, not a copy of it

        await page.EvaluateAsync("t => { document.querySelector('card-manuscript').text = t; }", "# Onion tart\n\nServes 8.\n\n- 1 kg onions\n\n1. Slice the onions thinly, 30 min.\n");
        await page.GetByText("Marked as shown, but no longer on the card: “Roll the dough out").WaitForAsync();
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task A_chart_and_the_time_plan_are_saved_as_svg_and_as_a_picture_of_the_same_under_a_strict_policy()
    {
        await using Bench bench = await Bench.OpenAsync();
        string card = Assert.IsType<SaveOutcome.Saved>(await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Card", Coulisse.Web.Hosting.EmbeddedFiles.Demo("cards/royale-draft.md")!, "test", "")).Id;
        IPage page = await bench.PageAsync(colours: ColorScheme.Dark);
        await page.GotoAsync($"{bench.Address}/cards/{card}/workings");
        ILocator png = page.GetByRole(AriaRole.Button, new() { Name = "Save the drawing (PNG)" }).First;
        await png.WaitForAsync();
        (int width, int height, int colours) = await PictureAsync(page, png);
        Assert.True(width > 1000 && height > 300, $"{width} × {height}");
        Assert.True(colours > 2, "the picture is empty");

        await page.GotoAsync($"{bench.Address}/plan/{await bench.KeepAsync(Coulisse.Web.Tests.HandPlan.Tart)}");
        await page.Locator(".tp-bar").First.WaitForAsync();
        (width, height, colours) = await PictureAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the drawing (PNG)" }));
        Assert.True(width > 1000 && height > 300, $"{width} × {height}");
        Assert.True(colours > 2, "the picture is empty");
        IDownload svg = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Save the drawing (SVG)" }).ClickAsync());
        string drawing = await File.ReadAllTextAsync((await svg.PathAsync())!, TestContext.Current.CancellationToken);
        Assert.Contains("Ada", drawing); // the names of the rows go with it
        Assert.DoesNotContain("class=", drawing); // nothing hangs on our style sheet
        Assert.Empty(bench.Foul);
    }

    /// <summary>Size of a saved picture, and how many colours a sample of it has.</summary>
    private static async Task<(int Width, int Height, int Colours)> PictureAsync(IPage page, ILocator button)
    {
        IDownload saved = await page.RunAndWaitForDownloadAsync(() => button.ClickAsync());
        Assert.EndsWith(".png", saved.SuggestedFilename, StringComparison.Ordinal);
        byte[] bytes = await File.ReadAllBytesAsync((await saved.PathAsync())!);
        Assert.Equal([0x89, 0x50, 0x4E, 0x47], bytes[..4]);
        int[] found = await page.EvaluateAsync<int[]>(
            """
            async (text) => {
              const url = URL.createObjectURL(new Blob([Uint8Array.from(atob(text), (c) => c.charCodeAt(0))], { type: 'image/png' }));
              const i = new Image(); i.src = url; await i.decode();
              const c = document.createElement('canvas'); c.width = i.naturalWidth; c.height = i.naturalHeight; const p = c.getContext('2d'); p.drawImage(i, 0, 0);
              const d = p.getImageData(0, 0, c.width, c.height).data; const seen = new Set(); for (let n = 0; n < d.length; n += 28) seen.add(d[n] << 16 | d[n + 1] << 8 | d[n + 2]);
              return [c.width, c.height, seen.size];
            }
            """, Convert.ToBase64String(bytes));
        return (found[0], found[1], found[2]);
    }
}
