using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;

namespace Coulisse.Kitchen.Safety;

/// <summary>How thick a piece is and how cold it starts, followed through the steps of a component.</summary>
/// <remarks>
/// Start: 5 °C, or a colder stated fridge; an upper limit ("not warmer than 10 °C") does not make it warmer, since a colder start is the slower one.
/// Frozen: a line that says frozen, a step that freezes or names a freezer, "from frozen". A step that thaws, cooks or blends ends that; what was thawed starts at 0 °C, since how far it came is not on the card.
/// </remarks>
internal sealed class PieceState
{
    private const double Fridge = 5;
    private const double Freezer = -18;
    private static readonly string[] Ends = ["thaw", "blend", "blend_hot", "stick_blend"];
    private double _fridge = Fridge;
    private double? _frozen;

    /// <summary>At the beginning of a component.</summary>
    public PieceState(WeighedComponent component)
    {
        // a few frozen peas in a pot of something else do not freeze it; what has no weight counts
        double ice = FoodTraits.Grams(component, FoodTraits.IsFrozen);
        if (FoodTraits.Lines(component, FoodTraits.IsFrozen).Any() && (ice <= 0 || ice >= 0.2 * component.Grams || FoodTraits.Lines(component, f => FoodTraits.IsFrozen(f) && FoodTraits.IsFlesh(f)).Any()))
        {
            _frozen = Freezer;
        }
    }

    /// <summary>Greatest thickness so far, mm; null when no step said.</summary>
    public double? Thickness { get; private set; }

    /// <summary>Start, °C.</summary>
    public double Start => _frozen ?? _fridge;

    /// <summary>It goes in frozen.</summary>
    public bool Frozen => _frozen is not null;

    /// <summary>Takes up what a step says before it is judged.</summary>
    public void Enter(Step step)
    {
        string[] does = [.. step.Operations.Append(step.Operation).OfType<string>()];
        Thickness = step.ThicknessMillimetres ?? Thickness;
        if (does.Any(Ends.Contains) || step.Text.Contains("thaw", StringComparison.OrdinalIgnoreCase))
        {
            if (_frozen is not null)
            {
                (_frozen, _fridge) = (null, Math.Min(_fridge, 0));
            }
        }
        else if (does.Contains("freeze") || step.Temperatures.Any(t => t.Of == TemperatureOf.Freezer) || step.Text.Contains("from frozen", StringComparison.OrdinalIgnoreCase) || step.Text.Contains("from the freezer", StringComparison.OrdinalIgnoreCase))
        {
            _frozen = step.Temperatures.Where(t => t.Of == TemperatureOf.Freezer).Select(t => Math.Clamp(t.Celsius, -40, Freezer)).Append(_frozen ?? Freezer).Min();
        }

        foreach (StepTemperature fridge in step.Temperatures.Where(t => t.Of == TemperatureOf.Fridge && t.Celsius >= 0))
        {
            _fridge = Math.Min(_fridge, fridge.Celsius);
        }
    }

    /// <summary>Takes up what a step did, once it has been judged.</summary>
    public void Leave(Step step)
    {
        if (_frozen is not null && FoodTraits.Cooks(step))
        {
            _frozen = null;
        }
    }
}
