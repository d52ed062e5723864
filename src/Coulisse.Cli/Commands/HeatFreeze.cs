using System.CommandLine;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse heat freeze: hours until the middle of a piece is frozen, or thawed and warm.</summary>
internal static class HeatFreeze
{
    private static readonly Option<double> Begins = new("--freezing-point") { Description = "Where freezing begins, °C", DefaultValueFactory = _ => -1.5 };
    private static readonly Option<double> Until = new("--until") { Description = "Wanted in the middle, °C", Required = true };

    public static Command Create()
    {
        Command command = new("freeze", "Hours to a core temperature with ice coming or going; still freezer air h 8, fan 20, blast 40.\nExample: coulisse heat freeze --shape slab --size 30mm --start 5 --medium -30 --h 30 --food \"beef mince\" --until -18")
        {
            HeatCore.Shape, HeatCore.Size, HeatCore.Start, HeatCore.Medium, HeatCore.H, HeatCore.Food, Begins, Until, HeatCommand.Json,
        };
        command.SetAction(p => HeatCommand.Answer(p, () =>
        {
            double h = p.GetValue(HeatCore.H) ?? throw new ArgumentException("Say --h: still freezer air 8, fan 20, blast freezer 40, stirred bath 95 W/(m²·K).");
            string name = p.GetValue(HeatCore.Food) ?? throw new ArgumentException("Say --food: how much ice it makes depends on what it is.");
            Food food = OwnFoodsFile.Named(name);
            ThermalParts parts = ThermalParts.Of(food.Composition) ?? throw new ArgumentException($"The composition of {food.Name} is not held well enough.");
            Temperature start = Temperature.FromCelsius(p.GetValue(HeatCore.Start));
            Temperature medium = Temperature.FromCelsius(p.GetValue(HeatCore.Medium));
            Temperature until = Temperature.FromCelsius(p.GetValue(Until));
            double? Hours(double series, double scale)
            {
                HeatMaterial material = HeatMaterial.Food(parts, Temperature.FromCelsius(p.GetValue(Begins)), Fraction.FromValue(series));
                HeatBody body = HeatBody.Piece(Enum.Parse<SolidShape>(p.GetValue(HeatCore.Shape)!, ignoreCase: true), [.. HeatCommand.Sizes(p.GetValue(HeatCore.Size)!).Select(s => Length.FromMillimetres(s * scale))], material, new BodyFace(HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h), Medium.Constant(medium)), HeatCommand.Sizes(p.GetValue(HeatCore.Size)!).Length > 1 ? 10 : 24);
                return body.Follow(start, Duration.FromHours(96), 0.05, 4000).TimeTo(until) is { } t ? HeatCommand.R(t.TotalHours) : null;
            }

            (double? best, double? slow) = (Hours(0.2, 1), Hours(1, 1.1));
            string F(double? v) => v is { } x ? HeatCommand.F(x) + " h" : "not within 96 h";
            return (new
            {
                schema = "coulisse.heat.freeze/1", hoursToTarget = new { best, cautious = slow },
                assumptions = new[] { $"{food.Name} by composition {food.Source}, Choi and Okos 1986; ice by 1 − t_f/t; best near the parallel bound of conductivity, cautious the series bound and every size 10 % greater.", "h as given." },
                validity = "−40 to 150 °C, no supercooling, no drip, no evaporation.", caution = Findings.Caution,
            }, $"{HeatCommand.F(until.Celsius)} °C in the middle: {F(slow)} (cautious), {F(best)} (best).\n{food.Name}: Choi and Okos 1986, freezing from {HeatCommand.F(p.GetValue(Begins))} °C.\n{Findings.Caution}");
        }));
        return command;
    }
}
