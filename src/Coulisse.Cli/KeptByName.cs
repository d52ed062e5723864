using System.Text;
using Coulisse.Store;

namespace Coulisse.Cli;

/// <summary>Finds a kept document as people name it: by key, by title, or by the file it came from.</summary>
internal static class KeptByName
{
    /// <summary>The document's key; null when there is none.</summary>
    /// <param name="store">The store.</param>
    /// <param name="kind">Kind of document.</param>
    /// <param name="name">Key, title, or path of a file.</param>
    /// <param name="keep">Who keeps the file when it is not kept yet; null to keep nothing.</param>
    /// <param name="cancel">Gives up.</param>
    public static async Task<string?> FindAsync(KitchenStore store, string kind, string name, string? keep, CancellationToken cancel)
    {
        if (await store.OpenDocumentAsync(name, cancel).ConfigureAwait(false) is { } there && there.Kind == kind)
        {
            return there.Id;
        }

        string? text = keep is not null && File.Exists(name) ? Encoding.UTF8.GetString(await File.ReadAllBytesAsync(name, cancel).ConfigureAwait(false)).TrimStart('\uFEFF').ReplaceLineEndings("\n") : null;
        string title = text is null ? name : Title(text);
        DocumentHead? head = (await store.SearchAsync(kind, title, 50, cancel).ConfigureAwait(false)).FirstOrDefault(h => h.Title.Equals(title, StringComparison.OrdinalIgnoreCase));
        if (text is null)
        {
            return head?.Id;
        }

        return await store.SaveAsync(kind, head?.Id, head?.Version ?? 0, title, text, keep!, "", cancel).ConfigureAwait(false) is SaveOutcome.Saved(var id, _) ? id : null;
    }

    private static string Title(string text) => text.Split('\n').Select(l => l.TrimStart('#', ' ', '\t').Trim()).FirstOrDefault(l => l.Length > 0) ?? "Untitled";
}
