using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Sentences outside the lists: what it makes, how long it keeps, in which tin, what is on one plate.</summary>
internal static class Statements
{
    private const int FurthestAnd = 30;
    private static readonly System.Buffers.SearchValues<char> Letters = System.Buffers.SearchValues.Create("abcdefghijklmnopqrstuvwxyzäöüßéèêàâùûôîïçñáíóúìò");
    private static readonly HashSet<string> Children = new(StringComparer.OrdinalIgnoreCase) { "adults", "children", "kids", "teenagers", "enfants", "adultes", "kinder", "erwachsene", "niños", "adultos", "bambini", "adulti" };

    /// <summary>Reads the sentences of a paragraph into the lists.</summary>
    public static void Read(string s, Span span, string lang, List<CardYield> yields, List<Keeping> keeps, List<Vessel> vessels, List<PlatePart> plate)
    {
        if (CountLabels.At(s, span, lang) is { } counted)
        {
            // "No. of covers: 8" holds a stop that ends no sentence.
            yields.Add(counted);
            return;
        }

        foreach (string sentence in Sentences(s))
        {
            if (Layout.PlateLines.Tail(sentence) is > 0 and var list && Layout.PlateLines.Parts(sentence[list..], lang))
            {
                Plate(sentence[list..], lang, plate);
                continue;
            }

            int told = yields.Count;
            if (ScaledNotes.Is(sentence, lang))
            {
                Keepings.Add(sentence, span, lang, keeps);
                continue;
            }

            Makes(sentence, span, lang, yields);
            if (yields.Count == told && Layout.HeadLines.Yield(sentence, span, lang) is { } whole)
            {
                yields.Add(whole);
            }
            else if (yields.Count == told && YieldWords.Leads(sentence, span, lang) is { } led)
            {
                yields.Add(led);
            }
            else if (yields.Count == told && YieldWords.In(sentence, span, lang) is { } other)
            {
                yields.Add(other);
                if (other.Unit is not ("pieces" or "portions") && YieldWords.CutInto(sentence, span, lang) is { } cut)
                {
                    yields.Add(cut);
                }
            }

            YieldClauses.Add(sentence, span, lang, yields, told);
            EachServes.Settle(sentence, span, lang, yields, told);
            Keepings.Add(sentence, span, lang, keeps);
            VesselOf(sentence, span, vessels);
        }
    }

    /// <summary>Sentences: a full stop, then a space and no digit before a unit.</summary>
    public static IEnumerable<string> Sentences(string s)
    {
        int start = 0;
        for (int i = 0; i < s.Length; i++)
        {
            bool stop = s[i] is '。' || (s[i] is '.' or '!' or ';' && (i + 1 == s.Length || s[i + 1] == ' ' && !(s[i] == '.' && Shortened(s, i))));
            if (stop)
            {
                yield return s[start..i].Trim();
                start = i + 1;
            }
        }

        if (start < s.Length && s[start..].Trim() is { Length: > 0 } last)
        {
            yield return last;
        }
    }

    /// <summary>"ca. 40 Stück", "env. 300 g": the stop of an abbreviation before a figure ends nothing.</summary>
    private static bool Shortened(string s, int stop)
    {
        foreach (string w in (ReadOnlySpan<string>)["ca", "approx", "env", "aprox", "circ", "c"])
        {
            if (stop >= w.Length && Places.WordAt(s, stop - w.Length, w))
            {
                return true;
            }
        }

        return false;
    }

    private static void Makes(string s, Span span, string lang, List<CardYield> yields)
    {
        foreach ((string word, string unit) in (ReadOnlySpan<(string, string)>)[("Serves", "portions"), ("Makes", ""), ("Yields", ""), ("Pour", "portions"), ("Ergibt", ""), ("Für", "portions"), ("Para", "portions"), ("Per", "portions")])
        {
            int at = Places.FindWord(s, word);
            if (at < 0 || (at > 0 && word.Length < 5))
            {
                continue;
            }

            int i = Places.Skip(s, at + word.Length);
            i = Places.WordAt(s, i, "a") && !Places.WordAt(s, i, "a dozen") ? Places.Skip(s, i + 1) : i;
            if (Amounts.At(s, i, lang) is not { } m)
            {
                continue;
            }

            string rest = s[Math.Min(m.End, s.Length)..].TrimmedStart(" ,");
            string noun = Places.Letters(rest, 0);
            string u = m.Unit is { Kind: "mass" or "volume" } mu ? mu.Unit : m.Unit is { } other && other.Unit != "piece" ? other.Unit : unit.Length > 0 && !YieldWords.Form(noun) ? unit : noun.Length > 0 && noun is not "five" ? noun.ToLowerInvariant() : "pieces";
            double? each = EachGrams(s, lang);
            yields.Add(new CardYield(m.Number.Min, u, s, span) { AmountMax = m.Number.Max, EachGrams = each });
            if (Bracketed(s, m.End, span, lang) is { } told)
            {
                // "Für 1 Blech (ca. 40 Stück)", "Makes 1 terrine (10 slices)"
                yields.Add(told);
                return;
            }

            int pieces = s.IndexOf(" pieces", StringComparison.OrdinalIgnoreCase);
            if (pieces > 0 && u != "pieces")
            {
                int b = s.LastIndexOf(' ', pieces - 1);
                if (Numbers.Single(s, b + 1, lang) is { } n)
                {
                    yields.Add(new CardYield(n.Min, "pieces", s, span) { EachGrams = each });
                }
            }

            if (YieldWords.CutInto(s, span, lang) is { } cut)
            {
                yields.Add(cut);
            }

            if (word.Length > 4 && word != "Serves" && And(s, m.End, span, lang) is { } also)
            {
                yields.Add(also);
            }

            return;
        }
    }

    /// <summary>"about 16 pancakes": a number that is only near, of a thing nobody eats with and that is no food bought for it.</summary>
    private static Numeral? About(string s, string lang) =>
        Lexicon.Longest("hedge", s, 0, 2, lang, out int end) is not null && Numbers.Range(s, Places.Skip(s, end), lang) is { InWords: false } n && Places.Skip(s, n.End) is var noun && noun + 3 < s.Length && s.AsSpan(noun).IndexOfAnyExcept(Letters) < 0
        && !YieldWords.Guest(s[noun..]) && Amounts.At(s, Places.Skip(s, end), lang) is { Unit: null or { Kind: not ("mass" or "volume" or "length") } } && Clock.At(s, Places.Skip(s, end), lang) is null && FoodIds.Match(s[noun..], lang) is null && !Children.Contains(s[noun..]) ? n : null;

    /// <summary>How many pieces the whole is cut into, told in brackets behind it.</summary>
    private static CardYield? Bracketed(string s, int from, Span span, string lang)
    {
        int open = from < s.Length ? s.IndexOf('(', from) : -1;
        int close = open > 0 ? s.IndexOf(')', open) : -1;
        return close > open && (YieldWords.PiecesOf(s[(open + 1)..close], lang) ?? About(s[(open + 1)..close], lang)) is { } n ? new CardYield(n.Min, "pieces", s, span) { AmountMax = n.Max } : null;
    }

    /// <summary>"Makes 14 scones and 4 jars of jam": what else it makes.</summary>
    private static CardYield? And(string s, int from, Span span, string lang)
    {
        string and = Conjunction.Spaced(lang);
        int at = from < s.Length ? s.IndexOf(and, from, StringComparison.OrdinalIgnoreCase) : -1;
        if (at < 0 || at - from > FurthestAnd || Numbers.Range(s, at + and.Length, lang) is not { } n || Amounts.At(s, at + and.Length, lang) is not { Unit: null or { Kind: not ("mass" or "volume" or "length") } })
        {
            return null;
        }

        string noun = Places.Letters(s, Places.Skip(s, n.End));
        return noun.Length > 3 && Clock.At(s, at + and.Length, lang) is null ? new CardYield(n.Min, noun.ToLowerInvariant(), s, span) { AmountMax = n.Max } : null;
    }

    private static double? EachGrams(string s, string lang)
    {
        int each = s.IndexOf(" g each", StringComparison.OrdinalIgnoreCase);
        if (each < 0)
        {
            return null;
        }

        int b = s.LastIndexOf(' ', each - 1);
        return Numbers.Single(s, b + 1, lang)?.Min;
    }

    private static void VesselOf(string s, Span span, List<Vessel> vessels)
    {
        foreach (string kind in (ReadOnlySpan<string>)["tin", "frame", "mould", "ring", "terrine", "tray", "pouch"])
        {
            if (Places.FindWord(s, kind) < 0 && Places.FindWord(s, kind + "s") < 0)
            {
                continue;
            }

            int at = Math.Max(Places.FindWord(s, kind), 0);
            List<double> sizes = Sizes(s, at);
            if (sizes.Count == 0)
            {
                sizes = Sizes(s, 0);
            }

            if (sizes.Count > 0)
            {
                int deep = s.IndexOf("mm deep", StringComparison.Ordinal);
                if (sizes.Count == 2 && deep > 0)
                {
                    int b = s.LastIndexOf(' ', Math.Max(0, deep - 2));
                    if (Numbers.Single(s, b + 1, "en") is { } depth)
                    {
                        sizes.Add(depth.Min);
                    }
                }

                vessels.Add(new Vessel(kind, [.. sizes], 1, s, span));
                return;
            }
        }
    }

    /// <summary>"330 × 220 × 18 mm", "33 × 23 cm", "24 cm" in millimetres, the first from a place on.</summary>
    public static List<double> Sizes(string s, int from)
    {
        for (int i = from; i < s.Length; i++)
        {
            if (!char.IsAsciiDigit(s[i]) || (i > 0 && char.IsLetterOrDigit(s[i - 1])))
            {
                continue;
            }

            List<double> numbers = [];
            int j = i;
            while (Numbers.Single(s, j, "en") is { } n)
            {
                numbers.Add(n.Min);
                j = Places.Skip(s, n.End);
                if (j < s.Length && s[j] is '×' or 'x' or 'X')
                {
                    j = Places.Skip(s, j + 1);
                    continue;
                }

                break;
            }

            double factor = Places.WordAt(s, j, "mm") ? 1 : Places.WordAt(s, j, "cm") ? 10 : 0;
            if (factor > 0)
            {
                for (int k = 0; k < numbers.Count; k++)
                {
                    numbers[k] *= factor;
                }

                return numbers;
            }

            i = Math.Max(i, j - 1);
        }

        return [];
    }

    private static void Plate(string s, string lang, List<PlatePart> plate)
    {
        foreach (string part in s.Split(lang == "ja" && s.Contains('、') ? "、" : ", ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (Figure(part, lang) is not { } m)
            {
                continue;
            }

            int open = part.IndexOf('(');
            double? inner = open > 0 && Amounts.At(part, open + 1, lang) is { Unit: { Kind: "mass", Base: { } b } } g ? g.Number.Min * b : null;
            bool mass = m.Unit is { Kind: "mass" };
            plate.Add(new PlatePart(null, part, m.Unit is { Kind: "mass" or "volume" } ? null : m.Number.Min, mass ? m.Number.Min * m.Unit!.Base : inner));
        }
    }

    /// <summary>The amount at the front of a part, or the one that ends it ("turbot 110 g").</summary>
    private static Measure? Figure(string part, string lang) => Amounts.At(part, 0, lang) is { } front ? front : part.AsSpan().IndexOfAnyInRange('0', '9') is > 0 and var at ? Amounts.At(part, at, lang) : null;
}
