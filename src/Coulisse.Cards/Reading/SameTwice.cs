using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"1 lb/450 g", "8 oz = 225 g": one weight told in two units. They agree but for rounding; "400 g/240 g" are two facts, gross and drained.</summary>
internal static class SameTwice
{
    // Cards round an ounce to 25 or 30 g and a pound to 450 or 500.
    private const double Rounding = 0.13;

    /// <summary>The metric one of the two, up to the end of both; null where no second follows or it is another weight.</summary>
    public static Measure? Of(string s, Measure m, string lang)
    {
        int j = Places.Skip(s, m.End);
        if (j >= s.Length || s[j] is not ('/' or '=' or '|') || m.Unit is not { Kind: "mass", Base: { } one } || Amounts.At(s, Places.Skip(s, j + 1), lang) is not { Unit: { Kind: "mass", Base: { } two } } other || Metric(m) == Metric(other))
        {
            return null;
        }

        (double a, double b) = (m.Number.Min * one, other.Number.Min * two);
        return Math.Abs(a - b) > Rounding * Math.Max(a, b) ? null : Metric(m) ? m with { End = other.End } : other;
    }

    private static bool Metric(Measure m) => m.Unit?.Unit is "g" or "kg";
}
