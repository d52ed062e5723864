using System.Collections.Immutable;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>A rule that a plan breaks.</summary>
/// <param name="Code">Stable code of the rule, for example <c>person-twice</c>.</param>
/// <param name="TaskIds">Tasks concerned; empty when the fault is of the run sheet.</param>
/// <param name="By">By how much, in <paramref name="Unit"/>.</param>
/// <param name="Unit">min, s or kW.</param>
/// <param name="Words">What is wrong, in words.</param>
/// <param name="Where">Person, kit, circuit or segment.</param>
public sealed record PlanFault(string Code, ImmutableArray<string> TaskIds, double By, string Unit, string Words, string Where);
