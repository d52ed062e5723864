using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"for the tin", "to glaze", "pour le plan de travail", "zum Ausbacken": what a food is for.</summary>
internal static class Uses
{
    /// <summary>True when the words begin with a purpose.</summary>
    public static bool Begins(string w, string lang)
    {
        if (!First.May(w, 0))
        {
            return false;
        }

        foreach (string o in Openers(lang))
        {
            if (Places.WordAt(w, 0, o) && w.Length > o.Length + 1)
            {
                return true;
            }
        }

        return Places.WordAt(w, 0, "to") && Places.HasAny(w, "serve", "finish", "garnish", "glaze", "dust", "taste", "decorate", "grease", "brush", "fry", "coat", "roll", "season");
    }

    /// <summary>Takes a purpose off the end of a food: "Öl zum Ausbacken", "flour for dusting".</summary>
    public static void TakeFrom(Draft d, string lang)
    {
        if (lang == "en")
        {
            TakeTo(d);
        }

        foreach (string o in First.MayIn(d.Food) ? Openers(lang) : [])
        {
            int at = Places.FindWord(d.Food, o, 2);
            if (at > 1 && at + o.Length + 1 < d.Food.Length)
            {
                // "lievito per dolci" and "spice mix for bread" are names; a purpose binds when no amount does or a known purpose word follows.
                string use = d.Food[at..];
                if (d.Amount is null || IsPurpose(use) || lang == "de" && o is "zum" && use[^1] == 'n' && use.Count(' ') == 1)
                {
                    d.Use ??= use;
                    d.Tokens?.Add(new ReadToken(use, "use", use));
                    d.Food = d.Food[..at].TrimmedEnd(" ,");
                    return;
                }
            }
        }
    }

    /// <summary>"flaky sea salt to finish", "double cream to cover": an English purpose without a comma.</summary>
    private static void TakeTo(Draft d)
    {
        foreach (string use in d.Food.Contains(" to ", StringComparison.OrdinalIgnoreCase) ? ToDo : [])
        {
            if (d.Food.Length > use.Length + 2 && d.Food.EndsWith(use, StringComparison.OrdinalIgnoreCase))
            {
                d.Use ??= use.Trim();
                d.Tokens?.Add(new ReadToken(use.Trim(), "use", use.Trim()));
                d.Food = d.Food[..^use.Length].TrimmedEnd(" ,");
                return;
            }
        }
    }

    private static readonly string[] ToDo = [" to finish", " to serve", " to garnish", " to decorate", " to dust", " to cover", " to glaze", " to season"];
    private static readonly string[] French = ["pour"];
    private static readonly string[] German = ["zum", "zur", "für"];
    private static readonly string[] Spanish = ["para"];
    private static readonly string[] Italian = ["per"];
    private static readonly string[] English = ["for"];
    private static readonly Beginnings First = new([.. French, .. German, .. Spanish, .. Italian, .. English, "to"]);

    private static string[] Openers(string lang) => lang switch { "fr" => French, "de" => German, "es" => Spanish, "it" => Italian, _ => English };

    private static bool IsPurpose(string use) => Places.HasAny(use, "dusting", "frying", "stock", "roasting", "poaching", "brushing", "basting", "braising", "plating", "the table", "greasing", "rolling", "tin", "pan", "mould", "moulds", "top", "glaze", "glazing", "gelatine", "serving", "sprinkling", "moule", "four", "teglia", "spolvero", "Form", "Ausbacken", "Bestreuen", "Braten", "Anbraten", "Frittieren", "Bestäuben", "Einfetten", "Garnieren", "Servieren", "freír", "molde", "friggere", "servire", "dorer", "paner", "graisser", "rebozar", "empanar", "dorar", "pintar", "engrasar", "impanare", "infarinare", "spennellare", "ungere", "servir", "plan de travail", "la plaque", "finition", "décor", "décorer", "dresser", "saupoudrer", "accompagner", "decorar", "adornar", "espolvorear", "acompañar", "terminar", "stampo", "spolverare", "decorare", "guarnire", "accompagnare", "rifinire", "piano di lavoro", "Arbeitsfläche", "Backblech", "Dekorieren", "Panieren", "Wenden", "Bestreichen", "coating", "breading");
}
