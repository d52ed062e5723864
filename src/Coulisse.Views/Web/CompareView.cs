using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Views.Web;

/// <summary>Two versions of a text, side by side: by weights when it is a card, and by lines.</summary>
/// <param name="Id">Document.</param>
/// <param name="BackTo">Where it is edited.</param>
/// <param name="Title">Title.</param>
/// <param name="From">The one version, in words.</param>
/// <param name="To">The other.</param>
/// <param name="FromVersion">Number of the one.</param>
/// <param name="ToVersion">Number of the other.</param>
/// <param name="Newest">Newest version.</param>
/// <param name="Both">True when two people kept it at once.</param>
/// <param name="Weights">Weights that differ; empty when none does or it is no card.</param>
/// <param name="Equal">How many weights are equal.</param>
/// <param name="Lines">Lines that differ with their neighbours.</param>
public sealed record CompareView(
    string Id, string BackTo, string Title, string From, string To, int FromVersion, int ToVersion, int Newest, bool Both, ImmutableArray<ComparedWeight> Weights, int Equal, ImmutableArray<DifferenceLine> Lines)
{
    /// <summary>Weights of two versions of a card, matched by part and food.</summary>
    public static (ImmutableArray<ComparedWeight> Differ, int Equal) WeightsOf(WeighedDish from, WeighedDish to, CultureInfo culture)
    {
        Dictionary<(string, string, int), Held> a = Hold(from);
        Dictionary<(string, string, int), Held> b = Hold(to);
        List<ComparedWeight> differ = [];
        int equal = 0;
        foreach ((string part, string food, int n) key in a.Keys.Concat(b.Keys.Where(k => !a.ContainsKey(k))))
        {
            Held? x = a.GetValueOrDefault(key);
            Held? y = b.GetValueOrDefault(key);
            if (x is not null && y is not null && Math.Abs(x.Grams - y.Grams) < 1e-6 && Math.Abs(x.Share - y.Share) < 0.005 && x.Known == y.Known)
            {
                equal++;
                continue;
            }

            string change = x is { Known: true } && y is { Known: true }
                ? Math.Abs(y.Grams - x.Grams) < 0.005 ? "" : string.Create(culture, $"{y.Grams - x.Grams:+#,0.##;−#,0.##;0} g{(x.Grams > 0 ? $", {(y.Grams - x.Grams) / x.Grams * 100:+0.0;−0.0;0} %" : "")}")
                : x is null ? "came" : y is null ? "went" : "not known in both";
            differ.Add(new ComparedWeight(x?.Part ?? y!.Part, x?.Food ?? y!.Food, Grams(x, culture), Grams(y, culture), change, Share(x, culture), Share(y, culture)));
        }

        return ([.. differ], equal);
    }

    private static string Grams(Held? held, CultureInfo culture) => held is null ? "–" : held.Known ? Figures.Grams(held.Grams, culture) : "? g";

    private static string Share(Held? held, CultureInfo culture) => held is { Known: true } ? held.Share.ToString("0.00", culture) : "–";

    private static Dictionary<(string, string, int), Held> Hold(WeighedDish dish)
    {
        Dictionary<(string, string, int), Held> all = [];
        foreach (WeighedComponent c in dish.Components)
        {
            foreach (WeighedLine l in c.Lines.Where(l => l.Source.Kind == LineKind.Ingredient))
            {
                (string, string) key = (c.Component.Name.ToLowerInvariant(), (l.Food.FoodId ?? l.Food.Food).ToLowerInvariant());
                int n = all.Keys.Count(k => (k.Item1, k.Item2) == key);
                all[(key.Item1, key.Item2, n)] = new Held(c.Component.Name, l.Food.Food, l.Grams, c.Grams > 0 ? l.Grams / c.Grams * 100 : 0, l.Grade != WeightGrade.Unknown);
            }
        }

        return all;
    }

    private sealed record Held(string Part, string Food, double Grams, double Share, bool Known);
}

/// <summary>A weight in two versions.</summary>
/// <param name="Part">Component.</param>
/// <param name="Food">Food.</param>
/// <param name="From">Grams in the one.</param>
/// <param name="To">Grams in the other.</param>
/// <param name="Change">Difference in grams and percent.</param>
/// <param name="ShareFrom">Percent of the component in the one.</param>
/// <param name="ShareTo">Percent of the component in the other.</param>
public sealed record ComparedWeight(string Part, string Food, string From, string To, string Change, string ShareFrom, string ShareTo);

/// <summary>All versions of a document.</summary>
/// <param name="Id">Document.</param>
/// <param name="BackTo">Where it is edited.</param>
/// <param name="Title">Title.</param>
/// <param name="Rows">Newest first.</param>
public sealed record VersionsView(string Id, string BackTo, string Title, ImmutableArray<VersionRow> Rows);

/// <summary>A version.</summary>
/// <param name="Version">Number.</param>
/// <param name="Says">When and by whom.</param>
public sealed record VersionRow(int Version, string Says);
