using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Flows;

/// <summary>Card to grams to batch to findings: what happens to every dish before it is planned or printed.</summary>
public static class AssessFlow
{
    /// <summary>Weighs, scales and judges one dish.</summary>
    /// <param name="dish">The card as read.</param>
    /// <param name="target">What it is scaled to; null keeps it as written.</param>
    /// <param name="measures">Size system of spoons and cups; null lets the card decide.</param>
    /// <param name="code">Code of practice: au, nz, uk, eu, us.</param>
    public static Parsed<AssessedDish> Assess(Dish dish, ScaleTo? target, string? measures, string code)
    {
        WeighedDish weighed = Weighing.Weigh(dish, measures);
        return Scaling.Scale(weighed, target ?? new ScaleTo.Factor(1)).Match<Parsed<AssessedDish>>(
            batch => new Parsed<AssessedDish>.Ok(new AssessedDish(weighed, batch, SafetyReview.Review(weighed, code))),
            problems => new Parsed<AssessedDish>.Failed(problems));
    }
}
