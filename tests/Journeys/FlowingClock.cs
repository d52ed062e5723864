namespace Coulisse.Journeys.Tests;

/// <summary>The real clock, moved: it goes on by itself and can be set forward.</summary>
internal sealed class FlowingClock(TimeSpan ahead) : TimeProvider
{
    private TimeSpan _ahead = ahead;

    public void Forward(TimeSpan by) => _ahead += by;

    public override DateTimeOffset GetUtcNow() => System.GetUtcNow() + _ahead;
}
