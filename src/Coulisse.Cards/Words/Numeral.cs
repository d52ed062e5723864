namespace Coulisse.Cards.Words;

/// <summary>A number or a range as it stands in a text.</summary>
/// <param name="Min">Low end.</param>
/// <param name="Max">High end; null for a single number.</param>
/// <param name="End">First character after it.</param>
internal readonly record struct Numeral(double Min, double? Max, int End)
{
    /// <summary>Letters were printed for digits.</summary>
    public bool Repaired { get; init; }

    /// <summary>Written in words ("two and a half").</summary>
    public bool InWords { get; init; }

    /// <summary>Digits parted by a space ("1 400"): thousands or a count before a pack.</summary>
    public bool Spaced { get; init; }

    /// <summary>Comma or dot with three digits: thousands by the language, could be a decimal.</summary>
    public bool Grouped { get; init; }

    /// <summary>The low end as a count of things: whole, and a million at most, as nobody means more.</summary>
    public int Count => (int)Math.Clamp(Math.Floor(Min), 0, 1_000_000);
}
