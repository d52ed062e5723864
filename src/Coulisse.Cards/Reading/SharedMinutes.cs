using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"8 minutos, … otros 5", "10 minuti in prima velocità e 5 in seconda", "5 minutes d'un côté et 3 de l'autre": minutes whose word was told once, before them. "Otros 5 huevos" counts eggs.</summary>
internal static class SharedMinutes
{
    private const double Most = 120;
    private const int Reach = 120;

    private static readonly string[] Others = ["another", "a further", "un'altra", "otros", "otras", "encore", "autres", "altri", "ancora", "weitere", "weiteren", "nochmals", "noch einmal", "noch"];

    /// <summary>What joins a second figure to the first.</summary>
    private static readonly string[] Joints = ["plus", "più", "más", "and", "then", "et", "puis", "y", "luego", "e", "poi", "und", "dann", "+"];

    /// <summary>How fast, or which side: what only minutes go on with.</summary>
    private static readonly string[] Ways = ["on second", "on first", "on fast", "on slow", "on high", "on low", "on speed", "on the other", "on the second", "on the first", "on the flesh", "on the skin", "on the fat", "en deuxième", "en seconde", "en 2e", "en 2ème", "en première", "en vitesse", "à vitesse", "à grande vitesse", "à petite vitesse", "de l'autre", "sur l'autre", "sur la seconde", "sur le second", "côté chair", "côté peau", "en segunda", "en primera", "en velocidad", "a velocidad", "por el otro", "por la otra", "por el segundo", "por la segunda", "del otro", "in seconda", "in prima", "in velocità", "a velocità", "dall'altro", "dall'altra", "dall'altra parte", "per l'altro", "auf der anderen", "auf der zweiten", "auf Stufe", "schnell", "langsam", "im Schnellgang", "im Langsamgang"];

    /// <summary>What lets it rest, before the figure.</summary>
    private static readonly string[] Lets = ["dejar", "deja", "dar", "laisser", "laissez", "lasciare", "lascia", "leave", "allow", "give"];

    /// <summary>What is done so long, where the German verb closes the clause.</summary>
    private static readonly string[] Verbs = ["kneten", "ruhen", "gehen", "ziehen", "quellen", "köcheln", "kochen", "backen", "schlagen", "rühren", "braten", "garen", "dünsten", "schmoren", "rösten", "dämpfen"];

    /// <summary>The minutes at a place; null when the figure there is none.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="at">Where the figure stands.</param>
    /// <param name="lang">Language.</param>
    /// <param name="times">The times told before.</param>
    public static (double Min, double Max, int Start, int End)? At(string s, int at, string lang, List<StepTime> times)
    {
        if (times.Count == 0 || lang == "ja" || !char.IsAsciiDigit(s[at]) && !NumberBeginnings.May(s, at) || !times[^1].Words.Contains("min", StringComparison.OrdinalIgnoreCase) && !Shared(times) || s.LastIndexOf(times[^1].Words, at, Math.Min(at + 1, Reach), StringComparison.Ordinal) < 0)
        {
            return null;
        }

        if (Numbers.Range(s, at, lang) is not { Min: >= 1 } n || (n.Max ?? n.Min) > Most)
        {
            return null;
        }

        ReadOnlySpan<char> before = s.AsSpan(0, at).TrimEnd();
        int next = Places.Skip(s, n.End);
        bool closes = next >= s.Length || s[next] is ',' or ';' || s[next] == '.' && (next + 1 == s.Length || s[next + 1] == ' ');
        bool joined = Places.EndsIn(before, Joints) || before.Length > 0 && before[^1] is ',' or '+';
        if ((joined || Places.EndsIn(before, Lets)) && Places.Behind(s, next, TimeKinds.Resting) > 0)
        {
            return (n.Min, n.Max ?? n.Min, at, n.End);
        }

        if (n.InWords)
        {
            return null;
        }

        bool other = Places.EndsIn(before, Others);
        bool told = other && (closes || Places.Behind(s, next, Ways) > 0 || Places.Behind(s, next, Joints) > 0 && next > n.End || Done(s, next, lang))
            || joined && (Places.Behind(s, next, Ways) > 0 || Done(s, next, lang));
        return told ? (n.Min, n.Max ?? n.Min, at, n.End) : null;
    }

    /// <summary>A figure that shares its word may share it again.</summary>
    private static bool Shared(List<StepTime> times) =>
        times.Count > 1 && times[^1].Words.AsSpan().ContainsAnyExcept(Signs) is false && times.Exists(t => t.Words.Contains("min", StringComparison.OrdinalIgnoreCase));

    private static readonly System.Buffers.SearchValues<char> Signs = System.Buffers.SearchValues.Create("0123456789-–/ ");

    private static bool Done(string s, int at, string lang) => lang == "de" && at < s.Length && char.IsLower(s[at]) && Places.Behind(s, at, Verbs) > 0;
}
