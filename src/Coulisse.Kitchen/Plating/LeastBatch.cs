using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Plating;

/// <summary>The smallest batch of a component that the kitchen's kit works with.</summary>
/// <param name="Component">Component.</param>
/// <param name="Grams">Weight of that batch.</param>
/// <param name="Share">Share of the batch as scaled; above 1 the batch as scaled is too small.</param>
/// <param name="Because">What binds it, in words.</param>
public sealed record LeastBatch(string Component, double Grams, double Share, string Because)
{
    /// <summary>Share of its jug that a blender must be filled to so that the blade draws. Common practice, no source.</summary>
    private const double JugShare = 0.2;

    /// <summary>Jug of a blender when the kit names none, litres. Assumed.</summary>
    private const double UsualJug = 2;

    /// <summary>Components with something that binds: a blender's jug, a frame or mould, the finest scale where a master batch is no way out.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="kit">Kit of the kitchen.</param>
    /// <param name="scales">Its scales; empty leaves them out.</param>
    /// <remarks>Grams are taken as millilitres in a jug (density 1, which is near for purées and creams). A frame or mould is filled or not used: half of it is another thickness.</remarks>
    public static ImmutableArray<LeastBatch> Of(Batch batch, IEnumerable<SheetKit> kit, IReadOnlyCollection<KitchenScale> scales)
    {
        ArgumentNullException.ThrowIfNull(batch);
        SheetKit[] known = [.. kit];
        SheetKit? jug = known.Where(k => k.Type == "blender" && k.Litres is > 0).MinBy(k => k.Litres);
        ImmutableArray<LeastBatch>.Builder all = ImmutableArray.CreateBuilder<LeastBatch>();
        foreach (BatchComponent c in batch.Components.Where(c => !c.Weighed.Component.IsAssembly && c.Grams > 0))
        {
            List<(double Share, string Because)> binds = [];
            if (c.Weighed.Component.Steps.Any(s => s.Kit.Concat(s.Operations).Any(k => k.Contains("blend", StringComparison.OrdinalIgnoreCase))))
            {
                double litres = jug?.Litres ?? UsualJug;
                binds.Add((litres * JugShare * 1000 / c.Grams, string.Create(CultureInfo.InvariantCulture, $"the blade of a {litres:0.##} L jug{(jug is null ? " (assumed)" : "")} draws from about a fifth of it")));
            }

            if (c.Weighed.Component.Makes.FirstOrDefault(m => m.Amount > 0 && m.Unit != "g" && Vessel(m.Text).Length > 0) is { } vessel && c.Factor > 0)
            {
                binds.Add((1 / c.Factor, $"one whole {Vessel(vessel.Text)}"));
            }

            // a small line can be taken as a share of a master batch, unless there is nothing to mix it into
            BatchLine[] weighed = [.. c.Lines.Where(l => l.Grams > 0 && l.Weighed.Food.FromComponent is null)];
            if (weighed.Length == 1 && scales.MinBy(s => s.StepGrams) is { } finest)
            {
                binds.Add((finest.LeastGrams / weighed[0].Grams, string.Create(CultureInfo.InvariantCulture, $"{weighed[0].Weighed.Food.Food} weighed within 2 % on the {finest.StepGrams:0.###} g scale")));
            }

            if (binds.Count > 0)
            {
                (double share, string because) = binds.MaxBy(b => b.Share);
                all.Add(new LeastBatch(c.Weighed.Component.Name, share * c.Grams, share, because));
            }
        }

        return all.ToImmutable();
    }

    private static string Vessel(string text) => ((string[])["frame", "mould", "tin", "ring"]).FirstOrDefault(v => text.Contains(" " + v, StringComparison.OrdinalIgnoreCase)) ?? "";
}
