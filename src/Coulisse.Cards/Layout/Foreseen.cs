using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>What the lines of a long card look like each on its own, worked out on whatever cores there are before the card is walked line by line.</summary>
internal sealed class Foreseen
{
    /// <summary>A card of fewer lines is walked before other cores would have begun.</summary>
    private const int Fewest = 4_000;
    private const int Stretch = 512;
    private readonly string _lang;
    private readonly Dictionary<string, (bool Amounted, bool? Statement)> _looks;

    private Foreseen(string lang, int lines)
    {
        _lang = lang;
        _looks = new(lines, StringComparer.Ordinal);
    }

    /// <summary>The looks of the lines; null for a short card.</summary>
    public static Foreseen? Of(List<RawLine> lines, string lang)
    {
        if (lines.Count < Fewest)
        {
            return null;
        }

        // A line that comes again looks as it did before.
        string[] once = [.. lines.Select(l => l.Text).Distinct(StringComparer.Ordinal)];
        (string? Body, bool Amounted, bool? Statement)[] seen = new (string?, bool, bool?)[once.Length];
        Parallel.For(0, (once.Length + Stretch - 1) / Stretch, stretch =>
        {
            for (int i = stretch * Stretch; i < Math.Min(once.Length, (stretch + 1) * Stretch); i++)
            {
                seen[i] = One(once[i], lang);
            }
        });
        Foreseen result = new(lang, once.Length);
        foreach ((string? body, bool amounted, bool? statement) in seen)
        {
            _ = body is not null && result._looks.TryAdd(body, (amounted, statement));
        }

        return result;
    }

    /// <summary>Whether an amount stands at an end of the line; null for a line nobody looked at before.</summary>
    public bool? Amounted(string body, string lang) => lang == _lang && _looks.TryGetValue(body, out (bool Amounted, bool? Statement) look) ? look.Amounted : null;

    /// <summary>Whether the line tells of yields, keeping or the plate; null for a line nobody looked at before.</summary>
    public bool? Statement(string body, string lang) => lang == _lang && _looks.TryGetValue(body, out (bool Amounted, bool? Statement) look) ? look.Statement : null;

    /// <summary>An item is asked for its amount alone, a bare line for both; of headings, rows and numbered steps neither is sure to be asked.</summary>
    private static (string? Body, bool Amounted, bool? Statement) One(string s, string lang)
    {
        if (s[0] is '#' or '|' || Reading.Marks.ListNumber(s, 0) > 0)
        {
            return default;
        }

        bool bullet = Looks.Bullet(s);
        string body = bullet ? Reading.Marks.Strip(Folding.Line(s)) : Folding.Line(s);
        return body.Length == 0 ? default : (body, Looks.Amounted(body, lang), bullet ? null : Looks.Statement(body, lang));
    }
}
