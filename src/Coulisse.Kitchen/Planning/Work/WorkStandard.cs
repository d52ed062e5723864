using System.Globalization;
using Coulisse.Cards;

namespace Coulisse.Kitchen.Planning.Work;

/// <summary>How the minutes of an operation grow with what is in hand.</summary>
public enum Growth
{
    /// <summary>Fixed once, then so much a unit.</summary>
    Linear,

    /// <summary>Fixed once a load of the kit, then so much a unit.</summary>
    Batch,

    /// <summary>The same whatever is in it.</summary>
    Constant,

    /// <summary>Heat rules it; the figure here is only the fallback and says so.</summary>
    Physics,
}

/// <summary>The work standard of one operation: what to reckon where a card gives no time. Never an input to food safety.</summary>
public sealed record WorkStandard
{
    /// <summary>Operation's id, as the reader of cards names it.</summary>
    public required string Operation { get; init; }

    /// <summary>What is counted: kg, litre, piece, plate, line ….</summary>
    public required string Unit { get; init; }

    /// <summary>Minutes once.</summary>
    public required Minutes Fixed { get; init; }

    /// <summary>Minutes a unit.</summary>
    public required Minutes Each { get; init; }

    /// <summary>How it grows.</summary>
    public required Growth Grows { get; init; }

    /// <summary>How far it needs hands.</summary>
    public required Tending Tending { get; init; }

    /// <summary>Share of the minutes in which hands are busy.</summary>
    public required double HandsShare { get; init; }

    /// <summary>Hands minutes at the two ends of a load.</summary>
    public required double HandsEnds { get; init; }

    /// <summary>People at once.</summary>
    public required int People { get; init; }

    /// <summary>Nobody can talk beside it.</summary>
    public required bool Loud { get; init; }

    /// <summary>Class of kit held; empty for a bench.</summary>
    public required string Kit { get; init; }

    /// <summary>Usual minutes before the next step.</summary>
    public required Minutes Wait { get; init; }

    /// <summary>1 anyone who was told, 2 a trained cook, 3 a specialist.</summary>
    public required int Skill { get; init; }

    /// <summary>Where the figures are from.</summary>
    public required string Source { get; init; }

    /// <summary>Minutes for an amount.</summary>
    /// <param name="quantity">Amount in <see cref="Unit"/>, 0 or more.</param>
    /// <param name="load">Most that goes in at once; null when one load takes all.</param>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative or not a number, or the load is not above zero.</exception>
    public WorkEstimate For(double quantity, double? load = null)
    {
        if (!(quantity >= 0) || double.IsInfinity(quantity))
        {
            throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "An amount is 0 or more.");
        }

        if (load is { } l && !(l > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(load), load, "A load is above 0.");
        }

        int loads = Grows is Growth.Linear || load is null ? 1 : Math.Max(1, (int)Math.Ceiling((quantity / load.Value) - 1e-9));
        Minutes elapsed = Grows switch
        {
            Growth.Linear => Fixed + (quantity * Each),
            _ => (loads * Fixed) + (quantity * Each),
        };
        return new WorkEstimate(elapsed, HandsWithin(elapsed, loads), loads, Words(quantity, loads));
    }

    /// <summary>Minutes when the card or the heat states how long it takes; only the hands come from here.</summary>
    /// <param name="elapsed">Stated minutes.</param>
    public WorkEstimate Lasting(Minutes elapsed) => new(elapsed, HandsWithin(elapsed, 1), 1, "");

    private Minutes HandsWithin(Minutes elapsed, int loads) => Tending switch
    {
        Tending.All => HandsShare * elapsed,
        Tending.Some => Capped((HandsShare * elapsed).AtLeast(loads * HandsEnds), elapsed),
        _ => Capped(Minutes.Exactly(loads * HandsEnds), elapsed),
    };

    // Hands never exceed the elapsed minutes: a stated three-minute bake cannot hold five minutes of hands.
    private static Minutes Capped(Minutes hands, Minutes elapsed) =>
        new(Math.Min(hands.Best, elapsed.Best), Math.Min(hands.Low, elapsed.Low), Math.Min(hands.High, elapsed.High));

    private string Words(double quantity, int loads)
    {
        string amount = string.Create(CultureInfo.InvariantCulture, $"{quantity:0.##} {Unit}");
        string times = loads > 1 ? string.Create(CultureInfo.InvariantCulture, $" in {loads} loads") : "";
        string fallback = Grows is Growth.Physics ? "; heat rules it, this is only a fallback" : "";
        return $"work standard {Operation}, {amount}{times} ({Source}){fallback}";
    }
}

/// <summary>What a standard gives for an amount.</summary>
/// <param name="Elapsed">From start to end.</param>
/// <param name="Hands">Of these, hands at an ordinary person's speed.</param>
/// <param name="Loads">Loads of the kit.</param>
/// <param name="Assumed">What was assumed, in words; empty when the minutes were stated.</param>
public sealed record WorkEstimate(Minutes Elapsed, Minutes Hands, int Loads, string Assumed);
