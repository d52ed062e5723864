using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Where a thing is kept, in the words of its own part of the sentence: "5 days in the fridge or 3 months frozen" are two places. What is not said is not guessed: a room is one only where it is named.</summary>
internal static class StoragePlaces
{
    private static readonly WordList Frozen = new("freezer", "frozen", "freeze", "freezes", "congélateur", "congeler", "congèle", "congelé", "congelée", "congelador", "congelar", "congela", "congelado", "Gefrierschrank", "Tiefkühler", "Tiefkühlfach", "einfrieren", "eingefroren", "einfrierbar", "tiefgekühlt", "gefroren", "congelatore", "congelare", "congelato", "congelata", "congelada", "congelados", "congeladas", "congelés", "congelées", "congelati", "congelate", "surgelés", "surgelées", "congélo", "surgelé", "surgelée", "Tiefkühlschrank", "Tiefkühlung", "Gefrierfach", "Froster", "TK");
    private static readonly WordList Cold = new("fridge", "refrigerator", "refrigerated", "refrigerate", "refrigerates", "chill", "chilled", "chiller", "walk-in", "walk in", "walkin", "cold room", "coolroom", "cool room", "frais", "réfrigérateur", "chambre froide", "frigo", "nevera", "frigorífico", "frigorifero", "cámara", "cella", "Kühlschrank", "Kühlraum", "Kühlhaus", "Kühlung", "gekühlt");
    private static readonly WordList Sealed = new("tin", "airtight", "air-tight", "boîte", "luftdicht", "Dose", "Blechdose", "Keksdose", "in latta", "hermético", "ermetico");
    private static readonly WordList Warm = new("room temperature", "room temp", "ambient", "pantry", "larder", "cupboard", "shelf", "cool dark place", "cool dry place", "température ambiante", "Zimmertemperatur", "Raumtemperatur", "temperatura ambiente", "常温", "室温");
    private static readonly WordList Thawed = new("thawed", "défrosté", "décongelé", "décongelée", "aufgetaut", "descongelado", "descongelada", "scongelato", "scongelata");
    private static readonly string[] Parts = [" or ", " ou ", " oder ", " o ", " and ", " et ", " und ", " y ", " e "];

    /// <summary>Where what keeps for a time waits: "freezer", "fridge", "airtight", "room"; empty where nothing says it.</summary>
    /// <param name="s">The step.</param>
    /// <param name="clause">The sentence of the time.</param>
    /// <param name="words">The time as written.</param>
    /// <param name="temperatures">The heats of the step.</param>
    public static string Of(string s, string clause, string words, List<StepTemperature> temperatures)
    {
        string part = Part(clause, words);
        string own = Thawed.In(part) ? "fridge" : In(part);
        if (own.Length > 0)
        {
            return own;
        }

        foreach (StepTemperature t in temperatures)
        {
            // "5 days at 3 °C or 2 months at −18 °C": each by its own heat
            if (t.Celsius <= 8 && t.Words.Length > 0 && part.Contains(t.Words, StringComparison.Ordinal))
            {
                return t.Celsius <= -10 ? "freezer" : "fridge";
            }
        }

        own = Elsewhere(clause, part) ? "" : In(clause);
        if (own.Length > 0)
        {
            return own;
        }

        foreach (StepTemperature t in temperatures)
        {
            if (t.Celsius <= 8 && clause.Contains(t.Words, StringComparison.Ordinal))
            {
                return t.Celsius <= -10 ? "freezer" : "fridge";
            }
        }

        // Cold named a sentence before is taken for it; a freezer or a tin named there is not.
        return Chilled(s) || temperatures.Exists(t => t.Celsius is > -3 and <= 8) ? "fridge" : "";
    }

    /// <summary>True where the freezer a sentence names has a time of its own: "21 days, 3 months frozen".</summary>
    public static bool Elsewhere(string clause, string part)
    {
        int at = FrozenIn(clause) && !FrozenIn(part) ? clause.IndexOf(part, StringComparison.Ordinal) : -1;
        return at >= 0 && (Timed(clause[..at]) || Timed(clause[(at + part.Length)..]));
    }

    private static bool Timed(string other) => FrozenIn(other) && Clock.Tells(other, 0, "en");

    /// <summary>The place some words name; empty for none.</summary>
    public static string In(string words) =>
        FrozenIn(words) ? "freezer"
        : Chilled(words) ? "fridge"
        : Sealed.In(words) ? "airtight"
        : Warm.In(words.Contains("shelf life", StringComparison.OrdinalIgnoreCase) ? words.Replace("shelf life", "", StringComparison.OrdinalIgnoreCase) : words) ? "room" : "";

    /// <summary>True where a freezer is named.</summary>
    public static bool FrozenIn(string words) => Frozen.In(words) || words.Contains("冷凍", StringComparison.Ordinal);

    /// <summary>True where a place is named that is no freezer.</summary>
    public static bool Cooled(string words) => Chilled(words) || Sealed.In(words) || Warm.In(words);

    private static bool Chilled(string s) => Cold.In(s) || s.Contains("冷蔵", StringComparison.Ordinal);

    /// <summary>The part of a sentence a time stands in, between commas, bars and "or".</summary>
    public static string Part(string clause, string words)
    {
        int at = clause.IndexOf(words, StringComparison.Ordinal);
        if (at < 0)
        {
            return clause;
        }

        int from = clause.AsSpan(0, at).LastIndexOfAny(",;/、，") + 1;
        int to = clause.AsSpan(at + words.Length).IndexOfAny(",;/、，") is var stop and >= 0 ? at + words.Length + stop : clause.Length;
        foreach (string part in Parts)
        {
            int before = clause.AsSpan(from, at - from).LastIndexOf(part, StringComparison.OrdinalIgnoreCase);
            from = before < 0 ? from : from + before + part.Length;
            int behind = clause.AsSpan(at + words.Length, to - at - words.Length).IndexOf(part, StringComparison.OrdinalIgnoreCase);
            to = behind < 0 ? to : at + words.Length + behind;
        }

        return clause[from..to];
    }
}
