using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"zest and juice of 2 limes", "white of 1 egg", "leaves from 4 sprigs of tarragon": the part is how it is prepared, the whole is what is counted.</summary>
internal static class PartOf
{
    /// <summary>Takes the part off; the line itself when it names none.</summary>
    public static string Take(string s, string lang, Draft d)
    {
        s = lang == "en" && s.StartsWith("the ", StringComparison.OrdinalIgnoreCase) && s.Contains(" from ", StringComparison.Ordinal) ? s[4..] : s;
        s = lang == "en" && s.StartsWith("the ", StringComparison.OrdinalIgnoreCase) && Lexicon.Longest("part", s, 4, 5, lang, out int named) is not null && PartReader.Of(s, Places.Skip(s, named), lang) > Places.Skip(s, named) ? s[4..] : s;
        if (Lexicon.Longest("part", s, 0, 5, lang, out int end) is not { } part)
        {
            return s;
        }

        int i = Places.Skip(s, end);
        while (lang != "en" && Lexicon.Longest("prep", s, i, 2, lang, out int done) is not null)
        {
            // "la scorza grattugiata di un limone"
            part = s[..done];
            i = Places.Skip(s, done);
        }

        int of = lang == "en" && Places.WordAt(s, i, "from") ? Places.Skip(s, i + 4) : PartReader.Of(s, i, lang);
        // "juice ½ lemon", "Mark 1 Vanilleschote": the figure of the whole right behind the part
        bool bare = of == i && i < s.Length && (char.IsAsciiDigit(s[i]) || Numbers.Vulgar(s[i]) > 0) && Amounts.At(s, i, lang) is { Unit: null } whole && Places.Skip(s, whole.End) + 2 < s.Length && char.IsLetter(s[Places.Skip(s, whole.End)]);
        if (of == i && !bare && !(lang == "de" && (Places.WordAt(s, i, "einer") || Places.WordAt(s, i, "eines"))))
        {
            return s;
        }

        if (Amounts.At(s, of, lang) is { } m && m.Unit is null or { Kind: "count" })
        {
            d.Prepare(part);
            return s[of..];
        }

        return s;
    }
}
