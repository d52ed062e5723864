using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"can you get 3 lemons", "bring bitte noch 2 Becher Schmand mit", "pense à prendre 6 œufs stp", "レモン3個買ってきて": what a message says around a line. It is taken off where an amount or a food everybody knows stands behind it; "need 20 minutes" and "get-up cake" stay as they are.</summary>
internal static class Errands
{
    private const int Longest = 160;
    private static readonly string[] English = ["can you", "could you", "can u", "please", "pls", "also", "and", "we", "you", "i", "just", "still", "need to", "need", "get", "grab", "buy", "bring", "pick up", "order", "don't forget", "dont forget", "remember", "we're out of", "out of", "add", "the", "some", "some more", "another", "more"];
    private static readonly string[] French = ["tu peux", "peux-tu", "pourrais-tu", "vous pouvez", "pouvez-vous", "merci de", "pense à", "pensez à", "n'oublie pas", "n'oubliez pas", "il faut", "il faudrait", "il nous faut", "prendre", "prends", "prenez", "acheter", "achète", "achetez", "rapporter", "rapporte", "ramener", "ramène", "commander", "commande", "stp", "svp", "aussi", "encore", "les", "le", "la", "de prendre", "d'acheter"];
    private static readonly string[] German = ["kannst du", "könntest du", "können wir", "bitte", "noch", "auch", "mal", "bring", "bringt", "kauf", "kaufe", "hol", "hole", "besorg", "besorge", "bestell", "wir brauchen", "brauchen", "brauche", "ich brauche", "brauchen wir", "denk an", "nicht vergessen", "vergiss nicht", "die", "den", "das"];
    private static readonly string[] Spanish = ["puedes", "podrías", "me", "nos", "por favor", "porfa", "trae", "tráeme", "traer", "traes", "compra", "comprar", "compras", "coge", "coger", "pide", "pedir", "hacen falta", "hace falta", "faltan", "falta", "necesitamos", "necesito", "no olvides", "no te olvides de", "acuérdate de", "también", "los", "las", "el", "la"];
    private static readonly string[] Italian = ["puoi", "potresti", "mi", "ci", "per favore", "prendere", "prendi", "prendimi", "comprare", "compra", "porta", "portare", "portami", "ordina", "ordinare", "servono", "serve", "ci servono", "ci serve", "mancano", "manca", "non dimenticare", "ricordati", "ricorda", "anche", "ancora", "i", "gli", "le", "il", "la"];

    // Without one of these the words before an amount are no errand.
    private static readonly HashSet<string> Verbs = new(StringComparer.OrdinalIgnoreCase)
    {
        "need", "need to", "get", "grab", "buy", "bring", "pick up", "order", "don't forget", "dont forget", "remember", "we're out of", "out of",
        "pense à", "pensez à", "n'oublie pas", "n'oubliez pas", "il faut", "il faudrait", "il nous faut", "prendre", "prends", "prenez", "acheter", "achète", "achetez", "rapporter", "rapporte", "ramener", "ramène", "commander", "commande", "de prendre", "d'acheter",
        "bring", "bringt", "kauf", "kaufe", "hol", "hole", "besorg", "besorge", "bestell", "wir brauchen", "brauchen", "brauche", "ich brauche", "brauchen wir", "denk an", "nicht vergessen", "vergiss nicht", "kannst du", "könntest du",
        "trae", "tráeme", "traer", "traes", "compra", "comprar", "compras", "coge", "coger", "pide", "pedir", "hacen falta", "hace falta", "faltan", "falta", "necesitamos", "necesito", "no olvides", "no te olvides de", "acuérdate de",
        "prendere", "prendi", "prendimi", "comprare", "porta", "portare", "portami", "ordina", "ordinare", "servono", "serve", "ci servono", "ci serve", "mancano", "manca", "non dimenticare", "ricordati", "ricorda",
    };

    private static readonly string[] Thanks = ["please", "pls", "plz", "thanks", "thank you", "thx", "stp", "svp", "s'il te plaît", "s'il vous plaît", "merci", "bitte", "danke", "por favor", "porfa", "gracias", "per favore", "grazie", "mitbringen", "mit", "kaufen", "holen", "besorgen", "bestellen"];
    private static readonly string[] Asked = ["を買ってきてください", "買ってきてください", "を買ってきて", "買ってきて", "をお願いします", "お願いします", "をお願い", "お願い", "を買う", "買っておいて", "を買っておいて"];
    private static readonly Beginnings First = new([.. English, .. French, .. German, .. Spanish, .. Italian]);

    /// <summary>The line without the words around it; the line itself where it is no errand.</summary>
    public static string Line(string s, string lang)
    {
        if (s.Length is < 6 or > Longest)
        {
            return s;
        }

        if (lang == "ja")
        {
            return Array.Find(Asked, a => s.EndsWith(a, StringComparison.Ordinal)) is { } asked && s.Length > asked.Length + 2 && s.AsSpan().IndexOfAnyInRange('0', '9') > 0 ? s[..^asked.Length].TrimEnd('、', ' ') : s;
        }

        int at = s[0] == '¿' ? 1 : 0;
        bool verb = false;
        for (int word = at; word > 0 || at == word; at = word)
        {
            word = First.May(s, at) ? Opener(s, at, lang, ref verb) : 0;
            if (word == 0)
            {
                break;
            }
        }

        if (!verb || at >= s.Length)
        {
            // "3 lemons please": the thanks alone
            return char.IsAsciiDigit(s[0]) ? Thanked(s, errand: false) : s;
        }

        string line = Thanked(s[at..], errand: true);
        return Means(line, lang) ? line : s;
    }

    /// <summary>Place behind the word of an errand that stands here; 0 for none.</summary>
    private static int Opener(string s, int at, string lang, ref bool verb)
    {
        string? longest = null;
        foreach (string w in lang switch { "fr" => French, "de" => German, "es" => Spanish, "it" => Italian, _ => English })
        {
            longest = w.Length > (longest?.Length ?? 0) && at + w.Length < s.Length && s[at + w.Length] is ' ' or ',' or ':' && Places.WordAt(s, at, w) ? w : longest;
        }

        if (longest is null)
        {
            return 0;
        }

        verb |= Verbs.Contains(longest);
        int end = at + longest.Length;
        while (end < s.Length && s[end] is ' ' or ',' or ':')
        {
            end++;
        }

        return end;
    }

    /// <summary>True for an amount of a thing that is bought, or a food everybody knows.</summary>
    private static bool Means(string line, string lang)
    {
        int food = 0;
        if (Amounts.At(line, 0, lang) is { } m)
        {
            if (m.Unit is { Kind: "mass" or "volume" or "container" or "spoon" or "cup" })
            {
                return m.End + 2 < line.Length;
            }

            food = PartReader.Of(line, Places.Skip(line, m.End), lang);
        }

        string name = food < line.Length ? line[food..] : "";
        name = name.AsSpan().IndexOfAny(",(;") is > 0 and var stop ? name[..stop].TrimEnd() : name;
        return name.Length > 2 && char.IsLetter(name[0]) && FoodIds.Match(name, lang) is not null;
    }

    /// <summary>The line without what closes a message; "mit" only where a verb went before it.</summary>
    private static string Thanked(string s, bool errand)
    {
        s = s.TrimEnd(' ', '?', '!', '.');
        int end = s.Length;
        // "noch 2 Becher Schmand mit (je 200 g)": the word stands before the bracket.
        int open = s.IndexOf(" (", StringComparison.Ordinal);
        end = open > 0 ? open : end;
        foreach (string w in Thanks)
        {
            if (end > w.Length + 3 && (errand || w is not ("mit" or "merci")) && s[end - w.Length - 1] is ' ' or ',' && s.AsSpan(end - w.Length, w.Length).Equals(w, StringComparison.OrdinalIgnoreCase))
            {
                return s[..(end - w.Length)].TrimEnd(' ', ',', '?') + s[end..];
            }
        }

        return s;
    }
}
