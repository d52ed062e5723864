using System.Net.Http.Json;
using Coulisse.Store;

namespace Coulisse.Web.Tests;

/// <summary>The card's margin says which part is short or over, and the weigh-out page what the kitchen's scales cannot weigh.</summary>
public sealed class BalanceMarginTests
{
    private const string Card = "# Plate of beet\n\nServes 60.\n\nOne plate: 14 g beet purée.\n\n## Beet purée\n\nMakes 757 g.\n\n- 800 g beetroot\n- 0.8 g xanthan gum\n\n1. Blend 2 min.\n\n## To plate\n\n1. Purée in the middle.\n";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("60", true, "83 g short")] // 60 × 14 = 840 of 757
    [InlineData("54", false, "short")] // 756 of 757
    [InlineData("40", true, "197 g over")] // 35 % more than the plates take
    public async Task A_part_that_does_not_come_out_even_says_so_on_its_line(string plates, bool said, string words)
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        HttpResponseMessage answer = await bench.Client.PostAsJsonAsync("/api/margins", new { text = Card.Replace("60", plates, StringComparison.Ordinal), @for = "", measures = "", code = "au" }, Cancel);
        string margins = (await answer.Content.ReadAsStringAsync(Cancel)).Replace("\u00A0", " ", StringComparison.Ordinal);

        Assert.Equal(said, margins.Contains(words, StringComparison.Ordinal));
        Assert.Equal(said, margins.Contains("the plates take", StringComparison.Ordinal));
    }

    // By hand: 54 plates of 14 g take 756 g; the card says 757 g, the leanest of three runs was 740: 16 g short. Two runs say nothing.
    [Fact]
    public async Task A_part_that_three_good_runs_showed_to_be_leaner_than_the_card_says_is_short_by_the_leanest()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string text = Card.Replace("60", "54", StringComparison.Ordinal);
        string id = Assert.IsType<SaveOutcome.Saved>(await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Plate of beet", text, "test", "", Cancel)).Id;
        async Task<string> MarginsAsync(string card) => (await (await bench.Client.PostAsJsonAsync("/api/margins", new { text = card, @for = "", measures = "", code = "au", card = id }, Cancel)).Content.ReadAsStringAsync(Cancel)).Replace('\u00A0', ' ');
        foreach (int grams in new[] { 740, 748, 744 })
        {
            Assert.DoesNotContain("short", await MarginsAsync(text), StringComparison.Ordinal);
            Assert.IsType<Coulisse.Cards.Parsed<string>.Ok>(await new Coulisse.Flows.TrialShelf(bench.Store).KeepAsync(null, id, $"# Trial of Plate of beet\n\nGood run.\n\n## Came out\n| Part | In, g | Out, g | Left behind, g |\n|---|---|---|---|\n| Beet purée | 800 | {grams} | |\n", "Ada", Cancel));
        }

        string taught = await MarginsAsync(text);
        Assert.Contains("740 g made by the leanest run, the plates take 756: 16 g short", taught, StringComparison.Ordinal);
        Assert.Contains("learnt from 3 runs: 744 g, 740 to 748", taught, StringComparison.Ordinal);
        // another amount on the page is another make
        Assert.DoesNotContain("learnt from", await MarginsAsync(text.Replace("800 g", "810 g", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_too_fine_for_the_scales_comes_with_a_master_batch()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = Assert.IsType<SaveOutcome.Saved>(await bench.Store.SaveAsync(DocumentKind.Card, null, 0, "Plate of beet", Card, "test", "", Cancel)).Id;
        Assert.DoesNotContain("Too fine", await bench.Client.GetStringAsync($"/cards/{id}/weigh", Cancel)); // no scale is kept: nothing is assumed

        await bench.Client.PostAsync("/kitchen", new FormUrlEncodedContent([new("basedOn", "0"), new("Kit.0.0", "–"), new("Kit.0.1", "scale 3 kg × 0.1 g"), new("Kit.0.2", "back"), new("Kit.0.3", "1"), new("Kit.0.4", ""), new("Kit.0.5", ""), new("Kit.0.6", ""), new("Kit.0.7", "")]), Cancel);
        string page = System.Net.WebUtility.HtmlDecode(await bench.Client.GetStringAsync($"/cards/{id}/weigh", Cancel)).Replace('\u202F', ' ');

        // 0.05 g of 0.8 g is 6.3 %; 3.2 g in 28.8 g is one part in ten, so 8 g of it hold 0.8 g
        Assert.Contains("0.8 g xanthan gum: half a division of the finest scale is 6.3 % of it. Mix 3.2 g of it into 28.8 g beetroot, take 8 g of that", page);
    }
}
