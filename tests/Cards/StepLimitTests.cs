using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Heats below zero, heats of fat and food beside those of an oven, ends that are no waits, and how long a thing keeps, each with its near misses. Readings as a cook gives them: common practice, no source.</summary>
public sealed class StepLimitTests
{
    private static string Heats(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Temperatures.Select(t => FormattableString.Invariant($"{t.Of} {t.Celsius}")));

    private static string Times(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{t.MinutesMin ?? t.MinutesMax} {t.Kind}")));

    private static string Kept(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Storage.Select(p => FormattableString.Invariant($"{(p.Where.Length > 0 ? p.Where : "?")} {p.Days}")));

    [Theory]
    [InlineData("さばは−20℃で24時間以上冷凍する", "ja", "Food -20")]
    [InlineData("さばは－20℃で24時間以上冷凍する", "ja", "Food -20")]
    [InlineData("冷凍庫（−18℃以下）で保存する", "ja", "Food -18")]
    [InlineData("Freeze at −20 °C for 24 h.", "en", "Food -20")]
    [InlineData("Freeze at - 20 °C for 24 h.", "en", "Food -20")]
    [InlineData("Freeze at −4 °F for 7 days.", "en", "Food -20")]
    [InlineData("Congeler à −20°C 24 h.", "fr", "Food -20")]
    [InlineData("Bei −18 °C einfrieren.", "de", "Food -18")]
    [InlineData("Abbattere (−20°C) 24 ore.", "it", "Food -20")]
    [InlineData("−20度で48時間以上冷凍", "ja", "Food -20")]
    [InlineData("マイナス20℃で24時間冷凍する。", "ja", "Food -20")]
    [InlineData("-20 °C for 24 h.", "en", "Food -20")]
    [InlineData("-180 °C 20 min.", "en", "Oven 180")]
    [InlineData("Freeze (−20 °C/−4 °F) 7 days.", "en", "Food -20")]
    [InlineData("70−75℃で温める", "ja", "Food 70")]
    [InlineData("Warm to 40-45 °C.", "en", "Food 40")]
    [InlineData("フリーザー20℃", "ja", "Food 20")]
    public void The_sign_before_a_heat_is_read_and_a_dash_between_two_is_none(string step, string lang, string want) => Assert.Equal(want, Heats(step, lang));

    [Theory]
    [InlineData("Bake 170 degC 45min to core temp 75C+.", "en", "Oven 170 Core 75")]
    [InlineData("Roast at 425 °F until the thickest part of the thigh registers 165.", "en", "Oven 218.3 Core 73.9")]
    [InlineData("Cook until a thermometer registers 74.", "en", "Core 74")]
    [InlineData("Bake in a 400-degree oven 20 minutes.", "en", "Oven 204.4")]
    [InlineData("Oven 240, 8 mins; 180, 20 mins.", "en", "Oven 240 Oven 180")]
    [InlineData("Bake at 240 for 8 mins then 180, 20 mins.", "en", "Oven 240 Oven 180")]
    [InlineData("Bake at 240; 120, 140 and 160 g loaves.", "en", "Oven 240")]
    [InlineData("Roast until a thermometer reads 165°F.", "en", "Core 73.9")]
    [InlineData("Bake until an instant-read thermometer reads 200.", "en", "Core 93.3")]
    [InlineData("Steam the chicken at 85 C to core 75 C. CRITICAL LIMIT: 75 C", "en", "Oven 85 Core 75 Food 75")]
    [InlineData("Cook the syrup until the thermometer reads 118.", "en", "Food 118")]
    [InlineData("Boil until a sugar thermometer registers 118°C.", "en", "Food 118")]
    [InlineData("Probe: 48C for rare, 54C for medium.", "en", "Core 48 Core 54")]
    [InlineData("Bake at 400deg F for 20 min.", "en", "Oven 204.4")]
    [InlineData("Roast 220, 20 mins, then 160, 1 hour.", "en", "Oven 220 Oven 160")]
    [InlineData("Bake 200, 40 g each.", "en", "")]
    [InlineData("He registers 165 guests.", "en", "")]
    [InlineData("Cut at a 45-degree angle.", "en", "")]
    public void A_heat_is_not_lost(string step, string lang, string want) => Assert.Equal(want, Heats(step, lang));

    [Theory]
    [InlineData("Crème : cuire jus, zestes, sucre et oeufs jusqu'à 84°C", "fr", "Food 84", "")]
    [InlineData("Cuire au four à 84 °C 2 h.", "fr", "Oven 84", "120 Oven")]
    [InlineData("Cuire dans la graisse à 85°C pendant 6 à 8 heures", "fr", "Pan 85", "360 Cook")]
    [InlineData("Cuire dans la graisse de canard à 85°C pendant 6 heures", "fr", "Pan 85", "360 Cook")]
    [InlineData("In reichlich Butterschmalz bei 170 Grad 3-4 Min. goldbraun backen.", "de", "Pan 170", "3 Cook")]
    [InlineData("Im Fett schwimmend bei 170 °C 4 Minuten backen.", "de", "Pan 170", "4 Cook")]
    [InlineData("Cuire à l'huile à 160°C 5 min.", "fr", "Pan 160", "5 Cook")]
    [InlineData("In der Pfanne in Öl anbraten, im Ofen bei 180 Grad 20 Minuten backen.", "de", "Oven 180", "20 Oven")]
    [InlineData("In Öl wenden und bei 200 Grad 30 Min. backen.", "de", "Oven 200", "30 Oven")]
    [InlineData("Im Ofen bei 170 Grad 30 Min. backen.", "de", "Oven 170", "30 Oven")]
    [InlineData("Mit Butterschmalz bestreichen, bei 170 Grad 30 Min. backen.", "de", "Oven 170", "30 Oven")]
    [InlineData("Toss in oil, roast at 200 °C 30 min.", "en", "Oven 200", "30 Oven")]
    public void A_heat_of_the_fat_or_the_food_is_no_oven(string step, string lang, string heats, string times)
    {
        Assert.Equal(heats, Heats(step, lang));
        Assert.Equal(times, Times(step, lang));
    }

    [Fact]
    public void What_is_fried_takes_no_oven()
    {
        Assert.Equal("deep_fry", CardReader.ReadStep("In reichlich Butterschmalz bei 170 Grad 3-4 Min. goldbraun backen.", "de").Operation);
        Assert.Equal("bake", CardReader.ReadStep("Bei 170 Grad 30 Min. goldbraun backen.", "de").Operation);
    }

    [Theory]
    [InlineData("Hold at 50-55C. Discard after 2 hours.", "en", "120 Limit")]
    [InlineData("Discard any leftovers after 4 hours at room temperature.", "en", "240 Limit")]
    [InlineData("Hot hold above 63C max 2hrs.", "en", "120 Limit")]
    [InlineData("Can be kept warm for up to 2 hours.", "en", "120 Limit")]
    [InlineData("Do not leave out more than 2 hours.", "en", "120 Limit")]
    [InlineData("Cool to 21C within 2 hours, then to 5C within a further 4 hours.", "en", "120 Limit 240 Limit")]
    [InlineData("Nach 2 Stunden wegwerfen.", "de", "120 Limit")]
    [InlineData("Throw away after 4 hours out of the fridge.", "en", "240 Limit")]
    [InlineData("Maintenir au chaud à +63°C, 2 heures maximum.", "fr", "120 Limit")]
    [InlineData("Tenere in caldo massimo 2 ore.", "it", "120 Limit")]
    [InlineData("2時間以内に食べる。", "ja", "120 Limit")]
    [InlineData("2時間以上煮る。", "ja", "120 Cook")]
    [InlineData("Simmer and discard the bay leaf after 20 minutes.", "en", "20 Cook")]
    [InlineData("Simmer for up to 2 hours.", "en", "120 Cook")]
    [InlineData("Keep in the fridge 2 hours.", "en", "120 Chill")]
    [InlineData("Leave out for 2 hours.", "en", "120 Rest")]
    public void An_end_is_no_wait(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Slow cooker on LOW for 8 hours or HIGH for 4.", "en", "480 Rest", "HIGH for 4")]
    [InlineData("From frozen: 25 mins at 200C. From chilled: 15 mins.", "en", "25 Oven", "From chilled: 15 mins.")]
    [InlineData("Cook on high for 4 hours or low for 8.", "en", "240 Cook", "low for 8")]
    [InlineData("Cook on low for 8 hours, then high for 4 minutes.", "en", "480 Cook 4 Cook", null)]
    [InlineData("Take it from frozen: 25 mins at 200C. Rest 15 mins.", "en", "25 Oven 15 Rest", null)]
    public void One_or_the_other_is_not_both(string step, string lang, string want, string? other)
    {
        Step s = CardReader.ReadStep(step, lang);

        Assert.Equal(want, string.Join(" ", s.Times.Where(t => !t.Words.Contains("15 mins", StringComparison.Ordinal) || other is null).Select(t => FormattableString.Invariant($"{t.MinutesMin} {t.Kind}"))));
        Assert.Equal(other, s.Alternative);
    }

    [Theory]
    [InlineData("Reheat at 180C: 20 mins if chilled, 35 mins if frozen.", "35 mins if frozen")]
    [InlineData("Cook for 20 mins from chilled or 35 mins from frozen.", "35 mins from frozen")]
    [InlineData("Cook on HIGH 4 hrs / LOW 8 hrs.", "LOW 8 hrs")]
    [InlineData("Simmer frozen peas 5 mins, then chilled stock 5 mins.", null)]
    public void The_other_state_is_the_other_way(string step, string? other) => Assert.Equal(other, CardReader.ReadStep(step, "en").Alternative?.TrimEnd('.'));

    [Theory]
    [InlineData("Use within 4 hours, do not refrigerate.", "en", null)]
    [InlineData("Ne pas congeler, servir.", "fr", "serve")]
    [InlineData("Refrigerate, do not freeze.", "en", "chill_fridge")]
    public void What_is_not_done_is_no_work(string step, string lang, string? want) => Assert.Equal(want, CardReader.ReadStep(step, lang).Operation);

    [Theory]
    [InlineData("Pointage 3h, rabats à 1h et 2h.", "60 120")]
    [InlineData("Pointage 3h, apprêt 1h et 2h au froid.", "")]
    public void Folds_are_moments(string step, string want) => Assert.Equal(want, string.Join(" ", CardReader.ReadStep(step, "fr").TendAt));

    [Theory]
    [InlineData("Refroidir en cellule. Attendre 48h avant dégustation.", "fr", "2880 Chill")]
    [InlineData("Sortir du frigo 1h avant dégustation.", "fr", "")]
    [InlineData("Pointage 2h avec 1 rabat à 1h.", "fr", "120 Rest")]
    [InlineData("Pointage 2h, apprêt 1h.", "fr", "120 Rest 60 Rest")]
    [InlineData("Total cooking time: 2 hours.", "en", "")]
    [InlineData("Simmer for a total of 2 hours.", "en", "120 Cook")]
    [InlineData("After 30 minutes, add potatoes and simmer for a further 30.", "en", "30 Cook 30 Cook")]
    [InlineData("Add a further 30 prawns and boil 2 min.", "en", "2 Cook")]
    [InlineData("Infornare a 180° per 40 minuti; lasciare intiepidire almeno mezz'ora.", "it", "40 Oven 30 Rest")]
    [InlineData("Infornare a 180° per 40 minuti, poi altri 10 minuti.", "it", "40 Oven 10 Oven")]
    [InlineData("Oven 190 fan 35 mins. Core must be >75C.", "en", "35 Oven")]
    [InlineData("Core the apples, 20 min.", "en", "20 Hands")]
    [InlineData("Mix flour and water. Autolyse 1h.", "en", "60 Rest")]
    [InlineData("Autolyse 30 min, pétrir 10 min.", "fr", "30 Rest 10 Machine")]
    [InlineData("Backen bei 180 Grad 40 Minuten; lauwarm abkühlen lassen 30 Minuten.", "de", "40 Oven 30 Rest")]
    [InlineData("Cure 5d.", "en", "7200 Rest")]
    [InlineData("Pousse 2 h à 26°C puis cuire 20 min à 180°C.", "fr", "120 Rest 20 Oven")]
    [InlineData("Mix flour and water 10 min.", "en", "10 Hands")]
    [InlineData("Fry at 160°C for 5 min, rest, then 190°C for 2 min.", "en", "5 Cook 2 Cook")]
    [InlineData("Fry at 160°C for 5 min, then rest 2 min.", "en", "5 Cook 2 Rest")]
    public void A_time_is_what_the_words_say(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("5 days fridge / 3 months freezer.", "en", "fridge 5 freezer 90")]
    [InlineData("Ready after 24 hours; good for 4 weeks.", "en", "? 28")]
    [InlineData("20 g abnehmen und im Kühlschrank aufheben (hält 2 Wochen).", "de", "fridge 14")]
    [InlineData("In frigo 2-3 giorni coperto d'olio. Si può congelare.", "it", "fridge 3")]
    [InlineData("Refroidir, stocker 3j à +3°C max.", "fr", "fridge 3")]
    [InlineData("Conservare max 4 gg a 0/+4°C.", "it", "fridge 4")]
    [InlineData("保存期間：冷蔵で3日、冷凍で1ヶ月。", "ja", "fridge 3 freezer 30")]
    [InlineData("※冷蔵で2日以内に食べる。", "ja", "fridge 2")]
    [InlineData("Will keep for a year.", "en", "? 365")]
    [InlineData("Keeps in an airtight tin for 1 week or freeze for up to a month.", "en", "airtight 7 freezer 30")]
    [InlineData("Cool within 2 hours and refrigerate for up to 3 days or freeze for 3 months.", "en", "fridge 3 freezer 90")]
    [InlineData("Shelf life 3 days @ 38F", "en", "fridge 3")]
    [InlineData("3 days in fridge or 1 month in freezer.", "en", "fridge 3 freezer 30")]
    [InlineData("It will be good for 3 days in the fridge.", "en", "fridge 3")]
    [InlineData("Best eaten within 2 days.", "en", "? 2")]
    [InlineData("冷蔵庫で3日間保存可能。冷凍なら1か月。", "ja", "fridge 3 freezer 30")]
    [InlineData("常温で2日、冷凍で1か月もちます。", "ja", "room 2 freezer 30")]
    [InlineData("En nevera 3 días, congelado 2 meses.", "es", "fridge 3 freezer 60")]
    [InlineData("Store on the shelf 3 days.", "en", "room 3")]
    [InlineData("Keeps 2 years.", "en", "? 730")]
    [InlineData("Cure 5 days in the fridge.", "en", "")]
    [InlineData("In frigo 2 giorni, poi impastare.", "it", "")]
    [InlineData("Chill for up to 2 days before baking.", "en", "")]
    [InlineData("Refrigerate at least 4 hours and up to 2 days.", "en", "")]
    [InlineData("Add 2 year old parmesan.", "en", "")]
    [InlineData("Stir for a day.", "en", "")]
    [InlineData("冷蔵庫で2日寝かせる。", "ja", "")]
    public void How_long_it_keeps(string step, string lang, string want)
    {
        Assert.Equal(want, Kept(step, lang));
        Assert.True(want.Length == 0 || CardReader.ReadStep(step, lang).Times.All(t => t.Kind == TimeKind.Limit || t.MinutesMin <= 1440));
    }
}
