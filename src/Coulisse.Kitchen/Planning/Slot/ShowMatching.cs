using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>Finds the dish, component and step that a row of "what is shown" means, by the words they share.</summary>
internal static class ShowMatching
{
    private static readonly HashSet<string> Empty = new(StringComparer.Ordinal)
    {
        "the", "a", "an", "of", "and", "on", "in", "into", "to", "with", "from", "one", "it", "them", "all", "at", "for", "then", "over", "is", "by", "whole",
    };

    /// <summary>Rows with the cards they mean; rows that fit no card are named in <paramref name="unmatched"/>.</summary>
    public static ImmutableArray<ShowItem> Match(Occasion occasion, ImmutableArray<SheetShow> shows, List<SheetShow> unmatched)
    {
        ImmutableArray<ShowItem>.Builder items = ImmutableArray.CreateBuilder<ShowItem>();
        foreach (SheetShow show in shows)
        {
            if (Find(occasion, show) is { } item)
            {
                items.Add(item);
            }
            else
            {
                unmatched.Add(show);
            }
        }

        return items.ToImmutable();
    }

    private static ShowItem? Find(Occasion occasion, SheetShow show)
    {
        HashSet<string> subject = Words(show.Component);
        bool plate = subject.Contains("plate") && subject.Count <= 2;
        (OccasionDish Dish, Component? Component, double Score) best = (null!, null, 0);
        foreach (OccasionDish dish in occasion.Dishes)
        {
            if (plate && dish.Dish.Components.FirstOrDefault(c => c.IsAssembly) is { } assembly && best.Score < 10)
            {
                best = (dish, assembly, 10);
            }

            double ofDish = Share(subject, Words(dish.Name + " " + dish.Dish.Title));
            if (ofDish > best.Score + 1e-9)
            {
                best = (dish, null, ofDish);
            }

            foreach (Component c in dish.Dish.Components.Where(c => !c.IsAssembly && c.Name.Length > 0))
            {
                double score = c.Code is not null && show.Component.StartsWith(c.Code + " ", StringComparison.OrdinalIgnoreCase) ? 5 : Share(subject, Words(c.Name)) + 0.05;
                if (score > best.Score + 1e-9 && score > 0.5)
                {
                    best = (dish, c, score);
                }
            }
        }

        if (best.Score < 0.5)
        {
            return null;
        }

        int parts = plate ? best.Dish.Dish.Plate.Length : 0;
        if (plate)
        {
            return new ShowItem(show, best.Dish, best.Component, null, ShowSeconds.For(show, null, Math.Max(parts, 3)));
        }

        IEnumerable<Component> where = best.Component is null ? best.Dish.Dish.Components : [best.Component];
        HashSet<string> what = Words(show.StepText);
        (Component Component, Step Step, HashSet<string> Words)[] steps = [.. where.SelectMany(c => c.Steps.Select(s => (c, s, Words(s.Text))))];

        // A word that many steps hold says little of which one is meant.
        Dictionary<string, double> rarity = what.ToDictionary(w => w, w => 1.0 / Math.Max(1, steps.Count(s => s.Words.Contains(w))), StringComparer.Ordinal);
        (Component Component, Step Step, HashSet<string> Words) step = steps
            .Where(x => Share(what, x.Words) > 0.25)
            .OrderByDescending(x => what.Where(x.Words.Contains).Sum(w => rarity[w])).ThenBy(x => x.Step.Span.Line).FirstOrDefault();
        Component component = step.Step is null ? best.Component ?? best.Dish.Dish.Components.Last(c => !c.IsAssembly) : step.Component;
        return new ShowItem(show, best.Dish, component, step.Step, ShowSeconds.For(show, show.How is ShowKind.Full or ShowKind.Begin ? step.Step : null, 0));
    }

    /// <summary>Share of the words asked for that the text holds.</summary>
    private static double Share(HashSet<string> asked, HashSet<string> text) => asked.Count == 0 ? 0 : (double)asked.Count(text.Contains) / asked.Count;

    /// <summary>Words cut to a common stem: "blending" and "blend", "discs" and "disc".</summary>
    internal static HashSet<string> Words(string text)
    {
        HashSet<string> words = new(StringComparer.Ordinal);
        foreach (string word in text.ToLowerInvariant().Split([' ', ',', '.', ';', ':', '(', ')', '–', '-', '/', '“', '”', '"'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (word.Length > 1 && !Empty.Contains(word) && char.IsLetter(word[0]))
            {
                words.Add(Stem(word));
            }
        }

        return words;
    }

    private static string Stem(string word)
    {
        foreach (string end in new[] { "ing", "ed", "es", "s" })
        {
            if (word.Length > end.Length + 2 && word.EndsWith(end, StringComparison.Ordinal))
            {
                return word[..^end.Length];
            }
        }

        return word;
    }
}
