using System.Globalization;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Temper: 45 / 27 / 31", "tempérer 50-28-31": the three heats of chocolate, told as figures in a row.</summary>
internal static class Tempering
{
    private const double Coolest = 24;
    private const double Hottest = 58;

    /// <summary>The heats in order; none where no row of two or three figures of that range stands alone.</summary>
    public static List<StepTemperature> In(string s)
    {
        List<StepTemperature> row = [];
        int from = -1;
        for (int i = 0; i < s.Length; i++)
        {
            if (!char.IsAsciiDigit(s[i]) || i > 0 && (char.IsLetterOrDigit(s[i - 1]) || s[i - 1] is '.' or ','))
            {
                continue;
            }

            int end = FigureEnd(s, i);
            double heat = double.Parse(s.AsSpan(i, end - i).ToString().Replace(',', '.'), CultureInfo.InvariantCulture);
            if (from != i)
            {
                row.Clear();
            }

            row.Add(new StepTemperature(TemperatureOf.Food, heat, s[i..end]));
            int sign = Places.Skip(s, end);
            from = sign < s.Length && s[sign] is '/' or '-' or '→' or '>' ? Places.Skip(s, sign + 1) : -1;
            bool goesOn = from > 0 && from < s.Length && char.IsAsciiDigit(s[from]);
            if (!goesOn && row.Count is 2 or 3 && row.TrueForAll(t => t.Celsius is >= Coolest and <= Hottest) && (sign >= s.Length || !char.IsLetter(s[sign])))
            {
                return row;
            }

            i = end - 1;
        }

        return [];
    }

    // No number of ours: "45/27" would be a fraction there.
    private static int FigureEnd(string s, int i)
    {
        int end = i;
        while (end < s.Length && end - i < 3 && char.IsAsciiDigit(s[end]))
        {
            end++;
        }

        bool point = end + 1 < s.Length && s[end] is '.' or ',' && char.IsAsciiDigit(s[end + 1]) && (end + 2 == s.Length || !char.IsAsciiDigit(s[end + 2]));
        return point ? end + 2 : end;
    }
}
