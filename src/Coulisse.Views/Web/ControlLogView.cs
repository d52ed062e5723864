using System.Collections.Immutable;

namespace Coulisse.Views.Web;

/// <summary>The control log's page.</summary>
/// <param name="Says">Whether its chain is whole.</param>
/// <param name="Whole">Whether it is.</param>
/// <param name="Occasion">Occasion whose control points are offered; empty for places only.</param>
/// <param name="OccasionTitle">Its title.</param>
/// <param name="Points">What may be read, in the order offered.</param>
/// <param name="Problems">What keeps the reading just written from the log.</param>
/// <param name="Draft">What was written, so that nothing is typed twice.</param>
/// <param name="Months">How long records are kept, in words.</param>
/// <param name="Rows">Entries, the newest first.</param>
public sealed record ControlLogView(string Says, bool Whole, string Occasion, string OccasionTitle, ImmutableArray<ControlOption> Points, ImmutableArray<string> Problems, ControlDraft Draft, RetentionView Months, ImmutableArray<ControlRow> Rows);

/// <summary>A point that may be read.</summary>
/// <param name="Key">Its place in the list.</param>
/// <param name="Words">Part or place with its limit.</param>
public sealed record ControlOption(int Key, string Words);

/// <summary>A reading as it was typed.</summary>
public sealed record ControlDraft(int Point, string Subject, string Celsius, string Done);

/// <summary>How long records are kept.</summary>
/// <param name="Months">Months; 0 when nobody has said.</param>
/// <param name="Says">In words.</param>
public sealed record RetentionView(int Months, string Says)
{
    /// <summary>Until when one record is kept, in words; empty when nobody has said how long.</summary>
    /// <param name="kept">When it was kept.</param>
    public string For(DateTimeOffset kept) => Months == 0 ? "" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"To be kept until {kept.AddMonths(Months):yyyy-MM-dd}.");
}

/// <summary>An entry of the log.</summary>
/// <param name="At">Moment, UTC.</param>
/// <param name="Who">Signed by.</param>
/// <param name="Point">Part or place, with what was read there.</param>
/// <param name="Limit">Limit.</param>
/// <param name="Reading">Reading.</param>
/// <param name="Judged">Kept, missed, or not decided by one reading.</param>
/// <param name="Done">What was done.</param>
public sealed record ControlRow(string At, string Who, string Point, string Limit, string Reading, string Judged, string Done);
