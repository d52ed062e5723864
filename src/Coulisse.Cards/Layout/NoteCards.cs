using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A card jotted at night, line by line without a stop, a bullet or a colon: foods with their amounts last, then heats, times and words of work, and over a second list a bare name ("rub", "mop"). What each line is hangs on its neighbours there, as nothing else parts them.</summary>
internal static class NoteCards
{
    /// <summary>What a line of such a card is.</summary>
    internal enum Kind : byte
    {
        /// <summary>Left to what its own look says.</summary>
        None,

        /// <summary>The name of the dish.</summary>
        Title,

        /// <summary>A step.</summary>
        Work,

        /// <summary>The name of a part.</summary>
        Head,

        /// <summary>For how many it is.</summary>
        Yield,
    }

    private const int Fewest = 5;
    private const int Most = 80;
    private const int LongestLine = 90;
    private const int FewestItems = 3;
    private static readonly string[] Nights = ["overnight", "o/n", "ü/n", "1 nuit", "une nuit", "über nacht", "toda la noche", "una noche", "1 noche", "una notte", "1 notte", "tutta notte"];

    /// <summary>What is filled with so much each: "ramequins 100g" weighs out and buys nothing.</summary>
    private static readonly WordList Filled = new("ramekin", "ramekins", "mould", "moulds", "mold", "molds", "ring", "rings", "pot", "pots", "jar", "jars", "tin", "tins", "glasses", "portions", "balls", "buns", "rolls", "ramequin", "ramequins", "moule", "moules", "verrine", "verrines", "cercle", "cercles", "bocaux", "pâtons", "patons", "boules", "förmchen", "gläser", "ringe", "formen", "teiglinge", "molde", "moldes", "vaso", "vasos", "aro", "aros", "bolas", "piezas", "stampi", "stampini", "bicchieri", "vasetti", "palline", "filoni", "pagnotte");

    /// <summary>What each line is; null for a card that is not jotted so.</summary>
    public static Kind[]? Of(List<RawLine> lines, string lang)
    {
        if (lang == "ja" || lines.Count is < Fewest or > Most)
        {
            return null;
        }

        string[] bodies = new string[lines.Count];
        bool[] items = new bool[lines.Count];
        int weighed = 0;
        for (int i = 0; i < lines.Count; i++)
        {
            string s = lines[i].Text;
            if (s.Length > LongestLine || s[^1] is '.' or ':' or '!' or '?' or '|' || s[0] is '#' or '|' or '*' or '-' or '•' || Looks.Bullet(s) || Marks.ListNumber(s, 0) > 0 || s.IndexOf(". ", StringComparison.Ordinal) > 0 || (bodies[i] = Folding.Line(s)).Length == 0)
            {
                return null;
            }

            items[i] = i > 0 && char.IsLetter(bodies[i][0]) && BackAmount.Unit(bodies[i], lang) && !NoteHeats.Only(bodies[i], lang);
            weighed += items[i] ? 1 + bodies[i].AsSpan().Count(" / ") : 0;
        }

        return weighed < FewestItems ? null : Kinds(lines, bodies, items, lang);
    }

    private static Kind[]? Kinds(List<RawLine> lines, string[] bodies, bool[] items, string lang)
    {
        Kind[] kinds = new Kind[bodies.Length];
        int seen = 0;
        bool worked = false;
        for (int i = 1; i < bodies.Length; i++)
        {
            kinds[i] = One(bodies, items, i, seen, kinds[i - 1] == Kind.Work && lines[i].Block == lines[i - 1].Block, lang);
            seen += items[i] ? 1 : 0;
            worked |= kinds[i] == Kind.Work;
        }

        if (!worked)
        {
            return null;
        }

        for (int i = bodies.Length - 2; i > 1; i--)
        {
            // "bouillir eau beurre sel" over "dessecher 2m": the first work behind a list may tell no time.
            kinds[i] = kinds[i] == Kind.None && !items[i] && kinds[i + 1] == Kind.Work && items.AsSpan(0, i).Contains(true) && Parts.Numberless(bodies[i]) && Opens(bodies[i], lang) ? Kind.Work : kinds[i];
        }

        kinds[0] = char.IsLetter(bodies[0][0]) && !Looks.Statement(bodies[0], lang) && (Parts.Numberless(bodies[0]) || !NoteHeats.Weighs(bodies[0], lang) && YieldWords.OfTitle(bodies[0], default, lang) is not null) ? Kind.Title : Kind.None;
        return kinds;
    }

    private static Kind One(string[] bodies, bool[] items, int i, int seen, bool behindWork, string lang)
    {
        string body = bodies[i];
        if (YieldWords.Guests(body, lang) || ShortYields.At(body, 0, default, lang) is not null)
        {
            return Kind.Yield;
        }

        if (seen == 0 || Looks.Statement(body, lang) || Remarks.Is(body, lang))
        {
            return Kind.None;
        }

        if (NoteHeats.Only(body, lang))
        {
            return Kind.Work;
        }

        if (items[i])
        {
            return behindWork && Portioned(body, lang) ? Kind.Work : Kind.None;
        }

        if (Named(bodies, items, i, behindWork, lang))
        {
            return Kind.Head;
        }

        if (i + 1 < bodies.Length && items[i + 1] && !char.IsAsciiDigit(body[0]) && YieldWords.OfTitle(body, default, lang) is not null)
        {
            // "LINSENSUPPE, 30 Portionen" over its list
            return Kind.None;
        }

        bool timed = Clock.Tells(body, 0, lang) || Array.Exists(Nights, w => Places.FindWord(body, w) >= 0);
        bool free = !NoteHeats.Weighs(body, lang) && !BackAmount.Counts(body, lang);
        return seen > 1 && timed && free || behindWork && free && !Looks.Amounted(body, lang) ? Kind.Work : Kind.None;
    }

    /// <summary>"ramequins 100g", "pocher 40g", "wirken 60g" behind work: how much each is of, and no food.</summary>
    private static bool Portioned(string body, string lang)
    {
        int space = body.IndexOf(' ');
        return space > 2 && space + 1 < body.Length && char.IsAsciiDigit(body[space + 1]) && (Filled.In(body[..space]) || Operations.In(body[..space], lang).Count > 0) && FoodIds.Match(body[..space], lang) is null;
    }

    /// <summary>A bare word that parts are called by, over a line with its amount: "rub" over "salt 90g". A food without an amount ("gochujang" over "eggs 3") is none, so the word has to be known.</summary>
    private static bool Named(string[] bodies, bool[] items, int i, bool behindWork, string lang)
    {
        string body = bodies[i];
        return i + 1 < bodies.Length && items[i + 1] && body.Length < 30 && body.Count(' ') < 3 && Parts.Numberless(body) && body.AsSpan().IndexOfAny(",+/→") < 0 && (Parts.Called(body, lang) || Parts.Finish(body, lang)) && (FoodIds.Match(body, lang) is null || behindWork && i + 2 < bodies.Length && items[i + 2]) && !Looks.Used(body, lang);
    }

    private static bool Opens(string body, string lang) => Looks.Opens(body, lang) && FoodIds.Match(body, lang) is null && FoodIds.Match(body[..Places.WordEnd(body, 0)], lang) is null;
}
