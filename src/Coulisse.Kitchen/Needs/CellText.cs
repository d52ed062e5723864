using System.Text;

namespace Coulisse.Kitchen.Needs;

/// <summary>Splits text of lines and cells: comma, semicolon or tab between cells, quotes doubled inside quotes (RFC 4180).</summary>
public static class CellText
{
    /// <summary>Lines that hold something, with the number of the line each begins on.</summary>
    public static List<(int Line, List<string> Cells)> Split(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        text = text.TrimStart('\uFEFF');
        string first = text.Split('\n').FirstOrDefault(l => !string.IsNullOrWhiteSpace(l)) ?? "";
        char between = first.Contains('\t', StringComparison.Ordinal) ? '\t' : first.Count(c => c == ';') > first.Count(c => c == ',') ? ';' : ',';
        List<(int, List<string>)> lines = [];
        List<string> cells = [];
        StringBuilder cell = new();
        bool quoted = false;
        int line = 1;
        int startLine = 1;
        for (int i = 0; i <= text.Length; i++)
        {
            char c = i < text.Length ? text[i] : '\n';
            if (quoted && i < text.Length)
            {
                if (c == '"' && i + 1 < text.Length && text[i + 1] == '"')
                {
                    cell.Append('"');
                    i++;
                }
                else if (c == '"')
                {
                    quoted = false;
                }
                else
                {
                    cell.Append(c);
                }
            }
            else if (c == '"')
            {
                quoted = true;
            }
            else if (c == between)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else if (c == '\n')
            {
                cells.Add(cell.ToString());
                cell.Clear();
                if (cells.Any(x => !string.IsNullOrWhiteSpace(x)))
                {
                    lines.Add((startLine, cells));
                }

                cells = [];
                startLine = line + 1;
            }
            else if (c != '\r')
            {
                cell.Append(c);
            }

            line += c == '\n' ? 1 : 0;
        }

        return lines;
    }
}
