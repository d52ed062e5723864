namespace Coulisse.Cards;

/// <summary>What only few lines tell of a food; what each means is said where <see cref="FoodAmount"/> shows it.</summary>
internal sealed record FoodDetails
{
    /// <summary>Nothing of it told.</summary>
    public static readonly FoodDetails None = new();

    public double? AmountMax { get; init; }

    public string? Fill { get; init; }

    public string? Grade { get; init; }

    public string? Use { get; init; }

    public double? GramsMax { get; init; }

    public string? SecondMeasure { get; init; }

    public string? Alternative { get; init; }

    public string? State { get; init; }

    public double? BoughtGrams { get; init; }

    public double? Percent { get; init; }

    public string? PercentOf { get; init; }

    public string? FromComponent { get; init; }

    public double? PackGrams { get; init; }

    /// <summary>The details; null where nothing is told, so that a food that never had any equals one that lost them.</summary>
    public static FoodDetails? Of(FoodDetails told) => told == None ? null : told;
}
