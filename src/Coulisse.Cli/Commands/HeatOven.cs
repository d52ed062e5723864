using System.CommandLine;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse heat oven: how long an oven takes to its setting.</summary>
internal static class HeatOven
{
    public static Command Create()
    {
        Option<double> kilowatts = new("--kilowatts") { Description = "What it draws, kW", Required = true };
        Option<double> to = new("--to") { Description = "Setting, °C", Required = true };
        Option<double> room = new("--room") { Description = "Room, °C", DefaultValueFactory = _ => 20 };
        Option<double?> took = new("--took") { Description = "Minutes a preheat of yours took" };
        Option<double?> timed = new("--took-to") { Description = "Setting of that preheat, °C" };
        Command command = new("oven", "Minutes to the setting; one timed preheat makes it your oven.\nExample: coulisse heat oven --kilowatts 3 --to 230 --took 12 --took-to 180") { kilowatts, to, room, took, timed, HeatCommand.Json };
        command.SetAction(p => HeatCommand.Answer(p, () =>
        {
            if (p.GetValue(kilowatts) is not (> 0 and <= 100))
            {
                throw new ArgumentException("Outside the model: an oven of above 0 to 100 kW.");
            }

            Power drawn = Power.FromKilowatts(p.GetValue(kilowatts));
            Temperature cold = Temperature.FromCelsius(p.GetValue(room));
            bool own = p.GetValue(took) is not null && p.GetValue(timed) is not null;
            OvenWarming oven = own ? OvenWarming.Timed(drawn, cold, Temperature.FromCelsius(p.GetValue(timed)!.Value), Duration.FromMinutes(p.GetValue(took)!.Value)) : OvenWarming.Usual(drawn);
            double? minutes = oven.Preheat(cold, Temperature.FromCelsius(p.GetValue(to))) is { } d ? HeatCommand.R(d.TotalMinutes) : null;
            string from = own ? "From your own timed preheat." : "The usual oven of that power (assumed, no source): time one preheat and give it (--took, --took-to).";
            return (new { schema = "coulisse/heat-oven/1", minutesToSetting = minutes, assumptions = new[] { from, "One warm mass; losses 1.6 W/K a kilowatt." }, validity = "Setting 30 to 300 °C." }, minutes is { } m ? $"At its setting after {HeatCommand.F(m)} min. {from}" : $"It never gets there. {from}");
        }));
        return command;
    }
}
