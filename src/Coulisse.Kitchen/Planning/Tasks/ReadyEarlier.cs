namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>The same work, due some minutes earlier: what it costs in freshness it gains in the chance of being ready.</summary>
public static class ReadyEarlier
{
    /// <summary>Moves every due time earlier, where the task's own earliest start leaves room for it.</summary>
    /// <param name="work">The work.</param>
    /// <param name="minutes">Minutes, 0 or more.</param>
    public static PrepWork Of(PrepWork work, int minutes) => minutes <= 0 ? work : work with
    {
        Tasks = [.. work.Tasks.Select(t => t.DoneBy is { } due && (t.NotBefore is null || t.NotBefore.Value.PlusMinutes(t.Minutes) <= due.PlusMinutes(-minutes)) ? t with { DoneBy = due.PlusMinutes(-minutes) } : t)],
    };
}
