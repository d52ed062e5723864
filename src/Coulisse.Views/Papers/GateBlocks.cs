using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Web;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>For whoever keeps the time: when each gate is, a place to write when it came, and what is left out when it came late.</summary>
internal static class GateBlocks
{
    /// <summary>Whose work it is to keep the time: somebody whose role says so; else the first beside the presenter, so that it is somebody's.</summary>
    public static bool KeepsTime(PaperBundle bundle, Plan plan, string name)
    {
        ImmutableArray<Person> people = bundle.Occasion?.People ?? [];
        Person[] said = [.. people.Where(p => SaysSo(p.Role))];
        return said.Length > 0 ? said.Any(p => p.Name == name) : RunSheetPaper.Names(bundle, plan).FirstOrDefault(n => !RunSheetPaper.Presents(plan, n)) == name;
    }

    /// <summary>The gates, then what may be left out; nothing when the slot has neither.</summary>
    public static IEnumerable<Block> Of(Plan plan, BriefPhrases say)
    {
        RunSegment[] gates = [.. plan.RunSheet.Where(s => s.Gate)];
        if (gates.Length == 0)
        {
            yield break;
        }

        yield return new HeadingBlock(1, say["gates"]);
        yield return new ParagraphBlock(say["gateWhat"]);
        yield return new TableBlock([new(say["inTheSlotAt"], Side.Right, Strong: true), new(say["from"], Side.Right), new(say["segment"]), new(say["came"], Pen: 25)],
            [.. gates.Select(s => new PaperRow([Figures.Clock(s.StartSecond), Days.Hour((plan.SlotStart + Period.FromSeconds(s.StartSecond)).TimeOfDay), Named(s), PaperCell.Blank]))]);
        (int Late, RunSegment Segment)[] cuts = Cuts(plan);
        if (cuts.Length > 0)
        {
            yield return new TableBlock([new(say["lateUpTo"], Side.Right, Strong: true), new(say["leaveOut"], Side.Right), new(say["segment"])],
                [.. cuts.Select(c => PaperRow.Of(Figures.Clock(c.Late), Figures.Clock(c.Segment.DroppableSeconds), Named(c.Segment)))]) { Together = true };
        }
    }

    /// <summary>Segments that may lose seconds in the order in which they do, each with the lateness it makes good together with those before it.</summary>
    public static (int Late, RunSegment Segment)[] Cuts(Plan plan)
    {
        int sum = 0;
        return [.. plan.RunSheet.Where(s => s.DroppableSeconds > 0).OrderBy(s => s.DropRank == 0 ? int.MaxValue : s.DropRank).Select(s => (sum += s.DroppableSeconds, s))];
    }

    private static bool SaysSo(string role) => new[] { "keeps the time", "keeps time", "time-keeper", "timekeeper", "clock" }.Any(w => role.Contains(w, StringComparison.OrdinalIgnoreCase));

    private static string Named(RunSegment s) => s.Number.ToString(CultureInfo.InvariantCulture) + (s.Component.Length > 0 ? ". " + s.Component : "");
}
