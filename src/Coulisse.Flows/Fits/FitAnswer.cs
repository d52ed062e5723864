using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Matter.Shapes;

namespace Coulisse.Flows.Fits;

/// <summary>What fits: figures by key, sentences, what comes out even next to it, the drawing to scale.</summary>
/// <param name="Figures">For machines: camel-case keys that name their unit.</param>
/// <param name="Says">For people, one sentence a line.</param>
/// <param name="Even">What was asked among what comes out even.</param>
/// <param name="Drawing">To scale.</param>
public sealed record FitAnswer(ImmutableArray<(string Key, object? Value)> Figures, ImmutableArray<string> Says, ImmutableArray<FitEven> Even, Drawing Drawing);

/// <summary>An asked amount among those that come out even, in words.</summary>
/// <param name="Of">What is counted or measured.</param>
/// <param name="Even">The neighbours.</param>
/// <param name="Asked">What was asked, and whether it comes out even.</param>
/// <param name="Smaller">The next smaller; empty when there is none.</param>
/// <param name="Larger">The next larger; empty when there is none.</param>
public sealed record FitEven(string Of, ComesOutEven Even, string Asked, string Smaller, string Larger)
{
    /// <summary>One sentence.</summary>
    public string Says => Asked + "." + (Smaller.Length > 0, Larger.Length > 0) switch
    {
        (true, true) => $" Next smaller that comes out even: {Smaller}; next larger: {Larger}.",
        (true, false) => $" Next smaller that comes out even: {Smaller}.",
        (false, true) => $" Next larger that comes out even: {Larger}; nothing smaller does.",
        _ => "",
    };

    /// <summary>A count that is wanted, in whole units: plates on trays, discs from roots.</summary>
    /// <param name="what">"plates".</param>
    /// <param name="asked">How much is wanted.</param>
    /// <param name="each">What one unit gives or holds, more than 0.</param>
    /// <param name="unit">One unit.</param>
    /// <param name="units">Several.</param>
    public static FitEven Whole(string what, double asked, double each, string unit, string units)
    {
        ComesOutEven even = ComesOutEven.Multiples(asked, each);
        return Row(what, even, unit, units, even.Exactly is not null ? "" : Invariant($"{Number(asked)} {what} take {Units(even.Taken ?? 0, unit, units)}, {Number(even.Over)} over"));
    }

    /// <summary>What there is, used up in whole units: batter in tins, filling in pieces.</summary>
    /// <param name="what">"g of filling".</param>
    /// <param name="have">How much there is.</param>
    /// <param name="each">What one unit takes, more than 0.</param>
    /// <param name="unit">One unit.</param>
    /// <param name="units">Several.</param>
    public static FitEven UsedUp(string what, double have, double each, string unit, string units)
    {
        ComesOutEven even = ComesOutEven.Multiples(have, each);
        return Row(what, even, unit, units, even.Exactly is not null ? "" : Invariant($"{Number(have)} {what} fill {Units(even.Smaller?.Units ?? 0, unit, units)}, {Number(have - (even.Smaller?.Amount ?? 0))} left"));
    }

    /// <summary>A size among those that use the place up.</summary>
    /// <param name="what">"Strip width".</param>
    /// <param name="even">The row of even sizes.</param>
    /// <param name="unit">Unit of the size.</param>
    /// <param name="per">What so many are: "on a tray", "turns".</param>
    /// <param name="one">The same of one; as of several when left out.</param>
    public static FitEven Size(string what, ComesOutEven even, string unit, string per, string? one = null)
    {
        ArgumentNullException.ThrowIfNull(even);

        // as many digits as tell the sizes apart
        double[] all = [.. new[] { even.Smaller?.Amount, even.Exactly is null ? even.Asked : null, even.Exactly?.Amount, even.Larger?.Amount }.OfType<double>()];
        int digits = Enumerable.Range(2, 3).FirstOrDefault(n => all.Select(x => Fine(x, n)).Distinct().Count() == all.Length, 4);
        string Side(EvenAmount? a) => a is { } x ? Invariant($"{Fine(x.Amount, digits)} {unit} ({x.Units:#,0} {(x.Units == 1 ? one ?? per : per)})") : "";
        return new(what, even, even.Exactly is not null ? $"{what} {Side(even.Exactly)} comes out even" : $"{what} {Fine(even.Asked, digits)} {unit} leaves something over", Side(even.Smaller), Side(even.Larger));
    }

    private static FitEven Row(string what, ComesOutEven even, string unit, string units, string uneven)
    {
        string Side(EvenAmount? a) => a is { } x ? Invariant($"{Number(x.Amount)} ({Units(x.Units, unit, units)})") : "";
        return new(what, even, uneven.Length > 0 ? uneven : Invariant($"{Number(even.Asked)} {what} come out even: {Units(even.Taken ?? 0, unit, units)}"), Side(even.Smaller), Side(even.Larger));
    }

    private static string Units(int n, string unit, string units) => Invariant($"{n:#,0} {(n == 1 ? unit : units)}");

    // Cut off, never rounded up: a size that is a hair larger than the even one no longer fits.
    private static string Fine(double value, int digits) => (Math.Floor((value * Math.Pow(10, digits)) + 1e-4) / Math.Pow(10, digits)).ToString("#,0.####", CultureInfo.InvariantCulture);

    private static string Number(double value) => value.ToString(value < 100 ? "#,0.##" : "#,0.#", CultureInfo.InvariantCulture);

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
