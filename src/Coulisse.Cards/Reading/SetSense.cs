using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"It will rise to 69 °C" is no dough that rises; "Oven set at 160 °C", "set the combi to 85 °C", "probe set to 54 °C", "set over a bain-marie": a machine or a pan is set there, and no jelly sets. "Set at 4 °C", "leave to set" is one.</summary>
internal static class SetSense
{
    private const double Warm = 40;
    private static readonly string[] Machines = ["oven", "combi", "steamer", "grill", "fryer", "probe", "core probe", "timer", "machine", "mixer", "circulator", "smoker", "thermometer", "hob", "burner", "bowl over", "pan over", "pan on", "bowl on", "table"];
    private static readonly string[] Articles = ["the", "a", "your", "an"];

    /// <summary>True where the word that begins at a place sets no jelly.</summary>
    public static bool Other(string s, int at)
    {
        if (Places.WordAt(s, at, "rise") || Places.WordAt(s, at, "rises"))
        {
            // "It will rise to 69 °C": no dough.
            int behind = Places.WordEnd(s, at);
            int to = Places.Skip(s, behind);
            return Places.WordAt(s, to, "to") && Places.Skip(s, to + 2) is var heat && heat < s.Length && char.IsAsciiDigit(s[heat]) && Numbers.Single(s, heat, "en") is { Min: >= Warm };
        }

        if (!Places.WordAt(s, at, "set"))
        {
            return false;
        }

        int next = Places.Skip(s, at + 3);
        if (Places.WordAt(s, next, "over"))
        {
            return true;
        }

        if (Places.WordAt(s, next, "to") || Places.WordAt(s, next, "at"))
        {
            int figure = Places.Skip(s, next + 2);
            return figure < s.Length && char.IsAsciiDigit(s[figure]) && Numbers.Single(s, figure, "en") is { Min: >= Warm };
        }

        foreach (string article in Articles)
        {
            if (Places.WordAt(s, next, article))
            {
                int thing = Places.Skip(s, next + article.Length);
                return Array.Exists(Machines, m => Places.WordAt(s, thing, m));
            }
        }

        return false;
    }
}
