using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Do not refrigerate", "ne pas bouillir": what is told not to be done is no work of the step, and takes no place of the kitchen.</summary>
internal static class Undone
{
    private static readonly string[] Nots = ["do not", "don't", "never", "ne pas", "ne jamais"];

    /// <summary>True where such words stand right before a verb.</summary>
    /// <param name="s">The sentence.</param>
    /// <param name="at">Where the verb begins.</param>
    /// <param name="lang">Language.</param>
    public static bool At(string s, int at, string lang)
    {
        if (at < 3 || s[at - 1] != ' ')
        {
            return false;
        }

        ReadOnlySpan<char> before = s.AsSpan(0, at - 1);
        foreach (string not in Nots)
        {
            if (Places.EndsIn(before, not))
            {
                return true;
            }
        }

        return lang switch { "es" => Places.EndsIn(before, "no"), "it" => Places.EndsIn(before, "non"), _ => false };
    }
}
