using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"3 Melt the butter": the number of a step without its stop, taken off where it goes on from the one before.</summary>
internal sealed class StepNumbers(string lang)
{
    private int _count;

    /// <summary>The step without its number; the text itself when the figure is no number of a step.</summary>
    public string Off(string s)
    {
        int i = 0;
        while (i < s.Length && i < 2 && char.IsAsciiDigit(s[i]))
        {
            i++;
        }

        bool next = i > 0 && i + 1 < s.Length && s[i] == ' ' && (char.IsUpper(s[i + 1]) || Places.IsJapanese(s[i + 1]) || lang == "ja" && char.IsAsciiDigit(s[i + 1])) && int.Parse(s.AsSpan(0, i), System.Globalization.CultureInfo.InvariantCulture) == _count + 1;
        _count += next ? 1 : 0;
        return next ? s[(i + 1)..] : s;
    }
}
