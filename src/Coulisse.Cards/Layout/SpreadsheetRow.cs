using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>One row of a pasted sheet, and what its cells make of it.</summary>
internal sealed class SpreadsheetRow
{
    private const int LongestLabel = 26;
    private const int LongestAmount = 30;
    private const int LongestHead = 30;
    private const int ShortestSentence = 12;

    // 煮る, 混ぜて, 冷やす: how an order ends
    private const string Ends = "るすむうくぐつぬぶてで";
    private readonly string _lang;
    private bool _asked;
    private string? _label;
    private bool? _amounted;

    public SpreadsheetRow(RawLine line, char sign, string lang)
    {
        _lang = lang;
        Line = line;
        string[] cells = Delimited.Split(line.Text, sign);
        int empty = sign == '\t' && cells.Length > 1 ? Math.Min(line.Indent, 6) : 0;
        Cells = [.. Enumerable.Repeat("", empty), .. cells.Select(c => c.Replace('|', '/'))];
        Filled = Cells.Count(c => c.Length > 0);
        First = Array.FindIndex(Cells, c => c.Length > 0);
    }

    public RawLine Line { get; }

    public string[] Cells { get; }

    /// <summary>How many cells say something.</summary>
    public int Filled { get; }

    /// <summary>The first cell that says something; -1 for none.</summary>
    public int First { get; }

    /// <summary>What the only cell says; empty where others say something too.</summary>
    public string Only => Filled == 1 ? Cells[First] : "";

    /// <summary>A row of short words without a figure: one says the column weighs, another that it holds the foods.</summary>
    /// <param name="next">The row under it: over one with an amount the foods may be called by another word.</param>
    /// <param name="after">The row under that: the first part may stand between, its name alone in a row.</param>
    public bool HeadOver(SpreadsheetRow? next, SpreadsheetRow? after) => Heads && (Array.Exists(Cells, TableColumns.Opens) || Filled > 2 && (next is { Amounted: true, Filled: > 1 } || next is { Filled: 1, Sentence: false } && after is { Amounted: true, Filled: > 1 }));

    private bool Heads => Filled > 1 && Array.TrueForAll(Cells, c => c.Length < LongestHead && c.AsSpan().IndexOfAnyInRange('0', '9') < 0) && Array.Exists(Cells, c => c.Length > 0 && !TableColumns.Opens(c) && (ColumnHeads.Weighs(c, _lang) || c == "量"));

    /// <summary>A food with its amount that opens with letters: what a list without a head is made of.</summary>
    public bool Plain => Amounted && First == 0 && char.IsLetter(Cells[0][0]) && Cells[0].Length < 60;

    /// <summary>Two labels with their values side by side; null for any other row.</summary>
    public (string First, string Second)? Pairs => Filled == 4 && First == 0 && Cells.Length > 3 && Cells.AsSpan(0, 4).IndexOf("") < 0 && Told(Cells[0], Cells[1]) is { } one && Told(Cells[2], Cells[3]) is { } two ? (one, two) : null;

    /// <summary>The value of a row that names the dish; null for any other.</summary>
    public string? Named => Filled == 2 && First == 0 && Cells[0].TrimmedEnd(" :") is var label && (Front.Names(label) && Label is not null || Front.Called(label) && char.IsLetter(Words[0])) ? Words : null;

    /// <summary>"Cost per portion | 0.60": what the sheet tells of the house, and of no food.</summary>
    public bool Aside => Filled == 2 && First == 0 && HeadLines.Is($"{Cells[0].TrimmedEnd(" :")} {Words}", _lang);

    /// <summary>The head of a method kept in columns: "Step | What | Time".</summary>
    public bool StepHead => Filled > 1 && (StepTable.Opens(Cells[First]) || StepTable.Tells(Cells[First]) || Sections.Of(Cells[First], _lang) == "method") && Array.TrueForAll(Cells, c => c.AsSpan().IndexOfAnyInRange('0', '9') < 0);

    /// <summary>A name, and in another cell an amount.</summary>
    public bool Amounted => _amounted ??= Filled > 1 && Label is null && Array.Exists(Cells, Amount) && Array.Exists(Cells, c => c.Length > 0 && !Amount(c) && c.Any(char.IsLetter));

    /// <summary>"Yield | 5 l", "Dish | Zucchini slice", "Yield | 5 | l": a label of the card and its value, as a line; null for a food and its amount.</summary>
    public string? Label
    {
        get
        {
            // Asked by nearly every question above and for the rows over and under.
            if (!_asked)
            {
                (_label, _asked) = (Labelled(), true);
            }

            return _label;
        }
    }

    /// <summary>The number a row opens with, words behind it; 0 for any other.</summary>
    public int Number => Filled > 1 && Cells[First].TrimEnd('.', ')') is { Length: 1 or 2 } n && char.IsAsciiDigit(n[0]) && char.IsAsciiDigit(n[^1]) && Words.Any(char.IsLetter) ? int.Parse(n, System.Globalization.CultureInfo.InvariantCulture) : 0;

    /// <summary>True where a sentence of work stands behind the number: "1 | onion | diced" counts a food.</summary>
    public bool Worked => Works(Words);

    private string Words => Array.FindIndex(Cells, Math.Max(0, First) + 1, c => c.Length > 0) is > 0 and var at ? Cells[at] : "";

    /// <summary>All that the cells from one on say, as one sentence.</summary>
    public string Joined(int from) => string.Join(", ", Cells.Skip(from).Where(c => c.Length > 0).Select(c => c.TrimmedEnd(" .")));

    /// <summary>A sentence of work, and beside it nothing but how long: no food.</summary>
    public bool Timed => Filled > 1 && First == 0 && Works(Cells[0]) && !Array.Exists(Cells, Amount) && Array.Exists(Cells, c => c.Length > 0 && Time(c));

    /// <summary>What the cells say, a space between them.</summary>
    public string Spaced => string.Join(" ", Cells.Where(c => c.Length > 0));

    /// <summary>The row with bars, as many cells as the head has. A word in front of an empty cell of the foods ("Total" under the numbers of the rows) stands there.</summary>
    /// <param name="columns">How many cells.</param>
    /// <param name="food">The column of the foods; below 0 where the head does not tell.</param>
    public string Barred(int columns, int food = -1)
    {
        string[] cells = [.. Cells, .. Enumerable.Repeat("", Math.Max(0, columns - Cells.Length))];
        if (food >= 0 && food != First && First >= 0 && cells[food].Length == 0 && char.IsLetter(cells[First][0]) && (food > First || TableUnits.Sums(cells[First], _lang)))
        {
            (cells[First], cells[food]) = ("", cells[First]);
        }

        return "| " + string.Join(" | ", cells) + " |";
    }

    /// <summary>A sentence of the work, or one that tells of the whole.</summary>
    public bool Sentence => Only is { Length: > 0 } s && (Works(s) || s[^1] is '.' or '。' or '!' || Looks.Statement(s, _lang) || KeepLabels.Opens(s, _lang));

    /// <summary>A sentence of work alone in its row, which does not tell how the dish is kept or served.</summary>
    public bool Ordered => Only is { Length: > 3 } s && Marks.ListNumber(s, 0) == 0 && (Looks.Work(s, _lang) || Looks.Opens(s, _lang)) && !Looks.Statement(s, _lang) && !KeepLabels.Opens(s, _lang) && LineKinds.Of(s, _lang) == LineKind.Ingredient;

    private string? Labelled()
    {
        bool split = Filled == 3 && First == 0 && Cells.Length > 2 && Cells[1].Length > 0 && Cells[1].AsSpan().IndexOfAnyExceptInRange('0', '9') < 0 && Cells[2].Length is > 0 and < 20;
        return First != 0 || Filled != 2 && !split || Cells[0].Length > LongestLabel || !char.IsLetter(Cells[0][0]) || Cells[0].AsSpan().IndexOfAnyInRange('0', '9') >= 0 ? null
            : Told(Cells[0], split ? $"{Cells[1]} {Cells[2]}" : Words);
    }

    private string? Told(string label, string value)
    {
        label = label.TrimmedEnd(" :");
        string line = $"{label}: {value}";
        return Lexicon.Longest("total", label, 0, 2, _lang, out _) is null && FoodIds.Match(label, _lang) is null
            && (Front.Labels(label) || CountLabels.Opens(line, _lang) || Sections.Of(label, _lang) == "notes" || YieldWords.In(line, default, _lang) is not null || Looks.Statement(line, _lang) || KeepLabels.Opens(line, _lang)) ? line : null;
    }

    private bool Works(string s) => Looks.Work(s, _lang) || Looks.Opens(s, _lang) || (_lang == "ja" ? s.Length > ShortestSentence || s.Length > 4 && Ends.Contains(s[^1]) && s.AsSpan().IndexOfAny('を', 'に', 'で') > 0 : s.Count(' ') > 3);

    private bool Amount(string c) => c.Length is > 0 and < LongestAmount && !Time(c) && (char.IsAsciiDigit(c[0]) || Numbers.Vulgar(c[0]) > 0 || TableColumns.Said(c, _lang) || Amounts.At(c, 0, _lang) is not null);

    private bool Time(string c) => char.IsAsciiDigit(c[0]) && Clock.At(c, 0, _lang) is { } t && Amounts.At(c, 0, _lang) is not { Unit: not null };
}
