using System.Globalization;
using Coulisse.Kitchen.Planning;

namespace Coulisse.Views;

/// <summary>How good a plan is in one respect, in one line: the value, and whether any plan could do better.</summary>
public static class LevelWords
{
    /// <summary>The line.</summary>
    /// <param name="level">The level.</param>
    /// <param name="culture">Culture of its numbers.</param>
    public static string Of(ObjectiveLevel level, CultureInfo culture)
        => string.Create(culture, $"{level.Level}: {level.Value:0.##} {level.Unit}, ")
            + (level.Proven ? "proven best" : level.Bound is { } b ? string.Create(culture, $"and no plan can do better than {b:0.##}") : "and nothing is proven about a better one");
}
