using Coulisse.Cards;
using Coulisse.Flows;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Tests;
using Coulisse.Views.Papers;
using NodaTime;

namespace Coulisse.Papers.Tests;

/// <summary>Unknown is unknown; a part made alone carries the allergens of what it takes.</summary>
public sealed class AllergenPaperTests
{
    private static TableBlock Matrix(PaperBundle bundle) => PaperShelf.Papers(bundle).First(p => p.Kind == AllergenPaper.Kind).Blocks.OfType<TableBlock>().First();

    private static PaperRow Row(TableBlock t, string name) => t.Rows.First(r => r.Kind != RowKind.Group && r.Cells[0].Text.StartsWith(name, StringComparison.Ordinal));

    private static string Cell(TableBlock t, PaperRow row, string head) => row.Cells[t.Columns.ToList().FindIndex(c => c.Head == head)].Text;

    [Fact]
    public void A_food_nobody_knows_leaves_a_question_in_every_cell_and_is_named()
    {
        TableBlock t = Matrix(new PaperBundle { Mark = Bundles.Mark, Batches = [Bundles.Card("# Pot\n\nServes 4.\n\n- 100 g whole milk\n- 30 g zorbleflakes\n\n1. Stir.")], Code = "eu" });
        PaperRow row = Row(t, "Pot");

        Assert.Equal("YES", Cell(t, row, "milk"));
        Assert.Equal("ask", Cell(t, row, "eggs"));
        Assert.Equal("zorbleflakes", Cell(t, row, "Not known"));
        Assert.DoesNotContain(row.Cells, c => c.Text == "–");
    }

    [Fact]
    public void With_every_food_known_nothing_is_asked()
    {
        TableBlock t = Matrix(new PaperBundle { Mark = Bundles.Mark, Batches = [Bundles.Card("# Pot\n\nServes 4.\n\n- 100 g whole milk\n- 30 g caster sugar\n\n1. Stir.")], Code = "eu" });
        PaperRow row = Row(t, "Pot");

        Assert.Equal("–", Cell(t, row, "eggs"));
        Assert.DoesNotContain(row.Cells, c => c.Text == "ask");
    }

    [Fact]
    public void A_table_of_nothing_but_heads_of_groups_keeps_them()
    {
        TableBlock heads = new([new("a"), new("b")], [PaperRow.Group("first"), PaperRow.Group("second")]);
        Assert.Equal(heads.Columns, heads.Tidy().Columns);
        Assert.DoesNotContain(PaperShelf.Papers(new PaperBundle { Mark = Bundles.Mark, Batches = [Bundles.Card("# Water\n\nServes 4.\n\n- 100 g water\n\n1. Stir.")], Code = "eu" }).First(p => p.Kind == AllergenPaper.Kind).Blocks, b => b is HeadingBlock { Text: "Why" });
    }

    [Fact]
    public void A_part_made_alone_carries_what_it_takes_from_the_rest_of_its_card()
    {
        PaperBundle demo = Demo.Unplanned();
        TableBlock t = Matrix(demo);
        PaperRow ramekin = Row(t, "Ramekin");

        Assert.Equal("YES", Cell(t, ramekin, "milk"));
        Assert.Equal("YES", Cell(t, ramekin, "egg"));
        Assert.StartsWith("may", Cell(t, ramekin, "gluten cereals"), StringComparison.Ordinal);

        // The coeliac's plate says the same: cornflour may hold wheat, nothing that surely does is on it.
        Paper sheet = PaperShelf.Papers(demo).First(p => p.Kind == AllergenPaper.Kind);
        TableBlock guests = sheet.Blocks.OfType<TableBlock>().Skip(1).First();
        int seat = guests.Rows.ToList().FindIndex(r => r.Kind == RowKind.Group && r.Cells[0].Text.StartsWith("Seat 17", StringComparison.Ordinal));
        PaperRow plate = guests.Rows.Skip(seat).First(r => r.Kind != RowKind.Group && r.Cells[0].Text.StartsWith("Ramekin", StringComparison.Ordinal));
        Assert.DoesNotContain("STILL IN IT", plate.Cells[2].Text, StringComparison.Ordinal);
        Assert.Contains("wheat", plate.Cells[2].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_box_label_of_that_guest_lists_the_foods_that_were_taken()
    {
        LabelBlock label = PaperShelf.Papers(Demo.Unplanned()).First(p => p.Kind == BoxLabelPaper.Kind).Blocks.OfType<LabelBlock>().First(l => l.Name.StartsWith("Seat 17", StringComparison.Ordinal));
        string text = string.Join(' ', label.Texts);

        Assert.Contains("quark", text, StringComparison.Ordinal);
        Assert.Contains("MILK", text, StringComparison.Ordinal);
        Assert.DoesNotContain("WALNUT", text, StringComparison.Ordinal);
    }
}
