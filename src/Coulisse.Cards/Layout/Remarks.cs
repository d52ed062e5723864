using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Lines that tell how long a thing keeps or how many it feeds by a label, wherever on the card they stand: no food, no step and no heading.</summary>
internal static class Remarks
{
    private const int Longest = 120;
    private static readonly System.Buffers.SearchValues<char> Figures = System.Buffers.SearchValues.Create("0123456789０１２３４５６７８９");

    /// <summary>The words of such a line as it stands on the card, without its bullet; null for any other.</summary>
    public static string? Of(RawLine line, string lang)
    {
        // Every line of a card is asked: most have no figure, or no label.
        if (line.Text.Length > Longest || line.Text.AsSpan().IndexOfAny(Figures) < 0)
        {
            return null;
        }

        string s = Folding.Line(line.Text);
        s = Looks.Bullet(s) ? Marks.Strip(s) : s;
        return s.Length > 0 && Is(s, lang) ? s : null;
    }

    /// <summary>True for such a line.</summary>
    public static bool Is(string s, string lang) => KeepLabels.Opens(s, lang) || CountLabels.Opens(s, lang) || PlaceTimes.Surely(s, lang);
}
