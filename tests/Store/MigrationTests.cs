using Coulisse.Kitchen.Planning;
using Coulisse.Store.Migrations;
using NodaTime;

namespace Coulisse.Store.Tests;

public abstract partial class StoreTests
{
    public static TheoryData<int> EarlierForms => [.. Enumerable.Range(1, Numbered.Newest - 1)];

    private protected abstract Task ExecuteAsync(string where, string sql);

    [Theory]
    [MemberData(nameof(EarlierForms))]
    public async Task Every_row_of_every_earlier_form_is_carried_into_the_newest(int form)
    {
        string where = Fresh();
        Dictionary<string, string> before = [];
        await using (KitchenStore old = await KitchenStore.OpenAtAsync(where, TimeProvider.System, form, Cancel))
        {
            string card = await SaveAsync(old, null, 0, "Crème", "one");
            await SaveAsync(old, card, 1, "Crème", "two – “½”");
            string occasion = Assert.IsType<SaveOutcome.Saved>(await old.SaveAsync(DocumentKind.Occasion, null, 0, "o", "sheet", "w", "why", Cancel)).Id;
            string run = await old.StartRunAsync(await old.KeepPlanAsync(occasion, 1, "{}", "engine 1", Cancel), DateTimeOffset.UnixEpoch, true, Cancel);
            await old.AppendAsync(run, [new LiveEvent("a", Instant.FromUnixTimeSeconds(1), "done", "T1", "w", "note")], Cancel);
            await old.LogControlAsync("w", "{\"celsius\":4}", Cancel);
            await ExecuteAsync(where, $"INSERT INTO trial (id, card_id, card_version, made_ms, json) VALUES ('t', '{card}', 2, 5, '{{}}')");
            if (form >= 2)
            {
                await old.SetAsync("code", "uk", Cancel);
            }

            foreach (string table in KitchenStore.TableNames)
            {
                if (await old.TableHashAsync(table, Cancel) is { } hash)
                {
                    before[table] = hash;
                }
            }
        }

        Assert.True(before.Count >= 7);
        await using KitchenStore now = await KitchenStore.OpenAsync(where, TimeProvider.System, cancel: Cancel);
        foreach ((string table, string hash) in before)
        {
            Assert.Equal((table, hash), (table, await now.TableHashAsync(table, Cancel)));
        }

        Assert.Single(await now.SearchAsync(DocumentKind.Card, "creme", cancel: Cancel));
        Assert.Empty((await now.CheckControlLogAsync(Cancel)).Broken);
        // and what came with the newest form works
        Assert.True(await now.AddPersonAsync(new KeptPerson("p", "Ada", PersonRole.Chef, true, "h", "s", 0, null, default), Cancel));
        await now.AuditAsync("Ada", "{}", Cancel);
    }

    [Fact]
    public async Task A_store_of_a_newer_form_is_refused_by_name_and_left_alone()
    {
        string where = Fresh();
        await using (await KitchenStore.OpenAsync(where, TimeProvider.System, cancel: Cancel))
        {
        }

        await ExecuteAsync(where, "UPDATE meta SET value = '999' WHERE key = 'form'");
        StoreException e = await Assert.ThrowsAsync<StoreException>(() => KitchenStore.OpenAsync(where, TimeProvider.System, cancel: Cancel));
        Assert.Contains("999", e.Message);
        Assert.Contains("newer Coulisse", e.Message);
        await ExecuteAsync(where, $"UPDATE meta SET value = '{Numbered.Newest}' WHERE key = 'form'");
        await using KitchenStore again = await KitchenStore.OpenAsync(where, TimeProvider.System, cancel: Cancel);
        Assert.Empty(await again.DocumentsAsync(DocumentKind.Card, cancel: Cancel));
    }

    [Fact]
    public async Task Eight_processes_that_open_a_new_store_at_once_make_it_once()
    {
        string where = Fresh();
        KitchenStore[] stores = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => KitchenStore.OpenAsync(where, TimeProvider.System, cancel: Cancel)));
        await SaveAsync(stores[0], null, 0, "a", "one");
        Assert.Single(await stores[7].DocumentsAsync(DocumentKind.Card, cancel: Cancel));
        foreach (KitchenStore store in stores)
        {
            await store.DisposeAsync();
        }
    }

    [Fact]
    public async Task A_backup_of_either_store_restores_to_the_same_rows_in_either_store()
    {
        string folder = Directory.CreateTempSubdirectory("coulisse-move").FullName;
        try
        {
            await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
            string card = await SaveAsync(store, "example-card", 0, "Crème", "one");
            string trial = await store.KeepTrialAsync(null, "Trial", "sheet", "w", card, 1, "{}", Cancel);
            await store.AttachAsync(trial, "p", "image/png", [0, 1, 255], Cancel);
            await store.LogControlAsync("w", "{}", Cancel);
            string file = Path.Combine(folder, "b.db");
            string hash = await store.BackupAsync(file, Cancel);
            Assert.Equal(hash, await store.RowHashAsync(Cancel));
            await KitchenStore.ProveAsync(file, hash, TimeProvider.System, Cancel);
            string elsewhere = Fresh();
            await using (KitchenStore empty = await KitchenStore.OpenAsync(elsewhere, TimeProvider.System, cancel: Cancel))
            {
                await using KitchenStore restored = await OpenRestored(folder, file);
                Assert.Equal(hash, await restored.CopyIntoAsync(empty, Cancel));
                Assert.Equal(card, Assert.Single(await empty.SearchAsync(DocumentKind.Card, "creme", cancel: Cancel)).Id);
                StoreException e = await Assert.ThrowsAsync<StoreException>(() => restored.CopyIntoAsync(empty, Cancel));
                Assert.Contains("not empty", e.Message);
            }
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private static async Task<KitchenStore> OpenRestored(string folder, string file)
    {
        string where = Path.Combine(folder, "restored");
        await KitchenStore.RestoreAsync(where, file, DateTimeOffset.UnixEpoch, Cancel);
        return await KitchenStore.OpenAsync(where, TimeProvider.System, cancel: Cancel);
    }
}
