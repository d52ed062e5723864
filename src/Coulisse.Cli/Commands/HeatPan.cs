using System.CommandLine;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse heat pan: to the boil, and boiled down.</summary>
internal static class HeatPan
{
    public static Command Create()
    {
        Option<double> grams = new("--grams") { Description = "What is in the pan, g", Required = true };
        Option<double?> down = new("--to-grams") { Description = "Boil down to this weight, g" };
        Option<double> start = new("--start") { Description = "Start, °C", DefaultValueFactory = _ => 20 };
        Option<double> kilowatts = new("--kilowatts") { Description = "What the burner or plate draws, kW", Required = true };
        Option<string> burner = new("--burner") { Description = "gas, plate, induction", DefaultValueFactory = _ => "induction" };
        burner.AcceptOnlyFromAmong("gas", "plate", "induction");
        Command command = new("pan", "Minutes to the boil and minutes to boil down.\nExample: coulisse heat pan --grams 690 --to-grams 165 --kilowatts 2 --burner induction") { grams, down, start, kilowatts, burner, HeatCommand.Json };
        command.SetAction(p => HeatCommand.Answer(p, () =>
        {
            PanOnBurner pan = PanOnBurner.Of(p.GetValue(burner)!, Power.FromWatts(p.GetValue(kilowatts) * 1000));
            Mass full = Mass.FromGrams(p.GetValue(grams));
            (Duration? quick, Duration? slow) = pan.ToBoil(full, Temperature.FromCelsius(p.GetValue(start)));
            Reduction? reduction = p.GetValue(down) is { } end ? new Reduction(full, Mass.FromGrams(end)) : null;
            (Duration? Quick, Duration? Slow)? boil = reduction is null ? null : pan.ToReduce(reduction);
            double? M(Duration? d) => d is { } x ? HeatCommand.R(x.TotalMinutes) : null;
            string Span(Duration? a, Duration? b) => $"{(M(a) is { } x ? HeatCommand.F(x) : "never")} to {(M(b) is { } y ? HeatCommand.F(y) + " min" : "never")}";
            string text = $"To the boil: {Span(quick, slow)}." + (reduction is null ? "" : $"\nBoiled down by {HeatCommand.F(reduction.Water.Grams)} g ({HeatCommand.F(reduction.Heat.Kilojoules)} kJ): {Span(boil!.Value.Quick, boil.Value.Slow)} at the full boil.") + "\n" + pan.Source;
            return (new
            {
                schema = "coulisse/heat-pan/1",
                minutesToBoil = new { best = M(quick), cautious = M(slow) },
                waterGrams = reduction?.Water.Grams,
                kilojoules = reduction is null ? null : (double?)HeatCommand.R(reduction.Heat.Kilojoules),
                minutesToReduce = boil is { } b ? new { best = M(b.Quick), cautious = M(b.Slow) } : null,
                assumptions = new[] { pan.Source, "Contents taken as water, 4.19 kJ/(kg·K); full boil, no lid." },
                validity = "A pan that boils evenly; a gentle simmer takes two to five times as long. One weighing on your own hob is better.",
            }, text);
        }));
        return command;
    }
}
