using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Matter.Reference;

namespace Coulisse.Kitchen.Plating;

/// <summary>A kind of kit with the least it works with: a row of <c>work/least-batches.tsv</c>.</summary>
/// <param name="Family">Kinds of one family stand in for each other: the first that fits a step counts.</param>
/// <param name="Name">Kit.</param>
/// <param name="Words">Words of a step that name it.</param>
/// <param name="Operations">Operations it does.</param>
/// <param name="KitWords">Words of a kit list that name it.</param>
/// <param name="By">always, kit, named or pan: when an operation alone speaks of it.</param>
/// <param name="Share">Least share of what it holds; null where another figure decides.</param>
/// <param name="UsualLitres">What it holds when the kitchen does not say.</param>
/// <param name="LeastGrams">Least in grams; null where another figure decides.</param>
/// <param name="DepthMillimetres">Least depth over the bottom of a pan; null where another figure decides.</param>
/// <param name="Why">In words; {0} is litres or the pan, {1} the depth.</param>
/// <param name="Source">Where the figure is from.</param>
internal sealed record LeastKit(string Family, string Name, ImmutableArray<string> Words, ImmutableArray<string> Operations, ImmutableArray<string> KitWords, string By, double? Share, double UsualLitres, double? LeastGrams, double? DepthMillimetres, string Why, string Source)
{
    /// <summary>Pan taken when a step names none, cm across its bottom. Assumed: the smallest of a usual set.</summary>
    private const double UsualPan = 16;

    private static readonly Lazy<ImmutableArray<LeastKit>> Held = new(Read);

    /// <summary>All rows, in order.</summary>
    public static ImmutableArray<LeastKit> All => Held.Value;

    /// <summary>The kit that a step needs, one a family.</summary>
    /// <param name="step">Step.</param>
    /// <param name="kit">Kit of the kitchen.</param>
    public static IEnumerable<LeastKit> For(Step step, IReadOnlyCollection<SheetKit> kit)
        => All.Where(k => k.Fits(step, kit)).GroupBy(k => k.Family).Select(g => g.First());

    /// <summary>Least grams it works with, and why in words; null where the step says too little.</summary>
    /// <param name="step">Step.</param>
    /// <param name="kit">Kit of the kitchen.</param>
    public (double Grams, string Because) Least(Step step, IReadOnlyCollection<SheetKit> kit)
    {
        if (DepthMillimetres is { } depth)
        {
            double? named = PanIn(step.Text);
            double across = named ?? UsualPan;
            return (Math.PI * across * across / 4 * depth / 10, string.Create(CultureInfo.InvariantCulture, $"{string.Format(CultureInfo.InvariantCulture, Why, across, depth)}{(named is null ? " (pan assumed)" : "")}"));
        }

        if (LeastGrams is { } grams)
        {
            return (grams, Why);
        }

        double? held = kit.Where(k => k.Litres is > 0 && KitWords.Any(w => Has(k.What, w))).Min(k => k.Litres);
        double litres = held ?? UsualLitres;
        return (litres * Share!.Value * 1000, string.Format(CultureInfo.InvariantCulture, Why, litres) + (held is null ? " (litres assumed)" : ""));
    }

    private bool Fits(Step step, IReadOnlyCollection<SheetKit> kit)
    {
        // what is done by hand needs no machine
        if (By != "pan" && Family is "blade" or "mixer" && Has(step.Text, "by hand"))
        {
            return false;
        }

        bool named = Words.Any(w => Has(step.Text, w)) || (Family == "blade" && By == "always" && step.Kit.Any(k => Words.Any(w => Has(k, w))));
        return named || (step.Operations.Append(step.Operation).OfType<string>().Any(Operations.Contains) && By switch
        {
            "always" or "pan" => true,
            "kit" => (Has(step.Text, "mixer") && !Has(step.Text, "thermal mixer")) || kit.Any(k => KitWords.Any(w => Has(k.What, w))),
            _ => false,
        });
    }

    // "a 24 cm pan", "pan of 24 cm"
    private static double? PanIn(string text)
    {
        string[] words = text.Split([' ', ',', '.', ';', '(', ')'], StringSplitOptions.RemoveEmptyEntries);
        for (int i = 0; i < words.Length; i++)
        {
            if (words[i].StartsWith("pan", StringComparison.OrdinalIgnoreCase) && words[Math.Max(0, i - 2)..Math.Min(words.Length, i + 4)] is var near)
            {
                for (int k = 0; k + 1 < near.Length; k++)
                {
                    if (near[k + 1].Equals("cm", StringComparison.OrdinalIgnoreCase) && double.TryParse(near[k], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double cm) && cm is >= 8 and <= 80)
                    {
                        return cm;
                    }
                }
            }
        }

        return null;
    }

    private static bool Has(string text, string word)
    {
        for (int at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            if ((at == 0 || !char.IsLetter(text[at - 1])) && (at + word.Length == text.Length || !char.IsLetter(text[at + word.Length])))
            {
                return true;
            }
        }

        return false;
    }

    private static ImmutableArray<LeastKit> Read()
    {
        ReferenceTable t = ReferenceTable.Load("work/least-batches.tsv");
        ImmutableArray<string> Listed(string[] row, string column) => [.. row[t.Column(column)].Split('/', StringSplitOptions.RemoveEmptyEntries)];
        double? Figure(string[] row, string column) => ReferenceTable.Number(row[t.Column(column)]);
        return [.. t.Rows.Select(r => new LeastKit(r[t.Column("family")], r[t.Column("kit")], Listed(r, "words"), Listed(r, "operations"), Listed(r, "kitwords"), r[t.Column("by")],
            Figure(r, "share"), Figure(r, "usual") ?? 1, Figure(r, "least"), Figure(r, "depth"), r[t.Column("why")], r[t.Column("source")]))];
    }
}
