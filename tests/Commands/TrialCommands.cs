namespace Coulisse.Commands.Tests;

/// <summary>A trial from the printed sheet to the summary, as a person does it.</summary>
public sealed class TrialCommands : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coulisse-trial").FullName;

    public void Dispose() => Directory.Delete(_folder, true);

    [Fact]
    public void A_sheet_is_printed_filled_in_kept_three_times_and_summed_up()
    {
        File.WriteAllText(Path.Combine(_folder, "card.md"), "# Leek soup\n\n- 600 g leek\n- 500 g stock\n\n1. Slice the leek.\n");
        Ran sheet = Bench.In(_folder, "trial", "sheet", "card.md");
        Assert.Equal(0, sheet.Exit);
        Assert.Contains("| leek | 600 | |", sheet.Out);
        string filled = sheet.Out.Replace("Good run, or not a good run?", "Good run.", StringComparison.Ordinal).Replace("YYYY-MM-DD by NAME", "2026-03-01 by Ada", StringComparison.Ordinal)
            .Replace("Slice the leek. | |", "Slice the leek. | 12 |", StringComparison.Ordinal).Replace("| Leek soup | | | |", "| Leek soup | 1100 | 1040 | 20 |", StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(_folder, "trial.md"), filled);
        for (int i = 1; i <= 3; i++)
        {
            Ran kept = Bench.In(_folder, "trial", "keep", "trial.md", "--card", "card.md", "--data", "kitchen");
            Assert.True(kept.Exit == 0, kept.Error);
            Assert.Equal(i == 3, Bench.In(_folder, "trial", "summary", "--card", "Leek soup", "--data", "kitchen", "--json").Json.GetProperty("standardised").GetBoolean());
        }

        Assert.Equal(3, Bench.In(_folder, "trial", "list", "leek soup", "--data", "kitchen").Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        // another kitchen of the same store has no such card
        Assert.Equal(1, Bench.In(_folder, "trial", "list", "leek soup", "--data", "kitchen", "--kitchen", "other").Exit);
        Assert.Equal(0, Bench.In(_folder, "backup", "b.db", "--restore", "--data", "kitchen").Exit);
        Ran restored = Bench.In(_folder, "restore", "b.db", "--data", "elsewhere");
        Assert.True(restored.Exit == 0, restored.Error);
        Assert.Equal(3, Bench.In(_folder, "trial", "list", "leek soup", "--data", "elsewhere").Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public void Three_good_sheets_teach_the_balance_what_a_part_weighs_and_two_do_not()
    {
        File.WriteAllText(Path.Combine(_folder, "card.md"), "# Leek dish\n\nServes 10.\n\nOne plate: 60 g beef jus.\n\n## Beef jus\n\nMakes 600 g.\n\n- 2 kg stock\n\n1. Reduce at a steady boil, about 60 min.\n");
        for (int i = 1; i <= 3; i++)
        {
            File.WriteAllText(Path.Combine(_folder, $"t{i}.md"), $"# Trial of Leek dish\n\nGood run.\n\n## Came out\n| Part | In, g | Out, g | Left behind, g |\n|---|---|---|---|\n| Beef jus | 2000 | {540 + (6 * (i - 1))} | 10 |\n");
        }

        Ran two = Bench.In(_folder, "balance", "card.md", "--guests", "10", "--over", "0", "--trials", "t1.md", "t2.md", "--json");
        Ran three = Bench.In(_folder, "balance", "card.md", "--guests", "10", "--over", "0", "--trials", "t1.md", "t2.md", "t3.md", "--json");
        Assert.Equal((600.0, ""), (two.Json.GetProperty("parts")[0].GetProperty("made").GetDouble(), two.Json.GetProperty("parts")[0].GetProperty("learnt").GetString()));
        // by hand: 600 g wanted, 540 at the least: 1.1111 times the card, which makes 546 · 1.1111 = 606.7 on the mean
        Assert.Equal(606.667, three.Json.GetProperty("parts")[0].GetProperty("made").GetDouble(), 3);
        Assert.Equal(600, three.Json.GetProperty("parts")[0].GetProperty("madeLeast").GetDouble(), 3);
        Assert.Contains("learnt from 3 runs: 546 g, 540 to 552", three.Json.GetProperty("parts")[0].GetProperty("learnt").GetString());
        Assert.Contains("540 to 552", Bench.In(_folder, "balance", "card.md", "--guests", "10", "--over", "0", "--trials", "t1.md", "t2.md", "t3.md").Out);
    }

    [Fact]
    public void A_slip_is_named_with_its_line_and_nothing_is_kept()
    {
        File.WriteAllText(Path.Combine(_folder, "trial.md"), "# Trial of Leek soup\n\n## Times\n| Part | Step | Minutes |\n|---|---|---|\n| | Slice | soon |\n");
        Ran ran = Bench.In(_folder, "trial", "keep", "trial.md", "--data", "kitchen");
        Assert.Equal(1, ran.Exit);
        Assert.Contains("line 6", ran.Error);
        Assert.Contains("TRI002", ran.Error);
    }

    [Fact]
    public void A_record_of_the_example_is_printed_with_what_is_planned_and_kept()
    {
        Ran sheet = Bench.Run("record", "sheet", Bench.Demo("occasion.md"));
        Assert.Equal(0, sheet.Exit);
        Assert.Contains("covers planned", sheet.Out);
        File.WriteAllText(Path.Combine(_folder, "record.md"), sheet.Out);
        Ran kept = Bench.In(_folder, "record", "keep", "record.md", "--occasion", Bench.Demo("occasion.md"), "--data", "kitchen");
        Assert.True(kept.Exit == 0, kept.Error);
        Assert.Single(Bench.In(_folder, "record", "list", "--data", "kitchen").Out.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }
}
