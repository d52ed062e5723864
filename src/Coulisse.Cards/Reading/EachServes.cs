using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"2 puddings, each serves 8", "2 terrines, 12 portions each", "Pour 2 terrines de 8 personnes": guests told of one of several. Those of all are as many times that.</summary>
internal static class EachServes
{
    private const int Longest = 120;
    private static readonly string[] Before = ["each serves", "each serving", "each feeds", "each makes", "each cuts into", "each for", "chacune pour", "chacun pour", "für je", "jeweils für", "je für", "cada una para", "cada uno para", "ciascuna per", "ciascuno per"];
    private static readonly string[] Ofs = ["de", "à", "zu", "da", "di", "zu je", "of", "for"];
    private static readonly string[] Behind = ["each", "apiece", "chacun", "chacune", "jeweils", "cada una", "cada uno", "ciascuno", "ciascuna", "l'una", "l'uno"];
    private static readonly WordList Any = new([.. Before, .. Ofs, .. Behind]);

    /// <summary>Puts the guests of all in the place of those of one.</summary>
    public static void Settle(string s, Span span, string lang, List<CardYield> yields, int told)
    {
        if (s.Length > Longest || Any.Next(s, 0) < 0 || s.AsSpan().IndexOfAnyInRange('0', '9') is not (>= 0 and var first) || Numbers.Single(s, first, lang) is not { InWords: false, Min: > 1 and < 200 } n || n.Min % 1 != 0)
        {
            return;
        }

        int noun = Places.Skip(s, n.End);
        bool times = noun < s.Length && s[noun] is 'x' or '×' or 'X';
        if (!times && (noun >= s.Length || !char.IsLetter(s[noun]) || YieldWords.Guest(s[noun..Places.WordEnd(s, noun)]) || Amounts.At(s, first, lang) is { Unit.Kind: "mass" or "volume" or "length" }))
        {
            return;
        }

        if (One(s, noun, lang) is not { } one)
        {
            return;
        }

        yields.RemoveAll(y => yields.IndexOf(y) >= told && y.Unit is "portions" && (y.Amount == one.Min || y.Amount == n.Min));
        yields.Add(new CardYield(n.Min * one.Min, "portions", s, span) { AmountMax = n.Min * one.Max });
    }

    /// <summary>For how many one of them is.</summary>
    private static Numeral? One(string s, int from, string lang)
    {
        for (int i = from + 1; i < s.Length; i++)
        {
            if (!char.IsAsciiDigit(s[i]) || char.IsLetterOrDigit(s[i - 1]) || s[i - 1] is '.' or ',' || Numbers.Range(s, i, lang) is not { InWords: false } n)
            {
                continue;
            }

            int noun = Places.Skip(s, n.End);
            bool guests = noun < s.Length && YieldWords.Guest(s[noun..Places.WordEnd(s, noun)]);
            string ahead = s[..i].TrimEnd();
            string behind = guests ? s[Places.WordEnd(s, noun)..].Trimmed(" .,;)") : "";
            bool opened = Array.Exists(Before, b => Places.EndsIn(ahead, b)) && (guests || noun >= s.TrimEnd('.', ')').Length);
            bool of = guests && behind.Length == 0 && Array.Exists(Ofs, o => Places.EndsIn(ahead, o)) && ahead.Length - from > 4;
            if (opened || of || guests && Array.Exists(Behind, b => behind.Equals(b, StringComparison.OrdinalIgnoreCase)))
            {
                return n;
            }

            i = Math.Max(i, n.End - 1);
        }

        return null;
    }
}
