using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"The method is for the 26 cm tin.": the sentence by which a card of two sizes says which of them is made. An answer writes it, and so may a person.</summary>
internal static class ChosenSize
{
    private const string SameFor = "the same for ";
    private const string Beside = ", beside ";
    private const int Longest = 200;

    // An answer's own sentences: a list they do not name is not the one.
    internal static readonly string[] Answers = ["the method is for the ", "la méthode est pour ", "die zubereitung ist für ", "el método es para ", "il procedimento è per "];
    private static readonly string[] Openers = [.. Answers, "the method is for ", "the method is written for ", "the recipe is for ", "the amounts are for ", "made here for ", "we make ", "la recette est pour ", "das rezept ist für ", "la receta es para ", "la ricetta è per "];

    /// <summary>The sentence that chooses a list by its name.</summary>
    public static string Says(string name, string lang)
    {
        string bare = Bare(name);
        string opener = lang switch { "fr" => "La méthode est pour ", "de" => "Die Zubereitung ist für ", "es" => "El método es para ", "it" => "Il procedimento è per ", _ => "The method is for the " };
        return opener + (lang == "en" && bare.StartsWith("the ", StringComparison.OrdinalIgnoreCase) ? bare[4..] : bare) + ".";
    }

    /// <summary>What the list that was taken is called: its part, the head of its column, or what the other list says it stands beside.</summary>
    public static string Own(Component c, Variant v, Note? head) =>
        c.Name.Length > 0 ? c.Name : head?.Text ?? (v.Name.IndexOf(Beside, StringComparison.Ordinal) is var at and >= 0 ? v.Name[(at + Beside.Length)..] : "the first list");

    /// <summary>A list's name without what it stands beside.</summary>
    public static string Bare(string name)
    {
        string bare = name.IndexOf(Beside, StringComparison.Ordinal) is var at and > 0 ? name[..at] : name;
        bare = bare.StartsWith(SameFor, StringComparison.OrdinalIgnoreCase) ? bare[SameFor.Length..] : bare;
        return bare.Trim().TrimEnd('.', ':');
    }

    /// <summary>Which of the two a sentence of the card names; neither when none does, or when it names both.</summary>
    public static (bool Ours, bool Theirs) Of(Dish dish, Component c, Variant v, Note? head)
    {
        // Right under a table it is a remark among its lines.
        IEnumerable<Note> among = c.Ingredients.Concat(v.Ingredients).Where(l => l.Kind == LineKind.Note).Select(l => new Note(l.Text, l.Span));
        foreach (Note n in dish.Notes.Concat(dish.Components.SelectMany(x => x.Notes)).Concat(among))
        {
            if (n.Text.Length < Longest && Openers.FirstOrDefault(o => n.Text.StartsWith(o, StringComparison.OrdinalIgnoreCase)) is { } opener)
            {
                string said = n.Text[opener.Length..];
                bool theirs = Names(said, Bare(v.Name));
                bool ours = Names(said, Own(c, v, head)) || (!theirs && Array.IndexOf(Answers, opener) >= 0);
                if (ours != theirs)
                {
                    return (ours, theirs);
                }
            }
        }

        return (false, false);
    }

    private static bool Names(string said, string name)
    {
        if (name.Length > 1 && said.Contains(name.Trim().TrimEnd('.', ':'), StringComparison.OrdinalIgnoreCase))
        {
            return true;
        }

        // "the 26 cm tin" for a list called "Tarte, 26 cm": its size alone
        int at = name.AsSpan().IndexOfAnyInRange('0', '9');
        string size = at < 0 ? "" : name[at..].Trimmed(" )(,");
        return size.Length > 1 && Places.FindWord(said, size) >= 0;
    }
}
