using System.Globalization;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Tests;
using NodaTime;

namespace Coulisse.Matter.Tests.Heat;

/// <summary>Pans, dried trays and altitude against tables and hand reckonings.</summary>
public sealed class EquipmentPublished
{
    [Fact]
    public void Boiling_points_agree_with_the_published_list_to_3000_m_within_its_rounding()
    {
        // The list (NOAA, as reprinted) is rounded to half a degree Fahrenheit.
        int rows = 0;
        foreach (IReadOnlyDictionary<string, string> row in HeatTables.Rows("altitude-boiling").Where(r => r["published_C"].Length > 0))
        {
            double metres = double.Parse(row["altitude_m"], CultureInfo.InvariantCulture);
            if (metres is >= 0 and <= 3000)
            {
                Assert.Equal(double.Parse(row["published_C"], CultureInfo.InvariantCulture), Altitude.BoilingPoint(metres).Celsius, 0.15);
                rows++;
            }
        }

        Assert.Equal(7, rows);
        Assert.Throws<ArgumentOutOfRangeException>(() => Altitude.BoilingPoint(9000));
    }

    [Fact]
    public void A_kilowatt_that_reaches_the_pan_drives_off_1595_grams_an_hour()
    {
        // 3600/2257 kg an hour for a kilowatt (steam tables): 1.595.
        Reduction hour = new(Mass.FromGrams(2000), Mass.FromGrams(405));
        Assert.Equal(60, hour.Time(Power.FromWatts(1000)).TotalMinutes, 0.05);
    }

    [Fact]
    public void A_burner_that_only_feeds_the_losses_never_boils()
    {
        PanOnBurner gas = PanOnBurner.Of("gas", Power.FromWatts(1000));
        (Duration? quick, Duration? slow) = gas.ToBoil(Mass.FromGrams(1000), Temperature.FromCelsius(20));
        Assert.NotNull(quick);
        Assert.Null(slow);
        Assert.Throws<ArgumentException>(() => PanOnBurner.Of("candle", Power.FromWatts(1000)));
    }

    [Fact]
    public void One_weighing_replaces_the_range_of_a_burner()
    {
        // 400 g in 15 min: 0.4 · 2257/900 = 1.003 kW (by hand); 800 g more then take 27.3 to 33.3 min
        PanOnBurner own = PanOnBurner.Weighed(Mass.FromGrams(2000), Mass.FromGrams(1600), Duration.FromMinutes(15));
        Assert.Equal(1003, (own.Most.Watts + own.Least.Watts) / 2, 0.5);
        (Duration? quick, Duration? slow) = own.ToReduce(new Reduction(Mass.FromGrams(2000), Mass.FromGrams(1200)));
        Assert.Equal(30 / 1.1, quick!.Value.TotalMinutes, 0.01);
        Assert.Equal(30 / 0.9, slow!.Value.TotalMinutes, 0.01);
        Assert.Throws<ArgumentException>(() => PanOnBurner.Weighed(Mass.FromGrams(1600), Mass.FromGrams(2000), Duration.FromMinutes(15)));
    }

    [Fact]
    public void End_weight_of_a_dried_tray_is_the_solids_balance_and_its_time_is_that_of_the_weighing()
    {
        // 240 g at 89 % water hold 26.4 g of solids; at 10 % water they weigh 26.4/0.9 = 29.33 g (by hand).
        DriedTray tray = new(Mass.FromGrams(240), Fraction.FromPercent(89));
        Mass end = tray.EndWeight(Fraction.FromPercent(10));
        Assert.Equal(29.33, end.Grams, 0.01);
        Assert.Equal(120, tray.TimeTo(Mass.FromGrams(140), Duration.FromMinutes(120), Mass.FromGrams(140)).TotalMinutes, 1e-9);
        Assert.True(tray.TimeTo(end, Duration.FromMinutes(120), Mass.FromGrams(140)) > Duration.FromMinutes(400));
        Assert.Throws<ArgumentOutOfRangeException>(() => tray.EndWeight(Fraction.FromPercent(95)));
        Assert.Throws<ArgumentOutOfRangeException>(() => tray.TimeTo(end, Duration.FromMinutes(120), Mass.FromGrams(240)));
    }
}
