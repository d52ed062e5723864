using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Plating;

/// <summary>The smallest batch of a component that the kitchen's kit works with.</summary>
/// <param name="Component">Component.</param>
/// <param name="Grams">Weight of that batch.</param>
/// <param name="Share">Share of the batch as scaled; above 1 the batch as scaled is too small.</param>
/// <param name="Because">What binds it, in words.</param>
/// <param name="Kit">Kit that binds: "jug blender", "frame", "scale".</param>
/// <param name="Source">Where the figure is from.</param>
public sealed record LeastBatch(string Component, double Grams, double Share, string Because, string Kit, string Source)
{
    /// <summary>Components with something that binds: machines, bags and pans by the table of least batches, a frame or mould, the finest scale where a master batch is no way out.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="kit">Kit of the kitchen.</param>
    /// <param name="scales">Its scales; empty leaves them out.</param>
    /// <remarks>
    /// Grams are taken as millilitres (density 1, which is near for purées and creams). A step that names one of a component's lists ("mix the curd") needs its kit for that list alone,
    /// a pan that reduces for what is left at the end. A frame or mould is filled or not used: half of it is another thickness.
    /// </remarks>
    public static ImmutableArray<LeastBatch> Of(Batch batch, IEnumerable<SheetKit> kit, IReadOnlyCollection<KitchenScale> scales)
    {
        ArgumentNullException.ThrowIfNull(batch);
        SheetKit[] known = [.. kit];
        ImmutableArray<LeastBatch>.Builder all = ImmutableArray.CreateBuilder<LeastBatch>();
        foreach (BatchComponent c in batch.Components.Where(c => !c.Weighed.Component.IsAssembly && c.Grams > 0))
        {
            List<(double Share, string Because, string Kit, string Source)> binds = [];
            foreach (Step step in c.Weighed.Component.Steps)
            {
                foreach (LeastKit need in LeastKit.For(step, known))
                {
                    (double least, string because) = need.Least(step, known);
                    double there = need.Operations.Contains("reduce") ? (step.EndGrams ?? 0) * c.Factor : InIt(c, step);
                    if (there > 0)
                    {
                        binds.Add((least / there, because, need.Name, need.Source));
                    }
                }
            }

            if (c.Weighed.Component.Makes.FirstOrDefault(m => m.Amount > 0 && m.Unit != "g" && Vessel(m.Text).Length > 0) is { } vessel && c.Factor > 0)
            {
                binds.Add((1 / c.Factor, $"one whole {Vessel(vessel.Text)}", Vessel(vessel.Text), "the card"));
            }

            // a small line can be taken as a share of a master batch, unless there is nothing to mix it into
            BatchLine[] weighed = [.. c.Lines.Where(l => l.Grams > 0 && l.Weighed.Food.FromComponent is null)];
            if (weighed.Length == 1 && scales.MinBy(s => s.StepGrams) is { } finest)
            {
                binds.Add((finest.LeastGrams / weighed[0].Grams, string.Create(CultureInfo.InvariantCulture, $"{weighed[0].Weighed.Food.Food} weighed within 2 % on the {finest.StepGrams:0.###} g scale"), "scale", "common practice, no source"));
            }

            if (binds.Count > 0)
            {
                (double share, string because, string what, string source) = binds.MaxBy(b => b.Share);
                all.Add(new LeastBatch(c.Weighed.Component.Name, share * c.Grams, share, because, what, source));
            }
        }

        return all.ToImmutable();
    }

    private static readonly ImmutableHashSet<string> Little = ImmutableHashSet.Create(StringComparer.OrdinalIgnoreCase, "their", "them", "then", "this", "that", "with", "from", "into", "each");

    // Grams a step works on: the lists it names ("For the curd" in "mix the curd"), else the whole component.
    private static double InIt(BatchComponent component, Step step)
    {
        bool Named(string group) => group.Split([' ', ',', ':'], StringSplitOptions.RemoveEmptyEntries).Any(w => w.Length >= 4 && w.All(char.IsLetter) && !Little.Contains(w) && step.Text.Contains(w, StringComparison.OrdinalIgnoreCase));
        double named = component.Lines.Where(l => l.Weighed.Source.Group is { } group && Named(group)).Sum(l => l.Grams);
        return named > 0 ? named : component.Grams;
    }

    private static string Vessel(string text) => ((string[])["frame", "mould", "tin", "ring"]).FirstOrDefault(v => text.Contains(" " + v, StringComparison.OrdinalIgnoreCase)) ?? "";
}
