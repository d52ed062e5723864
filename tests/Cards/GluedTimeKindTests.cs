using Coulisse.Cards.Reading;

namespace Coulisse.Cards.Tests;

/// <summary>Times that touch what stands before them, seconds told bare behind a minute, and words behind a time that leave it open; each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class GluedTimeKindTests
{
    private static string[] Minutes(string step, string lang) => [.. CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{t.MinutesMin}-{t.MinutesMax}"))];

    [Theory]
    [InlineData("湯せん焼きで160℃25分、140℃に下げて20〜25分。", "ja", "25-25", "20-25")]
    [InlineData("58℃45分で加熱する。", "ja", "45-45")]
    [InlineData("Cuire à 160°C25min.", "fr", "25-25")]
    [InlineData("180℃のオーブンで20分焼く。", "ja", "20-20")]
    public void A_time_may_touch_its_heat(string step, string lang, params string[] minutes) => Assert.Equal(minutes, Minutes(step, lang));

    [Theory]
    [InlineData("Bake at 300°C20min.", 300)]
    [InlineData("Bake at 350°F20min.", 176.7)]
    public void The_letter_of_a_heat_may_touch_what_follows(string step, double celsius) => Assert.Equal(celsius, CardReader.ReadStep(step, "en").Temperatures[0].Celsius, 1);

    [Fact]
    public void What_a_core_is_held_for_is_no_time_of_its_own()
    {
        Step step = CardReader.ReadStep("中心75℃1分まで加熱する。", "ja");

        Assert.Empty(step.Times);
        Assert.Equal((TemperatureOf.Core, 75, 1), (step.Temperatures[0].Of, step.Temperatures[0].Celsius, step.Temperatures[0].HoldMinutes));
    }

    [Theory]
    [InlineData("Les saisir 1 min 30 de chaque côté.", "fr", "1.5-1.5")]
    [InlineData("Fry 1 min 30 each side.", "en", "1.5-1.5")]
    [InlineData("Cuire 2 min 30.", "fr", "2.5-2.5")]
    [InlineData("Blend 2 min 30 at full speed.", "en", "2.5-2.5")]
    [InlineData("Mix 2 min 30 g of butter in.", "en", "2-2")]
    [InlineData("Rest 5 min 20 biscuits at a time.", "en", "5-5")]
    [InlineData("Cook 10 min, 20 toasts at a time.", "en", "10-10")]
    public void Bare_seconds_go_on_behind_a_minute_where_nothing_else_claims_them(string step, string lang, string minutes) => Assert.Equal([minutes], Minutes(step, lang));

    [Theory]
    [InlineData("Dejar curtir 30 minutos por lo menos.", "es", "30-")]
    [InlineData("Laisser reposer 30 minutes au minimum.", "fr", "30-")]
    [InlineData("Rest 2 hours or longer.", "en", "120-")]
    [InlineData("2 Stunden oder länger ruhen lassen.", "de", "120-")]
    [InlineData("Lasciare riposare 30 minuti o più.", "it", "30-")]
    [InlineData("Rest 2 hours or until cold.", "en", "120-120")]
    public void Words_behind_a_time_leave_it_open(string step, string lang, string minutes) => Assert.Equal([minutes], Minutes(step, lang));

    [Theory]
    [InlineData("Simmer 25 min. Drain. Keep the liquor for another day.", "25-25")]
    [InlineData("Rest the dough for another day.", "1440-1440")]
    public void What_is_kept_for_another_day_waits_for_nothing(string step, string minutes) => Assert.Equal([minutes], Minutes(step, "en"));
}
