namespace Coulisse.Store.Tests;

public abstract partial class StoreTests
{
    [Fact]
    public async Task A_search_looks_at_one_kind_only_and_no_word_finds_a_document_by_its_kind()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        string card = await SaveAsync(store, null, 0, "Leek soup", "leek and stock");
        string occasion = Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(DocumentKind.Occasion, null, 0, "Lunch of leek", "leek for a card of mine", "w", "", Cancel)).Id;
        Assert.Equal(card, Assert.Single(await store.SearchAsync(DocumentKind.Card, "lee", cancel: Cancel)).Id);
        Assert.Equal(occasion, Assert.Single(await store.SearchAsync(DocumentKind.Occasion, "lee", cancel: Cancel)).Id);
        foreach (string word in new[] { "card", "kind", "occasion", "k", "c" })
        {
            Assert.Empty(await store.SearchAsync(DocumentKind.Card, word, cancel: Cancel));
        }

        Assert.Equal(occasion, Assert.Single(await store.SearchAsync(DocumentKind.Occasion, "card", cancel: Cancel)).Id);
    }

    [Fact]
    public async Task Words_of_an_earlier_text_find_nothing_any_more_and_those_of_the_newest_do()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        string id = await SaveAsync(store, null, 0, "Soup", "leek");
        await SaveAsync(store, id, 1, "Broth", "quince");
        Assert.Empty(await store.SearchAsync(DocumentKind.Card, "leek", cancel: Cancel));
        Assert.Empty(await store.SearchAsync(DocumentKind.Card, "soup", cancel: Cancel));
        Assert.Equal(id, Assert.Single(await store.SearchAsync(DocumentKind.Card, "broth quince", cancel: Cancel)).Id);
    }

    // What the two query languages and SQL itself would understand, were it not taken apart into words first.
    [Theory]
    [InlineData("\"; DROP TABLE document; --")]
    [InlineData("'); DELETE FROM document_version; --")]
    [InlineData("leek\" OR kind : \"record")]
    [InlineData("leek' | 'soup':* & !'x")]
    [InlineData("NEAR(leek soup, 5)")]
    [InlineData("* ^ { } ( ) : - + \\ % _")]
    [InlineData("kind : card")]
    [InlineData("\0leek\u2028")]
    public async Task Whatever_is_typed_into_a_search_is_words_and_changes_nothing(string typed)
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        string id = await SaveAsync(store, null, 0, typed.Replace("\0", "", StringComparison.Ordinal), "kept");
        string before = await store.RowHashAsync(Cancel);
        foreach (string kind in DocumentKind.All)
        {
            await store.SearchAsync(kind, typed, cancel: Cancel);
        }

        await store.SettingAsync(typed.Replace("\0", "", StringComparison.Ordinal), Cancel);
        Assert.Null(await store.OpenDocumentAsync("' OR '1'='1", Cancel));
        Assert.Null(await store.TrialAsync("' OR '1'='1", Cancel));
        Assert.Empty(await store.FilesAsync("x' UNION SELECT id, id, id, id, 1, id, 1 FROM person --", Cancel));
        Assert.Equal(before, await store.RowHashAsync(Cancel));
        Assert.Equal("kept", (await store.OpenDocumentAsync(id, Cancel))!.Text);
    }
}
