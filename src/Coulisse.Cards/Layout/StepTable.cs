using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A method set as a table, "Step | What | Temp | Time": each numbered row is a step with its heat and its time, and no count of a food.</summary>
internal static class StepTable
{
    private const int FewestRows = 2;
    private static readonly HashSet<string> Heads = new(StringComparer.OrdinalIgnoreCase) { "step", "steps", "étape", "étapes", "etape", "schritt", "schritte", "paso", "pasos", "passo", "fase", "passaggio", "手順", "工程" };
    private static readonly HashSet<string> Doings = new(StringComparer.OrdinalIgnoreCase) { "action", "what", "task", "operation", "procedure", "opération", "tâche", "progression", "phase", "arbeitsschritt", "arbeitsschritte", "arbeitsgang", "tätigkeit", "vorgang", "ablauf", "operación", "tarea", "proceso", "operazione", "lavorazione", "procedimento", "作業" };

    /// <summary>True for a head that says the column tells the steps.</summary>
    public static bool Tells(string head) => Doings.Contains(head.Trimmed(" :.#"));

    /// <summary>True for a head that says the column numbers the steps.</summary>
    public static bool Opens(string head) => Heads.Contains(head.Trimmed(" :.#"));

    /// <summary>Adds the steps; false for any other table.</summary>
    public static bool Cut(string[] names, List<(string[] Cells, Span Span)> body, string lang, List<Piece> into)
    {
        if (names.Length < 2 || body.Count < FewestRows || !Opens(names[0]))
        {
            return false;
        }

        int words = Array.FindIndex(body[0].Cells, 1, c => c.Any(char.IsLetter));
        if (words < 0 || !body.Where((r, i) => r.Cells.Length > words && r.Cells[0] == (i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture)).Skip(body.Count - 1).Any() || body.Count(r => Works(r.Cells[words], lang)) * 2 < body.Count)
        {
            return false;
        }

        // A cell of nothing but a dash says nothing.
        into.AddRange(body.Select(r => new Piece(PieceKind.Step, string.Join(", ", r.Cells[words..].Select(c => c.TrimEnd('.', ' ')).Where(c => c.Any(char.IsLetterOrDigit))) + ".", r.Span)));
        return true;
    }

    private static bool Works(string cell, string lang) => cell.Length > 2 && (Looks.Work(cell, lang) || Looks.Opens(cell, lang));
}
