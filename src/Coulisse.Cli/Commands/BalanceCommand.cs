using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Needs;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Plating;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse balance CARD|OCCASION: which part is short, which is over, what evens it out, what the scales cannot weigh, the smallest batch.</summary>
internal static class BalanceCommand
{
    private sealed record Found(string Title, int Covers, string Rule, ImmutableArray<PartBalance> Parts, ImmutableArray<ScaleFinding> Fine, ImmutableArray<LeastBatch> Least, ImmutableArray<KitchenScale> Scales);

    public static Command Create()
    {
        Argument<string> path = new("CARD|OCCASION") { Description = "A card that states one plate, or an occasion sheet" };
        Option<int?> guests = new("--guests") { Description = "Guests of a card alone; covers by the overage rule" };
        Option<double> over = new("--over") { Description = "Overage, percent of the guests", DefaultValueFactory = _ => 10 };
        Option<double> allowed = new("--allowed") { Description = "A part more than this over is named, percent", DefaultValueFactory = _ => 15 };
        Option<string[]> taken = new("--taken") { Description = "Taken for tasting or a trial, \"PART=49\", in grams or pieces as the part is made; may be given again" };
        Option<string[]> scale = new("--scale") { Description = "A scale, \"3 kg x 0.1 g\"; may be given again (default: those of the sheet, else 5 kg × 1 g)" };
        Option<string[]> trials = TrialFiles.Option();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("balance", "Do the parts come out even, and can they be weighed?\nExample: coulisse balance examples/demo/occasion.md\nExample: coulisse balance examples/demo/cards/starter.md --guests 48 --scale \"3 kg x 0.1 g\"") { path, guests, over, allowed, taken, scale, trials, json };
        command.SetAction(parsed =>
        {
            Dictionary<string, double> off = new(StringComparer.OrdinalIgnoreCase);
            foreach (string text in parsed.GetValue(taken) ?? [])
            {
                int eq = text.LastIndexOf('=');
                if (eq < 1 || !double.TryParse(text[(eq + 1)..].Trim().TrimEnd('g', ' '), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double n) || n <= 0)
                {
                    return Input.Fail(Exit.Usage, $"--taken \"{text}\": write \"PART=49\".");
                }

                off[text[..eq].Trim()] = n;
            }

            KitchenScale?[] scales = [.. (parsed.GetValue(scale) ?? []).Select(s => KitchenScale.Of(new SheetKit("", "scale " + s, "scale", "", 1, "", 0)))];
            if (scales.Contains(null) || parsed.GetValue(guests) is < 1 || parsed.GetValue(over) < 0 || parsed.GetValue(allowed) < 0)
            {
                return Input.Fail(Exit.Usage, "--scale is \"3 kg x 0.1 g\": what it takes, then its division; --guests is a whole number from 1; --over and --allowed are percentages.");
            }

            return Run(parsed.GetRequiredValue(path), parsed.GetValue(guests), parsed.GetValue(over), parsed.GetValue(allowed), off, [.. scales.OfType<KitchenScale>()], parsed.GetValue(trials) ?? [], parsed.GetValue(json));
        });
        return command;
    }

    private static int Run(string path, int? guests, double over, double allowed, Dictionary<string, double> off, ImmutableArray<KitchenScale> scales, string[] trials, bool json)
    {
        if (Input.Bytes(path, out int exit) is not { } bytes)
        {
            return exit;
        }

        if (Encoding.UTF8.GetString(bytes).Split('\n').Any(l => l.Trim().StartsWith("## Dishes", StringComparison.OrdinalIgnoreCase)))
        {
            return PlanCommand.Load([path], null, out exit, trials) is not { } occasion ? exit : PartBalance.Of(occasion, off, allowed).Match(
                parts => OccasionBatches.Make(occasion).Match(batches => Give(Of(occasion, parts, batches, scales, over), json), problems => Input.Fail(path, problems)),
                problems => Input.Fail(path, problems));
        }

        return TrialFiles.Read(trials, out exit) is not { } tried ? exit : WeighCommand.Read(path, null, weighed => Scaling.Scale(weighed, guests is { } g ? new ScaleTo.Covers(Balance.Covers(g, over)) : new ScaleTo.Factor(1)).Match(
            batch =>
            {
                double covers = guests is { } n ? Balance.Covers(n, over) : weighed.Dish.Yields.FirstOrDefault(y => y.Unit is "portions" or "plates" or "covers")?.Amount ?? 1;
                ImmutableArray<KitchenScale> own = scales.IsEmpty ? [new KitchenScale(5000, 1)] : scales;
                string rule = guests is { } k ? string.Create(CultureInfo.InvariantCulture, $"{k} guests and {over:0.#} % over") : "as the card says";
                return Give(new Found(weighed.Dish.Title, (int)covers, rule, PartBalance.Of(batch, covers, null, off, null, allowed), ScaleCheck.Of(batch, own), LeastBatch.Of(batch, [], own), own), json);
            },
            problems => Input.Fail(path, problems)), tried);
    }

    private static Found Of(Occasion occasion, ImmutableArray<PartBalance> parts, ImmutableArray<Batch> batches, ImmutableArray<KitchenScale> scales, double over)
    {
        ImmutableArray<KitchenScale> own = scales.IsEmpty ? [.. occasion.Kit.Select(KitchenScale.Of).OfType<KitchenScale>()] : scales;
        own = own.IsEmpty ? [new KitchenScale(5000, 1)] : own;
        int asked = Balance.Covers(occasion.Guests, over);
        string rule = string.Create(CultureInfo.InvariantCulture, $"{occasion.Guests} guests and {over:0.#} % over would be {asked}{(asked == occasion.Covers ? ", as the sheet says" : asked > occasion.Covers ? ": the sheet plates fewer" : ": the sheet plates more")}");
        return new Found(occasion.Title, occasion.Covers, rule, parts, [.. batches.SelectMany(b => ScaleCheck.Of(b, own))], [.. batches.SelectMany(b => LeastBatch.Of(b, occasion.Kit, own))], own);
    }

    private static int Give(Found f, bool json)
    {
        bool uneven = f.Parts.Any(p => p.Row.Verdict == BalanceVerdict.Short);
        if (json)
        {
            Input.Json(new
            {
                schema = "coulisse/balance/1", title = f.Title, covers = f.Covers, rule = f.Rule,
                parts = f.Parts.Select(p => new { dish = p.Dish, part = p.Row.Component, unit = p.Row.Unit, made = R(p.Row.Made), needed = R(p.Row.Needed), over = R(p.Row.Over), overPercent = R(p.Row.OverPercent), verdict = p.Row.Verdict, factor = Math.Round(p.Row.Factor, 4), learnt = p.Row.Learnt, madeLeast = p.Row.MadeLeast is { } low ? (double?)R(low) : null, madeMost = p.Row.MadeMost is { } high ? (double?)R(high) : null, rawGrams = R(p.RawGrams), lossPercent = p.LossPercent is { } l ? (double?)R(l) : null, plateWithout = p.Without, taken = p.Taken, twins = p.Twins, remedy = p.Remedy }),
                scales = f.Scales.Select(s => new { capacityGrams = s.CapacityGrams, stepGrams = s.StepGrams, leastGrams = s.LeastGrams }),
                tooFine = f.Fine.Select(x => new { part = x.Component, food = x.Line.Weighed.Food.Food, grams = R(x.Line.Grams), errorPercent = R(x.ErrorPercent), master = x.Master is null ? null : new { agentGrams = R(x.Master.AgentGrams), carrier = x.Master.Carrier, carrierGrams = R(x.Master.CarrierGrams), takeGrams = R(x.Master.TakeGrams), carrierLeftGrams = R(x.Master.CarrierLeftGrams) } }),
                least = f.Least.Select(l => new { part = l.Component, grams = R(l.Grams), share = Math.Round(l.Share, 4), because = l.Because, kit = l.Kit, source = l.Source }),
            });
            return uneven ? Exit.Problems : Exit.Done;
        }

        Console.OutputEncoding = new UTF8Encoding(false);
        Line($"{f.Title}: {f.Covers} covers ({f.Rule})");
        foreach (PartBalance p in f.Parts)
        {
            string word = p.Row.Verdict switch { BalanceVerdict.Short => "SHORT", BalanceVerdict.Over => "OVER", _ => "even" };
            Line($"\n{p.Row.Component}: {p.Row.Made:0.#} {p.Units} made, {p.Row.Needed:0.#} needed, {p.Row.Over:0.#} over ({p.Row.OverPercent:0.0} %)  {word}{(p.Remedy.Length > 0 ? ": " + p.Remedy : "")}");
            string loss = p.LossPercent is { } l ? string.Create(CultureInfo.InvariantCulture, $"; {Math.Abs(l):0.0} % {(l >= 0 ? "lost" : "gained")} on {p.RawGrams:0.#} g of lines") : "";
            string without = p.Without > 0 ? string.Create(CultureInfo.InvariantCulture, $"; {p.Without} without it") : "";
            string taken = p.Taken > 0 ? string.Create(CultureInfo.InvariantCulture, $"; {p.Taken:0.#} {p.Units} tasted or tried") : "";
            string beside = (loss + without + taken).TrimStart(';', ' ');
            if (beside.Length > 0)
            {
                Line($"  {beside}");
            }

            if (p.Row.MadeLeast is { } low && p.Row.MadeMost is { } high)
            {
                Line($"  {low:0.#} to {high:0.#} {p.Units} in good runs, short is judged by the least: {p.Row.Learnt}");
            }

            foreach (string twin in p.Twins)
            {
                Line($"  {twin}");
            }
        }

        foreach (ScaleFinding x in f.Fine)
        {
            Line($"\n{x.Component}: {x.Line.Grams:0.##} g {x.Line.Weighed.Food.Food} cannot be weighed within 2 % (half a division is {x.ErrorPercent:0.#} %)");
            if (x.Master is { } m)
            {
                Line($"  mix {m.AgentGrams:0.##} g of it into {m.CarrierGrams:0.##} g {m.Carrier}; take {m.TakeGrams:0.##} g of that; add {m.CarrierLeftGrams:0.##} g more {m.Carrier}");
            }
            else
            {
                Line($"  the part holds nothing to mix it into; weigh a larger batch, or use a finer scale");
            }
        }

        foreach (LeastBatch l in f.Least)
        {
            Line($"{(l == f.Least[0] ? "\n" : "")}Smallest batch of {l.Component}: {l.Grams:0} g, {l.Share:0.##} of this one: {l.Because}{(l.Share > 1 + 1e-9 ? "  TOO SMALL NOW" : "")}");
        }

        return uneven ? Input.Fail(Exit.Problems, "a part is short.") : Exit.Done;
    }

    private static void Line(FormattableString text) => Console.Out.WriteLine(text.ToString(CultureInfo.InvariantCulture));

    private static double R(double value) => Math.Round(value, 3);
}
