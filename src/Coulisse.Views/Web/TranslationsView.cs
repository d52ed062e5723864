using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Views.Papers;

namespace Coulisse.Views.Web;

/// <summary>Steps beside their translation, of one card or of all an occasion needs: what helpers' briefs print, and what they would mark as not translated.</summary>
/// <param name="At">Address of the page.</param>
/// <param name="BackTo">Where it was opened from.</param>
/// <param name="Title">Card or occasion.</param>
/// <param name="Language">Language shown (BCP 47).</param>
/// <param name="Languages">Those that briefs have phrases in, each with its own name.</param>
/// <param name="Sections">One a card, and one for the occasion's own words.</param>
public sealed record TranslationsView(string At, string BackTo, string Title, string Language, ImmutableArray<(string Key, string Word)> Languages, ImmutableArray<TranslationSection> Sections)
{
    /// <summary>How much is translated, one sentence.</summary>
    public string Says
    {
        get
        {
            int all = Sections.Sum(s => s.Rows.Length);
            int open = Sections.Sum(s => s.Rows.Count(r => r.State.Length > 0));
            return all == 0 ? "There is nothing to translate yet."
                : open == 0 ? "All of it is translated."
                : string.Create(CultureInfo.InvariantCulture, $"{open} of {all} not translated: a brief prints these as they are, each with its mark.");
        }
    }

    /// <summary>The language's own name.</summary>
    public string Word => Languages.First(l => l.Key == Language).Word;

    /// <summary>Languages to choose from.</summary>
    public static ImmutableArray<(string Key, string Word)> Held { get; } = [.. BriefPhrases.Languages.Select(l => (l, BriefPhrases.For(l)["languageName"]))];

    /// <summary>Rows of sentences with what is stored for them.</summary>
    public static ImmutableArray<TranslationRow> Rows(IEnumerable<string> sentences, StepTranslations stored) =>
    [
        .. sentences.Select(s => new TranslationRow(s, stored.Written(s) ?? "", stored.Find(s) is not null ? "" : stored.Written(s) is { } written ? $"not translated: it lacks {string.Join(", ", StepTranslations.Lost(s, written))}, which the step has" : "not translated")),
    ];
}

/// <summary>Sentences of one document.</summary>
/// <param name="Document">Its key.</param>
/// <param name="Title">Its title.</param>
/// <param name="Rows">Sentences in order.</param>
public sealed record TranslationSection(string Document, string Title, ImmutableArray<TranslationRow> Rows);

/// <summary>A sentence with its translation.</summary>
/// <param name="Text">As the card has it.</param>
/// <param name="Translation">As it was written; empty for none.</param>
/// <param name="State">Why a brief would mark it; empty when it is translated.</param>
public sealed record TranslationRow(string Text, string Translation, string State);
