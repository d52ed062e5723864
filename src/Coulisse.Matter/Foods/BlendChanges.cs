using System.Globalization;

namespace Coulisse.Matter.Foods;

/// <summary>What soaking, draining, skimming, trimming and frying make of a mixture: each a balance in grams, parts summing to the whole before and after.</summary>
/// <remarks>Every change refuses what cannot be (more than there is of what leaves) and says how much there is. Nothing is guessed: what is not known for sure is asked as a share or a figure.</remarks>
public static class BlendChanges
{
    // Salt of 1 g of sodium: 58.44 / 22.99.
    private const double SaltOfSodium = 2.542;

    /// <summary>Takes up water.</summary>
    /// <param name="blend">The mixture.</param>
    /// <param name="water">Water taken up, g, 0 or more.</param>
    public static Blend Soaked(this Blend blend, double water)
    {
        ArgumentNullException.ThrowIfNull(blend);
        Check(water >= 0 && double.IsFinite(water), nameof(water), water, "Water taken up is 0 g or more.");
        double k = blend.Grams / (blend.Grams + water);
        Composition c = blend.Composition.Scaled(k);
        return blend with { Grams = blend.Grams + water, Composition = c with { Water = c.Water is { } w ? w + (100 * (1 - k)) : null } };
    }

    /// <summary>Grams of liquid in it: water and alcohol with that share of the sugars, polyols, acids and salt dissolved in them; null when water or sugars are not held.</summary>
    /// <param name="blend">The mixture.</param>
    /// <param name="dissolved">Share of what can dissolve that is in the free liquid, 0 to 1.</param>
    public static double? Liquid(this Blend blend, double dissolved)
    {
        ArgumentNullException.ThrowIfNull(blend);
        return blend.Composition is { Water: { } w } c && (dissolved == 0 || c.Sugars is not null) ? blend.Grams / 100 * (w + (c.Alcohol ?? 0) + (dissolved * Soluble(c))) : null;
    }

    /// <summary>Liquid runs off; fat, protein, starch and fibre stay.</summary>
    /// <param name="blend">The mixture.</param>
    /// <param name="grams">Liquid that runs off, g.</param>
    /// <param name="dissolved">Share of the sugars, polyols, acids and salt that is dissolved evenly in the liquid, 0 (clear water runs off) to 1 (all of it).</param>
    public static Blend Drained(this Blend blend, double grams, double dissolved)
    {
        ArgumentNullException.ThrowIfNull(blend);
        Check(dissolved is >= 0 and <= 1, nameof(dissolved), dissolved, "A share dissolved is 0 to 1.");
        double there = blend.Liquid(dissolved) ?? throw new ArgumentOutOfRangeException(nameof(grams), grams, "Its water or sugars are not held, so what runs off is not known.");
        Check(grams >= 0 && grams <= there + 1e-9 && grams < blend.Grams, nameof(grams), grams, Say($"There are {there:0.#} g of liquid to run off."));
        double f = there > 0 ? Math.Min(1, grams / there) : 0;
        double s = 1 - (f * dissolved);
        Composition c = blend.Composition;
        double sugarsGone = (c.Sugars ?? 0) * (1 - s);
        double polyolsGone = (c.Polyols ?? 0) * (1 - s);
        double saltGone = Salt(c) * (1 - s);
        Composition left = c with
        {
            Water = c.Water * (1 - f), Alcohol = c.Alcohol * (1 - f), Sugars = c.Sugars * s, Sucrose = c.Sucrose * s, Glucose = c.Glucose * s, Fructose = c.Fructose * s, Lactose = c.Lactose * s, Maltose = c.Maltose * s,
            AddedSugars = c.AddedSugars * s, Polyols = c.Polyols * s, Acid = c.Acid * s, Carbohydrate = c.Carbohydrate - sugarsGone - polyolsGone, Ash = c.Ash - saltGone, SodiumMilligrams = c.SodiumMilligrams * s,
            PotassiumMilligrams = c.PotassiumMilligrams * s, VitaminCMilligrams = c.VitaminCMilligrams * s,
        };
        return blend.Become(left, blend.Grams - grams);
    }

    /// <summary>Fat is lifted off.</summary>
    /// <param name="blend">The mixture.</param>
    /// <param name="fat">Fat lifted off, g, no more than there is.</param>
    public static Blend Skimmed(this Blend blend, double fat)
    {
        ArgumentNullException.ThrowIfNull(blend);
        double there = blend.Composition.Fat is { } f ? f * blend.Grams / 100 : throw new ArgumentOutOfRangeException(nameof(fat), fat, "Its fat is not held.");
        Check(fat >= 0 && fat <= there + 1e-9 && fat < blend.Grams, nameof(fat), fat, Say($"There are {there:0.#} g of fat to skim."));
        Composition c = blend.Composition;
        double left = there > 0 ? Math.Max(0, 1 - (fat / there)) : 1;

        // What dissolves in fat goes with it, evenly.
        return blend.Become(c with
        {
            Fat = c.Fat * left, Saturates = c.Saturates * left, TransFat = c.TransFat * left, CholesterolMilligrams = c.CholesterolMilligrams * left, VitaminAMicrograms = c.VitaminAMicrograms * left, VitaminDMicrograms = c.VitaminDMicrograms * left,
        }, blend.Grams - fat);
    }

    /// <summary>A piece is cut off, of the same make as the rest.</summary>
    /// <param name="blend">The mixture.</param>
    /// <param name="grams">Cut off, g, less than all.</param>
    public static Blend Trimmed(this Blend blend, double grams)
    {
        ArgumentNullException.ThrowIfNull(blend);
        Check(grams >= 0 && grams < blend.Grams, nameof(grams), grams, Say($"Less than {blend.Grams:0.#} g can be trimmed off."));
        return blend with { Grams = blend.Grams - grams };
    }

    /// <summary>Oil goes in and water goes out.</summary>
    /// <param name="blend">The mixture.</param>
    /// <param name="oil">Oil taken up, g.</param>
    /// <param name="finalGrams">Weight at the end, g.</param>
    /// <remarks>Water out = weight before + oil − weight at the end, no more than there was.</remarks>
    public static Blend Fried(this Blend blend, double oil, double finalGrams)
    {
        ArgumentNullException.ThrowIfNull(blend);
        Check(oil >= 0 && finalGrams > 0, nameof(oil), oil, "Oil taken up is 0 g or more, a weight at the end above 0.");
        double there = (blend.Composition.Water ?? throw new ArgumentOutOfRangeException(nameof(finalGrams), finalGrams, "Its water is not held.")) * blend.Grams / 100;
        double gone = blend.Grams + oil - finalGrams;
        Check(gone >= -1e-9 && gone <= there + 1e-9, nameof(finalGrams), finalGrams, Say($"With {oil:0.#} g of oil taken up and {there:0.#} g of water there, the weight at the end is {blend.Grams + oil - there:0.#} to {blend.Grams + oil:0.#} g."));
        Composition c = blend.Composition;
        double added = 100 * oil / blend.Grams;

        // A frying oil holds a tenth to a half of saturates by its kind, so those are not known from here on; of a plant it brings no cholesterol.
        return blend.Become(c with { Water = Math.Max(0, c.Water.Value - (100 * Math.Max(0, gone) / blend.Grams)), Fat = c.Fat + added, Saturates = oil > 0 ? null : c.Saturates, TransFat = oil > 0 ? null : c.TransFat }, finalGrams);
    }

    private static Blend Become(this Blend blend, Composition per100Before, double grams)
        => blend with { Grams = grams, Composition = per100Before.Scaled(blend.Grams / grams) };

    private static double Salt(Composition c) => Math.Min(c.Ash ?? 0, SaltOfSodium * (c.SodiumMilligrams ?? 0) / 1000);

    private static double Soluble(Composition c) => (c.Sugars ?? 0) + (c.Polyols ?? 0) + (c.Acid ?? 0) + Salt(c);

    private static void Check(bool holds, string name, double value, string message)
    {
        if (!holds)
        {
            throw new ArgumentOutOfRangeException(name, value, message);
        }
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
