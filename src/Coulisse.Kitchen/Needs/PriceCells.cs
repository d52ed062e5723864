using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Kitchen.Needs;

/// <summary>Cells of a price list read one by one: numbers, packs, money, days. What could be two things is nothing, and asked about.</summary>
internal static partial class PriceCells
{
    /// <summary>A plain number. "1,234" and "1.234,50" may be two things and are not read; "0,5" and "12,25" can only be decimals.</summary>
    public static decimal? Number(string text)
    {
        text = text.Trim();
        bool one = !text.Contains('.', StringComparison.Ordinal) && text.Count(c => c == ',') == 1 && !Thousands().IsMatch(text);
        return decimal.TryParse(one ? text.Replace(',', '.') : text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out decimal n) ? n : null;
    }

    /// <summary>A unit of a pack: grams, millilitres or pieces, with how many of them it is; empty when not known.</summary>
    public static (string Unit, decimal Factor) Unit(string text) => text.Trim().TrimEnd('.').ToLowerInvariant() switch
    {
        "g" or "gr" or "gram" or "grams" => ("g", 1),
        "kg" or "kilo" or "kilos" => ("g", 1000),
        "ml" => ("ml", 1),
        "cl" => ("ml", 10),
        "l" or "lt" or "ltr" or "litre" or "liter" or "litres" => ("ml", 1000),
        "each" or "ea" or "piece" or "pieces" or "pc" or "pcs" or "st" or "stk" or "stück" or "pièce" or "pz" or "szt" => ("each", 1),
        _ => ("", 0),
    };

    /// <summary>"6 × 1 kg", "2.5 kg", "12 pcs", "250": content of a pack and its unit; the unit is empty for a bare number.</summary>
    public static (decimal Size, string Unit)? Pack(string text)
    {
        Match m = PackText().Match(text.Trim());
        if (!m.Success || Number(m.Groups["n"].Value) is not { } n || (m.Groups["k"].Success ? Number(m.Groups["k"].Value) : 1) is not { } times)
        {
            return null;
        }

        return (n * times, m.Groups["u"].Value);
    }

    /// <summary>"2.45", "€ 2,45", "2.45 EUR": amount and currency; the currency is empty where none stands.</summary>
    public static (decimal Amount, string Currency)? Money(string text)
    {
        Match m = MoneyText().Match(text.Trim());
        if (!m.Success || (m.Groups["a"].Length > 0 && m.Groups["b"].Length > 0) || Number(m.Groups["n"].Value) is not { } n)
        {
            return null;
        }

        string money = (m.Groups["a"].Value + m.Groups["b"].Value).Trim();
        return (n, money switch { "€" => "EUR", "£" => "GBP", "¥" => "JPY", "zł" => "PLN", _ => money });
    }

    /// <summary>A day: 2026-10-08, 8.10.2026, and 18/10/2026 where only one order is possible.</summary>
    public static LocalDate? Day(string text)
    {
        text = text.Trim();
        if (LocalDatePattern.Iso.Parse(text.Length > 10 && text[10] is 'T' or ' ' ? text[..10] : text) is { Success: true } iso)
        {
            return iso.Value;
        }

        Match m = DayText().Match(text);
        if (!m.Success)
        {
            return null;
        }

        int a = int.Parse(m.Groups["a"].Value, CultureInfo.InvariantCulture);
        int b = int.Parse(m.Groups["b"].Value, CultureInfo.InvariantCulture);
        bool points = m.Groups["p"].Value == ".";
        if (!points && a <= 12 && b <= 12 && a != b)
        {
            return null; // day and month may stand either way round
        }

        (int day, int month) = points || a > 12 || a == b ? (a, b) : (b, a);
        int year = int.Parse(m.Groups["y"].Value, CultureInfo.InvariantCulture);
        return month is >= 1 and <= 12 && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month) ? new LocalDate(year, month, day) : null;
    }

    [GeneratedRegex(@"^-?[1-9]\d{0,2},\d{3}$", RegexOptions.ExplicitCapture)]
    private static partial Regex Thousands();

    [GeneratedRegex(@"^((?<k>\d+)\s*[x×*]\s*)?(?<n>-?\d[\d.,]*)\s*(?<u>\p{L}*\.?)$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex PackText();

    [GeneratedRegex(@"^(?<a>[\p{Sc}\p{L}]{0,4})\s*(?<n>-?\d[\d.,]*)\s*(?<b>[\p{Sc}\p{L}]{0,4})$", RegexOptions.ExplicitCapture)]
    private static partial Regex MoneyText();

    [GeneratedRegex(@"^(?<a>\d{1,2})(?<p>[./])(?<b>\d{1,2})[./](?<y>\d{4})$", RegexOptions.ExplicitCapture)]
    private static partial Regex DayText();
}
