using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Coulisse.Kitchen.Plating;

/// <summary>Hours of the clock face in words; 12 is away from the guest.</summary>
public static partial class PlateClock
{
    private static readonly string[] Words = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>Hours that a text names: "at 12, 1 and 7 o'clock", "from 8 to 11 o'clock" (both ends), "half past nine".</summary>
    public static ImmutableArray<double> Hours(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<double> hours = [];
        foreach (Match m in OClock().Matches(text))
        {
            hours.AddRange(Number().Matches(m.Value).Select(x => double.Parse(x.Value, CultureInfo.InvariantCulture)).Where(h => h is >= 1 and <= 12));
        }

        foreach (Match m in HalfPast().Matches(text))
        {
            int at = Array.IndexOf(Words, m.Groups["hour"].Value.ToLowerInvariant());
            hours.AddRange(at >= 0 ? [at + 1.5] : []);
        }

        return [.. hours.Distinct()];
    }

    /// <summary>The middle of a stretch of hours ("from 11 to 1" is 12).</summary>
    public static double Middle(ImmutableArray<double> hours)
    {
        double first = hours[0];
        double span = ((hours[^1] - first) % 12 + 12) % 12;
        double middle = (first + (span / 2)) % 12;
        return middle == 0 ? 12 : middle;
    }

    [GeneratedRegex(@"(?<!\d)\d{1,2}((, | and | to )\d{1,2}){0,11} ?o['’]clock", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex OClock();

    [GeneratedRegex(@"half past (?<hour>\w+)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex HalfPast();

    [GeneratedRegex(@"\d{1,2}", RegexOptions.ExplicitCapture)]
    private static partial Regex Number();
}
