namespace Coulisse.Cards.Words;

/// <summary>The figures of the sentence that is being read: each is asked for its heat, its time and its weight, and is told once.</summary>
internal sealed class Figures
{
    private const int Most = 16;

    [ThreadStatic]
    private static Figures? _recent;
    private readonly (int At, Numeral? Told)[] _told = new (int, Numeral?)[Most];
    private string _text = "";
    private string _lang = "";
    private int _count;

    /// <summary>The number or range that begins with a figure at a place.</summary>
    public static Numeral? Range(string s, int at, string lang)
    {
        Figures recent = _recent ??= new Figures();
        if (!ReferenceEquals(recent._text, s) || !ReferenceEquals(recent._lang, lang))
        {
            (recent._text, recent._lang, recent._count) = (s, lang, 0);
        }

        foreach ((int place, Numeral? told) in recent._told.AsSpan(0, recent._count))
        {
            if (place == at)
            {
                return told;
            }
        }

        Numeral? read = Numbers.RangeOf(s, at, lang);
        if (recent._count < Most)
        {
            recent._told[recent._count++] = (at, read);
        }

        return read;
    }
}
