using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"18 min, vent open for the last 3 min": minutes within the time told before, and no time of their own. "Turn up to 220 °C for the last 10 minutes" is a setting of its own, with its own minutes.</summary>
internal static class LastMinutes
{
    private static readonly string[] Leads = ["for the last", "of which the last", "of which the final", "dont les", "davon die letzten", "de ellos los últimos", "di cui gli ultimi", "during the last", "for the final", "during the final", "in den letzten", "für die letzten", "durante los últimos", "en los últimos", "negli ultimi", "per gli ultimi"];
    private static readonly WordList Turns = new("turn up", "turn the oven up", "turn it up", "turn down", "turn the oven down", "raise", "increase", "lower", "reduce", "hochschalten", "erhöhen", "reduzieren", "zurückschalten", "subir", "bajar", "alzare", "abbassare");

    /// <summary>True for minutes that the time before holds already.</summary>
    public static bool Within(string s, string before, int from, int to, List<StepTemperature> temperatures)
    {
        foreach (string lead in Leads)
        {
            if (Places.Ends(before, lead))
            {
                string ahead = s[..from].TrimEnd();
                return !Set(ahead[..^Math.Min(ahead.Length, lead.Length)].TrimEnd(), Clause(s, to), temperatures);
            }
        }

        return false;
    }

    /// <summary>True where a heat stands right before those words, or behind them a heat the oven is turned to.</summary>
    private static bool Set(string ahead, string behind, List<StepTemperature> temperatures) =>
        temperatures.Exists(t => t.Words.Length > 1 && (ahead.EndsWith(t.Words, StringComparison.Ordinal) || behind.Contains(t.Words, StringComparison.Ordinal) && Turns.In(behind)));

    private static string Clause(string s, int from) => s.IndexOf('.', from) is var stop && stop > 0 ? s[from..stop] : s[from..];
}
