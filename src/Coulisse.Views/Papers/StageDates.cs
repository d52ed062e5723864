using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Planning;
using NodaTime;

namespace Coulisse.Views.Papers;

/// <summary>Batch mark, making and use-by of what stands on the stage: of its own small batch where it has one, else of the guests' batch it was taken from. The two are made at different hours and are never dated by each other.</summary>
internal static class StageDates
{
    /// <summary>Dates of a twin; null for what is no food of a known part.</summary>
    public static (string Mark, LocalDateTime? Made, UseBy Use)? Of(PaperBundle bundle, Twin twin)
    {
        if (twin is { Grams: null, MadeBy: null })
        {
            return null;
        }

        PlannedTask? making = bundle.Plan?.Tasks.FirstOrDefault(t => t.Id == twin.MadeBy);
        bool own = making?.ForStage ?? bundle.ForStage.Any(b => b.Need.Twin.Number == twin.Number && b.Need.OwnBatch);
        Batch? batch = bundle.Batches.FirstOrDefault(b => making?.Dish is { } dish ? Named(bundle, b, dish) : Named(bundle, b, twin.Component) || b.Components.Any(c => Part(c, twin.Component)));
        if (batch is null)
        {
            return null;
        }

        BatchComponent[] parts = [.. batch.Components.Where(c => Part(c, twin.Component) && !c.Lines.IsEmpty)];
        bool whole = parts.Length == 0;
        parts = whole ? [.. batch.Components.Where(c => !c.Lines.IsEmpty)] : parts;
        WeighedDish full = bundle.WholeOf(batch);

        // The stage's batch is as old as its first work, the weighing included: egg stands open from then on. The guests' part is as old as its own making.
        PlannedTask? first = own ? First(bundle, batch, twin.Component) ?? making : null;
        LocalDateTime? Made(string name) => own && parts.Any(p => p.Weighed.Component.Name == name) ? first?.End : Earlier(Papers.Made.Of(bundle, batch, name)?.When, parts.Any(p => p.Weighed.Component.Name == name) ? twin.ReadyBy : default);

        UseBy[] uses = [.. parts.Where(p => !whole || p.Weighed.Component.Keeps.Any(k => !k.Quality)).Select(p => UseBy.Of(full, p.Weighed, Made))];
        LocalDateTime?[] made = [.. parts.Select(p => Made(p.Weighed.Component.Name))];

        // One part without a date leaves the whole without one: it is written by hand, never guessed.
        UseBy use = uses.Length == 0 ? new UseBy(null, false, "the card does not say how long it keeps") : uses.FirstOrDefault(u => u.Moment is null) ?? uses.MinBy(u => u.Moment!.Value)!;
        return (own ? Mark(bundle, batch, twin.Component) : whole ? "" : LabelPaper.Mark(bundle, batch, parts[0], 1), made.Where(m => m is not null).Min(), use);
    }

    // What is taken from the guests' batch before that is finished has been made by then, not by the end of a making it had no part in.
    private static LocalDateTime? Earlier(LocalDateTime? made, LocalDateTime ready) => made is { } m && ready != default && ready < m ? ready : made;

    /// <summary>Mark of the small batch a piece of work for the stage is on.</summary>
    public static string Mark(PaperBundle bundle, PlannedTask task)
        => bundle.Batches.FirstOrDefault(b => task.Dish is { } dish ? Named(bundle, b, dish) : b.Components.Any(c => Part(c, task.Component ?? ""))) is { } batch ? Mark(bundle, batch, task.Component ?? "") : "";

    private static string Mark(PaperBundle bundle, Batch batch, string component)
    {
        BatchComponent? part = Own(batch, component);
        string day = First(bundle, batch, component) is { } first ? first.Start.ToString("yyMMdd", CultureInfo.InvariantCulture) + "-" : "";
        return $"{day}{(part is null ? Slug.Short(Slug.Of(bundle.NameOf(batch)), LabelPaper.MarkLetters) : LabelPaper.Short(part, batch))}-stage";
    }

    private static PlannedTask? First(PaperBundle bundle, Batch batch, string component) => bundle.Plan?.Tasks
        .Where(t => t.ForStage && (t.Dish is not { } dish || Named(bundle, batch, dish)) && (Own(batch, component) is not { } part || Part(part, t.Component ?? ""))).OrderBy(t => t.Start).FirstOrDefault();

    // A dish that is no plate is one batch for the stage with all its parts; of a plate each part is a batch.
    private static BatchComponent? Own(Batch batch, string component) => batch.Weighed.Dish.Plate.IsEmpty ? null : batch.Components.FirstOrDefault(c => Part(c, component));

    private static bool Part(BatchComponent c, string name) => name.Length > 0 && c.Weighed.Component.Name == name;

    private static bool Named(PaperBundle bundle, Batch batch, string name) => name.Equals(batch.Weighed.Dish.Title, StringComparison.OrdinalIgnoreCase) || name.Equals(bundle.NameOf(batch), StringComparison.OrdinalIgnoreCase);
}
