using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Cards.Reading;

namespace Coulisse.Web.Desk;

/// <summary>Writes the chosen reading into the card so that nothing else the line says is lost: not its bullet, its amount, nor the words behind the food.</summary>
internal static partial class Answering
{
    /// <returns>The new text; null when there is no such line.</returns>
    public static string? Write(string text, int line, string plain)
    {
        List<string> lines = [.. text.Split('\n')];
        if (line < 1 || line > lines.Count || plain.Contains('\n', StringComparison.Ordinal))
        {
            return null;
        }

        if (plain.EndsWith('.'))
        {
            // a whole sentence speaks of the card, not of the line: it goes under the title
            int title = Math.Max(0, lines.FindIndex(l => l.Trim().Length > 0));
            lines.InsertRange(title + 1, ["", plain]);
            return string.Join('\n', lines);
        }

        string bullet = Bullet().Match(lines[line - 1]).Value;
        string answer = bullet.Length > 0 && plain.StartsWith(bullet.Trim(), StringComparison.Ordinal) ? plain[bullet.Trim().Length..].TrimStart() : plain;
        lines[line - 1] = bullet + Body(lines[line - 1][bullet.Length..], answer, CardReader.LanguageOf(text));
        return string.Join('\n', lines);
    }

    /// <summary>The answer in its line: a word takes the food's place, an amount with its food takes the place of both, the rest stays.</summary>
    private static string Body(string body, string answer, string language)
    {
        if (answer.Contains(body.Trim(), StringComparison.OrdinalIgnoreCase))
        {
            return answer;
        }

        FoodAmount? food = CardReader.ReadLine(body, language).Foods.FirstOrDefault();
        int at = food is null ? -1 : body.IndexOf(food.Food, StringComparison.OrdinalIgnoreCase);
        string rest = at < 0 ? "" : body[(at + food!.Food.Length)..];
        if (Amount().IsMatch(answer))
        {
            // no food found to tell the amount from the rest: what was written stays behind the answer, as a note
            return at < 0 && Amount().IsMatch(body) ? $"{answer} (was: {body.Trim()})" : answer + rest;
        }

        if (at >= 0)
        {
            return body[..at] + answer + rest;
        }

        return Amount().IsMatch(body) ? $"{body.TrimEnd()}, {answer}" : answer;
    }

    [GeneratedRegex(@"^\s*(?:[-*+•]\s+|\d{1,3}[.)]\s+)?")]
    private static partial Regex Bullet();

    [GeneratedRegex(@"[\p{Nd}\p{No}]")]
    private static partial Regex Amount();
}
