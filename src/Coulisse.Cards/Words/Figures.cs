namespace Coulisse.Cards.Words;

/// <summary>The figures of the sentence that is being read: each is asked for its heat, its time and its weight, and is told once.</summary>
internal sealed class Figures
{
    private const int Most = 16;

    [ThreadStatic]
    private static Figures? _recent;
    private readonly Figure[] _told = new Figure[Most];
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

        for (int k = 0; k < recent._count; k++)
        {
            if (recent._told[k].At == at)
            {
                return recent._told[k].Told;
            }
        }

        Numeral? read = Numbers.RangeOf(s, at, lang);
        if (recent._count < Most)
        {
            recent._told[recent._count++] = new Figure(at, read);
        }

        return read;
    }

    private readonly record struct Figure(int At, Numeral? Told);
}
