namespace Coulisse.Cards.Layout;

/// <summary>The second row of bullets of a word processor, whose hollow ring comes out of the clipboard as the letter o ("• Dough", "o 500 g flour"). Behind a tab it is one for sure; behind a blank where a round bullet or another ring stands over it, and not in languages where "o" is the word for "or".</summary>
internal static class HollowBullets
{
    private const char Ring = '◦';
    private const int Deeper = 4;

    /// <summary>The lines with the rings put back, set in under what they hang from.</summary>
    public static List<RawLine> Off(List<RawLine> lines, string lang)
    {
        bool word = lang is "it" or "es";
        List<RawLine>? changed = null;
        bool under = false;
        for (int i = 0; i < lines.Count; i++)
        {
            string s = lines[i].Text;
            bool ring = s.Length > 2 && s[0] == 'o' && (s[1] == '\t' || (s[1] == ' ' && under && !word && lines[i].Block == lines[i - 1].Block)) && s.AsSpan(2).TrimStart() is not [];
            if (ring)
            {
                changed ??= [.. lines];
                changed[i] = lines[i] with { Text = $"{Ring} {s[2..].TrimStart()}", Indent = lines[i].Indent + Deeper };
            }

            under = ring || s.Length > 1 && s[0] is '•' or '●' or '\uF0B7' && s[1] is ' ' or '\t';
        }

        return changed ?? lines;
    }
}
