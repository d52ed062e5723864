using System.Collections.Immutable;
using NodaTime;

namespace Coulisse.Kitchen.Trials;

/// <summary>A version of a card, made: what was really weighed, how long it really took, what came out and how it was judged.</summary>
public sealed record Trial
{
    /// <summary>Title of the card.</summary>
    public required string Card { get; init; }

    /// <summary>Version of the card that was made; null when the sheet does not say.</summary>
    public int? CardVersion { get; init; }

    /// <summary>Day it was made; null when the sheet does not say.</summary>
    public LocalDate? Made { get; init; }

    /// <summary>Who made it.</summary>
    public string By { get; init; } = "";

    /// <summary>How many times the card's amount.</summary>
    public double Factor { get; init; } = 1;

    /// <summary>True when it came out as it should, false when not, null while nobody has said: not said is never good.</summary>
    public bool? Good { get; init; }

    /// <summary>What was weighed.</summary>
    public ImmutableArray<TrialWeight> Weights { get; init; } = [];

    /// <summary>How long steps took.</summary>
    public ImmutableArray<TrialTime> Times { get; init; } = [];

    /// <summary>What came out.</summary>
    public ImmutableArray<TrialYield> Yields { get; init; } = [];

    /// <summary>Curves of the middle of a piece, and what they say of its bath.</summary>
    public ImmutableArray<TrialCore> Cores { get; init; } = [];

    /// <summary>What tasters said.</summary>
    public ImmutableArray<Tasting> Tastings { get; init; } = [];

    /// <summary>Notes, as written.</summary>
    public string Notes { get; init; } = "";
}

/// <summary>An amount as it was weighed.</summary>
/// <param name="What">Food as written.</param>
/// <param name="CardGrams">What the card asks, for the amount made; null when it does not say in grams.</param>
/// <param name="Grams">What was weighed.</param>
/// <param name="Line">Line of the sheet.</param>
public sealed record TrialWeight(string What, double? CardGrams, double Grams, int Line);

/// <summary>How long a step took.</summary>
/// <param name="Part">Component it stands in; empty when the card has one.</param>
/// <param name="Step">Words of the step.</param>
/// <param name="Minutes">Minutes from beginning to end.</param>
/// <param name="Line">Line of the sheet.</param>
public sealed record TrialTime(string Part, string Step, double Minutes, int Line);

/// <summary>What a part came to.</summary>
/// <param name="Part">Component.</param>
/// <param name="InGrams">What went in; null when not weighed.</param>
/// <param name="OutGrams">What came out.</param>
/// <param name="LeftGrams">What stayed in bowls, pans and on the board; null when not weighed.</param>
/// <param name="Line">Line of the sheet.</param>
public sealed record TrialYield(string Part, double? InGrams, double OutGrams, double? LeftGrams, int Line);

/// <summary>A probe's curve in the middle of a piece, and the heat transfer coefficient that lays a prediction over it.</summary>
/// <param name="Part">Component it stands in; empty when the card has one.</param>
/// <param name="Step">Words of the step.</param>
/// <param name="File">The probe's file beside the trial; empty when h is written in.</param>
/// <param name="Shape">slab, cylinder, sphere or brick.</param>
/// <param name="Millimetres">Full sizes in the order of the shape.</param>
/// <param name="Medium">Bath, °C, or the channel of the file that measured it.</param>
/// <param name="Watts">h, W/(m²·K): written in, or fitted to the file; null while there is neither.</param>
/// <param name="Line">Line of the sheet.</param>
public sealed record TrialCore(string Part, string Step, string File, string Shape, ImmutableArray<double> Millimetres, string Medium, double? Watts, int Line)
{
    /// <summary>Lowest h that fits nearly as well, W/(m²·K); null when the curve does not bound it or h was written in.</summary>
    public double? WattsLeast { get; init; }

    /// <summary>Highest such h, W/(m²·K).</summary>
    public double? WattsMost { get; init; }

    /// <summary>How far the fit lies off, K, root mean square; null when h was written in.</summary>
    public double? Misfit { get; init; }

    /// <summary>Why nothing was fitted, in words; empty when it was.</summary>
    public string Why { get; init; } = "";
}

/// <summary>One taster's marks, 1 (not as wanted) to 5 (as wanted), by scale.</summary>
/// <param name="Taster">Who tasted.</param>
/// <param name="Marks">Mark by scale; a scale left empty was not judged.</param>
/// <param name="Line">Line of the sheet.</param>
public sealed record Tasting(string Taster, ImmutableSortedDictionary<string, int> Marks, int Line)
{
    /// <summary>The scales, in the order of the sheet.</summary>
    public static readonly ImmutableArray<string> Scales = ["Looks", "Smell", "Taste", "Bite", "Whole"];
}
