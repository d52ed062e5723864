using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Flows.Fits;
using Coulisse.Matter.Quantities;
using Coulisse.Matter.Shapes;

namespace Coulisse.Gauge.Shapes;

/// <summary>Every fit there is, by the way the command and the page ask it: answer, neighbours that come out even and drawing.</summary>
internal static class FitsGauge
{
    private const double Limit = 5;

    public static void Run(Action<string, (double Median, double P95), double> row)
    {
        row("packing in a ring, each N to 127, the ring asked for it just takes it", Stopwatches.Milliseconds(127 * 3, i => Answer("ring", ("ring", "100"), ("round", Text(RoundsInRing.RoundFor(Length.FromMillimetres(100), (i % 127) + 1).Millimetres - 0.001)), ("count", "96"))), Limit);
        row("packing in a square, 1 to 50 and beyond", Stopwatches.Milliseconds(400, i => Answer("square", ("side", "200"), ("round", Text(100 - (i * 0.22))), ("count", "96"))), Limit);
        row("mixed layouts, small pieces on a whole tray (thousands)", Stopwatches.Milliseconds(200, i => Answer("grid", ("block", "530x325"), ("piece", Text(5 + (i % 23 * 0.37)) + "x" + Text(4.5 + (i % 17 * 0.41))), ("gap", "0.5"))), Limit);
        row("mixed layouts, pieces of 12 to 40 mm on a whole tray (hundreds)", Stopwatches.Milliseconds(300, i => Answer("grid", ("block", "530x325"), ("piece", Text(12 + (i % 29 * 0.97)) + "x" + Text(12.3 + (i % 23 * 0.83))), ("gap", "0.5"))), Limit);
        row("rounds on a tray, thousands", Stopwatches.Milliseconds(200, i => Answer("rounds", ("tray", "530x325"), ("round", Text(5 + (i * 0.1))), ("gap", "1"))), Limit);
        foreach (FitKind kind in FitFlow.Kinds)
        {
            row($"`fit {kind.Name}`: the example, every size of it 0.7 to 1.3 times", Stopwatches.Milliseconds(300, i => Answer(kind, Varied(kind, i))), Limit);
        }

        foreach (string tin in (string[])["200x50", "330x230x45", "taper 180x200x50", "loaf 200x90x220x110x65", "ring 240x80", "chimney 240x70x90", "dome 70", "shell 75x45x15", "GN 1/2 65"])
        {
            row($"tin {tin}, into another", Stopwatches.Milliseconds(200, i => Answer("tin", ("tin", tin), ("fill", Text(30 + (i % 60))), ("have", "2000"), ("to", "330x230x60"))), Limit);
        }
    }

    private static ImmutableDictionary<string, string> Varied(FitKind kind, int i)
    {
        Random random = new(i);
        double factor = 0.7 + (0.6 * random.NextDouble());
        return kind.Fields.Where(f => kind.ExampleValues.ContainsKey(f.Name)).ToImmutableDictionary(f => f.Name, f => f.Input is FitInput.Sizes or FitInput.Millimetres
            ? string.Join('x', FitValues.Sizes(kind.ExampleValues[f.Name]).Select(s => Text(s * (f.Needed ? factor : 1))))
            : kind.ExampleValues[f.Name]);
    }

    private static void Answer(string kind, params (string Key, string Value)[] given) => Answer(FitFlow.Find(kind)!, given.ToImmutableDictionary(g => g.Key, g => g.Value));

    private static void Answer(FitKind kind, ImmutableDictionary<string, string> given)
    {
        if (FitFlow.Of(kind, given) is Parsed<FitAnswer>.Failed(var problems))
        {
            throw new InvalidOperationException($"{kind.Name}: {problems[0].Message}");
        }
    }

    private static string Text(double value) => Math.Max(0.1, value).ToString("0.####", CultureInfo.InvariantCulture);
}
