using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>A time that comes more than once: "2 x 20 min", "3 min each side", "three times, 2 min each", "four times, 30 min apart".</summary>
internal static class Repeats
{
    private const int Most = 12;
    private static readonly string[] Sides = ["each side", "per side", "a side", "on each side", "on either side", "either side", "on both sides", "both sides", "je seite", "pro seite", "von jeder seite", "auf jeder seite", "de chaque côté", "par face", "par côté", "sur chaque face", "por lado", "por cada lado", "de cada lado", "por cada cara", "per lato", "per parte", "da ogni lato", "ずつ両面"];
    private static readonly string[] SidesBefore = ["each side", "per side", "either side", "je seite", "pro seite", "von jeder seite", "auf jeder seite", "chaque côté", "chaque face", "par côté", "par face", "cada lado", "por lado", "cada cara", "per lato", "ogni lato", "per parte"];
    private static readonly string[] Betweens = [" about", " ca.", " etwa", " environ", " unos", " circa", " for", " pendant", " durante", " per"];
    private static readonly string[] ApartBehind = ["apart", "interval", "intervals", "between", "d'intervalle", "entre chaque", "entre cada", "tra una", "おきに", "間隔"];
    private static readonly string[] ApartBefore = ["intervals of", "an interval of", "im abstand von", "à intervalles de", "toutes les", "a intervalos de", "cada", "a intervalli di", "a distanza di", "ogni", "alle", "every"];
    private static readonly (string Word, int Count)[] Counts =
    [
        ("twice", 2), ("two times", 2), ("two folds", 2), ("three times", 3), ("three folds", 3), ("four times", 4), ("four folds", 4), ("five times", 5), ("six times", 6), ("zweimal", 2), ("dreimal", 3), ("viermal", 4), ("fünfmal", 5), ("deux fois", 2), ("trois fois", 3), ("quatre fois", 4), ("dos veces", 2), ("tres veces", 3), ("cuatro veces", 4), ("due volte", 2), ("tre volte", 3), ("quattro volte", 4), ("due pieghe", 2), ("tre pieghe", 3), ("quattro pieghe", 4),
    ];
    private static readonly string[] Times = ["times", "folds", "turns", "mal", "fois", "veces", "volte", "pieghe", "plis", "pliegues", "rabats", "回"];

    /// <summary>How often the time comes, and whether it lies between two doings.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="at">Where the time begins.</param>
    /// <param name="before">What stands before it, lower case.</param>
    /// <param name="after">What stands behind it, lower case.</param>
    public static (int Count, bool Between) Of(string s, int at, string before, string after)
    {
        string behind = after.TrimStart(' ', ',');
        if (Cross(s, at) is > 1 and var crossed)
        {
            return (crossed, false);
        }

        if (Places.Begins(behind, Sides) || Places.Ends(Bared(before), SidesBefore) || behind.StartsWith("ずつ", StringComparison.Ordinal) && Bared(before).EndsWith("両面を", StringComparison.Ordinal))
        {
            return (2, false);
        }

        if (Places.Ends(before, BatchesOf) && Counted(s, Batches) is > 1 and var fills)
        {
            return (fills, false);
        }

        bool apart = Places.Begins(behind, ApartBehind);
        bool every = !apart && Places.Ends(before, ApartBefore);
        bool each = behind.StartsWith("each", StringComparison.Ordinal) || behind.StartsWith("jeweils", StringComparison.Ordinal) || before.EndsWith("jeweils", StringComparison.Ordinal) || behind.StartsWith("chaque", StringComparison.Ordinal) || behind.StartsWith("cada", StringComparison.Ordinal) || behind.StartsWith("ogni", StringComparison.Ordinal);
        if (!apart && !every && !each || (each && Counted(s, Batches) is > 1 and var lots ? lots : Counted(s, Times)) is not (> 1 and var count))
        {
            return (1, apart);
        }

        // Four doings have three waits between them.
        return each ? (count, false) : (apart || every && !Places.HasAny(before, "every", "toutes les", "cada", "ogni", "alle") ? Math.Max(1, count - 1) : count, true);
    }

    /// <summary>Without the small words between a side and its time: "on each side for about".</summary>
    private static string Bared(string before)
    {
        before = before.TrimEnd();
        foreach (string w in Betweens)
        {
            before = before.EndsWith(w, StringComparison.Ordinal) ? before[..^w.Length] : before;
        }

        return before;
    }

    /// <summary>"2 x 20 min": the count before the sign.</summary>
    private static int Cross(string s, int at)
    {
        int k = at;
        while (k > 0 && s[k - 1] == ' ')
        {
            k--;
        }

        if (k < 2 || s[k - 1] is not ('x' or 'X' or '×' or '*'))
        {
            return 1;
        }

        int end = k - 1;
        while (end > 0 && s[end - 1] == ' ')
        {
            end--;
        }

        int from = end;
        while (from > 0 && end - from < 2 && char.IsAsciiDigit(s[from - 1]))
        {
            from--;
        }

        return end > from && (from == 0 || !char.IsLetterOrDigit(s[from - 1]) && s[from - 1] is not '.' and not ',') && int.Parse(s.AsSpan(from, end - from), CultureInfo.InvariantCulture) is >= 2 and <= Most and var n ? n : 1;
    }

    private static readonly string[] Batches = ["batches", "lots", "goes", "rounds", "loads", "fournées", "Portionen", "Chargen", "Durchgängen", "tandas", "hornadas", "infornate", "riprese"];
    private static readonly string[] BatchesOf = ["batches of", "lots of", "fournées de", "tandas de", "hornadas de", "infornate da", "chargen zu"];
    private static readonly (string Word, int Count)[] Fews = [("two", 2), ("three", 3), ("four", 4), ("five", 5), ("deux", 2), ("trois", 3), ("quatre", 4), ("zwei", 2), ("drei", 3), ("vier", 4), ("dos", 2), ("tres", 3), ("cuatro", 4), ("due", 2), ("tre", 3), ("quattro", 4)];

    private static int Counted(string s, string[] times)
    {
        foreach ((string word, int count) in Counts)
        {
            if (Places.FindWord(s, word) >= 0)
            {
                return count;
            }
        }

        for (int k = 0; ReferenceEquals(times, Batches) && k < Fews.Length; k++)
        {
            (string word, int count) = Fews[k];
            if (Places.FindWord(s, word) is var few and >= 0 && Places.Skip(s, few + word.Length) is var lot && Array.Exists(times, t => Places.WordAt(s, lot, t)))
            {
                return count;
            }
        }

        for (int i = 0; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) && (i == 0 || !char.IsLetterOrDigit(s[i - 1]) && s[i - 1] is not '.' and not ',') && (i + 1 == s.Length || !char.IsAsciiDigit(s[i + 1])) && Places.Skip(s, i + 1) is var w && w < s.Length && Array.Exists(times, t => s[w] == '回' ? t == "回" : Places.WordAt(s, w, t)))
            {
                return s[i] - '0';
            }
        }

        return 1;
    }
}
