using Coulisse.Matter.Quantities;

namespace Coulisse.Matter.Tests;

public sealed class TrueMinusTests
{
    [Theory]
    [InlineData("freezes from -11.9 °C", "freezes from −11.9 °C")]
    [InlineData("-20 °C (-35)", "−20 °C (−35)")]
    [InlineData("3-402.11, 2026-10-10, low-fat", "3-402.11, 2026-10-10, low-fat")]
    public void A_hyphen_before_a_figure_is_a_minus_and_others_stay(string text, string printed) => Assert.Equal(printed, TrueMinus.In(text));
}
