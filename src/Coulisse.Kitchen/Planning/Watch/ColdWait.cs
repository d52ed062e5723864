using NodaTime;

namespace Coulisse.Kitchen.Planning.Watch;

/// <summary>Something finished or half finished that waits in the cold.</summary>
/// <param name="What">In words, with how many to a tray where that is known.</param>
/// <param name="Slots">Fridge slots it takes.</param>
/// <param name="From">From.</param>
/// <param name="Until">Until.</param>
/// <param name="Trays">It stands on so many trays as it takes slots.</param>
/// <param name="Known">The number is the card's, the kit's or reckoned from sizes; false where one slot was assumed.</param>
/// <param name="After">Task after which it waits.</param>
/// <param name="Before">Task that takes it; null when it waits for the slot.</param>
public sealed record ColdWait(string What, int Slots, LocalDateTime From, LocalDateTime Until, bool Trays, bool Known, string After, string? Before);
