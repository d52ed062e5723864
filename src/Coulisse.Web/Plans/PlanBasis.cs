using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Serialization;
using Coulisse.Cards.Occasions;
using Coulisse.Formats.Travel;
using Coulisse.Kitchen.Occasions;
using Coulisse.Store;

namespace Coulisse.Web.Plans;

/// <summary>What lay beside the texts of an occasion when it was planned: what was learnt, the site and its book, what was changed by a touch and marked to be shown. Kept once under its own fingerprint, which the plan names.</summary>
/// <param name="Learnt">Minutes learnt from trials.</param>
/// <param name="LearntCards">Figures learnt from trials.</param>
/// <param name="Site">Site of the kitchen; empty for none.</param>
/// <param name="Book">Version of the kitchen's book; 0 when none was kept.</param>
/// <param name="Foods">Version of the table of own foods; 0 when none was kept.</param>
/// <param name="Changes">Remedies tried by a touch, in order.</param>
/// <param name="Shown">Rows that the marks on cards made.</param>
internal sealed record PlanBasis(ImmutableArray<LearntTime> Learnt, ImmutableArray<LearntCard> LearntCards, string Site, int Book, int Foods, ImmutableArray<string> Changes, ImmutableArray<SheetShow> Shown)
{
    private const string Word = "basis ";

    /// <summary>Fingerprint of it, of all but itself.</summary>
    [JsonIgnore]
    public string Mark => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(TravelJson.Write(this))))[..16];

    /// <summary>As what a plan was made with names it.</summary>
    [JsonIgnore]
    public string Said => Word + Mark;

    /// <summary>Keeps it; the same basis twice is kept once.</summary>
    public Task KeepAsync(KitchenStore store, CancellationToken cancel) => store.SetOnceAsync(Key(Mark), TravelJson.Write(this), cancel);

    /// <summary>The basis that a plan names; null when it names none, as plans kept before there were any do.</summary>
    public static async Task<PlanBasis?> OfAsync(string madeWith, KitchenStore store, CancellationToken cancel)
        => madeWith.Split("; ").FirstOrDefault(p => p.StartsWith(Word, StringComparison.Ordinal)) is { } said && await store.SettingAsync(Key(said[Word.Length..]), cancel) is { } kept
            ? TravelJson.Read<PlanBasis>(kept) : null;

    /// <summary>What a plan is made with when one more thing was changed by a touch; the new basis is kept.</summary>
    public static async Task<string> ChangedAsync(string madeWith, string change, KitchenStore store, CancellationToken cancel)
    {
        if (change.Length == 0 || await OfAsync(madeWith, store, cancel) is not { } old)
        {
            return madeWith;
        }

        PlanBasis now = old with { Changes = [.. old.Changes.Remove(change), change] };
        await now.KeepAsync(store, cancel);
        return madeWith.Replace(old.Said, now.Said, StringComparison.Ordinal);
    }

    private static string Key(string mark) => "basis." + mark;
}
