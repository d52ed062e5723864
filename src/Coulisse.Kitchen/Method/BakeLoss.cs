using System.Globalization;
using Coulisse.Cards;
using Coulisse.Matter.Reference;

namespace Coulisse.Kitchen.Method;

/// <summary>What a bake of a kind loses where its card does not say.</summary>
/// <param name="Kind">Kind of bake.</param>
/// <param name="Low">Least, percent of the raw weight.</param>
/// <param name="Best">Middle.</param>
/// <param name="High">Most.</param>
/// <param name="Words">Words that mean it.</param>
/// <remarks>Figures of bread, cake and puff pastry from published measurements, the others common practice (`data/measures/bake-losses.tsv`). Label and mixture take them as a loss with its range; what must be safe is never judged on them.</remarks>
public sealed record BakeLoss(string Kind, double Low, double Best, double High, string[] Words)
{
    private static readonly Lazy<BakeLoss[]> Table = new(() => [.. ReferenceTable.Load("measures/bake-losses.tsv").Rows.Select(r => new BakeLoss(r[0], N(r[1]), N(r[2]), N(r[3]), r[4].Split(';')))]);

    /// <summary>The kind a component is by its name and its step; null when none is named.</summary>
    public static BakeLoss? Of(string text) => Table.Value.FirstOrDefault(k => k.Words.Any(w => Whole(text, w)));

    /// <summary>A word on a bake that states no weight and no loss; null for every other step.</summary>
    internal static string? Unsaid(Component component, Step step)
        => step.EndGrams is null && step.LossPercent is null && step.Operations.Append(step.Operation).Any(o => o is "bake" or "blind_bake") && Of(component.Name.Length > 0 ? component.Name : step.Text) is { } kind
            ? string.Create(CultureInfo.InvariantCulture, $"the loss in the oven is not stated and not taken off; {kind.Kind} loses about {kind.Best:0.#} % ({kind.Low:0.#} to {kind.High:0.#} %): weigh the first bake")
            : null;

    private static bool Whole(string text, string word)
    {
        int at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase);
        return at >= 0 && (at == 0 || !char.IsLetter(text[at - 1])) && (at + word.Length == text.Length || !char.IsLetter(text[at + word.Length]));
    }

    private static double N(string cell) => ReferenceTable.Number(cell) ?? throw new FormatException("measures/bake-losses.tsv lacks a figure.");
}
