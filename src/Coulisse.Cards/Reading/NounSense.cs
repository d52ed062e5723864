using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>English words of work that are names here: "the roast peppers", "in salt", "milk and cream". A verb opens its sentence, or follows "and", "then" or a comma and has something to act on.</summary>
internal static class NounSense
{
    private static readonly WordSet Articles = Set("the a an this that these those each your its our their every all any some both no more");
    // "Over medium heat", "on a low heat": how hot, and no verb.
    private static readonly WordSet Degrees = Set("low medium moderate high gentle fierce full strong medium-high medium-low");
    private static readonly WordSet Prepositions = Set("of with in into for from on onto at by over under through between without until till after before per like");
    // Words that may follow a noun; behind any other the word before it says what kind of thing that is.
    private static readonly WordSet Small = Set("and or for to until till in into on onto over at with of from by then well again about once twice before after as but is are it them off up down out through while under at least per");
    // What "dry" only tells the state of.
    private static readonly WordSet Dries = Set("pan frying skillet wok griddle heat ingredients mix mixture things goods place cupboard store cure yeast");
    private static readonly WordSet Measures = Set("must should temp temps temperature temperatures is needs has reads reaches hits at min minimum registers above over");
    private static readonly WordSet Objects = Set("the a an it them this that these those each your its both all any every some well generously lightly heavily together until lots to");
    // Foods that share their word with a verb: in a list they are foods.
    private static readonly WordSet Foods = Set("salt cream zest juice sauce purée puree ice bread brine crumble skin seed bone stone shell core fillet pickle powder candy confit caramel batter butter supreme dry brown");
    // Things that do: behind an article or a preposition only.
    private static readonly WordSet Things = Set("glaze dust string joint scale segment mince box bag plate sheet mould garnish griddle grill barrel pod hull pit level dress stew coat layer heat steam");

    /// <summary>True when the word at a place names a thing.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="at">Where the word begins.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="verbEnd">Where the verb before it ended; -1 for none.</param>
    public static bool Is(string s, int at, int end, int verbEnd)
    {
        if (s.AsSpan(at, end - at).Contains(' '))
        {
            return false;
        }

        // The stop of a sentence may have been taken along.
        while (end > at && !char.IsLetter(s[end - 1]))
        {
            end--;
        }

        int stop = at;
        while (stop > 0 && s[stop - 1] == ' ')
        {
            stop--;
        }

        string before = Before(s, stop);
        string behind = Behind(s, end);
        string word = Folding.Lower(s[at..end]);
        if (word == "core" && (Measures.Contains(behind) || behind.Length == 0 && Figured(s, end)))
        {
            // "Core must be over 75 °C", "core 54 °C": the middle, and nothing is cut out.
            return true;
        }

        if (word == "dry" && Dries.Contains(behind))
        {
            // "Dry pan, very hot", "dry ingredients into the bowl": how it is, and nobody dries it.
            return true;
        }

        bool food = Foods.Contains(word);
        bool named = food || Things.Contains(word) || behind.Length > 0 && !Small.Contains(behind) && !behind.EndsWith("ly", StringComparison.Ordinal);
        if (Articles.Contains(before) || Prepositions.Contains(before) || word == "heat" && Degrees.Contains(before))
        {
            return named || word is "peel" or "slice" or "trim" or "cut";
        }

        if (!food || stop == 0 || s[stop - 1] is '.' or ';' or ':' or '!' || before is "then" or "to" or "not" || before.EndsWith("ly", StringComparison.Ordinal) || before.Length == 0 && s[stop - 1] is not ',')
        {
            return false;
        }

        bool joined = before is "and" or "or" || s[stop - 1] is ',' or '&';
        // "Peel, core and slice", "sift and salt": verbs in a row.
        return !joined || !Objects.Contains(behind) && !(verbEnd > 0 && s.AsSpan(verbEnd, at - verbEnd).Trim(" ,&") is "" or "and" or "or");
    }

    private static bool Figured(string s, int end) => Places.Skip(s, end) is var next && next < s.Length && (char.IsAsciiDigit(s[next]) || s[next] is '>' or '≥' or '=' or ':' or '@');

    private static string Before(string s, int stop)
    {
        int from = stop;
        while (from > 0 && (char.IsLetter(s[from - 1]) || s[from - 1] == '\''))
        {
            from--;
        }

        return Folding.Lower(s[from..stop]);
    }

    private static string Behind(string s, int end)
    {
        int from = Places.Skip(s, end);
        int to = from;
        while (to < s.Length && char.IsLetter(s[to]))
        {
            to++;
        }

        return Folding.Lower(s[from..to]);
    }

    private static WordSet Set(string words) => new(anyCase: false, words.Split(' '));
}
