using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;

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

    /// <summary>Tasks a person has pinned.</summary>
    public ImmutableArray<Pin> Pins { get; init; } = [];
}

/// <summary>A person's fixing of a task.</summary>
/// <param name="TaskId">Task.</param>
/// <param name="Start">Fixed start; null when only the person is fixed.</param>
/// <param name="Person">Fixed person; null when only the start is fixed.</param>
public sealed record Pin(string TaskId, NodaTime.LocalDateTime? Start, string? Person);
