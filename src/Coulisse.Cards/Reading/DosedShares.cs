using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Foods that are dosed by the weight of the rest: salts, cures, sugars, spices, gums, acids. Their bare percent is a share, "0.25 % cure", "Salt 1.2 %"; "38 % cream" and "70 % chocolate" tell a grade.</summary>
internal static class DosedShares
{
    private const double LeastStrength = 0.4;
    private const double MostStrength = 0.9;
    private const double Million = 10_000;
    private const int MostWords = 5;

    private static readonly WordList Dosed = new(
        "salt", "sugar", "dextrose", "glucose powder", "cure", "nitrite", "nitrate", "erythorbate", "ascorbate", "phosphate", "yeast", "pepper", "peppercorns", "paprika", "cumin", "coriander", "fennel seed", "garlic powder", "onion powder", "chilli flakes", "nutmeg", "mace", "MSG", "monosodium glutamate", "koji",
        "xanthan", "agar", "gellan", "carrageenan", "iota", "kappa", "pectin", "gelatine", "gelatin", "inulin", "locust bean gum", "guar", "lecithin", "citric acid", "malic acid", "ascorbic acid", "transglutaminase", "sodium citrate", "calcium lactate", "calcium chloride", "sodium alginate", "alginate", "methylcellulose", "starter culture",
        "sel", "sucre", "poivre", "levure", "sel nitrité", "nitrite de sodium", "xanthane", "pectine", "gélatine", "acide citrique", "acide ascorbique", "lécithine", "carraghénane", "piment", "muscade",
        "Salz", "Meersalz", "Zucker", "Pökelsalz", "Nitritpökelsalz", "Pfeffer", "Hefe", "Traubenzucker", "Johannisbrotkernmehl", "Gelatine", "Pektin", "Zitronensäure", "Ascorbinsäure", "Lecithin", "Muskat", "Kümmel", "Koriander", "Natriumnitrit", "Natriumascorbat",
        "sal", "azúcar", "pimienta", "levadura", "dextrosa", "sal curante", "nitrito", "xantana", "pectina", "gelatina", "ácido cítrico", "lecitina", "pimentón",
        "sale", "zucchero", "pepe", "lievito", "destrosio", "nitriti", "xantano", "acido citrico", "finocchietto");

    private static readonly WordList Graded = new("butter", "beurre", "mantequilla", "burro", "syrup", "sirop", "Sirup", "jarabe", "sciroppo", "brine", "saumure", "salmuera", "salamoia", "solution", "water", "eau", "cream", "crème", "chocolate", "chocolat", "couverture", "praline", "praliné", "caramel", "paste", "purée", "puree", "reduced", "less", "low", "free", "moins", "weniger", "vinegar", "vinaigre", "jam", "confiture", "rub", "cane juice");
    private static readonly WordList Cures = new("curing salt", "nitrite salt", "pink salt", "cure", "sel nitrité", "Pökelsalz", "Nitritpökelsalz", "sal de nitrito", "sal curante", "sale nitritato");

    /// <summary>True where a bare percent beside the name is a share of the rest.</summary>
    public static bool Is(string food) => food.Length > 2 && food.AsSpan().Count(' ') < MostWords && Dosed.In(food) && !Graded.In(food);

    /// <summary>"Salt 1.2 %", "Cure #2: 0.25 %", "Sodium nitrite 150 ppm": the share that ends the line. The line itself when none does.</summary>
    public static string Behind(string s, string lang, Draft d)
    {
        int sign = s.EndsWith('%') ? s.Length - 1 : s.EndsWith(" ppm", StringComparison.OrdinalIgnoreCase) ? s.Length - 4 : -1;
        if (sign < 4 || !char.IsLetter(s[0]))
        {
            return s;
        }

        int end = s.AsSpan(0, sign).TrimEnd().Length;
        int from = end;
        while (from > 0 && (char.IsAsciiDigit(s[from - 1]) || s[from - 1] is '.' or ',' or '-' && from < end && char.IsAsciiDigit(s[from])))
        {
            from--;
        }

        string food = s[..from].TrimmedEnd(" ,:-");
        bool percent = s[^1] == '%';
        if (from == end || from > 0 && s[from - 1] is not (' ' or ':') || (percent ? !Is(food) : food.Length < 3) || Numbers.Range(s, from, lang) is not { InWords: false } n || n.End < end)
        {
            return s;
        }

        if (percent && n is { Min: >= LeastStrength and <= MostStrength, Max: null } && Cures.In(food) && !food.Contains('#'))
        {
            // "Curing salt 0.6 %": how much nitrite the salt holds
            d.Graded(s[from..]);
            return food;
        }

        d.Percent = percent ? n.Min : Math.Round(n.Min / Million, 6);
        d.Tokens?.Add(new ReadToken(s[from..], "share", System.FormattableString.Invariant($"{d.Percent} %")));
        return food;
    }
}
