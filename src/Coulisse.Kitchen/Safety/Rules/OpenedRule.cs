using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety.Rules;

/// <summary>Roe and oysters once opened: days in the cold, and roe that is neither salted, pasteurised nor rinsed.</summary>
/// <remarks>Days: common practice, no source (roe three, shucked oysters one). Parasites: Roe that is called raw or fresh: FDA Food Code 3-402.11 leaves out fish eggs that were taken from the skein and rinsed.</remarks>
internal static class OpenedRule
{
    private const double RoeHours = 72;
    private const double OysterHours = 24;
    private static readonly string[] Roes = ["roe", "caviar", "ikura", "tobiko", "masago", "tarama"];
    private static readonly string[] Raw = ["raw", "fresh", "skein", "sac", "unsalted"];

    public static IEnumerable<Finding> Judge(WeighedDish dish, PracticeCode code, bool vulnerable)
    {
        foreach (WeighedComponent c in dish.Components.Where(c => FoodTraits.Hottest(dish, c) < 60))
        {
            WeighedLine? roe = FoodTraits.Lines(c, f => Roes.Any(w => Word(f, w)) && !FoodTraits.Says(f, "bottarga") && !FoodTraits.Says(f, "scallop") && !FoodTraits.Says(f, "deer") && !FoodTraits.Says(f, "venison")).FirstOrDefault();
            WeighedLine? oyster = FoodTraits.Lines(c, f => FoodTraits.Says(f, "oyster") && !FoodTraits.Says(f, "sauce") && !FoodTraits.Says(f, "mushroom") && !FoodTraits.Says(f, "plant") && !FoodTraits.Says(f, "leaf")).FirstOrDefault();
            double most = oyster is not null ? OysterHours : RoeHours;
            if ((oyster ?? roe) is not { } line)
            {
                continue;
            }

            Keeping? late = c.Component.Keeps.Where(k => !k.Quality && k.Where != "freezer" && k.Celsius is not < 0 && k.Hours > most).MaxBy(k => k.Hours);
            if (late is not null)
            {
                yield return new Finding(
                    vulnerable ? Severity.Stop : Severity.Warn, "SAF047", c.Component.Name, late.Span.Line, oyster is not null ? "Oysters once opened are kept too long: vibrios and Listeria grow in the cold and nothing heats them." : "Roe once opened is kept too long: Listeria grows in the cold and nothing heats it.",
                    FormattableString.Invariant($"{late.Hours / 24:0.#} days"), FormattableString.Invariant($"{most / 24:0} {(most > 24 ? "days" : "day")} at {Math.Min(code.Cold, 5):0} °C or less once opened"), FormattableString.Invariant($"{(late.Hours!.Value - most) / 24:0.#} days too long"),
                    oyster is not null ? "Open them to order, or within a day on ice." : FormattableString.Invariant($"Open what is used in {most / 24:0} days; {late.Hours / most:0.#} times as many smaller tins cover the time."), "common practice, no source");
            }

            if (roe is not null && oyster is null && Raw.Any(w => Word(roe.Food, w)) && !FoodTraits.Says(roe.Food, "rinsed") && !c.Component.Steps.Any(s => s.Operations.Append(s.Operation).Any(o => o is "cure" or "brine" or "freeze") || s.Text.Contains("rinse", StringComparison.OrdinalIgnoreCase) || s.Temperatures.Any(t => t.Of == TemperatureOf.Freezer)))
            {
                yield return new Finding(
                    vulnerable ? Severity.Stop : Severity.Warn, "SAF047", c.Component.Name, roe.Source.Span.Line, "Raw roe: the card does not say that it is salted, pasteurised, or taken from the skein and rinsed, so it may carry the parasites of its fish.",
                    "not said", FormattableString.Invariant($"salted, pasteurised or rinsed roe, or {code.FishCelsius:0} °C for {code.FishHours:0} h"), "",
                    FormattableString.Invariant($"Buy it salted or pasteurised and write that on the line; or take it from the skein, rinse it and write it as a step; or freeze it at {code.FishCelsius:0} °C for {code.FishHours:0} h."), "FDA Food Code 3-402.11");
            }
        }
    }

    // "roe" alone, not "roebuck" or "throe"
    private static bool Word(FoodAmount food, string word) => $" {food.Grade} {food.Food} {food.State} {food.Preparation} ".Split(' ', ',', ';', '(', ')', '-', '/').Any(w => w.Equals(word, StringComparison.OrdinalIgnoreCase) || w.Equals(word + "s", StringComparison.OrdinalIgnoreCase));
}
