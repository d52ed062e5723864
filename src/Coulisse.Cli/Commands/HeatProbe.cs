using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Coulisse.Formats.In;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using Coulisse.Views.Charts;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse heat probe FILE: what a measured curve shows, and how it lies over a predicted one.</summary>
internal static class HeatProbe
{
    private static readonly Argument<string> FileName = new("FILE") { Description = "What the probe wrote (CSV, TSV …); - for standard input" };
    private static readonly Option<string?> ChannelName = new("--channel") { Description = "Channel at the slowest point, by name or number; without it the first" };
    private static readonly Option<double?> From = new("--in") { Description = "Minute at which it went in; what was before is left out" };
    private static readonly Option<double?> Until = new("--out") { Description = "Minute at which it came out" };
    private static readonly Option<double?> Target = new("--target") { Description = "Wanted in the middle, °C" };
    private static readonly Option<double?> Hold = new("--hold") { Description = "And held, min" };
    private static readonly Option<string?> Cool = new("--cool") { Description = "Judge the cooling by this code: au, nz, uk, eu, us" };
    private static readonly Option<string[]> Organisms = new("--organism") { Description = "salmonella, listeria … or an id; may be given again", AllowMultipleArgumentsPerToken = true };
    private static readonly Option<double> Accuracy = new("--accuracy") { Description = "What a reading may be off, K (FDA Food Code 4-203.11: 1 °C)", DefaultValueFactory = _ => 1 };
    private static readonly Option<string?> Shape = new("--shape") { Description = "Lay it over a prediction: slab, cylinder, sphere or brick" };
    private static readonly Option<string?> Size = new("--size") { Description = "Full sizes, as for heat core" };
    private static readonly Option<double?> Medium = new("--medium") { Description = "Bath or air, °C" };
    private static readonly Option<string?> MediumChannel = new("--medium-channel") { Description = "Channel that measured bath or air, in place of --medium" };
    private static readonly Option<string?> Fit = new("--fit") { Description = "h or thickness" };
    private static readonly Option<double?> H = new("--h") { Description = "h for a fit of thickness, W/(m²·K)" };
    private static readonly Option<double> Alpha = new("--diffusivity") { Description = "m²/s", DefaultValueFactory = _ => 1.4e-7 };
    private static readonly Option<double> K = new("--conductivity") { Description = "W/(m·K)", DefaultValueFactory = _ => 0.48 };
    private static readonly Option<bool> Svg = new("--svg") { Description = "The curve as SVG" };

    public static Command Create()
    {
        Shape.AcceptOnlyFromAmong("slab", "cylinder", "sphere", "brick");
        Fit.AcceptOnlyFromAmong("h", "thickness");
        Cool.AcceptOnlyFromAmong("au", "nz", "uk", "eu", "us");
        Command command = new("probe", "Reads what a probe wrote and says what it shows.\nExample: coulisse heat probe run.csv --target 63 --hold 20 --organism salmonella --cool au\n         coulisse heat probe run.csv --channel core --medium-channel bath --shape slab --size 20mm --fit h")
        {
            FileName, ChannelName, From, Until, Target, Hold, Cool, Organisms, Accuracy, Shape, Size, Medium, MediumChannel, Fit, H, Alpha, K, Svg, HeatCommand.Json,
        };
        command.SetAction(p =>
        {
            string path = p.GetRequiredValue(FileName);
            return Input.Bytes(path, out int exit) is not { } bytes ? exit : TextBytes.Read(bytes).Match(
                text => ProbeFile.Read(text).Match(run => Show(p, run), problems => Input.Fail(path, problems)),
                problems => Input.Fail(path, problems));
        });
        return command;
    }

    private static int Show(ParseResult p, ProbeRun run) => HeatCommand.Answer(p, () =>
    {
        ProbeChannel Named(string name) => run.Find(name) ?? throw new ArgumentException($"There is no channel \"{name}\"; there are: {string.Join(", ", run.Channels.Select(c => c.Name))}.");
        ProbeChannel Cut(ProbeChannel c) => c.Between(p.GetValue(From) ?? 0, p.GetValue(Until) ?? double.MaxValue);
        ProbeChannel core = Cut(p.GetValue(ChannelName) is { } asked ? Named(asked) : run.Channels[0]);
        Temperature? target = p.GetValue(Target) is { } t ? Temperature.FromCelsius(t) : null;
        CoolingRule? rule = p.GetValue(Cool) is { } code ? CoolingRule.Of(code) : null;
        ImmutableArray<Organism> organisms = [.. (p.GetValue(Organisms) ?? []).SelectMany(HeatCore.Organisms).DistinctBy(o => o.Id)];
        ProbeVerdict verdict = ProbeVerdict.Of(core, TemperatureDelta.FromKelvin(p.GetValue(Accuracy)), target, rule, organisms);
        double hold = p.GetValue(Hold) ?? 0;
        bool? held = target is null ? null : verdict.Reached.Cautious is not null && verdict.Held.Cautious >= hold;
        bool? cooled = rule is null ? null : verdict.Cooling.All(s => s.Kept);
        ProbeFit? fit = Laid(p, core, p.GetValue(MediumChannel) is { } m ? Cut(Named(m)) : null, out string figure);
        if (p.GetValue(Svg))
        {
            LineChart.Line Drawn(string name, IEnumerable<(double Minute, Temperature At)> readings) => new(name, [.. readings.Select(r => (r.Minute, r.At.Celsius))]);
            string drawing = LineChart.Draw(core.Name, "minutes", "°C", fit is null ? [Drawn("measured", core.Readings)] : [Drawn("measured", core.Readings), Drawn("predicted", fit.Predicted)], target is { } line ? [new LineChart.Limit(string.Create(CultureInfo.InvariantCulture, $"limit {line.Celsius:0.#} °C"), line.Celsius)] : [], []);
            return (new { svg = drawing }, drawing);
        }

        return (Document(run, core, verdict, held, cooled, rule, fit, figure), Text(run, core, verdict, target, hold, held, rule, fit, figure, p.GetValue(Accuracy)));
    });

    private static ProbeFit? Laid(ParseResult p, ProbeChannel core, ProbeChannel? around, out string figure)
    {
        figure = "";
        if (p.GetValue(Shape) is not { } shape)
        {
            return null;
        }

        double[] sizes = HeatCommand.Sizes(p.GetValue(Size) ?? throw new ArgumentException("Say --size, the piece's full sizes."));
        Medium medium = around is not null ? Matter.Heat.Medium.Through([.. around.Readings.Select(r => (Duration.FromMinutes(r.Minute), r.At))])
            : p.GetValue(Medium) is { } at ? Matter.Heat.Medium.Constant(Temperature.FromCelsius(at)) : throw new ArgumentException("Say --medium (°C) or --medium-channel, what it lay in.");
        HeatMaterial food = HeatMaterial.Constant(Conductivity.FromWattsPerMetreKelvin(p.GetValue(K)), Diffusivity.FromSquareMetresPerSecond(p.GetValue(Alpha)));
        SolidShape solid = Enum.Parse<SolidShape>(shape, ignoreCase: true);
        HeatBody Body(double h, double scale) => HeatBody.Piece(solid, [.. sizes.Select(s => Length.FromMillimetres(s * scale))], food, new BodyFace(HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(h), medium), sizes.Length > 1 ? 8 : 16);
        if (p.GetValue(Fit) == "thickness")
        {
            double h = p.GetValue(H) ?? 95;
            figure = FormattableString.Invariant($"mm (smallest size, the others in proportion; h {h:0.#} W/(m²·K))");
            double smallest = sizes.Min();
            return ProbeFit.Of(core, mm => Body(h, mm / smallest), smallest / 4, smallest * 4);
        }

        figure = "W/(m²·K)";
        return ProbeFit.Of(core, h => Body(h, 1), 3, 3000);
    }

    private static object Document(ProbeRun run, ProbeChannel core, ProbeVerdict v, bool? held, bool? cooled, CoolingRule? rule, ProbeFit? fit, string figure) => new
    {
        schema = "coulisse.heat.probe/1",
        channels = run.Channels.Select(c => new { name = c.Name, readings = c.Readings.Length, minutes = HeatCommand.R(c.Readings[^1].Minute) }),
        began = run.Began?.ToString("uuuu'-'MM'-'dd'T'HH':'mm':'ss", CultureInfo.InvariantCulture),
        channel = core.Name,
        hottest = HeatCommand.R(v.Hottest.Celsius),
        reached = new { best = N(v.Reached.Best), cautious = N(v.Reached.Cautious) },
        heldMinutes = new { best = HeatCommand.R(v.Held.Best), cautious = HeatCommand.R(v.Held.Cautious) },
        held,
        cooled,
        cooling = v.Cooling.Select(s => new { from = s.Stage.From.Celsius, to = s.Stage.To.Celsius, limitHours = s.Stage.Hours, hours = new { best = N(s.Hours), cautious = N(s.CautiousHours) }, kept = s.Kept }),
        coolingSource = rule?.Source,
        lethality = v.Lethality.Select(l => new { organism = l.Organism.Best.Organism, id = l.Organism.Id, matrix = l.Organism.Best.Matrix, log10 = new { best = HeatCommand.R(l.Best), cautious = HeatCommand.R(l.Cautious) }, source = l.Organism.Best.Source }),
        gaps = v.Gaps.Select(g => new { minute = HeatCommand.R(g.Minute), minutes = HeatCommand.R(g.Long) }),
        fit = fit is null ? null : new { value = HeatCommand.R(fit.Value), low = N(fit.Low), high = N(fit.High), of = figure, misfitKelvin = HeatCommand.R(fit.Misfit), predicted = fit.Predicted.Select(r => new { minute = HeatCommand.R(r.Minute), core = HeatCommand.R(r.At.Celsius) }) },
        curve = core.Readings.Select(r => new { minute = HeatCommand.R(r.Minute), core = HeatCommand.R(r.At.Celsius) }),
        remarks = run.Remarks,
        caution = Findings.Caution,
    };

    private static string Text(ProbeRun run, ProbeChannel core, ProbeVerdict v, Temperature? target, double hold, bool? held, CoolingRule? rule, ProbeFit? fit, string figure, double accuracy)
    {
        List<string> lines = [$"{core.Name}: {core.Readings.Length.ToString(CultureInfo.InvariantCulture)} readings over {HeatCommand.F(core.Readings[^1].Minute)} min; hottest {HeatCommand.F(v.Hottest.Celsius)} °C. Channels: {string.Join(", ", run.Channels.Select(c => c.Name))}."];
        if (target is { } t)
        {
            string limit = $"{HeatCommand.F(t.Celsius)} °C" + (hold > 0 ? $" for {HeatCommand.F(hold)} min" : "");
            lines.Add($"{limit}: {(held == true ? "kept" : "NOT shown to be kept")}. Reached at {Minute(v.Reached.Best)}, with every reading {HeatCommand.F(accuracy)} K too high at {Minute(v.Reached.Cautious)}; held {HeatCommand.F(v.Held.Best)} min, {HeatCommand.F(v.Held.Cautious)} min (cautious).");
        }

        lines.AddRange(v.Cooling.Select(s => $"{HeatCommand.F(s.Stage.From.Celsius)} to {HeatCommand.F(s.Stage.To.Celsius)} °C: {(s.CautiousHours is { } h ? HeatCommand.F(h) + " h" : "not shown")} (cautious), {(s.Hours is { } b ? HeatCommand.F(b) + " h" : "not shown")} (as read); limit {HeatCommand.F(s.Stage.Hours)} h: {(s.Kept ? "kept" : "NOT kept")}"));
        lines.AddRange(rule is null ? [] : [rule.Source]);
        lines.AddRange(v.Lethality.Select(l => $"{l.Organism.Best.Organism} in {l.Organism.Best.Matrix}: {HeatCommand.F(l.Cautious)} log (cautious), {HeatCommand.F(l.Best)} log (best)"));
        lines.AddRange(v.Gaps.Select(g => $"No readings for {HeatCommand.F(g.Long)} min from minute {HeatCommand.F(g.Minute)}: the worse of both ends is taken for it."));
        if (fit is not null)
        {
            string range = (fit.Low, fit.High) switch
            {
                ({ } a, { } b) => $"{HeatCommand.F(a)} to {HeatCommand.F(b)}",
                ({ } a, null) => $"{HeatCommand.F(a)} or more: the curve does not bound it above",
                (null, { } b) => $"{HeatCommand.F(b)} or less: the curve does not bound it below",
                _ => "the curve does not bound it",
            };
            lines.Add($"Laid over the prediction: {fit.Value.ToString("0.#", CultureInfo.InvariantCulture)} {figure}, range {range}; off by {HeatCommand.F(fit.Misfit)} K (root mean square){(fit.Misfit > 2 ? ": too far for a piece of this shape and start; look at the shape, the medium and when it went in" : "")}.");
        }

        lines.AddRange(run.Remarks);
        return string.Join('\n', [.. lines, Findings.Caution]);
    }

    private static string Minute(double? minute) => minute is { } m ? "minute " + HeatCommand.F(m) : "no time";

    private static double? N(double? v) => v is { } x ? HeatCommand.R(x) : null;
}
