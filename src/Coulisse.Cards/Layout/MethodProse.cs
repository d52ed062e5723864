using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>A method told in sentences where the layout announces none: right behind a list of ingredients, or in one paragraph with how long the thing keeps.</summary>
internal static class MethodProse
{
    private const int FewestWords = 3;

    /// <summary>Shorter waits are work ("Keep warm for 5 minutes."): half a day.</summary>
    private const double Storage = 12 * 60;
    private static readonly WordList Bare = new("shred", "feed", "seed", "weed", "bleed", "embed", "spread");

    /// <summary>True for a line behind an ingredient list that tells work and can be no food: "Brown the lamb. Simmer for 2 hours." "Butter for greasing the tin." is one.</summary>
    /// <param name="body">The line.</param>
    /// <param name="opens">A blank line stands before it.</param>
    /// <param name="before">The line before it.</param>
    /// <param name="lang">Language code.</param>
    public static bool EndsList(string body, bool opens, string before, string lang)
    {
        if (body.Length < 10 || Looks.Amounted(body, lang) || Amounts.At(body, 0, lang) is not null)
        {
            return false;
        }

        if (lang == "ja")
        {
            return body[^1] == '。' && Operations.In(body.Length > 300 ? body[..300] : body, lang).Count > 0;
        }

        List<string> sentences = Sentences(body.Length > 600 ? body[..600] : body);
        bool stops = body[^1] is '.' or '!' || sentences.Count > 1;
        if (!stops)
        {
            return opens && Orders(body, lang) && Looks.Timed(body, lang);
        }

        int told = 0;
        int orders = 0;
        foreach (string s in sentences)
        {
            bool order = Orders(s, lang);
            orders += order ? 1 : 0;
            told += order || s.Count(' ') + 1 > FewestWords && Looks.Work(s, lang) && !Serves(s, lang) ? 1 : 0;
        }

        bool timed = Looks.Timed(body, lang) || body.Contains('°');
        if (opens)
        {
            // In a list whose lines end in stops a single sentence has to give an order.
            return told > 0 && (orders > 0 || timed || sentences.Count > 1 || before.Length == 0 || before[^1] != '.');
        }

        return orders > 1 || orders > 0 && timed && body.Count(' ') >= FewestWords || told > 1 && timed;
    }

    /// <summary>A paragraph of work that also tells how long the thing keeps or how many it serves, as its pieces: the work stays work. False for any other paragraph.</summary>
    public static bool Cut(RawLine raw, string body, string lang, List<Piece> into)
    {
        List<string> sentences = Sentences(body);
        if (sentences.Count < 2 || !sentences.Exists(s => !Beside(s, lang) && Works(s, lang)))
        {
            return false;
        }

        int from = 0;
        while (from < sentences.Count)
        {
            bool beside = Beside(sentences[from], lang);
            int end = from + 1;
            while (end < sentences.Count && Beside(sentences[end], lang) == beside)
            {
                end++;
            }

            into.Add(new Piece(beside ? PieceKind.Paragraph : PieceKind.Step, string.Join(' ', sentences.Skip(from).Take(end - from)), raw.Span));
            from = end;
        }

        return true;
    }

    /// <summary>"Salen 24 galletas. Se guardan 5 días en una lata.": two sentences and more, none of which is work.</summary>
    public static bool AllBeside(string body, string lang) =>
        body.Length is > 20 and < 200 && body.IndexOf(". ", StringComparison.Ordinal) is > 4 and var stop && Beside(body[..(stop + 1)], lang) && Sentences(body) is { Count: > 1 } all && all.TrueForAll(s => Beside(s, lang));

    /// <summary>"Cuisson : 35 min à 190 °C.": a stage told by its label, with its heat and its time; a time alone is a line of the head.</summary>
    public static bool Baked(string body, string lang) => OvenLine(body, lang) ||
        body.Length < 80 && body.IndexOf(':') is > 2 and < 20 and var colon && body.IndexOf('°', colon) > 0 && char.IsLetter(body[0]) && body.AsSpan(0, colon).IndexOfAnyInRange('0', '9') < 0 && Clock.Tells(body, colon, lang) && !Looks.Amounted(body, lang) && !body.Contains("keep", StringComparison.OrdinalIgnoreCase) && !body.Contains("onserv", StringComparison.OrdinalIgnoreCase);

    /// <summary>"Oven 165C fan / 28 min / cool in the tray 2 h": the oven, its heat and how long, without a verb.</summary>
    private static bool OvenLine(string body, string lang) =>
        FirstOfOvens.May(body, 0) && body.Length < 120 && Array.Find(Ovens, o => Places.WordAt(body, 0, o)) is { } oven && body.AsSpan().IndexOfAnyInRange('0', '9') is var at && at > oven.Length && at < oven.Length + 4
        && body.AsSpan(at).IndexOfAnyExceptInRange('0', '9') is (2 or 3) and var figures && body.AsSpan(at + figures).TrimStart() is ['°' or '℃' or 'C' or 'F', ..] && Clock.Tells(body, at + figures, lang);

    private static readonly string[] Ovens = ["oven", "ofen", "backofen", "four", "horno", "forno", "オーブン"];
    private static readonly Beginnings FirstOfOvens = new(Ovens);

    /// <summary>The sentences with their stops.</summary>
    public static List<string> Sentences(string s)
    {
        List<string> all = [];
        int start = 0;
        for (int i = 0; i < s.Length; i++)
        {
            if (s[i] == '。' || s[i] is '.' or '!' && i + 1 < s.Length && s[i + 1] == ' ' && Reading.Sentences.Stops(s, i))
            {
                all.Add(s[start..(i + 1)].Trim());
                start = i + 1;
            }
        }

        if (s[start..].Trim() is { Length: > 0 } rest)
        {
            all.Add(rest);
        }

        return all;
    }

    /// <summary>A sentence that opens with a verb of work: "Season and serve." A form ("Grated zest.") is none.</summary>
    private static bool Orders(string s, string lang)
    {
        int end = Places.WordEnd(s, 0);
        return s.Contains(' ') && Looks.Opens(s, lang) && !(lang == "en" && end > 3 && s.AsSpan(end - 2, 2).Equals("ed", StringComparison.OrdinalIgnoreCase) && !Bare.In(s[..end])) && !Serves(s, lang, 12);
    }

    /// <summary>"Butter for greasing the tin": what a food is for. A sentence that opens with its verb may say so behind.</summary>
    private static bool Serves(string s, string lang, int within = 400)
    {
        for (int at = s.IndexOf(' '); at > 0 && at < within; at = s.IndexOf(' ', at + 1))
        {
            if (Lexicon.Longest("use", s, at + 1, 4, lang, out _) is not null)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True for a sentence of work that is more than putting away.</summary>
    private static bool Works(string s, string lang) =>
        (Looks.Work(s, lang) || Looks.Opens(s, lang)) && Operations.In(s.Length > 300 ? s[..300] : s, lang).Exists(o => o.Id is not ("receive_store" or "cover_wrap" or "label" or "freeze" or "set_aside" or "serve"));

    /// <summary>True for a sentence beside the work: it serves, it makes, it keeps for half a day or more.</summary>
    private static bool Beside(string s, string lang)
    {
        if (!Looks.Statement(s, lang))
        {
            return false;
        }

        bool timed = false;
        for (int i = 0; i < s.Length; i++)
        {
            if (char.IsAsciiDigit(s[i]) && (i == 0 || !char.IsLetterOrDigit(s[i - 1]) || Places.IsJapanese(s[i - 1])) && Clock.At(s, i, lang) is { } t)
            {
                if (t.Max < Storage)
                {
                    return false;
                }

                timed = true;
            }
        }

        return timed || !Works(s, lang);
    }
}
