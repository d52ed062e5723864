using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Writes the rows of a pasted sheet as lines: the list with bars, one block to each table; all else as a cook writes it.</summary>
/// <param name="rows">The rows of the sheet.</param>
/// <param name="headless">True where no row names the columns.</param>
/// <param name="asides">Where rows go that tell of the house.</param>
/// <param name="lang">Language code.</param>
internal sealed class SpreadsheetLines(List<SpreadsheetRow> rows, bool headless, List<RawLine> asides, string lang)
{
    private const int LongestFood = 30;
    private readonly List<RawLine> _lines = new(rows.Count);
    private SpreadsheetRow? _head;
    private SpreadsheetRow? _over;
    private bool _open;
    private bool _barred;
    private bool _titled;
    private int _block;
    private int _steps;
    private int _told;
    private bool _work;
    private bool _section;
    private int _heads;
    private int _first = -1;
    private int _made = -1;

    /// <summary>The lines in the order of the rows.</summary>
    public List<RawLine> Of()
    {
        for (int i = 0; i < rows.Count; i++)
        {
            SpreadsheetRow row = rows[i];
            if (row.Filled == 0)
            {
                continue;
            }

            SpreadsheetRow? next = i + 1 < rows.Count ? rows[i + 1] : null;
            if (row.HeadOver(next, Below(i, 2)))
            {
                Open(row);
            }
            else if (_head is not null && Numbered(row))
            {
                Behind(Counted(_steps, row.Joined(row.First + 1)), row.Line, i);
            }
            else if (!_titled && row.Named is { } title)
            {
                Alone("# " + title, row.Line);
            }
            else if (row.Pairs is { } pairs)
            {
                Alone(pairs.First, row.Line);
                Alone(pairs.Second, row.Line);
            }
            else if (row.Aside)
            {
                asides.Add(row.Line with { Text = row.Spaced });
            }
            else if ((row.Label ?? (row.Filled == 1 ? row.Only : null)) is { } made && Whole(made, i))
            {
                Over(made, row.Line);
            }
            else if (row.Label is { } label)
            {
                _open &= !_barred;
                Alone(label, row.Line);
            }
            else if (_head is null && headless && row.Plain)
            {
                _head = row;
                _open = true;
                Listed(row);
            }
            else if (row.Filled == 1 && i == 0 && !headless && char.IsLetter(row.Only[0]) && row.Only[^1] is not '.' && LineKinds.HasAmount(row.Only, lang) && !Looks.Work(row.Only, lang) && !Looks.Statement(row.Only, lang))
            {
                // "Croissants, 5 kg of flour" over the head of its list is no row of it.
                Alone("# " + row.Only, row.Line);
            }
            else if (row.Filled == 1)
            {
                One(row, next, i);
            }
            else if (_head is null)
            {
                asides.Add(row.Line with { Text = row.Spaced });
            }
            else if (row.StepHead)
            {
                (_open, _work) = (false, true);
            }
            else if (row.Timed || _work && !row.Amounted)
            {
                Worked(row, i);
            }
            else if (_open || row.Amounted && _steps == 0 && i > 0 && Name(rows[i - 1]))
            {
                Listed(row);
            }
            else
            {
                Behind(row.Joined(0), row.Line, i);
            }
        }

        return _lines;
    }

    /// <summary>What the sheet makes, told under its only list: no more rows of foods follow. Under the last part it would be what that part makes.</summary>
    private bool Whole(string made, int i) =>
        _heads == 1 && _first >= 0 && !_section && _steps + _told == 0 && YieldWords.In(made, default, lang) is not null && !rows.Skip(i + 1).TakeWhile(r => !(r.Filled == 1 && Sections.Of(r.Only.TrimmedEnd(": "), lang) is not null)).Any(r => r.Amounted);

    /// <summary>A line over the list.</summary>
    private void Over(string text, RawLine line)
    {
        _lines.Insert(_first, line with { Text = text, Block = _made, Indent = 0 });
        _made--;
    }

    private SpreadsheetRow? Below(int i, int by) => i + by < rows.Count ? rows[i + by] : null;

    private void Open(SpreadsheetRow head)
    {
        _head = head;
        _heads++;
        (_open, _barred, _work) = (true, false, false);
        (_steps, _told) = (0, 0);
        if (_over is { } name)
        {
            // The name over the head of its list is the first row of it.
            _over = null;
            Listed(name);
        }
    }

    private void Listed(SpreadsheetRow row)
    {
        (_open, _section) = (true, false);
        if (!_barred)
        {
            // A list behind other lines has the columns of the one before.
            _barred = true;
            _block++;
            _first = _first < 0 ? _lines.Count : _first;
            if (!headless)
            {
                Add(_head!.Barred(_head.Cells.Length), _head.Line);
            }
        }

        Add(row.Barred(_head!.Cells.Length, Foods(_head)), row.Line);
    }

    /// <summary>The column of the foods: its head says so, or it is the first that is neither a number of the row nor an amount.</summary>
    private int Foods(SpreadsheetRow head) => headless ? 0 : Array.FindIndex(head.Cells, TableColumns.Opens) is >= 0 and var said ? said : head.First > 0 ? 0 : Array.FindIndex(head.Cells, c => c.Length > 0 && !ColumnHeads.Number(c) && !ColumnHeads.Weighs(c, lang) && !ColumnHeads.Share(c) && !ColumnHeads.Price(c));

    /// <summary>One cell alone: the name of a part over its rows, a food without an amount, a section, a sentence.</summary>
    private void One(SpreadsheetRow row, SpreadsheetRow? next, int i)
    {
        if (Sections.Of(row.Only.TrimmedEnd(": "), lang) is not null)
        {
            (_steps, _told, _open, _work, _section) = (0, 0, false, false, true);
            Alone($"**{row.Only.TrimmedEnd(": ")}**", row.Line);
        }
        else if (_head is not null && !row.Sentence && next?.HeadOver(Below(i, 2), Below(i, 3)) == true && Name(row))
        {
            _over = row;
        }
        else if (_head is not null && (!row.Sentence && next is { Amounted: true, Number: 0 } && (_open || Name(row)) || _open && Looks.Food(row.Only, lang) && row.Only.Length < LongestFood))
        {
            _steps = 0;
            Listed(row);
        }
        else if (_head is not null && !_section && _steps == 0 && next is not { Filled: 1 } && (i == 0 || rows[i - 1].Filled != 1) && row.Ordered)
        {
            Worked(row, i);
        }
        else
        {
            _titled |= _head is null;
            Behind(row.Only, row.Line, i);
        }
    }

    /// <summary>A step without a number under the list: it gets one, as the steps of other sheets have.</summary>
    private void Worked(SpreadsheetRow row, int i) => Behind(Marks.ListNumber(row.Cells[row.First], 0) > 0 ? row.Joined(0) : Counted(++_told, row.Filled == 1 ? row.Only : row.Joined(0)), row.Line, i);

    /// <summary>A line in a block of its own.</summary>
    private void Alone(string text, RawLine line)
    {
        _titled |= text[0] == '#';
        _barred = false;
        _block++;
        Add(text, line);
        _block++;
    }

    /// <summary>The numbers of the steps go on from one; a count of a food seldom does, and has no sentence behind it.</summary>
    private bool Numbered(SpreadsheetRow row)
    {
        bool next = row.Number > 0 && row.Number == _steps + 1 && (_steps > 0 || row.Worked);
        _steps += next ? 1 : 0;
        return next;
    }

    private bool Name(SpreadsheetRow row) => row.Only is { Length: > 0 and < 40 } name && Looks.Heading(name) && Sections.Of(name.TrimmedEnd(": "), lang) is null;

    private static string Counted(int number, string words) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{number}. {words}");

    /// <summary>A line that is no row of the list.</summary>
    private void Behind(string text, RawLine line, int i)
    {
        _block += _barred || i > 0 && rows[i - 1].Line.Block != line.Block ? 1 : 0;
        (_open, _barred) = (false, false);
        Add(text, line);
    }

    private void Add(string text, RawLine line) => _lines.Add(line with { Text = text, Block = _block, Indent = 0 });
}
