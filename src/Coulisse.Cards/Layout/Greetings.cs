using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>The first and last words of a letter that brings a card: "Hi chef,", "Viele Grüße, Anna". They name nothing and are no work.</summary>
internal static class Greetings
{
    private const int Longest = 80;
    private static readonly string[] Hellos = ["hi", "hello", "hey", "dear", "morning", "good morning", "bonjour", "bonsoir", "salut", "coucou", "cher", "chère", "chers", "chères", "hallo", "liebe", "lieber", "moin", "servus", "guten tag", "guten morgen", "hola", "buenos días", "buenas", "querido", "querida", "queridos", "estimado", "estimada", "ciao", "buongiorno", "buonasera", "salve", "caro", "cara", "cari", "お疲れ様です", "お世話になっております", "こんにちは"];
    private static readonly string[] Byes = ["cheers", "thanks", "many thanks", "thank you", "best", "best wishes", "best regards", "kind regards", "regards", "all the best", "see you", "love", "yours", "merci", "bien à toi", "bien à vous", "cordialement", "bises", "bisous", "à bientôt", "amicalement", "danke", "viele grüße", "liebe grüße", "lg", "vg", "mfg", "beste grüße", "mit freundlichen grüßen", "schöne grüße", "gruß", "grüße", "gracias", "saludos", "un saludo", "un abrazo", "besos", "un beso", "hasta pronto", "grazie", "saluti", "un saluto", "cordiali saluti", "un abbraccio", "baci", "a presto", "よろしくお願いします", "よろしくお願いいたします"];
    private static readonly Beginnings FirstOfHellos = new(Hellos);
    private static readonly Beginnings FirstOfByes = new(Byes);

    /// <summary>"Hi chef,", "Hallo zusammen!", "Hi Tom, here is the focaccia as we do it:": a letter begins.</summary>
    public static bool Opens(string s) => FirstOfHellos.May(s, 0) && Is(s, Hellos, out int end) && (Ends(s, end) || s.Length < Longest && s.AsSpan(end).IndexOfAny(',', '!') is >= 0 and < 24 && s.AsSpan().IndexOfAnyInRange('0', '9') < 0);

    /// <summary>True for any sentence that opens with a greeting: "Hi both, lunch tomorrow is for 25, please do the stew."</summary>
    public static bool Begins(string s) => FirstOfHellos.May(s, 0) && Is(s, Hellos, out int end) && s.AsSpan(end, Math.Min(24, s.Length - end)).IndexOfAny(',', '!') >= 0;

    private static readonly WordList Bringers = new("here is", "here's", "here are", "here it is", "here you go", "as promised", "voici", "voilà", "la voilà", "le voilà", "comme promis", "je t'envoie", "hier ist", "hier kommt", "wie versprochen", "da ist es", "aquí tienes", "aquí va", "aquí está", "te paso", "te mando", "como te prometí", "ecco", "eccola", "eccolo", "eccoti", "ti mando", "come promesso");

    /// <summary>"Voilà enfin ma recette (24 madeleines) :", "Ciao Carla, eccola. Per 4:": a letter leads into its list, and names nothing.</summary>
    public static bool LeadsIn(string s) => s.Length < 120 && (Bringers.In(s) || Begins(s));

    /// <summary>"From: Aunt's e-mail", "Betreff: Knödel": the head of a message.</summary>
    public static bool Header(string s) => CardOwners.Is(s) || s.IndexOf(':') is > 1 and < 10 and var colon && (Heads.Contains(s[..colon].Trim()) || Dated(s, colon)) && s.AsSpan(colon).IndexOfAnyInRange('0', '9') is < 0 or > 0 && !s.Contains('|');

    /// <summary>"A: Carla" under "Da: Lucia": whom a message is for, where one letter says so.</summary>
    public static bool Receiver(string before, string s) => s.Length is > 3 and < 60 && s[1] == ':' && s[0] is 'A' or 'a' or 'À' or 'à' && Header(before) && s.AsSpan().IndexOfAnyInRange('0', '9') < 0;

    /// <summary>"Date: Tue, 4 Mar 2025 22:47": when a message was sent; "Date: 200 g" is a food.</summary>
    private static bool Dated(string s, int colon) => s[..colon].Trim().ToLowerInvariant() is "date" or "datum" or "fecha" or "data" or "日時" && s.AsSpan(colon + 1).Contains(':');

    private static readonly HashSet<string> Heads = new(StringComparer.OrdinalIgnoreCase) { "from", "to", "subject", "sent", "cc", "fwd", "fw", "re", "von", "an", "betreff", "gesendet", "de", "à", "objet", "envoyé", "asunto", "enviado", "para", "da", "a", "oggetto", "inviato", "件名", "差出人" };

    /// <summary>"Cheers, Ana", "Viele Grüße": a letter ends.</summary>
    public static bool Closes(string s) => s.Length < 48 && FirstOfByes.May(s, 0) && Is(s, Byes, out int end) && s.AsSpan().IndexOfAnyInRange('0', '9') < 0 && (end == s.Length || s[end] is ',' or '!' or '.' && s.Count(' ') < 6);

    private static readonly WordList Farewells = new("see you at", "see you tomorrow", "see you later", "see you then", "see you on", "à tout à l'heure", "à plus tard", "on se voit", "wir sehen uns", "bis später", "bis nachher", "nos vemos", "hasta luego", "ci vediamo", "a dopo", "ci sentiamo");

    /// <summary>"ta. bus in 10 min, see you at 3", "grazie, a dopo, stacco alle 23": one takes one's leave, and whatever figure stands there is of the day.</summary>
    public static bool Leaves(string s, string lang) => s.Length < 60 && Farewells.In(s) && !Reading.NoteHeats.Weighs(s, lang);

    private static bool Ends(string s, int end) => s.Length < 40 && s[^1] is ',' or '!' && s.AsSpan(end).Count(' ') < 4;

    private static bool Is(string s, string[] words, out int end)
    {
        end = 0;
        foreach (string w in words)
        {
            if (w.Length > end && Places.WordAt(s, 0, w))
            {
                end = w.Length;
            }
        }

        return end > 0;
    }
}
