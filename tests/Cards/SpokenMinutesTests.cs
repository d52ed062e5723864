using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Minutes as they are said and not printed: in words, in written numerals, without their unit the second time, by the end one wishes. Readings as a cook gives them: common practice, no source.</summary>
public sealed class SpokenMinutesTests
{
    private static string Times(string step, string lang) => string.Join(" ", CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{t.MinutesMin}-{t.MinutesMax}")));

    [Theory]
    [InlineData("Bake at gas 2 for another hour and twenty.", "en", "80-80")]
    [InlineData("Cook for an hour and twenty minutes.", "en", "80-80")]
    [InlineData("Cuire une heure vingt à feu doux.", "fr", "80-80")]
    [InlineData("Cocer una hora y diez a fuego lento.", "es", "70-70")]
    [InlineData("Cuocere un'ora e venti minuti.", "it", "80-80")]
    [InlineData("Cook for an hour and ten eggs will be done.", "en", "60-60")]
    [InlineData("Laisser une heure ou deux.", "fr", "60-120")]
    [InlineData("Lasciare dentro un'altra oretta.", "it", "60-60")]
    public void Minutes_in_words_go_on_behind_an_hour(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("強火で八分、弱火に落として十二、三分炊き、二十分蒸らす。", "8-8 12-13 20-20")]
    [InlineData("弱火で二、三十分煮る。", "20-30")]
    [InlineData("十分間蒸らす。", "10-10")]
    [InlineData("四十五分発酵させる。", "45-45")]
    [InlineData("三日間塩漬けにする。", "4320-4320")]
    [InlineData("半日(5〜6時間)ほど干す。", "300-360")]
    [InlineData("十分に蒸らす。", "")]
    [InlineData("生クリームは八分立てにする。", "")]
    [InlineData("砂糖を三分の二加える。", "")]
    [InlineData("七分づき米を洗う。", "")]
    [InlineData("三日目に裏返す。", "")]
    [InlineData("四、五分おきに混ぜる。", "")]
    [InlineData("5分おきに混ぜる。", "")]
    [InlineData("室温で30分おき、混ぜる。", "30-30")]
    public void Japanese_numerals_tell_minutes_and_no_shares_of_ten(string step, string want) => Assert.Equal(want, Times(step, "ja"));

    [Theory]
    [InlineData("Give the chops 4 minutes on the first side and 3 on the second.", "en", "4-4 3-3")]
    [InlineData("Impastare 6 minuti in prima velocità e altri 4 in seconda.", "it", "6-6 4-4")]
    [InlineData("Cuire le riz 16 minutes, puis 5 de repos.", "fr", "16-16 5-5")]
    [InlineData("Se deja el arroz dieciocho minutos, y cinco de reposo.", "es", "18-18 5-5")]
    [InlineData("Cook 3 minutes and 2 eggs.", "en", "3-3")]
    [InlineData("Knead 8 minutes, plus 2 tbsp water.", "en", "8-8")]
    public void Minutes_share_their_word(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Boil the eggs 6 minutes for soft, 8 for jammy and 10 for hard.", "en", "6-6", "8-8 10-10")]
    [InlineData("Eier kochen: 6 Minuten für wachsweich, 10 für hart.", "de", "6-6", "10-10")]
    [InlineData("Roast 50 minutes for 4 people, 70 for 8.", "en", "50-50", "70-70")]
    [InlineData("Steam 8 minutes for small, 12 minutes for large.", "en", "8-8", "12-12")]
    [InlineData("Bake 20 minutes for the first tray, then 15 minutes for the second.", "en", "20-20 15-15", null)]
    [InlineData("Bake at 180 °C for 20 minutes, 160 for fan.", "en", "20-20", null)]
    public void Another_end_is_another_way_and_adds_nothing(string step, string lang, string want, string? other)
    {
        Step read = CardReader.ReadStep(step, lang);
        Assert.Equal(want, Times(step, lang));
        Assert.Equal(other, read.Alternative is { } way ? Times(way, lang) : null);
    }

    [Theory]
    [InlineData("Ne pas dépasser 3 minutes de cuisson de chaque côté.", "fr", "-3")]
    [InlineData("Never go beyond 10 minutes.", "en", "-10")]
    [InlineData("3 Minuten nicht überschreiten.", "de", "-3")]
    [InlineData("長くても3分ゆでる。", "ja", "-3")]
    [InlineData("Go over the edge for 3 minutes.", "en", "3-3")]
    public void What_is_not_to_be_gone_beyond_is_the_longest(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Mettez la daube sur le feu à six heures du matin et laissez-la cinq heures au moins.", "300-")]
    [InlineData("Allumer le four à sept heures et demie.", "")]
    [InlineData("Laisser reposer deux à trois heures.", "120-180")]
    [InlineData("Cuire jusqu'à deux heures.", "-120")]
    [InlineData("Pointage 3 h, rabats à 1 h et 2 h.", "180-180")]
    public void An_hour_of_the_day_is_no_wait(string step, string want) => Assert.Equal(want, Times(step, "fr"));

    [Fact]
    public void What_rests_behind_the_work_is_no_work() => Assert.Equal([TimeKind.Cook, TimeKind.Rest], CardReader.ReadStep("Cocer el arroz 16 minutos y dejar 5 de reposo.", "es").Times.Select(t => t.Kind));

    [Fact]
    public void A_text_that_ends_behind_its_sign_of_a_range_is_read() => Assert.NotNull(CardReader.Read(new CardText("## 材料 e人分)\n-f砂糖 大cm³ wat4r2 x 400 1H-")).Match<Dish?>(d => d, _ => null));
}
