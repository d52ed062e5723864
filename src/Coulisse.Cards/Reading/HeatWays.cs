using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"45 min at 180 °C or 2 h at 120 °C", "hold 2 min, or 72 °C for 10 min", "45 min or 15 min in the pressure cooker": two ways of one work, each with its own heat or vessel. Added up the plan would cook twice.</summary>
internal static class HeatWays
{
    private const int Reach = 24;
    private static readonly string[] Ats = ["at", "à", "bei", "a", "in", "im", "en"];
    private static readonly string[] Fors = ["for", "pendant", "für", "durante", "per", "hold"];
    private static readonly string[] Vessels = ["in the pressure cooker", "in a pressure cooker", "under pressure", "in the microwave", "in a microwave", "in the air fryer", "in an air fryer", "à l'autocuiseur", "en cocotte-minute", "au micro-ondes", "im Schnellkochtopf", "im Dampfkochtopf", "in der Mikrowelle", "en olla a presión", "en la olla a presión", "en olla exprés", "en el microondas", "in pentola a pressione", "nella pentola a pressione", "nel microonde"];

    /// <summary>True where the figure behind "or" opens such another way.</summary>
    /// <param name="s">The step.</param>
    /// <param name="at">Where "or" stands.</param>
    /// <param name="word">Where the figure behind it stands.</param>
    /// <param name="lang">Language.</param>
    public static bool Other(string s, int at, int word, string lang)
    {
        if (!char.IsAsciiDigit(s[word]))
        {
            return false;
        }

        if (Clock.At(s, word, lang) is { } time)
        {
            int behind = Places.Skip(s, time.End);
            return Array.Exists(Vessels, v => Places.WordAt(s, behind, v)) && Timed(s, at, lang) || Leads(s, behind, Ats) is > 0 and var heat && Heat(s, heat) > 0 && Heated(s, at);
        }

        return Heat(s, word) is > 0 and var end && Leads(s, Places.Skip(s, end), Fors) is > 0 and var next && char.IsAsciiDigit(s[next]) && Clock.At(s, next, lang) is not null && Timed(s, at, lang) && Heated(s, at);
    }

    /// <summary>The place of a figure behind one of the words; 0 where none leads to one.</summary>
    private static int Leads(string s, int i, string[] words)
    {
        foreach (string w in words)
        {
            if (Places.WordAt(s, i, w) && Places.Skip(s, i + w.Length) is var figure && figure < s.Length && char.IsAsciiDigit(s[figure]))
            {
                return figure;
            }
        }

        return 0;
    }

    /// <summary>The place behind a heat that is no cold; 0 where none begins.</summary>
    private static int Heat(string s, int i)
    {
        int end = i;
        while (end < s.Length && (char.IsAsciiDigit(s[end]) || s[end] is '-' or '.'))
        {
            end++;
        }

        int sign = DegreeSigns.Degree(s, Places.Skip(s, end));
        if (end - i < 2 || sign <= Places.Skip(s, end))
        {
            return 0;
        }

        return sign < s.Length && s[sign] is 'C' or 'F' ? sign + 1 : sign + 1 < s.Length && s[sign] == ' ' && s[sign + 1] is 'C' or 'F' ? sign + 2 : sign;
    }

    /// <summary>True where a heat stands in the sentence before the word: there are two of them.</summary>
    private static bool Heated(string s, int at) => s.AsSpan(Sentences.Begin(s, at), at - Sentences.Begin(s, at)).Contains('°');

    /// <summary>True where a time is the last figure before the word: "2 min, or", "45 min at a simmer or".</summary>
    private static bool Timed(string s, int at, string lang)
    {
        int figure = at - 1;
        while (figure > 0 && at - figure < Reach && !char.IsAsciiDigit(s[figure]))
        {
            figure--;
        }

        while (figure > 0 && char.IsAsciiDigit(s[figure - 1]))
        {
            figure--;
        }

        return figure >= 0 && char.IsAsciiDigit(s[figure]) && Clock.At(s, figure, lang) is not null;
    }
}
