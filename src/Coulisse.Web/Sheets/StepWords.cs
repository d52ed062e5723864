using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Occasions;
using Coulisse.Store;
using Coulisse.Views.Papers;
using Coulisse.Web.Plans;

namespace Coulisse.Web.Sheets;

/// <summary>Translations of steps, kept beside the card or occasion they are of: one document a language, the same text that lies beside a card file.</summary>
internal sealed class StepWords(KitchenStore store)
{
    /// <summary>Key of the translations of a document. The language stands before, so that a document carried to another kitchen keeps its translations.</summary>
    public static string Key(string document, string language) => language + "." + document;

    /// <summary>What is kept for one document.</summary>
    public async Task<StepTranslations> OfAsync(string document, string language, CancellationToken cancel)
        => await store.OpenDocumentAsync(Key(document, language), cancel) is { Kind: DocumentKind.Translation } kept ? StepTranslations.Read(kept.Text, language) : new StepTranslations { Language = language };

    /// <summary>What is kept for an occasion and its cards in one language; the occasion's own go before its cards'.</summary>
    public async Task<StepTranslations> OfOccasionAsync(string occasion, string language, CancellationToken cancel)
    {
        StepTranslations all = new() { Language = language };
        foreach (string card in OccasionShelf.CardsOf((await store.OpenDocumentAsync(occasion, cancel))?.Why ?? ""))
        {
            all = all.With(await OfAsync(card, language, cancel));
        }

        return all.With(await OfAsync(occasion, language, cancel));
    }

    /// <summary>What is kept for the languages of an occasion's people.</summary>
    public async Task<ImmutableArray<StepTranslations>> OfOccasionAsync(string id, Occasion occasion, CancellationToken cancel)
    {
        List<StepTranslations> all = [];
        foreach (string language in occasion.People.Where(p => !p.Languages.IsEmpty).Select(p => BriefPhrases.For(p.Languages).Language).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            all.Add(await OfOccasionAsync(id, language, cancel));
        }

        return [.. all];
    }

    /// <summary>Keeps what was written for sentences of a document; what was kept for others, or for steps that have changed since, stays.</summary>
    public async Task KeepAsync(string document, string language, string title, IReadOnlyList<string> sentences, IReadOnlyList<(string Text, string Translation)> written, string who, CancellationToken cancel)
    {
        Document? kept = await store.OpenDocumentAsync(Key(document, language), cancel);
        StepTranslations now = written.Aggregate(StepTranslations.Read(kept?.Text ?? "", language), (all, pair) => all.Set(pair.Text, pair.Translation));
        // A step that changed while its translation was being written is still written down, with the words it had.
        string[] all = [.. sentences.Concat(written.Where(w => w.Translation.Trim().Length > 0).Select(w => w.Text)).Distinct(StringComparer.Ordinal)];
        string text = now.Write(title, all) + StepTranslations.Unused(kept?.Text ?? "", all);
        await store.SaveAsync(DocumentKind.Translation, Key(document, language), kept?.Version ?? 0, $"{title} ({language})", text, who, "", cancel);
    }
}
