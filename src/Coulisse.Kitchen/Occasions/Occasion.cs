using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Occasions;

/// <summary>An occasion ready to be planned: the sheet with every default filled in and named.</summary>
public sealed record Occasion
{
    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>The sheet it came from.</summary>
    public required OccasionSheet Sheet { get; init; }

    /// <summary>Start of the live slot, or the moment of service.</summary>
    public required LocalDateTime SlotStart { get; init; }

    /// <summary>Length of the slot; zero for a service without one.</summary>
    public required Duration SlotLength { get; init; }

    /// <summary>End of the slot.</summary>
    [JsonIgnore]
    public LocalDateTime SlotEnd => SlotStart.PlusSeconds((long)SlotLength.TotalSeconds);

    /// <summary>Where the slot is.</summary>
    public required string SlotPlace { get; init; }

    /// <summary>Guests.</summary>
    public required int Guests { get; init; }

    /// <summary>Covers made: guests and those over.</summary>
    public required int Covers { get; init; }

    /// <summary>Covers finished live, within <see cref="Covers"/>.</summary>
    public int PlatedLive { get; init; }

    /// <summary>Dishes with the cards they name.</summary>
    public ImmutableArray<OccasionDish> Dishes { get; init; } = [];

    /// <summary>People.</summary>
    public ImmutableArray<Person> People { get; init; } = [];

    /// <summary>Kit.</summary>
    public ImmutableArray<SheetKit> Kit { get; init; } = [];

    /// <summary>Circuits.</summary>
    public ImmutableArray<SheetCircuit> Circuits { get; init; } = [];

    /// <summary>Prep windows in order.</summary>
    public ImmutableArray<SheetWindow> Windows { get; init; } = [];

    /// <summary>Meals.</summary>
    public ImmutableArray<SheetWindow> Meals { get; init; } = [];

    /// <summary>Diets.</summary>
    public ImmutableArray<SheetDiet> Diets { get; init; } = [];

    /// <summary>What is shown.</summary>
    public ImmutableArray<SheetShow> Shows { get; init; } = [];

    /// <summary>What was assumed because the sheet was silent, in words.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];

    /// <summary>How long steps took in trials of the cards; empty when none were kept.</summary>
    public ImmutableArray<LearntTime> Learnt { get; init; } = [];

    /// <summary>Site of the kitchen whose kit and larder are taken; empty for a kitchen of one place.</summary>
    public string Site { get; init; } = "";

    /// <summary>What standardised cards of it came to in good runs; empty when none is.</summary>
    public ImmutableArray<LearntCard> LearntCards { get; init; } = [];
}

/// <summary>A dish of the occasion with its card.</summary>
/// <param name="Name">As the sheet names it.</param>
/// <param name="Dish">The card as read.</param>
/// <param name="Count">How many.</param>
/// <param name="Unit">plates, pieces ….</param>
/// <param name="For">What for.</param>
/// <param name="CardPath">Where its card is.</param>
public sealed record OccasionDish(string Name, Dish Dish, int Count, string Unit, string For, string CardPath);

/// <summary>A person who works.</summary>
/// <param name="Name">Name.</param>
/// <param name="Role">Role.</param>
/// <param name="Place">Place in the slot.</param>
/// <param name="Hours">When they work.</param>
/// <param name="Skills">Skills, "all" for everything.</param>
/// <param name="Without">Skills they lack although "all" or wide.</param>
/// <param name="Languages">Languages, the preferred first.</param>
/// <param name="Speed">Factor on hands minutes.</param>
public sealed record Person(string Name, string Role, string Place, ImmutableArray<SheetWindow> Hours, ImmutableArray<string> Skills, ImmutableArray<string> Without, ImmutableArray<string> Languages, double Speed);
