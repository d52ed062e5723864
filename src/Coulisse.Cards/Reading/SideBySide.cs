using System.Collections.Immutable;
using Coulisse.Cards.Words;

namespace Coulisse.Cards.Reading;

/// <summary>Two sizes of one list are alternatives: one is taken, the other stands beside it and is never added.</summary>
internal static class SideBySide
{
    private const int MostLooked = 400;

    // What the card says outright goes before all that is gathered from it.
    private const int Chosen = 1000;

    /// <summary>Finds components that repeat another in a second size, and chooses the one the rest of the card speaks of.</summary>
    public static Dish Fold(Dish dish, List<Doubt> doubts)
    {
        List<Component> kept = [];
        List<Variant> variants = [.. dish.Variants];
        Dictionary<string, int> bases = new(StringComparer.OrdinalIgnoreCase);
        foreach (Component c in dish.Components)
        {
            string bare = Bare(c.Name);
            if (bare.Length > 2 && bare.Length < c.Name.Length && bases.TryGetValue(bare, out int first) && (c.Steps.IsEmpty || kept[first].Steps.IsEmpty) && SameFoods(kept[first].Ingredients, c.Ingredients))
            {
                variants.Add(new Variant(kept[first].Name, c.Name, c.Ingredients, c.Span));
                // A method behind the second list is the method of both; its sentences are kept too.
                kept[first] = kept[first] with { Steps = c.Steps.IsEmpty ? kept[first].Steps : c.Steps, Notes = kept[first].Notes.AddRange(c.Notes) };
                continue;
            }

            bases.TryAdd(bare, kept.Count);
            kept.Add(c);
        }

        if (variants.Count == 0)
        {
            return dish;
        }

        dish = dish with { Components = [.. kept], Variants = [.. variants] };
        return variants.Count > MostLooked ? dish : Choose(dish, doubts);
    }

    private static Dish Choose(Dish dish, List<Doubt> doubts)
    {
        ImmutableArray<Component>.Builder components = dish.Components.ToBuilder();
        List<Variant> variants = [];
        HashSet<string> asked = new(StringComparer.OrdinalIgnoreCase);
        foreach (Variant v in dish.Variants)
        {
            int at = -1;
            for (int i = 0; i < components.Count; i++)
            {
                at = components[i].Name == v.Component ? i : at;
            }

            if (at < 0)
            {
                variants.Add(v);
                continue;
            }

            Component c = components[at];
            string[] steps = [.. components.SelectMany(x => x.Steps).Select(s => s.Text)];
            Note? head = c.Name.Length > 0 ? null : c.Notes.Concat(dish.Notes).FirstOrDefault(n => n.Span.Line == v.Span.Line);
            (bool Ours, bool Theirs) chosen = ChosenSize.Of(dish, c, v, head);
            int ours = (chosen.Ours ? Chosen : 0) + Spoken(c.Ingredients, v.Ingredients, steps) + (head is null ? Size(c.Name, dish, components) : Told(head, dish)) + Worked(head?.Text ?? c.Name, ChosenSize.Bare(v.Name), steps);
            int theirs = (chosen.Theirs ? Chosen : 0) + Spoken(v.Ingredients, c.Ingredients, steps) + Size(ChosenSize.Bare(v.Name), dish, components) + Worked(ChosenSize.Bare(v.Name), head?.Text ?? c.Name, steps);
            if (theirs > ours)
            {
                components[at] = c with { Ingredients = v.Ingredients };
                variants.Add(new Variant(c.Name, v.Name.Contains("the first list", StringComparison.Ordinal) ? v.Name : $"{(c.Name.Length > 0 ? c.Name : "the first list")}{(v.Name == c.Name ? "" : $", beside {v.Name}")}", c.Ingredients, c.Span));
            }
            else
            {
                variants.Add(v);
            }

            if (theirs == ours && asked.Add(v.Name))
            {
                string own = ChosenSize.Own(c, v, head);
                string other = ChosenSize.Bare(v.Name);
                doubts.Add(new Doubt(v.Span.Line, $"“{other}” repeats {(c.Name.Length > 0 ? $"the list of “{c.Name}”" : own)} in another size. Which is meant?", [new Candidate(own, ChosenSize.Says(own, dish.Language)), new Candidate(other, ChosenSize.Says(other, dish.Language))], "every amount of the list", 500));
            }
        }

        return dish with { Components = components.ToImmutable(), Variants = [.. variants] };
    }

    /// <summary>How many amounts of a list, and not of the other, the steps name.</summary>
    private static int Spoken(ImmutableArray<IngredientLine> list, ImmutableArray<IngredientLine> other, string[] steps)
    {
        HashSet<string> theirs = [.. other.Select(Amount)];
        return list.Take(60).Select(Amount).Where(a => a.Length > 2 && !theirs.Contains(a)).Count(a => steps.Take(60).Any(s => Places.FindWord(s, a) >= 0));
    }

    private static string Amount(IngredientLine l) => l.Foods.Length > 0 && l.Foods[0] is { Amount: { } a, Unit: { } u } ? System.FormattableString.Invariant($"{a} {u}") : "";

    /// <summary>1 when the title, a yield or another component names the same size.</summary>
    private static int Size(string name, Dish dish, ImmutableArray<Component>.Builder all)
    {
        string size = SizeOf(name);
        if (size.Length == 0)
        {
            return 0;
        }

        bool said = dish.Title.Contains(size, StringComparison.OrdinalIgnoreCase) || dish.Yields.Any(y => y.Text.Contains(size, StringComparison.OrdinalIgnoreCase)) || dish.Notes.Any(n => n.Text.Contains(size, StringComparison.OrdinalIgnoreCase))
            || all.Any(c => c.Name != name && Bare(c.Name) != Bare(name) && c.Name.Contains(size, StringComparison.OrdinalIgnoreCase));
        return said ? 1 : 0;
    }

    /// <summary>1 when the title or a yield names the size that heads the first column of a list without a name.</summary>
    private static int Told(Note head, Dish dish) =>
        SizeOf(head.Text) is { Length: > 0 } size && (dish.Title.Contains(size, StringComparison.OrdinalIgnoreCase) || dish.Yields.Any(y => y.Span.Line != head.Span.Line && y.Text.Contains(size, StringComparison.OrdinalIgnoreCase))) ? 1 : 0;

    /// <summary>1 when a step names this size ("Line the 20 cm tin") and none the other.</summary>
    private static int Worked(string name, string other, string[] steps) =>
        SizeOf(name) is { Length: > 0 } size && SizeOf(other) is { Length: > 0 } theirs && steps.Take(60).Any(s => Places.FindWord(s, size) >= 0) && !steps.Take(60).Any(s => Places.FindWord(s, theirs) >= 0) ? 1 : 0;

    private static string SizeOf(string name)
    {
        int at = name.AsSpan().IndexOfAnyInRange('0', '9');
        string size = at < 0 ? "" : name[at..].Trimmed(" )(,");
        // A bare "2" stands in every title that counts something.
        return size.Length > 1 ? size : "";
    }

    /// <summary>"Pastry, 28 cm" and "Pastry (23 cm)" without their sizes.</summary>
    private static string Bare(string name)
    {
        int at = name.AsSpan().IndexOfAnyInRange('0', '9');
        foreach (string size in (ReadOnlySpan<string>)["half ", "full ", "small ", "large ", "single ", "double ", "petit ", "grand ", "petite ", "grande ", "kleine ", "große ", "pequeño ", "piccola ", "piccolo "])
        {
            if (name.Length > size.Length + 2 && name.StartsWith(size, StringComparison.OrdinalIgnoreCase))
            {
                // "Half sheet (40 x 30 cm)" and "Full sheet (60 x 40 cm)"
                return at > size.Length + 2 ? name[size.Length..at].Trimmed(" ,(-:ø") : name[size.Length..].Trim();
            }
        }

        // A code at the front ("C1 base") is a name, not a size.
        return at < 2 ? name : name[..at].Trimmed(" ,(-:ø");
    }

    private static bool SameFoods(ImmutableArray<IngredientLine> a, ImmutableArray<IngredientLine> b)
    {
        HashSet<string> ours = new(a.SelectMany(l => l.Foods).Select(f => f.Food), StringComparer.OrdinalIgnoreCase);
        int all = b.Sum(l => l.Foods.Length);
        return all > 1 && b.SelectMany(l => l.Foods).Count(f => ours.Contains(f.Food)) * 10 >= all * 7;
    }
}
