using System.Text.Json;
using Coulisse.Store;
using Coulisse.Views.Papers;
using Coulisse.Views.Web;

namespace Coulisse.Web.Sheets;

/// <summary>Which sheets of an occasion were printed and what they said, so that a stale one can be named.</summary>
internal sealed class SheetWall(KitchenStore store, TimeProvider clock)
{
    /// <summary>What was printed for an occasion.</summary>
    public async Task<Dictionary<string, WallSheet>> OfAsync(string occasion, CancellationToken cancel)
        => await store.SettingAsync(Key(occasion), cancel) is { } kept ? JsonSerializer.Deserialize<Dictionary<string, WallSheet>>(kept)! : [];

    /// <summary>The plan by which a person's brief was printed; empty when none was.</summary>
    public async Task<string> PlanInHandAsync(string occasion, string person, CancellationToken cancel)
        => (await OfAsync(occasion, cancel)).GetValueOrDefault(PaperShelf.BriefOf(person))?.Plan ?? "";

    /// <summary>Notes sheets as printed.</summary>
    public async Task NoteAsync(string occasion, string plan, IEnumerable<(Paper Paper, int Copies)> printed, CancellationToken cancel)
    {
        Dictionary<string, WallSheet> all = await OfAsync(occasion, cancel);
        foreach ((Paper paper, int copies) in printed)
        {
            all[paper.Id] = new WallSheet(paper.Title, paper.Content, paper.Mark.Version, clock.GetLocalNow(), copies) { Plan = plan };
        }

        await store.SetAsync(Key(occasion), JsonSerializer.Serialize(all), cancel);
    }

    /// <summary>Forgets sheets that were taken down.</summary>
    public async Task TakeDownAsync(string occasion, IReadOnlyCollection<string> printable, CancellationToken cancel)
    {
        Dictionary<string, WallSheet> all = await OfAsync(occasion, cancel);
        await store.SetAsync(Key(occasion), JsonSerializer.Serialize(all.Where(h => printable.Contains(h.Key)).ToDictionary()), cancel);
    }

    private static string Key(string occasion) => "papers." + occasion;
}
