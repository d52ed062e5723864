using Coulisse.Flows;
using Coulisse.Kitchen.Planning;
using Coulisse.Views.Papers;

namespace Coulisse.Papers.Tests;

/// <summary>After a change the stale sheets are named, only those are printed, and each helper gets what changed.</summary>
public sealed class StaleTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-papers-").FullName;

    public void Dispose() => Directory.Delete(_folder, true);

    private static PaperBundle Moved()
    {
        Plan plan = Bundles.Plan();
        return Bundles.Small() with { Mark = new("later", "Sat 10 Oct 2026 09:00"), Plan = plan with { Twins = plan.Twins.SetItem(0, plan.Twins[0] with { Place = "shelf 3" }) } };
    }

    [Fact]
    public void Only_what_changed_is_printed_again_with_a_note_for_the_one_it_touches()
    {
        PrintOut.Write(Bundles.Small(), PaperChoice.All, _folder);
        PrintedSet again = PrintOut.Write(Moved(), PaperChoice.All, _folder, onlyStale: true);

        Assert.Equal(["brief-bo", "labels", "swap-outs"], again.Stale);
        Assert.Equal(["change-note-bo", "swap-outs", "brief-bo", "labels"], again.Files.Select(f => f.Id));
        string note = ReadBack.Letters(File.ReadAllBytes(Path.Combine(_folder, "change-note-bo.pdf")));
        Assert.Contains("shelf3", note, StringComparison.Ordinal);
        Assert.Contains("shelf2", note, StringComparison.Ordinal);

        // What did not change is not on the note.
        Assert.DoesNotContain("turnthecrust", note, StringComparison.Ordinal);
        Assert.Empty(PrintOut.Write(Moved(), PaperChoice.All, _folder, onlyStale: true).Files);
    }

    [Fact]
    public void A_sheet_that_nothing_prints_any_more_is_named_once()
    {
        PrintOut.Write(Bundles.Small(), PaperChoice.All, _folder);
        PaperBundle without = Bundles.Small() with { Plan = null };
        Assert.Contains("run-sheet", PrintOut.Write(without, PaperChoice.All, _folder).Gone);
        Assert.Empty(PrintOut.Write(without, PaperChoice.All, _folder).Gone);
    }

    [Fact]
    public void A_damaged_list_of_sheets_is_said_and_not_overwritten()
    {
        File.WriteAllText(Path.Combine(_folder, HungSheets.FileName), "{ not a list");
        FormatException e = Assert.Throws<FormatException>(() => PrintOut.Write(Bundles.Small(), PaperChoice.All, _folder));

        Assert.Contains("papers.json", e.Message, StringComparison.Ordinal);
        Assert.Equal("{ not a list", File.ReadAllText(Path.Combine(_folder, HungSheets.FileName)));
    }

    [Fact]
    public void Nothing_half_written_is_left_in_the_folder()
    {
        PrintOut.Write(Bundles.Small(), PaperChoice.All, _folder);
        Assert.Empty(Directory.GetFiles(_folder, "*.part"));
        Assert.All(Directory.GetFiles(_folder, "*.pdf"), f => Assert.StartsWith("%PDF-", File.ReadAllText(f)[..5], StringComparison.Ordinal));
    }
}
