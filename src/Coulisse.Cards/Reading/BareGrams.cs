using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"All weights in grams.", "(everything in grams)": said once, no bare figure is asked for its unit.</summary>
internal static class BareGrams
{
    /// <summary>What a question about a bare figure says, and no other question.</summary>
    public const string Question = "of which unit? Grams are taken.";

    private static readonly string[] Said = ["in grams", "are grams", "in g", "in gram", "en grammes", "in Gramm", "en gramos", "in grammi"];
    private static readonly string[] All = ["all", "everything", "amounts", "weights", "quantities", "tout", "toutes", "poids", "quantités", "alle", "alles", "Mengen", "Angaben", "todo", "todas", "cantidades", "tutto", "pesi", "quantità"];
    private const int Longest = 120;

    /// <summary>Takes those questions back when the card says it.</summary>
    public static void Settle(Dish dish, List<Doubt> doubts)
    {
        if (doubts.Exists(d => d.Question.EndsWith(Question, StringComparison.Ordinal)) && (Says(dish.Title) || dish.Notes.Concat(dish.Components.SelectMany(c => c.Notes)).Any(n => Says(n.Text))))
        {
            doubts.RemoveAll(d => d.Question.EndsWith(Question, StringComparison.Ordinal));
        }
    }

    private static bool Says(string s) => s.Length < Longest && Places.HasAny(s, Said) && Places.HasAny(s, All);
}
