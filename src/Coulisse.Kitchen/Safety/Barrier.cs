using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Reference;
using Coulisse.Matter.Substance;

namespace Coulisse.Kitchen.Safety;

/// <summary>What holds bacteria back in a component besides cold: acid as the card states it, water activity as stated or worked out.</summary>
/// <param name="Ph">pH as stated, the greatest of several; null when the card does not say.</param>
/// <param name="ActivityStated">Water activity as stated; null likewise.</param>
/// <param name="Band">Water activity from what is in it after its last step; null when that is not known or there is hardly any water.</param>
/// <param name="Dry">Known to hold less than 15 % water.</param>
/// <param name="SaltInWater">Percent of salt in its water; null when not known.</param>
/// <param name="End">What is in 100 g of it after its last step; null when not known.</param>
/// <remarks>pH is never worked out: acids, salts and proteins buffer each other. A pH that is only a floor ("above 4") is no statement.</remarks>
internal sealed partial record Barrier(double? Ph, double? ActivityStated, WaterActivity? Band, bool Dry, double? SaltInWater, Composition? End)
{
    private const double DryShare = 15;   // g in 100 g
    private static readonly Lazy<ImmutableArray<(string Table, double Activity, double Ph)>> Cells = new(() =>
    {
        ReferenceTable t = ReferenceTable.Load("heat/barriers.tsv");
        double N(string[] row, string column) => ReferenceTable.Number(row[t.Column(column)]) ?? throw new FormatException($"{t.Name}: {column} is empty.");
        return [.. t.Rows.Select(r => (r[t.Column("table")], N(r, "aw"), N(r, "ph")))];
    });

    /// <summary>Reads and works out what a component has.</summary>
    public static Barrier Of(WeighedDish dish, WeighedComponent component)
    {
        string[] said = [.. component.Component.Notes.Select(n => n.Text).Concat(component.Component.Keeps.Select(k => k.Text)).Concat(component.Component.Steps.Select(s => s.Text)).Concat(dish.Components.Length == 1 ? dish.Dish.Notes.Concat(dish.Dish.Unread).Select(n => n.Text) : [])];
        MixedComponent? mixed = Blending.Of(dish).Match(all => all.FirstOrDefault(m => m.Name == component.Component.Name), _ => null);
        StageMixture? end = mixed is null ? null : StageMixtures.Of(component, mixed).LastOrDefault();
        Composition? c = end is null ? mixed?.Composition : end.Composition;
        Solution? phase = end is null ? mixed?.Phase : end.Phase;
        bool dry = c?.Water is { } w && w < DryShare;
        WaterActivity? band = phase is { Water: > 0 } p && c?.Water > 5 ? WaterActivity.Of(p) : null;
        return new Barrier(Greatest(said, AcidForm(), 0.5, 14), Greatest(said, ActivityForm(), 0.2, 1), band, dry, phase?.SaltInWaterPercent, c);
    }

    /// <summary>Water activity a limit is judged against: the stated one, else the greatest of the models; null when neither is there.</summary>
    public double? Activity => ActivityStated ?? Band?.High;

    /// <summary>Shown to need no cold by the tables of the Food Code.</summary>
    /// <param name="packed">Heated and packed in the vessel it is kept in (table A), else table B.</param>
    public bool Holds(bool packed) => Dry || Cells.Value.Any(c => c.Table == (packed ? "A" : "B") && (c.Activity >= 1 || Within(Activity ?? 1, c.Activity, packed)) && (c.Ph >= 14 || Within(Ph ?? 14, c.Ph, packed || c.Ph > 4.2)));

    /// <summary>Shown not to let Listeria grow: Regulation (EC) 2073/2005, annex I, note 8.</summary>
    public bool HoldsListeria => Dry || Ph <= 4.4 || Activity <= 0.92 || (Ph <= 5.0 && Activity <= 0.94);

    /// <summary>What is known of it, in words.</summary>
    public string Words => string.Join(", ", new[]
    {
        Ph is { } ph ? Say($"pH {ph:0.0#}") : "pH not stated",
        ActivityStated is { } a ? Say($"water activity {a:0.00#}") : Band is { } b ? Say($"water activity {b.Low:0.00} to {b.High:0.00} by what is in it") : Dry ? "dry" : "water activity not known",
    });

    private static bool Within(double value, double most, bool inclusive) => inclusive ? value <= most + 1e-9 : value < most - 1e-9;

    private static double? Greatest(string[] said, Regex form, double low, double high)
    {
        double[] found = [.. said.SelectMany(t => form.Matches(t)).Where(m => !m.Groups["floor"].Success && !m.Groups["over"].Success).Select(m => double.Parse(m.Groups["n"].Value.Replace(',', '.'), CultureInfo.InvariantCulture)).Where(v => v >= low && v <= high)];
        return found.Length == 0 ? null : found.Max();
    }

    private static string Say(FormattableString s) => s.ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\bpH\s*(value\s*)?((?<floor>above|over|at least|>|≥)\s*)?((of|is|reads|at most|below|under|no more than|not above|<|≤|=|:)\s*)?(?<n>\d{1,2}([.,]\d{1,2})?)(?<over>\s*or (more|above|higher))?", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex AcidForm();

    [GeneratedRegex(@"\b(a_?w|water activity)\s*((?<floor>above|over|at least|>|≥)\s*)?((of|is|reads|at most|below|under|no more than|<|≤|=|:)\s*)?(?<n>[01][.,]\d{1,3})(?<over>\s*or (more|above|higher))?", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex ActivityForm();
}
