using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>Which marked heading is the title of the card.</summary>
internal static class Titles
{
    /// <summary>True for a first heading under which every other is deeper or only divides ("### Short ribs" over "### Method"): the title.</summary>
    public static bool Alone(List<RawLine> lines, int i, int level, string lang)
    {
        int sections = 0;
        for (int k = i + 1; k < lines.Count; k++)
        {
            string s = lines[k].Text;
            if (s[0] == '#' && Hashes(s) is var other and > 0)
            {
                bool section = Sections.Of(Folding.Line(s.AsSpan(other)).Trim(' ', '#', ':'), lang) is not null;
                sections += section || other > level ? 1 : 0;
                if (!section && other <= level)
                {
                    return false;
                }
            }
            else
            {
                sections += s.StartsWith("**", StringComparison.Ordinal) && s.Length < 60 ? 1 : 0;
            }
        }

        return sections > 0;
    }

    /// <summary>Level of a heading by its hashes; 0 for none.</summary>
    public static int Hashes(string s)
    {
        int n = 0;
        while (n < s.Length && s[n] == '#')
        {
            n++;
        }

        // "#10 can" is a size of tin
        return n < s.Length && char.IsAsciiDigit(s[n]) && n == 1 ? 0 : n;
    }
}
