// Writes versions, events and control entries without end and says what was acknowledged, to be killed by a test at any moment.
using System.Globalization;
using Coulisse.Kitchen.Planning;
using Coulisse.Store;
using Coulisse.StoreWriter;
using NodaTime;

if (args is [_, "fill"])
{
    return await Filling.RunAsync(args[0]);
}

await using KitchenStore store = await KitchenStore.OpenAsync(args[0], TimeProvider.System);
SaveOutcome.Saved occasion = (SaveOutcome.Saved)await store.SaveAsync(DocumentKind.Occasion, null, 0, "o", "sheet", "w", "");
string run = await store.StartRunAsync(await store.KeepPlanAsync(occasion.Id, 1, "{}", ""), DateTimeOffset.UnixEpoch, false);
string? id = null;
int version = 0;
for (int i = 1; ; i++)
{
    string text = string.Create(CultureInfo.InvariantCulture, $"text {i} {new string((char)('a' + i % 26), 2000)}");
    SaveOutcome.Saved saved = (SaveOutcome.Saved)await store.SaveAsync(DocumentKind.Card, id, version, "t", text, "w", "");
    (id, version) = (saved.Id, saved.Version);
    Say($"card {id} {version} {i}");
    await store.AppendAsync(run, [new LiveEvent(string.Create(CultureInfo.InvariantCulture, $"e{i}"), Instant.FromUnixTimeSeconds(i), "done", "T1", "w")]);
    Say($"event {run} e{i}");
    ControlEntry entry = await store.LogControlAsync("w", string.Create(CultureInfo.InvariantCulture, $"{{\"n\":{i}}}"));
    Say($"control {entry.Seq} {i}");
}

static void Say(FormattableString line)
{
    Console.Out.WriteLine(line.ToString(CultureInfo.InvariantCulture));
    Console.Out.Flush();
}
