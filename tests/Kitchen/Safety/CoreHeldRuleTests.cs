using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Kitchen.Tests.Safety;

public sealed class CoreHeldRuleTests
{
    private static Findings Review(double? thickness, double? minutes, double bath = 82, TemperatureOf where = TemperatureOf.Bath)
    {
        Step fill = new() { Span = new Span(0, 1, 3), Text = "Fill", Anchor = new Anchor("bag", 1, "a"), ThicknessMillimetres = thickness, Temperatures = [new StepTemperature(TemperatureOf.Food, 10, "not warmer than 10 °C") { Bound = Bound.AtMost }] };
        Step cook = new()
        {
            Span = new Span(9, 1, 4), Text = "Bath", Anchor = new Anchor("bag", 2, "b"),
            Times = minutes is { } m ? [new StepTime(m, m, TimeKind.Cook, "")] : [],
            Temperatures = [new StepTemperature(where, bath, ""), new StepTemperature(TemperatureOf.Core, 80, "") { Bound = Bound.AtLeast, HoldMinutes = 10 }],
        };
        Component c = new() { Name = "Bag", Steps = [fill, cook] };
        Dish dish = new() { Title = "Card", Components = [c] };
        return SafetyReview.Review(new WeighedDish(dish, [new WeighedComponent(c, ImmutableArray<WeighedLine>.Empty)], "au"), "au");
    }

    [Fact]
    public void A_bag_20_mm_thick_is_stopped_with_a_computed_remedy()
    {
        Finding f = Assert.Single(Review(20, 45).All);
        Assert.Equal(Severity.Stop, f.Severity);
        Assert.Equal(4, f.Line);
        Assert.Contains("79.7 °C", f.What, StringComparison.Ordinal);
        Assert.Equal("56.9 min needed", f.Value);
        Assert.Contains("45 min → 57 min", f.Remedy, StringComparison.Ordinal);
        Assert.Contains("81 °C", f.Remedy, StringComparison.Ordinal);
        Assert.Contains("74 min", f.Remedy, StringComparison.Ordinal);
        // Hand reckoning by the same published series gives 16.3 and 13.2 mm, rounded; here both are cut to the lower tenth.
        Assert.Matches(@"at most 16\.[23] mm", f.Remedy);
        Assert.Matches(@"or 13\.[12] mm", f.Remedy);
    }

    [Fact]
    public void A_bag_10_mm_thick_is_silent_and_has_a_control_point()
    {
        Findings found = Review(10, 45);
        Assert.Empty(found.All);
        Assert.Single(found.ControlPoints);
    }

    [Fact]
    public void What_holds_only_as_written_is_a_warning() => Assert.Equal(Severity.Warn, Assert.Single(Review(10, 30).All).Severity);

    [Theory]
    [InlineData(null, 45.0)]
    [InlineData(20.0, null)]
    [InlineData(900.0, 45.0)]
    public void A_missing_or_impossible_figure_cannot_be_shown_safe(double? thickness, double? minutes)
    {
        Finding f = Assert.Single(Review(thickness, minutes).All);
        Assert.Equal(Severity.Stop, f.Severity);
        Assert.StartsWith("It cannot be shown safe", f.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bath_below_the_limit_is_stopped()
    {
        Finding f = Assert.Single(Review(10, 600, bath: 79).All);
        Assert.Equal(Severity.Stop, f.Severity);
        Assert.Contains("never gets there", f.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void An_oven_is_left_to_the_probe_and_says_so() => Assert.Equal(Severity.Note, Assert.Single(Review(null, 85, bath: 180, where: TemperatureOf.Oven).All).Severity);

    [Fact]
    public void An_unknown_code_of_practice_is_refused() => Assert.Throws<ArgumentException>(() => SafetyReview.Review(new WeighedDish(new Dish { Title = "x" }, [], "au"), "xx"));
}
