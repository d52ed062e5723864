using System.Text.RegularExpressions;

namespace Coulisse.Views.Papers;

/// <summary>The aside in which a card says whose hands it takes for how long ("(hands 50 min)"). It speaks of the card's batch; the small batch for the stage has minutes of its own on the sheet, and two times for one task are one too many.</summary>
public static partial class HandsAside
{
    /// <summary>A step without the aside.</summary>
    public static string Without(string step) => Aside().Replace(step, "").Trim();

    /// <summary>The translation of a step without what stands for the aside: the bracket with its figure.</summary>
    public static string Without(string step, string translation)
    {
        foreach (Match aside in Aside().Matches(step))
        {
            string figure = Figure().Match(aside.Value).Value;
            translation = Bracket().Replace(translation, m => figure.Length > 0 && Figure().Matches(m.Value).Any(f => f.Value == figure) ? "" : m.Value);
        }

        return translation.Trim();
    }

    // As the card is read: a bracket that begins with hands, or that counts people, with minutes in it.
    [GeneratedRegex(@"\s*\((?:hands\b|(?:\w+ people\b))[^()]*\d[^()]*\)", RegexOptions.IgnoreCase)]
    private static partial Regex Aside();

    [GeneratedRegex(@"\s*[(（][^()（）]*[)）]")]
    private static partial Regex Bracket();

    [GeneratedRegex(@"\d+([.,]\d+)?", RegexOptions.ExplicitCapture)]
    private static partial Regex Figure();
}
