using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <content>Where a title may stand, and sentences that may be the method.</content>
internal sealed partial class Shaper
{
    private const int Ahead = 60;

    /// <summary>True where sentences may be the method: under numbered steps they are remarks.</summary>
    private bool Prosaic(int i) => !_marked || !_numbered || _mode == "method" || (_plain > 0 || _bulleted) && !_steps && !NumbersFollow(i);

    /// <summary>"Boil 3 min." right under its list, or one sentence of work there on a card whose other parts number their steps.</summary>
    private bool Alone(string body, int i) =>
        _pieces.Count > 0 && _pieces[^1].Kind == PieceKind.Item && body[^1] is '.' && Looks.Opens(body, lang) && (!_marked || !_numbered || !NumbersFollow(i)) && (body.Length >= 12 || Looks.Timed(body, lang));

    /// <summary>A bare name between two bullets with amounts: "Decoration", "デコレーション". What goes on from the bullet before begins small.</summary>
    private bool Between(int i, string body) =>
        i > 0 && i + 1 < lines.Count && lines[i + 1].Block == lines[i].Block && lines[i - 1].Block == lines[i].Block && body.Length < 30 && Parts.Numberless(body) && (lang == "ja" ? body[^1] != '。' : Looks.Heading(body)) && body.AsSpan().IndexOfAny(",、(") < 0
        && Listed(lines[i - 1].Text) && Listed(lines[i + 1].Text) && !Looks.Food(body, lang) && !Looks.Used(body, lang) && !Looks.Work(body, lang);

    /// <summary>"SAUCE" over its work, where "SAUCE – 1 litre" headed its list: the same part, told in two places.</summary>
    private bool Again(int i, string body) =>
        _items && !_marked && body.Length < 40 && _pieces.Count < MostPieces && i + 1 < lines.Count && lines[i + 1].Block == lines[i].Block && Parts.Numberless(body) && !Parts.Listed(lines[i + 1].Text, lang)
        && body.TrimmedEnd(": ") is { Length: > 2 } name && _pieces.Exists(p => p is { Kind: PieceKind.Heading, Level: > 1 } && p.Text.Length > name.Length + 3 && p.Text.StartsWith(name, StringComparison.OrdinalIgnoreCase) && p.Text.AsSpan(name.Length).StartsWith(" - ") && char.IsAsciiDigit(p.Text[name.Length + 3]));

    /// <summary>"Arroz blanco" right under "Para servir" and over an amount: what is served, and no name of a part.</summary>
    private bool Served(int i, string body) =>
        !_marked && i > 0 && lines[i - 1].Block == lines[i].Block && _pieces.Count > 0 && _pieces[^1] is { Kind: PieceKind.Heading, Level: > 1 } head && head.Span.Line == lines[i - 1].Span.Line && Parts.Finish(head.Text, lang)
        && body.Length < 40 && body[^1] is not ('.' or ':' or '。') && !Looks.Capitals(body) && !Looks.Work(body, lang) && !Looks.Opens(body, lang) && !Looks.Timed(body, lang);

    /// <summary>True over a line that ends with a count, and under that a line with an amount: "Fumet" over "Cabezas de carabinero 12" and "Cebolla 150 g".</summary>
    private bool OverCount(int i) =>
        i + 2 < lines.Count && lines[i + 2].Block == lines[i].Block && lines[i + 1].Block == lines[i].Block && BackAmount.Counts(Folding.Line(lines[i + 1].Text), lang) && Parts.Listed(lines[i + 2].Text, lang);

    /// <summary>"Cabezas de carabinero 12" in a list that tells its amounts last.</summary>
    private bool Counting(int i, string body) =>
        !_marked && _mode != "method" && Counted(i, body)
        || !_marked && _mode != "method" && _pieces.Count > 0 && _pieces[^1] is { Kind: PieceKind.Item or PieceKind.Heading } before && i > 0 && lines[i - 1].Block == lines[i].Block && BackAmount.Counts(body, lang)
        && (before.Kind == PieceKind.Heading ? before.Level > 1 && i + 1 < lines.Count && lines[i + 1].Block == lines[i].Block && Last(lines[i + 1].Text) : Last(before.Text));

    /// <summary>"Cuisses de canard 4" over "Gros sel 60 g", "卵白 4個分" over "砂糖 50g": the first of a list, and no name of it.</summary>
    private bool Counted(int i, string body) =>
        i > 0 && i + 1 < lines.Count && lines[i + 1].Block == lines[i].Block && Last(lines[i + 1].Text) && BackAmount.Unit(Folding.Line(lines[i + 1].Text), lang)
        && (lang == "ja" ? body.Length < 20 && body[^1] is '分' or '前' && body.AsSpan().IndexOfAny(" …:・") is > 0 and var gap && FoodIds.Match(body[..gap], lang) is not null : BackAmount.Counts(body, lang));

    /// <summary>"2 leeks" right under the name of a part: a count opens its list where another item follows, or where it is of a food everybody knows. "2 minutes before serving, …" is none.</summary>
    private bool First(int i, string body) =>
        body.Length < 80 && body[^1] is not ('.' or ':' or '。')
        && (i + 1 < lines.Count && lines[i + 1].Block == lines[i].Block && Parts.Listed(lines[i + 1].Text, lang)
            || Reading.Amounts.At(body, 0, lang) is { } m && m.End < body.Length && FoodIds.Match(body[m.End..].Trim(), lang) is not null
            || char.IsLetter(body[0]) && BackAmount.Unit(body, lang));

    /// <summary>True for an item that tells its amount behind its name.</summary>
    private bool Last(string s) => Folding.Line(s) is { Length: > 3 } item && char.IsLetter(item[0]) && Looks.Amounted(item, lang) && !Looks.Statement(item, lang);

    /// <summary>"Emulsify.", "Kneten.", "Whip cream." right behind a list whose lines have no stop: an order, and no food.</summary>
    private bool ShortOrder(int i, string body)
    {
        if (_marked || !_items || _mode == "method" || body[^1] is not ('.' or '。') || body.Length > ShortestOrder || body.Count(' ') > 3 || !Parts.Numberless(body) || _pieces.Count < 2 || i == 0)
        {
            return false;
        }

        string bare = body.TrimEnd('.', '。');
        if (bare.Length < 2)
        {
            return false;
        }

        Piece before = _pieces[^1];
        bool goesOn = before.Kind == PieceKind.Step && before.Text.Length <= ShortestOrder && before.Text.EndsWith(body[^1]);
        bool opens = before.Kind == PieceKind.Item && !Stopped(before) && !Stopped(_pieces[^2]);
        // One word of work is enough; of two such lines none has to be known.
        return (goesOn || opens) && !Looks.Used(bare, lang) && !Looks.Used(body, lang) && FoodIds.Match(bare, lang) is null
            && (goesOn || Operations.In(bare, lang).Exists(o => o.At == 0) || FoodIds.Match(bare[..Places.WordEnd(bare, 0)], lang) is null && i + 1 < lines.Count && Folding.Line(lines[i + 1].Text) is { Length: > 2 and <= ShortestOrder } next && next[^1] == body[^1] && (Looks.Work(next, lang) || Looks.Opens(next, lang) || Operations.In(next, lang).Exists(o => o.At == 0)));
    }

    private const int ShortestOrder = 32;

    private static bool Stopped(Piece p) => p.Text.Length > 0 && p.Text[^1] is '.' or '。';

    private bool Listed(string s) => Looks.Bullet(s) && Marks.Strip(Folding.Line(s)) is { Length: > 0 } item && Looks.Amounted(item, lang);

    /// <summary>"| Chocolate tart |": the one cell over a table; null for a row.</summary>
    private string? Spanning(string s)
    {
        string cell = s.Trim('|', ' ');
        return cell.Length > 2 && !cell.Contains('|') && lines.Count > 1 && lines[1].Text is ['|', ..] next && next.Trim('|', ' ').Contains('|') && Looks.Heading(cell) && !Looks.Amounted(cell, lang) ? Folding.Line(cell) : null;
    }

    /// <summary>True when no line but the first is underlined or marked as a heading.</summary>
    private bool Lone()
    {
        for (int k = 2; k < lines.Count; k++)
        {
            if (lines[k].Text[0] == '#' || lines[k].Text[0] is '-' or '=' && Titles.Underlined(lines, k - 1) > 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>True when a numbered line stands before the next marked heading.</summary>
    private bool NumbersFollow(int i)
    {
        for (int k = i + 1; k < lines.Count && k - i < Ahead && lines[k].Text[0] != '#'; k++)
        {
            if (Marks.ListNumber(lines[k].Text, 0) > 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Behind the sentences of a method no list of ingredients goes on.</summary>
    private void Told(int from)
    {
        Note(from);
        _mode = _mode == "ingredients" ? "" : _mode;
    }

    /// <summary>"lift out, pass liquor, reduce by half" right under "everything in, lid on, 3 hrs": a note of work goes on as it began, without stops.</summary>
    private bool GoesOn(int i, string body) =>
        !_marked && !_numbered && i > 0 && lines[i - 1].Block == lines[i].Block && _pieces.Count > 1 && _pieces[^1] is { Kind: PieceKind.Step } last && last.Span.Line == lines[i - 1].Span.Line && last.Text[^1] is not ('.' or '。') && body[^1] is not (':' or '!' or '?') && body.Length < 120;

    /// <summary>"para rebozar" over "2 huevos", at the head of its block: a purpose in small letters names what stands under it.</summary>
    private bool Purpose(string body, int i, bool opens, bool listed) =>
        !_marked && opens && listed && i > 0 && _items && !_steps && body.Length < 40 && body.Count(' ') is > 0 and < 4 && char.IsLower(body[0]) && char.IsLetter(body[^1]) && Parts.Numberless(body) && !Looks.Bullet(lines[i + 1].Text) && Lexicon.Longest("heading", body, 0, 3, lang, out _) is not null && !Looks.Statement(body, lang);

    /// <summary>"pepe q.b." at the head of its block, behind steps: a list goes on with what is taken to taste.</summary>
    private bool ToTaste(string body, bool opens) =>
        !_marked && opens && _steps && _items && _mode.Length == 0 && body.Length < 40 && body[^1] != ':' && Looks.Used(body, lang) && FoodIds.Match(body[..Places.WordEnd(body, 0)], lang) is not null && !Looks.Timed(body, lang);

    /// <summary>"One loaf. Leftovers: slice and freeze.": what the method makes, told in a word before what is done with it.</summary>
    private bool Made(string body, Span span)
    {
        int stop = _steps && _mode != "notes" && body.Length < 240 ? body.AsSpan(0, Math.Min(body.Length, 30)).IndexOf(". ") : -1;
        if (stop < 4 || !(char.IsAsciiDigit(body[0]) || char.IsUpper(body[0])) || YieldWords.Made(body[..stop], lang) is not { Unit: not "pieces" })
        {
            return false;
        }

        Add(new Piece(PieceKind.Paragraph, body[..(stop + 1)], span));
        Add(new Piece(PieceKind.Step, body[(stop + 2)..], span));
        return true;
    }

    /// <summary>A line of a card jotted at night, which its neighbours tell.</summary>
    private void Jotted(int i)
    {
        string body = Folding.Line(lines[i].Text);
        switch (_jotted![i])
        {
            case NoteCards.Kind.Title: Head(body, 1, lines[i].Span); break;
            case NoteCards.Kind.Head: Head(body, 2, lines[i].Span); break;
            case NoteCards.Kind.Work: Add(new Piece(PieceKind.Step, lines[i].Text, lines[i].Span)); break;
            default: Add(new Piece(PieceKind.Paragraph, body, lines[i].Span)); break;
        }
    }

    private bool Step(string body)
    {
        if (!_items && !_steps)
        {
            return false;
        }

        if (lang == "ja" && body.Length > 4 && body[0] == '一' && body[1] is '、' or '.' or ' ' && body[^1] == '。')
        {
            // "一、木べらで二十五分練る。": every item of an old list is numbered one
            return true;
        }

        if (body.IndexOf(':') is > 2 and < 40 and var colon && _pieces.Count < MostPieces && Looks.Timed(body, lang) && Parts.Headed(_pieces, body[..colon].Trim()))
        {
            // "Sofrito: 45 min a fuego lento." under the list of the sofrito
            return true;
        }

        if (!_marked && Looks.Behind(_plain, body, lang) && Looks.Timed(body, lang) && !Looks.Amounted(body, lang))
        {
            // "stock in, lid, 150C 4-5h till spoon tender"
            return true;
        }

        // In a card with marked headings and numbered steps a sentence between them stays a remark.
        return Looks.Work(body, lang) && (!_marked || !_numbered) && (body[^1] is '.' or '。' || !_marked)
            || !_marked && _pieces.Count > 0 && _pieces[^1].Kind is PieceKind.Step && body[^1] is '.' or '。' && !_numbered
            || !_marked && !_numbered && _pieces.Count > 0 && _pieces[^1].Kind is PieceKind.Item && body[^1] is '.' or '。' or '!' && body.Count(' ') > 1 && lang is not "en" && NameList.Of(body.TrimEnd('.'), lang) is null;
    }

    private bool Title(string body, int i) =>
        !_titled && !_named && !_items && body.Length <= 120 && (i == 0 || Opening()) && !Parts.Numbered(body) && !Looks.Sentences(body) && !(lang == "ja" && body.IndexOf('。') is >= 0 and var stop && stop < body.Length - 1) && !Titles.Furniture(body) && !Looks.Amounted(i == 0 && (lines.Count < 2 || lines[1].Block != lines[0].Block) ? Titles.Unbracketed(body) : body, lang) && !(body[^1] == '.' && (Looks.Work(body, lang) || Prose.Foods(body, lang).Count > 1));

    /// <summary>True while nothing but what a page hangs around a recipe was seen.</summary>
    private bool Opening() => _pieces.Count < 8 && _pieces.TrueForAll(p => p.Kind == PieceKind.Paragraph && (Titles.Furniture(p.Text) || Furniture.Is(p.Text) || Greetings.Header(p.Text) || Front.Sheeted(p.Text) || CountLabels.Opens(p.Text, lang) || p.Text == lines[0].Text && _pages.Contains(0)));
}
