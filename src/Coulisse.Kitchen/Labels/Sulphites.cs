using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Reference;

namespace Coulisse.Kitchen.Labels;

/// <summary>The most sulphur dioxide a dish can hold, from what the law allows in each of its foods.</summary>
/// <param name="MostMilligramsPerKilogram">In the finished food; null when a food that may bring some has no figure or no weight.</param>
/// <param name="BelowLimit">True when even the most stays under the limit from which it is declared; false when it may reach it; null when it cannot be said.</param>
/// <param name="Lines">What each food may bring.</param>
/// <param name="Unsaid">Foods that may bring some and have no figure or no weight.</param>
/// <remarks>Nothing is taken off for cooking, which drives some off (cautious). Check: 150 g of wine at 120 mg/kg in 1,000 g is 18 mg/kg; 60 g is 7.2.</remarks>
public sealed record Sulphites(double? MostMilligramsPerKilogram, bool? BelowLimit, ImmutableArray<SulphiteLine> Lines, ImmutableArray<string> Unsaid)
{
    private static readonly Lazy<Dictionary<string, double>> Table = new(() => ReferenceTable.Load("foods/sulphites.tsv").Rows.ToDictionary(r => r[0], r => ReferenceTable.Number(r[1])!.Value, StringComparer.Ordinal));

    /// <summary>Adds up a dish; null when none of its foods contains or may contain sulphites.</summary>
    /// <param name="dish">The dish, weighed.</param>
    /// <param name="regime">Whose limit: above 10 mg/kg in the EU, from 10 in Australia, New Zealand and the United States.</param>
    /// <param name="finalGrams">Weight at the end; null for the weight at mixing.</param>
    public static Sulphites? Of(WeighedDish dish, AllergenRegime regime, double? finalGrams = null)
    {
        ArgumentNullException.ThrowIfNull(dish);
        WeighedLine[] lines = [.. dish.Components.SelectMany(c => c.Lines).Where(l => l.Food.FromComponent is null)];
        WeighedLine[] bringing = [.. lines.Where(l => l.Known is { } food && (food.SulphurDioxide > 0 || food.Contains.Contains("sulphite") || (food.Depends.Contains("sulphite") && AllergenNames.Settled("sulphite", food.Id, l.Source.Text) is null)))];
        string[] foreign = [.. lines.Where(l => l.Known is null).Select(l => l.Food.Food).Distinct(StringComparer.OrdinalIgnoreCase)];
        if (bringing.Length == 0)
        {
            return null;
        }

        double total = finalGrams ?? lines.Where(l => l.Grade != WeightGrade.Unknown).Sum(l => l.Grams);
        SulphiteLine[] known = [.. bringing.Where(l => Figure(l.Known!) is not null && l.Grade != WeightGrade.Unknown).Select(l => new SulphiteLine(l.Source.Span.Line, l.Food.Food, l.High, Figure(l.Known!)!.Value, l.Known!.SulphurDioxide is not null))];
        string[] unsaid = [.. bringing.Where(l => Figure(l.Known!) is null || l.Grade == WeightGrade.Unknown).Select(l => l.Food.Food).Concat(foreign).Distinct(StringComparer.OrdinalIgnoreCase)];
        double? most = unsaid.Length > 0 || total <= 0 ? null : known.Sum(l => l.Grams * l.Most) / total;
        return new Sulphites(most, most is { } m ? (regime == AllergenRegime.Eu ? m <= 10 : m < 10) : null, [.. known], [.. unsaid]);
    }

    // A maker's own figure goes before what the law would let it be.
    private static double? Figure(Matter.Foods.Food food) => food.SulphurDioxide ?? (Table.Value.TryGetValue(food.Id, out double most) ? most : null);

    /// <summary>In words.</summary>
    public string Text => MostMilligramsPerKilogram is { } most
        ? string.Create(CultureInfo.InvariantCulture, $"Sulphites: at most {most:0.#} mg/kg by {Basis}{Advice}.")
        : $"Sulphites: not worked out; no figure for {string.Join(", ", Unsaid)}.";

    private bool AllStated => Lines.All(l => l.Stated);

    private string Basis => AllStated ? "the makers' figures" : "what the law allows in its foods";

    private string Advice => BelowLimit == true ? ", below the limit from which they are declared" : AllStated ? ": declare them" : ": declare them, or get the makers' figures";
}

/// <summary>What a food may bring.</summary>
/// <param name="Line">Card line.</param>
/// <param name="Food">Food as written.</param>
/// <param name="Grams">Its weight, high end.</param>
/// <param name="Most">The most it may hold, mg/kg.</param>
/// <param name="Stated">True when its maker states the figure, false when the law's limit stands in.</param>
public sealed record SulphiteLine(int Line, string Food, double Grams, double Most, bool Stated);
