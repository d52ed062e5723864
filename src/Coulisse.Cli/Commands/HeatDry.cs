using System.CommandLine;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse heat dry: end weight from the solids, time from one weighing of the chef's own tray.</summary>
internal static class HeatDry
{
    public static Command Create()
    {
        Option<double> grams = new("--grams") { Description = "Before drying, g", Required = true };
        Option<double> water = new("--water") { Description = "Water before, %", Required = true };
        Option<double> to = new("--to-water") { Description = "Water wanted at the end, %", Required = true };
        Option<double?> minutes = new("--weighed-at") { Description = "Minutes at which the tray was weighed" };
        Option<double?> weighed = new("--weighed-grams") { Description = "What it weighed then, g" };
        Option<string?> food = new("--food") { Description = "tomato, mango, strawberry, basil: published diffusivity" };
        Option<string?> layer = new("--thickness") { Description = "Thickness of slices or sheet, with --food: 6mm" };
        Option<double?> air = new("--celsius") { Description = "Air of the dryer, °C, with --food" };
        Option<bool> tray1 = new("--on-tray") { Description = "Dried from one face only; without it on a mesh, from both" };
        Command command = new("dry", "End weight, and with one weighing of your own tray, or a published diffusivity, the time.\nExample: coulisse heat dry --grams 240 --water 89 --to-water 10 --weighed-at 120 --weighed-grams 140") { grams, water, to, minutes, weighed, food, layer, air, tray1, HeatCommand.Json };
        command.SetAction(p => HeatCommand.Answer(p, () =>
        {
            DriedTray tray = new(Mass.FromGrams(p.GetValue(grams)), Fraction.FromPercent(p.GetValue(water)));
            Mass end = tray.EndWeight(Fraction.FromPercent(p.GetValue(to)));
            Duration? time = p.GetValue(minutes) is { } at && p.GetValue(weighed) is { } w ? tray.TimeTo(end, Duration.FromMinutes(at), Mass.FromGrams(w)) : null;
            (double Fast, double Slow, string Source)? published = null;
            if (p.GetValue(food) is { } word)
            {
                DryingFood of = DryingFood.Find(word) ?? throw new ArgumentException($"No diffusivity of \"{word}\" is held; known: {string.Join(", ", DryingFood.All.Select(f => f.Food))}. One weighing of your own tray is better than any.");
                Length thick = Length.FromMillimetres(p.GetValue(layer) is { } t0 ? HeatCommand.Sizes(t0)[0] : throw new ArgumentException("Say --thickness as well."));
                if (of.Outside(Temperature.FromCelsius(p.GetValue(air) ?? throw new ArgumentException("Say --celsius as well.")), thick) is { } outside)
                {
                    throw new ArgumentException(outside);
                }

                bool both = !p.GetValue(tray1);
                published = (HeatCommand.R(tray.TimeTo(end, of.Fast, thick, both).TotalMinutes), HeatCommand.R(tray.TimeTo(end, of.Slow, thick, both).TotalMinutes), of.Source);
            }

            double? m = time is { } t ? HeatCommand.R(t.TotalMinutes) : null;
            return (new
            {
                schema = "coulisse/heat-dry/1", endGrams = HeatCommand.R(end.Grams), waterGrams = HeatCommand.R(p.GetValue(grams) - end.Grams), minutesToTarget = m, publishedMinutes = published is { } q ? new { fast = q.Fast, slow = q.Slow, source = q.Source } : null,
                assumptions = new[] { "No solids are lost.", "Lewis's thin layer, MR = exp(-k·t), with nothing left at the end (equilibrium taken as dry); k from the weighing given. Case hardening and a full load make it slower." },
                validity = "Thin layers of the same thickness, at the same temperature and airflow as when weighed.",
            }, $"Dry it to {HeatCommand.F(end.Grams)} g" + (published is { } r ? $". By published diffusion {HeatCommand.F(r.Fast)} to {HeatCommand.F(r.Slow)} min ({r.Source}); only a weighing of your own tray is nearer" : "") + (m is { } x ? $", about {HeatCommand.F(x)} min by your weighing." : ". Weigh the tray once on the way (--weighed-at, --weighed-grams) and the time can be told."));
        }));
        return command;
    }
}
