using System.Globalization;

namespace Coulisse.Kitchen.Labels;

/// <summary>What is rounded the same way on a panel.</summary>
public enum PanelItem
{
    /// <summary>Energy, kJ.</summary>
    Kilojoules,

    /// <summary>Energy, kcal.</summary>
    Kilocalories,

    /// <summary>Fat as a whole.</summary>
    Fat,

    /// <summary>Saturates and the other kinds of fat.</summary>
    Saturates,

    /// <summary>Carbohydrate, sugars, fibre, protein, polyols, starch.</summary>
    Macronutrient,

    /// <summary>Salt, g (EU).</summary>
    Salt,

    /// <summary>Sodium: mg in the US and ANZ, g where the EU states it.</summary>
    Sodium,

    /// <summary>Cholesterol, mg (US).</summary>
    Cholesterol,

    /// <summary>Calcium and potassium, mg (US).</summary>
    Mineral,

    /// <summary>Iron, mg (US).</summary>
    Iron,

    /// <summary>Vitamin D, µg (US).</summary>
    VitaminD,
}

/// <summary>A figure as the law lets it be declared. Rounded once, from the unrounded figure, halves away from zero.</summary>
/// <remarks>EU: Commission guidance on tolerances, December 2012. US: 21 CFR 101.9(c). ANZ: Standard 1.2.8 (sub-rules from memory).</remarks>
public static class DeclaredFigure
{
    /// <summary>Text of a figure, without its unit; "&lt;0.5" (EU) and "less than 1" (US, ANZ) stand for what is too small to state.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, not a number, or an item that law does not round.</exception>
    public static string Text(PanelItem item, double computed, AllergenRegime regime)
    {
        if (!double.IsFinite(computed) || computed < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(computed), computed, "A declared figure is 0 or more.");
        }

        // Decimal, because half of a rounding step has no exact binary form.
        decimal x = (decimal)computed;
        return regime switch { AllergenRegime.Eu => Eu(item, x), AllergenRegime.Us => Us(item, x), _ => Anz(item, x) };
    }

    private static string Eu(PanelItem item, decimal x) => item switch
    {
        PanelItem.Kilojoules or PanelItem.Kilocalories => Step(x, 1m, 0),
        PanelItem.Saturates => x <= 0.1m ? Small(x, "<0.1") : Tenths(x),
        PanelItem.Fat or PanelItem.Macronutrient => x <= 0.5m ? Small(x, "<0.5") : Tenths(x),
        PanelItem.Salt => x <= 0.0125m ? Small(x, "<0.01") : Hundredths(x),
        PanelItem.Sodium => x <= 0.005m ? Small(x, "<0.005") : Hundredths(x),
        _ => throw new ArgumentOutOfRangeException(nameof(item), item, "The EU panel does not state it."),
    };

    private static string Us(PanelItem item, decimal x) => item switch
    {
        PanelItem.Kilocalories => x < 5 ? "0" : Step(x, x <= 50 ? 5 : 10, 0),
        PanelItem.Fat or PanelItem.Saturates => x < 0.5m ? "0" : x < 5 ? Step(x, 0.5m, null) : Step(x, 1, 0),
        PanelItem.Macronutrient => x < 0.5m ? "0" : x < 1 ? "less than 1" : Step(x, 1, 0),
        PanelItem.Cholesterol => x < 2 ? "0" : x <= 5 ? "less than 5" : Step(x, 5, 0),
        PanelItem.Sodium => x < 5 ? "0" : Step(x, x <= 140 ? 5 : 10, 0),

        // The steps of minerals and vitamin D are from memory of the rule of 2016.
        PanelItem.Mineral => Step(x, 10, 0),
        PanelItem.Iron or PanelItem.VitaminD => Step(x, 0.1m, null),
        _ => throw new ArgumentOutOfRangeException(nameof(item), item, "The US panel does not state it."),
    };

    private static string Anz(PanelItem item, decimal x) => item switch
    {
        PanelItem.Kilojoules => x < 40 ? "less than 40" : ThreeFigures(x),
        PanelItem.Kilocalories => ThreeFigures(x),
        PanelItem.Fat or PanelItem.Saturates or PanelItem.Macronutrient => x < 1 ? "less than 1" : ThreeFigures(x),
        PanelItem.Sodium or PanelItem.Cholesterol => x < 5 ? "less than 5" : ThreeFigures(x),
        _ => throw new ArgumentOutOfRangeException(nameof(item), item, "The ANZ panel does not state it."),
    };

    private static string Small(decimal x, string text) => x == 0 ? "0" : text;

    // What rounds up to 10.0 is stated as 10.
    private static string Tenths(decimal x) => Round(x, 0.1m) >= 10 ? Step(x, 1, 0) : Step(x, 0.1m, 1);

    private static string Hundredths(decimal x) => Round(x, 0.01m) >= 1 ? Step(x, 0.1m, 1) : Step(x, 0.01m, 2);

    private static string ThreeFigures(decimal x)
    {
        decimal step = 1;
        while (x / step >= 1000)
        {
            step *= 10;
        }

        while (x > 0 && x / step < 100)
        {
            step /= 10;
        }

        return Step(x, step, null);
    }

    private static decimal Round(decimal x, decimal step) => Math.Round(x / step, 0, MidpointRounding.AwayFromZero) * step;

    private static string Step(decimal x, decimal step, int? digits) => digits is { } d
        ? Round(x, step).ToString("F" + d.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
        : Round(x, step).ToString("0.####", CultureInfo.InvariantCulture);
}
