using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Sides, folds, other ways, heat of the air, and words of work in another sense. Readings as a cook gives them: common practice, no source.</summary>
public sealed class SideAndAirTests
{
    private static string Times(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{(t.Repeats > 1 ? $"{t.Repeats}x" : "")}{(t.Bound == Bound.AtLeast ? ">" : "")}{t.MinutesMin ?? t.MinutesMax} {t.Kind}")));

    private static string Heats(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Temperatures.Select(t => FormattableString.Invariant($"{t.Of} {(t.Bound == Bound.AtMost ? "<" : "")}{t.Celsius}{(t.Fan == true ? " fan" : "")}")));

    [Theory]
    [InlineData("Combi: 140°C, 30 % steam, 25 min, core 56°C.", "en", "Oven 140 Core 56")]
    [InlineData("Smoke for 5 hours at 115 C.", "en", "Oven 115")]
    [InlineData("Light the smoker and bring it to 120 °C.", "en", "Oven 120")]
    [InlineData("Steam at 95 °C, 12 min.", "en", "Oven 95")]
    [InlineData("Cover and braise at 150C (fan 130C) for 3 hrs.", "en", "Oven 150 Oven 130 fan")]
    [InlineData("Cold-smoke at 22 °C for 4 h.", "en", "Food 22")]
    [InlineData("Steam to 70 °C.", "en", "Food 70")]
    [InlineData("Braise at 90 °C.", "en", "Food 90")]
    [InlineData("Simmer at 85 °C.", "en", "Food 85")]
    [InlineData("180°Cの油で3分揚げる。", "ja", "Pan 180")]
    [InlineData("Cook @ 74C x 12 hrs water bath.", "en", "Bath 74")]
    [InlineData("Do not let it exceed 62 °C.", "en", "Food <62")]
    [InlineData("Never heat it above 45 °C.", "en", "Food <45")]
    [InlineData("If using a fan oven, bake at 150 °C.", "en", "Oven 150 fan")]
    [InlineData("Blind bake 170 15 min.", "en", "Oven 170")]
    [InlineData("Bake 130 for 1h20.", "en", "Oven 130")]
    [InlineData("Bake 130 rolls for 1h20.", "en", "")]
    [InlineData("Braise 3 h at 140.", "en", "Oven 140")]
    [InlineData("Cook the sugar to 172 °C.", "en", "Food 172")]
    [InlineData("Dust with sugar and bake at 200 °C.", "en", "Oven 200")]
    [InlineData("Simmer for four hours at 80 °C.", "en", "Food 80")]
    [InlineData("Mettre au four à 90 °C.", "fr", "Oven 90")]
    public void A_heat_of_the_air_is_not_the_foods_own(string step, string lang, string want) => Assert.Equal(want, Heats(step, lang));

    [Theory]
    [InlineData("Von jeder Seite 2 Minuten anbraten.", "de", "2x2 Cook")]
    [InlineData("Cuire 4 min de chaque côté.", "fr", "2x4 Cook")]
    [InlineData("Sear on each side for 2 min.", "en", "2x2 Cook")]
    [InlineData("中火で両面を2分ずつ焼く。", "ja", "2x2 Cook")]
    [InlineData("Brown on each side, then roast 10 min.", "en", "10 Oven")]
    [InlineData("Sear one side 2 min.", "en", "2 Cook")]
    [InlineData("フライパンで4分焼く。", "ja", "4 Cook")]
    [InlineData("180℃のオーブンで20分焼く。", "ja", "20 Oven")]
    [InlineData("170℃の油で5分揚げる。", "ja", "5 Cook")]
    [InlineData("Give the dough three folds at 40 minute intervals.", "en", "2x40 Rest")]
    [InlineData("Stir at 30 minutes.", "en", "")]
    public void A_side_doubles_its_time_and_folds_have_waits_between(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Knead by hand for 12 min, or 7 min in a stand mixer.", "en", "12 Hands", "7 min in a stand mixer")]
    [InlineData("Knead 11 minutes by hand or 5 minutes in a mixer.", "en", "11 Hands", "5 minutes in a mixer")]
    [InlineData("Cook at 58 °C 2 h (2 cm thick) or 3 h (3 cm).", "en", "120 Cook", "3 h (3 cm)")]
    [InlineData("Brine legs 5 hrs, breasts 3 hrs, whole birds 10 hrs.", "en", "300 Rest", "breasts 3 hrs, whole birds 10 hrs")]
    [InlineData("Keulen 40 Min. braten, dann 10 Min. ruhen lassen.", "de", "40 Cook 10 Rest", null)]
    [InlineData("Fry the legs 5 min, then breasts 3 min.", "en", "5 Cook 3 Cook", null)]
    [InlineData("Fry fillets 4 min, other side 2 min.", "en", "4 Cook 2 Cook", null)]
    [InlineData("Mix on medium 3 min, large bubbles come up 2 min.", "en", "3 Hands 2 Hands", null)]
    [InlineData("Bake 20 min, or 25 for a dark crust.", "en", "20 Oven", null)]
    public void One_of_several_is_not_all(string step, string lang, string want, string? other)
    {
        Assert.Equal(want, Times(step, lang));
        Assert.Equal(other, CardReader.ReadStep(step, lang).Alternative);
    }

    [Theory]
    [InlineData("Far riposare in frigo almeno 3 ore, meglio una notte.", "it", ">180 Rest")]
    [InlineData("Chill at least 3 hours, preferably overnight.", "en", ">180 Chill")]
    [InlineData("Mindestens 3 Stunden kühlen, am besten über Nacht.", "de", ">180 Chill")]
    [InlineData("Simmer 3 hours, then chill overnight.", "en", "180 Cook  Chill")]
    [InlineData("Let the terrine stand at room temperature 10 minutes before slicing.", "en", "10 Rest")]
    [InlineData("Take the terrine out 45 minutes before serving.", "en", "")]
    [InlineData("Chill 5hrs+.", "en", ">300 Chill")]
    [InlineData("Mix 3 + 4 min.", "en", "3 Hands 4 Hands")]
    public void A_better_night_is_no_second_wait(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Cuire au bain-marie à 90 °C pendant 35 min.", "fr", "35 Cook")]
    [InlineData("Toast the almonds in a 150 °C oven for 9 minutes.", "en", "9 Oven")]
    [InlineData("Refresh in the oven for 4 min.", "en", "4 Oven")]
    [InlineData("Set the timer for 7 minutes and boil the eggs.", "en", "7 Cook")]
    [InlineData("Peel the potatoes for 20 min while the cake is in the oven.", "en", "20 Hands")]
    [InlineData("Let it stand 10 min.", "en", "10 Rest")]
    [InlineData("Cook the onions over a medium heat for 12 minutes.", "en", "12 Cook")]
    [InlineData("Cook the onions, then leave them on a low heat for 25 minutes.", "en", "25 Cook")]
    [InlineData("Deep-fry the chips at 130 °C for 5 min, drain, then at 185 °C for 3 min.", "en", "5 Cook 3 Cook")]
    [InlineData("Fry at 180 °C for 5 min, then drain 3 min.", "en", "5 Cook 3 Hands")]
    [InlineData("Cook the rice for 14 minutes, then leave off the heat for 8 minutes.", "en", "14 Cook 8 Rest")]
    [InlineData("Simmer 10 min, leave 30 min.", "en", "10 Cook 30 Rest")]
    [InlineData("Leave to simmer 20 min.", "en", "20 Cook")]
    [InlineData("Bake 10 min, turn down to 160 °C and leave 30 min.", "en", "10 Oven 30 Oven")]
    [InlineData("Bake 10 min, leave in the oven 10 min.", "en", "10 Oven 10 Oven")]
    [InlineData("冷ましただしを加える。", "ja", "")]
    [InlineData("しっかり冷ます。", "ja", " Rest")]
    public void A_time_is_where_its_words_put_it(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Turn the oven down to 150 °C and bake 30 minutes.", "en", "cool_oven")]
    [InlineData("Turn the heat down and simmer 10 min.", "en", "simmer")]
    [InlineData("Turn the tray.", "en", "turn_tray")]
    [InlineData("Rest the roast for 10 minutes before carving.", "en", "rest_meat")]
    [InlineData("Rest for 10 minutes.", "en", "rest_dough")]
    [InlineData("Laisser tiédir 15 min.", "fr", "cool_rack")]
    [InlineData("Batir los huevos.", "es", "mix")]
    [InlineData("Leave covered off the heat for 10 minutes.", "en", null)]
    [InlineData("Heat the sauce.", "en", "heat_through")]
    public void Words_of_work_have_their_sense_here(string step, string lang, string? want) => Assert.Equal(want, CardReader.ReadStep(step, lang).Operation);
}
