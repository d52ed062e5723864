using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Foods;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse mixture CARD: what each component is, as mixed.</summary>
internal static class MixtureCommand
{
    public static Command Create()
    {
        Argument<string> card = new("CARD") { Description = "Card to work out; - for standard input" };
        Option<string?> measures = WeighCommand.Measures();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("mixture", "Water, fat, sugars, salt, water activity, freezing point and setting agents of each component as mixed.\nExample: coulisse mixture card.md") { card, measures, json };
        command.SetAction(parsed => WeighCommand.Read(parsed.GetRequiredValue(card), parsed.GetValue(measures), weighed => Blending.Of(weighed).Match(
            mixed => parsed.GetValue(json) ? Json(weighed, mixed) : Print(weighed, mixed),
            problems => Input.Fail(parsed.GetRequiredValue(card), problems))));
        return command;
    }

    private static int Json(WeighedDish weighed, ImmutableArray<MixedComponent> mixed) => Input.Json(new
    {
        schema = "coulisse/mixture/1", title = weighed.Dish.Title,
        components = mixed.Select(m => new
        {
            name = m.Name, stage = "as mixed", grams = WeighCommand.Round(m.Grams), water = Round(m.Composition?.Water), fat = Round(m.Composition?.Fat), protein = Round(m.Composition?.Protein),
            carbohydrate = Round(m.Composition?.Carbohydrate), sugars = Round(m.Composition?.Sugars), fibre = Round(m.Composition?.Fibre), salt = Round(m.Composition?.SodiumMilligrams * 2.5 / 1000),
            alcohol = Round(m.Composition?.Alcohol), ash = Round(m.Composition?.Ash), energyKj = Round(m.Composition is { } c ? FoodEnergy.EuKilojoules(c) : null),
            waterActivity = m.Activity is { } a ? new { low = Round(a.Low), high = Round(a.High), models = a.Models.Select(x => new { x.Model, value = Round(x.Value), x.Range }) } : null,
            brix = Round(m.Phase?.Brix), solubleSolids = Round(m.Phase?.SolubleSolidsPercent), saltInWater = Round(m.Phase?.SaltInWaterPercent), freezingPoint = Round(m.FreezingPoint),
            agents = m.Agents.Select(x => new { food = x.FoodId, percent = Round(x.Percent), of = "the batch", verdict = x.Verdict, remarks = x.Remarks }), unknown = m.Unknown, leftOut = m.LeftOut,
        }),
    });

    private static int Print(WeighedDish weighed, ImmutableArray<MixedComponent> mixed)
    {
        Console.OutputEncoding = new UTF8Encoding(false);
        Console.Out.WriteLine($"{weighed.Dish.Title} (as mixed, g per 100 g)");
        foreach (MixedComponent m in mixed)
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\n{(m.Name.Length > 0 ? m.Name : "(the dish)")}: {m.Grams:0.#} g"));
            if (m.Composition is { } c)
            {
                Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  water {c.Water:0.0}, fat {c.Fat:0.0}, protein {c.Protein:0.0}, carbohydrate {c.Carbohydrate:0.0} of which sugars {c.Sugars?.ToString("0.0", CultureInfo.InvariantCulture) ?? "not held"}, fibre {c.Fibre:0.0}, salt {c.SodiumMilligrams * 2.5 / 1000:0.00}, alcohol {c.Alcohol:0.0}"));
            }

            if (m.Activity is { } a)
            {
                Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  water activity {a.Low:0.000} to {a.High:0.000}, soluble solids {m.Phase!.SolubleSolidsPercent:0.0} %, salt in its water {m.Phase.SaltInWaterPercent:0.00} %, freezes from {(m.FreezingPoint is { } f ? f.ToString("0.0", CultureInfo.InvariantCulture) + " °C" : "below -40 °C")}"));
            }

            foreach (Matter.Substance.AgentVerdict v in m.Agents)
            {
                Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {v.FoodId} {v.Percent:0.00} % of the batch: {v.Verdict} the usual levels{(v.Remarks.IsEmpty ? "" : " (" + string.Join("; ", v.Remarks) + ")")}"));
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

    private static double? Round(double? x) => x is { } v ? Math.Round(v, 4, MidpointRounding.AwayFromZero) : null;
}
