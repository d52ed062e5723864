using System.Collections.Immutable;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Tests.Heat;

/// <summary>Minutes for a reduction against printed equivalents, and laws of time in a bath and thickness.</summary>
public sealed class KillTimeTests
{
    private static Temperature C(double t) => Temperature.FromCelsius(t);

    private static SolidBody Slab(Length mm) => SolidBody.Of(SolidShape.Slab, [mm], Diffusivity.FromSquareMetresPerSecond(1.11e-7), Conductivity.FromWattsPerMetreKelvin(0.48), HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(95));

    private static Organism O(string id) => Organism.All.Single(o => o.Id == id);

    [Fact]
    public void Dwell_of_the_legal_red_meat_line_is_the_printed_table_within_its_fit()
    {
        // FSIS Appendix A, 2021, table 2, 6.5 log: 60.0 °C 12 min, 57.8 °C 28 min (residuals of the line to 13 %)
        ImmutableArray<KillTime.Row> rows = KillTime.Equivalents(O("salmonella-meat-legal"), 6.5);
        Assert.Equal(12, rows.Single(r => r.At == C(60)).Best, 12 * 0.13);
        Assert.All(rows, r => Assert.True(r.Cautious >= r.Best));
        Assert.All(rows.Zip(rows.Skip(1)), p => Assert.True(p.First.Best > p.Second.Best));
        Assert.Throws<ArgumentOutOfRangeException>(() => KillTime.Equivalents(O("salmonella-meat-legal"), 20));
    }

    [Fact]
    public void Time_in_the_bath_is_where_the_reduction_of_the_history_is_met()
    {
        Organism o = O("listeria-meat");
        foreach (double mm in (double[])[10, 20, 25])
        {
            double minutes = KillTime.InMedium(Slab(Length.FromMillimetres(mm)), C(5), C(60), o, o.Best, 6)!.Value.TotalMinutes;
            ImmutableArray<(double, Temperature)> history = [.. Enumerable.Range(0, 4001).Select(i => minutes * i / 4000).Select(m => (m, Slab(Length.FromMillimetres(mm)).CoreAfter(C(5), C(60), Duration.FromMinutes(m))))];
            Assert.Equal(6, Lethality.Log10(o.Best, history, o.Floor, o.Ceiling), 0.02);
        }
    }

    [Fact]
    public void A_legal_line_counts_no_come_up_and_is_never_the_shorter()
    {
        Organism legal = O("salmonella-meat-legal");
        SolidBody bag = Slab(Length.FromMillimetres(20));
        double up = bag.TimeTo(C(5), C(60), C(59.5))!.Value.TotalMinutes;
        double all = KillTime.InMedium(bag, C(5), C(60), legal, legal.Best, 6.5)!.Value.TotalMinutes;
        Assert.Equal(up + (6.5 * legal.Best.At(C(59.5))), all, 1e-6);
        Assert.Null(KillTime.InMedium(bag, C(5), C(54), legal, legal.Best, 6.5));
    }

    [Fact]
    public void Thicker_colder_and_more_logs_are_never_sooner_and_the_thickest_just_meets_it()
    {
        Organism o = O("listeria-poultry");
        double Of(double mm, double bath = 62, double logs = 6) => KillTime.InMedium(Slab(Length.FromMillimetres(mm)), C(5), C(bath), o, o.Hardest, logs)!.Value.TotalMinutes;
        Assert.True(Of(22) > Of(20) && Of(20, 61) > Of(20) && Of(20, 62, 7) > Of(20));
        Length most = KillTime.Thickest(Slab, Duration.FromMinutes(90), C(5), C(62), o, o.Hardest, 6)!.Value;
        Assert.True(Of(most.Millimetres) <= 90 && Of(most.Millimetres + 0.2) > 90);
        Assert.Null(KillTime.Thickest(Slab, Duration.FromMinutes(1), C(5), C(62), o, o.Hardest, 6));
    }
}
