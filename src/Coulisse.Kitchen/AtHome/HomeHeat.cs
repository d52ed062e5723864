using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Heat;
using Coulisse.Matter.Quantities;

namespace Coulisse.Kitchen.AtHome;

/// <summary>A bath step whose figures had to change for a pan.</summary>
/// <param name="Line">Card line of the step.</param>
/// <param name="Celsius">Setting of the pan.</param>
/// <param name="Minutes">Minutes in it.</param>
/// <param name="Words">What changed and why.</param>
public sealed record HomeHeatChange(int Line, double Celsius, double Minutes, string Words);

/// <summary>A bath becomes a watched pan that swings: is the core limit kept at its coldest, and if not, at which setting and after how long?</summary>
/// <remarks>The setting may rise by 4 K and the time double, no more: beyond that it is another recipe. Heat model and start as the safety rule takes them, the piece 10 % thicker than written.</remarks>
internal static class HomeHeat
{
    private const int MostRise = 4;
    private const double MostTimes = 2;
    private const double Start = 5;

    /// <summary>The dish with its bath steps made fit for a pan where that is possible.</summary>
    public static (WeighedDish Dish, ImmutableArray<HomeHeatChange> Changes) Fit(WeighedDish dish, HomeKit kit)
    {
        List<HomeHeatChange> changes = [];
        ImmutableArray<WeighedComponent> parts = [.. dish.Components.Select(c =>
        {
            double? thick = null;
            ImmutableArray<Step>.Builder steps = ImmutableArray.CreateBuilder<Step>();
            foreach (Step step in c.Component.Steps)
            {
                thick = step.ThicknessMillimetres ?? thick;
                HomeHeatChange? change = thick is { } mm ? Change(c, step, mm, kit) : null;
                if (change is not null)
                {
                    changes.Add(change);
                }

                steps.Add(change is null ? step : With(step, change.Celsius, change.Minutes));
            }

            return c with { Component = c.Component with { Steps = steps.ToImmutable() } };
        })];
        return (dish with { Components = parts, Dish = dish.Dish with { Components = [.. parts.Select(p => p.Component)] } }, [.. changes]);
    }

    /// <summary>The dish as it is judged: every bath at the coldest the pan swings to.</summary>
    public static WeighedDish AtColdest(WeighedDish dish, HomeKit kit)
    {
        ImmutableArray<WeighedComponent> parts = [.. dish.Components.Select(c => c with
        {
            Component = c.Component with { Steps = [.. c.Component.Steps.Select(s => s with { Temperatures = [.. s.Temperatures.Select(t => t.Of == TemperatureOf.Bath ? t with { Celsius = t.Celsius - kit.PanSwing } : t)] })] },
        })];
        return dish with { Components = parts, Dish = dish.Dish with { Components = [.. parts.Select(p => p.Component)] } };
    }

    private static HomeHeatChange? Change(WeighedComponent c, Step step, double mm, HomeKit kit)
    {
        StepTemperature? core = step.Temperatures.Where(t => t.Of == TemperatureOf.Core && t.Bound != Bound.AtMost).MaxBy(t => t.Celsius);
        StepTemperature? bath = step.Temperatures.Where(t => t.Of == TemperatureOf.Bath).MinBy(t => t.Celsius);
        double? held = step.Times.Where(t => t.Kind != TimeKind.Limit && t.Bound != Bound.AtMost).Max(t => t.MinutesMin);
        if (core is null || bath is null || held is not { } minutes || mm * 1.1 is not (>= 1 and <= 250))
        {
            return null;
        }

        if (Needed(c, step, mm, bath.Celsius - kit.PanSwing, core) <= minutes)
        {
            return null;
        }

        for (int rise = 0; rise <= MostRise && bath.Celsius + rise + kit.PanSwing < 100; rise++)
        {
            double setting = bath.Celsius + rise;
            if (Needed(c, step, mm, setting - kit.PanSwing, core) is { } needed && needed <= minutes * MostTimes)
            {
                double at = Math.Max(minutes, Math.Ceiling(needed));
                return new HomeHeatChange(step.Span.Line, setting, at, string.Create(CultureInfo.InvariantCulture,
                    $"{c.Component.Name}: pan at {setting:0.#} °C for {at:0} min (the card: bath {bath.Celsius:0.#} °C, {minutes:0} min). A pan swings by {kit.PanSwing:0.#} °C; at its coldest, {setting - kit.PanSwing:0.#} °C, the middle of {mm:0.#} mm still reaches {core.Celsius:0.#} °C{(core.HoldMinutes is { } h ? $" and stays there {h:0} min" : "")}."));
            }
        }

        return null;
    }

    private static double? Needed(WeighedComponent c, Step step, double mm, double bath, StepTemperature core)
    {
        Temperature from = Temperature.FromCelsius(Start);
        Temperature at = Temperature.FromCelsius(bath);
        FlatBag slow = PieceInBath.Of(c, step, from, at).Cautious;
        return slow.TimeTo(Length.FromMillimetres(mm * 1.1), from, at, Temperature.FromCelsius(core.Celsius))?.TotalMinutes + (core.HoldMinutes ?? 0);
    }

    private static Step With(Step step, double celsius, double minutes) => step with
    {
        Temperatures = [.. step.Temperatures.Select(t => t.Of == TemperatureOf.Bath ? t with { Celsius = celsius } : t)],
        Times = [.. step.Times.Select(t => t.Kind != TimeKind.Limit && t.Bound != Bound.AtMost && t.MinutesMin is { } m && m < minutes && ReferenceEquals(t, step.Times.Where(x => x.Kind != TimeKind.Limit && x.Bound != Bound.AtMost).MaxBy(x => x.MinutesMin)) ? t with { MinutesMin = minutes, MinutesMax = null } : t)],
    };
}
