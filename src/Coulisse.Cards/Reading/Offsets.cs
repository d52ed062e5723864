using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Times that say when and not how long: before service, ahead, before the end, more or less than another time, by the weight.</summary>
internal static class Offsets
{
    private static readonly string[] Behind =
    [
        "ahead", "in advance", "beforehand", "before", "avant", "à l'avance", "vor", "vorher", "im voraus", "antes", "de antelación", "prima", "in anticipo", "前",
    ];

    // By the weight, or more or less than another time: no time of its own, whatever stands before it.
    private static readonly string[] Relative =
    [
        "in meno", "de moins", "weniger", "menos", "less than", "to the time", "to the cooking", "per 100", "per 250", "per 500", "per 1", "per kg", "per kilo", "per lb", "per pound", "je 100", "je 500", "je kg", "pro kg", "pro 500", "par kg", "par kilo", "par 500", "por kilo", "por kg", "al kg", "al chilo",
    ];

    private static readonly string[] Waits = ["for", "at least", "pendant", "au moins", "mindestens", "al menos", "almeno", "minimum", "minimum of", "min", "mínimo de", "minimo di", "minimum de", "un minimum de", "als minimum", "per", "durante", "a further", "another", "a good", "a full"];
    // "Cool 10 minutes before cutting" is a wait, too: the verb stands right before the time, in German behind it.
    private static readonly string[] Stands = ["wait", "attendre", "attendez", "patienter", "esperar", "aspettare", "attendere", "cool", "rest", "chill", "leave", "stand", "sit", "prove", "proof", "freeze", "refrigerate", "infuse", "steep", "soak", "drain", "marinate", "cure", "reposer", "refroidir", "tiédir", "infuser", "mariner", "égoutter", "reposar", "enfriar", "templar", "macerar", "escurrir", "riposare", "raffreddare", "intiepidire", "marinare", "scolare"];
    private static readonly string[] Stood = ["warten", "ruhen lassen", "rasten lassen", "abkühlen lassen", "auskühlen lassen", "ziehen lassen", "stehen lassen", "ruhen", "rasten", "abkühlen", "ziehen"];
    private static readonly string[] Taken = ["take", "remove", "bring", "sortir", "retirer", "herausnehmen", "nehmen", "sacar", "retirar", "togliere", "tirare fuori", "出す", "出し"];

    /// <summary>True when the words behind a time make it such a point.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="before">What stands before the time, lower case.</param>
    /// <param name="after">What stands behind it, lower case.</param>
    public static bool Is(string s, string before, string after)
    {
        string a = after.TrimStart();
        before = Plainly(before);
        // "Chill at least 2 hours before serving" is a wait; what is taken out of the cold before serving is not.
        return Begins(a, Relative) || Begins(a, Behind) && (!Places.Ends(before, Waits) && !Places.Ends(before, Stands) && !Places.HasAny(s, Stood) || Places.HasAny(s, Taken));
    }

    /// <summary>Without what stands between a verb and its time: "leave it a good", "cool about".</summary>
    private static string Plainly(string before)
    {
        for (int guard = 0; guard < 4; guard++)
        {
            string cut = before.TrimEnd();
            if (Places.Ends(cut, Stands))
            {
                return cut;
            }

            foreach (string w in Betweens)
            {
                if (cut.Length > w.Length && Places.Ends(cut, w))
                {
                    cut = cut[..^w.Length].TrimEnd();
                    break;
                }
            }

            if (cut.Length == before.Length)
            {
                break;
            }

            before = cut;
        }

        return before;
    }

    private static readonly string[] Betweens = ["it", "them", "this", "a", "good", "full", "whole", "about", "around", "roughly", "nearly", "ca.", "etwa", "environ", "unos", "circa", "une", "bonne", "gute", "to", "stand", "out", "covered", "at room temperature", "at room temp", "in the tin", "on the board", "on the rack", "on the bench", "à température ambiante", "bei Zimmertemperatur", "bei zimmertemperatur", "bei raumtemperatur", "a temperatura ambiente"];

    private static bool Begins(string a, string[] words)
    {
        foreach (string w in words)
        {
            if (a.StartsWith(w, StringComparison.Ordinal) && (a.Length == w.Length || !char.IsLetter(a[w.Length]) || Places.IsJapanese(w[0]) || char.IsAsciiDigit(w[^1])))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True when the words before a time make it another way, a stretch inside another time, or an addition to it.</summary>
    public static bool Aside(string before, bool first) => Places.Ends(before, "(or up to", "or up to", "adding") || !first && Places.Ends(before, "the first", "after", "nach", "après", "dopo", "tras", "or, better,");
}
