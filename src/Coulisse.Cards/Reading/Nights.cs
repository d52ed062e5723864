using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Chill overnight", "une nuit au frais", "一晩おく": a wait told by the night and without a figure.</summary>
internal static class Nights
{
    private static readonly string[] All = ["overnight", "une nuit", "über nacht", "de un día para otro", "tutta la notte", "una notte", "toda la noche", "la noche anterior", "o/n", "ü/n", "over night", "all night", "through the night", "pendant la nuit", "toute la nuit", "eine Nacht", "una noche", "durante la noche", "de un día para el otro", "tutta notte", "per la notte", "1 nuit", "1 Nacht", "1 noche", "1 notte", "1 night", "one night", "until the next day", "until next day", "until the following day", "jusqu'au lendemain", "bis zum nächsten Tag", "bis zum nächsten Morgen", "bis zum Folgetag", "hasta el día siguiente", "hasta mañana", "bis morgen", "fino a domani", "jusqu'à demain", "until tomorrow", "till tomorrow", "翌朝まで", "fino al giorno dopo", "fino al giorno seguente", "翌日まで", "一晩", "ひと晩", "1晩", "一夜"];
    private static readonly Beginnings First = new(All);

    /// <summary>Puts the night of a step among its times, where it stands; hours told beside it are the same wait.</summary>
    /// <param name="s">The step.</param>
    /// <param name="lang">Language.</param>
    /// <param name="times">Its times with figures.</param>
    /// <param name="operations">Its works.</param>
    public static void Add(string s, string lang, List<StepTime> times, List<(int At, string Id)> operations)
    {
        foreach (string night in First.MayIn(s) ? All : [])
        {
            if (Places.FindWord(s, night) is var at and >= 0)
            {
                if (NightHours.Told(s, at, at + night.Length, times, operations) || OrOvernight.Taken(s, at, at + night.Length, times))
                {
                    return;
                }

                string before = s[..at].TrimEnd();
                if (times.Count > 0 && BareHeat.Ends(Folding.Lower(before[Math.Max(0, before.Length - 20)..].TrimEnd(',', ' ')), OrOvernight.Betters))
                {
                    // "2 hours or, better, overnight": the other way is no second wait.
                    return;
                }

                // Where it stands among the others: "all night …, next day boil it an hour".
                int place = 0;
                while (place < times.Count && s.IndexOf(times[place].Words, StringComparison.Ordinal) is var told && told >= 0 && told < at)
                {
                    place++;
                }

                times.Insert(place, new StepTime(null, null, OwnWork.OfNight(operations, s, at, lang), night));
                return;
            }
        }
    }
}
