using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Quantities;

namespace Coulisse.Flows.Fits;

/// <summary>The values of a fit's fields, read and within their range.</summary>
public sealed class FitValues
{
    private readonly ImmutableDictionary<string, string> _texts;

    private FitValues(ImmutableDictionary<string, string> texts) => _texts = texts;

    /// <summary>Reads what was given, or says of every field what is wrong with it.</summary>
    /// <param name="kind">The fit.</param>
    /// <param name="given">Texts by field name; fields that are missing take their default.</param>
    public static Parsed<FitValues> Read(FitKind kind, IReadOnlyDictionary<string, string> given)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(given);
        ImmutableDictionary<string, string>.Builder texts = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        List<Problem> problems = [];
        foreach (FitField field in kind.Fields)
        {
            string text = given.TryGetValue(field.Name, out string? typed) && typed.Trim().Length > 0 ? typed.Trim() : field.Default;
            if (text.Length == 0 ? field.Needed : Wrong(field, text))
            {
                problems.Add(new("FIT001", 0, text.Length == 0 ? $"{field.Label}: nothing is given." : $"{field.Label}: “{text}” cannot be read.", Right(field)));
            }
            else if (text.Length > 0)
            {
                texts[field.Name] = text;
            }
        }

        return problems.Count > 0 ? new Parsed<FitValues>.Failed([.. problems]) : new Parsed<FitValues>.Ok(new FitValues(texts.ToImmutable()));
    }

    /// <summary>Something was given for the field, or it has a default.</summary>
    public bool Has(string field) => _texts.ContainsKey(field);

    /// <summary>The text of a field; empty when none was given.</summary>
    public string Text(string field) => _texts.GetValueOrDefault(field, "");

    /// <summary>True when a flag is set.</summary>
    public bool Flag(string field) => Text(field) is "true" or "on" or "yes" or "1";

    /// <summary>A number; 0 when none was given.</summary>
    public double Number(string field) => Has(field) ? Read(Text(field)) : 0;

    /// <summary>A whole number; null when none was given.</summary>
    public int? Count(string field) => Has(field) ? (int)Number(field) : null;

    /// <summary>A length; 0 when none was given.</summary>
    public Length Mm(string field) => Length.FromMillimetres(Number(field));

    /// <summary>Lengths joined by x; the last stands for those that are missing.</summary>
    public Length Mm(string field, int at)
    {
        double[] sizes = Sizes(Text(field));
        return Length.FromMillimetres(sizes[Math.Min(at, sizes.Length - 1)]);
    }

    /// <summary>How many lengths were given.</summary>
    public int Lengths(string field) => Has(field) ? Sizes(Text(field)).Length : 0;

    /// <summary>A density, g/mL.</summary>
    public Density Density(string field = "density") => Matter.Quantities.Density.FromGramsPerMillilitre(Number(field));

    /// <summary>A share from per cent.</summary>
    public Fraction Share(string field) => Fraction.FromPercent(Number(field));

    /// <summary>"330 x 220 × 18 mm" as numbers; NaN where one cannot be read.</summary>
    public static double[] Sizes(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return [.. text.ToLowerInvariant().Replace("mm", "", StringComparison.Ordinal).Split('x', '×', '*').Select(p => Read(p))];
    }

    private static double Read(string text) => double.TryParse(text.ToLowerInvariant().Replace("mm", "", StringComparison.Ordinal).Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double v) ? v : double.NaN;

    private static bool Wrong(FitField field, string text) => field.Input switch
    {
        FitInput.Sizes => Sizes(text) is var s && (s.Any(x => !(x is >= 0.1 and <= 10_000)) || s.Length < field.Numbers.Least || s.Length > field.Numbers.Most),
        FitInput.Millimetres => !(Read(text) is >= 0.01 and <= 10_000),
        FitInput.Room => !(Read(text) is >= 0 and <= 10_000),
        FitInput.Number => !(Read(text) is > 0 and <= 1e7),
        FitInput.Percent => !(Read(text) is >= 0 and < 100),
        FitInput.Count => !(Read(text) is >= 1 and <= 1e6 and var n && n == Math.Floor(n)),
        FitInput.Spare => !(Read(text) is >= 0 and <= 1e6 and var n && n == Math.Floor(n)),
        FitInput.Flag => text is not ("true" or "on" or "yes" or "1" or "false" or "off" or "no" or "0"),
        FitInput.Word => !field.Words.Contains(text, StringComparer.Ordinal),
        _ => false,
    };

    private static string Right(FitField field) => field.Input switch
    {
        FitInput.Sizes => FormattableString.Invariant($"Write {(field.Numbers.Least == field.Numbers.Most ? "" : FormattableString.Invariant($"{field.Numbers.Least} to "))}{field.Numbers.Most} in millimetres, such as {field.Example}."),
        FitInput.Millimetres => "Write millimetres, more than 0.",
        FitInput.Room => "Write millimetres, 0 or more.",
        FitInput.Number => "Write a number more than 0.",
        FitInput.Percent => "Write per cent, 0 to under 100.",
        FitInput.Count => "Write a whole number, 1 or more.",
        FitInput.Spare => "Write a whole number, 0 or more.",
        FitInput.Word => $"One of {string.Join(", ", field.Words)}.",
        FitInput.Tin => $"In mm: {TinText.Ways}.",
        _ => "Yes or no.",
    };
}
