using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;

namespace Coulisse.Kitchen.Safety;

/// <summary>A reading at a control point or of a cold or hot place, as it goes into the control log.</summary>
/// <param name="Point">Part or place.</param>
/// <param name="Limit">Its limit in words; empty when none is known.</param>
/// <param name="Subject">Batch, container or shelf; may be empty.</param>
/// <param name="Celsius">What the probe read.</param>
/// <param name="Within">Whether the limit is kept; null where one reading does not decide.</param>
/// <param name="Done">What was done about it; never empty for a reading beyond its limit.</param>
public sealed record ControlReading(string Point, string Limit, string Subject, double Celsius, bool? Within, string Done)
{
    // what a kitchen's probe can read; beyond it a slip of the pen is likelier than a place so cold or hot
    private const double Coldest = -60;
    private const double Hottest = 350;

    /// <summary>Places every kitchen reads, with the limits of its code of practice.</summary>
    /// <param name="code">au, nz, uk, eu, us.</param>
    public static ImmutableArray<ControlPoint> Places(string code)
    {
        PracticeCode practice = PracticeCode.Find(code) ?? PracticeCode.Find("au")!;
        return
        [
            Place("Cold place", FormattableString.Invariant($"{practice.Cold:0.#} °C or less"), practice.Holding) with { MostCelsius = practice.Cold },
            Place("Hot place", FormattableString.Invariant($"{practice.Hot:0.#} °C or more"), practice.Holding) with { LeastCelsius = practice.Hot },
            Place("Freezer", "", ""),
            Place("Probe in melting ice", "", ""),
            Place("Probe in boiling water", "", ""),
        ];
    }

    /// <summary>Judges a reading as it was written in; a reading beyond its limit wants to know what was done.</summary>
    /// <param name="point">Where it was taken.</param>
    /// <param name="subject">Batch, container or shelf.</param>
    /// <param name="celsius">As written: 4.5, 4,5, −18.</param>
    /// <param name="done">What was done about it.</param>
    public static Parsed<ControlReading> Judge(ControlPoint point, string subject, string celsius, string done)
    {
        string plain = celsius.Replace('−', '-').Replace(',', '.').Replace("°C", "", StringComparison.OrdinalIgnoreCase).Replace("°", "", StringComparison.Ordinal).Trim();
        if (!double.TryParse(plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double read))
        {
            return Refused("CTL001", $"“{celsius}” is no temperature.", "Write the reading in °C, such as 3.5 or −18.");
        }

        if (read is < Coldest or > Hottest)
        {
            return Refused("CTL002", FormattableString.Invariant($"{read:0.#} °C is not what a kitchen's probe reads."), FormattableString.Invariant($"Readings lie between {Coldest:0} and {Hottest:0} °C; write it again."));
        }

        bool? within = point.LeastCelsius is { } least ? read >= least : point.MostCelsius is { } most ? read <= most : null;
        return within == false && string.IsNullOrWhiteSpace(done)
            ? Refused("CTL003", FormattableString.Invariant($"{read:0.#} °C does not keep {point.Limit}.").Replace("-", "−", StringComparison.Ordinal), point.Action.Length > 0 ? "Say what was done about it. The card's draft: " + point.Action + "." : "Say what was done about it.")
            : new Parsed<ControlReading>.Ok(new ControlReading(point.Component, point.Limit, subject.Trim(), read, within, done.Trim()));
    }

    private static ControlPoint Place(string name, string limit, string source) => new(name, 0, "", limit, "", name.StartsWith("Cold", StringComparison.Ordinal) ? "Warmer for under two hours: cool at once; longer: judge each food by its time; in doubt discard" : name.StartsWith("Hot", StringComparison.Ordinal) ? "Under two hours below the limit reheat or serve; past four discard" : "", source);

    private static Parsed<ControlReading>.Failed Refused(string code, string message, string hint) => new([new Problem(code, 0, message, hint)]);
}
