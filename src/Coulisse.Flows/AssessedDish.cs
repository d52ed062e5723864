using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Flows;

/// <summary>A dish on its way from card to plan: as weighed, as scaled for the occasion, and what the code of practice says to it.</summary>
public sealed record AssessedDish(WeighedDish Weighed, Batch Batch, Findings Findings);
