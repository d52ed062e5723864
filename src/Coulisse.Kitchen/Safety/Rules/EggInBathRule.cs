using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Unpasteurised egg in a bath: the middle's own history must take Salmonella down by five powers of ten.</summary>
/// <remarks>The clock of a bath is not the clock of its middle: a short hold at 60 °C in a bag kills next to nothing. Cautious properties, from 5 °C or a colder stated start, frozen too; the organism's set is that of the food (sugar and salt protect it). The remedy is worked out both ways.</remarks>
internal static class EggInBathRule
{
    private const double Logs = 5;
    private const double Start = 5;
    private const double Sure = 75;      // °C, a middle that hot needs no reckoning; the bath still needs its minutes, which CoreHeldRule judges
    private const double ShellEgg = 50;  // mm, taken for an egg in its shell (large)

    public static bool Applies(WeighedComponent c) => RawEggRule.Raw(c).Length > 0 && c.Component.Steps.Any(s => Bath(s) is not null);

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components.Where(Applies))
        {
            // Cooked through elsewhere (baked, boiled): the bath need not do it.
            if (c.Component.Steps.Any(s => s.Temperatures.Any(t => t.Of == TemperatureOf.Oven && t.Celsius >= 100)))
            {
                continue;
            }

            PieceState piece = new(c);
            foreach (Step s in c.Component.Steps)
            {
                piece.Enter(s);
                if (Bath(s) is { } bath && Step(c, s, piece, bath, vulnerable) is { } finding)
                {
                    yield return finding;
                }

                piece.Leave(s);
            }
        }
    }

    private static Finding? Step(WeighedComponent c, Step s, PieceState piece, double bath, bool vulnerable)
    {
        Organism organism = Set(c);
        double? thickness = piece.Thickness;
        (Temperature from, Temperature at) = (Temperature.FromCelsius(Math.Clamp(piece.Start, 0, Start)), Temperature.FromCelsius(bath));
        StepTemperature? core = s.Temperatures.Where(t => t.Of == TemperatureOf.Core && t.Bound != Bound.AtMost).MaxBy(t => t.Celsius);
        if (core is not null && (core.Celsius >= 70 || (core.Celsius >= organism.Floor.Celsius && core.HoldMinutes / organism.Hardest.At(Temperature.FromCelsius(Math.Min(core.Celsius, organism.Ceiling.Celsius))) >= Logs)))
        {
            return null;   // a probe in the middle decides, and its hold is enough
        }

        double? minutes = s.Times.Where(t => t.Kind != TimeKind.Limit && t.Bound != Bound.AtMost).Max(t => t.MinutesMin);
        bool shell = thickness is null && RawEggRule.Raw(c).All(l => l.Food.FoodId is "egg" or "quail-egg") && !c.Component.Steps.TakeWhile(x => x != s).Any(x => x.Operations.Append(x.Operation).Any(o => o is "mix" or "blend" or "whisk_ribbon" or "whisk_whites" or "emulsify" or "stick_blend"));
        double? thick = shell ? ShellEgg : thickness;
        string limit = FormattableString.Invariant($"{Logs:0} log {organism.Best.Organism} in {organism.Best.Matrix}");
        if (thick is not (>= 1 and <= 250) || minutes is not > 0 || bath is not (>= 1 and <= 100))
        {
            return new Finding(Severity.Stop, "SAF044", c.Component.Name, s.Span.Line, "It cannot be shown safe: raw egg in a bath, and the card does not say " + (minutes is null ? "how long." : "how thick."), "", limit, "", "Write thickness and minutes into the step, or use pasteurised egg and write it on the line.", organism.Best.Source);
        }

        PieceInBath properties = PieceInBath.Of(c, s, from, at);
        FlatBag slow = properties.Cautious;
        double held = minutes.Value;
        double thaw = 0;
        if (piece.Frozen)
        {
            // What goes in frozen is thawed first, and nothing dies meanwhile: the clock begins when the ice is gone, from 0 °C.
            FrozenBag ice = properties.Frozen(piece.Start);
            (slow, from) = (ice.Thawed, Temperature.FromCelsius(0));
            thaw = ice.Thaws(Length.FromMillimetres(thick.Value), at)!.Value.TotalMinutes;
            minutes = Math.Max(0.1, held - thaw);
        }

        double least = Reduced(slow, shell, thick.Value, from, at, minutes.Value, organism.Hardest, organism);
        double usual = Reduced(slow, shell, thick.Value, from, at, minutes.Value, organism.Best, organism);
        if (least >= Logs)
        {
            return null;
        }

        double? enough = Enough(m => Reduced(slow, shell, thick.Value, from, at, m, organism.Hardest, organism));
        double? thin = shell || piece.Frozen ? null : Thinnest(t => Reduced(slow, shell, t, from, at, minutes.Value, organism.Hardest, organism));
        string change = enough is { } e ? FormattableString.Invariant($"{thick:0.#} mm: {held:0.#} min → {Math.Ceiling(e + thaw):0} min{(thin is { } t ? FormattableString.Invariant($", or at most {Math.Floor(t * 10) / 10:0.#} mm in {held:0.#} min") : "")}{(thaw > 0 ? FormattableString.Invariant($", or {Math.Ceiling(e):0} min thawed first") : "")}. ") : FormattableString.Invariant($"At {bath:0.#} °C no time within a day does it. ");
        return new Finding(
            usual < Logs || vulnerable ? Severity.Stop : Severity.Warn, "SAF044", c.Component.Name, s.Span.Line,
            FormattableString.Invariant($"Raw egg: after {held:0.#} min at {bath:0.#} °C the middle of {thick:0.#} mm{(shell ? " (an egg in its shell, assumed)" : "")}{(thaw > 0 ? FormattableString.Invariant($" from frozen (thawed after {Math.Ceiling(thaw):0} min)") : "")} is at {At(slow, shell, thick.Value, from, at, minutes.Value).Celsius:0.0} °C, too short to kill."),
            FormattableString.Invariant($"{least:0.0} to {usual:0.0} log"), limit, FormattableString.Invariant($"{Logs - least:0.0} log short"),
            change + "Or heat it stirred to 68 °C for 3.5 min, 70 °C for 2 min or 72 °C for 1 min, or use pasteurised egg and write it on the line.", organism.Best.Source);
    }

    private static double? Bath(Step s) => s.Temperatures.Where(t => t.Of == TemperatureOf.Bath && t.Bound != Bound.AtMost && t.Celsius is > 40 and < Sure).Select(t => (double?)t.Celsius).Min();

    private static Temperature At(FlatBag bag, bool shell, double mm, Temperature from, Temperature at, double minutes) => shell
        ? SolidBody.Of(SolidShape.Sphere, [Length.FromMillimetres(mm)], Diffusivity.FromSquareMetresPerSecond(bag.Diffusivity), Conductivity.FromWattsPerMetreKelvin(bag.Conductivity), bag.Surface!.Value).CoreAfter(from, at, Duration.FromMinutes(minutes))
        : bag.CoreAfter(Length.FromMillimetres(mm), from, at, Duration.FromMinutes(minutes));

    private static double Reduced(FlatBag bag, bool shell, double mm, Temperature from, Temperature at, double minutes, HeatResistance r, Organism o)
    {
        int steps = (int)Math.Clamp(minutes, 30, 400);
        return Lethality.Log10(r, [.. Enumerable.Range(0, steps + 1).Select(i => minutes * i / steps).Select(m => (m, At(bag, shell, mm, from, at, m)))], o.Floor, o.Ceiling);
    }

    private static double? Enough(Func<double, double> logs)
    {
        (double low, double high) = (0, 24 * 60);
        if (logs(high) < Logs)
        {
            return null;
        }

        while (high - low > 0.25)
        {
            double middle = (low + high) / 2;
            (low, high) = logs(middle) >= Logs ? (low, middle) : (middle, high);
        }

        return high;
    }

    private static double? Thinnest(Func<double, double> logs)
    {
        (double low, double high) = (2, 250);
        if (logs(low) < Logs)
        {
            return null;
        }

        while (high - low > 0.05)
        {
            double middle = (low + high) / 2;
            (low, high) = logs(middle) >= Logs ? (middle, high) : (low, middle);
        }

        return low;
    }

    // Sugar and salt protect what is to be killed; yolk more than the whole egg.
    private static Organism Set(WeighedComponent c)
    {
        bool yolk = RawEggRule.Raw(c).Any(l => FoodTraits.Says(l.Food, "yolk"));
        double salt = FoodTraits.Grams(c, f => f.FoodId?.Contains("salt", StringComparison.Ordinal) == true || FoodTraits.Says(f, "salt"));
        double sugar = FoodTraits.Grams(c, f => FoodTraits.Says(f, "sugar") || FoodTraits.Says(f, "honey") || FoodTraits.Says(f, "glucose") || FoodTraits.Says(f, "syrup"));
        string id = salt >= 0.02 * c.Grams ? "salmonella-yolk-salt" : sugar >= 0.02 * c.Grams ? "salmonella-yolk-sweet" : yolk ? "salmonella-yolk" : "salmonella-egg";
        return Organism.All.First(o => o.Id == id);
    }
}
