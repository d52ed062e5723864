using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Plating;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Views.Web;

/// <summary>What the bench writes in the margins of a card, line by line.</summary>
public sealed record MarginsView
{
    /// <summary>Most questions asked at once; the rest wait behind a word that says how little they move.</summary>
    public const int Asked = 3;

    /// <summary>Title of the dish.</summary>
    public required string Title { get; init; }

    /// <summary>The sentence under the title: parts, weight, what it serves.</summary>
    public required string Summary { get; init; }

    /// <summary>What the weights are scaled to; empty when as written.</summary>
    public string ScaledFor { get; init; } = "";

    /// <summary>Factor as text; empty when as written.</summary>
    public string Factor { get; init; } = "";

    /// <summary>Lines that have something in a margin, in order.</summary>
    public ImmutableArray<MarginLine> Lines { get; init; } = [];

    /// <summary>What is said about the card as a whole.</summary>
    public ImmutableArray<RemarkView> Whole { get; init; } = [];

    /// <summary>How many questions wait; 0 when all are asked.</summary>
    public int Waiting { get; init; }

    /// <summary>What is said of the questions that wait.</summary>
    public string WaitingSays { get; init; } = "";

    /// <summary>The caution that goes with every verdict.</summary>
    public string Caution { get; init; } = "";

    /// <summary>Lines that are headings, for the setting of the text.</summary>
    public ImmutableArray<int> Headings { get; init; } = [];

    /// <summary>Lines on which a step begins, so that it can be marked as shown.</summary>
    public ImmutableArray<int> Steps { get; init; } = [];

    /// <summary>Steps that are shown live.</summary>
    public ImmutableArray<ShownStep> Shown { get; init; } = [];

    /// <summary>Words of marked steps that stand nowhere in the text any more.</summary>
    public ImmutableArray<string> Loose { get; init; } = [];

    /// <summary>Faults of what was asked for ("for 0 plates"), in words.</summary>
    public ImmutableArray<string> Faults { get; init; } = [];

    /// <summary>Puts the margins together; questions in <paramref name="left"/> were left as they are and are not asked again.</summary>
    public static MarginsView From(WeighedDish weighed, Batch? batch, Findings? findings, CultureInfo culture, ImmutableArray<PartBalance> balance = default, IReadOnlyCollection<string>? left = null)
    {
        Dish dish = weighed.Dish;
        Dictionary<int, (List<WeightMark> Weights, List<RemarkView> Remarks)> lines = [];
        (List<WeightMark> Weights, List<RemarkView> Remarks) At(int line)
        {
            if (!lines.TryGetValue(line, out (List<WeightMark>, List<RemarkView>) both))
            {
                lines[line] = both = ([], []);
            }

            return both;
        }

        Dictionary<WeighedLine, BatchLine> scaled = new(ReferenceEqualityComparer.Instance);
        foreach (BatchLine l in batch?.Components.SelectMany(c => c.Lines) ?? [])
        {
            scaled[l.Weighed] = l;
        }

        foreach (WeighedComponent component in weighed.Components)
        {
            foreach (WeighedLine line in component.Lines.Where(l => l.Source.Kind == LineKind.Ingredient))
            {
                At(line.Source.Span.Line).Weights.Add(Weight(line, scaled.GetValueOrDefault(line), culture));
            }
        }

        foreach (Finding f in findings?.All ?? [])
        {
            At(f.Line).Remarks.Add(RemarkView.From(f));
        }

        // one question a line: what the reader asks there often settles the weight, too; if not, the weight is asked then
        Doubt[] read = [.. dish.Doubts.Where(d => left?.Contains(d.Question) != true)];
        ImmutableArray<Doubt> doubts = [.. read.Concat(weighed.Doubts.Where(d => left?.Contains(d.Question) != true && (d.Line == 0 || !read.Any(r => r.Line == d.Line)))).OrderByDescending(d => d.Weight).ThenBy(d => d.Line)];
        for (int i = 0; i < doubts.Length; i++)
        {
            At(doubts[i].Line).Remarks.Add(RemarkView.From(doubts[i], waits: i >= Asked));
        }

        foreach (Remark r in dish.Remarks)
        {
            At(r.Line).Remarks.Add(RemarkView.From(r));
        }

        foreach (Note n in dish.Unread.Where(n => !doubts.Any(d => d.Line == n.Span.Line)))
        {
            At(n.Span.Line).Remarks.Add(RemarkView.Kept());
        }

        foreach (PartBalance p in balance.IsDefault ? [] : balance.Where(p => p.Row.Verdict != BalanceVerdict.Even))
        {
            At(dish.Components.First(c => c.Name.Equals(p.Row.Component, StringComparison.OrdinalIgnoreCase)).Span.Line).Remarks.Add(RemarkView.From(p, culture));
        }

        int waiting = Math.Max(0, doubts.Length - Asked);
        return new MarginsView
        {
            Title = dish.Title,
            Summary = Sentence(weighed, culture),
            ScaledFor = batch?.For ?? "",
            Factor = batch is null ? "" : "×" + batch.Factor.ToString("0.###", culture),
            Lines = [.. lines.Where(l => l.Key > 0).OrderBy(l => l.Key).Select(l => new MarginLine(l.Key, [.. l.Value.Weights], [.. l.Value.Remarks.OrderBy(r => r.Rank)]))],
            Whole = lines.TryGetValue(0, out (List<WeightMark>, List<RemarkView> Remarks) whole) ? [.. whole.Remarks.OrderBy(r => r.Rank)] : [],
            Waiting = waiting,
            WaitingSays = waiting == 0 ? "" : string.Create(culture, $"{waiting} more {(waiting == 1 ? "question moves" : "questions move")} less than these."),
            Caution = findings is { All.IsEmpty: false } ? Findings.Caution : "",
            Steps = [.. dish.Components.SelectMany(c => c.Steps).Select(s => s.Span.Line).Distinct()],
            Headings = [.. dish.Components.Where(c => c.Name.Length > 0).Select(c => c.Span.Line)],
        };
    }

    private static WeightMark Weight(WeighedLine line, BatchLine? scaled, CultureInfo culture)
    {
        bool known = line.Grade != WeightGrade.Unknown;
        return new WeightMark(
            line.Food.Food,
            known ? Figures.Grams(line.Grams, culture) : "? g",
            known && scaled is not null ? Figures.Grams(scaled.Rounded, culture) : null,
            known && line.High > line.Low ? Figures.Range(line.Low, line.High, culture) : null,
            line.Grade switch { WeightGrade.Weighed => "weighed", WeightGrade.Converted => "converted", WeightGrade.Estimated => "estimated", _ => "unknown" },
            WorkingView.From(line.Why),
            scaled is { } s && Math.Abs(s.RoundingPercent) >= 0.05 ? "rounded by " + s.RoundingPercent.ToString("+0.0;\u22120.0", culture) + " %" : null);
    }

    private static string Sentence(WeighedDish weighed, CultureInfo culture)
    {
        int parts = weighed.Components.Count(c => !c.Component.IsAssembly);
        int lines = weighed.Components.Sum(c => c.Lines.Length);
        int unknown = weighed.Components.Sum(c => c.Lines.Count(l => l.Grade == WeightGrade.Unknown));
        double grams = weighed.Components.Sum(c => c.Grams);
        string weighedWords = unknown == 0 ? "" : string.Create(culture, $", {unknown} of them without a weight");
        return string.Create(culture, $"{parts} {(parts == 1 ? "component" : "components")}, {lines} {(lines == 1 ? "ingredient" : "ingredients")}{weighedWords}; {Figures.Grams(grams, culture)} in all.");
    }
}

/// <summary>A step that is shown live.</summary>
/// <param name="Line">Line it begins on.</param>
/// <param name="How">full, begin, finish or tell.</param>
public sealed record ShownStep(int Line, string How);

/// <summary>What stands beside one line.</summary>
/// <param name="Line">Line, from 1.</param>
/// <param name="Weights">Left margin.</param>
/// <param name="Remarks">Right margin.</param>
public sealed record MarginLine(int Line, ImmutableArray<WeightMark> Weights, ImmutableArray<RemarkView> Remarks);

/// <summary>A weight in the left margin.</summary>
/// <param name="Food">Food as written.</param>
/// <param name="Grams">Grams as the card stands.</param>
/// <param name="Scaled">Grams scaled and rounded to the scale; null when as written.</param>
/// <param name="Range">Low to high; null when exact.</param>
/// <param name="Grade">weighed, converted, estimated, unknown: each is set differently, so that assumed never looks like known.</param>
/// <param name="Working">Where it came from.</param>
/// <param name="Rounding">What rounding to the scale did; null when nothing worth saying.</param>
public sealed record WeightMark(string Food, string Grams, string? Scaled, string? Range, string Grade, WorkingView Working, string? Rounding);

/// <summary>A remark in the right margin.</summary>
/// <param name="Kind">"stop", "warn", "note", "question", "remark", "kept".</param>
/// <param name="What">One sentence.</param>
public sealed record RemarkView(string Kind, string What)
{
    /// <summary>Word that stands before it, so that no colour carries meaning alone.</summary>
    public string Word { get; init; } = "";

    /// <summary>Figure against limit ("79.7 °C against 80 °C, short by 0.3 K").</summary>
    public string Figures { get; init; } = "";

    /// <summary>What would make it right.</summary>
    public string Remedy { get; init; } = "";

    /// <summary>Published source.</summary>
    public string Source { get; init; } = "";

    /// <summary>Stable code.</summary>
    public string Code { get; init; } = "";

    /// <summary>Readings to choose from.</summary>
    public ImmutableArray<CandidateView> Candidates { get; init; } = [];

    /// <summary>The words an answer takes the place of; empty when it is a sentence about the whole card.</summary>
    public string Asked { get; init; } = "";

    /// <summary>What the answer moves.</summary>
    public string Moves { get; init; } = "";

    /// <summary>True for a question that moves too little to be asked at once.</summary>
    public bool Waits { get; init; }

    /// <summary>How it came about.</summary>
    public WorkingView? Working { get; init; }

    /// <summary>Order on a line: gravest first.</summary>
    public int Rank => Kind switch { "stop" => 0, "warn" => 1, "question" => 2, "remark" => 3, "kept" => 4, _ => 5 };

    /// <summary>A safety finding.</summary>
    public static RemarkView From(Finding f) => new(f.Severity switch { Severity.Stop => "stop", Severity.Warn => "warn", _ => "note" }, f.What)
    {
        Word = f.Severity switch { Severity.Stop => "Stop", Severity.Warn => "Check", _ => "Note" },
        Figures = ToldFigures.Of(f),
        Remedy = f.Remedy,
        Source = f.Source,
        Code = f.Rule,
        Working = f.Working is null ? null : WorkingView.From(f.Working),
    };

    /// <summary>A part that does not come out even for the plates.</summary>
    public static RemarkView From(PartBalance p, CultureInfo culture)
    {
        bool lacks = p.Row.Verdict == BalanceVerdict.Short;

        // what was learnt has a spread: short is judged by the leanest run, and said so
        double made = lacks ? p.Row.MadeLeast ?? p.Row.Made : p.Row.Made;
        double off = Math.Abs(made - p.Row.Needed);
        string learnt = p.Row.Learnt.Length > 0 ? " Made: " + p.Row.Learnt + "." : "";
        return new("remark", string.Create(culture, $"{made:#,0.#} {p.Units} made{(lacks && p.Row.MadeLeast is not null ? " by the leanest run" : "")}, the plates take {p.Row.Needed:#,0.#}: {off:#,0.#} {p.Units} {(lacks ? "short" : "over")} ({(p.Row.Needed > 0 ? off / p.Row.Needed * 100 : 0):0.0}\u202F%).{learnt}"))
        {
            Word = lacks ? "Short" : "Over",
            Remedy = char.ToUpperInvariant(p.Remedy[0]) + p.Remedy[1..] + ".",
        };
    }

    /// <summary>A question of the reader.</summary>
    public static RemarkView From(Doubt d, bool waits) => new("question", d.Question)
    {
        Word = "Which",
        Moves = d.Moves,
        Candidates = [.. d.Candidates.Select(c => new CandidateView(c.Text, c.Plain))],
        Asked = d.Asked ?? "",
        Waits = waits,
    };

    /// <summary>Something the card says against itself.</summary>
    public static RemarkView From(Remark r) => new("remark", r.What) { Word = "Differs" };

    /// <summary>A line that was not understood.</summary>
    public static RemarkView Kept() => new("kept", "Not understood; kept as written on every paper.") { Word = "Kept" };
}

/// <summary>A reading to choose.</summary>
/// <param name="Text">What it would mean.</param>
/// <param name="Plain">What is written into the card when it is chosen.</param>
public sealed record CandidateView(string Text, string Plain);
