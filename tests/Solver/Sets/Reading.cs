using Coulisse.Gauge.Planning.Reading;
using Coulisse.Kitchen.Planning.Model;

namespace Coulisse.Solver.Tests.Sets;

/// <summary>Readers of the outside formats, on a file of our own so small that every number is seen.</summary>
public sealed class Reading
{
    private const string Sm = """
        jobs (incl. supersource/sink ):  4
          - renewable                 :  1   R
          - nonrenewable              :  1   N
        PRECEDENCE RELATIONS:
        jobnr.    #modes  #successors   successors
           1        1          2           2   3
           2        2          1           4
           3        1          1           4
           4        1          0
        ****
        REQUESTS/DURATIONS:
        jobnr. mode duration  R 1  N 1
        ----
          1      1     0       0    0
          2      1     3       2    0
                 2     5       1    4
          3      1     4       2    1
          4      1     0       0    0
        ****
        RESOURCEAVAILABILITIES:
          R 1  N 1
            3    5
        """;

    private const string Sch = "1\t1\t0\t0\r\n0\t1\t1\t1\t[0]\r\n\r\n1\t1\t2\t2\t0\t[4]\t[-3]\r\n2\t1\t0\r\n0\t1\t0\t0\r\n1\t1\t4\t2\r\n2\t1\t0\t0\r\n2\r\n";

    [Fact]
    public void A_multi_mode_file_gives_its_jobs_modes_demands_and_stocks()
    {
        SchedulingProblem p = ProGenReader.Read("own.mm", Sm);

        Assert.Equal([1, 2, 1, 1], p.Activities.Select(a => a.Modes.Length));
        Assert.Equal(new Demand(0, 4), Assert.Single(p.Activities[1].Modes[1].Uses));
        Assert.Equal(new Demand(0, 2), Assert.Single(p.Activities[2].Modes[0].Demands));
        Assert.Equal([(0, 1), (0, 2), (1, 3), (2, 3)], p.Lags.Select(l => (l.From, l.To)));
        Assert.Equal((3, 5), (p.Resources[0].Capacity, p.Stocks[0].Amount));
    }

    [Fact]
    public void A_file_with_longest_waits_gives_lags_from_start_to_start_of_either_sign()
    {
        SchedulingProblem p = ProGenMaxReader.Read("own.sch", Sch);

        Assert.Equal([(0, 1, 0), (1, 2, 4), (1, 0, -3)], p.Lags.Select(l => (l.From, l.To, l.Least)));
        Assert.All(p.Lags, l => Assert.Equal((Edge.Start, Edge.Start), (l.FromEdge, l.ToEdge)));
        Assert.Equal(0, p.Activities[0].FixedStart);
    }

    [Theory]
    [InlineData("   3        1          1           4", "   3        1          2           4", "line 8")]
    [InlineData("   2        2          1           4", "   2        2          1           9", "no job 9")]
    [InlineData("  3      1     4       2    1", "  3      1     4       2", "line 17")]
    [InlineData("    3    5", "    3", "capacities")]
    [InlineData("RESOURCEAVAILABILITIES", "RESOURCES", "RESOURCEAVAILABILITIES")]
    [InlineData(" 4   \n", "", "")]
    public void A_damaged_file_is_refused_with_its_place(string from, string to, string said)
    {
        if (said.Length == 0)
        {
            // Near miss: line ends of another system change nothing.
            Assert.Equal(4, ProGenReader.Read("own.mm", Sm.ReplaceLineEndings("\r\n")).Activities.Length);
            return;
        }

        Assert.Contains(from, Sm, StringComparison.Ordinal);
        InvalidDataException e = Assert.Throws<InvalidDataException>(() => ProGenReader.Read("own.mm", Sm.Replace(from, to, StringComparison.Ordinal)));
        Assert.Contains(said, e.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[-3]", "[x]")]
    [InlineData("1\t1\t4\t2", "1\t1\t4")]
    [InlineData("2\t1\t0\r\n", "")]
    public void A_damaged_file_with_longest_waits_is_refused(string from, string to)
        => Assert.Throws<InvalidDataException>(() => ProGenMaxReader.Read("own.sch", Sch.Replace(from, to, StringComparison.Ordinal)));
}
