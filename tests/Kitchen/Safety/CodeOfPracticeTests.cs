using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Safety;
using NodaTime;

namespace Coulisse.Kitchen.Tests.Safety;

public sealed class CodeOfPracticeTests
{
    [Theory]
    [InlineData("Food is handled by the code of practice of New Zealand.", "nz")]
    [InlineData("Code of practice: UK.", "uk")]
    [InlineData("We cook by the Food Code of the US, edition of 2022.", "us")]
    [InlineData("European food law holds here.", "eu")]
    public void The_sheet_says_whose_code_counts(string note, string code)
    {
        CodeOfPractice found = CodeOfPractice.Of(With(note));

        Assert.Equal(code, found.Code);
        Assert.True(found.Stated);
        Assert.Contains(note, found.Because, StringComparison.Ordinal);
    }

    // Near misses: a place without a code, a code without a place, and the word "us".
    [Theory]
    [InlineData("The beef comes from New Zealand.")]
    [InlineData("The code of practice hangs by the door.")]
    [InlineData("The food code is known to all of us.")]
    public void A_sentence_that_says_something_else_is_no_code(string note)
    {
        CodeOfPractice found = CodeOfPractice.Of(With(note));

        Assert.False(found.Stated);
        Assert.Equal(CodeOfPractice.Usual, found.Code);
    }

    private static Occasion With(string note)
    {
        LocalDateTime at = new(2026, 10, 10, 14, 0);
        return new Occasion
        {
            Title = "t", Sheet = new OccasionSheet { Title = "t", Notes = [new Note(note, new Span(0, note.Length, 1))] }, SlotStart = at, SlotLength = Duration.Zero, SlotPlace = "stage", Guests = 4, Covers = 4,
        };
    }
}
