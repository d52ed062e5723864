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
        Option<double?> weighed = new("--weighed-from") { Description = "A pan of yours that boiled on this burner weighed this, g …" };
        Option<double?> weighs = new("--weighed-to") { Description = "… and this, g …" };
        Option<double?> after = new("--weighed-after") { Description = "… after so many minutes: replaces the range" };
        Option<double?> below = new("--keep-at") { Description = "Kept below the boil at this, °C, 30 to 95: what evaporates" };
        Option<double> wide = new("--pan") { Description = "Width of the open pan, cm", DefaultValueFactory = _ => 24 };
        Command command = new("pan", "Minutes to the boil and minutes to boil down.\nExample: coulisse heat pan --grams 690 --to-grams 165 --kilowatts 2 --burner induction") { grams, down, start, kilowatts, burner, weighed, weighs, after, below, wide, HeatCommand.Json };
        command.SetAction(p => HeatCommand.Answer(p, () =>
        {
            double?[] own = [p.GetValue(weighed), p.GetValue(weighs), p.GetValue(after)];
            if (own.Any(o => o is not null) && own.Any(o => o is null))
            {
                throw new ArgumentException("A weighing has three figures: --weighed-from, --weighed-to and --weighed-after.");
            }

            PanOnBurner pan = own[0] is { } from ? PanOnBurner.Weighed(Mass.FromGrams(from), Mass.FromGrams(own[1]!.Value), Duration.FromMinutes(own[2]!.Value)) : PanOnBurner.Of(p.GetValue(burner)!, Power.FromWatts(p.GetValue(kilowatts) * 1000));
            Mass full = Mass.FromGrams(p.GetValue(grams));
            (Duration? quick, Duration? slow) = pan.ToBoil(full, Temperature.FromCelsius(p.GetValue(start)));
            Reduction? reduction = p.GetValue(down) is { } end ? new Reduction(full, Mass.FromGrams(end)) : null;
            (Duration? Quick, Duration? Slow)? boil = reduction is null ? null : pan.ToReduce(reduction);
            if (p.GetValue(wide) is not (>= 8 and <= 100))
            {
                throw new ArgumentException("Outside the model: a pan of 8 to 100 cm.");
            }

            double area = Math.PI * Math.Pow(p.GetValue(wide) / 200, 2);
            (double Low, double High)? open = p.GetValue(below) is { } kept ? QuietEvaporation.PerHour(Temperature.FromCelsius(kept), Temperature.FromCelsius(25), Fraction.FromPercent(50)) : null;
            double? M(Duration? d) => d is { } x ? HeatCommand.R(x.TotalMinutes) : null;
            string Span(Duration? a, Duration? b) => $"{(M(a) is { } x ? HeatCommand.F(x) : "never")} to {(M(b) is { } y ? HeatCommand.F(y) + " min" : "never")}";
            string text = $"To the boil: {Span(quick, slow)}." + (reduction is null ? "" : $"\nBoiled down by {HeatCommand.F(reduction.Water.Grams)} g ({HeatCommand.F(reduction.Heat.Kilojoules)} kJ): {Span(boil!.Value.Quick, boil.Value.Slow)} at the full boil.")
                + (open is { } o ? $"\nKept at {HeatCommand.F(p.GetValue(below)!.Value)} °C in an open pan of {HeatCommand.F(p.GetValue(wide))} cm: {HeatCommand.F(o.Low * area * 1000)} to {HeatCommand.F(o.High * area * 1000)} g an hour leave it, into quiet air of 25 °C at 50 %; a hood or stirring takes more." : "") + "\n" + pan.Source;
            return (new
            {
                schema = "coulisse/heat-pan/1",
                minutesToBoil = new { best = M(quick), cautious = M(slow) },
                waterGrams = reduction?.Water.Grams,
                kilojoules = reduction is null ? null : (double?)HeatCommand.R(reduction.Heat.Kilojoules),
                minutesToReduce = boil is { } b ? new { best = M(b.Quick), cautious = M(b.Slow) } : null,
                gramsAnHourBelowBoil = open is { } e ? new { low = HeatCommand.R(e.Low * area * 1000), high = HeatCommand.R(e.High * area * 1000) } : null,
                assumptions = new[] { pan.Source, "Contents taken as water, 4.19 kJ/(kg·K); full boil, no lid." },
                validity = "A pan that boils evenly; a gentle simmer takes two to five times as long. One weighing on your own hob is better.",
            }, text);
        }));
        return command;
    }
}
