using Coulisse.Flows;
using Coulisse.Cards;
using Coulisse.Formats.Travel;
using Coulisse.Store;
using Coulisse.Web;
using Coulisse.Web.Hosting;
using Coulisse.Web.Live;
using Coulisse.Web.Plans;
using Coulisse.Tests;
using Coulisse.Web.Tests;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>Every page at every width, light and dark, and at twice its size.</summary>
public sealed class EveryPageJourney
{
    // 720 px wide at two device pixels each is what a screen of 1440 px shows at 200 %
    private static readonly (int Width, ColorScheme Colours, float Fine)[] All =
    [
        (320, ColorScheme.Light, 1), (390, ColorScheme.Light, 1), (390, ColorScheme.Dark, 1), (820, ColorScheme.Light, 1), (820, ColorScheme.Dark, 1), (1440, ColorScheme.Light, 1), (1440, ColorScheme.Dark, 1), (720, ColorScheme.Light, 2),
    ];

    // The narrowest, a dark tablet and twice the size find what the others do; all of them with --long.
    private static readonly (int Width, ColorScheme Colours, float Fine)[] Looks = LongRun.On ? All : [All[0], All[4], All[7]];

    [Theory]
    [InlineData("/")]
    [InlineData("/cards")]
    [InlineData("/cards/{card}")]
    [InlineData("/cards/{card}/weigh?for=8+plates")]
    [InlineData("/cards/{card}/workings")]
    [InlineData("/cards/{card}/try?targets=fat+at+most+10+%25")]
    [InlineData("/cards/{card}/versions")]
    [InlineData("/cards/{card}/translations?language=pl")]
    [InlineData("/compare/{card}")]
    [InlineData("/trials/{card}")]
    [InlineData("/workings/heat")]
    [InlineData("/shapes")]
    [InlineData("/shapes/tin")]
    [InlineData("/kitchen")]
    [InlineData("/kitchen/foods?q=cream")]
    [InlineData("/prices")]
    [InlineData("/orders/{occasion}")]
    [InlineData("/occasions")]
    [InlineData("/occasions/{occasion}")]
    [InlineData("/occasions/{occasion}/translations?language=ja")]
    [InlineData("/records/{occasion}")]
    [InlineData("/control-log")]
    [InlineData("/plan/{plan}")]
    [InlineData("/plan/{plan}/papers")]
    [InlineData("/plan/{plan}/rehearsals")]
    [InlineData("/plan/{plan}/what-if")]
    [InlineData("/live/{run}")]
    [InlineData("/live/{run}?t={stage}")]
    [InlineData("/live/{run}?t={keeper}")]
    [InlineData("/live/{run}/links")]
    public async Task A_page_fits_can_be_touched_and_has_no_barrier(string path)
    {
        await using Bench bench = await Bench.OpenAsync();
        CancellationToken cancel = TestContext.Current.CancellationToken;
        string card = Assert.IsType<SaveOutcome.Saved>(await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Card", EmbeddedFiles.Demo("cards/royale-draft.md")!, "test", "")).Id;
        await bench.Store.SaveAsync(DocumentKind.Card, card, 1, "Card", EmbeddedFiles.Demo("cards/royale-draft.md")!.Replace("530 g", "540 g", StringComparison.Ordinal), "test", "");
        string prices = bench.Store.Own("kitchen-prices");
        await bench.Store.SaveAsync(DocumentKind.Prices, prices, 0, "Prices", EmbeddedFiles.Demo("prices.csv")!, "test", "", cancel);
        await bench.Store.SaveAsync(DocumentKind.Prices, prices, 1, "Prices", EmbeddedFiles.Demo("prices.csv")!.Replace("2.45", "2.95", StringComparison.Ordinal), "test", "", cancel);
        KeptOccasion kept = Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepSentenceAsync("8 plates, 7 March 2026 14:00, 5 minutes, Ada and Ben", "# Onion tart\n\nServes 8.\n\n- 1 kg onions\n- 250 g flour\n\n1. Slice the onions, 30 min.\n2. Bake 45 min at 180 °C.\n", cancel)).Value;
        string plan = await bench.Store.KeepPlanAsync(kept.Id, kept.Version, TravelJson.Write(HandPlan.Tart), "", cancel);
        string run = await bench.Store.StartRunAsync(plan, TimeProvider.System.GetUtcNow(), rehearsal: true, cancel);
        RoleLinks links = bench.Services.GetRequiredService<RoleLinks>();
        string at = path.Replace("{card}", card, StringComparison.Ordinal).Replace("{occasion}", kept.Id, StringComparison.Ordinal).Replace("{plan}", plan, StringComparison.Ordinal).Replace("{run}", run, StringComparison.Ordinal)
            .Replace("{stage}", await links.MakeAsync(run, "Stage", cancel), StringComparison.Ordinal).Replace("{keeper}", await links.MakeAsync(run, "Time-keeper", cancel), StringComparison.Ordinal);
        List<string> wrong = [];
        foreach ((int width, ColorScheme colours, float fine) in Looks)
        {
            IPage page = await bench.PageAsync(width, 900, colours, touch: width < 1000, fine);
            IResponse answer = (await page.GotoAsync(bench.Address + at))!;
            Assert.Equal(200, answer.Status);
            await page.WaitForTimeoutAsync(350);
            await Bench.PictureAsync(page, $"page{Name(path)}-{width}-{colours}");
            wrong.AddRange(await PageGeometry.WrongAsync(page, $"{width} {colours}", far: path.StartsWith("/live/", StringComparison.Ordinal) && !path.EndsWith("/links", StringComparison.Ordinal)));
            await page.Context.CloseAsync();
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.Empty(bench.Foul);
    }

    [Fact]
    public async Task The_pages_of_a_kitchens_people_fit_can_be_touched_and_have_no_barrier()
    {
        await using Bench bench = await Bench.OpenAsync(new WebBenchOptions { Network = true });
        string link = Assert.IsType<string>(await bench.OwnerLinkAsync());
        IPage page = await bench.PageAsync(touch: true);
        List<string> wrong = [];
        async Task LookAsync(string name)
        {
            foreach ((int width, ColorScheme colours, float _) in Looks)
            {
                await page.SetViewportSizeAsync(width, 900);
                await page.EmulateMediaAsync(new() { ColorScheme = colours });
                await Bench.PictureAsync(page, $"page-{name}-{width}-{colours}");
                wrong.AddRange(await PageGeometry.WrongAsync(page, $"{name} {width} {colours}"));
            }
        }

        await page.GotoAsync(bench.Address + "/sign-in");
        await LookAsync("sign-in");
        await page.GotoAsync(bench.Address + link);
        await LookAsync("owner");
        await page.Locator("input[name=name]").FillAsync("Ada");
        await page.Locator("input[name=password]").First.FillAsync("four words by the pass");
        await page.Locator("main button[type=submit]").First.ClickAsync();
        await page.WaitForURLAsync(u => !u.Contains("/owner", StringComparison.Ordinal));
        foreach (string at in new[] { "people", "me", "audit" })
        {
            Assert.Equal(200, (await page.GotoAsync(bench.Address + "/" + at))!.Status);
            await LookAsync(at);
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.Empty(bench.Foul);
    }

    private static string Name(string path) => path.Replace("?t=", "-", StringComparison.Ordinal).Split('?')[0].Replace('/', '-').Replace("{", "", StringComparison.Ordinal).Replace("}", "", StringComparison.Ordinal);
}
