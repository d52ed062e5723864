using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Brine legs 4 h, breasts 2 h, whole birds 12 h": a time for each cut or size, of which one is waited and which do not add up. The first is read, the others are kept as the other way.</summary>
internal static class OtherCuts
{
    private const int MostLabel = 28;
    private const int MostCommas = 8;
    private static readonly WordList First = new("legs", "leg", "breasts", "breast", "thighs", "thigh", "wings", "drumsticks", "birds", "crowns", "crown", "loins", "shoulders", "bellies", "fillets", "racks", "small", "rare", "thin", "cuisses", "cuisse", "suprêmes", "ailes", "filets", "petits", "petites", "Keulen", "Keule", "Brüste", "Schenkel", "Flügel", "kleine", "dünne", "muslos", "pechugas", "alas", "pequeños", "pequeñas", "cosce", "petti", "piccoli", "piccole");
    private static readonly WordList Next = new("legs", "leg", "breasts", "breast", "thighs", "thigh", "wings", "drumsticks", "birds", "bird", "whole", "crowns", "crown", "loins", "shoulders", "bellies", "fillets", "racks", "medium", "large", "small", "thick", "thin", "well done", "cuisses", "cuisse", "suprêmes", "ailes", "filets", "gros", "grosses", "entières", "entiers", "Keulen", "Keule", "Brüste", "Schenkel", "Flügel", "ganze", "große", "dicke", "muslos", "pechugas", "alas", "enteros", "grandes", "cosce", "petti", "ali", "interi", "grandi");
    private static readonly WordList Sequel = new("then", "side", "sides", "skin", "more", "another", "add", "puis", "dann", "luego", "poi", "heat", "speed", "shelf", "pan");

    /// <summary>Where the times of the other cuts begin and end; null where none are told.</summary>
    public static (int From, int Word, int To)? In(string s, string lang)
    {
        if (!First.In(s))
        {
            return null;
        }

        int comma = s.IndexOf(',');
        for (int guard = 0; comma > 0 && guard < MostCommas; guard++, comma = s.IndexOf(',', comma + 1))
        {
            int before = Math.Max(s.AsSpan(0, comma).LastIndexOfAny(",;") + 1, Sentences.Begin(s, comma));
            if (comma - before > 3 * MostLabel || !First.In(s[before..comma]) || Sequel.In(s[before..comma]) || !Clock.Tells(s[..comma], before, lang) || Told(s, comma, lang) is not { } end)
            {
                continue;
            }

            int to = end;
            while (to < s.Length && s[to] == ',' && Told(s, to, lang) is { } more)
            {
                to = more;
            }

            return (comma, Places.Skip(s, comma + 1), to);
        }

        return null;
    }

    /// <summary>Where the time of a cut ends that is told right behind a comma; null where none is.</summary>
    private static int? Told(string s, int comma, string lang)
    {
        int from = Places.Skip(s, comma + 1);
        int figure = from;
        while (figure < s.Length && figure - from < MostLabel && (char.IsLetter(s[figure]) || s[figure] is ' ' or '-'))
        {
            figure++;
        }

        return figure > from && figure < s.Length && char.IsAsciiDigit(s[figure]) && s[from..figure] is var label && Next.In(label) && !Sequel.In(label) ? Clock.At(s, figure, lang)?.End : null;
    }
}
