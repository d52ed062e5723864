using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>What a share is of: "auf Gesamtmehl", "sul peso della carne", "sur la farine". Only what is weighed to take a share of it: "35 % auf Eis" is no share.</summary>
internal static class ShareBases
{
    private static readonly string[] Ons = ["on", "bezogen auf", "auf", "sur", "sobre", "sul", "sulla", "sui", "sulle", "su"];
    private static readonly string[] Ofs = ["of", "du", "de", "vom", "von", "del", "della", "di", "dell'"];
    private static readonly string[] Articles = ["the ", "das ", "die ", "den ", "dem ", "der ", "la ", "le ", "les ", "l'", "el ", "los ", "las ", "il ", "lo ", "i ", "gli ", "total ", "de la ", "de l'", "du ", "des ", "de ", "d'", "del ", "della ", "dell'", "delle ", "di ", "des ", "vom ", "von "];
    private static readonly string[] Weighings = ["weight of ", "mass of ", "poids total ", "poids ", "masse ", "peso total ", "peso totale ", "peso ", "Gewicht "];
    private static readonly string[] Endings = [" weight", "gewicht", "menge"];
    private static readonly Beginnings First = new([.. Ons, .. Ofs]);
    private static readonly WordList Flours = new("flour", "flours", "farine", "farines", "Mehl", "Gesamtmehl", "Mehlmenge", "Gesamtmehlmenge", "harina", "harinas", "farina", "farine");
    private static readonly WordList Weights = new("weight", "poids", "Gewicht", "Gesamtgewicht", "Mehlgewicht", "Fleischgewicht", "Teiggewicht", "peso");
    private static readonly WordList Others = new("total", "batch", "meat", "fish", "water", "dough", "liquid", "fruit", "mass", "total", "masse", "viande", "poisson", "eau", "pâte", "liquide", "fruits", "Gesamtmasse", "Masse", "Fleisch", "Fisch", "Wasser", "Teig", "Flüssigkeit", "Früchte", "masa", "carne", "pescado", "agua", "líquido", "fruta", "massa", "pesce", "acqua", "impasto", "liquido", "frutta", "totale");
    private static readonly WordList Fats = new("gras", "grasse", "grasa", "grassi", "grasso", "Fett", "fat");

    /// <summary>Place where the base begins whose "on" or "of" stands here; 0 when none does.</summary>
    /// <param name="s">The line.</param>
    /// <param name="i">Where the joint stands.</param>
    /// <param name="behind">The share stands before it and no food between: "of the flour" is enough then.</param>
    public static int At(string s, int i, bool behind)
    {
        if (!First.May(s, i))
        {
            return 0;
        }

        foreach (string on in Ons)
        {
            if (Places.WordAt(s, i, on) && Places.Skip(s, i + on.Length) is var at && at < s.Length && s[at..] is var what && (Flours.In(what) || Weights.In(what) || Others.In(what) && !Fats.In(what) || Compound(what)))
            {
                return at;
            }
        }

        foreach (string of in Ofs)
        {
            if ((of[^1] == '\'' ? s.AsSpan(i).StartsWith(of, StringComparison.OrdinalIgnoreCase) : Places.WordAt(s, i, of)) && Places.Skip(s, i + of.Length) is var at && at < s.Length && s[at..] is var what && (Weights.In(what) || behind && Flours.In(what) || of == "of" && Places.WordAt(s, at, "the") && (Flours.In(what) || Others.In(what))))
            {
                return at;
            }
        }

        return 0;
    }

    /// <summary>"Weizenmehl", "Hauptteig", "Fleischmasse": German makes one word of it; "Trockenmasse" is of cheese.</summary>
    private static bool Compound(string what)
    {
        int end = Places.WordEnd(what, Places.Skip(what, what.LastIndexOf(' ') + 1));
        ReadOnlySpan<char> last = what.AsSpan(what.LastIndexOf(' ') + 1, end - what.LastIndexOf(' ') - 1);
        return last.Length > 6 && char.IsUpper(last[0]) && (last.EndsWith("mehl") || last.EndsWith("teig") || last.EndsWith("fleisch") || last.EndsWith("gewicht") || last.EndsWith("masse") && !last.StartsWith("Trocken"));
    }

    /// <summary>The base in the words its line has: without articles and "weight of", so that "Gesamtmehl" is looked for among the flours.</summary>
    public static string Name(string words)
    {
        string s = words.Trimmed(" ).,");
        for (bool cut = true; cut;)
        {
            cut = false;
            foreach (string lead in (ReadOnlySpan<string>)[.. Articles, .. Weighings])
            {
                if (s.Length > lead.Length + 2 && s.StartsWith(lead, StringComparison.OrdinalIgnoreCase))
                {
                    (s, cut) = (s[lead.Length..].TrimStart(), true);
                }
            }
        }

        foreach (string end in Endings)
        {
            s = s.Length > end.Length + 2 && s.EndsWith(end, StringComparison.OrdinalIgnoreCase) && !s.StartsWith("Gesamtg", StringComparison.OrdinalIgnoreCase) ? s[..^end.Length] : s;
        }

        return s.StartsWith("Gesamtmehl", StringComparison.OrdinalIgnoreCase) ? "Mehl" + s["Gesamtmehl".Length..] : s;
    }
}
