using Coulisse.Matter.Reference;

namespace Coulisse.Matter.Tests.Reference;

/// <summary>Reading our own tables, whole ones and malformed ones.</summary>
public sealed class ReferenceTableTests
{
    private const string Head = "# Title: t\n# Source: s: more\n#Licence:l\n# Opened: o\n# a remark\n# Units: u\n";

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Lines_end_as_any_machine_ends_them(string end)
    {
        ReferenceTable table = Read((Head + "a\tb\n1\t2\n\n\t\n#3\t4").Replace("\n", end, StringComparison.Ordinal));

        Assert.Equal(["a", "b"], table.Columns);
        Assert.Equal([["1", "2"], ["", ""], ["#3", "4"]], table.Rows);
        Assert.Equal(3, table.Rows.Count);
        Assert.Equal("4", table.Rows[2][table.Column("b")]);
        Assert.Equal("s: more", table.Head["Source"]);
        Assert.Equal("l", table.Head["Licence"]);
    }

    [Theory]
    [InlineData("", "x: no column line.")]
    [InlineData(Head, "x: no column line.")]
    [InlineData("a\tb\n1\t2", "x: the head lacks \"# Title:\". Every table says where its figures are from.")]
    [InlineData("\n" + Head, "x: the head lacks \"# Title:\". Every table says where its figures are from.")]
    [InlineData(Head + "# Opened: \na\n", "x: the head lacks \"# Opened:\". Every table says where its figures are from.")]
    [InlineData(Head + "a\tb\n1\t2\n\n1\n", "x, line 10: 1 cells where the column line has 2.")]
    [InlineData(Head + "a\tb\n1\t2\t", "x, line 8: 3 cells where the column line has 2.")]
    public void A_malformed_table_is_refused_with_the_place(string text, string message) => Assert.Equal(message, Assert.Throws<FormatException>(() => Read(text)).Message);

    [Fact]
    public void A_column_stands_once() => Assert.Contains("Key: a", Assert.Throws<ArgumentException>(() => Read(Head + "a\tb\ta\n")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_column_that_is_not_there_is_named() => Assert.Equal("x: there is no column c.", Assert.Throws<FormatException>(() => Read(Head + "a\tb\n").Column("c")).Message);

    [Fact]
    public void Every_shipped_table_is_the_same_from_the_assembly_and_from_text()
    {
        foreach (string name in ReferenceTable.Names)
        {
            using StreamReader reader = new(typeof(ReferenceTable).Assembly.GetManifestResourceStream(name)!);
            ReferenceTable text = ReferenceTable.Read(name, reader);
            ReferenceTable shipped = ReferenceTable.Load(name);

            Assert.Equal(text.Head, shipped.Head);
            Assert.Equal(text.Columns, shipped.Columns);
            Assert.Equal(text.Rows, shipped.Rows);
        }
    }

    private static ReferenceTable Read(string text) => ReferenceTable.Read("x", new StringReader(text));
}
