using System.Collections.Immutable;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Text of a card to its dish: nothing is lost, nothing is corrected in silence.</summary>
public static class CardReader
{
    private const int Looked = 8192;
    private const int Dirt = 3; // a stray null is dirt, many are another kind of file

    /// <summary>Reads a card. Refuses only what is no text: empty, binary, more than 5 MB.</summary>
    public static Parsed<Dish> Read(CardText card)
    {
        string text = card.Text;
        if (string.IsNullOrWhiteSpace(text))
        {
            return Refuse("CRD001", "The card is empty.", "Type a title, a list and a method.");
        }

        if (text.Length > CardText.MostCharacters)
        {
            return Refuse("CRD002", "The card is longer than 5 MB.", "Split it into cards of one dish each.");
        }

        int nulls = text.AsSpan(0, Math.Min(text.Length, Looked)).Count('\0');
        if (nulls > Math.Max(Dirt, Math.Min(text.Length, Looked) / 20))
        {
            return Refuse("CRD003", "This is a binary file, not a text.", "Save it as text, Markdown or HTML.");
        }

        Dish dish = new CardBuilder(text, Tongue.Of(text)).Build();
        return new Parsed<Dish>.Ok(nulls == 0 ? dish : dish with { Remarks = dish.Remarks.Add(new Remark(1 + text.AsSpan(0, text.IndexOf('\0')).Count('\n'), "no text", "A character that is no text stood here; it was left out.")) });
    }

    /// <summary>Reads one ingredient line on its own.</summary>
    /// <param name="line">The line.</param>
    /// <param name="lang">Language code.</param>
    public static IngredientLine ReadLine(string line, string lang) => LineReader.Read(line, lang, new Span(0, line.Length, 1), []);

    /// <summary>Reads one ingredient line and the questions it raises.</summary>
    public static (IngredientLine Line, ImmutableArray<Doubt> Doubts) ReadLineWithDoubts(string line, string lang)
    {
        List<Doubt> doubts = [];
        IngredientLine read = LineReader.Read(line, lang, new Span(0, line.Length, 1), doubts, new FoodIds(lang));
        return (read, [.. doubts]);
    }

    /// <summary>Token by token: what became of each piece of an ingredient line. Made only here, when somebody asks.</summary>
    /// <param name="line">The line.</param>
    /// <param name="lang">Language code.</param>
    public static ImmutableArray<ReadToken> Why(string line, string lang) => LineReader.Why(line, lang);

    /// <summary>What each time, heat and operation of a step was taken from. Made only here, when somebody asks.</summary>
    /// <param name="step">The step as read, in its card or alone.</param>
    /// <param name="lang">Language code.</param>
    public static ImmutableArray<ReadToken> Why(Step step, string lang) => step is null ? throw new ArgumentNullException(nameof(step)) : StepWhy.Of(step, lang);

    /// <summary>Reads one step on its own.</summary>
    /// <param name="step">The step.</param>
    /// <param name="lang">Language code.</param>
    public static Step ReadStep(string step, string lang) => StepReader.Read(step, lang, new Span(0, step.Length, 1), "", 1);

    /// <summary>The other way of a step ("or 40 min in the oven") read as a step; null where it has none. Its minutes and heats are in no sum of the step.</summary>
    /// <param name="step">The step.</param>
    /// <param name="lang">Language code.</param>
    public static Step? ReadOtherWay(Step step, string lang)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.Alternative is { } other ? ReadStep(other, lang) : null;
    }

    /// <summary>The language a text is most likely in, by its small words.</summary>
    public static string LanguageOf(string text) => Tongue.Of(text);

    private static Parsed<Dish> Refuse(string code, string message, string hint) => new Parsed<Dish>.Failed([new Problem(code, 0, message, hint)]);
}
