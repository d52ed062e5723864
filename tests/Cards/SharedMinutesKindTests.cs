using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Times whose figures say less than they mean alone: a stroke that is a range, a word told once for several figures, a longest time told by what is not to be done, an oven's figure that opens a note. Readings as a cook gives them: common practice, no source.</summary>
public sealed class SharedMinutesKindTests
{
    private static string Times(string step, string lang) => string.Join("; ", CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{t.MinutesMin}-{t.MinutesMax}")));

    private static string Heats(string step, string lang) => string.Join("; ", CardReader.ReadStep(step, lang).Temperatures.Select(t => FormattableString.Invariant($"{t.Of} {t.Celsius}")));

    [Theory]
    [InlineData("Cuocere a 170 °C, 14/16 min.", "it", "14-16")]
    [InlineData("Far lievitare 2/3 ore.", "it", "120-180")]
    [InlineData("Far lievitare 3/4 ore.", "it", "180-240")]
    [InlineData("Cuocere 3/4 minuti.", "it", "3-4")]
    [InlineData("Cuire 14/16 min.", "fr", "14-16")]
    [InlineData("Mariner 2/3 jours.", "fr", "2880-4320")]
    [InlineData("7/8 Minuten kochen.", "de", "7-8")]
    [InlineData("Marinar 4/5 horas.", "es", "240-300")]
    [InlineData("Fry 3/5 min.", "en", "3-5")]
    [InlineData("14/16分焼く。", "ja", "14-16")]
    public void A_stroke_between_two_figures_of_a_time_is_a_range(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Bake 3/4 hour.", "en", "45-45")]
    [InlineData("Simmer 1/2 min.", "en", "0.5-0.5")]
    [InlineData("Laisser reposer 3/4 d'heure.", "fr", "45-45")]
    [InlineData("3/4 Std. ruhen lassen.", "de", "45-45")]
    [InlineData("Riposare 3/4 d'ora.", "it", "45-45")]
    [InlineData("Cook 2 1/2 hours.", "en", "150-150")]
    [InlineData("Rest 2/3 hour.", "en", "40-40")]
    public void A_part_of_an_hour_stays_one(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("No batir más de 30 segundos.", "es", "-0.5")]
    [InlineData("Ne pas battre plus de 30 secondes.", "fr", "-0.5")]
    [InlineData("Non montare più di 2 minuti.", "it", "-2")]
    [InlineData("Nicht mehr als 3 Minuten kochen.", "de", "-3")]
    [InlineData("Don't beat for more than 30 seconds.", "en", "-0.5")]
    [InlineData("30秒以上混ぜない。", "ja", "-0.5")]
    [InlineData("30秒以上混ぜる。", "ja", "0.5-")]
    [InlineData("No cocer menos de 3 minutos, hasta que ablande.", "es", "3-3")]
    public void What_is_not_to_be_done_for_longer_is_the_longest(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Amasa 8 minutos, deja reposar 10 y vuelve a amasar otros 5.", "es", "8-8; 10-10; 5-5")]
    [InlineData("Pétrir 8 minutes, laisser reposer 10 puis pétrir encore 5.", "fr", "8-8; 10-10; 5-5")]
    [InlineData("8 Minuten kneten, 10 ruhen lassen, weitere 5 kneten.", "de", "8-8; 10-10; 5-5")]
    [InlineData("Impastare 10 minuti in prima velocità e 5 in seconda.", "it", "10-10; 5-5")]
    [InlineData("Knead 4 minutes on first speed and 6 on second.", "en", "4-4; 6-6")]
    [InlineData("Fríe 5 minutos por un lado y 3 por el otro.", "es", "5-5; 3-3")]
    public void A_word_of_time_told_once_serves_the_figures_behind_it(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Bate 5 minutos y añade otros 2 huevos.", "es", "5-5")]
    [InlineData("5 Minuten rühren, dann 3 Eier zugeben.", "de", "5-5")]
    [InlineData("Cuire 20 minutes, ajouter encore 2 œufs.", "fr", "20-20")]
    [InlineData("Montare 5 minuti e aggiungere altri 3 tuorli.", "it", "5-5")]
    [InlineData("Refrigerate 2 hours, then add another 5 egg yolks.", "en", "120-120")]
    public void A_count_behind_a_time_stays_a_count(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("3分割して丸め、ベンチタイム15分。", "15-15")]
    [InlineData("型の7分目まで流し、180℃で30分焼く。", "30-30")]
    [InlineData("3分煮る。", "3-3")]
    public void Parts_and_heights_are_no_minutes(string step, string want) => Assert.Equal(want, Times(step, "ja"));

    [Theory]
    [InlineData("220 for 20 min then 180 for 55 min. core 75", "en", "Oven 220; Oven 180; Core 75")]
    [InlineData("tout mélanger, moule beurré, four 180 30-35 min", "fr", "Oven 180")]
    [InlineData("200 durante 10 min, luego 170 durante 40 min", "es", "Oven 200; Oven 170")]
    [InlineData("200 for the first tray", "en", "")]
    [InlineData("Shape 160 rolls for 20 minutes", "en", "")]
    public void A_figure_with_its_time_behind_it_is_the_ovens(string step, string lang, string want) => Assert.Equal(want, Heats(step, lang));

    [Fact]
    public void A_note_of_figures_is_a_step_and_no_food()
    {
        Dish d = Read("Chicken\n\nchicken 1.8 kg\nlemon 1\nbutter 60 g\n\n- rub it in\n- 220 for 20 min then 180 for 55 min. core 75\n- rest 20");

        Assert.Equal(["chicken", "lemon", "butter"], d.Components[0].Ingredients.SelectMany(l => l.Foods).Select(f => f.Food));
        Assert.Contains(d.Components[0].Steps, s => s.Text.StartsWith("220", StringComparison.Ordinal) && s.Times.Length == 2);
    }
}
