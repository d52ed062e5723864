namespace Coulisse.Cards.Reading;

/// <summary>A time that touches its heat: "58°C45分", "160°C25min", "中心75℃1分".</summary>
internal static class TouchedHeat
{
    /// <summary>True where the figure at a place touches the letter of a heat before it.</summary>
    public static bool At(string s, int i) => s[i - 1] is 'C' or 'F' && i > 1 && s[i - 2] == '°' && char.IsAsciiDigit(s[i]);

    /// <summary>Which heat is a core whose words end at a place; -1 for none.</summary>
    public static int Core(string s, int at, List<StepTemperature> temperatures) => temperatures.FindIndex(h => h.Of == TemperatureOf.Core && s.AsSpan(0, at).EndsWith(h.Words));
}
