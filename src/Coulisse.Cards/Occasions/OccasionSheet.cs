using System.Collections.Immutable;
using NodaTime;

namespace Coulisse.Cards.Occasions;

/// <summary>What an occasion sheet says, before defaults are filled in.</summary>
public sealed record OccasionSheet
{
    /// <summary>Title as written.</summary>
    public required string Title { get; init; }

    /// <summary>Day and start of the live slot or of service; null when none is stated.</summary>
    public LocalDateTime? SlotStart { get; init; }

    /// <summary>Length of the slot; null for a service without one.</summary>
    public Duration? SlotLength { get; init; }

    /// <summary>Place of the slot ("stage").</summary>
    public string? SlotPlace { get; init; }

    /// <summary>Guests.</summary>
    public int? Guests { get; init; }

    /// <summary>Plates over and above the guests.</summary>
    public int? Over { get; init; }

    /// <summary>Plates made live, within the total.</summary>
    public int? PlatedLive { get; init; }

    /// <summary>Prep windows and clear-down.</summary>
    public ImmutableArray<SheetWindow> Windows { get; init; } = [];

    /// <summary>Meals: nobody works.</summary>
    public ImmutableArray<SheetWindow> Meals { get; init; } = [];

    /// <summary>How long the way from one place to another takes, where the sheet says it.</summary>
    public ImmutableArray<SheetWay> Ways { get; init; } = [];

    /// <summary>When the order arrives.</summary>
    public LocalDateTime? OrderArrives { get; init; }

    /// <summary>Price file named by the sheet.</summary>
    public string? PricesFile { get; init; }

    /// <summary>Currency the sheet names.</summary>
    public string? Currency { get; init; }

    /// <summary>Dishes table.</summary>
    public ImmutableArray<SheetDish> Dishes { get; init; } = [];

    /// <summary>Hands table.</summary>
    public ImmutableArray<SheetPerson> People { get; init; } = [];

    /// <summary>Kit table.</summary>
    public ImmutableArray<SheetKit> Kit { get; init; } = [];

    /// <summary>Circuits table.</summary>
    public ImmutableArray<SheetCircuit> Circuits { get; init; } = [];

    /// <summary>Guests' diets table.</summary>
    public ImmutableArray<SheetDiet> Diets { get; init; } = [];

    /// <summary>What is shown.</summary>
    public ImmutableArray<SheetShow> Shows { get; init; } = [];

    /// <summary>What the sheet was silent on and what was assumed instead, in words.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];

    /// <summary>What is odd but may be meant ("the day is past").</summary>
    public ImmutableArray<Remark> Remarks { get; init; } = [];

    /// <summary>Sentences kept as written.</summary>
    public ImmutableArray<Note> Notes { get; init; } = [];
}

/// <summary>A stretch of time with its line.</summary>
/// <param name="Start">Start.</param>
/// <param name="End">End.</param>
/// <param name="Line">Sheet line.</param>
public sealed record SheetWindow(LocalDateTime Start, LocalDateTime End, int Line);

/// <summary>A way between two places ("Carrying from the back to the stage takes 3 min").</summary>
/// <param name="From">From.</param>
/// <param name="To">To.</param>
/// <param name="Minutes">Minutes with food in hand.</param>
/// <param name="OneWay">It is not said for the way back.</param>
/// <param name="Line">Sheet line.</param>
public sealed record SheetWay(string From, string To, double Minutes, bool OneWay, int Line);

/// <summary>A dish of the occasion.</summary>
/// <param name="Name">As written.</param>
/// <param name="CardPath">Card file, relative to the sheet; or a card's name.</param>
/// <param name="Count">How many.</param>
/// <param name="Unit">plates, pieces, ramekin ….</param>
/// <param name="For">What for ("eaten at 14:25", "boxes").</param>
/// <param name="Line">Sheet line.</param>
public sealed record SheetDish(string Name, string CardPath, int Count, string Unit, string For, int Line);

/// <summary>A person.</summary>
/// <param name="Name">Name.</param>
/// <param name="Role">Role in words.</param>
/// <param name="Place">Place in the slot.</param>
/// <param name="Hours">When they are there.</param>
/// <param name="Skills">Skills; "all" for everything.</param>
/// <param name="Without">Skills stated as missing ("no pastry").</param>
/// <param name="Languages">Languages, first the one preferred.</param>
/// <param name="Notes">As written.</param>
/// <param name="Line">Sheet line.</param>
public sealed record SheetPerson(string Name, string Role, string Place, ImmutableArray<SheetWindow> Hours, ImmutableArray<string> Skills, ImmutableArray<string> Without, ImmutableArray<string> Languages, string Notes, int Line)
{
    /// <summary>Speed factor on hands minutes: 1 is usual, 1.2 a fifth slower.</summary>
    public double Speed { get; init; } = 1;

    /// <summary>Hours of a usual week, where no day of the occasion is spoken of by itself; empty for none.</summary>
    public ImmutableArray<SheetHours> Week { get; init; } = [];
}

/// <summary>A piece of kit.</summary>
/// <param name="Code">Short code, or empty for small kit.</param>
/// <param name="What">As written.</param>
/// <param name="Type">Our type: oven, hob, bath, blender, sealer, fridge, freezer, chiller, dehydrator, tin, tray, frame, mould, cloth, plate, scale, probe, other.</param>
/// <param name="Place">Place.</param>
/// <param name="Number">How many.</param>
/// <param name="CapacityText">Capacity as written.</param>
/// <param name="Line">Sheet line.</param>
public sealed record SheetKit(string Code, string What, string Type, string Place, int Number, string CapacityText, int Line)
{
    /// <summary>Shelves, trays or slots; null when the sheet gives none.</summary>
    public int? Shelves { get; init; }

    /// <summary>Litres held.</summary>
    public double? Litres { get; init; }

    /// <summary>Lowest set point, °C.</summary>
    public double? CelsiusMin { get; init; }

    /// <summary>Highest set point, °C.</summary>
    public double? CelsiusMax { get; init; }

    /// <summary>Power, kW.</summary>
    public double? Kilowatts { get; init; }

    /// <summary>Circuit code.</summary>
    public string? Circuit { get; init; }

    /// <summary>Place before it is moved, with the time of the move ("in the back until Friday 13:00").</summary>
    public string? EarlierPlace { get; init; }

    /// <summary>When it moves.</summary>
    public LocalDateTime? MovesAt { get; init; }

    /// <summary>Sizes in millimetres as written, for tins, trays, plates.</summary>
    public ImmutableArray<double> Millimetres { get; init; } = [];

    /// <summary>Kelvin a minute that it gains, as measured; null when nobody measured it.</summary>
    public double? RisePerMinute { get; init; }

    /// <summary>Kelvin a minute that it loses, as measured; null when nobody measured it.</summary>
    public double? FallPerMinute { get; init; }

    /// <summary>Slot pitch, millimetres ("65 mm apart").</summary>
    public double? PitchMillimetres { get; init; }
}

/// <summary>An electrical circuit.</summary>
/// <param name="Code">Code.</param>
/// <param name="Amperes">Rating.</param>
/// <param name="Volts">Voltage.</param>
/// <param name="LimitKilowatts">Limit as written.</param>
/// <param name="Kit">Kit codes on it.</param>
/// <param name="Line">Sheet line.</param>
public sealed record SheetCircuit(string Code, double Amperes, double Volts, double LimitKilowatts, ImmutableArray<string> Kit, int Line);

/// <summary>A guest's declared diet.</summary>
/// <param name="Seats">Seat numbers.</param>
/// <param name="Declared">As declared.</param>
/// <param name="ByDish">What they get, by the table's dish column.</param>
/// <param name="Line">Sheet line.</param>
public sealed record SheetDiet(ImmutableArray<int> Seats, string Declared, ImmutableDictionary<string, string> ByDish, int Line);

/// <summary>How a step is shown.</summary>
public enum ShowKind
{
    /// <summary>The whole step.</summary>
    Full,

    /// <summary>Its start, with a twin to go on from.</summary>
    Begin,

    /// <summary>Its end, on a twin.</summary>
    Finish,

    /// <summary>Only words over a finished piece.</summary>
    Tell,
}

/// <summary>Something the audience should see.</summary>
/// <param name="Component">Component or dish as written.</param>
/// <param name="StepText">Step in words.</param>
/// <param name="How">Full, begin, finish, tell.</param>
/// <param name="Weight">5 must be seen, 1 may go first.</param>
/// <param name="Line">Sheet line.</param>
public sealed record SheetShow(string Component, string StepText, ShowKind How, int Weight, int Line);
