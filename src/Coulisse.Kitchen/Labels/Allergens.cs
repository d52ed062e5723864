using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Labels;

/// <summary>Allergens of a dish by part and as a whole, each with the line that brings it.</summary>
/// <remarks>A food that is not in the table is unknown, never free; a food whose maker decides is possible, never absent.</remarks>
public static class Allergens
{
    /// <summary>Reads the allergens of every line.</summary>
    /// <param name="dish">The dish, weighed (grams are not needed).</param>
    /// <param name="regime">Whose list and names.</param>
    public static AllergenSheet Of(WeighedDish dish, AllergenRegime regime)
    {
        ArgumentNullException.ThrowIfNull(dish);
        ImmutableArray<AllergenPart> parts = [.. dish.Components.Select(c => new AllergenPart(Title(c), Merge(Reached(dish, c).SelectMany(r => Reasons(r, dish.Dish.Language, dish.Foods)), regime)))];
        ImmutableArray<AllergenLine> whole = Merge(dish.Components.SelectMany(c => Reasons(c, dish.Dish.Language, dish.Foods)), regime);
        return new AllergenSheet(regime, parts, whole, Summary(whole, regime));
    }

    /// <summary>Reasons of one food, whatever the law; an empty answer means the table knows of none.</summary>
    /// <param name="food">Food as read.</param>
    /// <param name="language">Language of its words.</param>
    /// <param name="component">Where it stands.</param>
    /// <param name="line">Card or sheet line.</param>
    /// <param name="text">The whole line, whose words may settle what depends on the make.</param>
    /// <param name="known">Row the line was weighed with; null to look the food up.</param>
    /// <param name="foods">Foods to look up in; null for those that ship.</param>
    public static ImmutableArray<AllergenReason> Of(FoodAmount food, string language, string component, int line, string text, Food? known = null, FoodTable? foods = null)
    {
        if (food.FromComponent is not null)
        {
            return [];
        }

        ImmutableArray<AllergenReason>.Builder reasons = ImmutableArray.CreateBuilder<AllergenReason>();
        Named(reasons, food.Food, food.FoodId, language, component, line, text, false, foods ?? FoodTable.Default, known);
        if (food.Alternative is { Length: > 0 } other)
        {
            // "or 110 g cream" is written with its amount; the food is what counts.
            string named = CardReader.ReadLine(other, language).Foods.FirstOrDefault() is { Food.Length: > 0 } read ? read.Food : other;
            Named(reasons, named, null, language, component, line, text, true, foods ?? FoodTable.Default);
        }

        Made(reasons, food, language, component, line, foods ?? FoodTable.Default);
        return reasons.ToImmutable();
    }

    /// <summary>What the card's own words say is in it, beside what its row is known to hold.</summary>
    private static void Made(ImmutableArray<AllergenReason>.Builder reasons, FoodAmount food, string language, string component, int line, FoodTable foods)
    {
        foreach ((string name, Food row, bool either) in MadeOf.In(food, language, foods))
        {
            string where = $"“{food.Food}” is told to be made {(either ? "perhaps " : "")}with “{name}”";
            foreach (string code in row.Contains.Where(c => !reasons.Any(r => r.Code == c && r.Status == AllergenStatus.Contains)).ToArray())
            {
                reasons.Add(new AllergenReason(code, either ? AllergenStatus.May : AllergenStatus.Contains, component, name, row.Id, line, $"{where}, which is {row.Name} and holds {code}"));
            }

            foreach (string code in row.Depends.Where(c => AllergenNames.Settled(c, row.Id, name) is null && !reasons.Any(r => r.Code == c)).ToArray())
            {
                reasons.Add(new AllergenReason(code, AllergenStatus.May, component, name, row.Id, line, $"{where}, which is {row.Name}, where {code} depends on the make: ask the supplier"));
            }
        }
    }

    /// <summary>Reasons gathered by allergen, in the words of a law; what that law does not list is left out.</summary>
    public static ImmutableArray<AllergenLine> Merge(IEnumerable<AllergenReason> reasons, AllergenRegime regime) =>
    [.. reasons.Select(r => Judge(r, regime)).OfType<AllergenReason>().Distinct()
        .GroupBy(r => r.Code ?? "?" + r.Food, StringComparer.Ordinal)
        .Select(g => new AllergenLine(g.First().Code is { } code ? AllergenNames.Name(code, regime)! : g.First().Food, g.First().Code, g.Min(r => r.Status), [.. g.OrderBy(r => r.Status).ThenBy(r => r.Line)]))
        .OrderBy(l => l.Status).ThenBy(l => l.Code is null ? int.MaxValue : AllergenNames.Codes.IndexOf(l.Code)).ThenBy(l => l.Name, StringComparer.Ordinal)];

    /// <summary>The components whose food reaches this one: itself and all it takes from, of those only the sub-list that is named ("140 g of the C1 base").</summary>
    internal static IEnumerable<WeighedComponent> Reached(WeighedDish dish, WeighedComponent from)
    {
        HashSet<(Component, string?)> seen = [(from.Component, null)];
        Queue<WeighedComponent> next = new([from]);
        while (next.TryDequeue(out WeighedComponent? at))
        {
            yield return at;
            foreach (WeighedLine line in at.Lines.Where(l => l.Food.FromComponent is not null))
            {
                if (Takes.Find(dish.Dish, line.Food.FromComponent!) is { } taken && dish.Components.FirstOrDefault(c => ReferenceEquals(c.Component, taken)) is { } weighed)
                {
                    string? group = Takes.Group(taken, line.Source.Text);
                    if (seen.Add((taken, group)))
                    {
                        next.Enqueue(group is null ? weighed : weighed with { Lines = [.. weighed.Lines.Where(l => l.Source.Group == group)] });
                    }
                }
            }
        }
    }

    internal static IEnumerable<AllergenReason> Reasons(WeighedComponent component, string language, FoodTable foods) => component.Lines.SelectMany(l => Of(l.Food, language, Title(component), l.Source.Span.Line, l.Source.Text, l.Known, foods));

    internal static string Title(WeighedComponent c) => c.Component.Name;

    /// <summary>A sentence as the law wants it; empty when nothing is contained.</summary>
    internal static string Summary(ImmutableArray<AllergenLine> lines, AllergenRegime regime)
    {
        string[] names = [.. lines.Where(l => l.Status == AllergenStatus.Contains && l.Code is not null).SelectMany(l => AllergenNames.Summary(l.Code!, regime).Select(n => Kinds(n, l, regime))).Distinct(StringComparer.Ordinal)];
        return names.Length == 0 ? "" : $"Contains{(regime == AllergenRegime.Us ? ":" : "")} {string.Join(", ", names)}";
    }

    // US law wants the species of fish and crustacean: the foods as the card names them.
    private static string Kinds(string name, AllergenLine line, AllergenRegime regime) => regime == AllergenRegime.Us && line.Code is "fish" or "crustacean" && regime == AllergenRegime.Us
        ? $"{name} ({string.Join(", ", line.Because.Where(r => r.Status == AllergenStatus.Contains).Select(r => r.Food).Distinct(StringComparer.OrdinalIgnoreCase))})"
        : name;

    private static AllergenReason? Judge(AllergenReason reason, AllergenRegime regime)
    {
        if (reason.Code is not { } code)
        {
            return reason;
        }

        if (AllergenNames.Name(code, regime) is null)
        {
            return null;
        }

        return reason.FoodId is null || AllergenNames.Exemption(code, reason.FoodId, regime) is not { } law ? reason
            : law.Exempt ? null
            : reason with { Status = AllergenStatus.May, Because = $"{reason.Because}; {law.Why}" };
    }

    private static void Named(ImmutableArray<AllergenReason>.Builder reasons, string name, string? id, string language, string component, int line, string text, bool alternative, FoodTable foods, Food? known = null)
    {
        FoodMatch? match = known is null ? foods.Match(name, language) : null;

        // A name of the house's own goes before what the reader, who knows only the foods that ship, took it for.
        Food? food = known ?? (match is not null && foods.IsOwn(match.Id) ? foods.Find(match.Id) : null) ?? (id is null ? null : foods.Find(id)) ?? (match is not null ? foods.Find(match.Id) : null);
        string where = $"“{name}”{(alternative ? ", which may stand in its place," : "")}";
        if (food is null)
        {
            reasons.Add(new AllergenReason(null, AllergenStatus.Unknown, component, name, null, line, $"{where} is not in the food table: read its label"));
            reasons.AddRange(AllergenNames.Hinted(name).Select(c => new AllergenReason(c, AllergenStatus.May, component, name, null, line, $"{where} is not in the food table, but its name says {c}")));
            return;
        }

        if (!food.AllergensHeld)
        {
            reasons.Add(new AllergenReason(null, AllergenStatus.Unknown, component, name, food.Id, line, $"{where} is a food of the house whose line says nothing of allergens: read its label"));
        }

        foreach (string code in food.Contains)
        {
            reasons.Add(new AllergenReason(code, alternative ? AllergenStatus.May : AllergenStatus.Contains, component, name, food.Id, line, $"{where} is {food.Name}, which holds {code}"));
        }

        foreach (string code in food.Depends)
        {
            if (AllergenNames.Settled(code, food.Id, text) is null)
            {
                reasons.Add(new AllergenReason(code, AllergenStatus.May, component, name, food.Id, line, $"{where} is {food.Name}, where {code} depends on the make: ask the supplier"));
            }
        }
    }
}
