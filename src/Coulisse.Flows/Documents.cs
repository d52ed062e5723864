using System.Collections.Immutable;
using Coulisse.Papers;
using Coulisse.Views.Papers;

namespace Coulisse.Flows;

/// <summary>Order, cost, records, calendar and the whole bundle as files for other programs.</summary>
internal static class Documents
{
    public static ImmutableArray<PrintedFile> Write(PaperBundle bundle, PaperChoice choice, string folder, string form) => form switch
    {
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "pdf, html, xlsx, csv, ics or json."),
    };
}
