using System.Globalization;
using Coulisse.Store;
using Coulisse.Views.Web;

namespace Coulisse.Web.Records;

/// <summary>How long a kitchen keeps its records. The bench deletes none of them, before or after: the period says until when they must be there.</summary>
internal static class Retention
{
    private const string Key = "records.months";
    private const int Longest = 1200;

    public static async Task<RetentionView> OfAsync(KitchenStore store, CancellationToken cancel)
    {
        int months = int.TryParse(await store.SettingAsync(Key, cancel), NumberStyles.None, CultureInfo.InvariantCulture, out int held) ? held : 0;
        return new RetentionView(months, months == 0
            ? "Nobody has said how long records are kept here; local food law does. Until then they are kept without end."
            : string.Create(CultureInfo.InvariantCulture, $"Records and readings are kept for at least {months} months. The bench deletes none, before or after."));
    }

    public static Task SetAsync(KitchenStore store, int months, CancellationToken cancel)
        => store.SetAsync(Key, Math.Clamp(months, 0, Longest).ToString(CultureInfo.InvariantCulture), cancel);
}
