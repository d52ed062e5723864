namespace Coulisse.Cards.Reading;

/// <summary>What a part is called by in the lists of others: "For the walnut pesto", "1. Béchamel", "Ragù (2.5 kg)" and "Crème pâtissière – 1 kg" are taken as walnut pesto, béchamel, ragù, crème pâtissière.</summary>
internal static class PartNames
{
    private static readonly string[] Fors = ["for the ", "for ", "pour le ", "pour la ", "pour les ", "pour l'", "für die ", "für den ", "für das ", "para el ", "para la ", "para los ", "para las ", "per il ", "per la ", "per lo ", "per i ", "per gli ", "per le ", "per l'"];
    private static readonly string[] Makes = ["makes", "yields", "for", "pour", "ergibt", "für", "para", "rinde", "per", "resa"];

    /// <summary>The bare name; null where the heading is nothing more than its name.</summary>
    public static string? Of(string heading)
    {
        ReadOnlySpan<char> name = heading.AsSpan().Trim();
        int open = name.IndexOf('(');
        name = open > 2 && name[^1] == ')' ? name[..open].TrimEnd() : name;
        int figure = 0;
        while (figure < name.Length && figure < 3 && char.IsAsciiLetterOrDigit(name[figure]) && (figure == 0 || char.IsAsciiDigit(name[figure])))
        {
            figure++;
        }

        if (figure is 1 or 2 && figure + 2 < name.Length && name[figure] is '.' or ')' && name[figure + 1] == ' ')
        {
            name = name[(figure + 2)..].TrimStart();
        }

        foreach (string w in Fors)
        {
            if (name.StartsWith(w, StringComparison.OrdinalIgnoreCase))
            {
                name = name[w.Length..].TrimStart();
                break;
            }
        }

        int dash = Math.Max(name.LastIndexOf(" - "), name.LastIndexOf(" – "));
        name = dash > 2 && Made(name[(dash + 3)..]) ? name[..dash].TrimEnd() : name;
        return name.Length > 2 && name.Length < heading.Length && name.IndexOf(':') < 0 ? name.ToString() : null;
    }

    private static bool Made(ReadOnlySpan<char> rest)
    {
        foreach (string w in Makes)
        {
            if (rest.StartsWith(w, StringComparison.OrdinalIgnoreCase) && rest.Length > w.Length && rest[w.Length] == ' ')
            {
                return true;
            }
        }

        return rest.Length > 0 && char.IsAsciiDigit(rest[0]);
    }
}
