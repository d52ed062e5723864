namespace Coulisse.Cards;

/// <summary>A food with its amount as read from a line.</summary>
/// <remarks>What few lines tell is kept apart and only where it is told: a card of 5 MB names hundreds of thousands of foods.</remarks>
public sealed record FoodAmount
{
    private readonly FoodDetails? _rare;

    /// <summary>All that few lines tell, at once.</summary>
    internal FoodDetails? Details
    {
        init => _rare = value;
    }

    /// <summary>Food as written, without amount, unit and preparation.</summary>
    public required string Food { get; init; }

    /// <summary>Our canonical food name; null when none is sure enough (a wrong match is worse than none).</summary>
    public string? FoodId { get; init; }

    /// <summary>How sure the food is, 0 to 1.</summary>
    public double FoodConfidence { get; init; }

    /// <summary>Amount, low end of a range; null when none is stated.</summary>
    public double? Amount { get; init; }

    /// <summary>High end of a range; null for a single amount.</summary>
    public double? AmountMax
    {
        get => _rare?.AmountMax;
        init => _rare = value is null && _rare is null ? null : FoodDetails.Of((_rare ?? FoodDetails.None) with { AmountMax = value });
    }

    /// <summary>Unit in one spelling: g kg ml cl dl l tsp dsp tbsp cup floz oz lb pint pinch piece leaf pack tin stick …; null when no amount.</summary>
    public string? Unit { get; init; }

    /// <summary>"level", "rounded", "heaped", "scant", "generous", "packed", "sifted" or null.</summary>
    public string? Fill
    {
        get => _rare?.Fill;
        init => _rare = value is null && _rare is null ? null : FoodDetails.Of((_rare ?? FoodDetails.None) with { Fill = value });
    }

    /// <summary>Size or grade word: "large", "M", "200 bloom", "3.6 % fat".</summary>
    public string? Grade
    {
        get => _rare?.Grade;
        init => _rare = value is null && _rare is null ? null : FoodDetails.Of((_rare ?? FoodDetails.None) with { Grade = value });
    }

    /// <summary>Peeled, chopped, drained, melted …</summary>
    public string? Preparation { get; init; }

    /// <summary>May be left out.</summary>
    public bool Optional { get; init; }

    /// <summary>"to taste", "as needed", "for dusting", "to serve" …: what it is for when no amount binds it.</summary>
    public string? Use
    {
        get => _rare?.Use;
        init => _rare = value is null && _rare is null ? null : FoodDetails.Of((_rare ?? FoodDetails.None) with { Use = value });
    }

    /// <summary>Grams, where the text itself fixes them; low end of a range.</summary>
    public double? Grams { get; init; }

    /// <summary>High end of <see cref="Grams"/>.</summary>
    public double? GramsMax
    {
        get => _rare?.GramsMax;
        init => _rare = value is null && _rare is null ? null : FoodDetails.Of((_rare ?? FoodDetails.None) with { GramsMax = value });
    }

    /// <summary>The second measure as written ("9 oz").</summary>
    public string? SecondMeasure
    {
        get => _rare?.SecondMeasure;
        init => _rare = value is null && _rare is null ? null : FoodDetails.Of((_rare ?? FoodDetails.None) with { SecondMeasure = value });
    }

    /// <summary>Another food that may stand in its place.</summary>
    public string? Alternative
    {
        get => _rare?.Alternative;
        init => _rare = value is null && _rare is null ? null : FoodDetails.Of((_rare ?? FoodDetails.None) with { Alternative = value });
    }

    /// <summary>Temperature or state of the food ("cold", "20 °C", "frozen").</summary>
    public string? State
    {
        get => _rare?.State;
        init => _rare = value is null && _rare is null ? null : FoodDetails.Of((_rare ?? FoodDetails.None) with { State = value });
    }

    /// <summary>As-bought grams, when the line gives both ("from 415 g").</summary>
    public double? BoughtGrams
    {
        get => _rare?.BoughtGrams;
        init => _rare = value is null && _rare is null ? null : FoodDetails.Of((_rare ?? FoodDetails.None) with { BoughtGrams = value });
    }

    /// <summary>Share of a base in percent ("2 % salt on flour"); the base's name in <see cref="PercentOf"/>.</summary>
    public double? Percent
    {
        get => _rare?.Percent;
        init => _rare = value is null && _rare is null ? null : FoodDetails.Of((_rare ?? FoodDetails.None) with { Percent = value });
    }

    /// <summary>What <see cref="Percent"/> is of.</summary>
    public string? PercentOf
    {
        get => _rare?.PercentOf;
        init => _rare = value is null && _rare is null ? null : FoodDetails.Of((_rare ?? FoodDetails.None) with { PercentOf = value });
    }

    /// <summary>Name of the component of this dish it is taken from ("140 g hot C1 base"); null for a food.</summary>
    public string? FromComponent
    {
        get => _rare?.FromComponent;
        init => _rare = value is null && _rare is null ? null : FoodDetails.Of((_rare ?? FoodDetails.None) with { FromComponent = value });
    }

    /// <summary>Content of one pack or tin, grams ("2 x 400 g tins": 400).</summary>
    public double? PackGrams
    {
        get => _rare?.PackGrams;
        init => _rare = value is null && _rare is null ? null : FoodDetails.Of((_rare ?? FoodDetails.None) with { PackGrams = value });
    }
}
