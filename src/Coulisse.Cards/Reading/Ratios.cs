using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Foods told by what they are to each other: "equal parts soy sauce and mirin", "1 part sugar to 2 parts water", "1 onion studded with 6 cloves". Read as one food all but the first would be lost.</summary>
internal static class Ratios
{
    private const int Longest = 120;
    private static readonly string[] Same = ["equal parts of", "equal parts", "équivalents de", "gleiche Teile", "partes iguales de", "parti uguali di"];
    private static readonly string[] Stuck = ["studded with", "stuck with", "spiked with", "piqué de", "piquée de", "cloué de", "gespickt mit", "mechada con", "mechado con", "claveteada con", "steccata con"];
    private static readonly string[] Tos = ["to", "pour", "zu", "auf", "por", "per"];
    private static readonly Beginnings FirstOfSame = new(Same);
    private static readonly Beginnings FirstOfStuck = new(Stuck);

    /// <summary>One line for each food; null when the line tells none by another.</summary>
    /// <param name="s">The line.</param>
    /// <param name="lang">Language code.</param>
    /// <param name="whole">What holds for all of them.</param>
    public static List<string>? Parts(string s, string lang, ref string? whole)
    {
        if (s.Length is < 10 or > Longest || lang == "ja")
        {
            return null;
        }

        foreach (string w in FirstOfSame.May(s, 0) ? Same : [])
        {
            if (Places.WordAt(s, 0, w) && w.Length + 3 < s.Length)
            {
                string[] names = s[(w.Length + 1)..].Replace(Conjunction.Spaced(lang), ", ", StringComparison.OrdinalIgnoreCase).Replace(" & ", ", ", StringComparison.Ordinal).Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
                whole = names.Length > 1 && Array.Exists(names, n => FoodIds.Match(n, lang) is not null) ? s[..w.Length] : null;
                return whole is null ? null : [.. names];
            }
        }

        return Shares(s, lang) ?? Studded(s, lang);
    }

    /// <summary>"1 part sugar to 2 parts water".</summary>
    private static List<string>? Shares(string s, string lang)
    {
        if (!char.IsAsciiDigit(s[0]) || Amounts.At(s, 0, lang) is not { Unit.Unit: "part" } first)
        {
            return null;
        }

        foreach (string to in Tos)
        {
            int at = Places.FindWord(s, to, first.End);
            if (at > first.End + 2 && Places.Skip(s, at + to.Length) is var behind && behind < s.Length && char.IsAsciiDigit(s[behind]) && Amounts.At(s, behind, lang) is { Unit: null or { Unit: "part" } } second && second.End + 2 < s.Length)
            {
                // "1 part sugar to 2 water": the word is told once
                return [s[..at].TrimEnd(), second.Unit is null ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{second.Number.Min} parts {s[second.End..].Trim()}") : s[behind..]];
            }
        }

        return null;
    }

    /// <summary>"1 onion studded with 6 cloves".</summary>
    private static List<string>? Studded(string s, string lang)
    {
        foreach (string with in FirstOfStuck.MayIn(s) ? Stuck : [])
        {
            int at = Places.FindWord(s, with, 2);
            int behind = at < 0 ? s.Length : Places.Skip(s, at + with.Length);
            if (at > 3 && behind < s.Length && char.IsAsciiDigit(s[behind]) && Amounts.At(s, behind, lang) is { Unit: null or { Kind: not "length" } } m && m.Number.End + 2 < s.Length)
            {
                return [s[..at].TrimEnd(' ', ','), s[behind..]];
            }
        }

        return null;
    }
}
