using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Edits;

namespace Coulisse.Kitchen.Planning;

/// <summary>The one seam behind which the solver stands.</summary>
public interface IPlanner
{
    /// <summary>Plans an occasion.</summary>
    /// <param name="occasion">The occasion with its dishes.</param>
    /// <param name="batches">One batch for each dish, in order.</param>
    /// <param name="options">Effort and what is fixed.</param>
    /// <param name="progress">Hears of every better plan; may be null.</param>
    /// <param name="cancel">Stop and keep the best so far.</param>
    /// <returns>A plan, the reasons why none exists, or "not yet".</returns>
    PlanOutcome Plan(Occasion occasion, ImmutableArray<Batch> batches, PlanOptions options, IProgress<Plan>? progress = null, CancellationToken cancel = default);
}

/// <summary>Effort and fixings.</summary>
/// <param name="Seconds">Time limit, seconds.</param>
/// <param name="Seed">Random seed; equal seed and effort give equal plans.</param>
/// <param name="Workers">Solver threads.</param>
public sealed record PlanOptions(double Seconds = 10, int Seed = 1, int Workers = 2)
{
    /// <summary>Stop at the first valid plan.</summary>
    public bool FirstOnly { get; init; }

    /// <summary>Equal seed and effort give the equal plan whatever else the machine does; seconds are then the solver's own measure of work.</summary>
    public bool Repeatable { get; init; }

    /// <summary>Minutes by which everything is due earlier than it must be: less fresh, more surely ready.</summary>
    public int Buffer { get; init; }

    /// <summary>Minutes food may be out of the cold in all, by the code of practice.</summary>
    public double OutMinutes { get; init; } = 240;

    /// <summary>What a person has fixed.</summary>
    public PlanEdits Edits { get; init; } = PlanEdits.None;
}
