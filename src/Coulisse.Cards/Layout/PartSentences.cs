using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"Per l'impasto servono 1 kg di farina, …", "For the dough you need 500 g flour and …", "生地には強力粉500g、水300gを使う": what a part takes, told in a sentence with a verb where others set a colon.</summary>
internal static class PartSentences
{
    private const int LongestName = 50;
    private static readonly string[] Openers = ["For ", "Für ", "Pour ", "Para ", "Per "];
    private static readonly string[] Verbs =
    [
        "you need ", "you'll need ", "you will need ", "you want ", "you'll want ", "we need ", "i need ", "we use ", "we take ", "i use ", "i take ", "use ", "take ",
        "braucht man ", "brauchen wir ", "brauchst du ", "brauche ich ", "braucht es ", "nimmt man ", "nehmen wir ", "nehme ich ", "benötigt man ", "benötigen wir ", "benötigt ihr ", "werden ",
        "il faut ", "il te faut ", "il vous faut ", "il nous faut ", "il me faut ", "on prend ", "on utilise ", "je prends ", "j'utilise ", "prenez ", "prendre ", "prévoir ", "prévoyez ", "compter ", "comptez ",
        "hacen falta ", "hace falta ", "se necesitan ", "se necesita ", "necesitamos ", "necesitas ", "necesito ", "usamos ", "uso ", "se usan ",
        "servono ", "serve ", "ci servono ", "vi servono ", "occorrono ", "occorre ", "ci vogliono ", "si usano ", "usiamo ", "si prendono ", "prendiamo ",
    ];

    private static readonly string[] Closers = [" gebraucht", " benötigt", " verwendet", " genommen"];
    private static readonly string[] Takers = ["を使う", "を使います", "を使用", "を使用する", "を使用します", "を用意する", "を用意します", "を用意", "が必要", "が必要です"];

    /// <summary>False only for a line that surely tells no part so: nearly every line.</summary>
    public static bool May(string s) => s.Length > 12 && (s[0] is 'F' or 'P' && Array.Exists(Openers, o => s.StartsWith(o, StringComparison.Ordinal)) || Places.IsJapanese(s[0]) && Topic(s) > 0);

    /// <summary>The line with a colon for its verb, and the verb; the same string for any other line. A figure has to stand right behind the verb, and what opens with it has to be a list.</summary>
    public static string Coloned(string s, string lang, out string verb)
    {
        verb = "";
        return !May(s) ? s : lang == "ja" ? Japanese(s, out verb) : Western(s, lang, out verb);
    }

    /// <summary>"For 10 people you need 2 kg beef, …": the same behind those who eat; the same string for any other line.</summary>
    public static string ForGuests(string s, string lang, out string verb)
    {
        verb = "";
        if (lang == "ja" || !May(s))
        {
            return s;
        }

        foreach (string w in Verbs)
        {
            int at = s.AsSpan(0, Math.Min(s.Length, LongestName + w.Length)).IndexOf(w, StringComparison.OrdinalIgnoreCase);
            if (at < 8 || s[at - 1] != ' ' || at + w.Length >= s.Length || !char.IsAsciiDigit(s[at + w.Length]) || w == "werden ")
            {
                continue;
            }

            string name = s[..at].TrimEnd(' ', ',');
            int stop = s.IndexOf(". ", at, StringComparison.Ordinal) is > 0 and var end ? end : s.Length;
            if (!Named(name) || !Lists(s[(at + w.Length)..stop].TrimEnd('.'), lang))
            {
                return s;
            }

            verb = w.Trim();
            return $"{name}: {s[(at + w.Length)..]}";
        }

        return s;
    }

    private static string Western(string s, string lang, out string told)
    {
        told = "";

        int figure = s.AsSpan().IndexOfAnyInRange('0', '9');
        if (figure is < 8 or > LongestName + 16 || s.AsSpan(0, figure).IndexOfAny(":.;(") >= 0)
        {
            return s;
        }

        foreach (string verb in Verbs)
        {
            int at = figure - verb.Length;
            if (at < 6 || s[at - 1] != ' ' || !s.AsSpan(at, verb.Length).Equals(verb, StringComparison.OrdinalIgnoreCase))
            {
                continue;
            }

            string name = s[..at].TrimEnd(' ', ',');
            if (name.Count(' ') is 0 or > 5 || Named(name) || name.Contains(','))
            {
                return s;
            }

            int stop = s.IndexOf(". ", figure, StringComparison.Ordinal) is > 0 and var end ? end : s.Length;
            string list = s[figure..stop];
            string? closed = null;
            if (verb == "werden ")
            {
                if (Array.Find(Closers, c => list.TrimEnd('.').EndsWith(c, StringComparison.Ordinal)) is not { } closer)
                {
                    return s;
                }

                list = list.TrimEnd('.')[..^closer.Length];
                closed = closer;
            }

            if (!Lists(list.TrimEnd('.'), lang))
            {
                return s;
            }

            told = closed is null ? verb.Trim() : verb + closed.Trim();
            return $"{name}: {list}{s[stop..]}";
        }

        return s;
    }

    /// <summary>True where every piece opens with its amount or is a food everybody knows, and none goes on with another amount or is work: "take 40 g of salt mixed with 20 g of sugar; cure 25 minutes" is an order.</summary>
    private static bool Lists(string list, string lang)
    {
        if (list.Contains(';') || list.Contains('°'))
        {
            return false;
        }

        foreach (string food in RunningText.Foods(list, lang))
        {
            bool front = Amounts.At(food, 0, lang) is { } m && Places.Skip(food, m.End) is var at && at < food.Length && char.IsLetter(food[at]);
            if (Looks.Timed(food, lang) || Looks.Opens(food, lang) || !front && FoodIds.Match(food, lang) is null || front && Twice(food, lang))
            {
                return false;
            }
        }

        return true;
    }

    private static bool Twice(string food, string lang)
    {
        for (int i = Places.WordEnd(food, 0); i < food.Length && food[i] != '('; i++)
        {
            if (char.IsAsciiDigit(food[i]) && food[i - 1] == ' ' && Amounts.At(food, i, lang) is { Unit: not null })
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>"For 10 people", "For six we": guests, and no part.</summary>
    private static bool Named(string name) => YieldWords.Guest(name[(name.LastIndexOf(' ') + 1)..]);

    private static string Japanese(string s, out string verb)
    {
        verb = "";
        int topic = Topic(s);
        int stop = s.IndexOf('。') is > 0 and var end ? end : s.Length;
        string told = s[..stop];
        if (topic <= 0 || topic > stop || Array.Find(Takers, t => told.EndsWith(t, StringComparison.Ordinal)) is not { } taker || told.Length - taker.Length <= topic + 4)
        {
            return s;
        }

        verb = taker;
        return $"{s[..topic]}: {told[(topic + 2)..^taker.Length].TrimStart('、', ' ')}{s[stop..]}";
    }

    /// <summary>Where "には" stands behind a short name without a figure.</summary>
    private static int Topic(string s) => s.AsSpan(0, Math.Min(s.Length, 14)).IndexOf("には") is > 0 and var at && s.AsSpan(0, at).IndexOfAnyInRange('0', '9') < 0 && s.AsSpan(0, at).IndexOfAny('、', '。') < 0 ? at : -1;
}
