using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;

namespace Coulisse.Kitchen.Formulas.Targets;

/// <summary>A figure to aim at.</summary>
/// <param name="Property">Of what.</param>
/// <param name="Value">Figure in the property's unit.</param>
/// <param name="Bound">At, at least or at most.</param>
public sealed partial record Target(MixtureProperty Property, double Value, Bound Bound)
{
    private static readonly string[] Most = ["at most", "no more than", "not more than", "up to", "under", "below", "max", "≤", "<=", "höchstens", "au plus", "como mucho", "al massimo"];
    private static readonly string[] Least = ["at least", "no less than", "not less than", "over", "above", "min", "≥", ">=", "mindestens", "au moins", "al menos", "almeno"];

    /// <summary>Reads a target as a person writes it: "18 % fat", "freezes at −3 °C", "salt at most 1.2 %".</summary>
    public static Parsed<Target> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string words = text.Normalize().Replace('−', '-').Replace('–', '-').ToLowerInvariant();
        Match number = Figure().Match(words);
        (MixtureProperty Property, string Word)[] named = [.. MixtureProperty.All.SelectMany(p => p.Words.Select(w => (p, w))).Where(x => Word(words, x.w)).OrderByDescending(x => x.w.Length)];
        if (named.Length == 0 || !number.Success || !double.TryParse(number.Value.Replace(',', '.').Replace(" ", "", StringComparison.Ordinal), NumberStyles.Float, CultureInfo.InvariantCulture, out double value))
        {
            return Refuse($"“{text}” is no target.", "Write a figure and what it is of, such as “18 % fat”, “freezes at −3 °C” or “salt at most 1.2 %”; it can be of: " + string.Join(", ", MixtureProperty.All.Select(p => p.Name)) + ".");
        }

        MixtureProperty property = named[0].Property;
        (double low, double high) = property.Name switch { "freezing point" => (-40, 0), "water activity" => (0.2, 1), "energy" => (0, 3700), _ => (0d, 100d) };
        if (!(value >= low && value <= high))
        {
            return Refuse(string.Create(CultureInfo.InvariantCulture, $"{value:0.###} {property.Unit} is no {property.Name}."), string.Create(CultureInfo.InvariantCulture, $"It lies between {low:0.##} and {high:0.##} {property.Unit}."));
        }

        Bound bound = Most.Any(m => words.Contains(m, StringComparison.Ordinal)) ? Bound.AtMost : Least.Any(l => words.Contains(l, StringComparison.Ordinal)) ? Bound.AtLeast : Bound.At;
        return new Parsed<Target>.Ok(new Target(property, value, bound));
    }

    /// <summary>How far a figure misses; 0 when it is met.</summary>
    public double Miss(double figure) => Bound switch
    {
        Bound.AtMost => Math.Max(0, figure - Value),
        Bound.AtLeast => Math.Max(0, Value - figure),
        _ => Math.Abs(figure - Value),
    };

    /// <summary>In words ("fat 18 %").</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture, $"{Property.Name}{(Bound == Bound.AtMost ? " at most" : Bound == Bound.AtLeast ? " at least" : "")} {Value:0.####}{(Property.Unit.Length > 0 ? " " + Property.Unit : "")}");

    private static bool Word(string text, string word)
    {
        for (int at = text.IndexOf(word, StringComparison.Ordinal); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.Ordinal))
        {
            int end = at + word.Length;
            if ((at == 0 || !char.IsLetter(text[at - 1])) && (end == text.Length || !char.IsLetter(text[end])))
            {
                return true;
            }
        }

        return false;
    }

    private static Parsed<Target>.Failed Refuse(string message, string hint) => new([new Problem("MIX003", 0, message, hint)]);

    [GeneratedRegex(@"-?\s?\d+(?:[.,]\d+)?")]
    private static partial Regex Figure();
}
