using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"Für 4 Personen: 500 g Nudeln, 200 g Speck, 3 Eier, Salz": for how many, and the whole list in the same sentence. "Serves 4: a starter" lists nothing.</summary>
internal static class ServingsList
{
    private const int LongestLabel = 40;
    private const int FewestFoods = 3;

    /// <summary>Adds what it serves, its foods and the work behind them; false for any other line.</summary>
    public static bool Cut(RawLine raw, string lang, List<Piece> into)
    {
        string s = PartSentences.ForGuests(Folding.Line(raw.Text), lang, out string verb);
        int colon = s.AsSpan(0, Math.Min(s.Length, LongestLabel)).IndexOf(':');
        if (colon < 3 || s.AsSpan(0, colon).IndexOfAnyInRange('0', '9') < 0 || s.AsSpan(colon).IndexOfAnyInRange('0', '9') < 0 || Amounts.At(s, 0, lang) is { Unit: not null } || YieldWords.In(s[..colon].Trim(), raw.Span, lang) is null && !Looks.Statement(s[..colon].Trim(), lang))
        {
            return false;
        }

        List<string> sentences = MethodProse.Sentences(s[(colon + 1)..].Trim());
        List<string> foods = sentences.Count == 0 ? [] : [.. RunningText.Foods(sentences[0].TrimEnd('.'), lang)];
        int amounts = foods.Count(f => Looks.Amounted(f, lang));
        int fewest = verb.Length > 0 ? FewestFoods - 1 : FewestFoods;
        if (foods.Count < fewest || amounts < FewestFoods - 1 || amounts * 2 < foods.Count || !foods.TrueForAll(f => f.Length is > 2 and < 80 && !Clock.Tells(f, 0, lang) && !f.Contains('°')) || !foods.Exists(f => Amounts.At(f, 0, lang) is { Unit.Kind: "mass" or "volume" or "spoon" or "cup" } or null && Looks.Amounted(f, lang)))
        {
            return false;
        }

        into.Add(new Piece(PieceKind.Paragraph, s[..colon].Trim(), raw.Span));
        if (verb.Length > 0)
        {
            // No word of the card is lost.
            into.Add(new Piece(PieceKind.Paragraph, verb + ":", raw.Span));
        }

        into.AddRange(foods.Select(f => new Piece(PieceKind.Item, f, raw.Span)));
        if (sentences.Count > 1)
        {
            into.Add(new Piece(PieceKind.Step, string.Join(' ', sentences.Skip(1)), raw.Span));
        }

        return true;
    }
}
