using System.Collections.Immutable;
using Coulisse.Papers.Pages;
using Coulisse.Papers.Pdf;
using Coulisse.Views.Papers;
using UglyToad.PdfPig;

namespace Coulisse.Papers.Tests;

/// <summary>What no sheet likes: shown right, or as a box with a remark; never dropped.</summary>
public sealed class BadInputTests
{
    private static ImmutableArray<PrintedPaper> Print(string card) => PaperPrinter.Print(new PaperBundle { Mark = Bundles.Mark, Batches = [Bundles.Card(card)] }, PaperChoice.All);

    private static string Read(ImmutableArray<PrintedPaper> printed, string kind) => ReadBack.Letters(printed.First(p => p.Paper.Kind == kind).Pdf.Bytes);

    [Fact]
    public void An_ingredient_of_120_signs_without_a_blank_is_whole_on_card_and_weigh_out()
    {
        string food = string.Concat(Enumerable.Range(0, 40).Select(i => $"q{i:00}"));
        Assert.Equal(120, food.Length);
        var printed = Print($"# Odd\n\nServes 4.\n\n- 100 g {food}\n- 50 g water\n\n1. Stir.");

        Assert.All((string[])[CardPaper.Kind, BatchPaper.Kind, AllergenPaper.Kind, LabelPaper.Kind], kind => Assert.Contains(food, Read(printed, kind), StringComparison.Ordinal));
    }

    [Fact]
    public void Four_hundred_lines_are_all_there_with_their_weights_and_the_head_on_every_page()
    {
        string card = "# Long\n\nServes 4.\n\n" + string.Join('\n', Enumerable.Range(1, 400).Select(i => $"- {i + 100} g food{i}x")) + "\n\n1. Stir.";
        var printed = Print(card);
        string read = Read(printed, BatchPaper.Kind);

        Assert.All(Enumerable.Range(1, 400), i => Assert.Contains($"food{i}x{i + 100}g", ReadBack.Squeeze(read.Replace("\u202F", "", StringComparison.Ordinal)), StringComparison.Ordinal));
        using PdfDocument pdf = ReadBack.Open(printed.First(p => p.Paper.Kind == BatchPaper.Kind).Pdf.Bytes);
        Assert.True(pdf.NumberOfPages > 5);
        Assert.All(pdf.GetPages().SkipLast(1), p => Assert.Contains("IngredientWeigh", ReadBack.Letters(p), StringComparison.Ordinal));
    }

    [Fact]
    public void A_card_without_a_title_prints_under_a_name_that_says_so()
    {
        var printed = Print("- 100 g water\n- 20 g caster sugar\n\n1. Stir.");

        Assert.NotEmpty(printed);
        Assert.All(printed, p => Assert.True(p.Pdf.Pages >= 1));
        Assert.All(printed.Where(p => p.Paper.Title.Trim().Length == 0), p => Assert.Contains("(notitle)", ReadBack.Letters(p.Pdf.Bytes), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("חלווה", true)]
    [InlineData("حلاوة طحينية", false)]
    public void Names_from_right_to_left_keep_every_letter(string name, bool silent)
    {
        var printed = Print($"# Box\n\nServes 4.\n\n- 100 g {name}\n- 50 g water\n\n1. Stir.");
        PrintedPaper batch = printed.First(p => p.Paper.Kind == BatchPaper.Kind);
        string read = ReadBack.Letters(batch.Pdf.Bytes);

        Assert.All(name.Where(c => c != ' ').GroupBy(c => c), g => Assert.True(read.Count(c => c == g.Key) >= g.Count(), $"{g.Key} is missing"));
        Assert.Equal(silent, batch.Pdf.Remarks.IsEmpty);
    }

    [Theory]
    [InlineData("🎂")]
    [InlineData("한국")]
    [InlineData("\U0001F9C1")]
    public void A_sign_without_a_face_is_a_box_with_a_remark_and_the_rest_stands(string sign)
    {
        PrintedPaper batch = Print($"# Cake {sign} day\n\nServes 4.\n\n- 100 g flour {sign} fine\n- 50 g water\n\n1. Stir.").First(p => p.Paper.Kind == BatchPaper.Kind);

        Assert.Contains(batch.Pdf.Remarks, r => r.Contains("U+", StringComparison.Ordinal));
        string read = ReadBack.Letters(batch.Pdf.Bytes);
        Assert.Contains("Cake", read, StringComparison.Ordinal);
        Assert.Contains("day", read, StringComparison.Ordinal);
        Assert.Contains("100g", read.Replace("\u202F", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_of_all_that_is_out_of_its_page()
    {
        string long1 = new('w', 120);
        foreach (Paper paper in PaperShelf.Papers(new PaperBundle { Mark = Bundles.Mark, Batches = [Bundles.Card($"# {long1}\n\nServes 4.\n\n- 100 g {long1}\n\n1. {long1} {long1}.")] }))
        {
            if (paper.Kind != LabelPaper.Kind)
            {
                GeometryTests.Lawful(paper, PageFormat.A4);
                GeometryTests.Lawful(paper, PageFormat.Letter);
            }
        }
    }
}
