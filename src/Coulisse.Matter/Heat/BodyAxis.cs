using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Heat;

/// <summary>One material along an axis.</summary>
/// <param name="Material">What it is.</param>
/// <param name="Thick">How thick along the axis.</param>
/// <param name="Cells">Volumes, 1 to 1000.</param>
public sealed record BodyLayer(HeatMaterial Material, Length Thick, int Cells);

/// <summary>A face of a body and what it meets.</summary>
/// <param name="Surface">h; null when the face is at the medium's temperature at once.</param>
/// <param name="Medium">What it meets.</param>
public sealed record BodyFace(HeatTransferCoefficient? Surface, Medium Medium)
{
    /// <summary>The face is wet and open to air of this humidity; null for dry, covered or bagged.</summary>
    public WetSurface? Wet { get; init; }
}

/// <summary>One direction of a body: layers from its low end to its high end.</summary>
/// <param name="Along">Slab for a straight axis; cylinder and sphere run from the middle outward.</param>
/// <param name="Layers">From the low end outward.</param>
/// <param name="Low">Face at the low end; null for the middle of a body alike on both sides, and for a face through which nothing passes.</param>
/// <param name="High">Outer face.</param>
public sealed record BodyAxis(BodyShape Along, ImmutableArray<BodyLayer> Layers, BodyFace? Low, BodyFace High);
