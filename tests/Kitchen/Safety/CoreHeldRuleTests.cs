using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Cards.Reading;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;
using Coulisse.Tests;

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
    public void A_bag_20_mm_thick_of_unknown_food_is_stopped_with_a_computed_remedy()
    {
        Finding f = Assert.Single(Review(20, 45).All);
        Assert.Equal(Severity.Stop, f.Severity);
        Assert.Equal(4, f.Line);
        Assert.Contains("composition is not known", f.Source, StringComparison.Ordinal);
        // The same published series summed by a separate script, 0.995e-7 m²/s and 0.4 W/(m·K): 60.42 min, 78.98 °C, 78.6 min, 15.61 and 12.64 mm.
        Assert.Contains("79.0 °C", f.What, StringComparison.Ordinal);
        Assert.Equal("60.4 min needed", f.Value);
        Assert.Contains("45 min → 61 min", f.Remedy, StringComparison.Ordinal);
        Assert.Contains("79 min", f.Remedy, StringComparison.Ordinal);
        Assert.Contains("at most 15.6 mm", f.Remedy, StringComparison.Ordinal);
        Assert.Contains("or 12.6 mm", f.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("royale-draft.md", 1)]
    [InlineData("starter.md", 0)]
    [InlineData("tray-bake-pear-quark.md", 0)]
    [InlineData("slice-buckwheat-plum.md", 0)]
    public void Of_the_demo_cards_only_the_draft_is_stopped(string card, int stops)
    {
        string path = Path.Combine(SharedData.Repository, "examples", "demo", "cards", card);
        Findings found = CardReader.Read(new CardText(File.ReadAllText(path), card)).Match(d => SafetyReview.Review(Weighing.Weigh(d, null), "au"), p => throw new InvalidOperationException(string.Join("; ", p)));
        Assert.Equal(stops, found.All.Count(f => f.Severity == Severity.Stop));
        Assert.DoesNotContain(found.All, f => f.Severity == Severity.Warn);
        Assert.All(found.All.Where(f => f.Severity == Severity.Stop), f =>
        {
            Assert.Contains("Choi and Okos", f.Source, StringComparison.Ordinal);
            // The scenario's own reckoning (a separate script, 1.15e-7 m²/s, 0.46, h 95): 79.67 °C after 45 min, 56.9 min needed, 73.6 with bath and thickness off, 16.3 or 13.2 mm.
            Assert.Contains("79.7 °C", f.What, StringComparison.Ordinal);
            Assert.Equal("56.9 min needed", f.Value);
            Assert.Contains("45 min → 57 min", f.Remedy, StringComparison.Ordinal);
            Assert.Contains("74 min", f.Remedy, StringComparison.Ordinal);
            Assert.Matches(@"at most 16\.[23] mm", f.Remedy);
            Assert.Matches(@"or 13\.[12] mm", f.Remedy);
        });
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
