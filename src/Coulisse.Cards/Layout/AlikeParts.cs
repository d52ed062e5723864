using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Names of parts that their own line does not give away: the next letter of a row of letters, a name in small letters over bullets, a name over a list that begins with a part made before.</summary>
internal static class AlikeParts
{
    private const int Longest = 40;
    private const int MostWords = 4;

    /// <summary>In a longer card headings are not looked through for every line.</summary>
    private const int MostPieces = 400;
    private static readonly WordList Sentence = new("the", "a", "an", "all", "with", "and", "then", "you", "your", "we", "i", "need", "needs", "take", "use", "into", "la", "le", "les", "un", "une", "avec", "et", "il", "vous", "die", "der", "das", "den", "mit", "und", "man", "el", "los", "las", "con", "y", "lo", "gli", "e");

    /// <summary>True when the line, which opens its block, names the list right under it.</summary>
    public static bool Name(List<RawLine> lines, int i, string body, string lang, List<Piece> pieces)
    {
        if (i + 1 >= lines.Count || lines[i + 1].Block != lines[i].Block || body.Length is < 3 or > Longest || body[^1] is '.' or ',' or ';' or '!' or '?' or '。')
        {
            return false;
        }

        return char.IsLower(body[0]) ? Small(lines[i + 1].Text, body, lang) || Blocks(lines, i, body, lang) : Lettered(body, pieces) || OfAnother(lines, i, body, lang, pieces);
    }

    /// <summary>True right under a heading for a line that takes a part made before.</summary>
    public static bool Opened(List<Piece> pieces, string line) => pieces.Count > 0 && pieces[^1].Kind == PieceKind.Heading && Takes(pieces, line);

    /// <summary>"First dough, all of it", "tutta la biga", "Levain": a line that takes a part made before by its name.</summary>
    public static bool Takes(List<Piece> pieces, string line)
    {
        int cut = line.AsSpan().IndexOfAny(",(");
        line = line[..Reading.WholeOf.Before(line)];
        int from = Reading.WholeOf.Behind(line);
        ReadOnlySpan<char> name = cut < from && cut >= 0 ? [] : line.AsSpan(from..(cut < 0 ? line.Length : cut)).Trim();
        if (name.Length is < 4 or > Longest || pieces.Count > MostPieces)
        {
            return false;
        }

        foreach (Piece p in pieces)
        {
            if (p is { Kind: PieceKind.Heading, Level: > 1 } && name.Equals(p.Text, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"C - Bench" behind "B - Dough": the next letter with the same sign, whatever stands under it.</summary>
    private static bool Lettered(string body, List<Piece> pieces)
    {
        char sign = body[0] is >= 'B' and <= 'Z' ? Sign(body) : ' ';
        if (sign == ' ')
        {
            return false;
        }

        for (int k = pieces.Count - 1; k >= 0; k--)
        {
            if (pieces[k].Kind == PieceKind.Heading)
            {
                return pieces[k] is { Level: > 1, Text: { Length: > 2 } before } && before[0] == body[0] - 1 && Sign(before) == sign;
            }
        }

        return false;
    }

    /// <summary>The sign between a lone letter and its name; a blank where none stands.</summary>
    private static char Sign(string s) => s.Length < 5 ? ' ' : s[1] is '.' or ')' or ':' && s[2] == ' ' ? s[1] : s[1] == ' ' && s[2] is '-' or '–' or '—' && s[3] == ' ' ? s[2] : ' ';

    /// <summary>"crab mix" over "- 500 g white crab meat": a few small words that are no sentence, over a bullet that opens with an amount.</summary>
    private static bool Small(string next, string body, string lang)
    {
        if (!Looks.Bullet(next) || body.AsSpan().IndexOfAny(Signs) >= 0 || body.Count(' ') >= MostWords || Sentence.In(body) || Looks.Used(body, lang))
        {
            return false;
        }

        string item = Reading.Marks.Strip(Folding.Line(next));
        return item.Length > 0 && Amounts.At(item, 0, lang) is not null && !Looks.Work(item, lang) && !Looks.Timed(item, lang);
    }

    /// <summary>"lamb" over "2.2kg lamb shoulder", and "harissa mayo" over its own list: names in small letters that open blocks, two of them near each other at least. One alone may be the food that opens a list.</summary>
    private static bool Blocks(List<RawLine> lines, int i, string body, string lang)
    {
        bool another = false;
        int last = Opens(lines, i, body, lang) ? Math.Min(lines.Count, i + Near) : 0;
        for (int k = Math.Max(0, i - Near); k < last && !another; k++)
        {
            another = k != i && Opens(lines, k, lines[k].Text, lang);
        }

        return another;
    }

    /// <summary>How many lines away another such name is looked for.</summary>
    private const int Near = 40;

    private static bool Opens(List<RawLine> lines, int i, string text, string lang) =>
        i + 1 < lines.Count && (i == 0 || lines[i - 1].Block != lines[i].Block) && lines[i + 1].Block == lines[i].Block && text.Length is > 2 and <= Longest && char.IsLower(text[0])
        && Titles.Unbracketed(text) is { Length: > 2 } name && char.IsLetterOrDigit(name[^1]) && name.AsSpan().IndexOfAny(Signs) < 0 && name.Count(' ') < MostWords && !Sentence.In(name) && !Looks.Used(name, lang) && !Looks.Work(name, lang)
        && Folding.Line(lines[i + 1].Text) is { Length: > 0 } item && Looks.Amounted(item, lang) && !Looks.Work(item, lang) && !Looks.Timed(item, lang);

    private static readonly System.Buffers.SearchValues<char> Signs = System.Buffers.SearchValues.Create("0123456789,;:.!?()[]/=+%°@|");

    /// <summary>"SECOND DOUGH" over "First dough, all of it" and a list: what is made before goes in first.</summary>
    private static bool OfAnother(List<RawLine> lines, int i, string body, string lang, List<Piece> pieces) =>
        i + 2 < lines.Count && lines[i + 2].Block == lines[i].Block && pieces.Count > 0 && pieces[^1].Kind == PieceKind.Item && Looks.Heading(body)
        && Takes(pieces, Reading.Marks.Strip(Folding.Line(lines[i + 1].Text))) && Parts.Listed(lines[i + 2].Text, lang) && !Looks.Amounted(body, lang);
}
