using System.CommandLine;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse heat hold: minutes for a reduction, at the core and in a bath, and the thickest bag that meets it.</summary>
internal static class HeatHold
{
    public static Command Create()
    {
        Option<string> organism = new("--organism") { Description = "An organism's id, such as listeria-meat (see heat core)", Required = true };
        Option<double> logs = new("--log") { Description = "Powers of ten", Required = true };
        Option<string?> size = new("--size") { Description = "Thickness of a flat piece: 20mm; needs --start and --medium" };
        Option<double?> start = new("--start") { Description = "Start, °C" };
        Option<double?> medium = new("--medium") { Description = "Bath, °C" };
        Option<double?> minutes = new("--minutes") { Description = "Time there is: how thick may it be?" };
        Command command = new("hold", "Minutes for a reduction at each temperature of the middle; in a bath from the start, and how thick a bag may be.\nExample: coulisse heat hold --organism listeria-meat --log 6 --size 20mm --start 5 --medium 60 --minutes 90") { organism, logs, size, start, medium, minutes, HeatCommand.Json };
        command.SetAction(p => HeatCommand.Answer(p, () => Run(p.GetValue(organism)!, p.GetValue(logs), p.GetValue(size), p.GetValue(start), p.GetValue(medium), p.GetValue(minutes))));
        return command;
    }

    private static (object, string) Run(string name, double logs, string? size, double? start, double? medium, double? minutes)
    {
        Organism[] named = [.. HeatCore.Organisms(name)];
        if (named.Length > 1)
        {
            throw new ArgumentException($"\"{name}\" is several: {string.Join(", ", named.Select(o => o.Id))}. Say which.");
        }

        Organism o = named[0];
        var table = KillTime.Equivalents(o, logs);
        double? best = null;
        double? slow = null;
        double? off = null;
        double? thick = null;
        bool bag = size is not null || minutes is not null;
        if (bag)
        {
            if (start is not (>= 0 and <= 100) || medium is not (> 0 and <= 100))
            {
                throw new ArgumentException("Say --start and --medium, 0 to 100 °C, for a piece in a bath; without them it cannot be shown safe.");
            }

            (Temperature from, Temperature at) = (Temperature.FromCelsius(start.Value), Temperature.FromCelsius(medium.Value));
            SolidBody Slab(Length mm, double alpha, double k, double h) => SolidBody.Of(SolidShape.Slab, [mm], Diffusivity.FromSquareMetresPerSecond(alpha), Conductivity.FromWattsPerMetreKelvin(k), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h));
            SolidBody Slow(Length mm) => Slab(mm, 0.995e-7, 0.4, 95);
            double? M(Duration? d) => d?.TotalMinutes;
            if (size is not null)
            {
                Length mm = HeatCommand.Sizes(size) is [>= 1 and <= 250 and var one] ? Length.FromMillimetres(one) : throw new ArgumentException("A flat piece has one size, 1 to 250 mm.");
                best = M(KillTime.InMedium(Slab(mm, 1.4e-7, 0.48, 600), from, at, o, o.Best, logs));
                slow = M(KillTime.InMedium(Slow(mm), from, at, o, o.Hardest, logs));
                off = M(KillTime.InMedium(Slow(mm * 1.1), from, at - TemperatureDelta.FromKelvin(1), o, o.Hardest, logs));
            }

            thick = minutes is { } there ? KillTime.Thickest(Slow, Duration.FromMinutes(there), from, at, o, o.Hardest, logs)?.Millimetres : null;
        }

        double? R(double? v) => v is { } x ? HeatCommand.R(x) : null;
        string Min(double? v) => v is { } x ? HeatCommand.F(Math.Ceiling(x)) + " min" : "never within a day";
        string counted = o.ComeUpCounts ? $"come-up counted from {HeatCommand.F(o.Floor.Celsius)} °C" : "come-up not counted: a legal line is of dwell at the temperature";
        string[] assumptions = bag ? ["1.4e-7 m²/s and h 600 W/(m²·K) (best), 0.995e-7 m²/s and h 95 (cautious: slowest of Baldwin's figures), a stirred bath, an endless slab.", "Off: cautious, the bath 1 °C low and the piece 10 % thicker."] : [];
        string text = $"{o.Best.Organism} in {o.Best.Matrix}, {HeatCommand.F(logs)} powers of ten; minutes at the middle, best to hardest:\n"
            + string.Concat(table.Select(r => $"  {HeatCommand.F(r.At.Celsius)} °C: {Show(r.Best)} to {Show(r.Cautious)}\n"))
            + (size is null ? "" : $"In a bath of {HeatCommand.F(medium!.Value)} °C from {HeatCommand.F(start!.Value)} °C: {Min(slow)} (cautious), {Min(best)} (best), {Min(off)} with bath and thickness off; {counted}.\n")
            + (minutes is null ? "" : thick is { } t ? $"In {HeatCommand.F(minutes.Value)} min at most {HeatCommand.F(Math.Floor(t * 10) / 10)} mm (cautious).\n" : $"No bag has it in {HeatCommand.F(minutes.Value)} min.\n")
            + $"Nothing is credited below {HeatCommand.F(o.Floor.Celsius)} °C, no more than its own above {HeatCommand.F(o.Ceiling.Celsius)} °C. {o.Best.Source}.\n" + string.Concat(assumptions.Select(a => a + "\n")) + Findings.Caution;
        return (new
        {
            schema = "coulisse/heat-hold/1", organism = o.Id, matrix = o.Best.Matrix, log10 = logs,
            equivalents = table.Select(r => new { celsius = r.At.Celsius, minutes = new { best = HeatCommand.R(r.Best), cautious = HeatCommand.R(r.Cautious) } }),
            minutesInBath = size is null ? null : new { best = R(best), cautious = R(slow), off = R(off) },
            thickestMillimetres = R(thick), comeUpCounted = o.ComeUpCounts, creditedFrom = o.Floor.Celsius, sameRateAbove = o.Ceiling.Celsius, source = o.Best.Source, assumptions, caution = Findings.Caution,
        }, text);
    }

    private static string Show(double minutes) => minutes >= 1 ? HeatCommand.F(Math.Round(minutes, 1)) + " min" : HeatCommand.F(Math.Ceiling(minutes * 60)) + " s";
}
