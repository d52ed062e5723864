using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Cli.Commands;

/// <summary>coulisse scale CARD: to covers, a yield, what there is of one ingredient, or a tin.</summary>
internal static class ScaleCommand
{
    public static Command Create()
    {
        Argument<string> card = new("CARD") { Description = "Card to scale; - for standard input" };
        Option<double?> covers = new("--covers") { Description = "Number of covers" };
        Option<string?> yield = new("--yield") { Description = "Finished weight, for example 2.4kg" };
        Option<string?> have = new("--have") { Description = "\"INGREDIENT=AMOUNT\", for example \"plum butter=300 g\"" };
        Option<string?> tin = new("--tin") { Description = "Tin, for example 330x230x45mm, or 240mm for a round" };
        Option<string?> step = new("--step") { Description = "Rounding step, for example 1g" };
        Option<string?> kit = new("--kit") { Description = "Occasion sheet whose kit sets the minutes; without it the usual kitchen" };
        Option<string[]> measured = new("--measured") { Description = "\"LINE=MINUTES\": what the step on a card line took for the card's own amount; may be given again" };
        Option<string?> measures = WeighCommand.Measures();
        Option<bool> json = new("--json") { Description = "One JSON document on standard output" };
        Command command = new("scale", "Scales a card and rounds to what a scale can weigh.\nExample: coulisse scale examples/demo/cards/starter.md --covers 20") { card, covers, yield, have, tin, step, kit, measured, measures, json };
        command.SetAction(parsed =>
        {
            ScaleTo? to = Wanted(parsed.GetValue(covers), parsed.GetValue(yield), parsed.GetValue(have), parsed.GetValue(tin));
            double? rounding = parsed.GetValue(step) is { } s ? Grams(s) : null;
            if (to is null || (parsed.GetValue(step) is not null && rounding is null))
            {
                return Input.Fail(Exit.Usage, "give one of --covers 20, --yield 2.4kg, --have \"butter=300g\", --tin 330x230x45mm; --step takes a weight such as 1g.");
            }

            if (Measured(parsed.GetValue(measured) ?? []) is not { } timed)
            {
                return Input.Fail(Exit.Usage, "--measured takes a card line and minutes, such as 34=52.");
            }

            if (Kit(parsed.GetValue(kit), out int exit) is not { } facts)
            {
                return exit;
            }

            string path = parsed.GetRequiredValue(card);
            return WeighCommand.Read(path, parsed.GetValue(measures), weighed => Scaling.Scale(weighed, to, rounding).Match(
                batch => ScaledTimes.For(batch, facts, timed) is var whole && parsed.GetValue(json) ? Json(whole, facts) : Print(whole, facts),
                problems => Input.Fail(path, problems)));
        });
        return command;
    }

    private static ScaleTo? Wanted(double? covers, string? yield, string? have, string? tin)
    {
        int given = (covers is null ? 0 : 1) + (yield is null ? 0 : 1) + (have is null ? 0 : 1) + (tin is null ? 0 : 1);
        if (given != 1)
        {
            return null;
        }

        if (covers is { } n)
        {
            return new ScaleTo.Covers(n);
        }

        if (yield is not null)
        {
            return Grams(yield) is { } g ? new ScaleTo.Yield(g) : null;
        }

        if (have is not null)
        {
            int eq = have.LastIndexOf('=');
            return eq > 0 && Grams(have[(eq + 1)..]) is { } g ? new ScaleTo.Have(have[..eq].Trim(), g) : null;
        }

        bool centimetres = tin!.EndsWith("cm", StringComparison.OrdinalIgnoreCase);
        ImmutableArray<double> mm = [.. tin.Replace("mm", "", StringComparison.OrdinalIgnoreCase).Replace("cm", "", StringComparison.OrdinalIgnoreCase).Split('x', '×')
            .Select(p => double.TryParse(p.Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out double v) ? v * (centimetres ? 10 : 1) : 0)];
        return new ScaleTo.Tin(mm);
    }

    /// <summary>What a step's minutes do: they stay, or by how much they grow while the grams grow by the factor.</summary>
    private static string Line(BatchStep s, double factor)
    {
        double written = s.MinutesAsWritten ?? 0;
        string head = string.Create(CultureInfo.InvariantCulture, $"  line {s.Step.Span.Line}: {written:0.#} min as written");
        if (!s.Physical)
        {
            return head + "; does not scale: " + s.Why;
        }

        string most = s.MinutesCautious is { } c ? string.Create(CultureInfo.InvariantCulture, $"{c:0.#} min") : "no end on this ring";
        string times = string.Create(CultureInfo.InvariantCulture, $"× {s.Minutes / written:0.##}{(s.MinutesCautious is { } d ? string.Create(CultureInfo.InvariantCulture, $" to {d / written:0.##}") : "")}");
        return head + string.Create(CultureInfo.InvariantCulture, $" → {s.Minutes:0.#} to {most} ({times}, grams × {factor:0.##}): {s.Why}");
    }

    private static ImmutableDictionary<int, double>? Measured(string[] given)
    {
        ImmutableDictionary<int, double>.Builder all = ImmutableDictionary.CreateBuilder<int, double>();
        foreach (string g in given)
        {
            string[] two = g.Split('=');
            if (two.Length != 2 || !int.TryParse(two[0].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int line) || !double.TryParse(two[1].Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double minutes) || minutes is not (> 0 and < 1e5))
            {
                return null;
            }

            all[line] = minutes;
        }

        return all.ToImmutable();
    }

    private static KitFacts? Kit(string? sheet, out int exit)
    {
        exit = Exit.Done;
        if (sheet is null)
        {
            return KitFacts.Of(DefaultKitchen.Kit("back"));
        }

        if (Input.Bytes(sheet, out exit) is not { } bytes)
        {
            return null;
        }

        (KitFacts? facts, exit) = OccasionReader.Read(Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF'), NodaTime.LocalDate.FromDateTime(TimeProvider.System.GetLocalNow().Date)).Match<(KitFacts?, int)>(
            s => (KitFacts.Of(s.Kit), Exit.Done),
            problems => (null, Input.Fail(sheet, problems)));
        return facts;
    }

    /// <summary>A weight as a person types it, by the reader of lines.</summary>
    private static double? Grams(string text)
    {
        FoodAmount? food = CardReader.ReadLine(text.Trim() + " x", "en").Foods.FirstOrDefault();
        return food is { Amount: { } a, Unit: { } u } && Coulisse.Matter.Measures.Household.MassOf(u) is { } one ? a * one.Grams : null;
    }

    private static int Json(Batch b, KitFacts kit) => Input.Json(new
    {
        schema = "coulisse/scale/1", title = b.Weighed.Dish.Title, factor = Math.Round(b.Factor, 6), @for = b.For, measures = b.Weighed.Measures,
        components = b.Components.Select(c => new
        {
            name = c.Weighed.Component.Name, factor = Math.Round(c.Factor, 6), batches = c.Batches, grams = WeighCommand.Round(c.Grams), grade = c.Weighed.Grade,
            lines = c.Lines.Select(l => new
            {
                line = l.Weighed.Source.Span.Line, text = l.Weighed.Source.Text, food = l.Weighed.Food.Food, asWritten = l.Weighed.Grade == WeightGrade.Unknown ? null : (double?)WeighCommand.Round(l.Weighed.Grams),
                grams = l.Weighed.Grade == WeightGrade.Unknown ? null : (double?)WeighCommand.Round(l.Grams), low = WeighCommand.Round(l.Weighed.Low * c.Factor), high = WeighCommand.Round(l.Weighed.High * c.Factor),
                rounded = WeighCommand.Round(l.Rounded), eggs = WholeEggs.Of(l, b.Weighed.Measures)?.Eggs, roundingPercent = Math.Round(l.RoundingPercent, 3), grade = l.Weighed.Grade, why = l.Weighed.Why.Text,
            }),
            steps = c.Steps.Select(s => new { line = s.Step.Span.Line, text = s.Step.Text, minutesAsWritten = s.MinutesAsWritten, minutes = s.Minutes, minutesCautious = s.MinutesCautious, physical = s.Physical, timesAsWritten = s is { Minutes: { } m, MinutesAsWritten: > 0 and var w } ? (double?)Math.Round(m / w, 3) : null, why = s.Why }),
        }),
        kitAssumed = kit.Assumed,
        doubts = b.Weighed.Doubts.Select(d => new { d.Line, d.Question, candidates = d.Candidates.Select(x => x.Text), d.Moves }),
    });

    private static int Print(Batch b, KitFacts kit)
    {
        Console.OutputEncoding = new UTF8Encoding(false);
        Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{b.Weighed.Dish.Title}, for {b.For}: factor {b.Factor:0.####}"));
        foreach (BatchComponent c in b.Components.Where(c => !c.Lines.IsEmpty))
        {
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\n{(c.Weighed.Component.Name.Length > 0 ? c.Weighed.Component.Name : "(the dish)")}: × {c.Factor:0.####}, {c.Grams:0.#} g"));
            foreach (BatchLine l in c.Lines)
            {
                Console.Out.WriteLine(l.Weighed.Grade == WeightGrade.Unknown
                    ? $"  {"no weight",12}  {l.Weighed.Source.Text}"
                    : string.Create(CultureInfo.InvariantCulture, $"  {l.Rounded,10:0.##} g  {l.Weighed.Food.Food} (exact {l.Grams:0.###} g, rounding {l.RoundingPercent:+0.00;−0.00;0} %)"));
            }

            foreach (BatchStep s in c.Steps.Where(s => s.MinutesAsWritten is not null))
            {
                Console.Out.WriteLine(Line(s, c.Factor));
            }
        }

        foreach (string assumed in kit.Assumed)
        {
            Console.Out.WriteLine(assumed);
        }

        return Exit.Done;
    }
}
