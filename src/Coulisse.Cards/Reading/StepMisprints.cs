namespace Coulisse.Cards.Reading;

/// <summary>Letters printed for digits in a step ("I60C", "1O min", "18O °C"): read where that can be done, and asked in every case, as a time or an oven hangs on it.</summary>
internal static class StepMisprints
{
    private const double Weight = 200;
    private const int Longest = 6;

    /// <summary>One question for the first such figure of each step.</summary>
    public static IEnumerable<Doubt> Of(Dish dish)
    {
        foreach (Step step in dish.Components.SelectMany(c => c.Steps))
        {
            if (Find(step.Text) is var (figure, mended))
            {
                yield return new Doubt(step.Span.Line, $"“{step.Text}”: letters stand where digits should. Is “{figure}” {mended}?", [new Candidate(mended, mended), new Candidate("another figure", figure)], $"{mended} or another figure", Weight) { Asked = figure };
            }
        }
    }

    private static (string Figure, string Mended)? Find(string s)
    {
        for (int i = 0; i < s.Length; i++)
        {
            if (!(char.IsAsciiDigit(s[i]) || s[i] is 'O' or 'I' or 'l') || i > 0 && (char.IsLetterOrDigit(s[i - 1]) || s[i - 1] is '.' or ',' or '-'))
            {
                continue;
            }

            int end = i;
            (int digits, int letters) = (0, 0);
            while (end < s.Length && (char.IsAsciiDigit(s[end]) || s[end] is 'O' or 'I' or 'l') && !Litre(s, end, digits))
            {
                digits += char.IsAsciiDigit(s[end]) ? 1 : 0;
                letters += char.IsAsciiDigit(s[end]) ? 0 : 1;
                end++;
            }

            if (digits > 0 && letters > 0 && end - i <= Longest && Measured(s, end))
            {
                return (s[i..end], s[i..end].Replace('O', '0').Replace('I', '1').Replace('l', '1'));
            }

            i = Math.Max(i, end - 1);
        }

        return null;
    }

    /// <summary>"2l" is two litres.</summary>
    private static bool Litre(string s, int at, int digits) => s[at] == 'l' && digits > 0 && (at + 1 == s.Length || !char.IsLetterOrDigit(s[at + 1]));

    private static bool Measured(string s, int at)
    {
        int i = Words.Places.Skip(s, at);
        return i < s.Length && (s[i] == '°' || Words.TimeWords.Unit(s, i, out _) is not null
            || (s[i] is 'C' or 'F' or 'g' && (i + 1 == s.Length || !char.IsLetterOrDigit(s[i + 1])) || Words.Places.WordAt(s, i, "ml") || Words.Places.WordAt(s, i, "kg")));
    }
}
