using System.Collections.Immutable;
using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Heat;

/// <summary>What a probe wrote down.</summary>
/// <param name="Channels">Its channels, in the file's order.</param>
/// <param name="Began">The clock at the first reading; null when the file counts from zero.</param>
/// <param name="Remarks">What was left out or taken on trust, in words with counts.</param>
public sealed record ProbeRun(ImmutableArray<ProbeChannel> Channels, NodaTime.LocalDateTime? Began, ImmutableArray<string> Remarks)
{
    /// <summary>A channel by its name or its number from 1; null when there is none.</summary>
    public ProbeChannel? Find(string nameOrNumber)
        => Channels.FirstOrDefault(c => string.Equals(c.Name, nameOrNumber, StringComparison.OrdinalIgnoreCase))
            ?? (int.TryParse(nameOrNumber, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int n) && n >= 1 && n <= Channels.Length ? Channels[n - 1] : null);
}

/// <summary>One channel: minutes rise and are counted from the file's first reading.</summary>
/// <param name="Name">As the file heads it.</param>
/// <param name="Readings">Minute and temperature.</param>
public sealed record ProbeChannel(string Name, ImmutableArray<(double Minute, Temperature At)> Readings)
{
    /// <summary>The part from one minute to another, counted anew from its first reading; empty when nothing lies there.</summary>
    public ProbeChannel Between(double from, double to)
    {
        ImmutableArray<(double Minute, Temperature At)> part = [.. Readings.Where(r => r.Minute >= from && r.Minute <= to)];
        return this with { Readings = [.. part.Select(r => (r.Minute - part[0].Minute, r.At))] };
    }
}
