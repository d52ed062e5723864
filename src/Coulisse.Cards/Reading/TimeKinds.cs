using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>What a stated time is: hands, a machine, the oven, the hob, the cold or a wait.</summary>
/// <remarks>Hours of hands are nearly always a wait or a heat misread: above <see cref="MostHands"/> minutes hands are believed only of what is surely handwork. Common practice, no source.</remarks>
internal static class TimeKinds
{
    private const double MostHands = 60;
    private const double HalfDay = 720;
    private const double Fridge = 8;
    private static readonly WordList Cold = new("fridge", "freezer", "Kühlschrank", "réfrigérateur", "nevera", "frigo", "au frais", "冷蔵庫", "walk-in", "walk in", "cold room", "coolroom", "Kühlraum", "Kühlhaus", "chambre froide");
    private static readonly WordList OutOf = new("out of the fridge", "out of the freezer", "from the fridge", "from the freezer", "outside the fridge", "hors du frigo", "hors du réfrigérateur", "du frigo", "du réfrigérateur", "du congélateur", "aus dem Kühlschrank", "fuera de la nevera", "de la nevera", "del frigorífico", "fuori dal frigo", "dal frigo", "dal frigorifero", "fuori frigo", "冷蔵庫から");
    private static readonly WordList Still = new("intiepidire", "tiédir", "templar", "entibiar", "leave", "let", "hold", "wait", "bench", "ripen", "repos", "attendre", "warten", "ruhen", "esperar", "aspettare", "riposare", "kristallisieren", "crystallise", "crystallize", "cristalliser", "cristallizzare", "cristalizar", "laisser", "lassen", "dejar", "lasciare", "riposo", "reposar", "lievitazione", "puntata", "pointage", "apprêt", "pousse", "levée", "Gare", "Stockgare", "Stückgare", "levado");
    // What cools on the table behind the oven is in it no longer.
    private static readonly WordList Lukewarm = new("intiepidire", "tiédir", "templar", "entibiar", "lauwarm", "abkühlen", "auskühlen");
    private static readonly WordList InBath = new("sous vide", "sous-vide", "sottovuoto", "al vacío", "vakuum", "sv");
    private static readonly WordList InMachine = new("by machine", "in the mixer", "in a mixer", "stand mixer", "on speed", "on first speed", "on second speed", "on slow speed", "on fast speed", "à vitesse", "au batteur", "au robot", "mit der Maschine", "in der Küchenmaschine", "auf Stufe", "a velocidad", "en la amasadora", "a velocità", "in planetaria");
    private static readonly WordList InOven = new("in the oven", "into the oven", "from the oven after", "°C oven", "°F oven", "C oven", "degree oven", "au four", "im Ofen", "im Backofen", "en el horno", "al horno", "in forno", "nel forno");
    private static readonly WordList InMicrowave = new("microwave", "micro-ondes", "Mikrowelle", "microondas", "microonde", "レンジ");
    private static readonly WordList Beaten = new("mix", "whisk", "knead", "beat");
    private static readonly string[] Handwork = ["peel_", "pick_", "shell_", "clean_", "trim_", "turn_", "open_", "fillet", "debone", "joint_", "chop_", "slice_", "cut_", "dice", "brunoise", "julienne", "shape_", "roll_", "laminate", "pipe", "crumb_coat", "stuff", "wash_", "stamp_", "portion_", "plate_", "assemble", "box_", "pit_", "segment", "mince", "spherify", "layer_", "line_", "carry", "weigh", "truss", "scale_and_gut", "skin_", "top_and_tail", "knead_hand", "wrap", "clear_down", "set_station"];
    // What stands over heat while hands come back to it.
    private static readonly string[] Hot = ["sweat", "brown_onions", "toast_dry", "caramel", "cook_syrup", "cook_custard", "make_stock", "confit", "smoke", "scald_milk", "cook_pasta", "cook_rice", "candy_fruit", "heat_through", "brown_butter", "melt", "reheat", "griddle", "grill_bars", "make_roux_sauce"];
    private static readonly string[] Stands = ["おく", "おいて", "おき", "置", "寝かせ", "休ませ", "浸", "漬"];

    /// <summary>What is waited, told behind its figure: "16 minutos y cinco de reposo".</summary>
    internal static readonly string[] Resting = ["resting", "of rest", "of resting", "standing time", "resting time", "de repos", "de reposo", "di riposo", "Ruhe", "Ruhezeit", "Nachruhe"];

    /// <summary>Without the Japanese words that say "about".</summary>
    private static string Near(string after)
    {
        foreach (string about in Abouts)
        {
            if (after.StartsWith(about, StringComparison.Ordinal))
            {
                return after[about.Length..];
            }
        }

        return after;
    }

    private static readonly string[] Abouts = ["ほど", "くらい", "ぐらい", "程", "位", "程度"];

    /// <summary>The kind of a time.</summary>
    /// <param name="op">The operation it is of; null for none.</param>
    /// <param name="clause">The sentence it stands in.</param>
    /// <param name="minutes">Its low end.</param>
    /// <param name="after">What stands behind it.</param>
    /// <param name="own">True where the verb is surely of this time.</param>
    /// <param name="temperatures">The heats of the step.</param>
    public static TimeKind Of(string? op, string clause, double minutes, string after, bool own, List<StepTemperature> temperatures)
    {
        if (Places.Begins(Near(after), Stands) || Places.Behind(after, Places.Skip(after, 0), Resting) > 0 && !IsCold(clause))
        {
            return TimeKind.Rest;
        }

        if (op is "bake" or "saute" && clause.Contains("オーブン", StringComparison.Ordinal))
        {
            return TimeKind.Oven;
        }

        TimeKind kind = Plain(op, clause, own);
        if (minutes >= HalfDay && temperatures.Count == 0 && clause.Contains("ziehen lassen", StringComparison.Ordinal))
        {
            // "2 Tage ziehen lassen" is no heat.
            return TimeKind.Rest;
        }

        if (op is "saute" or "cook_unsaid" && clause.Contains("au four", StringComparison.Ordinal) || kind == TimeKind.Hands && InOven.In(clause) && !(op is not null && Places.Begins(op, Handwork)))
        {
            return TimeKind.Oven;
        }

        if (kind == TimeKind.Hands && InMachine.In(clause))
        {
            return TimeKind.Machine;
        }

        if (kind != TimeKind.Hands || op is not null && Places.Begins(op, Handwork))
        {
            return kind;
        }

        if (op is null && Lukewarm.In(clause))
        {
            return TimeKind.Rest;
        }

        if (op is null && temperatures.Exists(t => t.Of == TemperatureOf.Oven && !t.Inherited) && !Beaten.In(clause))
        {
            return TimeKind.Oven;
        }

        if (op is null && (temperatures.Exists(t => t.Of == TemperatureOf.Bath) || InBath.In(clause)))
        {
            return TimeKind.Cook;
        }

        if (op is null && InMicrowave.In(clause))
        {
            return TimeKind.Cook;
        }

        return minutes <= MostHands ? kind : op is not null && Array.IndexOf(Hot, op) >= 0 ? TimeKind.Cook : temperatures.Exists(t => t.Of == TemperatureOf.Oven && !t.Inherited) ? TimeKind.Oven : temperatures.Count > 0 && temperatures[^1].Celsius <= Fridge ? TimeKind.Chill : TimeKind.Rest;
    }

    /// <summary>True where a thing stands; a stand mixer does not.</summary>
    private static bool Stood(string clause) => Places.FindWord(clause, "stand") is var at and >= 0 && !Places.WordAt(clause, at, "stand mixer");

    /// <summary>True where words name a bath under vacuum.</summary>
    public static bool IsBath(string words) => InBath.In(words);

    /// <summary>True where the cold is named, and not as what a food is taken out of.</summary>
    public static bool IsCold(string clause) => Cold.In(clause) && !OutOf.In(clause);

    /// <summary>The kind an operation has by itself; what it says nothing of, the words around tell.</summary>
    /// <param name="op">The operation.</param>
    /// <param name="clause">The sentence.</param>
    /// <param name="own">True where the verb is surely of this time: then no other word of the sentence says otherwise.</param>
    public static TimeKind Plain(string? op, string clause, bool own = false) => op switch
    {
        "bake" or "roast" or "blind_bake" or "gratinate" or "cool_oven" => TimeKind.Oven,
        "blend" or "mix_dough" or "whip_cream" or "whisk_ribbon" or "stick_blend" or "shear_gel" or "homogenise" or "cream_butter" or "freeze_mill" or "dehydrate" => TimeKind.Machine,
        "chill_fridge" or "blast_chill" or "chill_ice" or "freeze" or "cool_rack" or "set_gel" => TimeKind.Chill,
        "simmer" or "boil_food" or "boil_water" or "water_bath" or "steam" or "deep_fry" or "saute" or "sear" or "poach" or "reduce" or "braise" or "fill_bath" or "blanch_refresh" or "cook_unsaid" or "bain_marie_hold" or "cook_rice" or "cook_pasta" => TimeKind.Cook,
        "rest_meat" or "rest_dough" or "prove_bulk" or "prove_final" or "soak" or "infuse" or "marinate" or "pickle" or "cure" or "brine" or "soak_gelatine" or "bloom_powder" or "thaw" or "ferment" or "hang_drain" or "press_weight" or "set_aside" => TimeKind.Rest,
        _ => own ? TimeKind.Hands : IsCold(clause) ? TimeKind.Chill : OutOf.In(clause) ? TimeKind.Rest : Still.In(clause) || Stood(clause) || clause.Contains('置') ? TimeKind.Rest : TimeKind.Hands,
    };
}
