using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Views.Web;

namespace Coulisse.Views.Papers;

/// <summary>What a standard recipe sets out beside its steps: each oven, bath and machine with setting, fan, time and speed, and how one knows that it is done. What the card does not say is a place to write, never a guess.</summary>
internal static partial class CardSettings
{
    /// <summary>The table; nothing when no step has a setting, a machine or a sign.</summary>
    public static IEnumerable<Block> Of(Batch batch, CultureInfo culture)
    {
        PaperRow[] rows = [.. batch.Components.Where(c => !c.Weighed.Component.IsAssembly).SelectMany(c => c.Steps.Select((s, i) => (Part: CardPaper.Name(c, batch), Number: i + 1, Step: s))).Where(x => Tells(x.Step.Step)).Select(x => Row(x.Part, x.Number, x.Step, culture))];
        return rows.Length == 0 ? [] :
        [
            new HeadingBlock(1, "Heat, machines, and when it is done"),
            new TableBlock([new("Part and step"), new("Set to", Strong: true), new("Fan"), new("Time", Side.Right), new("Speed", Pen: 16), new("Food at"), new("Done when"), new("Comes out", Side.Right)], [.. rows]),
        ];
    }

    private static bool Tells(Step s) => s.Temperatures.Any(Set) || s.Temperatures.Any(Core) || Machine(s) || s.LossPercent is not null || s.EndGrams is not null;

    private static bool Machine(Step s) => s.Times.Any(t => t.Kind == TimeKind.Machine) || s.Kit.Any(k => k.Contains("blender", StringComparison.OrdinalIgnoreCase) || k.Contains("mixer", StringComparison.OrdinalIgnoreCase));

    private static bool Set(StepTemperature t) => t is { Of: TemperatureOf.Oven or TemperatureOf.Bath or TemperatureOf.Dryer or TemperatureOf.Pan, Bound: Bound.At, Inherited: false };

    private static bool Core(StepTemperature t) => t.Of is TemperatureOf.Core or TemperatureOf.Food;

    /// <summary>Both ends where the card tells a range.</summary>
    private static string Degrees(StepTemperature t, CultureInfo culture) => t.CelsiusMax is { } max ? t.Celsius.ToString("0.#", culture).Replace('-', '\u2212') + "–" + Figures.Celsius(max, culture) : Figures.Celsius(t.Celsius, culture);

    private static PaperRow Row(string part, int number, BatchStep batch, CultureInfo culture)
    {
        Step s = batch.Step;
        StepTemperature[] set = [.. s.Temperatures.Where(Set)];
        bool machine = Machine(s);
        string oven = set.Any(t => t.Of == TemperatureOf.Oven) ? set.First(t => t.Of == TemperatureOf.Oven).Fan switch { true => "fan", false => "no fan", _ => "" } : "–";
        Match speed = Speed().Match(s.Text);
        string comes = s.EndGrams is { } g ? Figures.Grams(g, culture) : s.LossPercent is { } loss ? "−" + Figures.Number(loss, culture) + "\u202F%" : "";
        return new PaperRow(
        [
            string.Create(CultureInfo.InvariantCulture, $"{part}, {number}"),
            string.Join(", ", set.Select(t => Degrees(t, culture))),
            oven.Length > 0 ? oven : PaperCell.Blank,
            string.Join(", ", s.Times.Where(t => t.Kind is not (TimeKind.Limit or TimeKind.Hands)).Select(t => t.Words).Distinct()),
            speed.Success ? speed.Value : machine ? PaperCell.Blank : "–",
            string.Join(", ", s.Temperatures.Where(Core).Select(t => Degrees(t, culture) + t.Bound switch { Bound.AtLeast => " or more", Bound.AtMost => " or less", _ => "" }).Distinct()),
            s.Until is { Length: > 8 } until ? until : "",
            comes,
        ]);
    }

    [GeneratedRegex(@"\b(low|medium|middle|high|full|slow|slowest|first|second|third|lowest|highest) speed\b|\bspeed [0-9]+\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Speed();
}
