using System.Globalization;

namespace Coulisse.Cards.Checks;

/// <summary>The Total and the percent column of a table against its stages: the reader takes the stages, so a total that is wrong would pass in silence. A column is what its head says only where most rows bear it out; the odd row is the one said.</summary>
internal static class TableSums
{
    private const double Slack = 0.005;
    private const double PercentSlack = 0.02;
    private const int MostRows = 400;
    private static readonly string[] Totals = ["total", "totals", "totale", "gesamt", "summe", "sum", "totaal", "合計"];

    public static IEnumerable<Remark> Of(string text)
    {
        if (text.AsSpan().IndexOfAny('|', '\t') < 0)
        {
            yield break;
        }

        List<(int Line, string[] Cells)> rows = [];
        int number = 0;
        foreach (string line in text.Split('\n'))
        {
            number++;
            char mark = line.Contains('|') ? '|' : '\t';
            string[] cells = [.. line.Trim().Trim('|').Split(mark, StringSplitOptions.TrimEntries)];
            if (cells.Length > 2)
            {
                rows.Add((number, cells));
                continue;
            }

            foreach (Remark r in Table(rows))
            {
                yield return r;
            }

            rows.Clear();
        }

        foreach (Remark r in Table(rows))
        {
            yield return r;
        }
    }

    private static IEnumerable<Remark> Table(List<(int Line, string[] Cells)> rows)
    {
        if (rows.Count is < 3 or > MostRows)
        {
            return [];
        }

        string[] head = rows[0].Cells;
        (int Line, string[] Cells)[] body = [.. rows.Skip(1).Where(r => r.Cells.Length == head.Length && r.Cells.Any(c => c.AsSpan().IndexOfAnyExcept("-: ") >= 0))];
        bool[] percent = [.. head.Select(h => h.Contains('%'))];
        int total = Array.FindIndex(head, h => Totals.Contains(Bare(h), StringComparer.OrdinalIgnoreCase));
        return [.. total > 1 ? Sums(body, head, total, percent) : [], .. Array.FindAll(percent, p => p).Length == 1 ? Shares(body, Array.IndexOf(percent, true), total) : []];
    }

    private static IEnumerable<Remark> Sums((int Line, string[] Cells)[] body, string[] head, int total, bool[] percent)
    {
        int[] stages = [.. Enumerable.Range(1, head.Length - 1).Where(i => i != total && !percent[i] && body.Any(r => Figure(r.Cells[i]) is not null))];
        if (stages.Length < 2)
        {
            return [];
        }

        (int Line, string Name, double Sum, double Printed)[] told = [.. body.Where(r => !Totals.Contains(Bare(r.Cells[0]), StringComparer.OrdinalIgnoreCase) && Figure(r.Cells[total]) is not null && stages.Any(i => Figure(r.Cells[i]) is not null)).Select(r => (r.Line, r.Cells[0], stages.Sum(i => Figure(r.Cells[i])?.Value ?? 0), Figure(r.Cells[total])!.Value.Value))];
        (int Line, string Name, double Sum, double Printed)[] off = [.. told.Where(t => Math.Abs(t.Sum - t.Printed) > Math.Max(1, t.Printed * Slack))];
        return off.Length * 2 > told.Length || told.Length - off.Length < 1 ? []
            : off.Select(t => new Remark(t.Line, "sum mismatch", string.Create(CultureInfo.InvariantCulture, $"“{t.Name}”: the stages add up to {t.Sum:0.##} g, the total column prints {t.Printed:0.##} g.")));
    }

    private static Remark[] Shares((int Line, string[] Cells)[] body, int percent, int total)
    {
        Remark[] best = [];
        int most = 1;
        int columns = body.Length > 0 ? body[0].Cells.Length : 0;
        // Column 0 stands for all stages together.
        for (int column = 0; column < columns; column++)
        {
            (double Value, double Half)? Grams(string[] cells) => column > 0 ? Figure(cells[column]) : (Enumerable.Range(1, columns - 1).Where(i => i != percent && i != total).Sum(i => Figure(cells[i])?.Value ?? 0), columns);
            (int Line, string Name, (double Value, double Half) Share, (double Value, double Half) Grams)[] told = [.. body.Where(r => column != percent && !Totals.Contains(Bare(r.Cells[0]), StringComparer.OrdinalIgnoreCase) && Figure(r.Cells[percent]) is { Value: > 0 } && Grams(r.Cells) is { Value: > 0 })
                .Select(r => (r.Line, r.Cells[0], Figure(r.Cells[percent])!.Value, Grams(r.Cells)!.Value))];
            if (told.Length < 3)
            {
                continue;
            }

            double whole = told.Select(t => t.Grams.Value / t.Share.Value).Order().ElementAt(told.Length / 2) * 100;
            (int Line, string Name, (double Value, double Half) Share, (double Value, double Half) Grams)[] off = [.. told.Where(t => Math.Abs((t.Share.Value * whole / 100) - t.Grams.Value) > (t.Share.Half * whole / 100) + t.Grams.Half + (PercentSlack * t.Grams.Value))];
            int agree = told.Length - off.Length;
            if (agree > most && agree * 3 >= told.Length * 2)
            {
                most = agree;
                best = [.. off.Select(t => new Remark(t.Line, "sum mismatch", string.Create(CultureInfo.InvariantCulture, $"“{t.Name}”: {t.Share.Value:0.##} % of {whole:0.##} g is {t.Share.Value * whole / 100:0.##} g, the table prints {t.Grams.Value:0.##} g.")))];
            }
        }

        return best;
    }

    /// <summary>A figure with nothing but grams behind it, and half its last digit; kilograms in grams.</summary>
    private static (double Value, double Half)? Figure(string cell)
    {
        string s = cell.Trim('*', ' ');
        double times = s.EndsWith("kg", StringComparison.Ordinal) ? 1000 : 1;
        s = s.EndsWith("kg", StringComparison.Ordinal) ? s[..^2] : s.EndsWith('g') || s.EndsWith('%') ? s[..^1] : s;
        s = s.Trim();
        if (s.Length == 0 || !char.IsAsciiDigit(s[0]) || s.Any(c => !char.IsAsciiDigit(c) && c is not ('.' or ',')))
        {
            return null;
        }

        // "1,760" is a thousand and "17,5" a half: three digits behind one comma are thousands.
        bool thousands = s.Length > 4 && s[^4] is ',' or '.' && s[0] != '0';
        string plain = thousands ? s.Replace(",", "", StringComparison.Ordinal).Replace(".", "", StringComparison.Ordinal) : s.Replace(',', '.');
        int behind = plain.IndexOf('.', StringComparison.Ordinal) is var dot and >= 0 ? plain.Length - dot - 1 : 0;
        return double.TryParse(plain, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) ? (value * times, 0.5 * Math.Pow(10, -behind) * times) : null;
    }

    private static string Bare(string head)
    {
        string s = head.Trim('*', ' ', ':');
        int bracket = s.IndexOf('(', StringComparison.Ordinal);
        s = (bracket > 0 ? s[..bracket] : s).Trim();
        return s.EndsWith(" g", StringComparison.Ordinal) ? s[..^2].TrimEnd(' ', ',') : s;
    }
}
