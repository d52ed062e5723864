using System.Collections.Immutable;
using NodaTime;

namespace Coulisse.Kitchen.Planning;

/// <summary>What happened in a run or a prep day: append-only, merged by id, folded in one place.</summary>
/// <param name="RunId">The run.</param>
/// <param name="Events">Events in order of their moment, then id.</param>
public sealed record LiveLog(string RunId, ImmutableArray<LiveEvent> Events);

/// <summary>An event somebody reported.</summary>
/// <param name="Id">Random id made by the device, so that a repeat is harmless.</param>
/// <param name="At">Moment, by the server's clock.</param>
/// <param name="Kind">"start", "done", "undo", "skip" (task or segment), "lost", "note", "drop" (segment), "early" (twin), "gate", "gone" (person), "broken" (kit).</param>
/// <param name="Subject">Task id, segment number, "twin 5", person or kit code.</param>
/// <param name="By">Who reported it.</param>
/// <param name="Text">Note, when there is one.</param>
public sealed record LiveEvent(string Id, Instant At, string Kind, string Subject, string By, string Text = "");
