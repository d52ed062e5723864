using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Web;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>Labels for containers: one for each batch of each part, and one for each twin. They go on the body, front and back; a lid is off when it matters.</summary>
public static class LabelPaper
{
    public const string Kind = "labels";

    public static Paper? Of(PaperBundle bundle)
    {
        List<Block> labels = [];
        foreach (Batch batch in bundle.Batches)
        {
            WeighedDish whole = bundle.WholeOf(batch);
            AllergenSheet allergens = Allergens.Of(whole, AllergenNames.RegimeOf(bundle.Code));
            for (int i = 0; i < batch.Components.Length; i++)
            {
                BatchComponent c = batch.Components[i];
                if (!c.Lines.IsEmpty)
                {
                    labels.AddRange(Enumerable.Range(1, Math.Max(1, c.Batches)).Select(n => Part(bundle, batch, whole, c, n, allergens.Parts[i].Lines)));
                }
            }
        }

        labels.AddRange(bundle.Plan?.Twins.OrderBy(t => t.Number).Select(t => Twin(bundle, t)) ?? []);
        return labels.Count == 0 ? null : bundle.Sheet(Kind, "Container labels", [.. labels]);
    }

    /// <summary>Most letters of a part's name in a batch mark.</summary>
    internal const int MarkLetters = 24;

    /// <summary>Batch mark: day of making, part, number of the batch; the day stays open when no plan says it.</summary>
    internal static string Mark(PaperBundle bundle, Batch batch, BatchComponent c, int n)
    {
        string day = Made.Of(bundle, batch, c.Weighed.Component.Name) is { } made ? made.When.ToString("yyMMdd", CultureInfo.InvariantCulture) + "-" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{day}{Short(c, batch)}-{n}");
    }

    /// <summary>A part in a batch mark: its code, else its name cut at whole words.</summary>
    internal static string Short(BatchComponent c, Batch batch) => c.Weighed.Component.Code is { Length: > 0 } code ? code : Slug.Short(Slug.Of(CardPaper.Name(c, batch)), MarkLetters);

    private static LabelBlock Part(PaperBundle bundle, Batch batch, WeighedDish whole, BatchComponent c, int n, ImmutableArray<AllergenLine> allergens)
    {
        CultureInfo culture = bundle.Culture;
        var made = Made.Of(bundle, batch, c.Weighed.Component.Name);
        UseBy use = UseBy.Of(whole, c.Weighed, name => Made.Of(bundle, batch, name)?.When);
        string until = Until(use, culture);
        string mark = Mark(bundle, batch, c, n);
        List<Fact> facts =
        [
            new("Made", made is { } m ? Days.Moment(m.When, culture) : ""),
            new("Use by", until),
            new("Batch", mark + (c.Batches > 1 ? string.Create(CultureInfo.InvariantCulture, $" ({n} of {c.Batches})") : "")),
            new("By", made is { Who.IsEmpty: false } w ? string.Join(", ", w.Who) : ""),
            new("Weighed in", Figures.Grams(CardPaper.Total(c) / Math.Max(1, c.Batches), culture)),
        ];
        string keeps = Keeps.Words([c.Weighed.Component]);
        string[] texts = [AllergenWords.Sentence(allergens), keeps.Length > 0 ? "Keep: " + keeps : "Keep: the card does not say.", use.Because.Length > 0 && use.Moment is not null ? Capital(use.Because) + "." : "", "Of " + bundle.TitleOf(batch)];
        return new LabelBlock(CardPaper.Name(c, batch), [.. facts], [.. texts.Where(t => t.Length > 0)], $"{mark}|{CardPaper.Name(c, batch)}|made {Iso(made?.When)}|use by {Iso(use.Moment)}");
    }

    /// <summary>The use-by in words; empty, so a place to write, when it is not known.</summary>
    internal static string Until(UseBy use, CultureInfo culture) => use.Moment is { } moment ? (use.WholeDay ? Days.Short(moment.Date, culture) : Days.Moment(moment, culture)) : "";

    // On the body of a container its number and what is in it are read from afar; the state is a sentence of the card and stands below.
    private static LabelBlock Twin(PaperBundle bundle, Twin t)
    {
        (string Mark, LocalDateTime? Made, UseBy Use)? dates = StageDates.Of(bundle, t);
        List<Fact> facts = [new("Ready", t.ReadyBy == default ? "" : Days.Moment(t.ReadyBy, bundle.Culture))];
        if (dates is { } d)
        {
            facts.Add(new("Use by", Until(d.Use, bundle.Culture)));
            facts.AddRange(d.Mark.Length > 0 ? [new Fact("Batch", d.Mark)] : []);
        }

        facts.Add(new("How many", Figures.Number(t.Count, bundle.Culture) + (t.Grams is { } g ? ", " + Figures.Grams(g, bundle.Culture) : "")));
        facts.Add(new("Held", t.Holds));
        facts.Add(new("Stands", t.Place));
        facts.Add(t.Stands ? new("Shown at", Figures.Clock(t.CueSecond)) : new("Brought by", $"{t.BroughtBy} at {Figures.Clock(t.CueSecond)}"));
        string made = dates is { } known ? $"|made {Iso(known.Made)}|use by {Iso(known.Use.Moment)}" : "";
        return new LabelBlock($"{RunSheetPaper.Number(t.Number)} {t.Component}", [.. facts], [.. new[] { Past(bundle, t, dates) ? "Past its date when it is shown: to no guest." : "", Capital(t.State) + ".", t.Afterwards.Length > 0 ? "Afterwards: " + t.Afterwards : "" }.Where(a => a.Length > 1)],
            string.Create(CultureInfo.InvariantCulture, $"twin {t.Number}|{t.Component}|{(dates is { Mark.Length: > 0 } marked ? marked.Mark : t.State)}{made}"));
    }

    private static bool Past(PaperBundle bundle, Twin t, (string Mark, LocalDateTime? Made, UseBy Use)? dates)
        => bundle.Plan is { } plan && dates is { Use.Moment: { } until } && until < plan.SlotStart.PlusSeconds(t.CueSecond);

    private static string Iso(LocalDateTime? when) => when is { } w ? w.ToString("uuuu-MM-dd'T'HH:mm", CultureInfo.InvariantCulture) : "not known";

    private static string Capital(string text) => text.Length == 0 ? "" : char.ToUpperInvariant(text[0]) + text[1..];
}
