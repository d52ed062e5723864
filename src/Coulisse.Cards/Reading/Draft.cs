using Coulisse.Cards.Words;
using Coulisse.Matter.Foods;

namespace Coulisse.Cards.Reading;

/// <summary>A food amount while it is being read.</summary>
internal sealed class Draft(bool why)
{
    public string Food = "";
    public double? Amount;
    public double? AmountMax;
    public UnitWord? Unit;
    public string? Fill;
    public string? Grade;
    public string? Preparation;
    public bool Optional;
    public string? Use;
    public double? Grams;
    public double? GramsMax;
    public string? Second;
    public string? Alternative;
    public string? State;
    public double? Bought;
    public double? Percent;
    public string? PercentOf;
    public double? PackGrams;
    public string? Reference;
    /// <summary>"1 cup minus 1 tablespoon": the amount and what is taken off it, as written.</summary>
    public string? Less;
    /// <summary>The words of this food alone, where its line names several.</summary>
    public string? Said;
    public bool Repaired;
    public bool Milli;
    /// <summary>A figure without a unit, taken as grams.</summary>
    public bool Bare;
    public bool Minus;
    public bool Whole;
    public bool The;
    /// <summary>"a little nutmeg": how much stands in front of the food, and is said of no other.</summary>
    public bool Fronted;
    /// <summary>A bracket stands between the count and the food.</summary>
    public bool EachInBracket;
    /// <summary>A weight behind a count of several, as written: it may be of each or of all.</summary>
    public string? EachOrAll;
    /// <summary>What became of each piece; kept only when somebody asks, as it is more than all the rest.</summary>
    public readonly List<ReadToken>? Tokens = why ? [] : null;
    public FoodMatch? Known;

    public void Prepare(string words)
    {
        words = words.Trimmed(" ,;.");
        if (words.Length > 0)
        {
            Preparation = Preparation is null ? words : Preparation + (Preparation.EndsWith("ly", StringComparison.Ordinal) ? " " : ", ") + words;
            Tokens?.Add(new ReadToken(words, "preparation", words));
        }
    }

    public void Graded(string words) => Grade = Grade is null ? words.Trim() : Grade + ", " + words.Trim();

    public FoodAmount Done()
    {
        double? grams = Grams;
        double? gramsMax = GramsMax;
        if (grams is null && Unit is { Kind: "mass", Base: { } b } && Amount is { } a)
        {
            grams = Math.Round(a * b, 4);
            gramsMax = AmountMax is { } m ? Math.Round(m * b, 4) : null;
        }

        if (PackGrams is { } pack && grams is null && Amount is { } n)
        {
            grams = n * pack;
        }

        bool plain = AmountMax is null && Fill is null && Grade is null && Use is null && gramsMax is null && Second is null && Alternative is null && State is null && Bought is null && Percent is null && PercentOf is null && PackGrams is null;
        return new FoodAmount
        {
            Food = Food, FoodId = Known?.Id, FoodConfidence = Known?.Confidence ?? 0, Amount = Amount, Unit = Amount is null && AmountMax is null ? null : Unit?.Unit ?? "piece", Preparation = Preparation, Optional = Optional, Grams = grams,
            Details = plain ? null : new FoodDetails
            {
                AmountMax = AmountMax, Fill = Fill, Grade = Grade, Use = Use, GramsMax = gramsMax, SecondMeasure = Second, Alternative = Alternative, State = State, BoughtGrams = Bought, Percent = Percent, PercentOf = PercentOf, PackGrams = PackGrams,
            },
        };
    }
}
