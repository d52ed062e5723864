using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"1 cup plus 2 tbsp (170 g) flour", "170 g (1 cup + 2 tbsp) flour": cups and spoons added to each other, and the weight of both. A weight that the spoons alone can have is theirs ("1 cup plus 2 tbsp (18 g)").</summary>
/// <remarks>The cup's sixteen spoons and the spoon's three hold in every country but the Australian (whose spoon is 20 ml); where a weight is told, it is taken and not they.</remarks>
internal static class AddedSpoons
{
    // g per ml of what is eaten: from cornflakes to treacle. Common practice, no source.
    private const double Lightest = 0.1;
    private const double Heaviest = 1.6;
    private const double Cup = 240;

    // Cups of two countries stand further apart than this nowhere.
    private const double Apart = 1.25;
    private static readonly string[] Joints = ["plus", "and", "+", "&", "et", "und", "y", "más", "e", "più"];

    /// <summary>The measure with what is added to it, told right behind: "1 cup plus 2 tbsp"; the measure itself where nothing is.</summary>
    public static Measure At(string s, Measure m, string lang)
    {
        if (m is not { Unit: { } big, Number.Max: null } || Held(big) is not { } whole || m.End >= s.Length)
        {
            return m;
        }

        int j = Places.Skip(s, m.End);
        foreach (string joint in Joints)
        {
            int k = j + joint.Length;
            if (j < s.Length && (joint.Length == 1 && !char.IsLetter(joint[0]) ? s[j] == joint[0] : Places.WordAt(s, j, joint)) && k < s.Length && s[k] == ' ' && Amounts.At(s, k + 1, lang) is { Unit: { } small, Number.Max: null } more && Held(small) is { } part && part < whole)
            {
                return m with { Number = m.Number with { Min = m.Number.Min + (more.Number.Min * part / whole) }, End = more.End };
            }
        }

        return m;
    }

    /// <summary>True where the weight told with the second measure is of both: they become one amount that weighs it.</summary>
    public static bool Weighed(Draft last, Draft d, string lang)
    {
        if (d is not { Second: { } second, Unit: { } small, Amount: { } more } || last is not { Grams: null, Unit: { } big, Amount: { } had } || Held(big) is not { } whole || Held(small) is not { } part || part >= whole)
        {
            return false;
        }

        double own = more * part;
        double all = (had * whole) + own;
        double? millilitres = d.Grams is null && Amounts.At(second, 0, lang) is { Unit: { Kind: "volume", Base: { } ml }, Number: { Max: null } n } ? n.Min * ml : null;
        bool both = d.Grams is { } grams ? grams > own * Heaviest && grams <= all * Heaviest && grams >= all * Lightest : millilitres > own * Apart && millilitres <= all * Apart && millilitres >= all / Apart;
        if (!both)
        {
            return false;
        }

        last.Amount = had + (more * part / whole);
        last.Grams = d.Grams;
        last.GramsMax = d.GramsMax;
        last.Second = d.Second;
        last.Preparation ??= d.Preparation;
        return true;
    }

    private static double? Held(UnitWord unit) => unit.Unit switch { "cup" => Cup, "tbsp" => Cup / 16, "tsp" => Cup / 48, _ => null };
}
