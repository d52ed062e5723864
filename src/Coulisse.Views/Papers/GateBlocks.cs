using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Web;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>For whoever keeps the time: when each gate is, what may still be left out from there on when it came late, and a place to write when it came.</summary>
internal static class GateBlocks
{
    /// <summary>Whose work it is to keep the time: somebody whose role says so; else the first beside the presenter, so that it is somebody's.</summary>
    public static bool KeepsTime(PaperBundle bundle, Plan plan, string name)
    {
        ImmutableArray<Person> people = bundle.Occasion?.People ?? [];
        Person[] said = [.. people.Where(p => SaysSo(p.Role))];
        return said.Length > 0 ? said.Any(p => p.Name == name) : RunSheetPaper.Names(bundle, plan).FirstOrDefault(n => !RunSheetPaper.Presents(plan, n)) == name;
    }

    /// <summary>The gates; nothing when the slot has none.</summary>
    public static IEnumerable<Block> Of(Plan plan, BriefPhrases say)
    {
        RunSegment[] gates = [.. plan.RunSheet.Where(s => s.Gate)];
        if (gates.Length == 0)
        {
            yield break;
        }

        yield return new HeadingBlock(1, say["gates"]);
        yield return new ParagraphBlock(say["gateWhat"]);
        yield return new TableBlock([new(say["inTheSlotAt"], Side.Right, Strong: true), new(say["from"], Side.Right), new(say["segment"]), new(say["leaveOut"]), new(say["came"], Pen: 22)],
            [.. gates.Select(s => new PaperRow([Figures.Clock(s.StartSecond), Days.Hour((plan.SlotStart + Period.FromSeconds(s.StartSecond)).TimeOfDay), Named(s), Cuts(plan, s), PaperCell.Blank]))]) { Together = true };
    }

    /// <summary>What may still be left out from a gate on, in order: "7 (1:30); 9 (0:45)". What lies before it is over and makes nothing good.</summary>
    public static string Cuts(Plan plan, RunSegment gate) => string.Join("; ", plan.RunSheet.Where(s => s.Number >= gate.Number && s.DroppableSeconds > 0).OrderBy(s => s.DropRank == 0 ? int.MaxValue : s.DropRank)
        .Select(s => $"{s.Number.ToString(CultureInfo.InvariantCulture)}\u00A0({Figures.Clock(s.DroppableSeconds)})"));

    private static bool SaysSo(string role) => new[] { "keeps the time", "keeps time", "time-keeper", "timekeeper", "clock" }.Any(w => role.Contains(w, StringComparison.OrdinalIgnoreCase));

    private static string Named(RunSegment s) => s.Number.ToString(CultureInfo.InvariantCulture) + (s.Component.Length > 0 ? ". " + s.Component : "");
}
