using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"120 g for the dough and 60 g for the filling": amounts, each with what it is for or how it is to be, and nothing else.</summary>
/// <param name="Amounts">The amounts in order.</param>
/// <param name="Purposes">Every one says what it is for; else some say what is done to it.</param>
/// <param name="Rest">A rest without a figure stands among them.</param>
internal sealed record DividedShares(List<Measure> Amounts, bool Purposes, bool Rest)
{
    /// <summary>A share says itself that it is in the whole ("100 g of it for dusting").</summary>
    public bool Within { get; init; }

    private static readonly string[] OfIt = ["of it", "of them", "of this", "of these", "of which", "davon", "dont", "di cui", "de ellos", "de ellas"];
    private const int MostShares = 12;
    private static readonly string[] English = ["for", "to", "in", "into", "on", "over"];
    private static readonly string[] French = ["pour", "dans", "en", "sur"];
    private static readonly string[] German = ["für", "zum", "zur", "in", "im", "auf"];
    private static readonly string[] Spanish = ["para", "en", "al"];
    private static readonly string[] Italian = ["per", "in", "nel", "nella", "nell'", "sul", "sulla"];
    private static readonly string[] Alls = ["plus", "&", "+"];
    private static readonly WordList Rests = new("rest", "remaining", "remainder", "reste", "restant", "restliche", "übrige", "resto", "restante", "restanti");

    /// <summary>The shares that stand from a place to the end of the words; null where anything else stands among them.</summary>
    /// <param name="s">The words.</param>
    /// <param name="from">Where the first amount stands.</param>
    /// <param name="lang">Language code.</param>
    /// <param name="named">Each must say what it is for or how it is to be; false where the sum alone shall speak ("120 g dough + 60 g filling").</param>
    public static DividedShares? In(string s, int from, string lang, bool named = true)
    {
        List<Measure> amounts = [];
        bool purposes = true;
        bool within = false;
        int i = from;
        while (i < s.Length)
        {
            if (amounts.Count == MostShares || !Begins(s, i) || Reading.Amounts.At(s, i, lang) is not { UpTo: false, AtLeast: false, Number: { Max: null, Repaired: false } } m)
            {
                return null;
            }

            int words = Places.Skip(s, m.End);
            foreach (string it in OfIt)
            {
                if (Places.WordAt(s, words, it))
                {
                    (words, within) = (Places.Skip(s, words + it.Length), true);
                    break;
                }
            }

            int end = Next(s, words, lang, out i);
            string said = end > words ? s[words..end].TrimmedEnd(" .;,") : "";
            bool purpose = IsPurpose(said, lang);
            // "3 eggs, 2 whole and 1 yolk": what is a food is no use of another.
            if (named && !purpose && (said.Length == 0 || !FoodWords.IsPreparation(said, lang) || FoodIds.Match(said, lang) is not null))
            {
                return null;
            }

            purposes &= purpose;
            amounts.Add(m);
        }

        return amounts.Count > 0 ? new DividedShares(amounts, purposes, Rests.In(s[from..])) { Within = within } : null;
    }

    /// <summary>What the shares come to, in the unit of the whole (null for pieces); null when they cannot be added in it.</summary>
    public double? Sum(UnitWord? whole)
    {
        double sum = 0;
        foreach (Measure m in Amounts)
        {
            // "180 g butter, 120 for the dough": the unit is told once
            double? one = m.Unit is null || m.Unit.Unit == whole?.Unit ? 1 : m.Unit.Kind == whole?.Kind && m.Unit.Base is { } b && whole.Base is { } w ? b / w : null;
            if (one is not { } factor)
            {
                return null;
            }

            sum += m.Number.Min * factor;
        }

        return sum;
    }

    /// <summary>True where two sums are one amount but for rounding.</summary>
    public static bool Same(double sum, double whole) => Math.Abs(sum - whole) <= 0.005 * whole;

    private static bool IsPurpose(string words, string lang)
    {
        foreach (string w in lang switch { "fr" => French, "de" => German, "es" => Spanish, "it" => Italian, _ => English })
        {
            if (w[^1] == '\'' ? words.StartsWith(w, StringComparison.OrdinalIgnoreCase) : words.Length > w.Length + 1 && Places.WordAt(words, 0, w))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>End of the words that end before the next amount, and where that amount begins; the end of the text for both when none follows.</summary>
    private static int Next(string s, int from, string lang, out int next)
    {
        for (int i = from; i < s.Length; i++)
        {
            if (s[i] is not (',' or ';' or ' ') || (s[i] == ',' && char.IsAsciiDigit(s[i - 1]) && i + 1 < s.Length && char.IsAsciiDigit(s[i + 1])))
            {
                continue;
            }

            int k = s[i] is ',' or ';' ? Places.Skip(s, i + 1) : i + 1;
            bool parted = s[i] is ',' or ';';
            foreach (string and in (ReadOnlySpan<string>)[Conjunction.Of(lang), .. Alls])
            {
                if (k < s.Length && (char.IsLetter(and[0]) ? Places.WordAt(s, k, and) : s[k] == and[0]))
                {
                    (k, parted) = (Places.Skip(s, k + and.Length), true);
                    break;
                }
            }

            if (parted && Begins(s, k))
            {
                next = k;
                return i;
            }
        }

        next = s.Length;
        return s.Length;
    }

    private static bool Begins(string s, int i) => i < s.Length && (char.IsAsciiDigit(s[i]) || Numbers.Vulgar(s[i]) > 0);
}
