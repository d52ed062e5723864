using System.Text.RegularExpressions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Matter.Measures;

namespace Coulisse.Kitchen.Safety;

/// <summary>Whose code of practice an occasion is judged by, and whether its sheet says so.</summary>
/// <param name="Code">au, nz, uk, eu or us.</param>
/// <param name="Stated">False when the sheet is silent and the usual code was taken.</param>
/// <param name="Because">What it rests on, in words.</param>
public sealed partial record CodeOfPractice(string Code, bool Stated, string Because)
{
    /// <summary>Taken where nothing is said.</summary>
    public const string Usual = "au";

    /// <summary>Reads the code from the notes of the sheet ("Food is handled by the code of practice of New Zealand."); any sentence that names a code of practice and a place counts.</summary>
    /// <param name="occasion">The occasion.</param>
    public static CodeOfPractice Of(Occasion occasion)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        foreach (string note in occasion.Sheet.Notes.Select(n => n.Text).Where(t => Names().IsMatch(t)))
        {
            if (Place(note) is { } code)
            {
                return new CodeOfPractice(code, true, $"the sheet says “{note.Trim()}”");
            }
        }

        return new CodeOfPractice(Usual, false, $"the sheet names no code of practice, so {Usual} was taken");
    }

    private static string? Place(string sentence)
    {
        foreach (Match word in Words().Matches(sentence))
        {
            string w = word.Value.ToLowerInvariant();
            if (w is "eu" or "europe" or "european" || PracticeCode.Find(w) is not null)
            {
                return w.StartsWith("eu", StringComparison.Ordinal) ? "eu" : w;
            }

            if (Household.SystemOfPlace(w) is { } place && PracticeCode.Find(place) is not null)
            {
                return place;
            }
        }

        return null;
    }

    [GeneratedRegex(@"\b(code of practice|food code|food law|food safety code)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Names();

    // "us" and "New Zealand": a capital or two, so that the word "us" is no country.
    [GeneratedRegex(@"\b\p{Lu}\w*\b")]
    private static partial Regex Words();
}
