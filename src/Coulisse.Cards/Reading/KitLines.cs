using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"Digital probe, 2 half trays, blowtorch": a line of a list in which every name is a tool. Two at least, and no word that a food is cut into or sold in ("onion rings", "2 tins").</summary>
internal static class KitLines
{
    private const int Longest = 160;

    private static readonly WordSet Tools = new(anyCase: true,
        "probe", "probes", "thermometer", "thermometers", "tray", "trays", "blowtorch", "torch", "blender", "mixer", "sieve", "sieves", "whisk", "spatula", "siphon", "mandoline", "dehydrator", "saucepan", "saucepans", "knife", "knives", "scales", "timer", "tongs", "ladle", "gloves",
        "sonde", "thermomètre", "chalumeau", "mixeur", "batteur", "tamis", "chinois", "fouet", "maryse", "spatule", "casserole", "couteau", "balance",
        "Brenner", "Bleche", "Sieb", "Siebe", "Schneebesen", "Spritzbeutel", "Stabmixer", "Topf", "Töpfe", "Messer", "Waage", "Schüsseln",
        "termómetro", "soplete", "bandejas", "tamiz", "batidora", "sifón", "cuchillo", "termometro", "cannello", "teglie", "setaccio", "frusta", "sifone", "coltello");

    /// <summary>True for such a line.</summary>
    public static bool Is(string s)
    {
        if (s.Length > Longest || s.IndexOf(',') < 3 || !Tool(s))
        {
            return false;
        }

        foreach (Range piece in s.AsSpan().Split(','))
        {
            if (!Tool(s.AsSpan(piece)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>True when the last word is a tool.</summary>
    private static bool Tool(ReadOnlySpan<char> words)
    {
        ReadOnlySpan<char> name = words.Trim(" .");
        return Tools.Contains(name[(name.LastIndexOf(' ') + 1)..]);
    }
}
