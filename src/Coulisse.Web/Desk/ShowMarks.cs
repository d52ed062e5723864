using System.Collections.Immutable;
using System.Text.Json;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Cards.Writing;
using Coulisse.Store;
using Coulisse.Views.Web;

namespace Coulisse.Web.Desk;

/// <summary>What is shown live, marked on the steps of a kept card. A mark hangs on its step by the step's words and is found again after edits; one that finds none is loose: it is named, never dropped.</summary>
internal sealed class ShowMarks(KitchenStore store)
{
    private const int Weight = 4;

    /// <summary>Sets the mark of a step, or takes it off.</summary>
    /// <param name="card">Kept card.</param>
    /// <param name="text">Its text as it stands on the page.</param>
    /// <param name="line">Line of the step.</param>
    /// <param name="how">full, begin, finish, tell; anything else takes it off.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>False when no step stands in that line.</returns>
    public async Task<bool> SetAsync(string card, string text, int line, string how, CancellationToken cancel)
    {
        if (CardReader.Read(new CardText(text.ReplaceLineEndings("\n"))) is not Parsed<Dish>.Ok(var dish)
            || dish.Components.SelectMany(c => c.Steps).FirstOrDefault(s => s.Span.Line == line) is not { } step)
        {
            return false;
        }

        List<Mark> marks = [.. (await ReadAsync(card, cancel)).Where(m => Find(dish, m)?.Step != step)];
        if (Enum.TryParse(how, ignoreCase: true, out ShowKind kind) && Enum.IsDefined(kind) && char.IsLetter(how[0]))
        {
            marks.Add(new Mark(step.Anchor, step.Text, kind));
        }

        await store.SetAsync(Key(card), JsonSerializer.Serialize(marks), cancel);
        return true;
    }

    /// <summary>The marks of a card laid on its text as it stands now.</summary>
    public async Task<(ImmutableArray<ShownStep> Shown, ImmutableArray<string> Loose)> OfAsync(string card, Dish dish, CancellationToken cancel)
    {
        List<(Mark Mark, FoundStep? Found)> all = [.. (await ReadAsync(card, cancel)).Select(m => (m, Find(dish, m)))];
        return ([.. all.Where(a => a.Found is not null).Select(a => new ShownStep(a.Found!.Step.Span.Line, Word(a.Mark.How)))], [.. all.Where(a => a.Found is null).Select(a => a.Mark.Words)]);
    }

    /// <summary>The same as rows of a sheet, in the order of the card: what an occasion shows whose sheet lists nothing.</summary>
    public async Task<ImmutableArray<SheetShow>> RowsAsync(string card, Dish dish, CancellationToken cancel)
        => [.. (await ReadAsync(card, cancel)).Select(m => (m.How, Found: Find(dish, m))).Where(f => f.Found is not null).OrderBy(f => f.Found!.Step.Span.Line)
            .Select(f => new SheetShow(f.Found!.Component.Length > 0 ? f.Found.Component : dish.Title, f.Found.Step.Text.TrimEnd('.'), f.How, Weight, f.Found.Step.Span.Line))];

    private static FoundStep? Find(Dish dish, Mark mark) => AnchorFinder.Find(dish, mark.Anchor, mark.Words);

    private static string Word(ShowKind how) => how.ToString().ToLowerInvariant();

    private static string Key(string card) => "show." + card;

    private async Task<List<Mark>> ReadAsync(string card, CancellationToken cancel)
        => await store.SettingAsync(Key(card), cancel) is { } kept ? JsonSerializer.Deserialize<List<Mark>>(kept)! : [];

    private sealed record Mark(Anchor Anchor, string Words, ShowKind How);
}
