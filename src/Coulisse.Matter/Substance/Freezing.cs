namespace Coulisse.Matter.Substance;

/// <summary>Where a solution begins to freeze and how much of its water is ice.</summary>
/// <remarks>Freezing begins where the solution's water activity equals that of ice (Murphy and Koop 2005, vapour pressures, from memory); milk salts lower it by 2.37 °C per gram of milk solids in a gram of water. Holds to −40 °C.</remarks>
public static class Freezing
{
    private const double MilkSalts = 2.37;
    private const double Coldest = -40;

    /// <summary>Start of freezing, °C; null below −40 °C.</summary>
    public static double? Point(Solution s)
    {
        ArgumentNullException.ThrowIfNull(s);
        double t = At(s, s.Water);
        return t > Coldest ? t : null;
    }

    /// <summary>Share of the water that is ice at a temperature, 0 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Colder than −40 °C.</exception>
    public static double IceShare(Solution s, double celsius)
    {
        ArgumentNullException.ThrowIfNull(s);
        if (celsius is not >= Coldest)
        {
            throw new ArgumentOutOfRangeException(nameof(celsius), celsius, "Ice shares are worked out down to −40 °C.");
        }

        if (At(s, s.Water) <= celsius)
        {
            return 0;
        }

        // The less water is left, the colder the rest must be: halve until it is.
        double low = s.Water * 1e-6, high = s.Water;
        for (int i = 0; i < 80; i++)
        {
            double middle = (low + high) / 2;

            // At(middle) < celsius, asked of the activities: ice is met at a temperature where its own activity is the solution's.
            double bare = celsius + (MilkSalts * s.MilkSolids / middle);
            if (bare > 0 || WaterActivity.Norrish(s with { Water = middle }) < IceActivity(bare))
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return 1 - (high / s.Water);
    }

    /// <summary>Water activity of ice at a temperature.</summary>
    public static double IceActivity(double celsius)
    {
        double t = celsius + 273.15; // K
        double liquid = 54.842763 - (6763.22 / t) - (4.210 * Math.Log(t)) + (0.000367 * t) + (Math.Tanh(0.0415 * (t - 218.8)) * (53.878 - (1331.22 / t) - (9.44523 * Math.Log(t)) + (0.014025 * t)));
        double ice = 9.550426 - (5723.265 / t) + (3.53068 * Math.Log(t)) - (0.00728332 * t);
        return Math.Exp(ice - liquid);
    }

    private static double At(Solution s, double water)
    {
        double activity = WaterActivity.Norrish(s with { Water = water });
        double low = -90, high = 0;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            if (IceActivity(middle) > activity)
            {
                high = middle;
            }
            else
            {
                low = middle;
            }
        }

        return high - (MilkSalts * s.MilkSolids / water);
    }
}
