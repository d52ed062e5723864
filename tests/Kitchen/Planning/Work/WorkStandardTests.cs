using Coulisse.Cards;
using Coulisse.Kitchen.Planning.Work;
using Coulisse.Matter.Reference;
using CsCheck;

namespace Coulisse.Kitchen.Tests.Planning.Work;

public class WorkStandardTests
{
    [Fact]
    public void Every_operation_a_card_can_name_has_a_standard()
    {
        ReferenceTable words = ReferenceTable.Load("reading/operations.tsv");
        string[] without = [.. words.Rows.Select(r => r[words.Column("operation")]).Distinct().Where(o => o != "-" && WorkStandards.Find(o) is null)]; // "-": a word that looks like work and is none
        Assert.NotEmpty(words.Rows);
        Assert.Empty(without);
        Assert.Null(WorkStandards.Find("juggle"));
    }

    // Sums worked by hand from the rows: 1.5 + 4 × 3; 1 + 0.06 × 120; 1 + 3.3 × 5; three loads of 2, and 8 × 3.
    [Theory]
    [InlineData("peel_root_round", 3, null, 13.5, 13.5)]
    [InlineData("stamp_discs", 120, null, 8.2, 8.2)]
    [InlineData("boil_water", 5, null, 17.5, 1.5)]
    [InlineData("deep_fry", 3, 1.0, 30, 24)]
    public void Minutes_are_the_fixed_part_a_load_and_the_part_a_unit(string operation, double amount, double? load, double elapsed, double hands)
    {
        WorkEstimate e = WorkStandards.Find(operation)!.For(amount, load);
        Assert.Equal(elapsed, e.Elapsed.Best, 6);
        Assert.Equal(hands, e.Hands.Best, 6);
    }

    // EPIC-KITCHENS-100 (annotations at commit ea8b404): median seconds of narrated pieces of action by home cooks. A long job is
    // narrated in pieces, so a median is a floor: our figure for one piece of middle size must not lie under it, nor above ten times it.
    [Theory]
    [InlineData("peel_root_round", 0.150, 11)]
    [InlineData("peel_root_long", 0.100, 6)]
    [InlineData("peel_bulb", 0.150, 9)]
    [InlineData("crack_eggs", 1, 1.2)]
    [InlineData("wash_knife_board", 1, 3.5)]
    [InlineData("wash_pan", 1, 7.5)]
    public void A_piece_takes_no_less_than_home_cooks_were_filmed_to_take(string operation, double amount, double seconds)
    {
        WorkStandard s = WorkStandards.Find(operation)!;
        Assert.InRange(60 * amount * s.Each.High, seconds, 100 * seconds);
        Assert.InRange(60 * amount * s.Each.Best, seconds, 40 * seconds);
    }

    [Fact]
    public void More_never_takes_less_and_hands_never_exceed_the_minutes() =>
        Gen.Select(Gen.Int[0, WorkStandards.All.Length - 1].Select(i => WorkStandards.All[i]), Gen.Double[0, 200], Gen.Double[0, 50], Gen.Double[0.1, 20]).Sample((s, q, more, load) =>
        {
            WorkEstimate a = s.For(q, load);
            WorkEstimate b = s.For(q + more, load);
            return a.Elapsed.Low <= a.Elapsed.Best + 1e-9 && a.Elapsed.Best <= a.Elapsed.High + 1e-9
                && b.Elapsed.Best >= a.Elapsed.Best - 1e-9 && b.Hands.Best >= a.Hands.Best - 1e-9
                && a.Hands.Best <= a.Elapsed.Best + 1e-9 && a.Hands.High <= a.Elapsed.High + 1e-9;
        });

    [Fact]
    public void A_stated_time_keeps_its_minutes_and_takes_only_the_hands_from_the_table()
    {
        WorkEstimate bake = WorkStandards.Find("bake")!.Lasting(Minutes.Exactly(45));
        Assert.Equal(45, bake.Elapsed.Best);
        Assert.Equal(3, bake.Hands.Best);
        Assert.Equal(2, WorkStandards.Find("bake")!.Lasting(Minutes.Exactly(2)).Hands.Best);
        Assert.Equal("", bake.Assumed);
    }

    [Fact]
    public void What_was_assumed_is_said_with_its_source() =>
        Assert.Equal(
            "work standard stamp_discs, 120 piece (assumed: common practice, no source)",
            WorkStandards.Find("stamp_discs")!.For(120).Assumed);

    [Fact]
    public void A_row_out_of_order_or_with_an_unknown_word_is_refused_by_name()
    {
        Assert.Contains("fixed is not low, best, high", Refused("chop\tkg\t1\t2\t3\t1\t1\t1\tlinear\tall"), StringComparison.Ordinal);
        Assert.Contains("grows is one of Linear", Refused("chop\tkg\t2\t1\t3\t1\t1\t1\tsideways\tall"), StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => WorkStandards.Find("bake")!.For(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => WorkStandards.Find("bake")!.For(1, 0));

        static string Refused(string begin)
        {
            string head = "# Title: t\n# Source: s\n# Licence: l\n# Opened: o\n# Units: u\n"
                + "operation\tunit\tfixed\tfixed_low\tfixed_high\teach\teach_low\teach_high\tgrows\thands\thands_share\thands_ends\tpeople\tloud\tkit\twait\twait_low\twait_high\tskill\tsource\n";
            ReferenceTable table = ReferenceTable.Read("planted", new StringReader(head + begin + "\t1\t0\t1\tno\t\t0\t0\t0\t1\tnone\n"));
            return Assert.Throws<FormatException>(() => WorkStandards.Read(table)).Message;
        }
    }

    [Fact]
    public void Tending_of_a_fold_is_all_and_of_a_proof_none()
    {
        Assert.Equal(Tending.All, WorkStandards.Find("fold_in")!.Tending);
        Assert.Equal(Tending.None, WorkStandards.Find("prove_bulk")!.Tending);
        Assert.True(WorkStandards.Find("blend")!.Loud);
        Assert.False(WorkStandards.Find("fold_in")!.Loud);
    }
}
