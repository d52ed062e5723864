using Coulisse.Web;
using Coulisse.Tests;
using Microsoft.Playwright;

namespace Coulisse.Journeys.Tests;

/// <summary>Every page at every width, light and dark, and at twice its size.</summary>
public sealed class EveryPageJourney(FilledBench kitchen) : IClassFixture<FilledBench>
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
        Bench bench = await kitchen.BenchAsync();
        string at = kitchen.Fill(path);
        bench.Foul.Clear();
        // the looks do not touch each other: side by side they wait once
        string[][] wrong = await Task.WhenAll(Looks.Select(async look =>
        {
            (int width, ColorScheme colours, float fine) = look;
            IPage page = await bench.PageAsync(width, 900, colours, touch: width < 1000, fine);
            IResponse answer = (await page.GotoAsync(bench.Address + at))!;
            Assert.Equal(200, answer.Status);
            await page.WaitForTimeoutAsync(350);
            await Bench.PictureAsync(page, $"page{Name(path)}-{width}-{colours}");
            IEnumerable<string> found = await PageGeometry.WrongAsync(page, $"{width} {colours}", far: path.StartsWith("/live/", StringComparison.Ordinal) && !path.EndsWith("/links", StringComparison.Ordinal));
            await page.Context.CloseAsync();
            return found.ToArray();
        }));

        Assert.True(wrong.All(w => w.Length == 0), string.Join('\n', wrong.SelectMany(w => w)));
        Assert.Empty(bench.Foul);
    }

    [Theory]
    [InlineData("/kitchen", 390)]
    [InlineData("/kitchen", 820)]
    [InlineData("/kitchen", 1440)]
    [InlineData("/occasions/{occasion}", 390)]
    [InlineData("/plan/{plan}", 390)]
    [InlineData("/trials/{card}", 390)]
    [InlineData("/trials/{card}", 820)]
    public async Task What_is_folded_fits_too_once_it_is_opened(string path, int width)
    {
        Bench bench = await kitchen.BenchAsync();
        string at = kitchen.Fill(path);
        bench.Foul.Clear();
        IPage page = await bench.PageAsync(width, 900, touch: width < 1000);
        await page.GotoAsync(bench.Address + at);
        await page.EvaluateAsync("for (const d of document.querySelectorAll('main details')) d.open = true; for (const t of document.querySelectorAll('.book')) for (const b of [t.querySelector('tbody tr .item-open'), t.querySelector('tr.blank .item-open')]) if (b && b.checkVisibility()) b.click();");
        await page.WaitForTimeoutAsync(300);
        await Bench.PictureAsync(page, $"open{Name(path)}-{width}");

        string[] wrong = [.. await PageGeometry.WrongAsync(page, $"{width}")];

        Assert.True(wrong.Length == 0, string.Join('\n', wrong));
        Assert.True(width > 1000 || path != "/kitchen" || await page.Locator("tr.open").CountAsync() > 2, "no row was opened");
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
        await page.ArriveAsync("^(?!.*/owner)");
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
