namespace Coulisse.Store.Tests;

public abstract partial class StoreTests
{
    [Fact]
    public async Task A_trial_is_tied_to_the_version_that_was_made_and_found_by_its_words()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        string card = await SaveAsync(store, null, 0, "Leek soup", "one");
        await SaveAsync(store, card, 1, "Leek soup", "two");
        string trial = await store.KeepTrialAsync(null, "Trial of Leek soup", "# Trial\ncrème too thin", "w", card, 1, "{}", Cancel);
        KeptTrial kept = Assert.Single(await store.TrialsAsync(card, Cancel));
        Assert.Equal((trial, 1), (kept.Id, kept.CardVersion));
        Assert.Equal(trial, Assert.Single(await store.SearchAsync(DocumentKind.Trial, "creme", cancel: Cancel)).Id);
        await store.KeepTrialAsync(trial, "Trial of Leek soup", "# Trial\nbetter", "w", card, 2, "{}", Cancel);
        Assert.Equal([2, 1], (await store.VersionsAsync(trial, Cancel)).Select(v => v.Version));
    }

    [Fact]
    public async Task A_trial_of_a_version_that_is_not_there_leaves_nothing_behind()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        string card = await SaveAsync(store, null, 0, "Leek soup", "one");
        await Assert.ThrowsAsync<StoreException>(() => store.KeepTrialAsync(null, "t", "sheet", "w", card, 2, "{}", Cancel));
        await Assert.ThrowsAsync<StoreException>(() => store.KeepTrialAsync(null, "t", "sheet", "w", "nowhere", 1, "{}", Cancel));
        Assert.Empty(await store.DocumentsAsync(DocumentKind.Trial, cancel: Cancel));
    }

    [Fact]
    public async Task A_record_and_the_files_beside_a_sheet_come_back_to_the_byte_and_only_in_their_kitchen()
    {
        string where = Fresh();
        await using KitchenStore store = await KitchenStore.OpenAsync(where, TimeProvider.System, cancel: Cancel);
        await using KitchenStore other = await KitchenStore.OpenAsync(where, TimeProvider.System, "other", Cancel);
        string occasion = Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(DocumentKind.Occasion, null, 0, "Lunch", "sheet", "w", "", Cancel)).Id;
        string record = await store.KeepRecordAsync(null, "Record of Lunch", "left 200 g", "w", occasion, "", Cancel);
        byte[] bytes = [.. Enumerable.Range(0, 4000).Select(i => (byte)(i * 7 & 255))];
        string file = await store.AttachAsync(record, "plate.jpg", "image/jpeg", bytes, Cancel);
        Assert.Equal(record, Assert.Single(await store.RecordsAsync(occasion, Cancel)).Id);
        Assert.Equal(4000, Assert.Single(await store.FilesAsync(record, Cancel)).Bytes);
        Assert.Equal(bytes, (await store.FileAsync(file, Cancel))!.Value.Bytes);
        Assert.Null(await other.RecordAsync(record, Cancel));
        Assert.Empty(await other.FilesAsync(record, Cancel));
        Assert.Null(await other.FileAsync(file, Cancel));
        await Assert.ThrowsAsync<StoreException>(() => other.AttachAsync(record, "x", "image/png", bytes, Cancel));
    }

    [Fact]
    public async Task An_archive_carries_trials_records_and_files_and_imports_them_once()
    {
        await using KitchenStore a = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        string card = await SaveAsync(a, null, 0, "Leek soup", "one");
        string trial = await a.KeepTrialAsync(null, "Trial", "sheet", "w", card, 1, "{\"x\":1}", Cancel);
        await a.AttachAsync(trial, "p.png", "image/png", [1, 2, 3], Cancel);
        string occasion = Assert.IsType<SaveOutcome.Saved>(await a.SaveAsync(DocumentKind.Occasion, null, 0, "Lunch", "sheet", "w", "", Cancel)).Id;
        string record = await a.KeepRecordAsync(null, "Record", "sheet 2", "w", occasion, "", Cancel);
        using MemoryStream zip = new();
        await Archive.ExportAsync(a, zip, cancel: Cancel);
        await using KitchenStore b = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        zip.Position = 0;
        Assert.Equal(4, (await Archive.ImportAsync(b, zip, "w", Cancel)).Added);
        zip.Position = 0;
        Assert.Equal(4, (await Archive.ImportAsync(b, zip, "w", Cancel)).Same);
        Assert.Equal("{\"x\":1}", (await b.TrialAsync(trial, Cancel))!.Json);
        Assert.Equal(occasion, (await b.RecordAsync(record, Cancel))!.OccasionId);
        Assert.Equal([1, 2, 3], (await b.FileAsync(Assert.Single(await b.FilesAsync(trial, Cancel)).Id, Cancel))!.Value.Bytes);
    }

    [Fact]
    public async Task A_document_of_one_kind_is_not_overwritten_as_another()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        string card = await SaveAsync(store, null, 0, "Leek soup", "one");
        await Assert.ThrowsAsync<StoreException>(() => store.SaveAsync(DocumentKind.Prices, card, 1, "x", "price", "w", "", Cancel));
        Assert.Equal("one", (await store.OpenDocumentAsync(card, Cancel))!.Text);
    }

    [Fact]
    public async Task Of_twenty_owners_at_once_one_is_made_and_of_twenty_uses_of_one_link_one_works()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        async Task<bool> Own(int i)
        {
            try
            {
                return await store.AddPersonAsync(new KeptPerson($"p{i}", $"Owner {i}", PersonRole.Chef, true, "h", "s", 0, null, default), Cancel);
            }
            catch (StoreException)
            {
                return false; // the database itself refused the second
            }
        }

        Assert.Equal(1, (await Task.WhenAll(Enumerable.Range(0, 20).Select(Own))).Count(o => o));
        Assert.Single(await store.PeopleAsync(Cancel));
        string link = await store.MakeLinkAsync("join", "p", "w", TimeProvider.System.GetUtcNow().AddHours(1), Cancel);
        Assert.Equal(1, (await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => store.EndLinkAsync(link, Cancel)))).Count(o => o));
    }

    [Fact]
    public async Task A_session_a_passkey_and_a_link_end_with_their_person()
    {
        await using KitchenStore store = await KitchenStore.OpenAsync(Fresh(), TimeProvider.System, cancel: Cancel);
        Assert.True(await store.AddPersonAsync(new KeptPerson("p", "Ben", PersonRole.Helper, false, "h", "s", 0, null, default), Cancel));
        Assert.False(await store.AddPersonAsync(new KeptPerson("q", "BÉN", PersonRole.Helper, false, "h", "s", 0, null, default), Cancel));
        await store.KeepSessionAsync("s1", "p", "ticket", TimeProvider.System.GetUtcNow().AddHours(1), Cancel);
        await store.KeepSessionAsync("s2", "p", "ticket", TimeProvider.System.GetUtcNow().AddHours(-1), Cancel);
        await store.KeepPasskeyAsync("p", "cred", "{}", Cancel);
        string link = await store.MakeLinkAsync("join", "p", "Ben", TimeProvider.System.GetUtcNow().AddHours(1), Cancel);
        Assert.Equal("ticket", await store.SessionAsync("s1", Cancel));
        Assert.Null(await store.SessionAsync("s2", Cancel));
        Assert.True(await store.RemovePersonAsync("p", Cancel));
        Assert.Null(await store.SessionAsync("s1", Cancel));
        Assert.Null(await store.PersonByPasskeyAsync("cred", Cancel));
        Assert.Null(await store.LinkAsync(link, Cancel));
        Assert.True(await store.AddPersonAsync(new KeptPerson("q", "Ben", PersonRole.Helper, false, "h", "s", 0, null, default), Cancel));
    }
}
