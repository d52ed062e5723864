using Coulisse.Cards.Writing;

namespace Coulisse.Web.Desk;

/// <summary>Writes the chosen reading into the card: a sentence about the whole of it under its title, anything else in place of the words that were asked about.</summary>
internal static class Answering
{
    /// <returns>The new text; null when the words are no longer there.</returns>
    public static string? Write(string text, int line, string plain, string? asked)
        => asked is { Length: > 0 } ? AnswerOnCard.Write(text, line, asked, plain)
            : plain.EndsWith('.') && !plain.Contains('\n', StringComparison.Ordinal) ? AnswerOnCard.WriteSentence(text, plain) : null;
}
