using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"The 28-day-aged rib", "jamón de 36 meses", "24-month parmesan", "24 Monate gereifter Käse": how old a food is when it is bought, and no time of the step. "Age the beef for 28 days" and "dejar un mínimo de 2 meses" are waits.</summary>
internal static class FoodAges
{
    private const double Day = 1440;
    private const double Week = 7 * Day;
    private const double Month = 30 * Day;

    /// <summary>What makes the time before it an age.</summary>
    private static readonly string[] Aged = ["aged", "old", "dry-aged", "dry aged", "wet-aged", "matured", "alt", "alte", "alten", "alter", "altes", "gereift", "gereifte", "gereiften", "gereifter", "gereiftes"];

    /// <summary>What measures a wait before it: "marinate for 3 days", "nach 3 Wochen".</summary>
    private static readonly string[] Measures = ["for", "after", "nach", "für"];

    /// <summary>A length of ripening in the words of the trade: an age where nothing is left to lie so long.</summary>
    private static readonly string[] Ripening = ["d'affinage", "d'âge", "de curación", "de maduración", "di stagionatura", "di invecchiamento", "熟成"];

    /// <summary>What says of a food that it has ripened so long.</summary>
    private static readonly string[] Ripened = ["aged", "matured", "affiné", "affinée", "affinés", "curado", "curada", "curado de", "curada de", "madurado", "stagionato", "stagionata", "stagionato da", "invecchiato"];

    /// <summary>What joins a food and its age.</summary>
    private static readonly string[] Joints = ["de", "di", "da"];

    /// <summary>Words before such a joint that measure a wait.</summary>
    private static readonly string[] Lengths = ["mínimo", "máximo", "minimo", "massimo", "minimum", "maximum", "periodo", "período", "période", "reposo", "repos", "riposo", "maceración", "macération", "macerazione", "fermentación", "fermentation", "fermentazione", "curación", "maduración", "affinage", "stagionatura", "durée", "durata", "duración", "plazo", "tiempo", "temps", "tempo", "espacio", "alrededor", "cerca", "cabo", "cours", "partir", "más", "plus", "più", "moins", "menos", "meno", "lors", "attente", "espera", "attesa", "bout", "infusion", "infusión", "infusione", "marinade", "salaison", "salatura"];

    /// <summary>Foods that are bought by their age.</summary>
    private static readonly WordList Bought = new("parmesan", "parmigiano", "reggiano", "grana", "padano", "pecorino", "comté", "gruyère", "gouda", "cheddar", "manchego", "mimolette", "beaufort", "appenzeller", "emmental", "emmentaler", "cheese", "ham", "prosciutto", "bresaola", "jambon", "fromage", "Käse", "Schinken", "Bergkäse", "queso", "jamón", "serrano", "ibérico", "formaggio", "prosciutto", "vinegar", "miso");

    /// <summary>Foods taken some days old.</summary>
    private static readonly WordList Stale = new("pain", "baguette", "brioche", "riz", "pan", "arroz", "pane", "riso", "ciabatta", "levain");

    /// <summary>What lets something lie.</summary>
    private static readonly WordList Lets = new("leave", "let", "laisser", "laissez", "laisse", "dejar", "deja", "dejad", "lasciare", "lascia", "lassen", "store", "keep", "hang", "cure", "mature", "conserver", "guardar", "conservar", "conservare");

    /// <summary>Nouns of a wait behind a hyphened age: "a 3-month cure".</summary>
    private static readonly string[] Waits = ["cure", "rest", "infusion", "ageing", "aging", "ferment", "fermentation", "maturation", "soak", "wait", "hang", "brine", "storage", "shelf", "maceration", "process", "period", "supply"];

    /// <summary>True for a time that is the age of a food.</summary>
    /// <param name="s">The step.</param>
    /// <param name="start">Where the time begins.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="minutes">How long it is.</param>
    public static bool Is(string s, int start, int end, double minutes)
    {
        if (minutes < Day)
        {
            return false;
        }

        int next = end;
        while (next < s.Length && s[next] is ' ' or '-')
        {
            next++;
        }

        ReadOnlySpan<char> before = s.AsSpan(0, start).TrimEnd();
        if (Places.Behind(s, next, Aged) is > 0 and var aged && !Places.EndsIn(before, Measures) && !(aged < s.Length && s[aged] == '-'))
        {
            return true;
        }

        string clause = Sentences.Around(s, start);
        if (Places.EndsIn(before, Ripened) || Places.Behind(s, next, Ripening) > 0)
        {
            return !Lets.In(clause);
        }

        if (minutes < Month)
        {
            return minutes <= Week && Joined(before) is { Length: > 0 } stale && Stale.In(stale[(stale.LastIndexOf(' ') + 1)..].ToString());
        }

        if (Hyphened(s, start, end) && next < s.Length && char.IsLetter(s[next]))
        {
            return Places.Behind(s, next, Waits) == 0;
        }

        if (Joined(before) is { Length: > 0 } noun && char.IsLetter(noun[^1]))
        {
            return !Lets.In(clause) && !Places.EndsIn(noun, Lengths);
        }

        int word = before.LastIndexOf(' ') + 1;
        return before.Length > word && char.IsLetter(before[^1]) && Bought.In(before[word..].ToString()) && !Lets.In(clause);
    }

    /// <summary>What stands before the word that joins a food and its age; empty where none does.</summary>
    private static ReadOnlySpan<char> Joined(ReadOnlySpan<char> before)
    {
        foreach (string joint in Joints)
        {
            if (Places.EndsIn(before, joint))
            {
                return before[..^joint.Length].TrimEnd();
            }
        }

        return default;
    }

    /// <summary>"24-month": the figure and its unit are one word.</summary>
    private static bool Hyphened(string s, int start, int end) => s.AsSpan(start, end - start).IndexOf('-') is > 0 and var hyphen && char.IsLetter(s[start + hyphen + 1]);
}
