using System.Collections.Immutable;

namespace Coulisse.Papers.Pages;

/// <summary>How a sheet is parted into labels, millimetres.</summary>
/// <param name="Name">Name to choose it by ("a4-8").</param>
/// <param name="Format">The sheet.</param>
/// <param name="Across">Labels side by side.</param>
/// <param name="Down">Labels one under another.</param>
/// <param name="Width">Of a label.</param>
/// <param name="Height">Of a label.</param>
/// <param name="Left">Left edge of the first.</param>
/// <param name="Top">Upper edge of the first.</param>
/// <param name="Gap">Room between two side by side; one under another they touch.</param>
/// <param name="Cut">Draw lines to cut along.</param>
/// <remarks>Sizes as sold by most makers of label sheets (common practice, no source); measure the sheet before the first print.</remarks>
public sealed record LabelSheet(string Name, PageFormat Format, int Across, int Down, double Width, double Height, double Left, double Top, double Gap, bool Cut = false)
{
    /// <summary>Sheets to choose from.</summary>
    public static ImmutableArray<LabelSheet> All { get; } =
    [
        new("a4-8", PageFormat.A4, 2, 4, 99.1, 67.7, 4.65, 13.1, 2.5),
        new("a4-14", PageFormat.A4, 2, 7, 99.1, 38.1, 4.65, 15.15, 2.5),
        new("a4-21", PageFormat.A4, 3, 7, 63.5, 38.1, 7.25, 15.15, 2.5),
        new("letter-6", PageFormat.Letter, 2, 3, 101.6, 84.6, 3.97, 12.7, 4.76),
        new("letter-10", PageFormat.Letter, 2, 5, 101.6, 50.8, 3.97, 12.7, 4.76),
        new("a6", PageFormat.A6, 1, 1, 95, 132, 5, 6, 0),
    ];

    /// <summary>The sheet of a name; null when there is none.</summary>
    public static LabelSheet? Find(string name) => All.FirstOrDefault(s => s.Name == name);

    /// <summary>Eight labels with lines to cut along, on plain paper.</summary>
    public static LabelSheet ForScissors(PageFormat format) => (format.Name == "Letter" ? new("letter-scissors", PageFormat.Letter, 2, 4, 98, 62, 9.95, 12.7, 0) : All[0] with { Name = "a4-scissors", Width = 98, Height = 66, Left = 7, Gap = 0 }) with { Cut = true };
}
