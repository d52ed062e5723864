using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Plating;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Shapes;
using Coulisse.Matter.Substance;
using Coulisse.Views.Charts;
using Coulisse.Views.Papers;

namespace Coulisse.Views.Web;

/// <summary>Where every figure of a card comes from, and the charts people would rather look at.</summary>
/// <param name="Id">Card.</param>
/// <param name="Title">Title of the dish.</param>
/// <param name="Charts">Charts, each with its table.</param>
/// <param name="Figures">Every weight with its origin.</param>
/// <param name="Missing">What could not be worked out, and why.</param>
public sealed record WorkingsView(string Id, string Title, ImmutableArray<ChartView> Charts, ImmutableArray<FigureRow> Figures, ImmutableArray<string> Missing)
{
    /// <summary>Each component as mixed and after its steps.</summary>
    public ImmutableArray<MixtureView> Mixtures { get; init; } = [];

    /// <summary>What a label says; null where nothing can be worked out.</summary>
    public LabelView? Label { get; init; }

    /// <summary>Height above the sea that boiled sugar is judged for, m.</summary>
    public double Metres { get; init; }

    private static readonly string[] Kinds = ["water", "fat", "sugars", "protein", "rest"];

    /// <summary>Works a card out.</summary>
    /// <param name="id">Card.</param>
    /// <param name="batch">The dish, weighed and scaled.</param>
    /// <param name="prices">Price list of the kitchen; null when it keeps none.</param>
    /// <param name="culture">Culture of the figures.</param>
    public static WorkingsView From(string id, Batch batch, PriceList? prices, CultureInfo culture)
    {
        WeighedDish dish = batch.Weighed;
        List<ChartView> charts = [.. CoreTrace.Of(dish).Select(t => Core(t, culture))];
        List<string> missing = [];
        ImmutableArray<MixedComponent> mixed = Blending.Of(dish).Match(m => m, p =>
        {
            missing.AddRange(p.Select(x => x.Message));
            return [];
        });
        if (Composition(mixed, missing, culture) is { } shares)
        {
            charts.Add(shares);
        }

        if (Ice(dish, mixed, culture) is { } ice)
        {
            charts.Add(ice);
        }

        if (prices is null)
        {
            missing.Add("Cost: this kitchen keeps no price list yet. Keep one on the kitchen page.");
        }
        else
        {
            charts.Add(Cost(batch, prices, missing, culture));
        }

        Component? assembly = dish.Dish.Components.FirstOrDefault(c => c.IsAssembly);
        if (PlateDrawing.Of(dish.Dish, assembly, PlateDrawing.Flat(dish.Dish, assembly, []) is { } flat ? PlateReading.Of(dish.Dish, flat) : null) is { } plate)
        {
            charts.Add(new ChartView("plate", "The plate", "To scale; the numbers are those of the steps that set the part down.", SvgDrawing.Write(plate), ["No.", "Step"],
                [.. dish.Dish.Components.First(c => c.IsAssembly).Steps.Select((s, i) => ImmutableArray.Create((i + 1).ToString(culture), s.Text))]));
        }

        return new WorkingsView(id, dish.Dish.Title, [.. charts],
            [.. dish.Components.SelectMany(c => c.Lines.Where(l => l.Source.Kind == LineKind.Ingredient).Select(l => Row(c, l, culture)))], [.. missing.Distinct()]);
    }

    private static FigureRow Row(WeighedComponent component, WeighedLine line, CultureInfo culture)
    {
        bool known = line.Grade != WeightGrade.Unknown;
        return new FigureRow(component.Component.Name, line.Source.Text, known ? Web.Figures.Grams(line.Grams, culture) : "? g", known && line.High > line.Low ? Web.Figures.Range(line.Low, line.High, culture) : "",
            known && component.Grams > 0 ? Percent(line.Grams / component.Grams * 100, culture) : "", WorkingView.From(line.Why));
    }

    // a pinch of pepper is 0.03 %, not none
    private static string Percent(double share, CultureInfo culture) => share.ToString(share is > 0 and < 0.095 ? "G1" : "0.0", culture) + " %";

    private static ChartView Core(CoreTrace t, CultureInfo culture)
    {
        string C(double celsius) => Web.Figures.Celsius(celsius, culture);
        LineChart.Line Of(string name, ImmutableArray<(double Minute, Matter.Quantities.Temperature At)> curve) => new(name, [.. curve.Select(p => (p.Minute, p.At.Celsius))]);
        double at = t.Cautious.Last(p => p.Minute <= t.Minutes + 1e-6).At.Celsius;
        string says = string.Create(culture, $"After the {t.Minutes:0} min of the card the middle is at {C(Math.Round(at, 1))} in the cautious case; the card wants {C(t.Core.Celsius)}{(t.HoldMinutes > 0 ? $" for {t.HoldMinutes:0.#} min" : "")}.");
        return new ChartView(string.Create(CultureInfo.InvariantCulture, $"core-{t.Line}"), $"The middle of {(t.Component.Length > 0 ? t.Component : "the piece")}", says,
            LineChart.Draw($"Core temperature, card line {t.Line.ToString(culture)}", "minutes in the bath", "°C", [Of("cautious", t.Cautious), Of("1 °C low, 10 % thicker", t.Off)], [new LineChart.Limit("limit " + C(t.Core.Celsius), t.Core.Celsius)], [new LineChart.Limit("card", t.Minutes)]),
            ["Minute", "Cautious, °C", "1 °C low, 10 % thicker, °C"],
            [.. Enumerable.Range(0, t.Cautious.Length).Where(i => i % 10 == 0).Select(i => ImmutableArray.Create(t.Cautious[i].Minute.ToString("0.#", culture), t.Cautious[i].At.Celsius.ToString("0.0", culture), t.Off[i].At.Celsius.ToString("0.0", culture)))])
        {
            Steps = [string.Create(culture, $"{t.Thickness.Millimetres:0.#} mm from {C(t.Start.Celsius)} in a bath of {C(t.Bath.Celsius)}."), .. t.Why.Split("; ", StringSplitOptions.RemoveEmptyEntries).Select(w => (w.Length > 1 && char.IsLetter(w[1]) ? char.ToUpper(w[0], culture) + w[1..] : w).TrimEnd('.') + "."), Findings.Caution],
            Further = "What this step does to an organism, with your own limit",
            FurtherAt = FormattableString.Invariant($"/workings/heat?shape=slab&size={t.Thickness.Millimetres:0.##}&start={t.Start.Celsius:0.##}&medium={t.Bath.Celsius:0.##}&minutes={t.Minutes:0.##}&organism={HeatForm.Example.Organism}&logs={HeatForm.Example.Logs}"),
        };
    }

    private static ChartView? Composition(ImmutableArray<MixedComponent> mixed, List<string> missing, CultureInfo culture)
    {
        List<(string Name, double[] Shares, MixedComponent Mixed)> known = [];
        foreach (MixedComponent m in mixed)
        {
            string name = m.Name.Length > 0 ? m.Name : "the dish";
            if (m.Composition is { Water: { } water, Fat: { } fat, Protein: { } protein, Sugars: { } sugars })
            {
                known.Add((name, [water, fat, sugars, protein, Math.Max(0, 100 - water - fat - sugars - protein)], m));
            }
            else
            {
                missing.Add($"Composition of {name}: {(m.Unknown.IsEmpty ? "a figure is not held for one of its foods" : "not in the food table: " + string.Join(", ", m.Unknown))}.");
            }
        }

        return known.Count == 0 ? null : new ChartView("composition", "What each part is made of", "As mixed, before any water is driven off; grams in 100 g, from the composition each food's row names.",
            Bars.Shares("Composition of the components as mixed", Kinds, [.. known.Select(k => new Bars.Bar(k.Name, [.. k.Shares]))]),
            ["Part", .. Kinds.Select(k => k + ", %"), "water activity", "freezes from"],
            [.. known.Select(k => ImmutableArray.Create<string>([k.Name, .. k.Shares.Select(s => s.ToString("0.0", culture)), k.Mixed.Activity is { } a ? string.Create(culture, $"{a.Low:0.000} to {a.High:0.000}") : "not worked out", k.Mixed.FreezingPoint is { } f ? Web.Figures.Celsius(Math.Round(f, 1), culture) : "not worked out"]))]);
    }

    /// <summary>How much of the water is ice, for parts that go into a freezer.</summary>
    private static ChartView? Ice(WeighedDish dish, ImmutableArray<MixedComponent> mixed, CultureInfo culture)
    {
        string[] frozen = [.. dish.Components.Where(c => c.Component.Steps.Any(s => s.Temperatures.Any(t => t.Of == TemperatureOf.Freezer) || s.Operations.Append(s.Operation ?? "").Any(o => o.Contains("freez", StringComparison.Ordinal) || o.Contains("churn", StringComparison.Ordinal)))).Select(c => c.Component.Name)];
        double[] degrees = [.. Enumerable.Range(0, 51).Select(i => -i * 0.5)];
        (string Name, double[] Ice)[] lines = [.. mixed.Where(m => frozen.Contains(m.Name) && m.Phase is { Water: > 0 } && m.FreezingPoint is not null).Select(m => (Name: m.Name.Length > 0 ? m.Name : "the mix", Ice: degrees.Select(d => Freezing.IceShare(m.Phase!, d) * 100).ToArray()))];
        return lines.Length == 0 ? null : new ChartView("ice", "Ice", "Share of the water that is ice at a temperature, from the sugars, salt and alcohol in its water; a serving temperature can be read off.",
            LineChart.Draw("Share of the water that is ice", "°C below zero", "% of the water", [.. lines.Select(l => new LineChart.Line(l.Name, [.. degrees.Select((d, i) => (-d, l.Ice[i]))]))], [], []),
            ["°C", .. lines.Select(l => l.Name + ", %")],
            [.. Enumerable.Range(0, degrees.Length).Where(i => i % 4 == 0).Select(i => ImmutableArray.Create<string>([degrees[i].ToString("0", culture).Replace('-', '−'), .. lines.Select(l => l.Ice[i].ToString("0", culture))]))]);
    }

    private static ChartView Cost(Batch batch, PriceList prices, List<string> missing, CultureInfo culture)
    {
        NeedsList needs = NeedsList.From([batch]);
        Costing costing = Costing.Of(needs.Needs, prices);
        missing.AddRange(costing.Problems.Select(p => "Cost: " + p.Message));
        missing.AddRange(needs.NotCounted.Select(n => "Cost: no amount, not counted: " + n));
        string Money(decimal amount) => string.Create(culture, $"{amount:0.00} {costing.Currency}");
        (string Name, decimal Value)[] parts = [.. costing.Parts.Where(p => p.Value.Amount > 0).OrderByDescending(p => p.Value.Amount).Select(p => (p.Component.Length > 0 ? p.Component : "the dish", p.Value.Amount))];
        string says = string.Create(culture, $"{Money(costing.Total.Amount)} of food{(batch.For.Length > 0 ? " for " + batch.For : "")}, by the kitchen's price list, at the share of a pack that is used{(costing.Problems.IsEmpty ? "" : $"; {costing.Problems.Length} {(costing.Problems.Length == 1 ? "food has" : "foods have")} no price, so it costs more than this")}.");
        return new ChartView("cost", "What it costs", says,
            Bars.Waterfall("Cost by component", [.. parts.Select(p => (p.Name, (double)p.Value, Money(p.Value)))], Money(costing.Total.Amount)),
            ["Part", "Food", "Item", "Amount", "Value"],
            [.. costing.Lines.OrderByDescending(l => l.Value.Amount).Select(l => ImmutableArray.Create(l.Need.Component.Length > 0 ? l.Need.Component : "the dish", l.Need.Food, l.Item, l.Amount.ToString("#,0.#", culture), l.Value.Amount.ToString("0.000", culture)))]);
    }
}

/// <summary>One weight with its origin.</summary>
/// <param name="Part">Component.</param>
/// <param name="Written">The line as written.</param>
/// <param name="Grams">Grams.</param>
/// <param name="Range">Range, when it is not sure.</param>
/// <param name="Share">Percent of the component; empty when unknown.</param>
/// <param name="Working">How it came about.</param>
public sealed record FigureRow(string Part, string Written, string Grams, string Range, string Share, WorkingView Working);
