using System.Collections.Immutable;
using System.CommandLine;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse heat cool: does it cool inside the rule.</summary>
internal static class HeatCool
{
    public static Command Create()
    {
        Option<string> code = new("--code") { Description = "Code of practice: au, nz, uk, eu, us", DefaultValueFactory = _ => "au" };
        code.AcceptOnlyFromAmong("au", "nz", "uk", "eu", "us");
        Command command = new("cool", "Whether a piece or a layer cools inside the rule; name the air or water by --h (still fridge 8, fan 15, blast chiller 30, stirred ice water 100).\nExample: coulisse heat cool --shape slab --size 25mm --start 85 --medium 4 --h 15 --code au")
        {
            HeatCore.Shape, HeatCore.Size, HeatCore.Start, HeatCore.Medium, HeatCore.H, HeatCore.Food, HeatCore.Alpha, HeatCore.K, code, HeatCommand.Json,
        };
        HeatAround.Options.ToList().ForEach(command.Options.Add);
        command.SetAction(p => HeatCommand.Answer(p, () => Run(p, p.GetValue(code)!)));
        return command;
    }

    private static (object, string) Run(ParseResult p, string code)
    {
        if (p.GetValue(HeatCore.H) is null && !HeatAround.Flows(p))
        {
            throw new ArgumentException("Say --h, the surface coefficient: still fridge 8, fan fridge 15, blast chiller 30, stirred ice water 100 W/(m²·K); or --airflow in m/s. Without it cooling cannot be shown safe.");
        }

        List<string> assumptions = [];
        (HeatCase food, Temperature start, Temperature medium) = HeatCore.Case(p, assumptions);
        if (medium >= start)
        {
            throw new ArgumentException("The medium is not colder than the start; nothing cools. For heating use coulisse heat core.");
        }

        SolidShape solid = Enum.Parse<SolidShape>(p.GetValue(HeatCore.Shape)!, ignoreCase: true);
        ImmutableArray<Length> sizes = [.. HeatCommand.Sizes(p.GetValue(HeatCore.Size)!).Select(Length.FromMillimetres)];
        food = HeatAround.Surface(p, food, start, medium, assumptions);
        CoreHeating run = HeatAround.Asked(p) ? HeatAround.Of(p, solid, sizes, start, medium, food, assumptions).Of(null, Duration.FromHours(24)) : CoreHeating.Of(solid, sizes, start, medium, food, null, Duration.FromHours(24));
        CoolingRule rule = CoolingRule.Of(code);
        ImmutableArray<(double Minute, Temperature At)> Until(ImmutableArray<CoreMoment> curve)
        {
            ImmutableArray<(double Minute, Temperature At)> history = CoreHeating.History(curve);
            int cold = Enumerable.Range(0, history.Length).FirstOrDefault(i => history[i].At <= (rule.Second ?? rule.First).To, -1);

            // ice water that warms again is no cold room: what is cold is taken out of it
            return HeatAround.Iced(p) && cold > 0 ? [.. history.Take(cold + 1)] : history;
        }

        if (HeatAround.Iced(p))
        {
            assumptions.Add(FormattableString.Invariant($"Taken out of the ice water into the cold when the middle is at {(rule.Second ?? rule.First).To.Celsius:0.#} °C."));
        }

        var stages = rule.Judge(Until(run.Cautious)).Zip(rule.Judge(Until(run.Best)), (slow, best) => new
        {
            from = slow.Stage.From.Celsius, to = slow.Stage.To.Celsius, limitHours = slow.Stage.Hours,
            hours = new { best = best.Hours is { } b ? (double?)HeatCommand.R(b) : null, cautious = slow.Hours is { } c ? (double?)HeatCommand.R(c) : null }, kept = slow.Kept,
        }).ToArray();
        bool kept = stages.All(s => s.kept);
        object document = new
        {
            schema = "coulisse/heat-cool/1", code, kept, stages, source = rule.Source, law = rule.Law,
            curve = run.Cautious.Select(c => new { minute = HeatCommand.R(c.Minute), core = HeatCommand.R(c.Core.Celsius), surface = HeatCommand.R(c.Surface.Celsius) }),
            assumptions,
            validity = "Conduction only, cooled on all faces (on a solid shelf --one-sided), no freezing; 0 to 120 °C.",
            caution = Findings.Caution,
        };
        string text = (kept ? "It cools inside the rule.\n" : "It does NOT cool inside the rule.\n")
            + string.Concat(stages.Select(s => $"{HeatCommand.F(s.from)} to {HeatCommand.F(s.to)} °C: {(s.hours.cautious is { } h ? HeatCommand.F(h) + " h" : "not within 24 h")} (cautious), {(s.hours.best is { } b ? HeatCommand.F(b) + " h" : "not within 24 h")} (best); limit {HeatCommand.F(s.limitHours)} h: {(s.kept ? "kept" : "not kept")}\n"))
            + rule.Source + "\n" + string.Join("\n", assumptions) + "\n" + Findings.Caution;
        return (document, text);
    }
}
