using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Web;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>The slot by minute and second: what is shown, what each pair of hands does, twins, gates, seconds that may go.</summary>
public static partial class RunSheetPaper
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
            new(""), new("Begins", Side.Right), new("Ends", Side.Right), new("Shown"), new("Who does what"), new("Kit, twins"), new("Watch out"), new("May be cut", Side.Right), new("Camera, mirror", Pen: 15), new("Began", Pen: 14),
        ];
        ImmutableArray<PaperRow> rows = [.. plan.RunSheet.Select((s, i) => Row(bundle, s, i > 0 ? plan.RunSheet[i - 1] : null, plan, people))];
        int total = plan.RunSheet.Sum(s => s.Seconds);
        int drops = plan.RunSheet.Sum(s => s.DroppableSeconds);
        string[] sums = new string[columns.Length];
        Array.Fill(sums, "");
        (sums[2], sums[3], sums[7]) = (Figures.Clock(total), "the whole slot", drops > 0 ? Figures.Clock(drops) : "");
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

        blocks.AddRange(Gates(bundle, plan));
        blocks.Add(new TableBlock(columns, rows.Add(PaperRow.Total(sums))));
        blocks.AddRange(Marks(bundle, plan));
        if (!plan.Fallbacks.IsEmpty)
        {
            blocks.Add(new HeadingBlock(1, "If it goes otherwise"));
            blocks.Add(new ListBlock([.. plan.Fallbacks.Select(f => new ListEntry("–", f))]));
        }

        return bundle.Sheet(Kind, "Run sheet", [.. blocks]) with { Landscape = true, TextSize = 11.5 };
    }

    /// <summary>People of the run sheet in the occasion's order, the others behind by name.</summary>
    internal static string[] Names(PaperBundle bundle, Plan plan)
    {
        string[] order = bundle.Occasion is { } o ? [.. o.People.Select(p => p.Name)] : [];
        return [.. plan.RunSheet.SelectMany(s => s.Who.Keys).Distinct().OrderBy(n => Array.IndexOf(order, n) is >= 0 and var i ? i : int.MaxValue).ThenBy(n => n, StringComparer.Ordinal)];
    }

    internal static bool Presents(Plan plan, string person) => plan.RunSheet.All(s => s.Who.GetValueOrDefault(person) is { } does && (does.StartsWith("shows", StringComparison.Ordinal) || does.StartsWith("speaks", StringComparison.Ordinal)));

    private static PaperRow Row(PaperBundle bundle, RunSegment s, RunSegment? before, Plan plan, string[] people) => new(
    [
        new PaperCell(Whole(s.Number), true),
        At(plan, s.StartSecond, s.Gate ? "GATE " : "", ""),
        At(plan, s.StartSecond + s.Seconds, "", $"\n{Figures.Clock(s.Seconds)} long"),
        new PaperCell(s.Show) { Lead = s.Silence ? "NO TALKING" : "" },
        string.Join("\n", Does(s, people).Select(d => TwinWord().Replace(d, "№"))),
        string.Join("\n", new[] { RunSheetMind.OnAndOff(bundle, s, before), string.Join(" ", s.Twins.Select(Number)) }.Where(t => t.Length > 0)),
        RunSheetMind.Of(bundle, s),
        s.DroppableSeconds > 0 ? Figures.Clock(s.DroppableSeconds) + (s.DropRank > 0 ? $" ({Ordinal(s.DropRank)})" : "") : "",
        PaperCell.Blank,
        PaperCell.Blank,
    ]);

    // What two do alike is said once, with both names; what one of them does besides stands on a line of its own.
    private static IEnumerable<string> Does(RunSegment s, string[] people)
    {
        string[] busy = [.. people.Where(s.Who.ContainsKey)];
        foreach (string p in busy)
        {
            string does = s.Who[p];
            string? shared = busy.Where(q => q != p).Select(q => s.Who[q]).FirstOrDefault(t => does.EndsWith("; " + t, StringComparison.Ordinal));
            string own = shared is null ? does : does[..^(shared.Length + 2)];
            string[] alike = [.. busy.Where(q => q != p && (s.Who[q] == own || s.Who[q].EndsWith("; " + own, StringComparison.Ordinal)))];
            if (!alike.Any(q => s.Who[q] == own && Array.IndexOf(busy, q) < Array.IndexOf(busy, p)))
            {
                yield return $"{string.Join(", ", busy.Where(q => q == p || alike.Contains(q)))}: {own}";
            }
        }
    }

    // The second of the slot in bold; the hour of the day under it.
    private static PaperCell At(Plan plan, int second, string gate, string more)
        => new(Days.Hour((plan.SlotStart + Period.FromSeconds(second)).TimeOfDay) + more) { Lead = gate + Figures.Clock(second) };

    // Whoever has never stood here reads what a mark means without asking.
    private static IEnumerable<Block> Marks(PaperBundle bundle, Plan plan)
    {
        HashSet<string> used = [.. plan.RunSheet.SelectMany(s => s.Kit), .. plan.RunSheet.SelectMany(s => s.Who.Values).SelectMany(w => w.Split(' ')), .. plan.Twins.Select(t => t.Place)];
        string[] marks = [.. bundle.Occasion?.Kit.Where(k => k.Code.Length > 0 && used.Contains(k.Code)).Select(k => $"{k.Code}: {k.What.Split([';', ','])[0]} ({k.Place})") ?? []];
        return marks.Length == 0 ? [] : [new ParagraphBlock(string.Join("; ", marks) + ". “May be cut” is what may be left out when it runs late, in the order in brackets. № is a twin, by its number in the list of twins.", Small: true)];
    }

    /// <summary>A twin's number as it is written on its container ("No. 7").</summary>
    internal static string Number(int n) => "№" + n.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static string Ordinal(int rank) => rank switch { 1 => "first", 2 => "second", 3 => "third", _ => Whole(rank) + "th" };

    private static string Whole(int n) => n.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static IEnumerable<Block> Gates(PaperBundle bundle, Plan plan)
    {
        RunSegment[] gates = [.. plan.RunSheet.Where(s => s.Gate)];
        if (gates.Length == 0)
        {
            yield break;
        }

        string[] keepers = [.. Names(bundle, plan).Where(n => GateBlocks.KeepsTime(bundle, plan, n))];
        yield return new CalloutBlock(keepers.Length == 0 ? "For whoever keeps the time" : $"For {string.Join(", ", keepers)}, who keeps the time",
            "GATE: that segment must begin by then. If it begins later, that is how late we are: cut what may still be cut, in this order (segment and what it gives), until it is made good.\n"
            + string.Join("\n", gates.Select(s => $"{Figures.Clock(s.StartSecond)} segment {Whole(s.Number)}." + (GateBlocks.Cuts(plan, s) is { Length: > 0 } cuts ? $" Late: cut {cuts}." : ""))));
    }

    [GeneratedRegex(@"\btwin (?=\d)")]
    private static partial Regex TwinWord();
}
