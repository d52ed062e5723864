using System.Collections.Immutable;

namespace Coulisse.Cards.Reading;

/// <summary>A method written once for several lists: each step goes to the component it names, or whose foods it takes.</summary>
internal static class StepPlacing
{
    private const int MostPairs = 200_000;

    /// <summary>A book of more parts has no word that only one of them has, worth the looking.</summary>
    private const int MostNamed = 40;
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
        string[] names = Called(all, dish.Language);
        List<Step>[] placed = [.. all.Select(_ => new List<Step>())];
        int at = Array.FindIndex(foods, f => f.Length > 0);
        foreach (Step step in all[last].Steps)
        {
            at = Best(step.Text, all, foods, names, Math.Max(at, 0));
            placed[at].Add(step with { Anchor = step.Anchor with { Component = Words.Folding.Lower(all[at].Name), Order = placed[at].Count + 1 } });
        }

        ImmutableArray<Component> parts = [.. all.Select((c, i) => c with { Steps = [.. placed[i]] })];
        // One list without a name, and its whole method under a heading: the heading names them both.
        return parts.Length == 2 && parts[0].Name.Length == 0 && parts[1] is { Steps.IsEmpty: true, Ingredients.IsEmpty: true, Makes.IsEmpty: true, Keeps.IsEmpty: true, Vessels.IsEmpty: true }
            ? dish with { Components = [parts[0] with { Name = parts[1].Name, Notes = parts[0].Notes.AddRange(parts[1].Notes) }] }
            : dish with { Components = parts };
    }

    private static int Best(string text, ImmutableArray<Component> all, string[][] foods, string[] names, int before)
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

            int named = names[i].Length > 2 ? Words.Places.FindWord(text, names[i]) : -1;
            bool taken = named > 0 && TakenIn(text, named);
            double score = foods[i].Count(f => text.Contains(f, StringComparison.OrdinalIgnoreCase)) + (named < 0 ? 0 : taken ? -0.5 : 1.5) + (i == before ? 0.25 : 0);
            if (taken && i == before && !foods[i].Any(f => text.Contains(f, StringComparison.OrdinalIgnoreCase)) && Taker(i, names[i], all) is var taker and >= 0)
            {
                // "Add the levain and mix 5 min" behind the levain's own steps: from here on it is the dough's work.
                return taker;
            }

            if (score > most)
            {
                (best, most) = (i, score);
            }
        }

        return best;
    }

    /// <summary>True where a part is put into something: "add the levain", "mit dem Vorteig verkneten", "sur le biscuit".</summary>
    private static bool TakenIn(string text, int at)
    {
        string before = Words.Folding.Lower(text[Math.Max(0, at - 34)..at]).TrimEnd();
        for (int guard = 0; guard < 3; guard++)
        {
            foreach (string article in Articles)
            {
                if (before.EndsWith(article, StringComparison.Ordinal) && (before.Length == article.Length || article[^1] == '\'' || !char.IsLetter(before[before.Length - article.Length - 1])))
                {
                    before = before[..^article.Length].TrimEnd();
                    break;
                }
            }
        }

        return Array.Exists(Intos, w => before.EndsWith(w, StringComparison.Ordinal) && (before.Length == w.Length || !char.IsLetter(before[before.Length - w.Length - 1])));
    }

    /// <summary>The part that lists another as its food; else the one behind it; -1 when it is the last.</summary>
    private static int Taker(int part, string name, ImmutableArray<Component> all)
    {
        for (int i = 0; i < all.Length; i++)
        {
            if (i != part && all[i].Ingredients.Any(l => l.Foods.Any(f => Words.Places.FindWord(f.Food, name) >= 0)))
            {
                return i;
            }
        }

        return part + 1 < all.Length ? part + 1 : -1;
    }

    private static readonly string[] Articles = ["the", "all", "of", "remaining", "rest", "ripe", "cold", "cooled", "chilled", "whole", "la", "le", "les", "l'", "du", "de", "tout", "toute", "reste", "der", "die", "das", "dem", "den", "reifen", "gesamten", "gesamte", "el", "los", "las", "il", "lo", "gli", "i", "toda", "todo", "tutto", "tutta", "your", "its"];
    private static readonly string[] Intos = ["add", "stir in", "fold in", "mix in", "work in", "pour over", "pour in", "with", "into", "in", "onto", "on", "over", "using", "plus", "and", "to", "spread", "from", "ajouter", "ajoutez", "incorporer", "incorporez", "verser", "avec", "dans", "sur", "et", "mit", "auf", "in", "und", "zum", "zur", "über", "unter", "añadir", "añade", "incorporar", "agregar", "con", "en", "sobre", "y", "aggiungere", "unire", "incorporare", "nel", "nella", "sul", "sulla", "su", "e", "versare"];

    /// <summary>What a step calls each part: its name without what stands in brackets or behind a comma; of a longer one the word that no other part has.</summary>
    private static string[] Called(ImmutableArray<Component> all, string lang)
    {
        string[] plain = [.. all.Select(c => c.Name.AsSpan().IndexOfAny(",(") is var cut && cut > 2 ? c.Name[..cut].Trim() : c.Name)];
        return lang != "en" || all.Length > MostNamed ? plain : [.. plain.Select((name, i) => Head(name) is { Length: > 3 } head && head.Length < name.Length && !plain.Where((_, k) => k != i).Any(o => o.Contains(head, StringComparison.OrdinalIgnoreCase)) && !all.Any(c => c.Ingredients.Any(l => l.Foods.Any(f => f.Food.Contains(head, StringComparison.OrdinalIgnoreCase)))) ? head : name)];
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
