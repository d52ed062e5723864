using System.Text;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Formats.In;

namespace Coulisse.Papers.Tests.FormatsIn;

/// <summary>Bytes that no mark tells the encoding of, dirt in a text, and files that are no text: read when it is sure, else said what they are.</summary>
public sealed class OddBytesTests
{
    private const string Japanese = "# だし巻き卵\n\n- 卵 3個\n- だし 大さじ4\n- 塩 少々\n\n1. 卵を溶いてだしを混ぜる。\n";

    private static string Text(byte[] bytes) => TextBytes.Read(bytes).Match(t => t, p => throw new InvalidOperationException(string.Join("; ", p)));

    private static string Refused(byte[] bytes) => Assert.IsType<Parsed<string>.Failed>(TextBytes.Read(bytes)).Problems[0].Code;

    private static Encoding Page(int page) => CodePagesEncodingProvider.Instance.GetEncoding(page)!;

    [Fact]
    public void Japanese_is_read_from_every_encoding_that_surely_holds_it()
    {
        Assert.Equal(Japanese, Text(Encoding.Unicode.GetBytes(Japanese)));
        Assert.Equal(Japanese, Text(Encoding.BigEndianUnicode.GetBytes(Japanese)));
        Assert.Equal("だし巻き卵のつくり方", Text(Encoding.Unicode.GetBytes("だし巻き卵のつくり方")));
        Assert.Equal(Japanese, Text(Page(932).GetBytes(Japanese)));
        Assert.Equal(Japanese, Text(Page(51932).GetBytes(Japanese)));
        Assert.Equal(Japanese, Text(Encoding.UTF8.GetBytes(Japanese)));
    }

    [Theory]
    [InlineData("Crème brûlée, purée, pâté, 200 g crème fraîche")]
    [InlineData("Gemüsebrühe, Weißwein, Öl, Süßkartoffel")]
    [InlineData("0000 a0b0c0d0 e0f0")]
    [InlineData("even length, plain words of a card of 50 g")]
    public void What_is_not_surely_Japanese_stays_what_it_was(string text) => Assert.Equal(text, Text(Encoding.Latin1.GetBytes(text)));

    [Fact]
    public void Files_of_other_programs_are_named_and_a_text_that_speaks_of_them_is_read()
    {
        Assert.Equal("CRD006", Refused(Encoding.Latin1.GetBytes("%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n1 0 obj\n<< /Type /Catalog >>\nendobj\n")));
        Assert.Equal("CRD006", Refused([0x50, 0x4B, 3, 4, 20, 0, 6, 0, 8, 0]));
        Assert.Equal("CRD006", Refused(Encoding.ASCII.GetBytes("{\\rtf1\\ansi 200 g butter}")));
        Assert.Equal("CRD006", Assert.IsType<Parsed<CardText>.Failed>(Incoming.ToCard("%PDF-1.4\n1 0 obj\n<< >>\nstream")).Problems[0].Code);
        string spoken = "# A\n\nNote: the file was made as %PDF-1.4 and PK, {\\rtf too; it was typed again from the printed page for this kitchen.\n\n- 200 g butter";
        Assert.Equal(spoken, Text(Encoding.UTF8.GetBytes(spoken.Replace("%PDF-1.4", "a PDF", StringComparison.Ordinal))).Replace("a PDF", "%PDF-1.4", StringComparison.Ordinal));
    }

    [Fact]
    public void One_null_is_dirt_and_said_and_many_are_another_kind_of_file()
    {
        string text = Text(Encoding.UTF8.GetBytes("# A\n\n- 50\00 g cream\n- \0salt"));
        Dish dish = Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText(text))).Value;
        Assert.Equal([500.0, null], dish.Components[0].Ingredients.SelectMany(l => l.Foods).Select(f => f.Amount));
        Assert.Equal(3, Assert.Single(dish.Remarks, r => r.Kind == "no text").Line);

        Assert.Equal("CRD003", Refused([.. Enumerable.Range(0, 200).Select(i => (byte)(i % 3 == 0 ? 0 : 'a'))]));
        Assert.IsType<Parsed<Dish>.Failed>(CardReader.Read(new CardText("a\0b\0c\0d\0e\0f")));
        Assert.DoesNotContain(Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText("# A\n\n- 500 g cream"))).Value.Remarks, r => r.Kind == "no text");
    }

    [Theory]
    [InlineData("- \u200E500 g cream")]
    [InlineData("- \u202A500 g\u202C cream")]
    [InlineData("\u200F- 500 g cream")]
    [InlineData("\u2067- 5\u200E00 g cream\u2069")]
    [InlineData("- \u2061500 g cream")]
    [InlineData("- 500 g cream")]
    public void Marks_of_direction_are_nothing(string line)
    {
        Dish dish = Assert.IsType<Parsed<Dish>.Ok>(CardReader.Read(new CardText("\u200E# Dish\n\n" + line + "\n- 80 g sugar\n\n1. Mix cream and sugar.\n"))).Value;
        FoodAmount cream = dish.Components[0].Ingredients[0].Foods[0];
        Assert.Equal(("Dish", 500.0, "g", "cream"), (dish.Title, cream.Amount, cream.Unit, cream.Food));
    }
}
