using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Matter.Foods;
using Coulisse.Matter.Measures;
using Coulisse.Matter.Substance;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse heat mix: where parts of different temperatures meet.</summary>
internal static class HeatMix
{
    public static Command Create()
    {
        Argument<string[]> parts = new("PART") { Description = "\"500 g milk at 80\", \"200 g ice at -18\"; two or more", Arity = ArgumentArity.OneOrMore };
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("mix", "Temperature of a mixture from the heat its parts hold; ice and solid fat melt.\nExample: coulisse heat mix \"500 g whole milk at 80\" \"250 g unsalted butter at 5\"") { parts, json };
        command.SetAction(parsed =>
        {
            List<MixingPart> read = [];
            foreach (string text in parsed.GetRequiredValue(parts))
            {
                if (Part(text, out string why) is not { } part)
                {
                    return Input.Fail("heat mix", [new Problem("MIX007", 0, why, "Write weight, food and temperature: “500 g whole milk at 80”.")]);
                }

                read.Add(part);
            }

            return parsed.GetValue(json) ? Json(read) : Print(read);
        });
        return command;
    }

    private static MixingPart? Part(string text, out string why)
    {
        string t = text.Replace('−', '-').Replace("°C", "", StringComparison.Ordinal).Replace("°", "", StringComparison.Ordinal).Trim();
        int at = Math.Max(t.LastIndexOf(" at ", StringComparison.OrdinalIgnoreCase), t.LastIndexOf('@') - 1);
        why = $"“{text}” has no temperature between -40 and 150 °C.";
        if (at <= 0 || !double.TryParse(t[(at + 1)..].TrimStart('a', 't', 'A', 'T', '@', ' '), NumberStyles.Float, CultureInfo.InvariantCulture, out double celsius) || celsius is not (>= -40 and <= 150))
        {
            return null;
        }

        FoodAmount? food = CardReader.ReadLine(t[..at].Trim(), "en").Foods.FirstOrDefault();
        double? grams = food?.Grams ?? (food is { Amount: { } a, Unit: { } u } && Household.MassOf(u) is { } one ? a * one.Grams : null);
        why = $"“{text}” has no weight above 0.";
        if (grams is not > 0)
        {
            return null;
        }

        string name = food!.Food;
        bool ice = name.Contains("ice", StringComparison.OrdinalIgnoreCase) && name.Split(' ').Any(w => w.Equals("ice", StringComparison.OrdinalIgnoreCase));
        Food? known;
        try
        {
            known = ice ? FoodTable.Default.Find("water") : OwnFoodsFile.Named(name);
            why = "";
        }
        catch (ArgumentException e)
        {
            (known, why) = (null, e.Message);
        }

        if (known is null)
        {
            return null;
        }

        why = $"The parts of “{name}” are not held, or it is too strong in alcohol.";
        return ThermalParts.Of(known.Composition) is not { } thermal ? null : new MixingPart(name, grams.Value, thermal, celsius, FreezingPoint(known), FatMelting.Of(known.Id));
    }

    // What is hardly a solution (fat, sugar, flour) holds no water that freezes on its own.
    private static double? FreezingPoint(Food food) => food.Id == "water" ? -0.0005
        : food.Composition.Water > 5 && Solution.Of(food.Composition, 100) is { } s && Freezing.Point(s) is { } point ? Math.Min(point, -0.0005)
        : food.Composition.Water > 50 ? -0.8 : null;

    private static int Json(List<MixingPart> parts) => parts.FirstOrDefault(p => p.Celsius < 0 && p.FreezingPoint is null) is { } bare ? Frozen(bare)
        : MixingTemperature.Of([.. parts]) is var met ? Input.Json(new
        {
            schema = "coulisse/heat-mix/1", celsius = Math.Round(met.Celsius, 2), iceGrams = Math.Round(met.IceGrams, 2), grams = parts.Sum(p => p.Grams), fatLeftOut = met.FatLeftOut,
            parts = parts.Select(p => new { food = p.Name, grams = p.Grams, celsius = p.Celsius, fat = p.Fat?.Fat }), assumptions = Assumptions(met),
        }) : Exit.OurFault;

    private static int Print(List<MixingPart> parts)
    {
        if (parts.FirstOrDefault(p => p.Celsius < 0 && p.FreezingPoint is null) is { } bare)
        {
            return Frozen(bare);
        }

        MovesText.Utf8();
        MixingTemperature met = MixingTemperature.Of([.. parts]);
        Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{parts.Sum(p => p.Grams):0.#} g meet at {met.Celsius:0.0} °C{(met.IceGrams > 0 ? $", with {met.IceGrams.ToString("0", CultureInfo.InvariantCulture)} g of ice left" : "")}"));
        foreach (string a in Assumptions(met))
        {
            Console.Out.WriteLine("  " + a);
        }

        return Exit.Done;
    }

    private static int Frozen(MixingPart part) => Input.Fail("heat mix", [new Problem("MIX007", 0, $"“{part.Name}” below 0 °C: how much of it is ice is not known.", "Give it at 0 °C or warmer.")]);

    private static ImmutableArray<string> Assumptions(MixingTemperature met) =>
    [
        "nothing goes to the bowl and the air; a cold steel bowl of 1 kg counts as about 120 g of water",
        .. met.IceGrams > 0 ? ["sugar and salt of the mixture would go on melting the ice, below what is said"] : ImmutableArray<string>.Empty,
        .. met.FatLeftOut.Select(f => $"melting of the fat of {f} is left out"),
    ];
}
