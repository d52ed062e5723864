using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"No batir más de 30 segundos", "Don't beat for more than 30 seconds", "30秒以上混ぜない": what is not to be done for longer is told by its upper end, with the verb between the two halves of the words.</summary>
internal static class DeniedTimes
{
    private static readonly string[] Mores = ["more than", "for more than", "for over", "plus de", "más de", "più di", "mehr als", "länger als", "oltre"];
    private static readonly WordList Nots = new("not", "don't", "never", "no", "ne", "n'", "pas", "jamais", "nicht", "nie", "niemals", "nunca", "non", "mai");

    // "Ne pas dépasser 3 minutes": the verb itself says that it is the end.
    private static readonly string[] Exceeds = ["exceed", "exceeding", "go beyond", "go over", "dépasser", "dépassez", "excéder", "exceder", "superar", "sobrepasar", "pasar de", "superare", "oltrepassare"];
    private static readonly WordList Without = new("without", "sans", "sin", "senza", "ohne");
    private static readonly string[] Exceeded = ["nicht überschreiten", "nicht übersteigen", "を超えない", "を越えない", "を過ぎない", "までにする", "までにとどめ"];
    private static readonly string[] AtLength = ["長くて", "長くても", "最長", "最大", "せいぜい"];

    /// <summary>True where the words before a time say that it is the longest.</summary>
    /// <param name="s">The step.</param>
    /// <param name="begin">Where its sentence begins.</param>
    /// <param name="at">Where the time begins.</param>
    /// <param name="before">What stands before it, lower case.</param>
    public static bool Longest(string s, int begin, int at, string before) =>
        BareHeat.Ends(before, Mores) && Nots.In(s[begin..at]) || BareHeat.Ends(before, Exceeds) && s[begin..at] is var led && (Nots.In(led) || Without.In(led)) || EndsJapanese(before);

    private static bool EndsJapanese(string before)
    {
        foreach (string w in AtLength)
        {
            if (before.EndsWith(w, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }


    /// <summary>What stands behind a time before its Japanese clause ends.</summary>
    internal static string Clause(string tail) => tail.AsSpan().IndexOfAny('、', '。') is var stop and >= 0 ? tail[..stop] : tail;

    /// <summary>True where a Japanese "or more" stands before a verb that is denied; "30秒以上混ぜないと" says what happens otherwise.</summary>
    /// <param name="tail">What stands behind the time.</param>
    public static bool Denied(string tail)
    {
        if (Places.Begins(tail, Exceeded))
        {
            return true;
        }

        if (!tail.StartsWith("以上", StringComparison.Ordinal))
        {
            return false;
        }

        string told = Clause(tail);
        int not = told.IndexOf("ない", StringComparison.Ordinal);
        return not > 0 && (not + 2 == told.Length || told[not + 2] is 'で' or 'こ' or 'よ');
    }
}
