namespace Coulisse.Papers.Pages;

/// <summary>A figure and its unit are one thing to the eye: no line ends between "45" and "min", none begins with "×".</summary>
internal static class Units
{
    private static readonly HashSet<string> Known = new(StringComparer.Ordinal)
    {
        "g", "kg", "mg", "mm", "cm", "m", "ml", "mL", "cl", "dl", "l", "L", "°C", "°F", "K", "s", "min", "h", "d", "%", "W", "kW", "A", "V", "tsp", "tbsp", "cup", "cups", "day", "days", "×", "x",
    };

    private static readonly char[] Ends = ['.', ',', ';', ':', ')', ']', '”', '"', '?', '!'];

    /// <summary>True when the blank before this place stands between a figure and its unit.</summary>
    /// <param name="text">A line.</param>
    /// <param name="at">Where the next word begins; a blank stands before it.</param>
    public static bool OneThing(string text, int at)
    {
        if (at < 2 || !char.IsAsciiDigit(text[at - 2]))
        {
            return false;
        }

        int end = text.IndexOf(' ', at);
        return Known.Contains((end < 0 ? text[at..] : text[at..end]).TrimEnd(Ends));
    }
}
