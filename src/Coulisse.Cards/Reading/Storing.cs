using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Sentences that say how long a thing keeps, or may be frozen: storage, no wait ("store up to 5 days", "can be frozen for 3 months", "Holds on semolina 4 hours."). "Hold on ice 4 hours." orders one.</summary>
internal static class Storing
{
    private const double Day = 1440;
    private const double Weeks = 14 * 1440;
    private static readonly WordList Keepers = new("keeps", "keep for", "will keep", "store in", "dura", "durano", "se conserve", "hält sich", "haltbar", "aguanta", "si conserva", "se conserva", "will last", "best within", "eaten within", "best eaten", "eat within", "consume within", "à consommer", "consommer sous", "consommer dans", "consumir antes");
    private static readonly string[] Openers = ["holds", "keeps", "it holds", "it keeps", "they hold", "they keep", "will hold", "will keep", "se garde", "se gardent", "se conserve", "se conservent", "tient", "tiennent", "hält", "hält sich", "halten sich", "aguanta", "aguantan", "se conserva", "se conservan", "si conserva", "si conservano", "si mantiene", "si mantengono", "regge", "reggono", "lasts", "it lasts", "they last", "will last", "good for", "fine for", "shelf life", "storage", "keeping", "stored", "conservation", "Haltbarkeit", "Lagerung", "haltbar", "conservación", "caducidad", "conservazione", "durata"];
    private static readonly string[] Sayers = ["good for", "fine for", "they hold", "it holds", "they'll hold", "will hold", "they keep", "tient", "tiennent", "regge", "reggono", "halten sie", "hält er", "hält es", "hält sie", "keeps", "will keep", "lasts", "will last", "hält", "halten", "hält sich", "halten sich", "se garde", "se gardent", "se conserve", "se conservent", "aguanta", "aguantan", "se conserva", "se conservan", "si conserva", "si conservano", "si mantiene", "si mantengono"];
    private static readonly string[] Uppers = ["about", "ca.", "etwa", "environ", "unos", "circa", "up to", "jusqu'à", "bis zu", "hasta", "fino a", "max", "max.", "at least", "for"];
    private static readonly Beginnings FirstOfOpeners = new(Openers);
    // What is labelled and dated is put away: days behind it say how long it keeps.
    private static readonly WordList Labelled = new("label", "use within", "use by", "shelf life", "étiqueter", "dlc", "à consommer dans", "etikettieren", "beschriften", "verbrauchen", "etiquetar", "consumir en", "caducidad", "etichettare", "consumare entro", "scadenza");
    private static readonly WordList MayFreeze = new("can be frozen", "may be frozen", "freezes well", "freezes for", "freeze for up to", "freeze up to", "can be kept", "can be stored", "peut se congeler", "peut être congelé", "peut être congelée", "se congèle", "peut se garder", "peut se conserver", "einfrierbar", "lässt sich einfrieren", "eingefroren", "lässt sich aufbewahren", "se puede congelar", "se puede guardar", "se puede conservar", "se congela", "si può congelare", "si può conservare", "si congela");
    // Only with a figure that is an upper end, or where nothing is said to be done afterwards.
    private static readonly WordList Held = new("stocker", "aufheben", "keep", "kept", "store", "stored", "hold", "conserver", "garder", "aufbewahren", "lagern", "halten", "conservar", "guardar", "mantener", "conservare", "tenere");
    private static readonly WordList PutAway = new("store", "stored", "stocker", "stockez", "stockage", "aufheben", "conserver", "aufbewahren", "lagern", "guardar", "conservar", "conservare");
    private static readonly WordList Frozen = new("freezer", "frozen", "freeze", "freezes", "congélateur", "congeler", "congèle", "congelé", "congelée", "congelador", "congelar", "congela", "Gefrierschrank", "Tiefkühler", "Tiefkühlfach", "einfrieren", "eingefroren", "einfrierbar", "congelatore", "congelare", "congelado", "congelato", "surgelé", "surgelée", "tiefgekühlt", "gefroren", "congelados", "congeladas", "congelada", "congelés", "congelées", "congelati", "congelate", "congelata", "surgelés", "surgelées", "congélo", "Tiefkühlschrank", "Gefrierfach", "TK");
    private static readonly WordList Then = new("before", "then", "avant", "puis", "vor dem", "dann", "danach", "antes", "luego", "después", "prima", "poi");

    /// <summary>True when a time of a day or more is how long it keeps.</summary>
    /// <param name="clause">The sentence the time stands in.</param>
    /// <param name="most">True where the time is an upper end ("up to").</param>
    /// <param name="minutes">The time: nobody freezes for weeks to work on afterwards.</param>
    public static bool Is(string clause, bool most, double minutes) =>
        Keepers.In(clause) || Labelled.In(clause) || KeepLabels.In(clause) || MayFreeze.In(clause) || clause.Contains("保存", StringComparison.Ordinal) || clause.Contains("保管", StringComparison.Ordinal) || clause.Contains("日持ち", StringComparison.Ordinal) || clause.Contains("もちます", StringComparison.Ordinal) || clause.Contains("持ちます", StringComparison.Ordinal) || Eaten(clause)
        || Held.In(clause) && (most || StoragePlaces.FrozenIn(clause) && StoragePlaces.Cooled(clause) && !Then.In(clause)) || PutAway.In(clause) && !Then.In(clause) || (most || minutes >= Weeks) && (Frozen.In(clause) && !Then.In(clause) || clause.Contains("冷凍", StringComparison.Ordinal));

    /// <summary>"5 days fridge / 3 months freezer.", "In frigo 2-3 giorni. Si può congelare.": days in a place and no work, where a second place or the next sentence says that keeping is spoken of. "2 days in the fridge" alone is a wait.</summary>
    public static bool Verbless(string s, string clause, double minutes, bool works, string lang)
    {
        if (minutes < Day || works || !StoragePlaces.FrozenIn(s) || Then.In(clause))
        {
            return false;
        }

        string behind = Parted(clause);
        return StoragePlaces.In(clause[..^behind.Length]) is "fridge" or "room" or "airtight" && StoragePlaces.In(behind) is "freezer" && Clock.Tells(behind, 0, lang)
            || StoragePlaces.In(clause) is "fridge" or "room" or "airtight" && MayFreeze.In(s);
    }

    /// <summary>True where something is done afterwards.</summary>
    public static bool Goes(string clause) => Then.In(clause);

    /// <summary>True where a word of keeping or of the cold stands anywhere: asked of every note, as most tell of none.</summary>
    public static bool Mentioned(string s) => Mentions.In(s) || KeepLabels.In(s);

    private static readonly WordList Mentions = new("good for", "best", "eat within", "eaten within", "consume within", "à consommer", "consommer", "consumir", "se garde", "se gardent", "tient", "tiennent", "halten", "aguantan", "si mantiene", "si mantengono", "se conservent", "se conservan", "si conservano", "label", "use by", "étiqueter", "dlc", "verbrauchen", "consumare", "can be frozen", "may be frozen", "freeze", "freezes", "freezer", "frozen", "congeler", "congèle", "congélateur", "einfrieren", "eingefroren", "einfrierbar", "congelar", "congela", "congelador", "congelare", "congelatore", "kept", "store", "stored", "hold", "holds", "conserver", "garder", "stocker", "aufbewahren", "aufheben", "lagern", "conservar", "guardar", "conservare", "refrigerate", "chill", "fridge", "refrigerator");

    /// <summary>True where a time of a day or more in a note is how long a thing keeps.</summary>
    public static bool Keeps(string s, int at, double minutes, string lang)
    {
        if (minutes < Day)
        {
            return false;
        }

        string clause = Sentences.Around(s, at);
        string before = Folding.Lower(s[Math.Max(0, at - 40)..at].TrimEnd());
        bool most = Places.Ends(before, Mosts);
        return Is(clause, most, minutes) || Said(s, at, before, minutes) || most && Chilled(clause) || Verbless(s, clause, minutes, Operations.In(clause, lang).Exists(o => o.Id is not "freeze" && o.At < at), lang);
    }

    private static readonly string[] Mosts = ["up to", "jusqu'à", "bis zu", "hasta", "fino a", "at most", "maximum", "max.", "max", "höchstens", "no more than", "al massimo", "como máximo", "au maximum"];

    private static string Parted(string clause)
    {
        int at = clause.AsSpan().LastIndexOfAny("/,、");
        foreach (string or in (ReadOnlySpan<string>)[" or ", " ou ", " oder ", " o "])
        {
            at = Math.Max(at, clause.LastIndexOf(or, StringComparison.OrdinalIgnoreCase));
        }

        return at > 0 ? clause[at..] : "";
    }

    /// <summary>True when the sentence around a place says how long a thing keeps: "in the fridge 3 days, or freeze it for a month" are two places and no two ways to work.</summary>
    public static bool Speaks(string s, int at) => Sentences.Around(s, at) is var clause && (Is(clause, most: false, 0) || Said(s, at, "", 0) || Chilled(clause) && UpTo.In(clause) && Frozen.In(clause));

    /// <summary>"冷蔵で2日以内に食べる".</summary>
    public static bool Eaten(string clause) => clause.Contains("日以内", StringComparison.Ordinal) && (clause.Contains("食べ", StringComparison.Ordinal) || clause.Contains("使い切", StringComparison.Ordinal) || clause.Contains("召し上が", StringComparison.Ordinal));

    /// <summary>"Refrigerate for up to 3 days": an upper end of days in the cold, where nothing is said to be done afterwards.</summary>
    public static bool Chilled(string clause) => Cold.In(clause) && !Then.In(clause);

    private static readonly WordList Cold = new("refrigerate", "chill", "fridge", "refrigerator", "réfrigérer", "réfrigérateur", "au frais", "kühl stellen", "kalt stellen", "Kühlschrank", "refrigerar", "nevera", "frigo", "frigorifero");
    private static readonly WordList UpTo = new("up to", "jusqu'à", "bis zu", "hasta", "fino a");

    /// <summary>True where such a verb stands right before the time.</summary>
    private static bool Sayer(string before)
    {
        foreach (string upper in Uppers)
        {
            if (Places.Ends(before, Sayers))
            {
                return true;
            }

            before = Places.Ends(before, upper) ? before[..^upper.Length].TrimEnd() : before;
        }

        return Places.Ends(before, Sayers);
    }

    /// <summary>True when the sentence a time stands in opens with what a thing does by itself ("Holds on semolina 4 hours.", "Tient 2 heures au frais."), whatever the time; "holds its shape after 2 hours" says when, not how long.</summary>
    public static bool Said(string s, int at, string before, double minutes)
    {
        if (minutes >= Day && Sayer(before))
        {
            // "ready after a day, good for 4 weeks", "(hält 2 Wochen)"
            return true;
        }

        int from = Sentences.Begin(s, at);
        int open = s.AsSpan(from, at - from).LastIndexOf('(');
        from = Places.Skip(s, open < 0 ? from : from + open + 1);
        if (!FirstOfOpeners.May(s, from) || before.EndsWith("after", StringComparison.Ordinal) || before.EndsWith("après", StringComparison.Ordinal) || before.EndsWith("nach", StringComparison.Ordinal) || before.EndsWith("dopo", StringComparison.Ordinal) || before.EndsWith("después de", StringComparison.Ordinal))
        {
            return false;
        }

        foreach (string w in Openers)
        {
            if (Places.WordAt(s, from, w))
            {
                // "Good for a quick lunch: fry 3 min" keeps nothing.
                return w is not ("good for" or "fine for") || !s.AsSpan(from, at - from).Contains(':');
            }
        }

        return false;
    }
}
