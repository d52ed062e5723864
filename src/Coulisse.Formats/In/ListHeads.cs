using Coulisse.Cards.Reading;
using Coulisse.Matter.Foods;

namespace Coulisse.Formats.In;

/// <summary>
/// Names of parts that stand in the list of foods itself, as recipe data has no other place for them: "DRIZZLE", "PARA LA TARTA", "For the sauce:", a name that a section of the steps bears, or that a step is labelled with.
/// A name stands over an amount; "SALT" in capitals stays a food where no other line shows that capitals head.
/// </summary>
internal sealed class ListHeads
{
    private const int Longest = 40;
    private const double Sure = 0.8;
    private const int LongestToldOut = 80;
    private const int MostWords = 5;
    private const int FewestLower = 3;

    private static readonly string[] Openers =
    [
        "for the ", "for your ", "pour la ", "pour le ", "pour les ", "pour l'", "pour l’", "für den ", "für die ", "für das ", "fürs ", "zum ", "zur ",
        "para la ", "para el ", "para los ", "para las ", "per la ", "per il ", "per lo ", "per l'", "per l’", "per i ", "per gli ", "per le ",
    ];

    private readonly List<string> _lines;
    private readonly HashSet<string> _sections;
    private readonly HashSet<string> _labels;
    private readonly bool _headed;
    private readonly bool _lower;
    private readonly bool _capitals;
    private readonly string _lang;

    /// <summary>Looks at the list and at the steps once.</summary>
    /// <param name="lines">The lines of the list.</param>
    /// <param name="sections">Names of the sections of the steps.</param>
    /// <param name="steps">All steps.</param>
    public ListHeads(List<string> lines, IEnumerable<string> sections, IEnumerable<string> steps)
    {
        _lines = lines;
        _sections = new(sections.Where(s => s.Length > 0), StringComparer.OrdinalIgnoreCase);
        _labels = new(steps.Select(s => s.IndexOfAny([':', '：']) is > 1 and < Longest and var colon ? s[..colon].Trim() : "").Where(s => s.Length > 0), StringComparer.OrdinalIgnoreCase);
        _headed = lines.Count > 0 && _sections.Contains(lines[0]);
        _lower = lines.Where(l => l.Any(char.IsLower)).Take(FewestLower).Count() == FewestLower;
        _capitals = _lower && Enumerable.Range(0, lines.Count).Where(i => Capitals(lines[i]) && Over(i)).Take(2).Count() == 2;
        _lang = CardReader.LanguageOf(string.Join('\n', lines.Take(200)));
    }

    /// <summary>True for a line that names what stands under it.</summary>
    public bool At(int i)
    {
        string line = _lines[i];
        if (line[^1] == ':' && line.Length < LongestToldOut || _sections.Contains(line))
        {
            return true;
        }

        if (_headed && Bare(line))
        {
            // One name of a section in the list shows that the list has such names: others stand beside it.
            return true;
        }

        if (line.Length > Longest || line.AsSpan().ContainsAnyInRange('0', '9') || line.Contains(',', StringComparison.Ordinal) || line.Count(c => c == ' ') >= MostWords || !Over(i))
        {
            return false;
        }

        return _labels.Contains(line) || Array.Exists(Openers, o => line.StartsWith(o, StringComparison.OrdinalIgnoreCase)) || _lower && Capitals(line) && (_capitals || !Known(line));
    }

    /// <summary>True when a section of the steps is that of a part: "Tarta" of "PARA LA TARTA", "Lemon drizzle" of "For the lemon drizzle".</summary>
    public static bool Same(string part, string section)
    {
        if (section.Length == 0 || part.Length == 0)
        {
            return false;
        }

        string? opener = Array.Find(Openers, o => part.StartsWith(o, StringComparison.OrdinalIgnoreCase));
        string? also = Array.Find(Openers, o => section.StartsWith(o, StringComparison.OrdinalIgnoreCase));
        return part.AsSpan(opener?.Length ?? 0).Trim().Equals(section.AsSpan(also?.Length ?? 0).Trim(), StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>An amount under the line.</summary>
    private bool Over(int i) => i + 1 < _lines.Count && char.IsNumber(_lines[i + 1][0]);

    private bool Known(string line) => line.All(c => !char.IsSurrogate(c)) && FoodTable.Default.Match(line.ToLowerInvariant(), _lang) is { Confidence: >= Sure };

    private static bool Capitals(string line) => line.Length is > 2 and <= Longest && line.Any(char.IsUpper) && !line.Any(char.IsLower);

    /// <summary>A word or two without an amount, as the names of sections in the list are.</summary>
    private static bool Bare(string line) => line.Length < 30 && char.IsUpper(line[0]) && !line.Contains(',', StringComparison.Ordinal) && !line.AsSpan().ContainsAnyInRange('0', '9') && line.Count(c => c == ' ') < 2 && !line.StartsWith("Salt", StringComparison.OrdinalIgnoreCase);
}
