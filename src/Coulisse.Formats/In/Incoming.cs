using Coulisse.Cards;

namespace Coulisse.Formats.In;

/// <summary>Whatever came in, as card text. Nothing is executed and nothing is fetched.</summary>
public static class Incoming
{
    /// <summary>Card text of a page, of recipe data, or of the text itself when it is neither.</summary>
    /// <param name="text">What was pasted or read.</param>
    /// <param name="name">File name, when there is one.</param>
    public static Parsed<CardText> ToCard(string text, string? name = null)
    {
        if (text.Length > CardText.MostCharacters)
        {
            return new Parsed<CardText>.Failed([new Problem("CRD002", 0, "The card is longer than 5 MB.", "Split it into cards of one dish each.")]);
        }

        if (text.AsSpan(0, Math.Min(text.Length, 1024)) is var start && (start.StartsWith("%PDF-") || start.StartsWith("{\\rtf")) && TextBytes.OtherKind(System.Text.Encoding.Latin1.GetBytes(start.ToString())) is Parsed<string>.Failed(var other))
        {
            return new Parsed<CardText>.Failed(other);
        }

        ReadOnlySpan<char> head = text.AsSpan().TrimStart("\uFEFF \t\r\n");
        if (head.Length > 0 && head[0] is '{' || head.Length > 1 && head[0] == '[' && head[1..].TrimStart() is ['{' or ']' or '[', ..])
        {
            return RecipeJson.Read(text).Match<Parsed<CardText>>(card => new Parsed<CardText>.Ok(new CardText(card, name)), problems => new Parsed<CardText>.Failed(problems));
        }

        return new Parsed<CardText>.Ok(new CardText(IsPage(head) ? RecipePage.Read(text) : text, name));
    }

    /// <summary>A page or a piece of one: opens with a tag, and holds closing tags of a page's blocks.</summary>
    private static bool IsPage(ReadOnlySpan<char> head) =>
        head.Length > 3 && head[0] == '<' && (char.IsAsciiLetter(head[1]) || head[1] == '!')
        && (head.Contains("</", StringComparison.Ordinal) || head.StartsWith("<!doctype", StringComparison.OrdinalIgnoreCase));
}
