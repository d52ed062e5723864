using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace Coulisse.Cards;

/// <summary>How far a step needs hands.</summary>
public enum Tending
{
    /// <summary>Hands throughout.</summary>
    All,

    /// <summary>Hands at moments.</summary>
    Some,

    /// <summary>Hands at start and end only.</summary>
    Ends,

    /// <summary>No hands; a look now and then.</summary>
    None,
}

/// <summary>What a stated time is.</summary>
public enum TimeKind
{
    /// <summary>Hands at work.</summary>
    Hands,

    /// <summary>A machine runs.</summary>
    Machine,

    /// <summary>Oven.</summary>
    Oven,

    /// <summary>Hob, bath, steamer, fryer.</summary>
    Cook,

    /// <summary>Cold: fridge, freezer, ice.</summary>
    Chill,

    /// <summary>Stands, proves, sets, soaks, dries.</summary>
    Rest,

    /// <summary>A limit, not a duration ("within 90 min").</summary>
    Limit,
}

/// <summary>What a stated temperature is of.</summary>
public enum TemperatureOf
{
    /// <summary>Oven setting.</summary>
    Oven,

    /// <summary>Water bath or steamer.</summary>
    Bath,

    /// <summary>Middle of the food.</summary>
    Core,

    /// <summary>The food as a whole.</summary>
    Food,

    /// <summary>Pan or fat.</summary>
    Pan,

    /// <summary>Fridge or cold room.</summary>
    Fridge,

    /// <summary>Freezer.</summary>
    Freezer,

    /// <summary>Dehydrator.</summary>
    Dryer,
}

/// <summary>How a stated figure binds.</summary>
public enum Bound
{
    /// <summary>As set or meant.</summary>
    At,

    /// <summary>At least.</summary>
    AtLeast,

    /// <summary>At most.</summary>
    AtMost,
}

/// <summary>A stated time.</summary>
/// <param name="MinutesMin">Low end, minutes; null for words without a figure.</param>
/// <param name="MinutesMax">High end, minutes; null for an open end.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Words">As written.</param>
public sealed record StepTime(double? MinutesMin, double? MinutesMax, TimeKind Kind, string Words)
{
    /// <summary>At, at least, at most.</summary>
    public Bound Bound { get; init; } = Bound.At;

    /// <summary>Times over ("three times, 2 min each"): 3.</summary>
    public int Repeats { get; init; } = 1;
}

/// <summary>A stated temperature.</summary>
/// <param name="Of">What it is of.</param>
/// <param name="Celsius">Degrees Celsius.</param>
/// <param name="Words">As written.</param>
public sealed record StepTemperature(TemperatureOf Of, double Celsius, string Words)
{
    /// <summary>High end where the card tells a range ("93–96 °C"), whose low end is <see cref="Celsius"/>; null for a single figure.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? CelsiusMax { get; init; }

    /// <summary>At, at least, at most.</summary>
    public Bound Bound { get; init; } = Bound.At;

    /// <summary>True when fan is stated, false when static is stated, null when neither.</summary>
    public bool? Fan { get; init; }

    /// <summary>How long it must be held, minutes ("80 °C or more for at least 10 min").</summary>
    public double? HoldMinutes { get; init; }

    /// <summary>True when it was set earlier in the component and holds here.</summary>
    public bool Inherited { get; init; }
}

/// <summary>What a step takes from the lists.</summary>
/// <param name="Line">Card line of the ingredient; 0 when it is a component.</param>
/// <param name="Food">Food or component as named in the step.</param>
/// <param name="Grams">Amount named in the step; null for all of it.</param>
/// <param name="Component">Component it comes from, when not a food.</param>
public sealed record StepUse(int Line, string Food, double? Grams, string? Component = null);

/// <summary>Where a food goes to wait.</summary>
/// <param name="Where">"fridge", "freezer", "room", "airtight"; empty when it is not said.</param>
/// <param name="Days">Days, when stated.</param>
public sealed record StepStorage(string Where, double? Days);

/// <summary>One step of a method.</summary>
public sealed record Step
{
    /// <summary>Heading inside the method it stands under, when that says when the work is done ("Day 1", "J-1", "The day before").</summary>
    public string? Under { get; init; }

    /// <summary>Where it stands.</summary>
    public required Span Span { get; init; }

    /// <summary>As written, without its number.</summary>
    public required string Text { get; init; }

    /// <summary>Its handle across edits.</summary>
    public required Anchor Anchor { get; init; }

    /// <summary>Main operation, an id of the work standards (bake, blend, chill, fold …); null when no verb of work was found.</summary>
    public string? Operation { get; init; }

    /// <summary>All operations in the order of the sentence.</summary>
    public ImmutableArray<string> Operations { get; init; } = [];

    /// <summary>Stated times.</summary>
    public ImmutableArray<StepTime> Times { get; init; } = [];

    /// <summary>Stated or inherited temperatures.</summary>
    public ImmutableArray<StepTemperature> Temperatures { get; init; } = [];

    /// <summary>Kit named: "jug blender", "oven", "sieve" ….</summary>
    public ImmutableArray<string> Kit { get; init; } = [];

    /// <summary>People at once.</summary>
    public int People { get; init; } = 1;

    /// <summary>Hands minutes stated in brackets ("(hands 20 min)").</summary>
    public double? HandsMinutes { get; init; }

    /// <summary>How far it needs hands.</summary>
    public Tending Tending { get; init; } = Tending.All;

    /// <summary>Minutes after the start at which hands are needed, for <see cref="Cards.Tending.Some"/>.</summary>
    public ImmutableArray<double> TendAt { get; init; } = [];

    /// <summary>Where the food goes to wait.</summary>
    public ImmutableArray<StepStorage> Storage { get; init; } = [];

    /// <summary>The sign that ends it ("until a disc snaps").</summary>
    public string? Until { get; init; }

    /// <summary>What it takes.</summary>
    public ImmutableArray<StepUse> Uses { get; init; } = [];

    /// <summary>Runs beside the step before it ("meanwhile").</summary>
    public bool Meanwhile { get; init; }

    /// <summary>Another way to do it ("or simmer on the stove"), as written.</summary>
    public string? Alternative { get; init; }

    /// <summary>Thickness or depth stated, millimetres ("nowhere thicker than 10 mm").</summary>
    public double? ThicknessMillimetres { get; init; }

    /// <summary>Weight expected at the end, grams ("You should have 758 g", "weigh about 36 g").</summary>
    public double? EndGrams { get; init; }

    /// <summary>Loss stated, percent ("loses about 7 %").</summary>
    public double? LossPercent { get; init; }

    /// <summary>Water driven off in good runs, g/min in one pan; null when not learnt.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Measured? BoiledOffPerMinute { get; init; }

    /// <summary>Share of what went in that was left after it in good runs, 0 to 1; null when not learnt. Safety never reads it: it judges what the card says.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Measured? LeftShare { get; init; }

    /// <summary>Heat transfer coefficient at the face, fitted to the probe curves of good runs, W/(m²·K); null when not learnt. Safety takes it only where it is below its own.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Measured? SurfaceWatts { get; init; }
}
