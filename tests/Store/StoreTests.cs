using Coulisse.Kitchen.Planning;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Store.Tests;

/// <summary>The same promises on both databases.</summary>
public abstract partial class StoreTests
{
    private protected abstract string Fresh();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_saved_text_comes_back_to_the_letter()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        const string text = "# Crème\n\n- 2 g salt – “fine” 抹茶\r\n\t½";
        SaveOutcome.Saved saved = Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(DocumentKind.Card, null, 0, "Crème", text, "a cook", "first", Cancel));
        Document back = (await store.OpenDocumentAsync(saved.Id, Cancel))!;
        Assert.Equal(text, back.Text);
        Assert.Equal(1, back.Version);
        Assert.Equal("a cook", back.Who);
    }

    [Fact]
    public async Task Every_saved_text_stays_as_a_version()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        string id = await SaveAsync(store, null, 0, "a", "one");
        await SaveAsync(store, id, 1, "a", "two");
        await SaveAsync(store, id, 2, "a", "three");
        Assert.Equal([3, 2, 1], (await store.VersionsAsync(id, Cancel)).Select(v => v.Version));
        Assert.Equal("one", (await store.VersionAsync(id, 1, Cancel))!.Text);
        Assert.Equal("three", (await store.OpenDocumentAsync(id, Cancel))!.Text);
    }

    [Fact]
    public async Task Saving_an_equal_text_makes_no_new_version()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        string id = await SaveAsync(store, null, 0, "a", "one");
        Assert.Equal(1, Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(DocumentKind.Card, id, 1, "a", "one", "w", "", Cancel)).Version);
        Assert.Single(await store.VersionsAsync(id, Cancel));
    }

    [Fact]
    public async Task Two_writers_on_one_card_lose_neither_text()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        string id = await SaveAsync(store, null, 0, "a", "base");
        await SaveAsync(store, id, 1, "a", "hers");
        SaveOutcome.Conflict conflict = Assert.IsType<SaveOutcome.Conflict>(await store.SaveAsync(DocumentKind.Card, id, 1, "a", "his", "him", "", Cancel));
        Assert.Equal("hers", conflict.Theirs.Text);
        Assert.Equal("his", (await store.VersionAsync(id, conflict.KeptAs, Cancel))!.Text);
    }

    [Fact]
    public async Task Twenty_writers_at_once_lose_no_version()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        string id = await SaveAsync(store, null, 0, "a", "base");
        await Task.WhenAll(Enumerable.Range(0, 20).Select(i => store.SaveAsync(DocumentKind.Card, id, 1, "a", $"text {i}", "w", "", Cancel)));
        List<DocumentVersion> versions = await store.VersionsAsync(id, Cancel);
        Assert.Equal(21, versions.Count);
        HashSet<string> texts = [];
        foreach (DocumentVersion v in versions)
        {
            texts.Add((await store.VersionAsync(id, v.Version, Cancel))!.Text);
        }

        Assert.Equal(21, texts.Count);
    }

    [Theory]
    [InlineData("creme", true)]
    [InlineData("CRÈ", true)]
    [InlineData("haz", true)]
    [InlineData("leek haz", true)]
    [InlineData("hazel leek", true)]
    [InlineData("zelnut", false)]
    [InlineData("' OR 1=1 --", false)]
    [InlineData("\"leek\" NOT zzz (", false)]
    public async Task Search_folds_accents_and_finds_beginnings(string query, bool found)
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        await SaveAsync(store, null, 0, "Crème of leek", "with hazelnut and butter");
        await SaveAsync(store, null, 0, "Beet", "with or without");
        List<DocumentHead> hits = await store.SearchAsync(DocumentKind.Card, query, cancel: Cancel);
        Assert.Equal(found, hits.Any(h => h.Title == "Crème of leek"));
    }

    [Fact]
    public async Task A_kitchen_does_not_see_the_documents_of_another()
    {
        string where = Fresh();
        await using KitchenStore mine = await KitchenStore.OpenAsync(where, TimeProvider.System, "mine", Cancel);
        await using KitchenStore theirs = await KitchenStore.OpenAsync(where, TimeProvider.System, "theirs", Cancel);
        string id = await SaveAsync(mine, null, 0, "secret", "text");
        Assert.Null(await theirs.OpenDocumentAsync(id, Cancel));
        Assert.Null(await theirs.VersionAsync(id, 1, Cancel));
        Assert.Empty(await theirs.VersionsAsync(id, Cancel));
        Assert.Empty(await theirs.SearchAsync(DocumentKind.Card, "secret", cancel: Cancel));
    }

    [Fact]
    public async Task A_repeated_event_is_kept_once_and_order_is_by_moment()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        string run = await RunAsync(store);
        LiveEvent late = new("b", Instant.FromUnixTimeMilliseconds(2000), "done", "T2", "one");
        LiveEvent early = new("a", Instant.FromUnixTimeMilliseconds(1000), "done", "T1", "two");
        Assert.Equal(1, await store.AppendAsync(run, [late], Cancel));
        Assert.Equal(1, await store.AppendAsync(run, [late, early], Cancel));
        Assert.Equal(["a", "b"], (await store.LogAsync(run, Cancel)).Events.Select(e => e.Id));
    }

    [Fact]
    public async Task The_control_log_is_a_chain_and_a_fresh_one_is_whole()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        for (int i = 0; i < 5; i++)
        {
            await store.LogControlAsync("w", $"{{\"celsius\":{i}}}", Cancel);
        }

        ChainCheck check = await store.CheckControlLogAsync(Cancel);
        Assert.Equal(5, check.Entries);
        Assert.Empty(check.Broken);
    }

    [Fact]
    public async Task A_plan_is_found_again_by_its_occasion()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        string occasion = await SaveAsync(store, null, 0, "o", "sheet");
        string plan = await store.KeepPlanAsync(occasion, 1, "{}", "engine 1", Cancel);
        Assert.Equal(plan, (await store.NewestPlanAsync(occasion, Cancel))!.Id);
        Assert.Equal("engine 1", (await store.PlanAsync(plan, Cancel))!.Versions);
    }

    private static async Task<string> RunAsync(KitchenStore store)
    {
        string occasion = await SaveAsync(store, null, 0, "o", "sheet");
        string plan = await store.KeepPlanAsync(occasion, 1, "{}", "", Cancel);
        return await store.StartRunAsync(plan, DateTimeOffset.UnixEpoch, false, Cancel);
    }

    private static async Task<string> SaveAsync(KitchenStore store, string? id, int basedOn, string title, string text)
        => Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(DocumentKind.Card, id, basedOn, title, text, "w", "", Cancel)).Id;
}

public sealed class SqliteStoreTests : StoreTests, IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-store").FullName;
    private int _count;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public async Task A_changed_line_of_the_control_log_shows()
    {
        string where = Fresh();
        await using KitchenStore store = await KitchenStore.OpenAsync(where, TimeProvider.System, cancel: TestContext.Current.CancellationToken);
        await store.LogControlAsync("w", "{\"celsius\":4}", TestContext.Current.CancellationToken);
        await store.LogControlAsync("w", "{\"celsius\":9}", TestContext.Current.CancellationToken);
        Execute(where, "UPDATE control_log SET json = '{\"celsius\":3}' WHERE seq = 2");
        Assert.Equal(2L, Assert.Single((await store.CheckControlLogAsync(TestContext.Current.CancellationToken)).Broken));
    }

    [Fact]
    public async Task A_file_that_is_no_store_is_refused_with_a_sentence()
    {
        string where = Fresh();
        Directory.CreateDirectory(where);
        await File.WriteAllTextAsync(Path.Combine(where, "coulisse.db"), new string('x', 5000), TestContext.Current.CancellationToken);
        await Assert.ThrowsAsync<StoreException>(() => KitchenStore.OpenAsync(where, TimeProvider.System, cancel: TestContext.Current.CancellationToken));
    }

    private protected override string Fresh() => Path.Combine(_folder, (++_count).ToString(System.Globalization.CultureInfo.InvariantCulture));

    private protected override Task ExecuteAsync(string where, string sql)
    {
        Execute(where, sql);
        return Task.CompletedTask;
    }

    private static void Execute(string where, string sql)
    {
        using Microsoft.Data.Sqlite.SqliteConnection c = new($"Data Source={Path.Combine(where, "coulisse.db")};Pooling=False");
        c.Open();
        using Microsoft.Data.Sqlite.SqliteCommand command = c.CreateCommand();
#pragma warning disable CA2100
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }
}

public sealed class PostgresStoreTests(PostgresServer server) : StoreTests
{
    private protected override string Fresh() => server.Fresh();

    private protected override async Task ExecuteAsync(string where, string sql)
    {
        await using Npgsql.NpgsqlConnection connection = new(where);
        await connection.OpenAsync();
#pragma warning disable CA2100
        await using Npgsql.NpgsqlCommand command = new(sql, connection);
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync();
    }

    [Fact]
    public async Task A_change_of_a_run_is_told_to_the_other_processes()
    {
        string where = Fresh();
        await using KitchenStore one = await KitchenStore.OpenAsync(where, TimeProvider.System, cancel: TestContext.Current.CancellationToken);
        await using KitchenStore two = await KitchenStore.OpenAsync(where, TimeProvider.System, cancel: TestContext.Current.CancellationToken);
        string occasion = Assert.IsType<SaveOutcome.Saved>(await one.SaveAsync(DocumentKind.Occasion, null, 0, "o", "sheet", "w", "", TestContext.Current.CancellationToken)).Id;
        string run = await one.StartRunAsync(await one.KeepPlanAsync(occasion, 1, "{}", "", TestContext.Current.CancellationToken), DateTimeOffset.UnixEpoch, false, TestContext.Current.CancellationToken);
        await using IAsyncEnumerator<string> heard = two.ChangedRunsAsync(TestContext.Current.CancellationToken).GetAsyncEnumerator(TestContext.Current.CancellationToken);
        Task<bool> next = heard.MoveNextAsync().AsTask();
        for (int i = 0; i < 50 && !next.IsCompleted; i++)
        {
            // told again and again until the other is listening
            await one.AppendAsync(run, [new LiveEvent(Guid.NewGuid().ToString(), Instant.FromUnixTimeSeconds(i), "done", "T", "w")], TestContext.Current.CancellationToken);
            await Task.WhenAny(next, Task.Delay(100, TestContext.Current.CancellationToken));
        }

        Assert.True(next.IsCompleted && await next);
        Assert.Equal(run, heard.Current);
    }
}
