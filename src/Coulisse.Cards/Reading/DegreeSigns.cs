using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>The sign, word or letter behind a figure that makes it a heat: "°", "degrees", "Grad", "degC", "C", "Fahrenheit".</summary>
internal static class DegreeSigns
{
    private static readonly string[] Degrees = ["degrees", "degree", "deg", "degrés", "Grad", "grados", "gradi"];
    // "at a 45-degree angle"
    private static readonly WordList Turns = new("angle", "angles", "turn", "turns", "bend");
    private static readonly Beginnings FirstOfDegrees = new(Degrees);
    private static readonly (string Word, char Scale)[] Scales = [("Celsius", 'C'), ("centigrade", 'C'), ("centígrados", 'C'), ("centigradi", 'C'), ("Fahrenheit", 'F')];

    /// <summary>End of a degree sign or word; the place itself when there is none.</summary>
    public static int Degree(string s, int j)
    {
        if (j < s.Length && s[j] is '°' or '度')
        {
            return j + 1;
        }

        if (j < s.Length && s[j] == '-' && !Turns.In(s) && (Places.WordAt(s, j + 1, "degree") || Places.WordAt(s, j + 1, "degrees")))
        {
            // "a 400-degree oven"
            return Places.WordEnd(s, j + 1);
        }

        if (j + 3 < s.Length && s[j] is 'd' or 'D' && s.AsSpan(j).StartsWith("deg", StringComparison.OrdinalIgnoreCase) && (!char.IsLetter(s[j + 3]) || s[j + 3] is 'C' or 'F' && (j + 4 == s.Length || !char.IsLetterOrDigit(s[j + 4]))))
        {
            // "170 degC", "400deg F", "400 deg. F"
            return s[j + 3] == '.' ? j + 4 : j + 3;
        }

        foreach (string w in FirstOfDegrees.May(s, j) ? Degrees : [])
        {
            if (Places.WordAt(s, j, w))
            {
                return j + w.Length < s.Length && s[j + w.Length] == '.' && w == "deg" ? j + w.Length + 1 : j + w.Length;
            }
        }

        return j;
    }

    /// <summary>C or F behind a figure, also as a word or a small letter that touches the figure ("180c"); a blank for neither.</summary>
    public static char Scale(string s, int k, Numeral n, out int end)
    {
        end = k;
        if (k >= s.Length)
        {
            return ' ';
        }

        // "58°C45分": behind its sign the letter may touch what follows.
        bool alone = k + 1 == s.Length || !char.IsLetterOrDigit(s[k + 1]) || Places.IsJapanese(s[k + 1]) || k > 0 && s[k - 1] == '°' && char.IsAsciiDigit(s[k + 1]);
        if (alone && (s[k] is 'C' or 'F' || s[k] is 'c' or 'f' && k == n.End && (n.Min is >= 30 and <= 550 || s[k] == 'c' && n.Min < 30 && NoteHeats.Cold(s, k))))
        {
            end = k + 1;
            return char.ToUpperInvariant(s[k]);
        }

        for (int told = 0; s[k] is 'C' or 'c' or 'F' or 'f' && told < Scales.Length; told++)
        {
            (string word, char scale) = Scales[told];
            if (Places.WordAt(s, k, word))
            {
                end = k + word.Length;
                return scale;
            }
        }

        return ' ';
    }
}
