namespace Coulisse.Matter.Heat;

/// <summary>A shape whose heating depends on one coordinate only.</summary>
public enum BodyShape
{
    /// <summary>Flat piece heated on both faces; its size is the half thickness.</summary>
    Slab,

    /// <summary>Long roll; its size is the radius.</summary>
    Cylinder,

    /// <summary>Ball; its size is the radius.</summary>
    Sphere,
}
