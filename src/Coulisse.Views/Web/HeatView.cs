using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Heat;
using Coulisse.Views.Charts;
using NodaTime;

namespace Coulisse.Views.Web;

/// <summary>The heat bench: a piece, a medium, what its middle does.</summary>
/// <param name="Form">What was asked, as typed.</param>
/// <param name="Says">The answer, one sentence a line.</param>
/// <param name="Charts">Curves with their tables.</param>
/// <param name="Faults">What was wrong with the question.</param>
public sealed record HeatView(HeatForm Form, ImmutableArray<string> Says, ImmutableArray<ChartView> Charts, ImmutableArray<string> Faults)
{
    /// <summary>More is asked of no food.</summary>
    private const double MostLogs = 20;

    /// <summary>Faces to choose from: key is W/(m²·K), empty for a stirred bath.</summary>
    public static IReadOnlyList<(string Key, string Word)> Faces { get; } = [("", "stirred bath"), ("100", "stirred ice water"), ("30", "blast chiller"), ("15", "fan fridge"), ("8", "still fridge"), ("25", "fan oven, dry face")];

    /// <summary>Shapes to choose from.</summary>
    public static IReadOnlyList<(string Key, string Word)> Shapes { get; } = [("slab", "flat piece"), ("cylinder", "cylinder"), ("sphere", "ball"), ("brick", "brick")];

    /// <summary>Lays an answer out.</summary>
    /// <param name="form">What was asked.</param>
    /// <param name="run">What the middle does.</param>
    /// <param name="until">Wanted in the middle, °C; null for none.</param>
    /// <param name="assumed">What was assumed.</param>
    /// <param name="culture">Culture of the figures.</param>
    public static HeatView From(HeatForm form, CoreHeating run, double? until, ImmutableArray<string> assumed, CultureInfo culture)
    {
        bool cools = run.Best[0].Core > run.Best[^1].Core;
        List<string> says = [];
        if (until is { } u)
        {
            says.Add(run.CautiousToTarget is null
                ? $"The middle never reaches {Figures.Celsius(u, culture)} in the cautious case."
                : $"{Figures.Celsius(u, culture)} in the middle after {Lasting(run.CautiousToTarget, culture)} in the cautious case, {Lasting(run.BestToTarget, culture)} at best, {Lasting(run.OffToTarget, culture)} with the medium 1 °C off and the piece 10 % thicker.");
        }

        if (cools)
        {
            run = Trimmed(run, form.Code);
        }

        List<ChartView> charts = [Curve(run, until, culture)];
        if (cools)
        {
            charts.Add(Cooling(form.Code, run, says, culture));
        }
        else
        {
            charts.AddRange(Kill(form, run, says, culture));
        }

        says.AddRange(assumed);
        says.Add(Findings.Caution);
        return new HeatView(form, [.. says], [.. charts], []);
    }

    // nothing is left to see once both stages are past and the middle is within a fifth of a kelvin of the medium
    private static CoreHeating Trimmed(CoreHeating run, string code)
    {
        CoolingRule rule = CoolingRule.Of(code);
        double hours = rule.First.Hours + (rule.Second?.Hours ?? 0);
        double last = (rule.Second ?? rule.First).To.Celsius;
        double end = Math.Max(hours * 90, run.Cautious.FirstOrDefault(c => c.Core.Celsius < last, run.Cautious[^1]).Minute * 1.3);
        return run with { Cautious = [.. run.Cautious.Where(c => c.Minute <= end)], Best = [.. run.Best.Where(c => c.Minute <= end)] };
    }

    private static string Lasting(Duration? d, CultureInfo culture) => d is { } x ? Figures.Lasting(Math.Ceiling(x.TotalMinutes) * 60, culture) : "never";

    private static ChartView Curve(CoreHeating run, double? until, CultureInfo culture) => new(
        "curve", "The middle and the face", "Middle in the cautious case and at best, and the middle of the nearest face; constant properties, one constant medium, no freezing, no wet face.",
        LineChart.Draw("Temperature of the middle", "minutes", "°C",
            [new("middle, cautious", [.. run.Cautious.Select(c => (c.Minute, c.Core.Celsius))]), new("middle, at best", [.. run.Best.Where(c => c.Minute <= run.Cautious[^1].Minute).Select(c => (c.Minute, c.Core.Celsius))]), new("face, cautious", [.. run.Cautious.Select(c => (c.Minute, c.Surface.Celsius))])],
            until is { } u ? [new("wanted " + Figures.Celsius(u, culture), u)] : [], []),
        ["Minute", "Middle, cautious, °C", "Face, cautious, °C"],
        [.. run.Cautious.Where((_, i) => i % 8 == 0).Select(c => ImmutableArray.Create(c.Minute.ToString("0.#", culture), c.Core.Celsius.ToString("0.0", culture), c.Surface.Celsius.ToString("0.0", culture)))]);

    /// <summary>The cooling curve against the stages of a code of practice.</summary>
    private static ChartView Cooling(string code, CoreHeating run, List<string> says, CultureInfo culture)
    {
        CoolingRule rule = CoolingRule.Of(code);
        ImmutableArray<(double Minute, Matter.Quantities.Temperature At)> history = CoreHeating.History(run.Cautious);
        (CoolingStage Stage, double? Hours, bool Kept)[] stages = [.. rule.Judge(history)];
        foreach ((CoolingStage stage, double? hours, bool kept) in stages)
        {
            says.Add($"{Figures.Celsius(stage.From.Celsius, culture)} to {Figures.Celsius(stage.To.Celsius, culture)} within {stage.Hours.ToString("0.##", culture)} h: {(hours is { } h ? h.ToString("0.0", culture) + " h in the cautious case" : "not reached in the time that was worked out")}, {(kept ? "kept" : "not kept")}. {(rule.Law ? "Law" : "Guidance")}: {rule.Source}.");
        }

        double begin = history.FirstOrDefault(p => p.At <= stages[0].Stage.From) is { Minute: > 0 } first ? first.Minute : 0;
        List<LineChart.Limit> marks = [];
        double at = begin;
        foreach ((CoolingStage stage, _, _) in stages)
        {
            at += stage.Hours * 60;
            marks.Add(new LineChart.Limit($"{stage.To.Celsius.ToString("0.#", culture)} °C by here", at / 60));
        }

        return new ChartView("cooling", "Cooling against the rule", $"The cautious middle against the stages of the code: it must be below each line before the upright mark. {rule.Source}",
            LineChart.Draw("Cooling of the middle against the rule", "hours", "°C", [new("middle, cautious", [.. history.Select(p => (p.Minute / 60, p.At.Celsius))])], [.. stages.Select(s => new LineChart.Limit(Figures.Celsius(s.Stage.To.Celsius, culture), s.Stage.To.Celsius))], marks),
            ["Stage", "Limit, h", "Cautious, h", "Kept"],
            [.. stages.Select(s => ImmutableArray.Create($"{s.Stage.From.Celsius.ToString("0.#", culture)} to {s.Stage.To.Celsius.ToString("0.#", culture)} °C", s.Stage.Hours.ToString("0.##", culture), s.Hours?.ToString("0.00", culture) ?? "not reached", s.Kept ? "yes" : "no"))]);
    }

    /// <summary>What the heating does to an organism, minute by minute.</summary>
    private static IEnumerable<ChartView> Kill(HeatForm form, CoreHeating run, List<string> says, CultureInfo culture)
    {
        if (Organism.All.FirstOrDefault(o => o.Id == form.Organism) is not { } o)
        {
            yield break;
        }

        ImmutableArray<(double Minute, Matter.Quantities.Temperature At)> best = CoreHeating.History(run.Best);
        ImmutableArray<(double Minute, Matter.Quantities.Temperature At)> slow = CoreHeating.History(run.Cautious);
        (double Minute, double Best, double Cautious)[] sums = [.. Enumerable.Range(2, slow.Length - 1).Select(n => (slow[n - 1].Minute, o.Log10(best[..n], slow[..n]).Best, o.Log10(best[..n], slow[..n]).Cautious))];
        says.Add(string.Create(culture, $"{o.Best.Organism} in {o.Best.Matrix}: {Math.Floor(sums[^1].Cautious * 10) / 10:0.0} log in the cautious case. Nothing is credited below {Figures.Celsius(o.Floor.Celsius, culture)}; above {Figures.Celsius(o.Ceiling.Celsius, culture)} the rate stays that of it. {o.Best.Source} ({o.Opened})."));
        double? wanted = double.TryParse(form.Logs.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double logs) && logs is > 0 and <= MostLogs ? logs : null;
        if (wanted is { } w)
        {
            double? at = sums.Where(s => s.Cautious >= w).Select(s => (double?)s.Minute).FirstOrDefault();
            says.Add(at is { } minute ? string.Create(culture, $"{w:0.##} log in the cautious case after {Math.Ceiling(minute):0} min.") : string.Create(culture, $"{w:0.##} log is not reached in the {Math.Floor(sums[^1].Minute):0} min that were worked out, in the cautious case."));
        }

        yield return new ChartView("kill", "Lethality", "Log reduction summed over the history of the middle; how much is enough is for the local code and your own plan to say.",
            LineChart.Draw("Log reduction at the middle", "minutes", "log", [new("cautious", [(0, 0), .. sums.Select(s => (s.Minute, s.Cautious))]), new("at best", [(0, 0), .. sums.TakeWhile(s => s.Best <= (sums[^1].Cautious * 2) + 2).Select(s => (s.Minute, s.Best))])],
                wanted is { } limit ? [new(string.Create(culture, $"wanted {limit:0.##} log"), limit)] : [], []),
            ["Minute", "Cautious, log", "At best, log"],
            [.. sums.Where((_, i) => i % 8 == 7).Select(s => ImmutableArray.Create(s.Minute.ToString("0.#", culture), s.Cautious.ToString("0.00", culture), s.Best.ToString("0.00", culture)))]);
    }
}

/// <summary>The fields of the heat bench, as typed.</summary>
public sealed record HeatForm(string Shape, string Size, string Start, string Medium, string Until, string Minutes, string Face, string Food, string Organism, string Code)
{
    /// <summary>Log reduction that is wanted, as typed; empty for none. How much is enough the local code and the kitchen's own plan say.</summary>
    public string Logs { get; init; } = "";

    /// <summary>An example to begin with.</summary>
    public static HeatForm Example { get; } = new("slab", "20", "5", "62", "60", "", "", "", "listeria-meat", "au") { Logs = "6" };
}
