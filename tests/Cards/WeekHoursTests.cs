using System.Collections.Immutable;
using Coulisse.Cards.Occasions;
using CsCheck;
using NodaTime;

namespace Coulisse.Cards.Tests;

public class WeekHoursTests
{
    [Theory]
    [InlineData("Tuesday to Saturday 08:00 to 16:30", "Tue to Sat 08:00 to 16:30")]
    [InlineData("Tue–Sat 8–16:30", "Tue to Sat 08:00 to 16:30")]
    [InlineData("Sat to Mon 10 to 14", "Mon, Sat, Sun 10:00 to 14:00")]
    [InlineData("Mon, Wed 08:00 to 12:00; Fri 13:00 to 17:00", "Mon, Wed 08:00 to 12:00; Fri 13:00 to 17:00")]
    [InlineData("Mon and Thu 9 to 12, 17 to 22", "Mon, Thu 09:00 to 12:00; Mon, Thu 17:00 to 22:00")]
    [InlineData("08:00 to 16:00; Sunday off", "Mon to Sat 08:00 to 16:00")]
    [InlineData("weekdays 7.30 to 15", "Mon to Fri 07:30 to 15:00")]
    [InlineData("daily 12:00 to 24:00", "every day 12:00 to 23:59")]
    [InlineData("", "")]
    public void A_usual_week_is_read_as_people_write_it(string written, string read)
    {
        (ImmutableArray<SheetHours> hours, string? wrong) = WeekHours.Read(written);
        Assert.Null(wrong);
        Assert.Equal(read, WeekHours.Words(hours));
    }

    [Theory]
    [InlineData("Tuseday 08:00 to 16:00", "“Tuseday” is no day of the week.")]
    [InlineData("T 08:00 to 16:00", "“T” is no day of the week.")]
    [InlineData("Mon 16:00 to 08:00", "ends before it starts")]
    [InlineData("Mon 25:00 to 26:00", "is no stretch of a day")]
    [InlineData("Mon 08:00", "is no stretch of a day")]
    [InlineData("Mon", "no hours stand behind Monday")]
    [InlineData("mornings", "“mornings” is no day of the week.")]
    public void What_cannot_be_read_says_what_is_wrong_and_gives_no_hours(string written, string wrong)
    {
        (ImmutableArray<SheetHours> hours, string? said) = WeekHours.Read(written);
        Assert.Contains(wrong, said);
        Assert.Empty(hours);
    }

    [Fact]
    public void A_week_in_its_own_words_reads_as_the_same_week()
        => Gen.Select(Gen.Int[1, 7], Gen.Int[0, 22], Gen.Int[0, 59], (d, h, m) => new SheetHours((IsoDayOfWeek)d, new LocalTime(h, m), new LocalTime(h + 1, m))).List[1, 8].Sample(all =>
        {
            SheetHours[] week = [.. all.Distinct().OrderBy(h => h.Day).ThenBy(h => h.From)];
            return WeekHours.Read(WeekHours.Words([.. week])) is (var back, null) && back.SequenceEqual(week);
        });

    [Fact]
    public void Nothing_a_person_may_type_makes_the_reader_throw()
        => Gen.String[Gen.Char["MoTuesday 0123456789:.,;–-to off"], 0, 40].Sample(s =>
        {
            _ = WeekHours.Read(s);
            _ = SheetPace.Read(s);
            _ = SheetRates.Read(s);
        });

    [Fact]
    public void A_week_lies_on_the_days_of_an_occasion_and_on_no_other()
    {
        ImmutableArray<SheetHours> week = WeekHours.Read("Fri to Sun 08:00 to 16:00").Hours;
        LocalDate friday = new(2026, 10, 9);
        SheetWindow Window(int day, int from, int to) => new(friday.PlusDays(day).At(new LocalTime(from, 0)), friday.PlusDays(day).At(new LocalTime(to, 0)), 0);

        ImmutableArray<SheetWindow> on = WeekHours.On(week, [Window(-1, 13, 16), Window(0, 8, 15), Window(1, 18, 22)], 7);

        // Thursday is no day of hers, and on Saturday she is gone before the window opens
        Assert.Equal([new SheetWindow(friday.At(new LocalTime(8, 0)), friday.At(new LocalTime(16, 0)), 7)], on);
    }

    [Theory]
    [InlineData("", 1)]
    [InlineData("usual", 1)]
    [InlineData("20 % slower", 1.2)]
    [InlineData("a fifth slower", 1.2)]
    [InlineData("25% faster", 0.8)]
    public void A_speed_is_a_factor_on_minutes(string written, double factor)
    {
        Assert.Equal(factor, SheetPace.Read(written).Factor, 12);
        Assert.Null(SheetPace.Read(written).Wrong);
    }

    [Theory]
    [InlineData("1.2")]
    [InlineData("slow")]
    [InlineData("20 %")]
    [InlineData("300 % slower")]
    public void A_speed_that_could_mean_either_way_is_asked_not_guessed(string written) => Assert.NotNull(SheetPace.Read(written).Wrong);

    [Theory]
    [InlineData("8 up, 3 down", 8.0, 3.0)]
    [InlineData("0.4 °C up", 0.4, null)]
    [InlineData("3 down; 8 up", 8.0, 3.0)]
    [InlineData("", null, null)]
    public void Rates_of_kit_are_read_in_degrees_a_minute(string written, double? up, double? down) => Assert.Equal((up, down, null), SheetRates.Read(written));

    [Theory]
    [InlineData("8")]
    [InlineData("fast up")]
    [InlineData("900 up")]
    [InlineData("0 up")]
    public void A_rate_no_kit_has_is_refused_in_words(string written) => Assert.NotNull(SheetRates.Read(written).Wrong);

    [Fact]
    public void A_sheet_reads_hours_speed_and_rates_from_their_columns_and_names_the_row_that_is_wrong()
    {
        const string sheet = "# Tart\n\nSaturday 10 October 2026, live 14:00 to 14:25 on stage.\n\n## Hands\n\n| Name | Hours | Speed |\n|---|---|---|\n| Ada | Fri to Sat 08:00 to 16:00 | 10 % faster |\n| Ben | sometimes | usual |\n\n## Kit\n\n| Code | What | Place | Number | Heats, °C/min |\n|---|---|---|---|---|\n| O1 | oven | back | 1 | 8 up |\n";
        Problem wrong = Assert.Single(Assert.IsType<Parsed<OccasionSheet>.Failed>(OccasionReader.Read(sheet, new LocalDate(2026, 10, 1))).Problems);
        Assert.Equal(("OCC018", 10), (wrong.Code, wrong.Line));

        OccasionSheet read = Assert.IsType<Parsed<OccasionSheet>.Ok>(OccasionReader.Read(sheet.Replace("sometimes", "", StringComparison.Ordinal), new LocalDate(2026, 10, 1))).Value;
        Assert.Equal("Fri, Sat 08:00 to 16:00", WeekHours.Words(read.People[0].Week));
        Assert.Equal(1 / 1.1, read.People[0].Speed, 12);
        Assert.True(read.People[1].Week.IsEmpty);
        Assert.Equal(8, read.Kit[0].RisePerMinute);
    }
}
