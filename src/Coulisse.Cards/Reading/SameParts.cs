using System.Collections.Immutable;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>"For the cream" over its list, and further down "Cream" over its work: one part, told in two places. Two lists of one name, or two methods, stay apart.</summary>
internal static class SameParts
{
    private static readonly string[] Leads = ["for the ", "for ", "to make the ", "ingredients for the ", "pour la ", "pour le ", "pour les ", "pour l'", "für den ", "für die ", "für das ", "para la ", "para el ", "para los ", "para las ", "per la ", "per il ", "per i ", "per le ", "per lo ", "per l'", "the ", "la ", "le ", "les ", "l'", "die ", "der ", "das ", "el ", "il "];
    private static readonly string[] Tails = [" - ingredients", " – ingredients", " ingredients", " - method", " – method", " method", " (ingredients)", " (method)", " - zutaten", " – zutaten", " - ingrédients", " – ingrédients", " - ingredientes", " – ingredientes", " - ingredienti", " – ingredienti", " - zubereitung", " – zubereitung", " - préparation", " – préparation", " - preparación", " – preparación", " - preparazione", " – preparazione"];

    /// <summary>A card of more parts is a book.</summary>
    private const int Most = 4_000;

    /// <summary>The dish with such parts joined.</summary>
    public static Dish Joined(Dish dish)
    {
        ImmutableArray<Component> all = dish.Components;
        if (all.Length is < 2 or > Most)
        {
            return dish;
        }

        Dictionary<string, int> lists = new(StringComparer.Ordinal);
        HashSet<string> several = new(StringComparer.Ordinal);
        for (int i = 0; i < all.Length; i++)
        {
            if (all[i] is { Ingredients.IsEmpty: false, Steps.IsEmpty: true } && Bare(all[i].Name) is { Length: > 2 } name && !lists.TryAdd(name, i))
            {
                several.Add(name);
            }
        }

        Component?[] parts = [.. all];
        bool joined = false;
        for (int k = 1; k < all.Length; k++)
        {
            if (all[k] is { Ingredients.IsEmpty: true, Steps.IsEmpty: false } && Bare(all[k].Name) is { Length: > 2 } name && !several.Contains(name) && lists.Remove(name, out int i) && i < k)
            {
                parts[i] = all[i] with
                {
                    Name = Untotalled(all[i].Name) == all[i].Name ? all[k].Name : all[i].Name, Code = all[i].Code ?? all[k].Code, Steps = all[k].Steps, Notes = all[i].Notes.AddRange(all[k].Notes), Makes = all[i].Makes.AddRange(all[k].Makes), Keeps = all[i].Keeps.AddRange(all[k].Keeps), Vessels = all[i].Vessels.AddRange(all[k].Vessels),
                };
                parts[k] = null;
                joined = true;
            }
        }

        return joined ? dish with { Components = [.. parts.OfType<Component>()] } : dish;
    }

    /// <summary>The name without the words that lead to it.</summary>
    private static string Bare(string name)
    {
        string key = Folding.Lower(Untotalled(name)).Trim(' ', ':');
        string? tail = Array.Find(Tails, t => key.EndsWith(t, StringComparison.Ordinal));
        key = tail is null ? key : key[..^tail.Length].TrimEnd();
        string? lead = Array.Find(Leads, l => key.StartsWith(l, StringComparison.Ordinal));
        return lead is null ? key : key[lead.Length..].Trim();
    }

    /// <summary>"SAUCE - 1 litre" without what it makes.</summary>
    private static string Untotalled(string name) => name.LastIndexOf(" - ", StringComparison.Ordinal) is > 0 and var at && at + 3 < name.Length && char.IsAsciiDigit(name[at + 3]) ? name[..at] : name;
}
