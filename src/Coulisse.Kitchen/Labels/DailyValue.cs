using System.Globalization;

namespace Coulisse.Kitchen.Labels;

/// <summary>Percent of the daily value of US law.</summary>
/// <remarks>
/// Daily values of 21 CFR 101.9(c)(8)(iv) and (c)(9) as of 2016, for adults and children of four years and more (from memory; each agrees with the sample label of the regulation, which prints amount and percent).
/// Rounding: whole percents, 101.9(d)(7)(ii); vitamins and minerals to 2 up to 10, to 5 up to 50, to 10 above, 101.9(c)(8)(iii). None for trans fat, total sugars and energy; that of protein wants its quality measured and is not stated.
/// </remarks>
public static class DailyValue
{
    // g or mg as the row's own unit; micrograms for vitamin D.
    private static readonly Dictionary<string, (double Amount, bool Micro)> Values = new(StringComparer.Ordinal)
    {
        ["Total Fat"] = (78, false), ["Saturated Fat"] = (20, false), ["Cholesterol"] = (300, false), ["Sodium"] = (2300, false), ["Total Carbohydrate"] = (275, false), ["Dietary Fiber"] = (28, false),
        ["Includes Added Sugars"] = (50, false), ["Vitamin D"] = (20, true), ["Calcium"] = (1300, true), ["Iron"] = (18, true), ["Potassium"] = (4700, true),
    };

    /// <summary>Percent of the daily value as it may be declared, without the sign; null where there is none.</summary>
    /// <param name="row">Name of the row on the US panel.</param>
    /// <param name="amount">Amount in the row's unit, unrounded.</param>
    public static string? Percent(string row, double amount)
    {
        if (!Values.TryGetValue(row, out (double Amount, bool Micro) value) || !double.IsFinite(amount) || amount < 0)
        {
            return null;
        }

        // Decimal, because half of a step has no exact binary form.
        decimal percent = (decimal)amount / (decimal)value.Amount * 100;
        decimal step = !value.Micro ? 1 : percent <= 10 ? 2 : percent <= 50 ? 5 : 10;
        return (Math.Round(percent / step, 0, MidpointRounding.AwayFromZero) * step).ToString("0", CultureInfo.InvariantCulture);
    }
}
