using System.Collections.Immutable;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;
using NodaTime;

namespace Coulisse.Matter.Tests.Heat;

public sealed class UncertaintyLaws
{
    private static readonly HeatCase Food = new(Diffusivity.FromSquareMetresPerSecond(1.4e-7), Diffusivity.FromSquareMetresPerSecond(1.15e-7), Conductivity.FromWattsPerMetreKelvin(0.48), Conductivity.FromWattsPerMetreKelvin(0.46), null, HeatTransferCoefficient.FromWattsPerSquareMetreKelvin(95));

    private static Temperature C(double t) => Temperature.FromCelsius(t);

    [Fact]
    public void Over_a_product_of_two_ranges_the_tenths_and_effects_are_those_worked_by_hand()
    {
        // x in 1..3 and y in 10..11: x·y runs from 10 to 33; x alone moves it by 2·10.5, y alone by 2
        SampledAnswer a = SampledAnswer.Of([new("x", "", 2, 1, 3, ""), new("y", "", 10.5, 10, 11, "")], v => v[0] * v[1], 1000);
        Assert.Equal(21, a.Best);
        Assert.Equal("x", a.Effects[0].Range.What);
        Assert.Equal(21, a.Effects[0].Width, 1e-9);
        Assert.Equal(2, a.Effects[1].Width, 1e-9);
        Assert.InRange(a.Low!.Value, 11.0, 12.1);
        Assert.InRange(a.High!.Value, 30.0, 31.1);
        Assert.InRange(a.Least!.Value, 10, 10.6);
        Assert.InRange(a.Most!.Value, 31.5, 33);
    }

    [Fact]
    public void Each_slice_of_a_range_is_drawn_once()
    {
        List<double> seen = [];
        SampledAnswer.Of([new("x", "", 0.5, 0, 1, "")], v => { seen.Add(v[0]); return v[0]; }, 100);
        Assert.Equal(Enumerable.Range(0, 100), seen.Take(100).Select(x => (int)(x * 100)).Order());
    }

    [Fact]
    public void Best_lies_inside_and_a_core_near_the_bath_depends_most_on_the_bath()
    {
        SampledAnswer near = UncertainCore.Minutes(SolidShape.Slab, [Length.FromMillimetres(20)], C(5), C(60), Food, C(59));
        Assert.Equal("medium", near.Effects[0].Range.What);
        Assert.Null(near.Most);
        SampledAnswer far = UncertainCore.Minutes(SolidShape.Slab, [Length.FromMillimetres(120)], C(5), C(82), Food, C(60));
        Assert.Equal("thickness", far.Effects[0].Range.What);
        Assert.True(far.Least <= far.Best && far.Best <= far.Most && far.Low <= far.High);
    }

    [Fact]
    public void The_worst_kill_of_the_samples_is_below_the_best_estimate()
    {
        SampledAnswer a = UncertainCore.Log10(SolidShape.Slab, [Length.FromMillimetres(20)], C(5), C(60), Food, Duration.FromMinutes(60), Organism.Named("salmonella")[0]);
        Assert.True(a.Least < a.Low && a.Low < a.Best);
        Assert.Equal(6, a.Effects.Length);
    }

    [Fact]
    public void Equal_questions_have_equal_answers()
    {
        SampledAnswer One() => UncertainCore.Minutes(SolidShape.Brick, [.. ((double[])[30, 60, 90]).Select(Length.FromMillimetres)], C(5), C(65), Food, C(60));
        Assert.Equal(One().High, One().High);
        Assert.Equal(One().Low, One().Low);
    }
}
