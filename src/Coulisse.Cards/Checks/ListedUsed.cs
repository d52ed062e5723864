using Coulisse.Cards.Words;

namespace Coulisse.Cards.Checks;

/// <summary>Listed and never used.</summary>
internal static class ListedUsed
{
    // Said of a whole list: then every line of it is used.
    private static readonly string[] All = ["everything", "all the ingredients", "all ingredients", "remaining ingredients", "the rest", "dry ingredients", "dry goods", "mix all", "whisk all", "blend all", "combine all", "tout", "tous les ingrédients", "alle", "alles", "Zutaten", "todo", "todos", "tutto", "tutti", "ingredienti", "ingredientes", "ingrédients"];

    public static IEnumerable<Remark> Of(Dish dish)
    {
        string[] steps = [.. dish.Components.SelectMany(c => c.Steps).Select(s => Plain(s.Text))];
        if (steps.Length == 0)
        {
            yield break;
        }

        string all = string.Join('\n', steps);
        foreach (Component c in dish.Components)
        {
            if (c.Steps.IsEmpty || c.Steps.Any(s => Places.HasAny(s.Text, All) || s.Text.Contains("材料", StringComparison.Ordinal) || s.Text.Contains("すべて", StringComparison.Ordinal)))
            {
                continue;
            }

            // A method that names few of its own foods ("whisk till smooth") takes the list as one.
            string own = string.Join('\n', c.Steps.Select(s => Plain(s.Text)));
            FoodAmount[] foods = [.. c.Ingredients.Where(l => l.Kind == LineKind.Ingredient).SelectMany(l => l.Foods).Where(f => f.Food.Length > 2)];
            if (3 * foods.Count(f => Named(f, own)) < 2 * (foods.Length - 1))
            {
                continue;
            }

            List<Remark> unused = [];
            foreach (IngredientLine l in c.Ingredients)
            {
                foreach (FoodAmount f in l.Foods)
                {
                    if (l.Kind == LineKind.Ingredient && f.Use is null && f.FromComponent is null && f.Food.Length > 2 && f.Amount is not null && !Named(f, all) && !Kind(Plain(f.Food), all) && !(l.Group is { } g && Any(g, all)) && !(c.Name.Length > 0 && Any(f.Food, Plain(c.Name))))
                    {
                        unused.Add(new Remark(l.Span.Line, "listed unused", $"“{l.Text}” is listed, but no step names {f.Food}."));
                    }
                }
            }

            // Several at once were taken under one word ("rub in", "the dry", "sift"); one alone was forgotten.
            if (unused.Count == 1)
            {
                yield return unused[0];
            }
        }
    }

    private static bool Named(FoodAmount f, string steps) => Any(f.Food, steps) || (f.Preparation is { } p && f.Food.Length < 8 && Any(p, steps));

    /// <summary>"the cheese" of a listed Parmesan, "the fish" of cod fillets.</summary>
    private static bool Kind(string food, string steps) => UsedUnlisted.Kinds.Any(k => Places.FindWord(steps, k.Word) >= 0 && k.Kinds.Any(kind => food.Contains(kind, StringComparison.Ordinal)));

    private static bool Any(string words, string steps)
    {
        string plain = Plain(words);
        if (plain.Length == 0)
        {
            return true;
        }

        if (Places.IsJapanese(plain[0]))
        {
            return steps.Contains(plain, StringComparison.Ordinal) || (plain.Length > 2 && (steps.Contains(plain[^2..], StringComparison.Ordinal) || steps.Contains(plain[..2], StringComparison.Ordinal)));
        }

        foreach (string w in plain.Split([' ', '-', '\''], StringSplitOptions.RemoveEmptyEntries))
        {
            // "yolks" in "yolk", "Zwiebeln" in "Zwiebel", "beaten egg" in "eggs"
            // "Eier" in "Ei"; flour in "rub in the butter", the dry things in "sift"
            if ((w == "eier" && Places.FindWord(steps, "ei") >= 0) || (w == "flour" && Places.FindWord(steps, "rub") >= 0) || (w is "flour" or "powder" or "soda" && Places.FindWord(steps, "sift") >= 0))
            {
                return true;
            }

            // "beet" in "beetroot", "pear" in "pears": the step may call it by its first syllables.
            if (w.Length > 6 && Shortened(w, steps))
            {
                return true;
            }

            string stem = w.Length > 5 ? w[..^2] : w.Length > 3 ? w[..^1] : w;
            if (stem.Length > 2 && steps.Contains(stem, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Shortened(string word, string steps)
    {
        for (int n = 4; n < word.Length - 2; n++)
        {
            // "Brösel" of "Semmelbrösel"
            if (Places.FindWord(steps, word[..n]) >= 0 || Places.FindWord(steps, word[..n] + "s") >= 0 || (word.Length - n > 4 && Places.FindWord(steps, word[n..]) >= 0))
            {
                return true;
            }
        }

        return false;
    }

    private static string Plain(string s) => Folding.Key(s);
}
