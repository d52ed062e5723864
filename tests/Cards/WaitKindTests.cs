using Coulisse.Cards.Reading;
using static Coulisse.Cards.Tests.Told;

namespace Coulisse.Cards.Tests;

/// <summary>Waits told two ways, about so long, or by a bare figure, each beside what looks like it and is none. Readings as a cook gives them: common practice, no source.</summary>
public sealed class WaitKindTests
{
    private static string Times(string step, string lang) => string.Join("; ", CardReader.ReadStep(step, lang).Times.Select(t => FormattableString.Invariant($"{t.MinutesMin}-{t.MinutesMax} {t.Kind}")));

    [Theory]
    [InlineData("Rest 4 hours or overnight.", "en", "240- Rest")]
    [InlineData("Chill for 2 hours, or overnight.", "en", "120- Chill")]
    [InlineData("Chill overnight or at least 4 hours.", "en", "240- Chill")]
    [InlineData("Press under 2 kg in the fridge, 6 h to overnight.", "en", "360- Rest")]
    [InlineData("Leave 2 hours in the fridge or overnight.", "en", "120- Chill")]
    [InlineData("Chill at least 2 hours or up to 2 days.", "en", "120-2880 Chill")]
    [InlineData("Mindestens 4 Stunden oder über Nacht kühlen.", "de", "240- Chill")]
    [InlineData("Laisser reposer 4 heures ou toute une nuit.", "fr", "240- Rest")]
    [InlineData("Dejar reposar 2 horas o toda la noche.", "es", "120- Rest")]
    [InlineData("Riposare 3 ore o tutta la notte.", "it", "180- Rest")]
    [InlineData("冷蔵庫で2時間または一晩おく。", "ja", "120- Chill")]
    public void So_long_or_a_night_is_one_wait_with_a_low_end(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Chill 2 hours and overnight in the freezer.", "120-120 Chill; - Chill")]
    [InlineData("Simmer 2 hours or until tender, then chill overnight.", "120-120 Cook; - Chill")]
    [InlineData("Rest for 1 hour or so. Chill overnight.", "60-60 Rest; - Chill")]
    [InlineData("Prove 1 hour or so, then overnight in the fridge.", "60-60 Rest; - Rest")]
    public void One_wait_after_the_other_stays_two(string step, string want) => Assert.Equal(want, Times(step, "en"));

    [Theory]
    [InlineData("Marinate for 2 hours or, better, overnight.", "2 hours or, better, overnight")]
    [InlineData("Chill for 30 minutes (or up to 2 days).", "30 minutes (or up to 2 days)")]
    [InlineData("Rest 4 hours or overnight.", "4 hours or overnight")]
    public void The_other_length_is_kept_in_the_words(string step, string words) => Assert.Equal(words, Assert.Single(CardReader.ReadStep(step, "en").Times).Words);

    [Theory]
    [InlineData("Cook for 35ish min.", "35-35 Cook", "35ish min")]
    [InlineData("Cook 35-ish minutes.", "35-35 Cook", "35-ish minutes")]
    [InlineData("Simmer 40-odd minutes.", "40-40 Cook", "40-odd minutes")]
    public void About_so_long_is_so_long_and_the_words_say_about(string step, string want, string words)
    {
        Assert.Equal(want, Times(step, "en"));
        Assert.Equal(words, Assert.Single(CardReader.ReadStep(step, "en").Times).Words);
    }

    [Theory]
    [InlineData("Add the 3 odd pieces.")]
    [InlineData("Cut 40 oddments and fry.")]
    public void What_is_odd_is_no_time(string step) => Assert.Equal("", Times(step, "en"));

    [Theory]
    [InlineData("bare chill 30", "en", "30-30 Chill")]
    [InlineData("Season and rest 20", "en", "20-20 Rest")]
    [InlineData("bake 12-15", "en", "12-15 Oven")]
    [InlineData("Shape, prove 45 and bake at 180° 12-15.", "en", "45-45 Rest; 12-15 Oven")]
    [InlineData("repos 30", "fr", "30-30 Rest")]
    public void A_bare_figure_behind_a_verb_of_waiting_is_minutes(string step, string lang, string want) => Assert.Equal(want, Times(step, lang));

    [Theory]
    [InlineData("Chill 30 g butter.")]
    [InlineData("Bake 12 rolls.")]
    [InlineData("Bake 12.")]
    [InlineData("Chill 4.")]
    [InlineData("Rest 2.")]
    [InlineData("Save the rest 20.")]
    [InlineData("Freeze -18.")]
    public void What_may_be_another_thing_is_no_time(string step) => Assert.Equal("", Times(step, "en"));

    [Theory]
    [InlineData("Rest 2.", "2 minutes", "2 hours")]
    [InlineData("Bake 12.", "12 minutes", "so many pieces")]
    [InlineData("Bake 180.", "180 minutes", "180 °C")]
    public void It_is_asked_instead(string step, string one, string two)
    {
        Doubt doubt = Assert.Single(Read($"Buns\n\n500 g flour\n300 g water\n\nMethod\n1. Mix and shape.\n2. {step}\n").Doubts);

        Assert.Equal([one, two], doubt.Candidates.Select(c => c.Text));
        Assert.Equal(step.TrimEnd('.'), doubt.Asked);
    }

    [Fact]
    public void A_known_wait_is_not_asked() => Assert.Empty(Read("Buns\n\n500 g flour\n300 g water\n\nMethod\n1. Mix, prove 45.\n2. Bake 20.\n3. Rest 2 h.\n").Doubts);
}
