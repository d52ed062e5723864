using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"1 cup minus 1 tablespoon milk": an amount, and another to take off it. The food keeps the first, and what is left of it is asked. "1 less ripe banana" takes nothing off.</summary>
internal static class Less
{
    private static readonly string[] English = ["minus", "less"];
    private static readonly string[] French = ["moins"];
    private static readonly string[] German = ["minus", "weniger"];
    private static readonly string[] Spanish = ["menos"];
    private static readonly string[] Italian = ["meno"];

    /// <summary>The line without what is taken off.</summary>
    /// <param name="s">The line.</param>
    /// <param name="lang">Language code.</param>
    /// <param name="off">The amount and what is taken off it, as written; null when nothing is.</param>
    public static string Take(string s, string lang, out string? off)
    {
        off = null;
        if (s.Length < 12 || !char.IsAsciiDigit(s[0]) || lang == "ja")
        {
            return s;
        }

        foreach (string w in lang switch { "fr" => French, "de" => German, "es" => Spanish, "it" => Italian, _ => English })
        {
            int at = Places.FindWord(s, w, 2);
            if (at > 0 && Amounts.At(s, 0, lang) is { Unit: not null } m && Places.Skip(s, m.End) == at && Amounts.At(s, Places.Skip(s, at + w.Length), lang) is { Unit: not null } second && PartReader.Of(s, Places.Skip(s, second.End), lang) is var food && food < s.Length && char.IsLetter(s[food]))
            {
                off = s[..second.End].Trim();
                return $"{s[..m.End].Trim()} {s[food..]}";
            }
        }

        return s;
    }
}
