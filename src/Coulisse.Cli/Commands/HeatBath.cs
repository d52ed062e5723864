using System.CommandLine;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse heat bath: filling, loading, coming back.</summary>
internal static class HeatBath
{
    public static Command Create()
    {
        Option<double> litres = new("--litres") { Description = "Water, l", Required = true };
        Option<double> kilowatts = new("--kilowatts") { Description = "Heater, kW", Required = true };
        Option<double> losses = new("--losses") { Description = "Lost to the room, kW", DefaultValueFactory = _ => 0 };
        Option<double> start = new("--start") { Description = "Water as filled, °C", DefaultValueFactory = _ => 18 };
        Option<double> medium = new("--medium") { Description = "Set to, °C", Required = true };
        Option<double?> grams = new("--load-grams") { Description = "Cold food put in, g" };
        Option<double> celsius = new("--load-celsius") { Description = "Its temperature, °C", DefaultValueFactory = _ => 5 };
        Option<double> heat = new("--load-heat") { Description = "Its specific heat, kJ/(kg·K)", DefaultValueFactory = _ => 3.6 };
        Command command = new("bath", "Minutes until the water is hot, how far a load pulls it down, and how soon it is back.\nExample: coulisse heat bath --litres 20 --kilowatts 1.4 --start 18 --medium 82 --load-grams 1490 --load-celsius 8 --load-heat 3.2")
        {
            litres, kilowatts, losses, start, medium, grams, celsius, heat, HeatCommand.Json,
        };
        command.SetAction(p => HeatCommand.Answer(p, () =>
        {
            if (p.GetValue(medium) is not (> 0 and <= 100) || p.GetValue(litres) is not (> 0 and <= 10_000))
            {
                throw new ArgumentException("Outside the model: a bath of 0 to 10000 l, set above 0 and up to 100 °C.");
            }

            WaterBath bath = new(Mass.FromGrams(p.GetValue(litres) * 1000), Power.FromWatts(p.GetValue(kilowatts) * 1000), Power.FromWatts(p.GetValue(losses) * 1000));
            Temperature set = Temperature.FromCelsius(p.GetValue(medium));
            double? M(Duration? d) => d is { } x ? HeatCommand.R(x.TotalMinutes) : null;
            double? fill = M(bath.TimeToHeat(Temperature.FromCelsius(p.GetValue(start)), set));
            Energy? taken = p.GetValue(grams) is { } load ? WaterBath.HeatTakenUp(Mass.FromGrams(load), SpecificHeat.FromKilojoulesPerKilogramKelvin(p.GetValue(heat)), Temperature.FromCelsius(p.GetValue(celsius)), set) : null;
            double? fall = taken is { } e ? HeatCommand.R(bath.Fall(e).Kelvin) : null;
            double? regain = taken is { } r ? M(bath.Regain(r)) : null;
            string text = (fill is { } f ? $"Hot after {HeatCommand.F(f)} min." : "The heater never brings it there.") + (fall is { } k ? $"\nThe load takes {HeatCommand.F(taken!.Value.Kilojoules)} kJ: the water falls by at most {HeatCommand.F(k)} K and is back after {(regain is { } b ? HeatCommand.F(b) + " min of the full heater" : "never")}." : "");
            return (new
            {
                schema = "coulisse/heat-bath/1", minutesToHeat = fill, loadKilojoules = taken is { } q ? (double?)HeatCommand.R(q.Kilojoules) : null, fallKelvin = fall, minutesToRegain = regain,
                assumptions = new[] { "One stirred body of water at 4.186 kJ/(kg·K), 1 kg a litre.", "The fall is the most it can be: the heater is taken to lag altogether." },
                validity = "0 to 100 °C, stirred, constant losses.",
            }, text);
        }));
        return command;
    }
}
