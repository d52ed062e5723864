namespace Coulisse.Cards.Layout;

/// <summary>The second row of bullets of a word processor, whose hollow ring comes out of the clipboard as the letter o ("• Dough", "o 500 g flour"). Behind a tab it is one for sure; behind a blank where a round bullet or another ring stands over it, and not in languages where "o" is the word for "or". A list of nothing but rings ("o  1 kg di farina" over "o  22 g di sale") opens a block with one, where no "or" can stand.</summary>
internal static class HollowBullets
{
    private const char Ring = '◦';
    private const int Deeper = 4;

    private const int FewestAlone = 3;
    private const char Round = '•';

    /// <summary>The lines with the rings put back, set in under what they hang from.</summary>
    public static List<RawLine> Off(List<RawLine> lines, string lang)
    {
        lines = Alone(lines);
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

    /// <summary>Rings that hang from no other bullet: three and more, and a block or what a colon heads begins with one. "oppure" and "o 80 g di olio" stand under what they may replace, never first.</summary>
    private static List<RawLine> Alone(List<RawLine> lines)
    {
        (int rings, int first) = (0, 0);
        for (int i = 0; i < lines.Count; i++)
        {
            if (Ringed(lines[i].Text))
            {
                rings++;
                first += i > 0 && (lines[i - 1].Block != lines[i].Block || lines[i - 1].Text[^1] == ':' || lines[i - 1].Text.IndexOf(' ') < 0 && char.IsUpper(lines[i - 1].Text[0])) ? 1 : 0;
            }
            else if (lines[i].Text[0] == Round)
            {
                return lines;
            }
        }

        return rings < FewestAlone || first == 0 ? lines : [.. lines.Select(l => Ringed(l.Text) ? l with { Text = $"{Round} {l.Text[2..].TrimStart()}" } : l)];
    }

    /// <summary>The letter, one blank or two, and behind it a figure or a capital.</summary>
    private static bool Ringed(string s) => s.Length > 3 && s[0] == 'o' && s[1] == ' ' && (s[2] == ' ' ? s.AsSpan(2).TrimStart() is [var far, ..] && char.IsLetterOrDigit(far) : char.IsAsciiDigit(s[2]) || char.IsUpper(s[2]));
}
