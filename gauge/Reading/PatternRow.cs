using Coulisse.Cards;

namespace Coulisse.Gauge.Reading;

/// <summary>When a reading agrees with a row of the pattern table: the amount in the row's unit, or the grams that the line itself fixes; shares by their percent. The table spells some units in its own way.</summary>
internal static class PatternRow
{
    public static bool Agrees(IReadOnlyList<FoodAmount> all, double? min, double? max, string unit)
    {
        // "10 cl + 2 tbsp cream": two measures of one food stay two amounts; the table adds them with a spoon of 15 ml.
        if (unit is "g" && all.Count > 1 && all.All(a => a.Food == all[0].Food && a.Grams is not null))
        {
            // "200 g sugar, plus 20 g for the top": split uses stay two amounts; the table tells their sum.
            return Near(all.Sum(a => a.Grams), min);
        }

        return unit == "ml" && all.Count > 1 && all.All(a => a.Food == all[0].Food) ? Near(all.Sum(a => a.Amount * (a.Unit == "tbsp" ? 15 : Millilitres(a.Unit))), min) : Agrees(all[0], min, max, unit);
    }

    private static bool Agrees(FoodAmount f, double? min, double? max, string unit)
    {
        if (unit.StartsWith('%'))
        {
            return Near(f.Percent, min);
        }

        // No amount binds: the table's classes of such lines are our uses ("to taste", "as needed", a few).
        if (unit is "to taste" or "as needed" or "few" or "drops" or "shosho")
        {
            return min is null && f.Amount is null && (f.Use is not null || unit == "to taste" || unit == "as needed");
        }

        (double? low, double? high) = (f.Amount, max is null ? f.AmountMax : f.AmountMax ?? f.Amount);
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
        return (Near(low, min) && Near(high, max) || (min is null && low is null or 1)) && (Alike(unit, f.Unit ?? "") || Sized(unit, f));
    }

    /// <summary>The table puts the size into the unit ("no. 10 can", "disher 16", "cm cube"); here it is a grade beside it.</summary>
    private static bool Sized(string unit, FoodAmount f)
    {
        string grade = $"{f.Grade} {f.Preparation} {f.SecondMeasure}".ToLowerInvariant();
        return (unit.StartsWith("no. ", StringComparison.Ordinal) && f.Unit == "tin" && grade.Contains(unit[4..^4], StringComparison.Ordinal))
            || (unit.StartsWith("disher ", StringComparison.Ordinal) && f.Unit == "scoop" && grade.Contains(unit[7..], StringComparison.Ordinal))
            || (unit == "cm cube" && f.Unit == "cm")
            || (unit == "hitotsumami" && f.Unit == "pinch")
            || unit.Split(" or ").Contains(f.Unit, StringComparer.Ordinal);
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
