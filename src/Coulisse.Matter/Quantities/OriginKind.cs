namespace Coulisse.Matter.Quantities;

/// <summary>How a figure came about; assumed never looks like known.</summary>
public enum OriginKind
{
    /// <summary>A person wrote it.</summary>
    Typed,

    /// <summary>Read from a table that names its source.</summary>
    LookedUp,

    /// <summary>Worked out by an equation from other figures.</summary>
    Computed,

    /// <summary>Assumed: a default, common practice or a figure from memory.</summary>
    Assumed,

    /// <summary>Measured in this kitchen.</summary>
    Measured,
}
