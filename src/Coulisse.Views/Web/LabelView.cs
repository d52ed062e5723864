using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Labels;
using Coulisse.Kitchen.Method;

namespace Coulisse.Views.Web;

/// <summary>What a label of a dish says by the kitchen's law: panel, list of ingredients, allergens, date mark.</summary>
/// <param name="Law">Whose form.</param>
/// <param name="Basis">Of what the panel is: as mixed, or as the method leaves it.</param>
/// <param name="Rows">Rows of the panel; empty when a food is not known or a step cannot be.</param>
/// <param name="NotStated">Rows the law asks for that are not known, in words; empty when all are.</param>
/// <param name="Ingredients">List of ingredients.</param>
/// <param name="Allergens">Sentence on allergens.</param>
/// <param name="Notes">What was taken into account, what is missing, sulphites, date mark.</param>
public sealed record LabelView(string Law, string Basis, ImmutableArray<LabelRow> Rows, string NotStated, string Ingredients, string Allergens, ImmutableArray<string> Notes)
{
    /// <summary>Lays a label out.</summary>
    /// <param name="dish">The dish, weighed.</param>
    /// <param name="regime">Whose law.</param>
    /// <param name="loss">Where a loss comes from that the card does not state.</param>
    public static LabelView Of(WeighedDish dish, AllergenRegime regime, UnstatedLoss loss)
    {
        ArgumentNullException.ThrowIfNull(dish);
        string law = regime switch { AllergenRegime.Us => "United States", AllergenRegime.Anz => "Australia and New Zealand", _ => "European Union and United Kingdom" };
        IngredientList list = Kitchen.Labels.Ingredients.Of(dish, regime);
        AllergenSheet sheet = Kitchen.Labels.Allergens.Of(dish, regime);
        string[] marks = [.. new[] { DateMark.Of(dish)?.Text, Sulphites.Of(dish, regime)?.Text }.OfType<string>()];
        string allergens = (sheet.Summary.Length > 0 ? sheet.Summary + "." : "No allergen of this law is known to be in it.")
            + string.Concat(sheet.Dish.Where(l => l.Status != AllergenStatus.Contains).Select(l => $" {(l.Status == AllergenStatus.May ? "May hold" : "Not known")}: {l.Name}."));
        return Panels.Of(dish, regime, unstated: loss).Match(
            p => new LabelView(law, p.Basis + (p.Grade == WeightGrade.Weighed ? "" : p.Grade == WeightGrade.Converted ? "; some weights worked out from measures" : "; some weights estimated"), [.. p.Rows.Select(Row)], p.NotStated.IsEmpty ? "" : "Not known, so not stated (never 0): " + string.Join(", ", p.NotStated) + ".", list.Text, allergens, [.. p.Changes, .. p.Missing, .. marks, .. list.Remarks]),
            problems => new LabelView(law, "", [], "", list.Text, allergens, [.. problems.Select(x => string.Create(CultureInfo.InvariantCulture, $"{(x.Line > 0 ? $"Line {x.Line}: " : "")}{x.Message} {x.Hint} ({x.Code})")), .. marks, .. list.Remarks]));
    }

    private static LabelRow Row(PanelRow r) => new(r.Name, $"{r.Declared} {r.Unit}", r.DailyValue is { } d ? d + " %" : "",
        r.Range is { } w && w.High - w.Low > 0.02 * r.Computed ? string.Create(CultureInfo.InvariantCulture, $"{w.Low:0.##} to {w.High:0.##}") : "");
}

/// <summary>A row of the panel.</summary>
/// <param name="Name">As the law names it.</param>
/// <param name="Declared">Per 100 g, with its unit.</param>
/// <param name="DailyValue">Percent of the daily value in 100 g; empty where that law has none.</param>
/// <param name="Range">Range by a loss that was not weighed; empty for none.</param>
public sealed record LabelRow(string Name, string Declared, string DailyValue, string Range);
