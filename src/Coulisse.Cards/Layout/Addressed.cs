using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"you then fold in the whites", "ensuite vous incorporez …", "dann hebst du …": words that speak to the cook before the verb of a step, which is as much an order as the verb alone. "We bake these on Fridays" tells and orders nothing.</summary>
internal static class Addressed
{
    private const int Most = 4;
    private static readonly WordSet Words = new(anyCase: true,
        "you", "then", "now", "next", "finally", "after", "that", "first", "just", "and",
        "vous", "tu", "on", "puis", "ensuite", "enfin", "maintenant", "d'abord", "et", "alors",
        "du", "man", "sie", "dann", "nun", "jetzt", "danach", "zuletzt", "zuerst", "und", "anschließend", "schließlich",
        "usted", "tú", "luego", "después", "ahora", "primero", "y", "se", "entonces",
        "poi", "dopo", "ora", "infine", "quindi", "prima", "e", "si", "adesso");

    /// <summary>Place behind such words; 0 where the line opens with none.</summary>
    public static int Behind(string s)
    {
        int i = 0;
        for (int k = 0; k < Most && i < s.Length && char.IsLetter(s[i]); k++)
        {
            int end = Places.WordEnd(s, i);
            if (end - i > 12 || !Words.Contains(s.AsSpan(i, end - i)))
            {
                break;
            }

            i = Places.Skip(s, end < s.Length && s[end] == ',' ? end + 1 : end);
        }

        return i;
    }

    /// <summary>"vous incorporez les blancs", "Ajoutez la crème", "Dann hebst du …", "Heben Sie …": a verb in the second person right at the front or behind such words. Lists of verbs hold their first form only.</summary>
    public static bool Orders(string s, string lang)
    {
        if (lang is not ("fr" or "de") || s.Length < Fewest || !char.IsLetter(s[0]))
        {
            return false;
        }

        int at = Behind(s);
        int end = Places.WordEnd(s, at);
        int next = Places.Skip(s, end);
        if (end - at < 4 || next >= s.Length || !char.IsLetter(s[next]))
        {
            return false;
        }

        ReadOnlySpan<char> verb = s.AsSpan(at, end - at);
        bool person = lang == "fr" ? verb.EndsWith("ez", StringComparison.Ordinal)
            : verb.EndsWith("st", StringComparison.Ordinal) && at > 0 && (Du(s.AsSpan(0, at)) || Places.WordAt(s, next, "du")) || verb.EndsWith("en", StringComparison.Ordinal) && s.AsSpan(next).StartsWith("Sie ", StringComparison.Ordinal);
        return person && !Idle.Contains(verb);
    }

    private static bool Du(ReadOnlySpan<char> lead) => Places.EndsIn(lead.TrimEnd(), "du");

    private const int Fewest = 16;

    // Verbs of having, being and wishing order nothing, and some words only end so.
    private static readonly WordSet Idle = new(anyCase: true, "assez", "chez", "avez", "aurez", "serez", "pouvez", "devez", "voulez", "allez", "trouverez", "savez", "obtenez", "aimez", "souhaitez", "préférez", "pourrez", "devrez", "kannst", "hast", "musst", "willst", "bist", "sollst", "solltest", "brauchst", "möchtest", "darfst", "wirst", "magst", "können", "haben", "müssen", "wollen", "sind", "sollen", "sollten", "brauchen", "möchten", "dürfen", "werden", "mögen");
}
