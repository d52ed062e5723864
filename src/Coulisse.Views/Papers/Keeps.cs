using Coulisse.Cards;

namespace Coulisse.Views.Papers;

/// <summary>How long a part keeps, in the card's words: the shortest first, each once, the same on label, twin list and box.</summary>
internal static class Keeps
{
    /// <summary>The words; empty when the card does not say. What is only said of quality is left out where a limit is meant.</summary>
    public static string Words(IEnumerable<Component> parts)
        => string.Join("; ", parts.SelectMany(c => c.Keeps).Where(k => !k.Quality).OrderBy(k => k.SameDay ? 0 : k.Hours ?? double.MaxValue).Select(k => CardPaper.After("Keeps", k.Text)).Distinct(StringComparer.Ordinal));
}
