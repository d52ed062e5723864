using System.Globalization;

namespace Coulisse.Cards.Occasions;

/// <summary>Reads how fast kit heats and cools, as measured in this kitchen: "8 up, 3 down", in °C a minute.</summary>
public static class SheetRates
{
    private const double Least = 0.01;
    private const double Most = 60;

    /// <summary>Kelvin a minute up and down, null where nothing is said; or what is wrong, in words.</summary>
    /// <param name="text">As written; empty for not measured.</param>
    public static (double? Up, double? Down, string? Wrong) Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Trim() is "" or "–" or "-")
        {
            return (null, null, null);
        }

        double? up = null;
        double? down = null;
        foreach (string piece in text.Split([',', ';', '/'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            string[] words = piece.Split([' ', '°'], StringSplitOptions.RemoveEmptyEntries);
            double rate = 0;
            bool number = words.Length > 1 && double.TryParse(words[0], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out rate);
            string way = words[^1].ToLowerInvariant();
            if (!number || way is not ("up" or "down"))
            {
                return (null, null, $"“{piece}” is no rate.");
            }

            if (rate is < Least or > Most)
            {
                return (null, null, string.Create(CultureInfo.InvariantCulture, $"{rate} °C a minute is no oven's nor bath's; {Least} to {Most} is taken."));
            }

            up = way == "up" ? rate : up;
            down = way == "down" ? rate : down;
        }

        return (up, down, null);
    }
}
