using Coulisse.Kitchen.Planning;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Views.Papers;

/// <summary>What to mind in a segment: heat and blades by the kit in use (common practice, no source), limits by the control points of what is shown.</summary>
internal static class RunSheetMind
{
    // Kit that stops when its segment is over; ovens, baths and rings stay on until they are needed no more.
    private static readonly string[] Stops = ["blender", "sealer"];

    public static string OnAndOff(PaperBundle bundle, RunSegment s, RunSegment? before)
    {
        string[] off = [.. (before?.Kit ?? []).Except(s.Kit).Where(k => Type(bundle, k) is { } t && Stops.Contains(t))];
        return string.Join("; ", new[] { s.Kit.IsEmpty ? "" : "on " + string.Join(", ", s.Kit), off.Length == 0 ? "" : "off " + string.Join(", ", off) }.Where(t => t.Length > 0));
    }

    public static string Of(PaperBundle bundle, RunSegment s)
    {
        string[] components = s.Component.Split(", ", StringSplitOptions.RemoveEmptyEntries);
        IEnumerable<ControlPoint> points = bundle.Findings.SelectMany(f => f.ControlPoints).Where(p => s.Component.Contains(p.Component, StringComparison.Ordinal) && p.Component.Length > 0 && p.Limit.Contains("middle", StringComparison.Ordinal));
        string[] all =
        [
            .. s.Kit.Select(k => Type(bundle, k)).OfType<string>().Distinct().Select(Hot).Where(h => h.Length > 0),
            Blade(s.Show) ? "blade: guard on" : "",
            .. points.Select(p => (components.Length > 1 ? p.Component + ": " : "") + p.Limit).Distinct(),
            s.StartSecond == 0 && bundle.Occasion is { Diets.IsEmpty: false } o ? "say who may not eat what: seats " + string.Join(", ", o.Diets.SelectMany(d => d.Seats).Order()) : "",
        ];
        return string.Join("; ", all.Where(t => t.Length > 0));
    }

    private static string Hot(string type) => type switch { "oven" => "hot oven", "bath" => "hot water", "hob" => "hot pan", "blender" => "hot jug: vent open, not over its mark", _ => "" };

    private static bool Blade(string show) => new[] { "slice", "cut", "mandoline", "stamp", "chop" }.Any(w => show.Split([' ', ',', ';', ':', '.']).Contains(w, StringComparer.OrdinalIgnoreCase));

    private static string? Type(PaperBundle bundle, string code) => bundle.Occasion?.Kit.FirstOrDefault(k => k.Code == code)?.Type;
}
