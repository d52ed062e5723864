using System.Collections.Immutable;

namespace Coulisse.Cards.Reading;

/// <summary>A method written once for several lists: each step goes to the component it names, or whose foods it takes.</summary>
internal static class StepPlacing
{
    private const int MostPairs = 200_000;
    private static readonly string[] Fors = ["For the ", "Pour la ", "Pour le ", "Für den ", "Für die ", "Para la ", "Para el ", "Per la ", "Per il "];

    /// <summary>Places the steps of a common method; a card whose components have steps of their own is left alone.</summary>
    public static Dish Place(Dish dish)
    {
        ImmutableArray<Component> all = dish.Components;
        int last = all.Length - 1;
        bool common = last > 0 && !all[last].Steps.IsEmpty && !all[last].IsAssembly && all.Take(last).All(c => c.Steps.IsEmpty && !c.Ingredients.IsEmpty);
        if (!common || (long)all[last].Steps.Length * all.Sum(c => c.Ingredients.Length) > MostPairs)
        {
            return dish;
        }

        string[][] foods = [.. all.Select(Heads)];
        List<Step>[] placed = [.. all.Select(_ => new List<Step>())];
        int at = Array.FindIndex(foods, f => f.Length > 0);
        foreach (Step step in all[last].Steps)
        {
            at = Best(step.Text, all, foods, Math.Max(at, 0));
            placed[at].Add(step with { Anchor = step.Anchor with { Component = Words.Folding.Lower(all[at].Name), Order = placed[at].Count + 1 } });
        }

        ImmutableArray<Component> parts = [.. all.Select((c, i) => c with { Steps = [.. placed[i]] })];
        // One list without a name, and its whole method under a heading: the heading names them both.
        return parts.Length == 2 && parts[0].Name.Length == 0 && parts[1] is { Steps.IsEmpty: true, Ingredients.IsEmpty: true, Makes.IsEmpty: true, Keeps.IsEmpty: true, Vessels.IsEmpty: true }
            ? dish with { Components = [parts[0] with { Name = parts[1].Name, Notes = parts[0].Notes.AddRange(parts[1].Notes) }] }
            : dish with { Components = parts };
    }

    private static int Best(string text, ImmutableArray<Component> all, string[][] foods, int before)
    {
        int best = before;
        double most = 0.5;
        for (int i = 0; i < all.Length; i++)
        {
            string name = all[i].Name;
            if (Labelled(text, name) || Opens(text, name))
            {
                return i;
            }

            double score = foods[i].Count(f => text.Contains(f, StringComparison.OrdinalIgnoreCase)) + (name.Length > 2 && text.Contains(name, StringComparison.OrdinalIgnoreCase) ? 1.5 : 0) + (i == before ? 0.25 : 0);
            if (score > most)
            {
                (best, most) = (i, score);
            }
        }

        return best;
    }

    /// <summary>"Sponge 45 min at 28 °C", "For the dough, mix …": the part opens its step; "Add the sponge" takes it into another.</summary>
    private static bool Opens(string text, string name) =>
        name.Length > 2 && (Words.Places.WordAt(text, 0, name) || Array.Exists(Fors, f => text.Length > f.Length && text.StartsWith(f, StringComparison.OrdinalIgnoreCase) && Words.Places.WordAt(text, f.Length, name)));

    /// <summary>"Insert: warm the purée" belongs to "Pear insert".</summary>
    private static bool Labelled(string text, string name)
    {
        int colon = text.IndexOf(':');
        string label = colon is > 2 and < 40 ? text[..colon].Trim() : "";
        return label.Length > 2 && name.Length > 2 && name.Contains(label, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>The word that names each food: the last of an English name, the first of a Romance one, all of a Japanese one.</summary>
    private static string[] Heads(Component c) => [.. c.Ingredients.SelectMany(l => l.Foods).Select(f => Head(f.Food)).Where(h => h.Length > 1).Distinct(StringComparer.OrdinalIgnoreCase)];

    private static string Head(string food)
    {
        if (food.Length > 0 && Words.Places.IsJapanese(food[0]))
        {
            return food;
        }

        int of = food.IndexOf(" d", StringComparison.Ordinal);
        string phrase = of > 2 && food[(of + 1)..] is var rest && (rest.StartsWith("de ", StringComparison.Ordinal) || rest.StartsWith("d'", StringComparison.Ordinal) || rest.StartsWith("di ", StringComparison.Ordinal) || rest.StartsWith("du ", StringComparison.Ordinal)) ? food[..of] : food;
        string[] words = phrase.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        string word = words.Length == 0 ? "" : words[^1];
        return word.Length > 3 ? word.TrimEnd('s') : word;
    }
}
