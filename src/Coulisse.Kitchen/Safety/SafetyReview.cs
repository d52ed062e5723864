using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety;

/// <summary>Lays the rules over a dish.</summary>
/// <remarks>So far one rule is laid: core limits in baths and ovens. What it does not find is not thereby safe.</remarks>
public static class SafetyReview
{
    private static readonly ImmutableArray<string> Codes = ["au", "nz", "uk", "eu", "us"];

    /// <summary>Findings, gravest first, with the control points that go with them.</summary>
    /// <param name="dish">The dish.</param>
    /// <param name="code">Code of practice: au, nz, uk, eu, us.</param>
    /// <exception cref="ArgumentException">Another code.</exception>
    public static Findings Review(WeighedDish dish, string code)
    {
        ArgumentNullException.ThrowIfNull(dish);
        if (!Codes.Contains(code))
        {
            throw new ArgumentException($"\"{code}\" is no code of practice known here; use au, nz, uk, eu or us.", nameof(code));
        }

        ImmutableArray<CoreHeld> judged = [.. dish.Components.SelectMany(c => CoreHeldRule.Judge(c))];
        return new Findings(
            code,
            [.. judged.Select(j => j.Finding).OfType<Finding>().OrderByDescending(f => f.Severity).ThenBy(f => f.Line)],
            [.. judged.Select(j => j.ControlPoint)]);
    }
}
