using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>How long a thing keeps and how long it may stand, told without a verb of keeping, and times that are of another work than the verb before them. Readings as a cook gives them: common practice, no source.</summary>
public sealed class KeptDaysKindTests
{
    private static string Times(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{t.MinutesMin ?? t.MinutesMax} {t.Kind}{(t.Bound == Bound.At ? "" : " " + t.Bound)}")));

    private static string Kept(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Storage.Select(p => FormattableString.Invariant($"{(p.Where.Length > 0 ? p.Where : "?")} {p.Days}")));

    [Theory]
    [InlineData("Shelf life 21 days at 0–3 °C, 3 months frozen.", "en", "fridge 21 freezer 90")]
    [InlineData("Store at 3 °C for up to 5 days, or freeze for 2 months.", "en", "fridge 5 freezer 60")]
    [InlineData("Keep 5 days at 3 °C or 2 months at −18 °C.", "en", "fridge 5 freezer 60")]
    [InlineData("Vacuum-packed it lasts 3 weeks at 2 °C; open packs 2 days.", "en", "fridge 21 fridge 2")]
    [InlineData("Frozen at −18 °C it keeps 3 months, thawed 2 days.", "en", "freezer 90 fridge 2")]
    [InlineData("Chilled 3 weeks unopened, 5 days open.", "en", "fridge 21 fridge 5")]
    [InlineData("Unopened 6 months at room temperature, opened 4 weeks at 4 °C.", "en", "room 180 fridge 28")]
    [InlineData("Vac pack, 30 days at 3 °C.", "en", "fridge 30")]
    [InlineData("Once opened, 48 h.", "en", "? 2")]
    [InlineData("Max. 3 days at 4 °C.", "en", "fridge 3")]
    [InlineData("3 jours à 4 °C, 3 mois à −18 °C.", "fr", "fridge 3 freezer 90")]
    [InlineData("Ouvert : 48 h à 4 °C.", "fr", "fridge 2")]
    [InlineData("Gekühlt 3 Wochen, geöffnet 5 Tage.", "de", "fridge 21 fridge 5")]
    [InlineData("Vida útil: 15 días a 3 °C, 3 meses congelado.", "es", "fridge 15 freezer 90")]
    [InlineData("冷蔵3日、冷凍1ヶ月。", "ja", "fridge 3 freezer 30")]
    [InlineData("Fridge: 5 days. Freezer: 3 months.", "en", "fridge 5 freezer 90")]
    public void Days_that_keep_a_thing_are_no_wait(string step, string lang, string want)
    {
        Assert.Equal(want, Kept(step, lang));
        Assert.Empty(CardReader.ReadStep(step, lang).Times);
    }

    [Theory]
    [InlineData("Poach 12 min. Hold below 5 °C, 3 days.", "en", "fridge 3", "12 Cook")]
    [InlineData("Congeladas: 3 meses a −18 °C; freír 3 min.", "es", "freezer 90", "3 Cook")]
    [InlineData("Sterilise 1 h 30 at 100 °C if to be kept beyond 10 days.", "en", "", "90 Cook")]
    [InlineData("Rub in the cure and keep at 3 °C for 21 days.", "en", "", "30240 Rest")]
    [InlineData("Vac pack with the salt, 21 days at 3 °C.", "en", "", "30240 Chill")]
    [InlineData("Marinate 2 days at 4 °C.", "en", "", "2880 Rest")]
    [InlineData("Add the thawed prawns and marinate 2 days.", "en", "", "2880 Rest")]
    [InlineData("3 days at 3 °C, then smoke.", "en", "", "4320 Chill")]
    [InlineData("Freeze for 2 days, then thaw.", "en", "", "2880 Chill")]
    public void What_ripens_or_is_worked_on_waits(string step, string lang, string kept, string times)
    {
        Assert.Equal(kept, Kept(step, lang));
        Assert.Equal(times, Times(step, lang));
    }

    [Theory]
    [InlineData("Discard anything left at room temperature for more than 2 hours.", "en", "120 Limit AtMost")]
    [InlineData("Cool from 65 °C to 10 °C in under 2 h.", "en", "120 Limit AtMost")]
    [InlineData("Blast chill to below 3 °C in less than 90 minutes.", "en", "90 Limit AtMost")]
    [InlineData("Cool to 5 °C inside 90 minutes.", "en", "90 Limit AtMost")]
    [InlineData("Chill to 3 °C in 90 minutes or less.", "en", "90 Limit AtMost")]
    [InlineData("Let stand at room temperature no more than 30 minutes before cooking.", "en", "30 Limit AtMost")]
    [InlineData("Bake to 80 °C core. Hold at 63 °C max 2 h.", "en", "120 Limit AtMost")]
    [InlineData("Mantener caliente por encima de 63 °C un máximo de 2 h.", "es", "120 Limit AtMost")]
    [InlineData("Remettre en température à cœur en moins d'une heure.", "fr", "60 Limit AtMost")]
    [InlineData("室温に30分以上置かない。", "ja", "30 Limit AtMost")]
    [InlineData("常温に2時間以上置かないこと。冷蔵庫で3時間冷やす。", "ja", "120 Limit AtMost 180 Chill")]
    [InlineData("室温に30分以上置く。", "ja", "30 Rest AtLeast")]
    [InlineData("30分以上置かないと固まらない。", "ja", "30 Rest AtLeast")]
    [InlineData("Cook 10 min or less.", "en", "10 Cook AtMost")]
    [InlineData("Chill at least 2 hours before serving.", "en", "120 Chill AtLeast")]
    [InlineData("Hold at 60 °C for 12 min.", "en", "12 Rest")]
    public void A_limit_is_no_wait(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Boil the brine, chill to 3 °C, add the hocks, 48 h at 3 °C.", "en", "2880 Chill")]
    [InlineData("Knead 10 min then 24 h at 4 °C.", "en", "10 Hands 1440 Chill")]
    [InlineData("Picar, amasar con la sal, reposar 24 h a 4 °C.", "es", "1440 Chill")]
    [InlineData("Impastare farina e uova, riposo 30 minuti.", "it", "30 Rest")]
    [InlineData("Rinse, dry uncovered in fridge 2 hrs.", "en", "120 Chill")]
    [InlineData("Fleisch salzen und 24 Std. bei 2 °C ziehen lassen.", "de", "1440 Chill")]
    [InlineData("Veal: salt, bag with the bay, 58 °C 4 h, chill in ice water 40 min.", "en", "240 Cook 40 Chill")]
    [InlineData("60℃の湯煎で2時間加熱し、氷水で冷やす。", "ja", "120 Cook")]
    [InlineData("Roast at 80 °C with the core probe set to 54 °C, roughly 3 h.", "en", "180 Oven")]
    [InlineData("Shape, retard 14–18 h at 4 °C", "en", "840 Chill")]
    [InlineData("Pasteurise 30 min", "en", "30 Cook")]
    [InlineData("Mix 5 min at 4 °C in the chilled bowl.", "en", "5 Hands")]
    [InlineData("Smoke 2 h at 5 °C.", "en", "120 Cook")]
    [InlineData("Mix the dough 8 min at 24 °C.", "en", "8 Machine")]
    [InlineData("Set at 4 °C for 4 hours.", "en", "240 Chill")]
    [InlineData("Brine 4 h, then cook at 58 °C 2 h.", "en", "240 Rest 120 Cook")]
    [InlineData("Chill from 65 °C to 10 °C, 2 h.", "en", "120 Chill")]
    public void A_time_is_of_its_own_part(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Simmer 8 h, strain, chill overnight.", "480 Cook  Chill")]
    [InlineData("Simmer 2 h and leave overnight.", "120 Cook  Rest")]
    [InlineData("Retard overnight, 12–16 h at 4 °C.", "720 Chill")]
    public void A_night_behind_other_work_is_its_own(string step, string want) => Assert.Equal(want, Times(step, "en"));

    [Theory]
    [InlineData("Max. 3 days at 4 °C.", 0)]
    [InlineData("max 5 days at 0–3 °C", 0)]
    [InlineData("Max. 3 lemons", 1)]
    public void An_upper_end_of_days_on_a_line_of_its_own_is_no_food(string line, int foods)
    {
        Dish dish = Told.Read("# Cake\n\n- 1 kg flour\n- 10 g salt\n\n1. Bake 40 min at 180 °C.\n\n" + line + "\n");
        Assert.Equal(2 + foods, dish.Components.Sum(c => c.Ingredients.Length));
    }
}
