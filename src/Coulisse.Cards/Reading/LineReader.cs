using System.Collections.Immutable;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Reads one line of an ingredient list.</summary>
internal static class LineReader
{
    private const int LongestLine = 2000;

    /// <summary>The line's reading and the questions it raises.</summary>
    /// <param name="raw">The line as typed.</param>
    /// <param name="lang">Language code.</param>
    /// <param name="span">Where it stands.</param>
    /// <param name="doubts">Takes the questions.</param>
    /// <param name="ids">Names the foods of our table; null to leave them unnamed.</param>
    public static IngredientLine Read(string raw, string lang, Span span, List<Doubt> doubts, FoodIds? ids = null)
    {
        bool struck = raw.Length <= LongestLine && Struck.In(raw);
        string plain = Plain(struck ? Struck.Out(raw) : raw);
        string s = Labels.Joined(Labels.Coloned(Abbreviated.Out(CellAmounts.Line(Errands.Line(plain, lang), lang), lang), lang));
        string shown = struck ? Marks.Strip(Struck.Shown(raw)) : plain;
        LineKind kind = s.Length == 0 ? LineKind.Note : LineKinds.Of(s, lang);
        if (kind != LineKind.Ingredient)
        {
            return new IngredientLine { Span = span, Text = shown, Kind = kind };
        }

        List<Draft> drafts = Drafts(s, lang, why: false);
        if (drafts.Count > 0 && Signs.Minus(raw))
        {
            drafts[0].Minus = true;
        }

        if (drafts.Count > 2)
        {
            FoodFirst.Ask(s, lang, span.Line, doubts);
        }

        foreach (Draft d in drafts)
        {
            d.Known = ids?.Of(d, s);
            NeverCounted.Weigh(d, ids, lang);
            LineDoubts.Of(d, s, lang, span.Line, doubts);
        }

        return new IngredientLine
        {
            Span = span, Text = shown, Foods = Foods(drafts),
            Confidence = drafts.Exists(d => d.Repaired || d.Milli || d.Minus) ? 0.6 : drafts.TrueForAll(d => d.Food.Length == 0) ? 0.3 : 1,
        };
    }

    /// <summary>Token by token: what became of each piece of a line.</summary>
    public static ImmutableArray<ReadToken> Why(string raw, string lang)
    {
        string s = Plain(raw);
        LineKind kind = s.Length == 0 ? LineKind.Note : LineKinds.Of(s, lang);
        return kind == LineKind.Ingredient ? [.. Drafts(s, lang, why: true).SelectMany(d => d.Tokens ?? [])] : [new ReadToken(s, kind.ToString().ToLowerInvariant(), s)];
    }

    private static ImmutableArray<FoodAmount> Foods(List<Draft> drafts) =>
        drafts.Count == 1 ? drafts[0] is { Food.Length: 0, Amount: null } ? [] : [drafts[0].Done()] : [.. drafts.Where(d => d.Food.Length > 0 || d.Amount is not null).Select(d => d.Done())];

    // A tab is a gap of a table, wider than the one between words.
    private static string Plain(string raw) => raw.Contains('\t') ? Untabbed(raw.Replace("\t", "  ", StringComparison.Ordinal)) : Untabbed(raw);

    private static string Untabbed(string raw) => Marks.Strip(raw.Length <= LongestLine ? Folding.Line(raw) : Folding.Line(raw.AsSpan(0, LongestLine)));

    private static List<Draft> Drafts(string s, string lang, bool why)
    {
        List<Draft> drafts = new(1);
        s = lang == "ja" ? KanjiAmounts.Plain(s) : s;
        s = TimesBehind.Front(FrontMarks.Spaced(Leaders.Plain(s)), lang);
        if (s.Length > 6 && s[0] == '(' && s[^1] == ')' && s.AsSpan(1).IndexOf('(') < 0 && s.IndexOf(')') == s.Length - 1 && Amounts.At(s, 1, lang) is { Unit: not null })
        {
            // "(1 tbsp cream - optional)": a whole line in brackets
            s = s[1..^1].Trim();
        }

        if (DividedAmount.Of(s, lang) is { } divided)
        {
            Draft one = PartReader.Read(divided.Line, lang, why);
            if (divided.Whole is { } sum)
            {
                PartReader.Take(one, sum, s);
            }

            one.Prepare(divided.Words);
            return [one];
        }

        s = Less.Take(s, lang, out string? less);
        s = PerHead.Take(s, lang, out string? heads);
        string? whole = null;
        foreach (string part in EachBehind.Parts(s, lang) ?? EachOf.Parts(s, lang) ?? FoodFirst.Parts(s, lang) ?? SharedPart.Parts(s, lang) ?? SubList.Parts(s, lang, out whole) ?? Ratios.Parts(s, lang, ref whole) ?? Labels.Several(s, lang, ref whole) ?? Joins.Split(s, lang))
        {
            if (drafts.Count > 0 && Joins.Extra(part) is { } extra)
            {
                drafts[^1].Use = drafts[^1].Use is { } use ? use + "; " + extra : extra;
                drafts[^1].Tokens?.Add(new ReadToken(part, "use", extra));
                continue;
            }

            Draft draft = PartReader.Read(part, lang, why);
            draft.Said = part.Length < s.Length ? part : null;
            draft.Use = whole is null ? draft.Use : draft.Use is { } own ? $"{whole}; {own}" : whole;
            Merging.Merge(drafts, draft, lang);
        }

        if (drafts.Count > 0)
        {
            drafts[0].Less = less;
            drafts[0].Use ??= heads;
        }

        return drafts;
    }
}
