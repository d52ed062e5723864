using System.Collections.Immutable;

namespace Coulisse.Kitchen.Labels;

/// <summary>One item of a list of ingredients.</summary>
/// <param name="Name">Food as it is listed.</param>
/// <param name="FoodId">Our id; null when not matched.</param>
/// <param name="Grams">Weight at mixing.</param>
/// <param name="Percent">Share of all weighed ingredients, percent.</param>
/// <param name="Stated">True when its share must stand on the label: the food is named in the title.</param>
/// <param name="Class">Additive class and number; empty when it is none.</param>
/// <param name="Opened">What a bought compound is usually made of; empty when it is none.</param>
/// <param name="Allergens">Names of the allergens it contains, to be emphasised.</param>
public sealed record IngredientItem(string Name, string? FoodId, double Grams, double Percent, bool Stated, string Class, string Opened, ImmutableArray<string> Allergens)
{
    /// <summary>As it stands in the list, allergens in capitals.</summary>
    public string Text
    {
        get
        {
            string name = Name;
            List<string> added = [];
            foreach (string allergen in Allergens)
            {
                // "rye flour" is emphasised where it stands; "quark" needs its milk said.
                string word = allergen.Contains(": ", StringComparison.Ordinal) ? allergen[(allergen.IndexOf(": ", StringComparison.Ordinal) + 2)..] : allergen;
                string? found = new[] { word, word.TrimEnd('s') }.FirstOrDefault(w => w.Length > 2 && name.Contains(w, StringComparison.OrdinalIgnoreCase));
                if (found is null)
                {
                    added.Add(word.ToUpperInvariant());
                }
                else
                {
                    int at = name.IndexOf(found, StringComparison.OrdinalIgnoreCase);
                    int end = at + found.Length < name.Length && name[at + found.Length] == 's' ? at + found.Length + 1 : at + found.Length;
                    name = string.Concat(name.AsSpan(0, at), name[at..end].ToUpperInvariant(), name.AsSpan(end));
                }
            }

            string brackets = string.Join("; ", new[] { Opened, string.Join(", ", added) }.Where(s => s.Length > 0));
            string share = Stated ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $" {Percent:0.#} %") : "";
            return (Class.Length > 0 ? $"{Class}: {name}" : name) + share + (brackets.Length > 0 ? $" ({brackets})" : "");
        }
    }
}

/// <summary>A list of ingredients by weight at mixing.</summary>
/// <param name="Items">Heaviest first.</param>
/// <param name="Grams">Weight of all items.</param>
/// <param name="Unplaced">Foods without a weight, which therefore have no place in the order, as written.</param>
/// <param name="Remarks">What must be settled before it is printed.</param>
public sealed record IngredientList(ImmutableArray<IngredientItem> Items, double Grams, ImmutableArray<string> Unplaced, ImmutableArray<string> Remarks)
{
    /// <summary>The list as one sentence.</summary>
    public string Text => Items.IsEmpty ? "" : "Ingredients: " + string.Join(", ", Items.Select(i => i.Text).Concat(Unplaced.Select(u => $"{u} (weight not stated)"))) + ".";
}
