using Coulisse.Store;
using Coulisse.Web.People;

namespace Coulisse.Web.Live;

/// <summary>Links that open one person's page of one run for a short time; no account, no password; the chef may take each back.</summary>
internal sealed class RoleLinks(SignedLinks links, KitchenStore store)
{
    /// <summary>How long a link opens.</summary>
    public static readonly TimeSpan Lasts = TimeSpan.FromHours(12);

    /// <summary>A person's token for a run: the one that holds, or a new one.</summary>
    public async Task<string> MakeAsync(string run, string role, CancellationToken cancel)
        => (await store.LinksAsync(SignedLinks.Live, run, cancel)).FirstOrDefault(l => l.Who == role) is { } held
            ? await links.TokenAsync(held.Id, SignedLinks.Live, cancel)
            : await links.MakeAsync(SignedLinks.Live, run, role, Lasts, cancel);

    /// <summary>Whose link it is; null when it is not ours, not of this run, has run out or was taken back.</summary>
    public async Task<string?> RoleAsync(string run, string token, CancellationToken cancel)
        => await links.OpenAsync(SignedLinks.Live, token, cancel) is { } link && link.Subject == run ? link.Who : null;

    /// <summary>Takes a person's link back; the next one made is another.</summary>
    public async Task EndAsync(string run, string role, CancellationToken cancel)
    {
        foreach (KeptLink link in (await store.LinksAsync(SignedLinks.Live, run, cancel)).Where(l => l.Who == role))
        {
            await store.EndLinkAsync(link.Id, cancel);
        }
    }
}
