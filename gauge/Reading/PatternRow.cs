using Coulisse.Cards;

namespace Coulisse.Gauge.Reading;

/// <summary>When a reading agrees with a row of the pattern table: the amount in the row's unit, or the grams that the line itself fixes; shares by their percent. The table spells some units in its own way.</summary>
internal static class PatternRow
{
    public static bool Agrees(FoodAmount f, double? min, double? max, string unit)
    {
        if (unit.StartsWith('%'))
        {
            return Near(f.Percent, min);
        }

        (double? low, double? high) = (f.Amount, f.AmountMax ?? f.Amount);
        if (unit is "g" or "kg" or "oz" or "lb" && f.Grams is { } grams)
        {
            double one = unit switch { "kg" => 1000, "oz" => 28.349523125, "lb" => 453.59237, _ => 1 };
            (low, high) = (grams / one, (f.GramsMax ?? grams) / one);
            return Near(low, min) && Near(high, max ?? min);
        }

        if (unit == "ml" && Millilitres(f.Unit) is { } ml)
        {
            return Near(low * ml, min) && Near(high * ml, max);
        }

        // A word without a number ("a splash") is one of it here and no amount there.
        return (Near(low, min) && Near(high, max) || (min is null && low is null or 1)) && Alike(unit, f.Unit ?? "");
    }

    private static bool Alike(string want, string got) => want.Length == 0 || want == got || want switch
    {
        "each" => got == "piece",
        "packet" => got == "pack",
        "fl oz" => got == "floz",
        "drops" => got == "drop",
        _ => want.StartsWith("each ", StringComparison.Ordinal) ? got == "piece" : want.EndsWith(" " + got, StringComparison.Ordinal) && got.Length > 2 || want == got + " jp" || got.Length == 0 && want.Length == 0,
    };

    private static double? Millilitres(string? unit) => unit switch { "ml" => 1, "cl" => 10, "dl" => 100, "l" => 1000, _ => null };

    private static bool Near(double? got, double? want) => want is { } w ? got is { } g && Math.Abs(g - w) <= 0.006 + 0.002 * Math.Abs(w) : got is null or 0;
}
