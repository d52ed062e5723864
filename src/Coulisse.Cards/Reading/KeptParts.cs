using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"The curd keeps 5 days in the fridge": how long a part keeps, told by its name, belongs to that part wherever on the card it stands. Without a name it stays where it was told.</summary>
internal static class KeptParts
{
    private const int LongestSubject = 40;
    private static readonly string[] Verbs = ["keeps", "keep", "will keep", "lasts", "will last", "hält", "halten", "se conserve", "se conservent", "se conserva", "se conservan", "si conserva", "si conservano"];
    private static readonly Beginnings FirstOfVerbs = new(Verbs);
    private static readonly string[] Articles = ["the", "le", "la", "les", "l'", "der", "die", "das", "el", "los", "las", "il", "lo", "gli", "i"];
    private static readonly string[] Fors = ["for the ", "for ", "pour la ", "pour le ", "pour les ", "für die ", "für den ", "für das ", "para la ", "para el ", "per la ", "per il "];

    /// <summary>The dish with each such sentence at its part.</summary>
    public static Dish Of(Dish dish)
    {
        if (dish.Components.Length < 2)
        {
            return dish;
        }

        Dictionary<string, int> named = Named(dish);
        List<Keeping>?[] moved = new List<Keeping>?[dish.Components.Length];
        HashSet<string> told = new(StringComparer.Ordinal);
        bool any = false;
        for (int i = 0; i < dish.Components.Length; i++)
        {
            foreach (Keeping k in dish.Components[i].Keeps)
            {
                told.Add(k.Text);
                if (Part(k.Text, named) is var part and >= 0 && part != i)
                {
                    (moved[part] ??= []).Add(k);
                    any = true;
                }
            }
        }

        foreach (Note note in dish.Notes)
        {
            foreach (string sentence in FirstOfVerbs.MayIn(note.Text) ? Statements.Sentences(note.Text) : [])
            {
                if (Part(sentence, named) is var part and >= 0 && told.Add(sentence))
                {
                    Keepings.Add(sentence, note.Span, dish.Language, moved[part] ??= []);
                    any = true;
                }
            }
        }

        return !any ? dish : dish with { Components = [.. dish.Components.Select((c, i) => c with { Keeps = [.. c.Keeps.Where(k => Part(k.Text, named) is var part && (part < 0 || part == i)), .. moved[i] ?? []] })] };
    }

    /// <summary>Parts by their whole name and by the noun of it; -1 where two share it.</summary>
    private static Dictionary<string, int> Named(Dish dish)
    {
        Dictionary<string, int> named = new(StringComparer.Ordinal);
        bool first = dish.Language is "fr" or "es" or "it";
        for (int i = 0; i < dish.Components.Length; i++)
        {
            string name = Folding.Lower(dish.Components[i].Name.Trim());
            foreach (string lead in Fors)
            {
                if (name.StartsWith(lead, StringComparison.Ordinal))
                {
                    name = name[lead.Length..];
                    break;
                }
            }

            int blank = first ? name.IndexOf(' ') : name.LastIndexOf(' ');
            Add(named, name, i);
            Add(named, blank < 0 ? name : first ? name[..blank] : name[(blank + 1)..], i);
        }

        return named;
    }

    private static void Add(Dictionary<string, int> named, string name, int i)
    {
        if (name.Length > 2)
        {
            named[name] = named.TryGetValue(name, out int had) && had != i ? -1 : i;
        }
    }

    /// <summary>The part a sentence of keeping names before its verb; -1 for none.</summary>
    private static int Part(string sentence, Dictionary<string, int> named)
    {
        string head = sentence.Length > LongestSubject + 14 ? sentence[..(LongestSubject + 14)] : sentence;
        foreach (string verb in Verbs)
        {
            int at = Places.FindWord(head, verb);
            if (at <= 2 || at > LongestSubject)
            {
                continue;
            }

            string subject = Folding.Lower(head[..at].Trim());
            foreach (string article in Articles)
            {
                if (Places.WordAt(subject, 0, article))
                {
                    subject = subject[article.Length..].TrimStart();
                    break;
                }
            }

            if (named.TryGetValue(subject, out int part))
            {
                return part;
            }
        }

        return -1;
    }
}
