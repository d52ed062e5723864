using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;

namespace Coulisse.Cards;

/// <summary>Steps in another language as the chef wrote them down once: a file of pairs, the step as the card has it and under it, after "= ", its translation.</summary>
/// <remarks>A step is found by its words, so a step that was changed since has no translation any more. A translation that lacks a figure of its step is not taken: a wrong temperature in a language the chef does not read is worse than a step in the chef's own.</remarks>
public sealed partial record StepTranslations
{
    /// <summary>Language (BCP 47, "pl").</summary>
    public required string Language { get; init; }

    /// <summary>Translations by the step's words, folded.</summary>
    public ImmutableDictionary<string, string> Of { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Translations that were not taken, by the step's words, folded: written down again as they are, so that the chef mends them instead of beginning anew.</summary>
    public ImmutableDictionary<string, string> Refused { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>What was not taken, and why.</summary>
    public ImmutableArray<Problem> Problems { get; init; } = [];

    /// <summary>The translation of a step; null when none was stored for exactly these words.</summary>
    public string? Find(string text) => Of.GetValueOrDefault(Fold(text));

    /// <summary>What the chef wrote for a step, whether it was taken or not; null when nothing was written.</summary>
    public string? Written(string text) => Find(text) ?? Refused.GetValueOrDefault(Fold(text));

    /// <summary>The same with one more pair, or without it when the translation is empty.</summary>
    /// <param name="text">The step's words.</param>
    /// <param name="translation">Its translation as written; taken when it has every figure of the step.</param>
    public StepTranslations Set(string text, string translation)
    {
        ArgumentNullException.ThrowIfNull(translation);
        string key = Fold(text);
        string one = Blanks().Replace(translation, " ").Trim();
        StepTranslations without = this with { Of = Of.Remove(key), Refused = Refused.Remove(key) };
        return one.Length == 0 ? without
            : Lost(text, one).IsEmpty ? without with { Of = without.Of.Add(key, one) }
            : without with { Refused = without.Refused.Add(key, one) };
    }

    /// <summary>Reads a file of pairs.</summary>
    /// <param name="text">Lines: a step, under it its translation behind "= "; empty lines and lines that begin with # say nothing.</param>
    /// <param name="language">Language of the translations.</param>
    public static StepTranslations Read(string text, string language)
    {
        ArgumentNullException.ThrowIfNull(text);
        Dictionary<string, string> pairs = new(StringComparer.Ordinal);
        Dictionary<string, string> refused = new(StringComparer.Ordinal);
        List<Problem> problems = [];
        string? step = null;
        int number = 0;
        foreach (string raw in text.Split('\n'))
        {
            number++;
            string line = raw.Trim();
            if (line.Length == 0 || line.StartsWith('#'))
            {
                continue;
            }

            if (!line.StartsWith('='))
            {
                step = line;
                continue;
            }

            string translation = line[1..].Trim();
            if (step is null)
            {
                problems.Add(new("TRN001", number, "A translation without a step above it.", "The step as the card has it stands on the line above."));
            }
            else if (translation.Length > 0)
            {
                if (Lost(step, translation) is { Length: > 0 } lost)
                {
                    refused[Fold(step)] = translation;
                    problems.Add(new("TRN002", number, $"The translation lacks {string.Join(", ", lost)}, which the step has; it is not used.", "Every figure of the step, in figures."));
                }
                else
                {
                    pairs[Fold(step)] = translation;
                }
            }

            step = null;
        }

        return new StepTranslations { Language = language, Of = pairs.ToImmutableDictionary(StringComparer.Ordinal), Refused = refused.ToImmutableDictionary(StringComparer.Ordinal), Problems = [.. problems] };
    }

    /// <summary>Both together; where both have a step, the other's goes before.</summary>
    public StepTranslations With(StepTranslations other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return this with { Of = Of.SetItems(other.Of), Refused = Refused.SetItems(other.Refused), Problems = Problems.AddRange(other.Problems) };
    }

    /// <summary>A file to fill in: every step once, with the translation there is.</summary>
    /// <param name="title">What it is of.</param>
    /// <param name="steps">Steps in order.</param>
    public string Write(string title, IEnumerable<string> steps)
    {
        ArgumentNullException.ThrowIfNull(steps);
        StringBuilder b = new();
        b.Append("# ").Append(title.ReplaceLineEndings(" ")).Append('\n').Append("# Behind each = the step in ").Append(Language).Append(", with every figure of it. An empty one prints as it is, marked.\n");
        foreach (string step in steps.Select(s => Blanks().Replace(s, " ").Trim()).Where(s => s.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase))
        {
            b.Append('\n').Append(step).Append("\n= ").Append(Written(step)).Append('\n');
        }

        return b.ToString();
    }

    /// <summary>Pairs of a file whose step is none of those given, as they stand there, under a line that says so; empty when there are none.</summary>
    /// <param name="text">The file.</param>
    /// <param name="steps">Steps there are.</param>
    public static string Unused(string text, IEnumerable<string> steps)
    {
        ArgumentNullException.ThrowIfNull(text);
        HashSet<string> there = [.. steps.Select(Fold)];
        StringBuilder b = new();
        string step = "";
        foreach (string line in text.Split('\n').Select(l => l.Trim()))
        {
            if (line.StartsWith('=') && line.Length > 1 && step.Length > 0 && !there.Contains(Fold(step)))
            {
                b.Append('\n').Append(step).Append('\n').Append(line).Append('\n');
            }

            step = line.StartsWith('#') || line.StartsWith('=') ? "" : line.Length > 0 ? line : step;
        }

        return b.Length == 0 ? "" : "\n# Of steps that have changed since, not used:\n" + b;
    }

    /// <summary>Figures of a step that its translation lacks; a comma or a point, thin or no blanks within a figure do not matter.</summary>
    public static ImmutableArray<string> Lost(string step, string translation)
    {
        HashSet<string> there = [.. Figures().Matches(translation).Select(m => Bare(m.Value))];
        return [.. Figures().Matches(step).Select(m => m.Value).Where(f => !there.Contains(Bare(f))).Distinct()];
    }

    // "1,346", "1.346", "1 346" and "1346" are one figure, "82.0" and "82,0" and "82" too; "8.2" and "82" are not.
    private static string Bare(string figure)
    {
        string plain = string.Concat(figure.Where(c => !char.IsWhiteSpace(c))).Replace(',', '.');
        string[] parts = plain.Split('.');
        return parts.Length > 1 && parts.Skip(1).All(p => p.Length == 3) ? string.Concat(parts)
            : parts.Length == 2 && parts[1].Trim('0').Length == 0 ? parts[0] : plain;
    }

    private static string Fold(string text) => Blanks().Replace(text, " ").Trim().ToUpperInvariant();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex(@"[0-9]{1,3}([ \u00A0\u202F][0-9]{3})+([.,][0-9]+)?\b|[0-9]+([.,][0-9]+)*|[½¼¾⅓⅔⅛]", RegexOptions.ExplicitCapture)]
    private static partial Regex Figures();
}
