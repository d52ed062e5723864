using System.Collections.Immutable;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Method;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Safety;
using Coulisse.Matter.Heat;

namespace Coulisse.Kitchen.Planning.Watch;

/// <summary>The code of practice laid over an occasion: each dish as its card makes it, with the guests it is for, and, once there is a plan, the time each part is out of the cold and the minutes the plan gives a bath.</summary>
public static class PlanSafety
{
    private static readonly string[] AtRisk = ["pregnan", "immun", "elderly", "infant", "toddler", "baby", "chemo", "transplant", "nursing home", "under five"];

    /// <summary>Minutes food may be out of the cold in all, by a code of practice.</summary>
    /// <param name="code">The code.</param>
    /// <exception cref="ArgumentException">The code is not known.</exception>
    public static double OutMinutes(string code) => Practice(code).OutHours * 60;

    /// <summary>Findings by dish, in the order of the batches.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="batches">One for each dish.</param>
    /// <param name="outcome">What planning answered; null before it was asked.</param>
    /// <param name="code">Code of practice.</param>
    public static ImmutableArray<Findings> Review(Occasion occasion, ImmutableArray<Batch> batches, PlanOutcome? outcome, string code)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        bool vulnerable = occasion.Diets.Any(d => AtRisk.Any(w => d.Declared.Contains(w, StringComparison.OrdinalIgnoreCase)));
        Plan? plan = outcome as Plan;
        PracticeCode practice = Practice(code);
        WaterBath? bath = KitFacts.Of(occasion.Kit).Bath;
        ImmutableArray<TimeOut> times = plan is null ? [] : TimesOut.Of(occasion, batches, plan);
        return [.. batches.Select((b, i) =>
        {
            Findings card = SafetyReview.Review(plan is null || i >= occasion.Dishes.Length ? b.Weighed : AsPlanned(b.Weighed, occasion.Dishes[i].Name, plan), code, vulnerable);
            Finding[] held = plan is null || i >= occasion.Dishes.Length ? [] : [.. TimeOutRule.Judge(times.Where(t => t.Dish == occasion.Dishes[i].Name), practice), .. bath is null ? Enumerable.Empty<Finding>() : BathLoadRule.Judge(b.Weighed, bath, Minutes(occasion.Dishes[i].Name, plan))];
            return held.Length == 0 ? card : card with { All = [.. card.All.Concat(held).OrderByDescending(f => f.Severity).ThenBy(f => f.Line)] };
        })];
    }

    private static PracticeCode Practice(string code) => PracticeCode.Find(code) ?? throw new ArgumentException($"\"{code}\" is no code of practice known here.", nameof(code));

    // A bath that the plan gives less time than the card is judged by the plan's minutes, bath 1 °C low and piece 10 % thicker included.
    private static WeighedDish AsPlanned(WeighedDish weighed, string dish, Plan plan)
    {
        Dictionary<int, double> shorter = Minutes(dish, plan);
        Step Judged(Step s) => s.Temperatures.Any(t => t.Of == TemperatureOf.Bath) && shorter.TryGetValue(s.Span.Line, out double minutes) && s.Times.Where(t => t.Kind != TimeKind.Limit && t.Bound != Bound.AtMost).Max(t => t.MinutesMin) > minutes + 0.5
            ? s with { Times = [.. s.Times.Select(t => t.Kind == TimeKind.Limit || t.MinutesMin <= minutes ? t : t with { MinutesMin = minutes, MinutesMax = minutes })] }
            : s;
        return weighed with { Components = [.. weighed.Components.Select(c => c with { Component = c.Component with { Steps = [.. c.Component.Steps.Select(Judged)] } })] };
    }

    // What the plan gives each unattended step, by card line.
    private static Dictionary<int, double> Minutes(string dish, Plan plan) => plan.Tasks.Where(t => t.Dish == dish && t.Kind == TaskKind.Unattended && t.Line > 0 && !t.ForStage).GroupBy(t => t.Line)
        .ToDictionary(g => g.Key, g => g.Sum(t => NodaTime.Period.Between(t.Start, t.End, NodaTime.PeriodUnits.Seconds).Seconds / 60.0));
}
