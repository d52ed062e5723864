namespace Coulisse.Kitchen.Safety;

/// <summary>A step with a core limit: its control point, and a finding when the limit is not shown to be kept.</summary>
/// <param name="ControlPoint">Drafted control point.</param>
/// <param name="Finding">Null when the cautious case keeps the limit.</param>
internal sealed record CoreHeld(ControlPoint ControlPoint, Finding? Finding)
{
    /// <summary>The second judgement; null where there was none to make.</summary>
    public JudgedAgain? Again { get; init; }

    /// <summary>What the middle does; null when it cannot be worked out.</summary>
    public CoreTrace? Trace { get; init; }
}
