using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Reads a table of amounts: amount first, food first, one column a stage, one column a size. Totals are kept as totals, shares are not added.</summary>
internal static class Tables
{
    private const int MostColumns = 40;
    private const int FewestGrams = 40;

    /// <summary>Rows from a place on that belong to one table; the place of the first line behind it.</summary>
    public static int End(List<RawLine> lines, int at)
    {
        int i = at;
        while (i < lines.Count && (lines[i].Text.Contains('|') || Stage(lines, i, at)) && lines[i].Text.Length < CardLines.Longest && (lines[i].Block == lines[at].Block))
        {
            i++;
        }

        return i;
    }

    /// <summary>"Poolish" alone between two rows: the name of a stage.</summary>
    private static bool Stage(List<RawLine> lines, int i, int at) =>
        i > at && i + 1 < lines.Count && lines[i + 1].Block == lines[at].Block && lines[i - 1].Text.Contains('|') && lines[i + 1].Text.Contains('|') && Looks.Heading(lines[i].Text) && !Looks.Bullet(lines[i].Text) && lines[i].Text.AsSpan().IndexOfAnyInRange('0', '9') < 0;

    /// <summary>The pieces of a table; false when it holds no amounts, and so is no list.</summary>
    public static bool Cut(List<RawLine> lines, int from, int to, string lang, List<Piece> into, string? stated = null)
    {
        List<(string[] Cells, Span Span)> rows = [];
        List<int> indents = [];
        bool ruled = false;
        for (int i = from; i < to; i++)
        {
            string[] cells = Cells(lines[i].Text);
            if (cells.All(c => c.Trimmed("-: ").Length == 0) && lines[i].Text.Contains('-'))
            {
                ruled |= rows.Count == 1;
            }
            else
            {
                rows.Add((cells, lines[i].Span));
                indents.Add(lines[i].Indent);
            }
        }

        if (rows.Count < 2)
        {
            return false;
        }

        int columns = Math.Min(MostColumns, rows.Max(r => r.Cells.Length));
        SideTables.Place(rows, indents, columns);
        // A first row without a name over rows that have one is a head, whatever it counts: "10 pax | 50 pax".
        bool unnamed = rows[0].Cells.Length > 2 && rows[0].Cells[0].Length == 0 && rows.Skip(1).All(r => r.Cells[0].Length > 0 && char.IsLetter(r.Cells[0][0]));
        // "Dough | " over its rows names the first part, where other parts stand alone in a row too.
        bool alone = !ruled && rows.Count > 3 && rows[0].Cells.Count(c => c.Length > 0) == 1 && rows[0].Cells[0].Length > 0 && !TableColumns.Opens(rows[0].Cells[0]) && rows.Skip(2).Any(r => r.Cells.Count(c => c.Length > 0) == 1);
        bool head = !alone && (ruled || unnamed || TableColumns.Opens(rows[0].Cells[0]) && !LineKinds.HasAmount(rows[0].Cells[0], lang) || !rows[0].Cells.Any(c => LineKinds.HasAmount(c, lang)));
        string[] names = head ? rows[0].Cells : [];
        List<(string[] Cells, Span Span)> body = head ? rows[1..] : rows;
        names = TableUnits.Told(names, ref body, stated ?? TableUnits.Stated(lines, from, to, lang), lang);
        if ((PartColumn.Of(names) is var said and >= 0 ? said : PartColumn.Shown(names, body)) is var parted and >= 0 && PartColumn.Cut(rows[0], body, names, parted, lang, into))
        {
            return true;
        }

        if (StepTable.Cut(names, body, lang, into))
        {
            return true;
        }

        if (UnweighedTable.Times(rows[0].Cells, body, lang, into) || SideTables.Cut(rows, body, names, columns, lang, into))
        {
            return true;
        }

        TableColumns plan = TableColumns.Of(names, body.Select(r => r.Cells), columns, lang);
        return Planned(rows, body, names, plan, lang, into);
    }

    /// <summary>"Sourdough | 10 loaves @ 900 g" right over the head of its table: a name, and the pieces of the table under it; null for any other.</summary>
    public static (string Name, List<Piece> Pieces)? Under(List<RawLine> lines, int from, int to, string lang)
    {
        List<Piece> pieces = [];
        return to - from > 3 && Cut(lines, from + 1, to, lang, pieces) ? (string.Join(", ", Cells(lines[from].Text).Where(c => c.Length > 0)), pieces) : null;
    }

    /// <summary>The pieces of rows whose columns are known.</summary>
    public static bool Planned(List<(string[] Cells, Span Span)> rows, List<(string[] Cells, Span Span)> body, string[] names, TableColumns plan, string lang, List<Piece> into)
    {
        if (plan.Amounts.Count == 0 || plan.Food < 0)
        {
            return UnweighedTable.Cut(body, names, plan, into);
        }

        if (plan.Amounts.Count == 1 || plan.SecondMeasures)
        {
            // Over a row that is a name itself ("Sponge") the head of the first column says only what such names are ("Stage").
            if (plan.Food == 0 && names.Length > 1 && names[0].Length > 1 && body[0].Cells.Skip(1).Any(c => c.Length > 0) && names.Skip(1).All(n => n.Length == 0 || ColumnHeads.Weighs(n, lang) || TableColumns.UnitOf(n, lang) is not null || ColumnHeads.Share(n) || ColumnHeads.Rate(n) || ColumnHeads.Price(n)) && !TableColumns.Opens(names[0]) && !ColumnHeads.Note(names[0]))
            {
                into.Add(new Piece(PieceKind.Heading, names[0].Trimmed(": "), rows[0].Span, 2));
            }

            List<(string Food, string Amount)> told = plan.Compound ? [] : [.. body.Select(r => (TableColumns.At(r.Cells, plan.Food), Measured(r.Cells, plan.Amounts[0], TableColumns.At(names, plan.Amounts[0]), plan, lang)))];
            int sum = plan.Compound ? -1 : SumRow.Of(told, names.Any(ColumnHeads.Share), lang);
            int bare = Bare(body, plan, lang);
            HashSet<int> groups = GroupSums.Of(told, lang);
            for (int r = 0; r < body.Count; r++)
            {
                if (groups.Contains(r))
                {
                    into.Add(new Piece(PieceKind.Heading, told[r].Food.Trimmed(" :*"), body[r].Span, 3));
                    into.Add(new Piece(PieceKind.Paragraph, string.Join("  ", body[r].Cells.Where(c => c.Length > 0)), body[r].Span));
                    continue;
                }

                if (r == sum)
                {
                    into.Add(new Piece(PieceKind.Paragraph, string.Join("  ", body[r].Cells.Where(c => c.Length > 0)), body[r].Span));
                    continue;
                }

                if (r >= bare)
                {
                    into.Add(new Piece(PieceKind.Item, TableColumns.At(body[r].Cells, plan.Food), body[r].Span));
                    continue;
                }

                Single(body[r].Cells, body[r].Span, plan, names, lang, into);
            }

            TableUnits.Beside(body, plan, names, lang, into);
            return true;
        }

        if (plan.Sizes && body.Exists(r => Group(r.Cells, plan)))
        {
            Grouped(body, plan, names, lang, into);
            TableUnits.Beside(body, plan, names, lang, into);
            return true;
        }

        // A size names no part where a part has its name, or where the card is one list.
        bool heads = plan.Sizes && into.Count > 0 && into[^1] is not { Kind: PieceKind.Heading };
        heads = heads && into.Exists(p => p is { Kind: PieceKind.Heading, Level: > 1 });
        for (int a = 0; a < plan.Amounts.Count; a++)
        {
            int column = plan.Amounts[a];
            string name = Unmeasured(TableColumns.At(names, column), lang);
            if (plan.Sizes && a == 0 && TableColumns.At(names, plan.Food) is { Length: > 1 } part && !TableColumns.Opens(part) && !PartColumn.Says(part))
            {
                // The first size is the list itself; the part is called by the head of its foods, if by anything, else by the size.
                into.Add(new Piece(PieceKind.Heading, part, rows[0].Span, 2));
                into.Add(new Piece(PieceKind.Paragraph, name, rows[0].Span));
            }
            else if (plan.Sizes && a == 0 && (YieldWords.Guests(name, lang) || ColumnHeads.Each(name) || ColumnHeads.Trimmed(name) || !heads))
            {
                // "10 pax" is how many the first list feeds, and no name of it.
                into.Add(new Piece(PieceKind.Paragraph, name, rows[0].Span));
            }
            else
            {
                into.Add(new Piece(plan.Sizes && a > 0 ? PieceKind.Variant : PieceKind.Heading, name, rows[0].Span, 2));
            }

            foreach ((string[] cells, Span span) in body)
            {
                if (TableColumns.At(cells, column) is { Length: > 0 } amount && (LineKinds.HasAmount(amount, lang) || TableColumns.Said(amount, lang)))
                {
                    into.Add(new Piece(PieceKind.Item, Line(Measured(cells, column, TableColumns.At(names, column), plan, lang), TableColumns.At(cells, plan.Food), TableColumns.At(cells, plan.Preparation), lang), span));
                }
            }
        }

        Totals(body, names, plan, lang, into);
        TableUnits.Beside(body, plan, names, lang, into);
        return true;
    }

    /// <summary>Sizes side by side, and parts one under the other: each part with its first size; the other sizes stand beside it.</summary>
    private static void Grouped(List<(string[] Cells, Span Span)> body, TableColumns plan, string[] names, string lang, List<Piece> into)
    {
        for (int from = 0; from < body.Count;)
        {
            int to = from + 1;
            while (to < body.Count && !Group(body[to].Cells, plan))
            {
                to++;
            }

            bool headed = Group(body[from].Cells, plan);
            if (headed)
            {
                into.Add(new Piece(PieceKind.Heading, TableColumns.At(body[from].Cells, plan.Food).Trim(' ', ':'), body[from].Span, 2));
            }

            for (int a = 0; a < plan.Amounts.Count; a++)
            {
                string size = TableColumns.At(names, plan.Amounts[a]);
                if (a > 0)
                {
                    into.Add(new Piece(PieceKind.Variant, size, body[from].Span, 2));
                }

                foreach ((string[] cells, Span span) in body.Skip(headed ? from + 1 : from).Take(to - from - (headed ? 1 : 0)))
                {
                    if (TableColumns.At(cells, plan.Amounts[a]) is { Length: > 0 } amount && (LineKinds.HasAmount(amount, lang) || TableColumns.Said(amount, lang)))
                    {
                        into.Add(new Piece(PieceKind.Item, Line(Measured(cells, plan.Amounts[a], size, plan, lang), TableColumns.At(cells, plan.Food), TableColumns.At(cells, plan.Preparation), lang), span));
                    }
                }
            }

            from = to;
        }
    }

    /// <summary>From which row on nothing but foods everybody knows stand, each alone in its row: "salt" under the last amount heads nothing.</summary>
    private static int Bare(List<(string[] Cells, Span Span)> body, TableColumns plan, string lang)
    {
        int from = body.Count;
        while (from > 1 && Group(body[from - 1].Cells, plan) && FoodIds.Match(TableColumns.At(body[from - 1].Cells, plan.Food), lang) is not null)
        {
            from--;
        }

        return from;
    }

    private static bool Group(string[] cells, TableColumns plan) => TableColumns.At(cells, plan.Food).Length > 0 && cells.Count(c => c.Length > 0) == 1;

    /// <summary>The printed sum of the column of totals: kept as a total, never added.</summary>
    private static void Totals(List<(string[] Cells, Span Span)> body, string[] names, TableColumns plan, string lang, List<Piece> into)
    {
        int column = Array.FindIndex(names, n => n.Length > 0 && Lexicon.Longest("total", n, 0, 2, lang, out _) is not null);
        if (column < 0 || plan.Sizes)
        {
            return;
        }

        foreach ((string[] cells, Span span) in body)
        {
            string food = TableColumns.At(cells, plan.Food);
            string amount = WithUnit(TableColumns.At(cells, column), TableColumns.At(names, column), lang);
            if (food.Length > 0 && Lexicon.Longest("total", food, 0, 2, lang, out _) is not null && LineKinds.HasAmount(amount, lang))
            {
                into.Add(new Piece(PieceKind.Item, $"{food}: {amount}", span));
            }
        }
    }

    private static void Single(string[] cells, Span span, TableColumns plan, string[] names, string lang, List<Piece> into)
    {
        string food = TableColumns.At(cells, plan.Food);
        string amount = TableColumns.At(cells, plan.Amounts[0]);
        if (food.Length == 0 && amount.Length == 0)
        {
            // The name of a stage may stand under the numbers of the rows.
            if (cells.Count(c => c.Length > 0) == 1 && Array.Find(cells, c => c.Length > 0) is { } stage && Looks.Heading(stage))
            {
                into.Add(new Piece(PieceKind.Heading, Folding.Line(stage).Trimmed(" :【】[]"), span, 3));
            }

            return;
        }

        if (amount.Length == 0 && cells.Count(c => c.Length > 0) == 1 && NameList.Of(food, lang) is not null)
        {
            // "| | Salt, pepper, nutmeg |": foods without an amount, and no name
            into.Add(new Piece(PieceKind.Item, food, span));
            return;
        }

        if (cells.Count(c => c.Length > 0) == 1 && (amount.Length == 0 || !LineKinds.HasAmount(amount, lang) && char.IsLetter(amount[0]) && food.Length == 0))
        {
            into.Add(new Piece(PieceKind.Heading, Folding.Line(food.Length > 0 ? food : amount).Trimmed(" :【】[]"), span, 3));
            return;
        }

        if (amount.Length == 0 && TableUnits.Sums(food, lang))
        {
            into.Add(new Piece(PieceKind.Paragraph, string.Join("  ", cells.Where(c => c.Length > 0)), span));
            return;
        }

        if (ColumnHeads.Rate(TableColumns.At(names, plan.Amounts[0])))
        {
            UnweighedTable.Rate(food, amount, TableColumns.At(names, plan.Amounts[0]), span, into);
            return;
        }

        string first = WithUnit(amount, TableColumns.At(names, plan.Amounts[0]), lang);
        string prepared = TableColumns.At(cells, plan.Preparation);
        if (plan.Units >= 0 && TableColumns.At(cells, plan.Units) is { Length: > 0 } unit && !TableUnits.Counts(unit))
        {
            // "gousses" among "kg" and "g": a word that is no unit is said of the food.
            bool known = Lexicon.LongestUnit(unit, 0, lang, out int end) is not null && end >= unit.Length || lang == "ja";
            (first, prepared) = known ? ($"{first} {unit}", prepared) : (first, prepared.Length > 0 ? $"{unit}, {prepared}" : unit);
        }

        if (plan.Compound)
        {
            first = $"{first} {WithUnit(TableColumns.At(cells, plan.Amounts[1]), TableColumns.At(names, plan.Amounts[1]), lang)}".Trim();
        }
        else if (plan.SecondMeasures && TableColumns.At(cells, plan.Amounts[1]) is { Length: > 0 } second)
        {
            food += $" ({WithUnit(second, TableColumns.At(names, plan.Amounts[1]), lang)})";
        }

        into.Add(new Piece(PieceKind.Item, Line(first, food, prepared, lang), span));
    }

    /// <summary>Words that say what for, where an amount is looked for.</summary>
    private static bool Purpose(string amount) =>
        amount.Length > 5 && char.IsLetter(amount[0]) && amount.AsSpan().IndexOfAnyInRange('0', '9') < 0 && (amount.StartsWith("for ", StringComparison.OrdinalIgnoreCase) || amount.StartsWith("pour ", StringComparison.OrdinalIgnoreCase) || amount.StartsWith("für ", StringComparison.OrdinalIgnoreCase) || amount.StartsWith("zum ", StringComparison.OrdinalIgnoreCase) || amount.StartsWith("zur ", StringComparison.OrdinalIgnoreCase) || amount.StartsWith("para ", StringComparison.OrdinalIgnoreCase) || amount.StartsWith("per ", StringComparison.OrdinalIgnoreCase));

    /// <summary>"4 (about 1 kg)" and "Duck legs" as a cook writes it in one line: "4 Duck legs (about 1 kg)".</summary>
    private static string Line(string amount, string food, string preparation, string lang)
    {
        if (Lexicon.Longest("total", food, 0, 2, lang, out _) is not null)
        {
            return $"{food}: {amount}";
        }

        if (Purpose(amount) && food.Length > 1)
        {
            // "for dusting" in the column of amounts
            return $"{food}, {amount}";
        }

        // A hyphen before a figure in a cell is a sign, not the mark of an item.
        amount = amount.Length > 1 && amount[0] == '-' && char.IsAsciiDigit(amount[1]) ? "\u2212" + amount[1..] : amount;
        if (lang != "ja" && preparation.Length == 0 && amount.Length > 1 && amount.All(char.IsAsciiDigit) && int.Parse(amount[..Math.Min(6, amount.Length)], System.Globalization.CultureInfo.InvariantCulture) >= FewestGrams && food.Length > 1)
        {
            // Behind the food a figure that no unit stands by is taken for grams, and asked; in front it would count pieces.
            // "Bread flour 80" would be its type.
            return BackAmount.Typed(food) ? $"{food}: {amount}" : $"{food} {amount}";
        }

        int open = amount.IndexOf('(');
        string front = open > 0 ? amount[..open].Trim() : amount;
        string back = open > 0 ? " " + amount[open..] : "";
        if (lang == "ja" && preparation.Length > 0 && back.Length == 0 && !front.Contains(':') && food.IndexOf('(') < 0 && food.IndexOf('（') < 0)
        {
            return $"{food}({preparation}) {front}";
        }

        string line = lang == "ja" ? $"{food} {front}{back}" : $"{front} {food}{back}";
        return preparation.Length > 0 ? $"{line}, {preparation}" : line;
    }

    /// <summary>"Poolish (g)" is the poolish; its unit goes with the figures.</summary>
    private static string Unmeasured(string head, string lang) =>
        head.IndexOf('(') is > 1 and var open && head[^1] == ')' && TableColumns.UnitOf(head, lang) is not null ? head[..open].TrimEnd() : head;

    /// <summary>A figure with the unit its head or the column of units tells.</summary>
    private static string Measured(string[] cells, int column, string head, TableColumns plan, string lang)
    {
        string amount = WithUnit(TableColumns.At(cells, column), head, lang);
        return plan.Units >= 0 && TableColumns.At(cells, plan.Units) is { Length: > 0 } unit && amount.All(c => char.IsAsciiDigit(c) || c is '.' or ',' or ' ' or '/') ? $"{amount} {unit}" : amount;
    }

    private static string WithUnit(string amount, string head, string lang)
    {
        bool bare = amount.Length > 0 && amount.All(c => char.IsAsciiDigit(c) || c is '.' or ',' or ' ');
        return bare && TableColumns.UnitOf(head, lang) is { } unit ? $"{amount} {unit}" : amount;
    }

    private static string[] Cells(string row) => [.. row.Trim('|').Split('|').Select(c => Tidy(Folding.Line(c)))];

    /// <summary>A stroke and a nought say that a row takes nothing of a column.</summary>
    private static string Tidy(string cell) => cell is "-" or "–" or "—" or "…" or "0" or "0 g" or "0g" ? "" : cell;
}
