using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Views.Papers;

/// <summary>The limit that holds for a piece of work and what is done when it is missed, beside the work itself: nobody looks for a rescue on another sheet while food is warm.</summary>
public static partial class TaskLimits
{
    private static readonly ImmutableArray<(string Name, Regex Form)> Limits =
    [
        ("limitCool", Cool()), ("limitCoreHold", CoreHold()), ("limitOnce", Once()), ("limitCore", Core()), ("limitHot", Hot()), ("limitFrozen", Frozen()),
    ];

    // What the safety review writes itself, word for word; a sentence that has changed is printed as it is, with the mark.
    private static readonly ImmutableArray<(string Name, string Text)> Rescues =
    [
        ("rescueCool", "Spread it thinner or stir it in ice water at once; past the stage, discard"), ("rescueCore", "Leave it in until it is there; if that cannot be, discard"),
        ("rescueHot", "Under two hours below the limit reheat or serve; past four discard"), ("rescueReheat", "Go on until it is there; never a second time"), ("rescueFrozen", "Count the hours again from when the middle is there"),
    ];

    /// <summary>Control points of the very step a task is of.</summary>
    public static ImmutableArray<ControlPoint> Of(PaperBundle bundle, PlannedTask task)
    {
        if (task.Line <= 0 || task.Kind is TaskKind.Preheat or TaskKind.Plate)
        {
            return [];
        }

        return [.. bundle.Findings.Take(bundle.Batches.Length).SelectMany((f, i) => f.ControlPoints.Where(p => p.Line == task.Line && Mine(bundle, i, p, task)))];
    }

    /// <summary>What is said under a piece of work: each control point of its step with its rescue; where only the card states in what time it must be cold, the rescue behind the card's own words.</summary>
    public static IEnumerable<string> Lines(PaperBundle bundle, PlannedTask task, BriefPhrases say)
    {
        ImmutableArray<ControlPoint> points = Of(bundle, task);
        return points.Length > 0 ? points.Select(p => Say(p, say)).Concat(points.Where(p => !p.WhenLow.IsEmpty).Select(p => Low(p, say))) : CoolsInTime(bundle, task) ? [$"{say["ifMissed"]}: {say["rescueCool"]}."] : [];
    }

    /// <summary>Limit and rescue in the words of a brief.</summary>
    public static string Say(ControlPoint point, BriefPhrases say)
        => $"{say["limit"]}: {LimitOf(point.Limit, say)}. {say["ifMissed"]}: {RescueOf(point.Action, say)}.";

    /// <summary>What to do when the bath stays low, with the minutes that the heat engine gives each degree.</summary>
    public static string Low(ControlPoint point, BriefPhrases say)
        => string.Join(' ', point.WhenLow.Select(l => l.Minutes is { } m ? say.Say("bathNeeds", l.Celsius.ToString("0.#", CultureInfo.InvariantCulture), m.ToString("0", CultureInfo.InvariantCulture)) : say.Say("bathNever", l.Celsius.ToString("0.#", CultureInfo.InvariantCulture))).Prepend(say["bathLow"]));

    private static bool CoolsInTime(PaperBundle bundle, PlannedTask task) => task.Line > 0 && task.Kind is TaskKind.Work or TaskKind.Moment && bundle.Batches
        .Where(b => task.Dish is { } name ? bundle.NameOf(b) == name : b.Components.Any(c => c.Weighed.Component.Name == task.Component))
        .SelectMany(b => b.Components).SelectMany(c => c.Steps).Select(s => s.Step)
        .Any(s => s.Span.Line == task.Line && s.Operations.Append(s.Operation).Any(o => o is "blast_chill" or "cool_rack" or "chill_ice" or "chill_fridge") && s.Times.Any(t => t.Kind == TimeKind.Limit && t.Bound != Bound.AtLeast) && s.Temperatures.Any(t => t.Bound == Bound.AtMost && t.Celsius <= 25));

    private static bool Mine(PaperBundle bundle, int dish, ControlPoint point, PlannedTask task)
        => task.Dish is { } name ? bundle.NameOf(bundle.Batches[dish]) == name : point.Component.Length > 0 && point.Component == task.Component;

    private static string LimitOf(string limit, BriefPhrases say)
    {
        string[] stages = limit.Split(", ");
        return stages.All(s => Cool().IsMatch(s)) ? string.Join("; ", stages.Select(s => Filled(s, say)!)) : Filled(limit, say) ?? Marked(limit, say);
    }

    private static string? Filled(string limit, BriefPhrases say)
        => Limits.Select(l => (l.Name, Match: l.Form.Match(limit))).FirstOrDefault(l => l.Match.Success) is { Match.Success: true } found
            ? string.Format(CultureInfo.InvariantCulture, say[found.Name], [.. found.Match.Groups.Values.Skip(1).Select(g => (object)g.Value)])
            : null;

    private static string RescueOf(string action, BriefPhrases say) => Rescues.FirstOrDefault(r => r.Text == action).Name is { } name ? say[name] : Marked(action, say);

    private static string Marked(string text, BriefPhrases say) => say.Language == "en" ? text : $"{say["untranslatedMark"]} {text}";

    [GeneratedRegex(@"^(\S+) to (\S+) °C in (\S+) h$")]
    private static partial Regex Cool();

    [GeneratedRegex(@"^(\S+) °C in the middle for (\S+) min$")]
    private static partial Regex CoreHold();

    [GeneratedRegex(@"^(\S+) °C in the middle, once$")]
    private static partial Regex Once();

    [GeneratedRegex(@"^(\S+) °C in the middle$")]
    private static partial Regex Core();

    [GeneratedRegex(@"^(\S+) °C or more$")]
    private static partial Regex Hot();

    [GeneratedRegex(@"^(\S+) °C for (\S+) h in all parts$")]
    private static partial Regex Frozen();
}
