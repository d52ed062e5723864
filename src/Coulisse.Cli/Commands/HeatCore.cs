using System.Collections.Immutable;
using System.CommandLine;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Substance;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse heat core: the middle of a piece in a bath, steam or a cold room.</summary>
internal static class HeatCore
{
    internal static readonly Option<string> Shape = new("--shape") { Description = "slab, cylinder, sphere or brick", DefaultValueFactory = _ => "slab" };
    internal static readonly Option<string> Size = new("--size") { Description = "Full sizes: 20mm; 60x120mm; 30x60x90mm", Required = true };
    internal static readonly Option<double> Start = new("--start") { Description = "Start, °C", Required = true };
    internal static readonly Option<double> Medium = new("--medium") { Description = "Bath, steam or air, °C", Required = true };
    internal static readonly Option<double?> H = new("--h") { Description = "Surface coefficient, W/(m²·K); without it a stirred bath" };
    internal static readonly Option<string?> Food = new("--food") { Description = "Food of our table" };
    internal static readonly Option<double?> Alpha = new("--diffusivity") { Description = "m²/s" };
    internal static readonly Option<double?> K = new("--conductivity") { Description = "W/(m·K)" };
    private static readonly Option<double?> Until = new("--until") { Description = "Wanted in the middle, °C" };
    private static readonly Option<double?> Minutes = new("--minutes") { Description = "How long, min" };
    private static readonly Option<string[]> Wanted = new("--organism") { Description = "salmonella, listeria, e. coli … or an id; may be given again", AllowMultipleArgumentsPerToken = true };

    public static Command Create()
    {
        Shape.AcceptOnlyFromAmong("slab", "cylinder", "sphere", "brick");
        Command command = new("core", "Minutes to a core temperature, the curve, and what it does to organisms.\nExample: coulisse heat core --shape slab --size 20mm --start 5 --medium 82 --until 80")
        {
            Shape, Size, Start, Medium, H, Food, Alpha, K, Until, Minutes, Wanted, HeatCommand.Json,
        };
        HeatAround.Options.ToList().ForEach(command.Options.Add);
        command.SetAction(p => HeatCommand.Answer(p, () => Run(p)));
        return command;
    }

    private static (object, string) Run(ParseResult p)
    {
        double? until = p.GetValue(Until);
        double? minutes = p.GetValue(Minutes);
        if (until is null && minutes is null)
        {
            throw new ArgumentException("Say --until (°C in the middle) or --minutes.");
        }

        if (minutes is { } m && m is not (> 0 and <= 1440))
        {
            throw new ArgumentException("--minutes run from above 0 to 1440.");
        }

        List<string> assumptions = [];
        (HeatCase food, Temperature start, Temperature medium) = Case(p, assumptions);
        SolidShape solid = Enum.Parse<SolidShape>(p.GetValue(Shape)!, ignoreCase: true);
        ImmutableArray<Length> sizes = [.. HeatCommand.Sizes(p.GetValue(Size)!).Select(Length.FromMillimetres)];
        food = HeatAround.Surface(p, food, start, medium, assumptions);
        LayeredHeating? layered = HeatAround.Asked(p) ? HeatAround.Of(p, solid, sizes, start, medium, food, assumptions) : null;
        (Temperature? goal, Duration? length) = (until is { } u ? Temperature.FromCelsius(u) : null, minutes is { } v ? Duration.FromMinutes(v) : null);
        CoreHeating run = layered?.Of(goal, length) ?? CoreHeating.Of(solid, sizes, start, medium, food, goal, length);
        SampledAnswer? time = goal is { } aim ? layered?.Minutes(aim) ?? UncertainCore.Minutes(solid, sizes, start, medium, food, aim) : null;
        var lethality = (p.GetValue(Wanted) ?? []).SelectMany(Organisms).DistinctBy(o => o.Id).Select(o =>
            {
                (double best, double cautious) = o.Log10(CoreHeating.History(run.Best), CoreHeating.History(run.Cautious));
                Duration whole = Duration.FromMinutes(run.Cautious[^1].Minute);
                SampledAnswer log = layered?.Log10(whole, o) ?? UncertainCore.Log10(solid, sizes, start, medium, food, whole, o);
                double off = layered?.OffLog10(whole, o) ?? CoreHeating.OffLog10(solid, sizes, start, medium, food, whole, o);
                return new { matters = Effects(log), worst = HeatCommand.R(log.Least ?? cautious), offNominal = HeatCommand.R(off), organism = o.Best.Organism, id = o.Id, matrix = o.Best.Matrix, log10 = new { best = HeatCommand.R(best), cautious = HeatCommand.R(cautious) }, creditedFrom = o.Floor.Celsius, sameRateAbove = o.Ceiling.Celsius, opened = o.Opened, source = o.Best.Source };
            }).ToArray();
        double? Min(Duration? d) => d is { } x ? HeatCommand.R(x.TotalMinutes) : null;
        object document = new
        {
            schema = "coulisse/heat-core/1",
            minutesToTarget = new { best = Min(run.BestToTarget), cautious = Min(run.CautiousToTarget) },
            offNominal = new { minutesToTarget = Min(run.OffToTarget), what = "cautious, with the medium 1 °C nearer to the start and every size 10 % greater" },
            uncertainty = time is null ? null : new { samples = layered is null ? 100 : 40, minutes = new { best = N(time.Best), low = N(time.Low), high = N(time.High), least = N(time.Least), most = N(time.Most) }, matters = Effects(time) },
            curve = run.Cautious.Select(c => new { minute = HeatCommand.R(c.Minute), core = HeatCommand.R(c.Core.Celsius), surface = HeatCommand.R(c.Surface.Celsius) }),
            curveBest = run.Best.Select(c => new { minute = HeatCommand.R(c.Minute), core = HeatCommand.R(c.Core.Celsius), surface = HeatCommand.R(c.Surface.Celsius) }),
            lethality,
            assumptions,
            validity = layered is null ? "Constant properties, one constant medium on all faces, no freezing, no evaporation, no air pocket; 0 to 120 °C, 1 to 1000 mm." : "Constant properties, no freezing, layers and medium as named; 0 to 120 °C (an oven with a wet face to 300), up to 24 h.",
            caution = Findings.Caution,
        };
        string text = (until is { } wanted
                ? run.CautiousToTarget is null ? $"The middle never reaches {HeatCommand.F(wanted)} °C.\n" : $"{HeatCommand.F(wanted)} °C in the middle: {Show(run.CautiousToTarget)} (cautious), {Show(run.BestToTarget)} (best), {Show(run.OffToTarget)} with the medium 1 °C off and the piece 10 % thicker.\n"
                : $"After {HeatCommand.F(run.Cautious[^1].Minute)} min the middle is at {HeatCommand.F(run.Cautious[^1].Core.Celsius)} °C (cautious), {HeatCommand.F(run.Best[^1].Core.Celsius)} °C (best).\n")
            + (time is null ? "" : $"Over the stated ranges ({(layered is null ? "100" : "40")} samples): {Minute(time.Low)} to {Minute(time.High)}, at worst {Minute(time.Most)}. What matters most: {time.Effects[0].Range.What}, {Minute(time.Effects[0].AtLow)} to {Minute(time.Effects[0].AtHigh)} by itself ({time.Effects[0].Range.Why}).\n")
            + string.Concat(lethality.Select(l => $"{l.organism} in {l.matrix}: {HeatCommand.F(l.log10.cautious)} log (cautious), {HeatCommand.F(l.log10.best)} log (best), {HeatCommand.F(l.offNominal)} log with the medium 1 °C off and the piece 10 % thicker; at worst over the ranges {HeatCommand.F(l.worst)} log, what matters most: {l.matters[0].What}\n"))
            + string.Join("\n", assumptions) + "\n" + Findings.Caution;
        return (document, text);
    }

    /// <summary>Organisms of a word; says which are known when none is.</summary>
    internal static IEnumerable<Organism> Organisms(string name) => Organism.Named(name) is { IsEmpty: false } found
        ? found
        : throw new ArgumentException($"\"{name}\" is not in our table of organisms. Known: {string.Join(", ", Organism.All.Select(o => o.Id))}.");

    /// <summary>Properties, surfaces and the two temperatures from the options; says what was assumed.</summary>
    internal static (HeatCase Food, Temperature Start, Temperature Medium) Case(ParseResult p, List<string> assumptions)
    {
        Temperature start = Temperature.FromCelsius(p.GetValue(Start));
        Temperature medium = Temperature.FromCelsius(p.GetValue(Medium));
        (double best, double slow, double bestK, double slowK) = (1.4e-7, 0.995e-7, 0.48, 0.4);
        if (p.GetValue(Food) is { } name)
        {
            Food food = OwnFoodsFile.Named(name);
            ThermalParts parts = ThermalParts.Of(food.Composition) ?? throw new ArgumentException($"The composition of {food.Name} is not held well enough.");
            ThermalProperties t = ThermalProperties.Of(parts, Temperature.FromCelsius(Math.Clamp((start.Celsius + medium.Celsius) / 2, 0, 120)));
            (best, slow, bestK, slowK) = (t.FastDiffusivity.SquareMetresPerSecond, t.SlowDiffusivity.SquareMetresPerSecond, t.Fast.WattsPerMetreKelvin, t.Slow.WattsPerMetreKelvin);
            assumptions.Add(FormattableString.Invariant($"{food.Name}: {best * 1e7:0.000}e-7 (upper mixing bound) and {slow * 1e7:0.000}e-7 m²/s (lower bound), Choi and Okos 1986, composition {food.Source}, without air."));
        }
        else if (p.GetValue(Alpha) is null)
        {
            assumptions.Add("Food not named: 1.4e-7 m²/s (moist food, best) and 0.995e-7 m²/s (slowest of Baldwin's figures, cautious).");
        }

        (best, slow) = p.GetValue(Alpha) is { } alpha ? (alpha, alpha) : (best, slow);
        (bestK, slowK) = p.GetValue(K) is { } k ? (k, k) : (bestK, slowK);
        HeatTransferCoefficient? h = p.GetValue(H) is { } given ? HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(given) : null;
        assumptions.Add(h is null ? "No h given: a stirred bath; best, the surface is at once at its temperature; cautious, 95 W/(m²·K) (Baldwin 2012)." : FormattableString.Invariant($"h {h.Value.WattsPerSquareMetreKelvin:0.#} W/(m²·K), as given, in both cases."));
        return (new HeatCase(Diffusivity.FromSquareMetresPerSecond(best), Diffusivity.FromSquareMetresPerSecond(slow), Conductivity.FromWattsPerMetreKelvin(bestK), Conductivity.FromWattsPerMetreKelvin(slowK), h, h ?? HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(95)), start, medium);
    }

    internal sealed record Effect(string What, double? Low, double? High, double? AtLow, double? AtHigh, string Why);

    private static ImmutableArray<Effect> Effects(SampledAnswer a) => [.. a.Effects.Select(e => new Effect(e.Range.What, e.Range.Low, e.Range.High, N(e.AtLow), N(e.AtHigh), e.Range.Why))];

    private static double? N(double? v) => v is { } x ? HeatCommand.R(x) : null;

    private static string Minute(double? m) => m is { } x ? HeatCommand.F(x) + " min" : "never";

    private static string Show(Duration? d) => d is { } x ? HeatCommand.F(x.TotalMinutes) + " min" : "never";
}
