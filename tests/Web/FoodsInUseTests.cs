using System.Net;
using Coulisse.Store;

namespace Coulisse.Web.Tests;

/// <summary>The kitchen's own foods reach every page that weighs or asks about a food; mixture, label and trying a change stand where a chef looks.</summary>
public sealed class FoodsInUseTests
{
    private const string Own = "name,also,source,water,protein,fat,carbohydrate,sugars,ash,density,contains\nhouse curd,farm curd,dairy's label,70,12,14,3,3,1,1.1,milk\n";
    private const string Card = "# Curd cake\n\nMeasures are metric.\n\n- 2 cups house curd\n- 200 g caster sugar\n- 4 g gelatine powder\n\n1. Mix.\n2. Bake the cake at 160 °C for 40 min.\n";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static async Task<string> KeepAsync(BenchServer bench, string text, string? id = null, int basedOn = 0)
        => await bench.Store.SaveAsync(DocumentKind.Card, id, basedOn, "Card", text, "test", "", Cancel) switch { SaveOutcome.Saved(var key, _) => key, SaveOutcome.Conflict(var key, _, _) => key, _ => "" };

    private static async Task<string> PageAsync(BenchServer bench, string at) => WebUtility.HtmlDecode(await bench.Client.GetStringAsync(at, Cancel));

    private static Task FoodsAsync(BenchServer bench, string text = Own) => bench.Client.PostAsync("/kitchen/own-foods", new FormUrlEncodedContent([new("basedOn", "0"), new("text", text)]), Cancel);

    [Fact]
    public async Task Own_foods_weigh_in_comparisons_blank_trials_the_heat_bench_and_searches()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = await KeepAsync(bench, Card);
        await KeepAsync(bench, Card.Replace("2 cups", "3 cups", StringComparison.Ordinal), id, 1);
        string before = await PageAsync(bench, $"/compare/{id}");
        await FoodsAsync(bench);

        // 250 mL at 1.1 g/mL: 550 and 825 g; without the table the curd has no weight.
        Assert.DoesNotContain("825", before);
        string compared = await PageAsync(bench, $"/compare/{id}");
        Assert.Contains("550", compared);
        Assert.Contains("825", compared);
        Assert.Contains("| house curd | 825 |", await PageAsync(bench, $"/trials/{id}"));
        Assert.Contains("house curd:", await PageAsync(bench, "/workings/heat?shape=slab&size=20&start=5&medium=80&until=60&minutes=&face=&food=house+curd&organism=&code=au"));
        Assert.Contains("dairy's label", await PageAsync(bench, "/kitchen/foods?q=farm"));
        Assert.Contains("house curd", await PageAsync(bench, "/cards?q=farm"));
    }

    [Fact]
    public async Task The_workings_show_the_mixture_step_by_step_and_the_label_with_its_range()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        await FoodsAsync(bench);
        string page = await PageAsync(bench, $"/cards/{await KeepAsync(bench, Card)}/workings");

        Assert.Contains("as mixed", page);
        Assert.Contains("after line 10", page);
        Assert.Contains("loses about 10 % (8 to 12 %), as cake does, not weighed", page);
        Assert.Contains("Water activity", page);
        Assert.Contains("gelatine", page);
        Assert.Contains("as its method leaves it", page);
        Assert.Contains("Ingredients: ", page);
    }

    [Fact]
    public async Task A_weighed_trial_takes_the_place_of_what_the_kind_loses()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        await FoodsAsync(bench);
        string id = await KeepAsync(bench, Card);
        MultipartFormDataContent sheet = new() { { new StringContent("# Trial of Curd cake\n\nMade on 2026-03-01 by Ada. Good run.\n\n## Came out\n| Part | In, g | Out, g | Left behind, g |\n|---|---|---|---|\n| Curd cake | 700 | 560 | |\n"), "sheet" } };
        Assert.Equal(HttpStatusCode.Redirect, (await bench.Client.PostAsync("/trials/" + id, sheet, Cancel)).StatusCode);

        Assert.Contains("loses about 20 % (20 to 20 %), as weighed in a trial", await PageAsync(bench, $"/cards/{id}/workings"));
    }

    [Fact]
    public async Task Boiled_sugar_is_judged_for_the_height_that_is_asked()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = await KeepAsync(bench, "# Caramel\n\n- 500 g caster sugar\n- 150 g water\n\n1. Boil the syrup to 121 °C until it weighs about 560 g.\n");

        Assert.Contains("at 1500 m take 116 °C", await PageAsync(bench, $"/cards/{id}/workings?metres=1500"));
        Assert.DoesNotContain("m take", await PageAsync(bench, $"/cards/{id}/workings?metres=high"));
    }

    [Fact]
    public async Task A_change_is_tried_before_it_is_written()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = await KeepAsync(bench, "# Sorbet\n\n- 500 g raspberries\n- 150 g caster sugar\n- 250 g water\n- 3 g fine sea salt\n\n1. Blend and churn.\n");

        string asked = await PageAsync(bench, $"/cards/{id}/try");
        Assert.Contains("Exchange a food", asked);
        Assert.DoesNotContain("What moves</h2>", asked);

        string soy = await PageAsync(bench, $"/cards/{id}/try?line=fine+sea+salt&with=soy+sauce&keep=salt");
        Assert.Contains("comes: ", soy);
        Assert.Contains("soy", soy);
        Assert.Contains("Nothing is written yet", soy);

        string colder = await PageAsync(bench, $"/cards/{id}/try?targets=freezes+at+-3&move=caster+sugar%3D0..400;+water%3D0..400");
        Assert.Contains("It can be reached", colder);
        Assert.Contains("freezing point", colder);
        Assert.Contains("cannot be reached", await PageAsync(bench, $"/cards/{id}/try?targets=60+%25+fat"));

        Assert.Contains("MIX003", await PageAsync(bench, $"/cards/{id}/try?targets=blue"));
        Assert.Contains("To mend", await PageAsync(bench, $"/cards/{id}/try?line=vanilla&with=agar"));
        Assert.Contains("150 g caster sugar", (await bench.Store.OpenDocumentAsync(id, Cancel))!.Text);
        Assert.Equal(HttpStatusCode.NotFound, (await bench.Client.GetAsync("/cards/none/try", Cancel)).StatusCode);
    }

    [Fact]
    public async Task A_card_that_cannot_be_is_told_so_and_has_no_panel()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = await KeepAsync(bench, "# Caramel\n\n- 500 g caster sugar\n- 150 g water\n\n1. Boil until it weighs about 400 g.\n");
        string page = await PageAsync(bench, $"/cards/{id}/workings");

        Assert.Contains("MIX002", page);
        Assert.DoesNotContain("% daily value", page);
    }
}
