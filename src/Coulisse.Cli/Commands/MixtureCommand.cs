using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Substance;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse mixture CARD: what each component is, as mixed.</summary>
internal static class MixtureCommand
{
    // A serving cabinet, a display, a freezer.
    private static readonly double[] Cold = [-8, -12, -18];

    private sealed record Part(MixedComponent Mixed, ImmutableArray<StageMixture> Stages, Percentages? Percent, ImmutableArray<string> Balance, double? Overrun, KeptInCooking? Kept);

    public static Command Create()
    {
        Argument<string> card = new("CARD") { Description = "Card to work out; - for standard input" };
        Option<string?> measures = WeighCommand.Measures();
        Option<double> metres = new("--metres") { Description = "Height above the sea, for boiled sugar" };
        Option<double?> litre = new("--litre-weighs") { Description = "Grams a litre weighs once whipped or churned, for the overrun" };
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("mixture", "Each component as mixed and after the steps that change it: parts, percentages, water activity, freezing, alcohol, setting agents, balance.\nExample: coulisse mixture card.md") { card, measures, metres, litre, json };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(metres) is not (>= 0 and <= 5000) || parsed.GetValue(litre) is <= 0)
            {
                return Input.Fail(Exit.Usage, "--metres is 0 to 5000, --litre-weighs more than 0 g.");
            }

            return WeighCommand.Read(parsed.GetRequiredValue(card), parsed.GetValue(measures), weighed => Blending.Of(weighed).Match(
                mixed => Show(weighed, mixed, parsed.GetValue(metres), parsed.GetValue(litre), parsed.GetValue(json)),
                problems => Input.Fail(parsed.GetRequiredValue(card), problems)));
        });
        return command;
    }

    private static int Show(WeighedDish weighed, ImmutableArray<MixedComponent> mixed, double metres, double? litre, bool json)
    {
        ImmutableArray<Part> parts = [.. weighed.Components.Where(c => !c.Lines.IsEmpty).Zip(mixed, (c, m) => new Part(m, StageMixtures.Of(c, m, metres), Percentages.Of(weighed, c), BalanceRules.Of(weighed, c), litre is { } g && m.Composition is { } x ? MixVolume.OverrunPercent(x, g) : null, KeptInCooking.Of(c)))];
        ImmutableArray<Problem> faults = [.. weighed.Components.SelectMany(c => MethodFold.Faults(c))];
        int done = json ? Json(weighed.Dish.Title, parts) : Print(weighed.Dish.Title, parts);
        return faults.IsEmpty ? done : Input.Fail(weighed.Dish.Title, faults);
    }

    private static int Json(string title, ImmutableArray<Part> parts) => Input.Json(new
    {
        schema = "coulisse/mixture/1", title,
        components = parts.Select(p => (p.Mixed, p.Mixed.Composition, Part: p)).Select(x => new
        {
            name = x.Mixed.Name, stage = "as mixed", grams = WeighCommand.Round(x.Mixed.Grams), water = Round(x.Composition?.Water), fat = Round(x.Composition?.Fat), protein = Round(x.Composition?.Protein),
            carbohydrate = Round(x.Composition?.Carbohydrate), sugars = Round(x.Composition?.Sugars), fibre = Round(x.Composition?.Fibre), salt = Round(x.Composition?.SodiumMilligrams * 2.5 / 1000),
            alcohol = Round(x.Composition?.Alcohol), alcoholByVolume = Round(x.Mixed.AlcoholByVolume), ash = Round(x.Composition?.Ash), energyKj = Round(x.Composition is { } c ? FoodEnergy.EuKilojoules(c) : null),
            waterActivity = x.Mixed.Activity is { } a ? new { low = Round(a.Low), high = Round(a.High), models = a.Models.Select(y => new { y.Model, value = Round(y.Value), y.Range }) } : null,
            brix = Round(x.Mixed.Phase?.Brix), solubleSolids = Round(x.Mixed.Phase?.SolubleSolidsPercent), saltInWater = Round(x.Mixed.Phase?.SaltInWaterPercent), freezingPoint = Round(x.Mixed.FreezingPoint),
            iceShare = Cold.Select(t => new { celsius = t, percent = Round(100 * x.Mixed.IceShare(t)) }), fatByVolume = Round(x.Mixed.FatByVolume), density = Round(x.Mixed.Density), overrun = Round(x.Part.Overrun),
            percentages = x.Part.Percent is { } q ? new { flour = WeighCommand.Round(q.Flour), hydration = Round(q.Hydration), lines = q.Lines.Select(l => new { line = l.Line.Source.Span.Line, food = l.Line.Food.Food, ofTotal = Round(l.OfTotal), ofFlour = Round(l.OfFlour) }) } : null,
            agents = x.Mixed.Agents.Select(y => new { food = y.FoodId, percent = Round(y.Percent), of = "the batch", verdict = y.Verdict, remarks = y.Remarks }), balance = x.Part.Balance,
            stages = x.Part.Stages.Select(s => new { line = s.Step.Span.Line, grams = WeighCommand.Round(s.Grams), water = Round(s.Composition?.Water), fat = Round(s.Composition?.Fat), sugars = Round(s.Composition?.Sugars), salt = Round(s.Composition?.SodiumMilligrams * 2.5 / 1000), alcohol = Round(s.Composition?.Alcohol), solubleSolids = Round(s.Phase?.SolubleSolidsPercent), notes = s.Notes }),
            kept = x.Part.Kept is { } k ? new { way = k.Way, vitaminCMilligrams = new { before = Round(k.VitaminCBefore), after = Round(k.VitaminC) }, potassiumMilligrams = new { before = Round(k.PotassiumBefore), after = Round(k.Potassium) }, ironMilligrams = new { before = Round(k.IronBefore), after = Round(k.Iron) }, calciumMilligrams = new { before = Round(k.CalciumBefore), after = Round(k.Calcium) }, withoutFactor = k.WithoutFactor } : null,
            unknown = x.Mixed.Unknown, leftOut = x.Mixed.LeftOut,
        }),
    });

    private static int Print(string title, ImmutableArray<Part> parts)
    {
        Console.OutputEncoding = new UTF8Encoding(false);
        Console.Out.WriteLine($"{title} (as mixed, g per 100 g)");
        foreach (Part p in parts)
        {
            MixedComponent m = p.Mixed;
            Console.Out.WriteLine(Say($"\n{(m.Name.Length > 0 ? m.Name : "(the dish)")}: {m.Grams:0.#} g"));
            if (m.Composition is { } c)
            {
                Console.Out.WriteLine(Say($"  {Parts(c)}"));
                Console.Out.WriteLine(Say($"  density {m.Density:0.00} g/mL without air, fat {m.FatByVolume:0} % by volume{(p.Overrun is { } o ? Say($", overrun {o:0} %") : "")}{(m.AlcoholByVolume > 0.05 ? Say($", alcohol {m.AlcoholByVolume:0.0} % by volume") : "")}"));
            }

            if (m.Activity is { } a)
            {
                string ice = m.FreezingPoint is null ? "" : ", ice " + string.Join(", ", Cold.Select(t => Say($"{100 * m.IceShare(t):0} % at {t:0} °C")));
                Console.Out.WriteLine(Say($"  water activity {a.Low:0.000} to {a.High:0.000}, soluble solids {m.Phase!.SolubleSolidsPercent:0.0} %, salt in its water {m.Phase.SaltInWaterPercent:0.00} %, freezes from {(m.FreezingPoint is { } f ? Say($"{f:0.0} °C") : "below −40 °C")}{ice}"));
            }

            if (p.Percent is { Flour: > 0 } b)
            {
                Console.Out.WriteLine(Say($"  on {b.Flour:0.#} g of flour: {string.Join(", ", b.Lines.Select(l => Say($"{l.Line.Food.Food} {l.OfFlour:0.#}")))}{(b.Hydration is { } h ? Say($"; water {h:0.#} %") : "")}"));
            }

            foreach (AgentVerdict v in m.Agents)
            {
                Console.Out.WriteLine(Say($"  {v.FoodId} {v.Percent:0.00} % of the batch: {v.Verdict} the usual levels{(v.Remarks.IsEmpty ? "" : " (" + string.Join("; ", v.Remarks) + ")")}"));
            }

            foreach (string remark in p.Balance)
            {
                Console.Out.WriteLine("  " + remark);
            }

            foreach (StageMixture s in p.Stages)
            {
                Console.Out.WriteLine(Say($"  after line {s.Step.Span.Line}: {s.Grams:0.#} g{(s.Composition is { } d ? ", " + Parts(d) : "")} ({string.Join("; ", s.Notes)})"));
            }

            if (p.Kept is { VitaminCBefore: > 1 } kept)
            {
                Console.Out.WriteLine(Say($"  kept when {kept.Way}: vitamin C {kept.VitaminC:0} of {kept.VitaminCBefore:0} mg"));
            }

            if (!m.Unknown.IsEmpty)
            {
                Console.Out.WriteLine($"  not worked out: {string.Join(", ", m.Unknown)} not in the food table");
            }

            if (!m.LeftOut.IsEmpty)
            {
                Console.Out.WriteLine($"  left out, no weight: {string.Join(", ", m.LeftOut)}");
            }
        }

        return Exit.Done;
    }

    private static string Parts(Composition c) => Say($"water {c.Water:0.0}, fat {c.Fat:0.0}, protein {c.Protein:0.0}, carbohydrate {c.Carbohydrate:0.0} of which sugars {(c.Sugars is { } s ? Say($"{s:0.0}") : "not held")}, fibre {c.Fibre:0.0}, salt {(c.SodiumMilligrams is { } na ? Say($"{na * 2.5 / 1000:0.00}") : "not held")}, alcohol {c.Alcohol:0.0}");

    private static string Say(FormattableString text) => Coulisse.Matter.Quantities.TrueMinus.In(text.ToString(CultureInfo.InvariantCulture));

    private static double? Round(double? x) => x is { } v ? Math.Round(v, 4, MidpointRounding.AwayFromZero) : null;
}
