using Coulisse.Cards.Reading;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Layout;

/// <summary>"Serves 10. One plate: 120 g pork, 30 g ketchup, 40 g slaw": what lies on one plate, taken from the parts below. Read as a list, it would be cooked on top of them.</summary>
internal static class PlateLines
{
    private const int Longest = 400;
    private static readonly WordSet Plates = new(anyCase: true,
        "one plate", "per plate", "each plate", "a plate", "on the plate", "on one plate", "on each plate", "for one plate", "plate of one", "pro Teller", "je Teller", "ein Teller", "auf einen Teller", "auf dem Teller", "auf jeden Teller",
        "par assiette", "une assiette", "pour une assiette", "à l'assiette", "sur l'assiette", "dans l'assiette", "chaque assiette", "por plato", "un plato", "cada plato", "para un plato", "en el plato", "per piatto", "un piatto", "ogni piatto", "per un piatto", "nel piatto", "一皿", "1皿", "一皿分", "1皿分", "一皿に");

    private static readonly WordSet Heads = new(anyCase: true,
        "per portion", "per cover", "per person", "per serving", "per guest", "one portion", "one cover", "one serving", "each portion", "each serving", "pro Portion", "je Portion", "eine Portion", "pro Person", "pro Gast", "par personne", "par portion", "par couvert", "une portion", "por ración", "por persona", "por cubierto", "por comensal", "una ración", "per persona", "per porzione", "a porzione", "a persona", "una porzione", "1人分", "1人前", "一人前", "一人分");

    /// <summary>True for a line one of whose sentences tells a plate.</summary>
    /// <param name="s">The line.</param>
    /// <param name="lang">Language code.</param>
    /// <param name="parts">The card has parts a plate is made from: without them "Per person: 150 g fish, 20 g butter" is a list.</param>
    public static bool In(string s, string lang, bool parts)
    {
        int colon = s.Length > Longest ? -1 : s.AsSpan().IndexOfAny(':', '：');
        if (colon < 2 || !Labelled(s.AsSpan(0, colon), s.Length > 0 && s[0] != '#'))
        {
            return false;
        }

        string body = Folding.Line(s);
        foreach (string sentence in Statements.Sentences(body))
        {
            if (Tail(sentence) is > 0 and var from && (Plates.Contains(Label(sentence)) || parts || !body.StartsWith(sentence, StringComparison.Ordinal)) && Parts(sentence[from..], lang))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Place behind the label of a sentence that tells a plate; 0 for any other sentence.</summary>
    public static int Tail(string sentence) => sentence.IndexOf(':') is > 1 and var colon && Label(sentence) is { Length: > 1 } label && (Plates.Contains(label) || Heads.Contains(label)) ? colon + 1 : 0;

    /// <summary>Every piece is so much of something; energy and prices are of no part.</summary>
    public static bool Parts(string list, string lang)
    {
        string[] parts = list.Trim().TrimEnd('.').Split(lang == "ja" && list.Contains('、') ? "、" : ", ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return parts.Length > 0 && Array.TrueForAll(parts, p => p.Length > 3 && LineKinds.HasAmount(p, lang) && !p.Contains('€') && !Places.HasAny(p, "kcal", "kJ", "cal"));
    }

    private static string Label(string sentence) => sentence.IndexOf(':') is > 1 and var colon ? sentence[..colon].Trim() : "";

    /// <summary>True where the words before the first colon end with such a label: nearly no line's do.</summary>
    private static bool Labelled(ReadOnlySpan<char> head, bool plain)
    {
        if (!plain)
        {
            return false;
        }

        int stop = Math.Max(head.LastIndexOf(". "), head.LastIndexOf('。'));
        ReadOnlySpan<char> label = head[(stop < 0 ? 0 : stop + 1)..].Trim(" *_-　");
        return label.Length is > 1 and < 24 && (Plates.Contains(label) || Heads.Contains(label));
    }
}
