using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Discard after 2 hours", "hot hold above 63 °C max 2 h", "do not leave out more than 2 hours": how long a thing may stand at most. No wait of the plan, and no time it cooks.</summary>
internal static class HoldLimits
{
    private const double Day = 1440;
    private static readonly string[] Throws = ["discard", "throw away", "throw out", "bin", "jeter", "wegwerfen", "entsorgen", "verwerfen", "desechar", "tirar", "gettare", "buttare"];
    private static readonly WordList Thrown = new(Throws);
    // What is thrown away is what is left: "discard the bay leaf after 2 hours" is work.
    private static readonly WordList LeftOver = new("leftovers", "left", "left over", "unused", "remaining", "the rest", "reste", "restes", "Reste", "sobras", "sobrante", "avanzi", "resto");
    private static readonly WordList Never = new("do not", "don't", "never", "must not", "should not", "nicht", "nie", "ne pas", "jamais", "no dejar", "nunca", "non", "mai");
    private static readonly WordList Standing = new("leave", "left", "stand", "sit", "keep", "hold", "held", "kept", "store", "out", "stehen", "stehen lassen", "halten", "laisser", "garder", "maintenir", "dejar", "mantener", "lasciare", "tenere", "mantenere");
    private static readonly WordList Warm = new("hot hold", "hot-hold", "hold hot", "held hot", "keep warm", "kept warm", "keep hot", "kept hot", "hold warm", "held warm", "holds warm", "warm halten", "warmhalten", "tenir au chaud", "maintenir au chaud", "garder au chaud", "au chaud", "mantener caliente", "tenere in caldo", "in caldo");
    private static readonly WordList May = new("can be kept", "can be held", "can be left", "can be stored", "may be kept", "may be held", "can stand", "can sit", "will hold", "peut se garder", "peut attendre", "kann stehen", "se puede guardar", "si può tenere");
    private static readonly string[] Afters = ["after", "nach", "après", "dopo", "después de", "tras"];
    private static readonly string[] Mores = ["more than", "longer than", "over", "länger als", "plus de", "más de", "più di", "oltre"];

    private static readonly string[] Unders = ["in under", "in less than", "inside", "inside of", "in no more than", "in at most", "in max", "in max.", "in maximal", "in höchstens", "in unter", "en moins d'", "en un máximo de", "en no más de", "in meno di", "in meno d'"];
    private static readonly string[] Less = ["or less", "or under", "oder weniger", "ou moins", "o menos", "o meno"];
    private static readonly string[] NotMores = ["pas plus", "pas davantage", "not more", "no more", "no longer", "not longer", "nicht länger", "nicht mehr", "keine minute länger", "no más", "ni un minuto más", "non di più", "non oltre"];
    private static readonly string[] NoMores = ["no more than", "not more than", "no longer than", "at most", "max", "max.", "maximum", "höchstens", "nicht mehr als", "pas plus de", "au plus", "au maximum", "no más de", "como máximo", "non più di", "al massimo"];
    private static readonly string[] Openers = ["hold", "hot hold", "keep", "halten", "warm halten", "tenir", "maintenir", "mantener", "mantenere"];
    private static readonly string[] Stand = ["置かない", "おかない", "放置しない", "出しておかない", "出さない", "置きません", "放置せず", "置かず", "保温しない"];

    /// <summary>"In under 2 h", "en moins d'une heure", "in 90 minutes or less": done by then.</summary>
    public static bool By(string before, string tail) => Places.Ends(before, Unders) || Places.Ends(before, "in", "en", "im") && OrLess(tail);

    /// <summary>"10 min or less".</summary>
    public static bool OrLess(string tail) => Places.Begins(tail, Less) || tail.Length > 5 && tail[0] is ',' or ' ' or 'p' or 'n' && Closed(tail.AsSpan().TrimStart(" ,"));

    /// <summary>"pendant 35 minutes, pas plus.": nothing stands behind it that another figure leads to.</summary>
    private static bool Closed(ReadOnlySpan<char> tail)
    {
        foreach (string w in NotMores)
        {
            if (tail.StartsWith(w, StringComparison.Ordinal) && (tail.Length == w.Length || tail[w.Length] is '.' or ',' or ';' or '!' or ')'))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True for words right before a time that let it be no longer.</summary>
    public static bool NoMore(string before) => Places.Ends(before, NoMores);

    /// <summary>"30分以上置かない": not to stand so long, the contrary of "at least".</summary>
    public static bool NotSo(string tail)
    {
        if (!tail.StartsWith("以上", StringComparison.Ordinal) && !tail.StartsWith("より長く", StringComparison.Ordinal))
        {
            return false;
        }

        string part = DeniedTimes.Clause(tail);
        foreach (string w in Stand)
        {
            // "置かないと固まらない" is a condition.
            if (part.IndexOf(w, StringComparison.Ordinal) is var at and >= 0 && !(at + w.Length < part.Length && part[at + w.Length] is 'と' or '場'))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True for a time that is such an end.</summary>
    /// <param name="clause">The sentence of the time.</param>
    /// <param name="before">What stands before the time, lower case.</param>
    /// <param name="most">True where its own words say that it is an upper end.</param>
    /// <param name="minutes">The time.</param>
    public static bool Is(string clause, string before, bool most, double minutes)
    {
        if (minutes >= Day)
        {
            return false;
        }

        if (Places.Ends(before, Mores) && LeftOver.In(clause) && Thrown.In(clause))
        {
            // "Discard anything left at room temperature for more than 2 hours."
            return true;
        }

        if (Thrown.In(clause) && Places.Ends(before, Afters))
        {
            // "Discard after", "discard any leftovers after", "nach 2 Stunden wegwerfen": nothing else is named.
            string head = Folding.Lower(clause.AsSpan().TrimStart().ToString());
            return LeftOver.In(clause) || Array.Exists(Afters, a => Places.WordAt(head, 0, a)) || Array.Exists(Throws, w => Array.Exists(Afters, a => before.EndsWith(w + " " + a, StringComparison.Ordinal)));
        }

        if (Never.In(clause) && Standing.In(clause) && Places.Ends(before, Mores))
        {
            return true;
        }

        return most && (Warm.In(clause) || May.In(clause) || Places.Skip(clause, 0) is var first && Array.Exists(Openers, o => Places.WordAt(clause, first, o)));
    }
}
