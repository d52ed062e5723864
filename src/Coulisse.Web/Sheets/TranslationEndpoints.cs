using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Store;
using Coulisse.Views.Papers;
using Coulisse.Views.Web;
using Coulisse.Web.House;
using Coulisse.Web.Pages;
using Coulisse.Web.People;
using Coulisse.Web.Plans;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Coulisse.Web.Sheets;

/// <summary>Steps beside their translation: of one card, or of an occasion with all its cards. What is written is kept beside the card and printed in the briefs.</summary>
internal static class TranslationEndpoints
{
    public static void MapTranslations(this WebApplication app)
    {
        app.MapGet("/cards/{id}/translations", PageAsync);
        app.MapPost("/cards/{id}/translations", KeepAsync).DisableAntiforgery(); // the guard refuses posts from elsewhere
        app.MapGet("/cards/{id}/translations/{language}.txt", FileAsync);
        app.MapGet("/occasions/{id}/translations", PageAsync);
        app.MapPost("/occasions/{id}/translations", KeepAsync).DisableAntiforgery();
    }

    private static async Task<IResult> PageAsync(string id, KitchenStore store, OccasionShelf shelf, StepWords words, KitchenBook book, CancellationToken cancel, string language = "")
    {
        if (await SectionsAsync(id, store, shelf, cancel) is not { } of)
        {
            return Results.NotFound();
        }

        string chosen = await LanguageAsync(language, of.Spoken, book, cancel);
        ImmutableArray<TranslationSection>.Builder sections = ImmutableArray.CreateBuilder<TranslationSection>();
        foreach ((string document, string title, ImmutableArray<string> sentences) in of.Sections)
        {
            sections.Add(new TranslationSection(document, title, TranslationsView.Rows(sentences, await words.OfAsync(document, chosen, cancel))));
        }

        return new RazorComponentResult<TranslationsPage>(new { View = new TranslationsView(of.BackTo + "/translations", of.BackTo, of.Title, chosen, TranslationsView.Held, sections.ToImmutable()) });
    }

    private static async Task<IResult> KeepAsync(string id, HttpContext context, KitchenStore store, OccasionShelf shelf, StepWords words, CancellationToken cancel)
    {
        if (await SectionsAsync(id, store, shelf, cancel) is not { } of)
        {
            return Results.NotFound();
        }

        IFormCollection form = await context.Request.ReadFormAsync(cancel);
        string language = form["language"].ToString();
        if (!BriefPhrases.Languages.Contains(language))
        {
            return Results.Problem($"There is no language “{language}”; nothing was kept. Briefs have phrases in {string.Join(", ", BriefPhrases.Languages)}.", statusCode: StatusCodes.Status422UnprocessableEntity);
        }

        foreach ((string document, string title, ImmutableArray<string> sentences) in of.Sections)
        {
            List<(string, string)> written = [];
            for (int i = 0; form.ContainsKey(Field("text", document, i)); i++)
            {
                written.Add((form[Field("text", document, i)].ToString().ReplaceLineEndings(" "), form[Field("is", document, i)].ToString()));
            }

            if (written.Count > 0)
            {
                await words.KeepAsync(document, language, title, sentences, written, context.Name(), cancel);
            }
        }

        return Results.Redirect($"{of.BackTo}/translations?language={language}");
    }

    /// <summary>The same text that the command line reads beside a card.</summary>
    private static async Task<IResult> FileAsync(string id, string language, KitchenStore store, OccasionShelf shelf, StepWords words, CancellationToken cancel)
        => BriefPhrases.Languages.Contains(language) && await SectionsAsync(id, store, shelf, cancel) is { } of
            ? Results.File(Encoding.UTF8.GetBytes((await words.OfAsync(id, language, cancel)).Write(of.Title, of.Sections[0].Sentences)), "text/plain; charset=utf-8", $"card.{language}.txt")
            : Results.NotFound();

    /// <summary>Name of a field of the form.</summary>
    internal static string Field(string what, string document, int row) => string.Create(CultureInfo.InvariantCulture, $"{what}.{document}.{row}");

    private sealed record Translatable(string BackTo, string Title, ImmutableArray<(string Document, string Title, ImmutableArray<string> Sentences)> Sections, ImmutableArray<string> Spoken);

    private static async Task<Translatable?> SectionsAsync(string id, KitchenStore store, OccasionShelf shelf, CancellationToken cancel)
    {
        switch (await store.OpenDocumentAsync(id, cancel))
        {
            case { Kind: DocumentKind.Card } card:
                return new Translatable("/cards/" + id, card.Title, [(id, card.Title, Steps(card))], []);
            case { Kind: DocumentKind.Occasion } head when await shelf.OpenAsync(id, null, cancel) is Parsed<KeptOccasion>.Ok(var kept):
                List<(string, string, ImmutableArray<string>)> sections = [];
                HashSet<string> steps = [];
                foreach (string key in OccasionShelf.CardsOf(head.Why))
                {
                    if (await store.OpenDocumentAsync(key, cancel) is { Kind: DocumentKind.Card } of && Steps(of) is { IsEmpty: false } own)
                    {
                        sections.Add((key, of.Title, own));
                        steps.UnionWith(own);
                    }
                }

                ImmutableArray<string> rest = [.. HelperPaper.ToTranslate(kept.Occasion).Where(t => !steps.Contains(t))];
                return new Translatable("/occasions/" + id, head.Title, [.. rest.IsEmpty ? [] : new[] { (id, head.Title, rest) }, .. sections], [.. kept.Occasion.People.SelectMany(p => p.Languages)]);
            default:
                return null;
        }
    }

    private static ImmutableArray<string> Steps(Document card) => CardReader.Read(new CardText(card.Text, card.Title)).Match(d => HelperPaper.ToTranslate(d), _ => []);

    // The one asked for; else one that somebody here reads; else the first that is not the chef's.
    private static async Task<string> LanguageAsync(string asked, ImmutableArray<string> spoken, KitchenBook book, CancellationToken cancel)
    {
        if (BriefPhrases.Languages.Contains(asked))
        {
            return asked;
        }

        IEnumerable<string> people = spoken.Concat((await book.HouseAsync("", null, cancel)).House?.People.SelectMany(p => p.Languages) ?? []);
        return people.Select(BriefPhrases.CodeOf).Concat(BriefPhrases.Languages).First(l => l != "en" && BriefPhrases.Languages.Contains(l));
    }
}
