namespace Coulisse.Matter.Foods;

/// <summary>What 100 g of the edible part holds, in grams unless a name says milligrams. A null is not held, never zero.</summary>
/// <remarks>Carbohydrate is available carbohydrate: fibre is apart, and so are organic acids where the source measured them; polyols are inside it, as in EU law.</remarks>
public sealed record Composition
{
    /// <summary>Water, g.</summary>
    public double? Water { get; init; }

    /// <summary>Protein by the food's own nitrogen factor, g.</summary>
    public double? Protein { get; init; }

    /// <summary>Factor from nitrogen to protein; null when none applies.</summary>
    public double? NitrogenFactor { get; init; }

    /// <summary>Fat, g.</summary>
    public double? Fat { get; init; }

    /// <summary>Saturated fatty acids, g.</summary>
    public double? Saturates { get; init; }

    /// <summary>Available carbohydrate without fibre, g.</summary>
    public double? Carbohydrate { get; init; }

    /// <summary>Sugars within carbohydrate, g.</summary>
    public double? Sugars { get; init; }

    /// <summary>Sucrose, g.</summary>
    public double? Sucrose { get; init; }

    /// <summary>Glucose, g.</summary>
    public double? Glucose { get; init; }

    /// <summary>Fructose, g.</summary>
    public double? Fructose { get; init; }

    /// <summary>Lactose, g.</summary>
    public double? Lactose { get; init; }

    /// <summary>Maltose, g.</summary>
    public double? Maltose { get; init; }

    /// <summary>Starch, g.</summary>
    public double? Starch { get; init; }

    /// <summary>Fibre, g.</summary>
    public double? Fibre { get; init; }

    /// <summary>Polyols within carbohydrate, g.</summary>
    public double? Polyols { get; init; }

    /// <summary>Ethanol, g.</summary>
    public double? Alcohol { get; init; }

    /// <summary>Organic acids held apart from carbohydrate, g.</summary>
    public double? Acid { get; init; }

    /// <summary>Ash, g.</summary>
    public double? Ash { get; init; }

    /// <summary>Sodium, mg.</summary>
    public double? SodiumMilligrams { get; init; }

    /// <summary>Potassium, mg.</summary>
    public double? PotassiumMilligrams { get; init; }

    /// <summary>Calcium, mg.</summary>
    public double? CalciumMilligrams { get; init; }

    /// <summary>Iron, mg.</summary>
    public double? IronMilligrams { get; init; }

    /// <summary>Vitamin C, mg.</summary>
    public double? VitaminCMilligrams { get; init; }

    /// <summary>Vitamin A as retinol activity equivalents, µg.</summary>
    public double? VitaminAMicrograms { get; init; }

    /// <summary>Vitamin D (D2 and D3), µg.</summary>
    public double? VitaminDMicrograms { get; init; }

    /// <summary>Trans fatty acids within fat, g.</summary>
    public double? TransFat { get; init; }

    /// <summary>Cholesterol, mg.</summary>
    public double? CholesterolMilligrams { get; init; }

    /// <summary>Sugars within sugars that are added ones in US law (21 CFR 101.9(c)(6)(iii)): sugar, syrup and honey, but not what a fruit or a milk has of its own, g.</summary>
    public double? AddedSugars { get; init; }

    /// <summary>Protein as EU law counts it, nitrogen times 6.25, g.</summary>
    /// <remarks>Regulation (EU) 1169/2011 Annex I. Check: plain flour 10.33 · 6.25 / 5.70 = 11.33.</remarks>
    public double? ProteinEu => NitrogenFactor is { } n && n > 0 ? Protein * 6.25 / n : Protein;

    /// <summary>Sum of the parts that make up the whole, g; null when water, protein, fat or carbohydrate is not held.</summary>
    public double? PartsSum => Water + Protein + Fat + Carbohydrate + (Fibre ?? 0) + (Alcohol ?? 0) + (Acid ?? 0) + (Ash ?? 0);

    /// <summary>The same food at another fat content: the fat-free part is thinned or thickened in its own proportions.</summary>
    /// <param name="fatPercent">Wanted fat, g per 100 g, 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100, or the fat of this food is not held or 100.</exception>
    public Composition WithFat(double fatPercent)
    {
        if (fatPercent is not (>= 0 and <= 100) || Fat is not (>= 0 and < 100))
        {
            throw new ArgumentOutOfRangeException(nameof(fatPercent), fatPercent, "A fat content is 0 to 100 %, of a food whose own fat is known and below 100 %.");
        }

        double rest = (100 - fatPercent) / (100 - Fat.Value);
        Composition thinned = Scaled(rest);
        return thinned with { Fat = fatPercent, Saturates = Fat > 0 ? Saturates * fatPercent / Fat : Saturates, TransFat = Fat > 0 ? TransFat * fatPercent / Fat : TransFat, CholesterolMilligrams = Fat > 0 ? CholesterolMilligrams * fatPercent / Fat : CholesterolMilligrams };
    }

    /// <summary>The same food after cooking as far as its minerals and vitamins A and C go; the other parts stay.</summary>
    public Composition Kept(Retention retention)
    {
        ArgumentNullException.ThrowIfNull(retention);
        return this with
        {
            CalciumMilligrams = CalciumMilligrams * retention.Calcium, IronMilligrams = IronMilligrams * retention.Iron, PotassiumMilligrams = PotassiumMilligrams * retention.Potassium,
            VitaminCMilligrams = VitaminCMilligrams * retention.VitaminC, VitaminAMicrograms = VitaminAMicrograms * retention.VitaminA,
        };
    }

    /// <summary>A composition whose every part is worked out by one rule; the nitrogen factor stays this one's.</summary>
    /// <param name="rule">From a part (given as a way to read it) to its new figure.</param>
    public Composition Each(Func<Func<Composition, double?>, double?> rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return new()
        {
            Water = rule(static c => c.Water), Protein = rule(static c => c.Protein), NitrogenFactor = NitrogenFactor, Fat = rule(static c => c.Fat), Saturates = rule(static c => c.Saturates), Carbohydrate = rule(static c => c.Carbohydrate),
            Sugars = rule(static c => c.Sugars), Sucrose = rule(static c => c.Sucrose), Glucose = rule(static c => c.Glucose), Fructose = rule(static c => c.Fructose), Lactose = rule(static c => c.Lactose), Maltose = rule(static c => c.Maltose),
            Starch = rule(static c => c.Starch), Fibre = rule(static c => c.Fibre), Polyols = rule(static c => c.Polyols), Alcohol = rule(static c => c.Alcohol), Acid = rule(static c => c.Acid), Ash = rule(static c => c.Ash),
            SodiumMilligrams = rule(static c => c.SodiumMilligrams), PotassiumMilligrams = rule(static c => c.PotassiumMilligrams), CalciumMilligrams = rule(static c => c.CalciumMilligrams), IronMilligrams = rule(static c => c.IronMilligrams),
            VitaminCMilligrams = rule(static c => c.VitaminCMilligrams), VitaminAMicrograms = rule(static c => c.VitaminAMicrograms), VitaminDMicrograms = rule(static c => c.VitaminDMicrograms),
            TransFat = rule(static c => c.TransFat), CholesterolMilligrams = rule(static c => c.CholesterolMilligrams), AddedSugars = rule(static c => c.AddedSugars),
        };
    }

    /// <summary>Every part times a factor; the nitrogen factor stays.</summary>
    internal Composition Scaled(double k) => Each(of => of(this) * k);
}
