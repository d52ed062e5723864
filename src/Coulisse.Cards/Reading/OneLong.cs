using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Leave to mature for a month", "laisser macérer une semaine", "einen Tag ruhen lassen": one of a long unit, told by its article, where something is left to lie. "Once a week", "one day we will", "a week ahead" wait for nothing.</summary>
internal static class OneLong
{
    private const int Reach = 70;

    private static readonly string[] Fors = ["for", "for about", "for at least", "for a full", "pendant", "durant", "durante", "für", "per", "por", "at least", "mindestens", "au moins", "almeno", "al menos", "another", "environ", "about"];

    private static readonly WordList Lies = new(
        "leave", "let", "rest", "stand", "mature", "cure", "marinate", "macerate", "infuse", "steep", "soak", "ferment", "hang", "dry", "chill", "age", "ripen", "brine", "salt", "sit", "freeze", "prove", "wait",
        "laisser", "laissez", "laisse", "macérer", "mariner", "reposer", "infuser", "sécher", "tremper", "fermenter", "saler", "affiner", "attendre", "mûrir",
        "dejar", "deja", "dejad", "dejamos", "macerar", "marinar", "reposar", "curar", "secar", "fermentar", "infusionar", "madurar", "remojar", "esperar",
        "lasciare", "lascia", "lasciate", "macerare", "marinare", "riposare", "stagionare", "essiccare", "fermentare", "infusione", "maturare", "ammollo", "aspettare");

    private static readonly WordList German = new("ziehen", "ruhen", "reifen", "pökeln", "marinieren", "lagern", "stehen", "trocknen", "einweichen", "gären", "beizen", "lassen", "fermentieren", "abhängen", "einlegen", "warten", "kalt stellen", "kühl stellen");

    private static readonly string[] Oftens = ["once", "twice", "times", "fois", "mal", "einmal", "zweimal", "veces", "vez", "volta", "volte", "every", "chaque", "jeden", "jede", "cada", "ogni", "within", "or", "made", "make", "up to"];

    private static readonly string[] Points = ["ahead", "before", "earlier", "later", "in advance", "avant", "plus tôt", "plus tard", "vorher", "später", "zuvor", "antes", "después", "prima", "dopo", "old", "or so before", "in", "para otro", "para el otro", "a otro", "al otro", "à l'autre", "all'altro", "auf den anderen"];

    /// <summary>True where one of a unit of days or more is how long something lies.</summary>
    /// <param name="s">The step.</param>
    /// <param name="at">Where the article stands.</param>
    /// <param name="end">Where the unit ends.</param>
    /// <param name="lang">Language.</param>
    public static bool Is(string s, int at, int end, string lang)
    {
        ReadOnlySpan<char> before = s.AsSpan(0, at).TrimEnd();
        if (Places.EndsIn(before, Oftens) || Places.Behind(s, Places.Skip(s, end), Points) > 0)
        {
            return false;
        }

        int begin = Math.Max(Sentences.Begin(s, at), at - Reach);
        return Places.EndsIn(before, Fors) || Lies.In(s[begin..at]) || lang == "de" && German.In(Sentences.Around(s, at));
    }
}
