using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Opened 4 weeks at 4 °C", "3 jours à 4 °C, 3 mois à −18 °C", "Vac pack, 30 days at 3 °C", "Hold below 5 °C, 3 days": days that say how long a thing keeps although no verb says so. Read as a wait they would stand in the plan. What cures, ages or is worked on afterwards waits indeed.</summary>
internal static class KeptDays
{
    private const double Day = 1440;
    private const double Weeks = 14 * Day;
    private const double Cold = 8;
    private const double Frost = -10;
    private static readonly WordList Opens = new("unopened", "opened", "once open", "after opening", "open packs", "open pack", "open jars", "once cut", "thawed", "ouvert", "ouverte", "ouverts", "entamé", "entamée", "geöffnet", "ungeöffnet", "angebrochen", "nach dem Öffnen", "aufgetaut", "abierto", "abierta", "sin abrir", "aperto", "aperta", "décongelé", "décongelée", "descongelado", "descongelada", "scongelato", "scongelata");
    private static readonly string[] OpensJapanese = ["開封", "解凍後"];
    private static readonly WordList Packed = new("vac pack", "vac packed", "vac-packed", "vacuum-packed", "vacuum packed", "vacuum pack", "sous vide", "vakuumiert", "vakuumverpackt", "mis sous vide", "envasado al vacío", "sottovuoto");
    private static readonly WordList Ripens = new("cure", "cured", "curing", "salt", "brine", "age", "aged", "ageing", "aging", "ferment", "marinate", "mature", "ripen", "sel", "saumure", "affiner", "mariner", "pökeln", "beizen", "reifen", "Salz", "curar", "madurar", "marinar", "sal", "stagionare", "marinare", "sale", "turn daily");
    private static readonly string[] Holders = ["hold", "keep", "store", "halten", "lagern", "tenir", "garder", "mantener", "guardar", "mantenere", "tenere"];
    private static readonly string[] Beyonds = ["beyond", "longer than", "more than", "über", "länger als", "plus de", "más de", "oltre", "più di"];
    private static readonly WordList Kept = new("kept", "keep", "keeping", "stored", "store", "conserver", "conservé", "aufbewahrt", "aufbewahren", "gelagert", "conservar", "guardar", "conservare", "conservato");
    private static readonly WordList Ifs = new("if", "when", "si", "wenn", "falls", "cuando", "se", "quando");

    /// <summary>True for a time of a day or more that is how long a thing keeps.</summary>
    /// <param name="clause">The sentence of the time.</param>
    /// <param name="minutes">The time.</param>
    /// <param name="work">The work told last in the sentence before it; null for none.</param>
    /// <param name="tail">What stands behind the time, lower case.</param>
    /// <param name="most">True where its words say that it is an upper end.</param>
    /// <param name="temperatures">The heats of the step.</param>
    /// <param name="lang">Language.</param>
    public static bool Is(string clause, double minutes, string? work, string tail, bool most, List<StepTemperature> temperatures, string lang)
    {
        if (minutes < Day || Storing.Goes(clause))
        {
            return false;
        }

        bool packs = minutes >= Weeks && Packed.In(clause) && Chilled(clause, temperatures) && !Ripens.In(clause);
        if (packs || work is not (null or "freeze" or "set_aside" or "receive_store" or "label"))
        {
            return packs;
        }

        return Opened(clause) || tail.StartsWith("open", StringComparison.Ordinal) && (tail.Length == 4 || tail[4] is '.' or ',' or ';' or ')') || PlaceTimes.Surely(clause.Trim(), lang)
            || Chilled(clause, temperatures) && (most || Frozen(clause, temperatures) || Below(clause, temperatures));
    }

    /// <summary>True where words say that a pack was opened, or what was frozen is not.</summary>
    public static bool Opened(string words) => Opens.In(words) || Array.Exists(OpensJapanese, w => words.Contains(w, StringComparison.Ordinal));

    /// <summary>"If to be kept beyond 10 days": when something is done, and not how long.</summary>
    public static bool Condition(string clause, string before, double minutes) => minutes >= Day && Places.Ends(before, Beyonds) && Kept.In(clause) && Ifs.In(clause);

    private static bool Chilled(string clause, List<StepTemperature> temperatures) => temperatures.Exists(t => t.Celsius is > Frost and <= Cold && Told(clause, t));

    private static bool Frozen(string clause, List<StepTemperature> temperatures) => temperatures.Exists(t => t.Celsius <= Frost && Told(clause, t));

    /// <summary>"Hold below 5 °C, 3 days": a limit of the cold behind the verb that opens the sentence.</summary>
    private static bool Below(string clause, List<StepTemperature> temperatures)
    {
        int from = Places.Skip(clause, 0);
        return Array.Exists(Holders, h => Places.WordAt(clause, from, h)) && temperatures.Exists(t => t.Bound == Bound.AtMost && t.Celsius <= Cold && Told(clause, t)) && !Ripens.In(clause);
    }

    private static bool Told(string clause, StepTemperature t) => t.Words.Length > 0 && clause.Contains(t.Words, StringComparison.Ordinal);
}
