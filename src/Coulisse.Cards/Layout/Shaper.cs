using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Layout before lines: decides for each line, by its shape and its neighbours, whether it heads, lists, tells a step or remarks.</summary>
internal sealed partial class Shaper(List<RawLine> lines, string lang)
{
    /// <summary>A card of more pieces is a book: its headings are not looked through for every line.</summary>
    private const int MostPieces = 400;
    private readonly List<Piece> _pieces = new(lines.Count);
    private readonly BulletRuns _runs = new(lines);
    private readonly HashSet<int> _pages = PageHeads.Of(lines, lang);
    private readonly Dictionary<int, int> _bulletHeads = BulletHeads.Of(lines, lang);
    private readonly StepCount _counted = new(lang);
    private readonly bool _marked = lines.Exists(l => l.Text.StartsWith("## ", StringComparison.Ordinal) || l.Text.StartsWith("### ", StringComparison.Ordinal));
    private readonly bool _numbered = lines.Exists(l => Marks.ListNumber(l.Text, 0) > 0);
    private readonly NoteCards.Kind[]? _jotted = NoteCards.Of(lines, lang);
    private string _mode = "";
    private bool _titled;
    private bool _items;
    private bool _steps;
    private bool _headedList;
    private bool _named;
    private int _plain;
    private bool _bulleted;
    private bool _labelled;

    /// <summary>The pieces in the order of the text.</summary>
    public List<Piece> Shape()
    {
        Foreseen? foreseen = Foreseen.Of(lines, lang);
        using Looks.Known _ = Looks.Knowing(foreseen);
        int i = lines.Count > 0 && lines[0].Text == "---" ? FrontMatter.Read(lines, Add) : 0;
        while (i < lines.Count)
        {
            i = One(i);
        }

        Titles.Only(_pieces, lines);
        return Prose.Is(_pieces, lang) ? Prose.Cut(_pieces, lang, foreseen) : OneParagraph.Cut(MethodFirst.Read(ToldParts.Read(_pieces, lang), lang), lang);
    }

    private int One(int i)
    {
        RawLine raw = lines[i];
        string s = raw.Text;
        if (s[0] == '#' && Titles.Hashes(s) is var level and > 0)
        {
            string heading = Titles.Hashed(s, level);
            Head(heading, level > 1 && _pieces.Count == 0 && Titles.Alone(lines, i, level, lang) && Sections.Of(heading, lang) is null ? 1 : level, raw.Span);
        }
        else if (Titles.Underlined(lines, i) is var under and > 0)
        {
            Head(Folding.Line(s), _pieces.Count == 0 && (Titles.Underlined(lines, i + 2) > 0 || i == 0 && Lone()) ? 1 : under, raw.Span);
            return i + 2;
        }
        else if (Titles.Rule(s))
        {
            return i + 1;
        }
        else if (_jotted is not null && _jotted[i] != NoteCards.Kind.None)
        {
            Jotted(i);
        }
        else if (_pages.Count > 0 && _pages.Contains(i))
        {
            Add(new Piece(PieceKind.Paragraph, s, raw.Span));
        }
        else if (_bulletHeads.TryGetValue(i, out int dressed))
        {
            Head(Marks.Strip(Folding.Line(s)).Trimmed(" :"), dressed, raw.Span);
        }
        else if (lang == "ja" && _mode is not ("notes" or "method") && (JapaneseGroups.Line(s) || KanjiAmounts.Item(s)))
        {
            Add(new Piece(PieceKind.Item, s, raw.Span));
        }
        else if (lang == "ja" && _mode is not ("notes" or "method") && JapaneseGroups.Alone(s) is { } letter)
        {
            Add(new Piece(PieceKind.Paragraph, letter + ":", raw.Span));
        }
        else if ((!_titled && !_named && Opening() ? Front.Title(lines, i, lang) : null) is { Name: var title, Beside: var beside })
        {
            Head(title, 1, raw.Span);
            if (title.Length == 0 || beside.Length > 0)
            {
                Add(new Piece(PieceKind.Paragraph, title.Length == 0 ? s : beside, raw.Span));
            }
        }
        else if ((Dresses.Of(lines, i, lang) ?? HeadedColumn.Named(lines, i, _titled || _named || _items, lang)) is { } name)
        {
            Head(name, 2, raw.Span);
        }
        else if (s.StartsWith("**", StringComparison.Ordinal) && s.Length < 80 && Folding.Line(s).Trimmed(" :") is var strong && Sections.Of(strong, lang) is not null)
        {
            Head(strong, 2, raw.Span);
        }
        else if (s.StartsWith("**", StringComparison.Ordinal) && Looks.Statement(Folding.Line(s), lang) && s.Length < 80)
        {
            Add(new Piece(PieceKind.Paragraph, s, raw.Span));
        }
        else if (s.StartsWith("**", StringComparison.Ordinal) && s.TrimEnd(':', ' ').EndsWith("**", StringComparison.Ordinal) && s.Length < 80)
        {
            Head(Folding.Line(s).Trimmed(" :"), !_titled && _pieces.Count == 0 && Titles.Bold(lines, i, lang) ? 1 : 2, raw.Span);
        }
        else if (i == 0 && !_titled && s[0] == '|' && Spanning(s) is { } spanning)
        {
            Head(spanning, 1, raw.Span);
        }
        else if (s.Contains('|') && !Looks.Bullet(s) && Marks.ListNumber(s, 0) == 0 && Tables.End(lines, i) is var end && end > i + 1 && _mode is not ("notes" or "method"))
        {
            return Table(i, end);
        }
        else if (_mode == "notes" || Furniture.Is(s) || s.IndexOf(':') is > 1 and < 26 and var told && _titled && Sections.Of(s[..told].Trim(), lang) == "notes" || i < 8 && !_items && Greetings.Opens(s) || i < 8 && (Greetings.Header(s) || i > 0 && Greetings.Receiver(lines[i - 1].Text, s)) || i > 2 && (Greetings.Closes(s) || Greetings.Leaves(s, lang)) || Front.Tells(lines, i, !_items && !_steps && !_named, lang))
        {
            Add(new Piece(PieceKind.Paragraph, s, raw.Span));
        }
        else if ((Remarks.Of(raw, lang) ?? (_mode != "method" && PlateLines.In(s, lang, _marked || _items) ? s : null)) is { } remark)
        {
            Add(new Piece(PieceKind.Paragraph, remark, raw.Span));
        }
        else if (_mode != "method" && TotalHeads.Of(lines, i, lang) is { } whole)
        {
            Head(whole, 2, raw.Span);
        }
        else if (_mode != "method" && (TwoLists.Cut(lines, i, lang, _pieces, out int both) || TwoLists.Pairs(lines, i, lang, _pieces, out both)))
        {
            Note(0);
            return both;
        }
        else if (_mode != "method" && Columned(i, out int behind))
        {
            return behind;
        }
        else if (_mode is "" or "ingredients" && !_steps && (s.Contains(':') || PartSentences.May(s)) && ServingsList.Cut(raw, lang, _pieces))
        {
            Note(_pieces.Count - 1);
            _items = true;
        }
        else if (_mode is "" or "ingredients" && _items && !_steps && s.Contains(':') && NamedFoods.Cut(raw, lang, _pieces))
        {
            Note(_pieces.Count - 1);
            _named = true;
        }
        else if ((!_steps || _labelled || _mode == "ingredients" || Looks.Bullet(s) || _mode.Length == 0 && (RunningText.Led(s) || RunningText.Weighed(s))) && RunningText.Labelled(raw, lang, _pieces) || _mode is "" or "ingredients" && !_steps && NamedNeighbours.Cut(lines, i, lang, _pieces))
        {
            _labelled = true;
            _plain = 2;
            Note(_pieces.Count - 1);
        }
        else if (!_marked && _mode.Length == 0 && RunningText.Headed(lines, i, lang, _pieces))
        {
            _labelled = true;
            Note(_pieces.Count - 1);
            return i + 2;
        }
        else if (_mode is "" or "ingredients" && !_steps && (_titled || _items) && (ListLine.Cut(raw, lang, _pieces) || RunInLists.Cut(raw, lang, _pieces)))
        {
            _items = true;
        }
        else if (!_marked && !_items && !_steps && _mode.Length == 0 && i > 0 && BareLists.End(lines, i, lang) is var bare && bare > i)
        {
            for (int k = i; k < bare; k++)
            {
                Add(new Piece(PieceKind.Item, lines[k].Text, lines[k].Span));
            }

            return bare;
        }
        else if (RunningText.Is(s, lang))
        {
            int from = _pieces.Count;
            RunningText.Cut(raw, lang, _pieces);
            Note(from);
        }
        else if (Marks.ListNumber(s, 0) is > 0 and var numbered && _mode != "method" && Parts.Counted(lines, i, numbered, lang))
        {
            Head(Folding.Line(s.AsSpan(numbered)).Trimmed(" :"), 2, raw.Span);
        }
        else if (Marks.ListNumber(s, 0) > 0)
        {
            // Numbers under bullets are steps, whatever they weigh.
            bool item = _mode != "method" && !_steps && !_bulleted && Marks.Strip(Folding.Line(s)) is var body && Looks.Amounted(body, lang) && !Looks.Work(body, lang) && !(lang == "ja" && body[^1] == '。');
            Add(new Piece(item ? PieceKind.Item : PieceKind.Step, s, raw.Span));
        }
        else if (_pieces.Count > 0 && _pieces[^1].Kind == PieceKind.Step && char.IsAsciiDigit(s[0]) && Numbering.GoesOn(lines, i, lang))
        {
            Add(new Piece(PieceKind.Step, _counted.Without(s), raw.Span));
        }
        else if ((Dresses.Over(lines, i, _titled || _named || _items, lang) ?? Dresses.Indented(lines, i, lang)) is { } over)
        {
            Head(over, 2, raw.Span);
        }
        else if (Dresses.Flagged(lines, i, lang) is { } flagged)
        {
            Head(flagged, 2, raw.Span);
        }
        else if (Looks.Bullet(s))
        {
            Bullet(i);
        }
        else
        {
            Plain(i);
        }

        return i + 1;
    }

    private void Plain(int i)
    {
        RawLine raw = lines[i];
        string body = Folding.Line(raw.Text);
        if (body.Length == 0)
        {
            return;
        }

        bool opens = i == 0 || lines[i - 1].Block != raw.Block || _pieces.Count > 0 && _pieces[^1].Kind == PieceKind.Heading;
        bool listed = i + 1 < lines.Count && lines[i + 1].Block == raw.Block && Parts.Listed(lines[i + 1].Text, lang);
        listed |= opens && (Parts.Apart(lines, i, lang) || OverCount(i));
        bool over = listed && lines[i + 1].Indent > raw.Indent;
        if (body.Length < 60 && Sections.Of(body.TrimmedEnd(": "), lang) is { } section && !(section == "notes" && char.IsLower(body[0]) && !opens && body[^1] != ':'))
        {
            Head(body.TrimmedEnd(": "), 2, raw.Span);
        }
        else if (_tabled && UnderTable(i, body))
        {
            Add(new Piece(PieceKind.Step, raw.Text, raw.Span));
            _mode = _mode == "ingredients" ? "" : _mode;
        }
        else if (_steps && MethodProse.AllBeside(body, lang))
        {
            Add(new Piece(PieceKind.Paragraph, body, raw.Span));
        }
        else if (Made(body, raw.Span))
        {
            return;
        }
        else if (!_titled && !_named && Opening() && (YieldWords.Names(body, lang, alone: i + 1 >= lines.Count || lines[i + 1].Block != raw.Block) || CountedTitles.Is(lines, i, body, lang) || DishCounts.Is(lines, i, body, lang)))
        {
            Head(body, 1, raw.Span);
        }
        else if (Again(i, body))
        {
            Head(body.TrimmedEnd(": "), 2, raw.Span);
        }
        else if (Titles.Same(body))
        {
            Add(new Piece(PieceKind.Variant, body.TrimEnd(':'), raw.Span));
        }
        else if (listed && (_titled || _named) && Parts.Finish(Parts.Unlettered(body), lang))
        {
            Head(body.TrimmedEnd(": "), 2, raw.Span);
        }
        else if (Looks.Statement(body, lang) && !Looks.Amounted(body, lang) && !(_items && MethodProse.Baked(body, lang)))
        {
            int from = _pieces.Count;
            if ((_items || _steps) && Prosaic(i) && MethodProse.Cut(raw, body, lang, _pieces))
            {
                Told(from);
            }
            else
            {
                Add(new Piece(PieceKind.Paragraph, body, raw.Span));
            }
        }
        else if (body[^1] == ':' && !_items && !_titled && Greetings.LeadsIn(body))
        {
            Add(new Piece(PieceKind.Paragraph, body.TrimmedEnd(": "), raw.Span));
        }
        else if (body[^1] == ':' && body.Length < 80 && !_marked && listed && !Looks.Order(body, lang))
        {
            Head(body.TrimmedEnd(": "), 3, raw.Span);
        }
        else if (body[^1] == ':' && body.Length < 80)
        {
            Add(new Piece(!_marked && listed ? PieceKind.Step : PieceKind.Paragraph, body, raw.Span));
        }
        else if (!_marked && _items && !_steps && Between(i, body))
        {
            Head(body, 2, raw.Span);
        }
        else if ((_titled || _named) && i + 1 < lines.Count && (Parts.Finish(body, lang) || !_marked && Parts.Restarts(lines, i, body, lang, _mode == "method")))
        {
            Head(body, 2, raw.Span);
        }
        else if (_mode == "method")
        {
            Add(new Piece(PieceKind.Step, _counted.Without(raw.Text), raw.Span));
        }
        else if (ShortOrder(i, body))
        {
            Add(new Piece(PieceKind.Step, raw.Text, raw.Span));
            _mode = "";
        }
        else if (_mode == "ingredients" && _pieces[^1].Kind == PieceKind.Item && MethodProse.EndsList(body, opens, i > 0 ? lines[i - 1].Text : "", lang))
        {
            Add(new Piece(PieceKind.Step, raw.Text, raw.Span));
            _mode = "";
        }
        else if (Title(body, i))
        {
            Head(body, 1, raw.Span);
        }
        else if (!_marked && _mode.Length == 0 && FigureSheets.Line(lines, i, body, lang))
        {
            _plain++;
            Add(new Piece(PieceKind.Item, raw.Text, raw.Span));
        }
        else if (Served(i, body) || Counting(i, body))
        {
            _plain++;
            Add(new Piece(PieceKind.Item, raw.Text, raw.Span));
        }
        else if (!_marked && (listed && !Counted(i, body) && (opens || over || Looks.Capitals(body) || RunningText.Opens(body)) && Parts.Plain(body, lang) && !AlikeParts.Opened(_pieces, body) || opens && !_steps && AlikeParts.Name(lines, i, body, lang, _pieces)))
        {
            Head(body, 2, raw.Span);
        }
        else if (Purpose(body, i, opens, listed))
        {
            Head(body, 2, raw.Span);
        }
        else if (Item(body, i, opens) || ToTaste(body, opens))
        {
            _plain++;
            Add(new Piece(PieceKind.Item, raw.Text, raw.Span));
        }
        else if (Step(body) || Alone(body, i) || _items && MethodProse.Baked(body, lang) || GoesOn(i, body) || !_marked && opens && _items && _mode.Length == 0 && Parts.Worked(lines, i, lang))
        {
            Add(new Piece(PieceKind.Step, raw.Text, raw.Span));
        }
        else
        {
            Add(new Piece(PieceKind.Paragraph, body, raw.Span));
        }
    }

    private bool Item(string body, int i, bool opens)
    {
        if (_mode == "ingredients")
        {
            return true;
        }

        if (lang == "ja" && body[^1] == '。' || body[^1] == '?' && !Looks.Amounted(body, lang))
        {
            // "and then?" asks, and is bought by nobody.
            return false;
        }

        if (!_marked && Leaders.In(body))
        {
            return true;
        }

        if (Looks.Amounted(body, lang))
        {
            // In a card with marked headings a sentence may open with a figure; there a list stands under its name, before the steps.
            return _marked ? _named && !_steps && (Reading.Amounts.At(body, 0, lang) is { Unit: not null } || (opens ? First(i, body) : _pieces[^1].Kind == PieceKind.Item) && !Looks.Work(body, lang)) : !Looks.Work(body, lang) || !_items;
        }

        if (!_marked && _pieces.Count > 0 && _pieces[^1] is { Kind: PieceKind.Heading, Level: > 1 } && body.Length < 40 && !Looks.Work(body, lang) && (body[^1] != '.' && (Looks.Food(body, lang) || AlikeParts.Takes(_pieces, body)) || Looks.Used(body, lang)))
        {
            // "To finish", and under it "Parmesan"
            return true;
        }

        return !opens && i > 0 && _pieces.Count > 0 && _pieces[^1].Kind == PieceKind.Item && !Looks.Bullet(lines[i - 1].Text) && body.Length < 80 && (body[^1] != '.' || body.Length < 20 || NameList.Of(body.TrimEnd('.'), lang) is not null) && !Looks.Work(body, lang) && !(Looks.Behind(_plain, body, lang) && Looks.Timed(body, lang)) && (!_marked || _named && !_steps && (Looks.Used(body, lang) || body.Length < 30 && FoodIds.Match(body, lang) is not null));
    }

    private void Note(int from)
    {
        for (int k = from; k < _pieces.Count; k++)
        {
            _items |= _pieces[k].Kind == PieceKind.Item;
            _steps |= _pieces[k].Kind == PieceKind.Step;
            _named |= _pieces[k].Kind == PieceKind.Heading;
        }
    }

    private void Add(Piece piece)
    {
        _items |= piece.Kind == PieceKind.Item;
        _steps |= piece.Kind == PieceKind.Step;
        _titled |= piece is { Kind: PieceKind.Heading, Level: 1 };
        _pieces.Add(piece);
    }
}
