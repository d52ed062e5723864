using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Reads one line of an ingredient list.</summary>
internal static class LineReader
{
    private const int LongestLine = 2000;

    /// <summary>The line's reading and the questions it raises.</summary>
    public static IngredientLine Read(string raw, string lang, Span span, List<Doubt> doubts)
    {
        string s = Marks.Strip(raw.Length <= LongestLine ? Folding.Line(raw) : Folding.Line(raw.AsSpan(0, LongestLine)));
        IngredientLine line = new() { Span = span, Text = s };
        if (s.Length == 0)
        {
            return line with { Kind = LineKind.Note };
        }

        LineKind kind = LineKinds.Of(s, lang);
        if (kind != LineKind.Ingredient)
        {
            return line with { Kind = kind, Tokens = [new ReadToken(s, kind.ToString().ToLowerInvariant(), s)] };
        }

        List<Draft> drafts = [];
        foreach (string part in EachOf.Parts(s, lang) ?? Joins.Split(s, lang))
        {
            if (drafts.Count > 0 && Joins.Extra(part) is { } extra)
            {
                drafts[^1].Use = drafts[^1].Use is { } use ? use + "; " + extra : extra;
                drafts[^1].Tokens.Add(new ReadToken(part, "use", extra));
                continue;
            }

            Draft draft = PartReader.Read(part, lang);
            Joins.Merge(drafts, draft, lang);
        }

        foreach (Draft d in drafts)
        {
            LineDoubts.Of(d, s, lang, span.Line, doubts);
        }

        return line with
        {
            Foods = [.. drafts.Where(d => d.Food.Length > 0 || d.Amount is not null).Select(d => d.Done())],
            Tokens = [.. drafts.SelectMany(d => d.Tokens)],
            Confidence = drafts.Exists(d => d.Repaired || d.Milli) ? 0.6 : drafts.TrueForAll(d => d.Food.Length == 0) ? 0.3 : 1,
        };
    }
}
