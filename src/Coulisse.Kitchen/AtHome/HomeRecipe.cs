using System.Collections.Immutable;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Safety;

namespace Coulisse.Kitchen.AtHome;

/// <summary>A line of a part at home.</summary>
/// <param name="Line">The card's line.</param>
/// <param name="Exact">Exact grams at the part's factor.</param>
/// <param name="Measure">How it is measured; null for a pinch.</param>
public sealed record HomeLine(WeighedLine Line, double Exact, HomeMeasure? Measure);

/// <summary>A step with its home figures.</summary>
/// <param name="Text">As it reads on the handout.</param>
/// <param name="Changed">What was changed and why; empty when only weights were.</param>
public sealed record HomeStep(string Text, string Changed);

/// <summary>A part at home.</summary>
/// <param name="Component">The batch's component.</param>
/// <param name="Factor">Of the card.</param>
/// <param name="Needed">Factor that the plates alone would ask for.</param>
/// <param name="Lines">Lines.</param>
/// <param name="Steps">Steps.</param>
/// <param name="RatioMoved">Largest move of a ratio of two lines, as a share.</param>
public sealed record HomePart(WeighedComponent Component, double Factor, double Needed, ImmutableArray<HomeLine> Lines, ImmutableArray<HomeStep> Steps, double RatioMoved)
{
    /// <summary>Sum of the measured grams.</summary>
    public double Grams => Lines.Sum(l => l.Measure?.Grams ?? l.Exact);
}

/// <summary>A reason why a dish cannot be handed out as it is, and what would help.</summary>
/// <param name="Part">Part.</param>
/// <param name="Why">Reason with its figure.</param>
/// <param name="Remedy">What would help.</param>
public sealed record HomeRefusal(string Part, string Why, string Remedy);

/// <summary>A dish at home scale, tested: weighed on the home scale, heated in a watched pan, judged by the code of practice.</summary>
/// <param name="Serves">What it makes, in words.</param>
/// <param name="Parts">Parts.</param>
/// <param name="Substitutes">Home kit for the trade's.</param>
/// <param name="Findings">What the code of practice says to the home dish.</param>
/// <param name="Refusals">Why it must not be handed out; empty when it may.</param>
public sealed record HomeRecipe(string Serves, ImmutableArray<HomePart> Parts, ImmutableArray<HomeSubstitute> Substitutes, Findings Findings, ImmutableArray<HomeRefusal> Refusals)
{
    /// <summary>True when it may be handed out.</summary>
    public bool Passed => Refusals.IsEmpty;

    /// <summary>Lines that need the pocket scale.</summary>
    public ImmutableArray<HomeLine> Pocket => [.. Parts.SelectMany(p => p.Lines).Where(l => l.Measure is { Pocket: true })];

    /// <summary>What a cook should try once, since a figure of the method was changed.</summary>
    public ImmutableArray<string> Changed => [.. Parts.SelectMany(p => p.Steps).Select(s => s.Changed).Where(c => c.Length > 0)];
}
