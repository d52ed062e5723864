using System.Collections.Immutable;
using System.Net;
using Coulisse.Cards;
using Coulisse.Store;
using Coulisse.Web.Plans;
using Microsoft.Extensions.DependencyInjection;

namespace Coulisse.Web.Tests;

public sealed class DietTests
{
    private const string Card = "# Onion tart\n\nServes 8.\n\n- 1 kg onions\n\n1. Slice the onions, 30 min.\n2. Bake 45 min at 180 °C.\n";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static async Task<string> OccasionAsync(BenchServer bench)
        => Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().KeepSentenceAsync("8 plates, 7 March 2026 14:00, 5 minutes, Ada and Ben", Card, Cancel)).Value.Id;

    private static Task<HttpResponseMessage> PostAsync(BenchServer bench, string id, int basedOn, params string[][] rows)
        => bench.Client.PostAsync($"/occasions/{id}/diets", new FormUrlEncodedContent(
        [
            new("basedOn", basedOn.ToString(System.Globalization.CultureInfo.InvariantCulture)), new("column", "Seat"), new("column", "Declared"), new("column", "Onion tart"),
            .. rows.SelectMany((r, i) => r.Select((c, j) => new KeyValuePair<string, string>($"diet.{i}.{j}", c))),
        ]), Cancel);

    [Fact]
    public async Task Diets_are_written_by_seat_changed_and_taken_out_again_and_the_rest_of_the_sheet_stays()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = await OccasionAsync(bench);
        string before = (await bench.Store.OpenDocumentAsync(id, Cancel))!.Text;
        Assert.Contains("aria-label=\"Seat, row 1 of diets\"", await bench.Client.GetStringAsync("/occasions/" + id, Cancel));

        await PostAsync(bench, id, 1, ["2 to 3", "coeliac disease", "without the base"], ["", "", ""]);
        Document kept = (await bench.Store.OpenDocumentAsync(id, Cancel))!;
        Assert.StartsWith(before.TrimEnd(), kept.Text, StringComparison.Ordinal);
        KeptOccasion read = Assert.IsType<Parsed<KeptOccasion>.Ok>(await bench.Services.GetRequiredService<OccasionShelf>().OpenAsync(id, null, Cancel)).Value;
        Assert.Equal([2, 3], Assert.Single(read.Occasion.Diets).Seats);
        Assert.Equal("without the base", read.Occasion.Diets[0].ByDish["Onion tart"]);
        Assert.Contains(">coeliac disease</textarea>", await bench.Client.GetStringAsync("/occasions/" + id, Cancel));

        await PostAsync(bench, id, 2, ["", "", ""]);
        Assert.Equal(before.TrimEnd(), (await bench.Store.OpenDocumentAsync(id, Cancel))!.Text.TrimEnd());
    }

    [Fact]
    public async Task A_seat_that_is_no_number_is_kept_as_written_and_named_and_two_people_both_keep_theirs()
    {
        await using BenchServer bench = await BenchServer.StartAsync();
        string id = await OccasionAsync(bench);

        await PostAsync(bench, id, 1, ["by the door", "walnuts", ""]);
        string page = WebUtility.HtmlDecode(await bench.Client.GetStringAsync("/occasions/" + id, Cancel));
        Assert.Contains("“by the door” is no seat.", page);
        Assert.Contains("by the door", (await bench.Store.OpenDocumentAsync(id, Cancel))!.Text);

        HttpResponseMessage late = await PostAsync(bench, id, 1, ["4", "mustard | <b>hot</b>", ""]);
        Assert.Contains("/compare/", late.Headers.Location!.OriginalString);
        Assert.Contains("mustard / <b>hot</b>", (await bench.Store.OpenDocumentAsync(id, Cancel))!.Text);
        Assert.Contains("by the door", (await bench.Store.VersionAsync(id, 2, Cancel))!.Text);
    }

    [Theory]
    [InlineData("One sentence.")]
    [InlineData("# A\n\nText.\n\n## Guests' diets\n\n| Seat | Declared |\n|---|---|\n| 1 | x |\n\nA word below it.\n\n## Notes\n\nStay.\n")]
    [InlineData("# A\n\n## diets\n\nNothing yet.\n\n## Kit\n\n| Code | What |\n|---|---|\n| O1 | oven |\n")]
    public void A_table_put_into_a_sheet_is_the_one_read_back_and_nothing_else_changes(string sheet)
    {
        ImmutableArray<string> columns = ["Seat", "Declared", "Tart"];
        string[][] rows = [["4, 5", "vegetarian", ""], ["–", "a | bar", "none"]];

        string put = SheetTables.Put(sheet, ["Guests' diets", "Diets"], columns, rows);
        (ImmutableArray<string> heads, ImmutableArray<ImmutableArray<string>> back) = SheetTables.Read(put, "Guests' diets", "Diets");

        Assert.Equal(columns, heads);
        Assert.Equal([["4, 5", "vegetarian", ""], ["–", "a / bar", "none"]], back.Select(r => r.ToArray()));
        Assert.Equal(put, SheetTables.Put(put, ["Guests' diets", "Diets"], columns, [["4, 5", "vegetarian", ""], ["–", "a / bar", "none"]]));
        string[] mine = [.. sheet.Split('\n').Where(l => !l.StartsWith('|') || l.Contains("O1", StringComparison.Ordinal))];
        Assert.All(mine, l => Assert.Contains(l, put.Split('\n')));
    }
}
