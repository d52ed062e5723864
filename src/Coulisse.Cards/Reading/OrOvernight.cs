using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"4 hours or overnight", "6 h to overnight", "overnight, or at least 4 hours": one wait with a low end and a night for those who have one. Read as two, the plan would wait for both.</summary>
internal static class OrOvernight
{
    private const int Near = 34;
    private const int MostWords = 2;
    private static readonly string[] Joints = ["or", "to", "ou", "oder", "bis", "o", "oppure", "または", "か"];
    private static readonly string[] Others = ["so", "more", "less", "until", "till", "longer", "mehr", "länger", "más", "più", "plus"];

    /// <summary>True where the night was taken into one of the times.</summary>
    /// <param name="s">The step.</param>
    /// <param name="at">Where the night begins.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="times">The times of the step.</param>
    public static bool Taken(string s, int at, int end, List<StepTime> times)
    {
        int from = 0;
        for (int k = 0; k < times.Count; k++)
        {
            StepTime t = times[k];
            int told = t.Words.Length == 0 ? -1 : s.IndexOf(t.Words, from, StringComparison.Ordinal);
            if (told < 0 || t.MinutesMin is null || t.Kind == TimeKind.Limit)
            {
                continue;
            }

            from = told + t.Words.Length;
            if (from <= at && at - from <= Near && Joined(s.AsSpan(from, at - from)))
            {
                // "2 hours or, better, overnight": two hours will do
                times[k] = Array.Exists(Betters, w => Places.FindWord(s[from..at], w) >= 0) ? t with { Words = s[told..end] } : t with { MinutesMax = null, Bound = Bound.AtLeast, Words = s[told..end] };
                return true;
            }

            if (told >= end && told - end <= Near && Joined(s.AsSpan(end, told - end), least: true))
            {
                times[k] = t with { MinutesMax = null, Bound = Bound.AtLeast, Words = s[at..from] };
                return true;
            }
        }

        return false;
    }

    /// <summary>True where nothing but a word that joins, and at most its place and a verb, stands between: "or", "in the fridge, or leave it".</summary>
    private static bool Joined(ReadOnlySpan<char> between, bool least = false)
    {
        if (between.ContainsAny(".;:"))
        {
            return false;
        }

        string words = between.ToString().Trimmed(" ,-(~");
        foreach (string joint in Joints)
        {
            int at = Places.FindWord(words, joint);
            if (at < 0)
            {
                continue;
            }

            string place = words[..at].Trimmed(" ,(");
            string verb = words[(at + joint.Length)..].Trimmed(" ,");
            bool near = place.Length == 0 || place.Length < 22 && Array.Exists(Ins, w => Places.WordAt(place, 0, w));
            if (near && (least || verb.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length <= MostWords) && !Array.Exists(Others, w => Places.WordAt(verb, 0, w)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"2 hours or, better, overnight".</summary>
    internal static readonly string[] Betters = ["better", "preferably", "ideally", "best", "besser", "am besten", "idealerweise", "meglio", "preferibilmente", "idealmente", "mieux", "idéalement", "de préférence", "mejor", "preferiblemente"];
    private static readonly string[] Ins = ["in", "at", "im", "bei", "au", "à", "en", "a", "nel", "covered", "chilled", "kühl"];
}
