using System.Globalization;

namespace Coulisse.Cards.Occasions;

/// <summary>Reads how fast a person works: "usual", "20 % slower", "10 % faster". A bare number is asked, since 1.2 is slower to one and faster to another.</summary>
public static class SheetPace
{
    private const double Fastest = 0.5;
    private const double Slowest = 2;

    /// <summary>Factor on hands minutes, 0.5 to 2; or what is wrong, in words.</summary>
    /// <param name="text">As written; empty for usual.</param>
    public static (double Factor, string? Wrong) Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string s = text.Trim().TrimEnd('.').ToLowerInvariant();
        if (s is "" or "usual" or "normal" or "1" or "–" or "-" or "as usual")
        {
            return (1, null);
        }

        bool slower = s.EndsWith("slower", StringComparison.Ordinal);
        bool faster = s.EndsWith("faster", StringComparison.Ordinal) || s.EndsWith("quicker", StringComparison.Ordinal);
        string amount = s[..^(slower || s.EndsWith("faster", StringComparison.Ordinal) ? 6 : faster ? 7 : 0)].Trim();
        double? percent = amount.EndsWith('%') ? Number(amount[..^1]) : amount switch { "a tenth" => 10, "a fifth" => 20, "a quarter" => 25, "a third" => 100.0 / 3, "half" or "a half" => 50, _ => null };
        if ((!slower && !faster) || percent is not { } p)
        {
            return (1, $"“{text.Trim()}” is no speed: slower or faster, and by how much?");
        }

        // 20 % slower takes a fifth longer; 20 % faster does a fifth more in the same time
        double factor = slower ? 1 + (p / 100) : 1 / (1 + (p / 100));
        return factor is >= Fastest and <= Slowest ? (factor, null) : (1, $"“{text.Trim()}” is beyond what two people differ by; half to twice the usual is taken.");
    }

    /// <summary>A factor in words.</summary>
    public static string Words(double factor) => Math.Abs(factor - 1) < 0.005 ? "usual speed"
        : factor > 1 ? string.Create(CultureInfo.InvariantCulture, $"takes {(factor - 1) * 100:0} % longer")
        : string.Create(CultureInfo.InvariantCulture, $"needs {(1 - factor) * 100:0} % less time");

    private static double? Number(string text) => double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double n) && n >= 0 ? n : null;
}
