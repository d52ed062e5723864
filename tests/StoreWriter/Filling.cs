using System.Globalization;
using Coulisse.Store;

namespace Coulisse.StoreWriter;

/// <summary>Writes until the store refuses, as on a full disk or in a folder that may not be written, and says what was acknowledged and in which words it was refused.</summary>
internal static class Filling
{
    public static async Task<int> RunAsync(string where)
    {
        try
        {
            await using KitchenStore store = await KitchenStore.OpenAsync(where, TimeProvider.System);
            string? first = null;
            for (int i = 1; i <= 5000; i++)
            {
                SaveOutcome.Saved saved = (SaveOutcome.Saved)await store.SaveAsync(DocumentKind.Card, null, 0, "t", string.Create(CultureInfo.InvariantCulture, $"text {i} {new string((char)('a' + i % 26), 20_000)}"), "w", "");
                first ??= saved.Id;
                await Console.Out.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"card {saved.Id} {i}"));
                await Console.Out.FlushAsync();
                if (i % 5 == 0 && await store.OpenDocumentAsync(first) is null)
                {
                    return 2;
                }
            }

            return 1; // five thousand cards fit: the disk was not full
        }
        catch (StoreException e)
        {
            await Console.Out.WriteLineAsync("refused " + e.Message);
            return 0;
        }
    }
}
