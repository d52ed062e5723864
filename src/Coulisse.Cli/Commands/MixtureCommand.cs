using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;
using Coulisse.Kitchen.Trials;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Substance;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse mixture CARD: what each component is, as mixed.</summary>
internal static class MixtureCommand
{
    // A serving cabinet, a display, a freezer.
    private static readonly double[] Cold = [-8, -12, -18];

    private sealed record Part(MixedComponent Mixed, WeightGrade Grade, ImmutableArray<StageMixture> Stages, Percentages? Percent, ImmutableArray<string> Balance, double? Overrun, KeptInCooking? Kept);

    public static Command Create()
    {
        Argument<string> card = new("CARD") { Description = "Card to work out; - for standard input" };
        Option<string?> measures = WeighCommand.Measures();
        Option<double> metres = new("--metres") { Description = "Height above the sea, for boiled sugar" };
        Option<double?> litre = new("--litre-weighs") { Description = "Grams a litre weighs once whipped or churned, for the overrun" };
        Option<string[]> trials = LabelCommand.Trials();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("mixture", "Each component as mixed and after the steps that change it: parts, percentages, water activity, freezing, alcohol, setting agents, balance.\nExample: coulisse mixture card.md") { card, measures, metres, litre, trials, json };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(metres) is not (>= 0 and <= 5000) || parsed.GetValue(litre) is <= 0)
            {
                return Input.Fail(Exit.Usage, "--metres is 0 to 5000, --litre-weighs more than 0 g.");
            }

            return TrialFiles.Read(parsed.GetValue(trials) ?? [], out int unread) is not { } sheets ? unread
                : WeighCommand.Read(parsed.GetRequiredValue(card), parsed.GetValue(measures), weighed =>
                {
                    UnstatedLoss loss = TrialLosses.Of(weighed.Dish, sheets);
                    return MadeDish.Parts(weighed, loss, parsed.GetValue(metres)).Match(
                        made => Show(weighed, made, parsed.GetValue(litre), parsed.GetValue(json)),
                        problems => Input.Fail(parsed.GetRequiredValue(card), problems));
                });
        });
        return command;
    }

    private static int Show(WeighedDish weighed, ImmutableArray<MadePart> made, double? litre, bool json)
    {
        ImmutableArray<Part> parts = [.. made.Select(x => (C: x.Component, M: x.Mixed, x.Stages)).Select(x => new Part(x.M, x.C.Grade, x.Stages, Percentages.Of(weighed, x.C), [.. BalanceRules.Of(weighed, x.C), .. CureRemarks.Of(x.C)], litre is { } g && x.M.Composition is { } c ? MixVolume.OverrunPercent(c, g) : null, KeptInCooking.Of(x.C)))];
        ImmutableArray<Problem> faults = MadeDish.Faults(made);
        int done = json ? Json(weighed.Dish.Title, parts) : Print(weighed.Dish.Title, parts);
        return faults.IsEmpty ? done : Input.Fail(weighed.Dish.Title, faults);
    }

    private static int Json(string title, ImmutableArray<Part> parts) => Input.Json(new
    {
        schema = "coulisse/mixture/1", title,
        components = parts.Select(p => (p.Mixed, p.Mixed.Composition, Part: p)).Select(x => new
        {
            name = x.Mixed.Name, stage = "as mixed", grams = WeighCommand.Round(x.Mixed.Grams), grade = x.Part.Grade, water = Round(x.Composition?.Water), fat = Round(x.Composition?.Fat), protein = Round(x.Composition?.Protein),
            carbohydrate = Round(x.Composition?.Carbohydrate), sugars = Round(x.Composition?.Sugars), fibre = Round(x.Composition?.Fibre), salt = Round(x.Composition?.SodiumMilligrams * 2.5 / 1000),
            alcohol = Round(x.Composition?.Alcohol), alcoholByVolume = Round(x.Mixed.AlcoholByVolume), ash = Round(x.Composition?.Ash), energyKj = Round(x.Composition is { } c ? FoodEnergy.EuKilojoules(c) : null),
            waterActivity = x.Mixed.Activity is { } a ? new { low = Round(a.Low), high = Round(a.High), models = a.Models.Select(y => new { y.Model, value = Round(y.Value), y.Range }), checkMeterWith = MeterSalt.Nearest(a.High).Salt, checkMeterAt20 = Round(MeterSalt.Nearest(a.High).Activity(20)) } : null,
            brix = Round(x.Mixed.Phase?.Brix), solubleSolids = Round(x.Mixed.Phase?.SolubleSolidsPercent), saltInWater = Round(x.Mixed.Phase?.SaltInWaterPercent), freezingPoint = Round(x.Mixed.FreezingPoint),
            iceShare = Cold.Select(t => new { celsius = t, percent = Round(100 * x.Mixed.IceShare(t)) }), fatByVolume = Round(x.Mixed.FatByVolume), density = Round(x.Mixed.Density), overrun = Round(x.Part.Overrun),
            percentages = x.Part.Percent is { } q ? new { flour = WeighCommand.Round(q.Flour), hydration = Round(q.Hydration), lines = q.Lines.Select(l => new { line = l.Line.Source.Span.Line, food = l.Line.Food.Food, ofTotal = Round(l.OfTotal), ofFlour = Round(l.OfFlour) }) } : null,
            agents = x.Mixed.Agents.Select(y => new { food = y.FoodId, percent = Round(y.Percent), of = "the batch", verdict = y.Verdict, remarks = y.Remarks }), balance = x.Part.Balance,
            stages = x.Part.Stages.Select(s => new { line = s.Step.Span.Line, grams = WeighCommand.Round(s.Grams), gramsLow = WeighCommand.Round(s.GramsRange.Low), gramsHigh = WeighCommand.Round(s.GramsRange.High), water = Round(s.Composition?.Water), fat = Round(s.Composition?.Fat), sugars = Round(s.Composition?.Sugars), salt = Round(s.Composition?.SodiumMilligrams * 2.5 / 1000), alcohol = Round(s.Composition?.Alcohol), solubleSolids = Round(s.Phase?.SolubleSolidsPercent), calciumMilligrams = Round(s.Composition?.CalciumMilligrams), ironMilligrams = Round(s.Composition?.IronMilligrams), potassiumMilligrams = Round(s.Composition?.PotassiumMilligrams), vitaminCMilligrams = Round(s.Composition?.VitaminCMilligrams), vitaminAMicrograms = Round(s.Composition?.VitaminAMicrograms), vitaminDMicrograms = Round(s.Composition?.VitaminDMicrograms), notes = s.Notes }),
            kept = x.Part.Kept is { } k ? new { way = k.Way, vitaminCMilligrams = Amounts(k, "vitamin C"), vitaminAMicrograms = Amounts(k, "vitamin A"), vitaminDMicrograms = Amounts(k, "vitamin D"), potassiumMilligrams = Amounts(k, "potassium"), ironMilligrams = Amounts(k, "iron"), calciumMilligrams = Amounts(k, "calcium"), withoutFactor = k.WithoutFactor } : null,
            unknown = x.Mixed.Unknown, leftOut = x.Mixed.LeftOut,
        }),
    });

    private static object Amounts(KeptInCooking kept, string name) => new { before = Round(kept[name].Before), after = Round(kept[name].After) };

    private static int Print(string title, ImmutableArray<Part> parts)
    {
        Console.OutputEncoding = new UTF8Encoding(false);
        Console.Out.WriteLine($"{title} (as mixed, g per 100 g)");
        foreach (Part p in parts)
        {
            MixedComponent m = p.Mixed;
            Console.Out.WriteLine(Say($"\n{(m.Name.Length > 0 ? m.Name : "(the dish)")}: {m.Grams:0.#} g, {p.Grade.ToString().ToLowerInvariant()}"));
            if (m.Composition is { } c)
            {
                Console.Out.WriteLine(Say($"  {Parts(c)}"));
                Console.Out.WriteLine(Say($"  density {m.Density:0.00} g/mL without air, fat {m.FatByVolume:0} % by volume{(p.Overrun is { } o ? Say($", overrun {o:0} %") : "")}{(m.AlcoholByVolume > 0.05 ? Say($", alcohol {m.AlcoholByVolume:0.0} % by volume") : "")}"));
            }

            if (m.Activity is { } a)
            {
                string ice = m.FreezingPoint is null ? "" : ", ice " + string.Join(", ", Cold.Select(t => Say($"{100 * m.IceShare(t):0} % at {t:0} °C")));
                Console.Out.WriteLine(Say($"  water activity {a.Low:0.000} to {a.High:0.000}, soluble solids {m.Phase!.SolubleSolidsPercent:0.0} %, salt in its water {m.Phase.SaltInWaterPercent:0.00} %, freezes from {(m.FreezingPoint is { } f ? Say($"{f:0.0} °C") : "below −40 °C")}{ice}"));
                Console.Out.WriteLine(Say($"    by {string.Join(", ", a.Models.Where(x => x.Value is not null).Select(x => Say($"{x.Model} {x.Value:0.000}")))}; a meter is checked over saturated {MeterSalt.Nearest(a.High).Salt}, {MeterSalt.Nearest(a.High).Activity(20):0.000} at 20 °C"));
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
                Console.Out.WriteLine(Say($"  after line {s.Step.Span.Line}: {s.Grams:0.#} g{(s.GramsRange.High - s.GramsRange.Low > 0.05 ? Say($" ({s.GramsRange.Low:0.#} to {s.GramsRange.High:0.#} g)") : "")}{(s.Composition is { } d ? ", " + Parts(d) : "")} ({string.Join("; ", s.Notes)})"));
            }

            if (p.Kept is { } kept && kept["vitamin C"].Before > 1)
            {
                Console.Out.WriteLine(Say($"  kept when {kept.Way}: {string.Join(", ", kept.Nutrients.Where(n => n.HasFactor && n.Before > 0).Select(n => Say($"{n.Name} {n.After:0.#} of {n.Before:0.#} {n.Unit}")))}"));
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
