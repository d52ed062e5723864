using System.Globalization;

namespace Coulisse.Views.Web;

/// <summary>Figures as the bench sets them: unit after a narrow no-break space, a true minus, no more digits than the figure carries.</summary>
public static class Figures
{
    private const string Thin = "\u202F";

    /// <summary>Grams: "530 g", "17.5 g", "0.8 g", "1,490 g".</summary>
    public static string Grams(double grams, CultureInfo culture) => Number(grams, culture) + Thin + "g";

    /// <summary>A plain number with the digits a scale would show.</summary>
    public static string Number(double value, CultureInfo culture)
    {
        double size = Math.Abs(value);
        string format = size >= 100 ? "#,0" : size >= 10 ? "#,0.#" : size >= 1 ? "0.##" : "0.###";
        return value.ToString(format, culture).Replace('-', '\u2212');
    }

    /// <summary>A range: "530–560 g".</summary>
    public static string Range(double low, double high, CultureInfo culture) => Number(low, culture) + "–" + Number(high, culture) + Thin + "g";

    /// <summary>Degrees: "82 °C".</summary>
    public static string Celsius(double celsius, CultureInfo culture) => celsius.ToString("0.#", culture).Replace('-', '\u2212') + Thin + "°C";

    /// <summary>A length of time in the largest sensible units: "45 s", "12 min", "1 h 25 min", "2 d 3 h".</summary>
    public static string Lasting(double seconds, CultureInfo culture)
    {
        long s = (long)Math.Round(Math.Abs(seconds));
        string text = s switch
        {
            < 90 when s % 60 != 0 || s == 0 => Part(s, "s", culture),
            < 3600 => s % 60 == 0 ? Part(s / 60, "min", culture) : Part(s / 60, "min", culture) + " " + Part(s % 60, "s", culture),
            < 172800 => s % 3600 < 60 ? Part(s / 3600, "h", culture) : Part(s / 3600, "h", culture) + " " + Part(s % 3600 / 60, "min", culture),
            _ => s % 86400 < 3600 ? Part(s / 86400, "d", culture) : Part(s / 86400, "d", culture) + " " + Part(s % 86400 / 3600, "h", culture),
        };
        return seconds < 0 ? "\u2212" + text : text;
    }

    /// <summary>Minutes and seconds on the slot's clock: "4:05".</summary>
    public static string Clock(int seconds) => string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");

    private static string Part(long n, string unit, CultureInfo culture) => n.ToString("0", culture) + Thin + unit;
}
