using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Matter.Substance;

namespace Coulisse.Kitchen.Formulas;

/// <summary>How much nitrite a curing salt brings to the meat of its component. A figure to hold against the law and the packet, never a leave to cure.</summary>
/// <remarks>Limits differ by product and country, most between 120 and 200 mg of sodium nitrite put into 1 kg (FSIS handbook 7620.3; Regulation (EC) 1333/2008, annex II): which one holds is not decided here.</remarks>
public static partial class CureRemarks
{
    /// <summary>Remarks on a component; empty without curing salt or without meat.</summary>
    public static ImmutableArray<string> Of(WeighedComponent component)
    {
        ArgumentNullException.ThrowIfNull(component);
        double meat = component.Lines.Where(l => l.Grade != WeightGrade.Unknown && l.Known is { } f && f.Contains.Contains("meat")).Sum(l => l.Grams);
        return meat <= 0 ? [] : [.. component.Lines.Where(l => l.Known?.Id == "curing-salt" && l.Grade != WeightGrade.Unknown && l.Grams > 0).Select(l => Say(l, meat))];
    }

    private static string Say(WeighedLine line, double meat)
    {
        Match stated = Strength().Match($"{line.Source.Text} {line.Food.Grade}");
        string digits = stated.Groups["a"].Success ? stated.Groups["a"].Value : stated.Groups["b"].Value;
        return stated.Success && double.TryParse(digits.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double percent) && percent is > 0 and <= 100
            ? string.Create(CultureInfo.InvariantCulture, $"{line.Grams:0.##} g of curing salt with {percent:0.##} % of nitrite put {Nitrite.MilligramsPerKilogram(line.Grams, percent, meat):0} mg of sodium nitrite into 1 kg of the meat; laws set limits by product, most of 120 to 200: look yours up before curing")
            : string.Create(CultureInfo.InvariantCulture, $"the line does not say how much nitrite its curing salt holds: at 0.6 % it is {Nitrite.MilligramsPerKilogram(line.Grams, 0.6, meat):0} mg, at 6.25 % {Nitrite.MilligramsPerKilogram(line.Grams, 6.25, meat):0} mg of sodium nitrite in 1 kg of the meat; read the packet and write its percent on the line");
    }

    [GeneratedRegex(@"(?<a>\d{1,2}([.,]\d{1,2})?) ?% (of )?(sodium )?nitrite|nitrite[a-z ,:]{0,20}(?<b>\d{1,2}([.,]\d{1,2})?) ?%", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Strength();
}
