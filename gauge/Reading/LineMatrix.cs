using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Reading;

namespace Coulisse.Gauge.Reading;

/// <summary>
/// Seven foods in five languages, set in every combination of how people tell an amount, where they put it, and what they say behind: whatever the dress, food, amount, its upper end and unit are read. The dress of a line is chosen by its number, so that each can be printed again.
/// </summary>
internal static class LineMatrix
{
    private sealed record Food(string Name, string Unit, string Canonical, string Work, string Of = "");

    private sealed record Tongue(string Lang, string To, string About, string Decimal, string Use, string Optional, Food[] Foods);

    private static readonly Tongue[] Tongues =
    [
        new("en", " to ", "about ", ".", "for the tin", "optional",
            [new("onions", "", "piece", "chopped"), new("eggs", "", "piece", "beaten"), new("butter", "g", "g", "melted"), new("flour", "kg", "kg", "sifted"), new("parsley", "bunches", "bunch", "finely chopped", "of "), new("milk", "ml", "ml", "warmed"), new("spinach", "handfuls", "handful", "washed", "of ")]),
        new("fr", " à ", "environ ", ",", "pour le moule", "facultatif",
            [new("oignons", "", "piece", "émincés"), new("œufs", "", "piece", "battus"), new("beurre", "g", "g", "fondu", "de "), new("farine", "kg", "kg", "tamisée", "de "), new("persil", "bottes", "bunch", "haché", "de "), new("lait", "ml", "ml", "tiède", "de "), new("carottes", "", "piece", "épluchées")]),
        new("de", " bis ", "ca. ", ",", "für die Form", "optional",
            [new("Zwiebeln", "", "piece", "fein gehackt"), new("Eier", "", "piece", "verquirlt"), new("Butter", "g", "g", "zerlassen"), new("Mehl", "kg", "kg", "gesiebt"), new("Petersilie", "Bund", "bunch", "gehackt"), new("Milch", "ml", "ml", "lauwarm"), new("Spinat", "Handvoll", "handful", "gewaschen")]),
        new("es", " a ", "unos ", ",", "para el molde", "opcional",
            [new("cebollas", "", "piece", "picadas"), new("huevos", "", "piece", "batidos"), new("mantequilla", "g", "g", "derretida", "de "), new("harina", "kg", "kg", "tamizada", "de "), new("perejil", "manojos", "bunch", "picado", "de "), new("leche", "ml", "ml", "templada", "de "), new("espinacas", "puñados", "handful", "lavadas", "de ")]),
        new("it", " a ", "circa ", ",", "per lo stampo", "facoltativo",
            [new("cipolle", "", "piece", "tritate"), new("uova", "", "piece", "sbattute"), new("burro", "g", "g", "fuso", "di "), new("farina", "kg", "kg", "setacciata", "di "), new("prezzemolo", "mazzi", "bunch", "tritato", "di "), new("latte", "ml", "ml", "tiepido", "di "), new("spinaci", "manciate", "handful", "lavati", "di ")]),
    ];

    private static readonly string[] Figures = ["whole", "fraction", "sign", "mixed", "hyphen", "dash", "words", "decimal"];
    private static readonly string[] Places = ["front", "glued", "back", "comma", "colon", "dashed", "bracket", "times"];
    private static readonly string[] Tails = ["nothing", "work, comma", "work", "work in brackets", "use, comma", "use", "optional in brackets"];
    private const int FoodsEach = 7;

    /// <summary>How many dresses there are.</summary>
    public static int Count => Tongues.Length * FoodsEach * Figures.Length * Places.Length * Tails.Length;

    /// <summary>The line in a dress, its language, and the dress in words.</summary>
    public static (string Text, string Lang, string[] Dress) Line(int number)
    {
        (Tongue t, Food f, string figure, string place, string tail) = Of(number);
        (string figures, _, _) = Told(t, f, figure);
        string amount = f.Unit.Length == 0 ? figures : place == "glued" && f.Canonical is "g" or "kg" or "ml" ? figures + f.Unit : $"{figures} {f.Unit}";
        string head = place switch
        {
            "front" or "glued" => $"{amount} {f.Of}{f.Name}",
            "times" => f.Unit.Length == 0 ? $"{amount} x {f.Name}" : $"{f.Name} {amount}",
            "back" => $"{f.Name} {amount}",
            "comma" => $"{f.Name}, {amount}",
            "colon" => $"{f.Name}: {amount}",
            "dashed" => $"{f.Name} - {amount}",
            _ => $"{f.Name} ({amount})",
        };
        string text = tail switch
        {
            "work, comma" => $"{head}, {f.Work}",
            "work" => $"{head} {f.Work}",
            "work in brackets" => $"{head} ({f.Work})",
            "use, comma" => $"{head}, {t.Use}",
            "use" => $"{head} {t.Use}",
            "optional in brackets" => $"{head} ({t.Optional})",
            _ => head,
        };
        return (text, t.Lang, [t.Lang, "food " + f.Name, "figure " + figure, "place " + place, "behind: " + tail]);
    }

    /// <summary>What is wrong with the reading of a dress; empty when nothing is.</summary>
    public static string Wrong(int number)
    {
        (Tongue t, Food f, string figure, _, _) = Of(number);
        (_, double least, double? most) = Told(t, f, figure);
        (string text, string lang, _) = Line(number);
        return CardReader.ReadLine(text, lang).Foods is [var read] && read.Food == f.Name && read.Amount is { } amount && Math.Abs(amount - least) < 1e-9 && read.AmountMax == most && read.Unit == f.Canonical ? ""
            : string.Create(CultureInfo.InvariantCulture, $"“{text}” read {string.Join(" | ", CardReader.ReadLine(text, lang).Foods.Select(x => $"{x.Amount} {x.AmountMax} {x.Unit} {x.Food}"))}");
    }

    private static (Tongue, Food, string Figure, string Place, string Tail) Of(int number)
    {
        int Next(int of)
        {
            (int q, int r) = Math.DivRem(number, of);
            number = q;
            return r;
        }

        Tongue t = Tongues[Next(Tongues.Length)];
        return (t, t.Foods[Next(FoodsEach)], Figures[Next(Figures.Length)], Places[Next(Places.Length)], Tails[Next(Tails.Length)]);
    }

    /// <summary>The figures as they are printed and what they mean. Grams and millilitres have no halves: they are told about, or in tens.</summary>
    private static (string Text, double Least, double? Most) Told(Tongue t, Food f, string figure)
    {
        bool fine = f.Canonical is "g" or "ml";
        return figure switch
        {
            "fraction" => fine ? (t.About + "250", 250, null) : ("1/2", 0.5, null),
            "sign" => fine ? ("120", 120, null) : ("1½", 1.5, null),
            "mixed" => fine ? ("1250", 1250, null) : ("1 1/2", 1.5, null),
            "hyphen" => fine ? ("200-250", 200, 250) : ("2-3", 2, 3),
            "dash" => fine ? ("200–250", 200, 250) : ("2–3", 2, 3),
            "words" => fine ? ($"200{t.To}250", 200, 250) : ($"2{t.To}3", 2, 3),
            "decimal" => fine ? ($"12{t.Decimal}5", 12.5, null) : ($"2{t.Decimal}5", 2.5, null),
            _ => fine ? ("250", 250, null) : ("3", 3, null),
        };
    }
}
