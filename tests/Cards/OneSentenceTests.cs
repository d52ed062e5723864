using Coulisse.Cards.Occasions;
using NodaTime;

namespace Coulisse.Cards.Tests;

/// <summary>The occasion in one sentence, as people type it: who, how many, when and how long are each read, asked, or said to be assumed; never guessed in silence.</summary>
public sealed class OneSentenceTests
{
    private static readonly LocalDate Today = new(2026, 10, 5); // a Monday

    private static OccasionSheet Ok(string sentence) => OccasionReader.Read(sentence, Today).Match(s => s, p => throw new InvalidOperationException(sentence + ": " + string.Join("; ", p)));

    private static Problem Refused(string sentence) => Assert.IsType<Parsed<OccasionSheet>.Failed>(OccasionReader.Read(sentence, Today)).Problems[0];

    [Theory]
    [InlineData("20 plates Saturday 14:00 25 minutes Ada and two others", "Ada, Hand 2, Hand 3")]
    [InlineData("20 plates, Saturday 14:00, 25 minutes, Ada and two others", "Ada, Hand 2, Hand 3")]
    [InlineData("Saturday 14:00, Ada and two others, 20 plates, 25 minutes", "Ada, Hand 2, Hand 3")]
    [InlineData("Ada, Ben and Cy cook 20 plates on Saturday at 14:00 for 25 minutes", "Ada, Ben, Cy")]
    [InlineData("20 plates saturday 2pm 25 min ada and two others", "ada, Hand 2, Hand 3")]
    [InlineData("20 plates, Saturday 14:00, 25 minutes, ada", "ada")]
    [InlineData("20 plates, Saturday 14:00, 25 minutes, Ada Lovelace & Jean de la Tour", "Ada Lovelace, Jean de la Tour")]
    [InlineData("20 plates, Saturday 14:00, 25 minutes, three cooks", "Hand 1, Hand 2, Hand 3")]
    [InlineData("Dinner for 20 guests, Saturday 14:00, 25 minutes, Ada with 2 helpers", "Ada, Hand 2, Hand 3")]
    [InlineData("20 people Saturday 14:00 25 minutes Ada", "Ada")]
    [InlineData("Saturday 10 October 2026, service 12:30, 20 guests", "Chef")]
    [InlineData("20 plates, Saturday 14:00, 25 minutes, Frida and Sundara", "Frida, Sundara")]
    public void Who_works_is_read_wherever_it_stands(string sentence, string who) => Assert.Equal(who, string.Join(", ", Ok(sentence).People.Select(p => p.Name)));

    [Theory]
    [InlineData("20 guests and two spare, Saturday 14:00, 25 minutes, Ada", 20, 2)]
    [InlineData("20 guests plus 2 extra plates, Saturday 14:00, 25 minutes, Ada", 20, 2)]
    [InlineData("48 and five over, so 53, Saturday 14:00, 25 minutes, Ada", 48, 5)]
    [InlineData("22 plates, two of them spare, Saturday 14:00, 25 minutes, Ada", 22, 0)]
    [InlineData("22 plates, of which two spare, Saturday 14:00, 25 minutes, Ada", 20, 2)]
    [InlineData("20 guests, 22 plates, Saturday 14:00, 25 minutes, Ada", 20, 2)]
    [InlineData("20 to 25 plates, Saturday 14:00, 25 minutes, Ada", 25, 0)]
    [InlineData("For 20 people, Saturday 14:00, 25 minutes, Ada", 20, null)]
    [InlineData("20 plates, two plates a minute, Saturday 14:00, 25 minutes, Ada", 20, 0)]
    [InlineData("Supper for 18 on 12 December 2026 at 7.30 pm, three cooks", 18, null)]
    [InlineData("Lunch for 18, Saturday 12:30", 18, null)]
    [InlineData("20 plates for 25 minutes, Saturday 14:00, Ada", 20, 0)]
    [InlineData("20 guests, Saturday 14:00 for 15:00, Ada", 20, null)]
    [InlineData("30 Teller, Freitag 19 Uhr, Ada", 30, 0)]
    [InlineData("40 assiettes, samedi 14h, 25 minutes, Ada", 40, 0)]
    [InlineData("24 coperti, sabato 20:00, Ada", 24, null)]
    public void How_many_and_how_many_over(string sentence, int guests, int? over) => Assert.Equal((guests, over ?? 0), (Ok(sentence).Guests, Ok(sentence).Over ?? 0));

    [Theory]
    [InlineData("-5 plates, Saturday 14:00, 25 minutes, Ada", "OCC007")]
    [InlineData("0 plates, Saturday 14:00, 25 minutes, Ada", "OCC007")]
    [InlineData("no guests: 0 guests, Saturday 14:00, 25 minutes, Ada", "OCC007")]
    [InlineData("20.5 plates, Saturday 14:00, 25 minutes, Ada", "OCC007")]
    [InlineData("48 and five over, so 50, Saturday 14:00, 25 minutes, Ada", "OCC031")]
    [InlineData("20 plates, 3/4/2026, 14:00, 25 minutes, Ada", "OCC029")]
    [InlineData("20 plates, Saturday 14:00, 25 minutes, Ada and 900 others", "OCC030")]
    [InlineData("20 plates, Saturday 25.00 Uhr, 25 minutes, Ada", "OCC011")]
    [InlineData("20 plates, Satrday 14:00, 25 minutes, Ada", "OCC010")]
    [InlineData("20 plates, Thursdy 14:00, 25 minutes, Ada", "OCC010")]
    [InlineData("Supper 24 on Saturday at 19:30, three cooks", "OCC007")]
    public void What_cannot_be_is_refused(string sentence, string code) => Assert.Equal(code, Refused(sentence).Code);

    [Theory]
    [InlineData("2 pm", "14:00")]
    [InlineData("2pm", "14:00")]
    [InlineData("2.30 pm", "14:30")]
    [InlineData("2:30 p.m.", "14:30")]
    [InlineData("12 am", "00:00")]
    [InlineData("12 pm", "12:00")]
    [InlineData("14h00", "14:00")]
    [InlineData("14h", "14:00")]
    [InlineData("14.00 Uhr", "14:00")]
    [InlineData("14 Uhr", "14:00")]
    [InlineData("14 Uhr 30", "14:30")]
    [InlineData("14.00", "14:00")]
    [InlineData("at 9h30", "09:30")]
    [InlineData("14:00", "14:00")]
    public void Times_of_day_as_people_write_them(string time, string start)
    {
        OccasionSheet sheet = Ok($"20 plates, Saturday {time}, 25 minutes, Ada");
        Assert.Equal("2026-10-10 " + start, sheet.SlotStart!.Value.ToString("uuuu-MM-dd HH:mm", null));
        Assert.Equal(Duration.FromMinutes(25), sheet.SlotLength);
        Assert.Equal(20, sheet.Guests);
        Assert.Empty(sheet.Remarks);
    }

    [Theory]
    [InlineData("20 plates, Saturday 2 to 2.30 pm, Ada", "14:00", 30)]
    [InlineData("20 plates, Saturday 2:15-2:45 pm, Ada", "14:15", 30)]
    [InlineData("20 plates, Saturday 11 to 1 pm, Ada", "11:00", 120)]
    [InlineData("20 plates, Saturday 14:00, 1h30, Ada", "14:00", 90)]
    [InlineData("20 plates, Saturday 14:00, half an hour, Ada", "14:00", 30)]
    public void A_stretch_is_no_time_and_a_time_no_stretch(string sentence, string start, int minutes)
    {
        OccasionSheet sheet = Ok(sentence);
        Assert.Equal(start, sheet.SlotStart!.Value.ToString("HH:mm", null));
        Assert.Equal(Duration.FromMinutes(minutes), sheet.SlotLength);
    }

    [Theory]
    [InlineData("10/10/2026", "2026-10-10")]
    [InlineData("13/11/2026", "2026-11-13")]
    [InlineData("11/13/2026", "2026-11-13")]
    [InlineData("3.4.2027", "2027-04-03")]
    [InlineData("Saturday 3/4/2027", "2027-04-03")]
    [InlineData("24 October", "2026-10-24")]
    [InlineData("24th of October", "2026-10-24")]
    [InlineData("Oct 24, 2026", "2026-10-24")]
    [InlineData("1 February", "2027-02-01")]
    [InlineData("tomorrow", "2026-10-06")]
    [InlineData("Sat", "2026-10-10")]
    [InlineData("Samstag", "2026-10-10")]
    [InlineData("2026-10-24", "2026-10-24")]
    public void Days_as_people_write_them(string day, string date) => Assert.Equal(date, Ok($"20 plates, {day} 14:00, 25 minutes, Ada").SlotStart!.Value.ToString("uuuu-MM-dd", null));

    [Theory]
    [InlineData("20 plates, Saturday 14:00, Ada")]
    [InlineData("20 plates, Saturday 14:00, 0 minutes, Ada")]
    public void A_service_without_a_length_is_said_to_be_one(string sentence)
    {
        OccasionSheet sheet = Ok(sentence);
        Assert.Null(sheet.SlotLength);
        Assert.Contains(sheet.Assumed, a => a.StartsWith("slot: ", StringComparison.Ordinal) && a.Contains("14:00", StringComparison.Ordinal));
        Assert.DoesNotContain(Ok("20 plates, Saturday 14:00, 25 minutes, Ada").Assumed, a => a.StartsWith("slot: ", StringComparison.Ordinal));
    }

    [Fact]
    public void What_was_not_understood_is_said_and_a_plain_sentence_says_nothing()
    {
        Assert.Contains("brxq", Assert.Single(Ok("20 plates, Saturday 14:00, 25 minutes brxq zzt, Ada").Remarks).What, StringComparison.Ordinal);
        Assert.Empty(Ok("Dinner for 20 guests on Saturday at 14:00 for 25 minutes, Ada and two others on stage").Remarks);
        Assert.Equal("stage", Ok("Dinner for 20 guests on Saturday at 14:00 for 25 minutes, Ada and two others on stage").SlotPlace);
    }
}
