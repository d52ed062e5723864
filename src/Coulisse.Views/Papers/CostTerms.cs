namespace Coulisse.Views.Papers;

/// <summary>What the cost sheet adds to the food.</summary>
public sealed record CostTerms
{
    /// <summary>Share of the net price that food may cost, percent, above 0 and at most 100; null when no price is asked for.</summary>
    public decimal? TargetPercent { get; init; }

    /// <summary>Q factor: what no line states, percent of the listed food, 0 or more.</summary>
    public decimal UnlistedPercent { get; init; }

    /// <summary>GST or VAT, percent, 0 or more.</summary>
    public decimal TaxPercent { get; init; }
}
