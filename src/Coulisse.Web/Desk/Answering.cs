using System.Text.RegularExpressions;

namespace Coulisse.Web.Desk;

/// <summary>Writes the chosen reading into the card: the line keeps its bullet or number, its words become the plain ones.</summary>
internal static partial class Answering
{
    /// <returns>The new text; null when there is no such line.</returns>
    public static string? Write(string text, int line, string plain)
    {
        string[] lines = text.Split('\n');
        if (line < 1 || line > lines.Length || plain.Contains('\n', StringComparison.Ordinal))
        {
            return null;
        }

        string bullet = Bullet().Match(lines[line - 1]).Value;
        lines[line - 1] = bullet.Length > 0 && plain.StartsWith(bullet.Trim(), StringComparison.Ordinal) ? plain : bullet + plain;
        return string.Join('\n', lines);
    }

    [GeneratedRegex(@"^\s*(?:[-*+•]\s+|\d{1,3}[.)]\s+)?")]
    private static partial Regex Bullet();
}
