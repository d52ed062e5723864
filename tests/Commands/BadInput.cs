using System.Text;

namespace Coulisse.Commands.Tests;

/// <summary>Bad input: the place, the remedy, the exit code, nothing half-written.</summary>
public sealed class BadInput : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-bad-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("read", "CRD001", "Type a title")]
    [InlineData("weigh", "CRD001", "Type a title")]
    [InlineData("safety", "CRD001", "Type a title")]
    [InlineData("plan", "OCC001", "Write a day")]
    public void An_empty_file(string command, string code, string remedy)
    {
        File.WriteAllText(Path.Combine(_folder, "empty.md"), "");
        Refused(Bench.In(_folder, command, "empty.md"), 1, "empty.md", code, remedy);
    }

    [Theory]
    [InlineData("read", "CRD003")]
    [InlineData("plan", "OCC003")]
    public void A_binary_file(string command, string code)
    {
        File.WriteAllBytes(Path.Combine(_folder, "photo.md"), [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 0x0D, .. Enumerable.Range(0, 3000).Select(i => (byte)(i * 31 % 256))]);
        Refused(Bench.In(_folder, command, "photo.md"), 1, "photo.md", code, "Save it as text");
    }

    [Fact]
    public void A_text_beyond_five_megabytes()
    {
        StringBuilder big = new("# Big\n\n");
        while (big.Length <= 5 * 1024 * 1024)
        {
            big.Append("- 100 g wheat flour\n");
        }

        File.WriteAllText(Path.Combine(_folder, "big.md"), big.ToString());
        Refused(Bench.In(_folder, "weigh", "big.md"), 1, "big.md", "CRD002", "Split it");
    }

    [Theory]
    [InlineData("read")]
    [InlineData("plan")]
    [InlineData("safety")]
    public void A_path_that_is_not_there(string command) => Refused(Bench.In(_folder, command, "nowhere.md"), 3, "nowhere.md", "There is no file");

    [Fact]
    public void A_sheet_with_an_unknown_heading()
        => Refused(Sheet("## Circuits", "## Weather"), 1, "line 62", "“Weather” is no heading", "Circuits", "OCC004");

    [Fact]
    public void A_person_booked_outside_any_window()
        => Refused(Sheet("| floor | – | 13:00 to 15:10 |", "| floor | – | 17:00 to 19:10 |"), 1, "line 28", "Tomasz", "outside any prep window", "OCC006");

    [Fact]
    public void The_same_sheet_unspoilt_is_not_refused()
    {
        Ran ran = Bench.Run("cost", Bench.Demo("occasion.md"), "--prices", Bench.Demo("prices.csv"), "--json");
        Assert.Equal(0, ran.Exit);
    }

    [Fact]
    public void A_card_the_sheet_names_and_nobody_has_leaves_no_paper_half_written()
    {
        Ran ran = Sheet("cards/starter.md", "cards/gone.md", "print", "--out", "papers");
        Refused(ran, 1, "line 15", "cards/gone.md", "OCC023");
        Assert.False(Directory.Exists(Path.Combine(_folder, "papers")), "a folder of papers was begun");
    }

    [Fact]
    public void An_unknown_command_and_a_missing_argument_are_wrong_usage()
    {
        Assert.Equal(2, Bench.Run("weigh").Exit);
        Assert.Equal(2, Bench.Run("weig", "x.md").Exit);
    }

    private Ran Sheet(string old, string spoilt, string command = "plan", params string[] rest)
    {
        string text = File.ReadAllText(Bench.Demo("occasion.md"));
        Assert.Contains(old, text, StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(_folder, "occasion.md"), text.Replace(old, spoilt, StringComparison.Ordinal));
        Directory.CreateDirectory(Path.Combine(_folder, "cards"));
        foreach (string card in Directory.EnumerateFiles(Bench.Demo("cards")))
        {
            File.Copy(card, Path.Combine(_folder, "cards", Path.GetFileName(card)));
        }

        return Bench.In(_folder, [command, "occasion.md", .. rest]);
    }

    private static void Refused(Ran ran, int exit, params string[] says)
    {
        Assert.Equal(exit, ran.Exit);
        Assert.Empty(ran.Out);
        Assert.All(says, s => Assert.Contains(s, ran.Error, StringComparison.Ordinal));
    }
}
