using System.Collections.Immutable;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Web;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>The slot by minute and second: what is shown, what each pair of hands does, twins, gates, seconds that may go.</summary>
public static class RunSheetPaper
{
    public const string Kind = "run-sheet";

    public static Paper? Of(PaperBundle bundle)
    {
        if (bundle.Plan is not { RunSheet.IsEmpty: false } plan)
        {
            return null;
        }

        string[] people = Names(bundle, plan);
        ImmutableArray<PaperColumn> columns =
        [
            new(""), new("Clock", Side.Right), new("From", Side.Right, Strong: true), new("Length", Side.Right), new("To", Side.Right), new("Shown"),
            .. people.Select(p => new PaperColumn(Presents(plan, p) ? p + " says, does" : p)), new("Kit"), new("Twins in"), new("Mind"), new("Camera, mirror", Pen: 15), new("May go", Side.Right), new("Real", Pen: 13),
        ];
        ImmutableArray<PaperRow> rows = [.. plan.RunSheet.Select((s, i) => Row(bundle, s, i > 0 ? plan.RunSheet[i - 1] : null, plan, people))];
        int total = plan.RunSheet.Sum(s => s.Seconds);
        int drops = plan.RunSheet.Sum(s => s.DroppableSeconds);
        string[] sums = new string[columns.Length];
        Array.Fill(sums, "");
        (sums[3], sums[5], sums[^2]) = (Figures.Clock(total), "the whole slot", drops > 0 ? Figures.Clock(drops) : "");
        List<Block> blocks =
        [
            new FactsBlock(
            [
                new("Starts", Days.Moment(plan.SlotStart, bundle.Culture)),
                new("Ends", Days.Until(plan.SlotStart + Period.FromSeconds(total), plan.SlotStart.Date, bundle.Culture)),
                new("Length", Figures.Clock(total)),
                new("Place", bundle.Occasion?.SlotPlace is { Length: > 0 } place ? place : "as booked"),
            ]),
        ];
        blocks.AddRange(bundle.Warnings(all: true));
        if (total != (int)plan.SlotLength.TotalSeconds)
        {
            blocks.Add(new CalloutBlock("The segments do not fill the slot", $"They sum to {Figures.Clock(total)}; the slot is {Figures.Clock((int)plan.SlotLength.TotalSeconds)}."));
        }

        blocks.Add(new TableBlock(columns, rows.Add(PaperRow.Total(sums))));
        blocks.AddRange(Marks(bundle, plan));
        blocks.AddRange(Gates(plan));
        if (!plan.Fallbacks.IsEmpty)
        {
            blocks.Add(new HeadingBlock(1, "If it goes otherwise"));
            blocks.Add(new ListBlock([.. plan.Fallbacks.Select(f => new ListEntry("–", f))]));
        }

        return bundle.Sheet(Kind, "Run sheet", [.. blocks]) with { Landscape = true, TextSize = 9 };
    }

    /// <summary>People of the run sheet in the occasion's order, the others behind by name.</summary>
    internal static string[] Names(PaperBundle bundle, Plan plan)
    {
        string[] order = bundle.Occasion is { } o ? [.. o.People.Select(p => p.Name)] : [];
        return [.. plan.RunSheet.SelectMany(s => s.Who.Keys).Distinct().OrderBy(n => Array.IndexOf(order, n) is >= 0 and var i ? i : int.MaxValue).ThenBy(n => n, StringComparer.Ordinal)];
    }

    private static bool Presents(Plan plan, string person) => plan.RunSheet.All(s => s.Who.GetValueOrDefault(person) is { } does && (does.StartsWith("shows", StringComparison.Ordinal) || does.StartsWith("speaks", StringComparison.Ordinal)));

    private static PaperRow Row(PaperBundle bundle, RunSegment s, RunSegment? before, Plan plan, string[] people) => new(
    [
        new PaperCell(s.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), true),
        Days.Hour((plan.SlotStart + Period.FromSeconds(s.StartSecond)).TimeOfDay),
        (s.Gate ? "GATE " : "") + Figures.Clock(s.StartSecond),
        Figures.Clock(s.Seconds),
        Figures.Clock(s.StartSecond + s.Seconds),
        new PaperCell(s.Show) { Lead = s.Silence ? "NO TALKING" : "" },
        .. people.Select(p => (PaperCell)(s.Who.GetValueOrDefault(p) ?? "–")),
        RunSheetMind.OnAndOff(bundle, s, before),
        string.Join(" ", s.Twins.Select(Number)),
        RunSheetMind.Of(bundle, s),
        PaperCell.Blank,
        s.DroppableSeconds > 0 ? Figures.Clock(s.DroppableSeconds) + (s.DropRank > 0 ? $" ({Ordinal(s.DropRank)})" : "") : "",
        PaperCell.Blank,
    ]);

    // Whoever has never stood here reads what a mark means without asking.
    private static IEnumerable<Block> Marks(PaperBundle bundle, Plan plan)
    {
        HashSet<string> used = [.. plan.RunSheet.SelectMany(s => s.Kit), .. plan.RunSheet.SelectMany(s => s.Who.Values).SelectMany(w => w.Split(' ')), .. plan.Twins.Select(t => t.Place)];
        string[] marks = [.. bundle.Occasion?.Kit.Where(k => k.Code.Length > 0 && used.Contains(k.Code)).Select(k => $"{k.Code}: {k.What.Split([';', ','])[0]} ({k.Place})") ?? []];
        return marks.Length == 0 ? [] : [new ParagraphBlock(string.Join("; ", marks) + ". “May go” is what may be left out when it runs late, in the order in brackets. № is a twin of the swap-out list.", Small: true)];
    }

    /// <summary>A twin's number as it is written on its container ("No. 7").</summary>
    internal static string Number(int n) => "№" + n.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static string Ordinal(int rank) => rank switch { 1 => "first", 2 => "second", 3 => "third", _ => Whole(rank) + "th" };

    private static string Whole(int n) => n.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static IEnumerable<Block> Gates(Plan plan)
    {
        RunSegment[] gates = [.. plan.RunSheet.Where(s => s.Gate)];
        RunSegment[] drops = [.. plan.RunSheet.Where(s => s.DroppableSeconds > 0).OrderBy(s => s.DropRank == 0 ? int.MaxValue : s.DropRank)];
        if (gates.Length == 0 && drops.Length == 0)
        {
            yield break;
        }

        string at = gates.Length == 0 ? "" : "At " + string.Join(", ", gates.Select(s => $"{Figures.Clock(s.StartSecond)} segment {Whole(s.Number)} begins")) + ". ";
        int sum = 0;
        string late = drops.Length == 0 ? "" : "If late: " + string.Join("; ", drops.Select(s => $"up to {Figures.Clock(sum += s.DroppableSeconds)} behind, cut {Figures.Clock(s.DroppableSeconds)} in segment {Whole(s.Number)}")) + ".";
        yield return new CalloutBlock("For whoever keeps the time", at + late);
    }
}
