using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Planning;
using Coulisse.Matter.Shapes;
using NodaTime;
using NodaTime.Text;

namespace Coulisse.Kitchen.Needs;

/// <summary>Something that takes up room or power for a while.</summary>
/// <param name="What">In words.</param>
/// <param name="Amount">Slots, trays or kilowatts, 0 or more.</param>
/// <param name="Start">From.</param>
/// <param name="End">Until; the moment itself is free again.</param>
public sealed record LoadPiece(string What, double Amount, LocalDateTime Start, LocalDateTime End);

/// <summary>A stretch with one load.</summary>
/// <param name="Start">From.</param>
/// <param name="End">Until.</param>
/// <param name="Amount">Load.</param>
/// <param name="What">What makes it up.</param>
public sealed record LoadStretch(LocalDateTime Start, LocalDateTime End, double Amount, ImmutableArray<string> What);

/// <summary>Load of a fridge, a stock of trays or a circuit over time, against its limit.</summary>
/// <param name="Title">What is loaded.</param>
/// <param name="Unit">slots, trays, kW.</param>
/// <param name="Limit">Limit.</param>
/// <param name="Stretches">Load in order of time, without gaps from the first piece to the last.</param>
public sealed record LoadProfile(string Title, string Unit, double Limit, ImmutableArray<LoadStretch> Stretches)
{
    private const double Slight = 1e-9;

    /// <summary>The stretch with the largest load; the first of equals; null when nothing is loaded.</summary>
    public LoadStretch? Peak => Stretches.IsEmpty ? null : Stretches.MaxBy(s => s.Amount);

    /// <summary>Stretches above the limit.</summary>
    public ImmutableArray<LoadStretch> Over => [.. Stretches.Where(s => s.Amount > Limit + Slight)];

    /// <summary>Load at a moment.</summary>
    /// <param name="moment">The moment.</param>
    public double At(LocalDateTime moment) => Stretches.FirstOrDefault(s => s.Start <= moment && moment < s.End)?.Amount ?? 0;

    /// <summary>Adds pieces up.</summary>
    /// <param name="title">What is loaded.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="limit">Limit, 0 or more.</param>
    /// <param name="pieces">What loads it; a piece that ends before it starts is refused.</param>
    public static LoadProfile Of(string title, string unit, double limit, IEnumerable<LoadPiece> pieces)
    {
        ImmutableArray<LoadPiece> all = [.. pieces];
        if (all.FirstOrDefault(p => p.End < p.Start || !(p.Amount >= 0) || double.IsInfinity(p.Amount)) is { } wrong)
        {
            throw new ArgumentOutOfRangeException(nameof(pieces), wrong.What, "A load is 0 or more and ends after it starts.");
        }

        LocalDateTime[] moments = [.. all.SelectMany(p => (LocalDateTime[])[p.Start, p.End]).Distinct().Order()];
        ImmutableArray<LoadStretch>.Builder stretches = ImmutableArray.CreateBuilder<LoadStretch>();
        for (int i = 0; i + 1 < moments.Length; i++)
        {
            LoadPiece[] on = [.. all.Where(p => p.Start <= moments[i] && p.End > moments[i])];
            stretches.Add(new(moments[i], moments[i + 1], on.Sum(p => p.Amount), [.. on.Select(p => p.What)]));
        }

        return new(title, unit, limit, stretches.ToImmutable());
    }

    /// <summary>Power on each circuit by a plan: every piece of kit counts once while any task holds it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="kit">Kit with its power.</param>
    /// <param name="circuits">Circuits with their limits.</param>
    /// <remarks>Full power is counted from start to end, which is cautious: ovens and baths draw it only while they heat. What is plugged in but in no task (lamps, sound) is not in the plan.</remarks>
    public static ImmutableArray<LoadProfile> Circuits(Plan plan, IEnumerable<SheetKit> kit, IEnumerable<SheetCircuit> circuits)
    {
        ImmutableArray<SheetKit> known = [.. kit];
        return [.. circuits.Select(c => Of($"Circuit {c.Code}", "kW", c.LimitKilowatts, known
            .Where(k => k.Kilowatts is > 0 && k.Code.Length > 0 && (k.Circuit == c.Code || c.Kit.Contains(k.Code)))
            .SelectMany(k => Held(plan, k.Code).Select(h => new LoadPiece(k.Code, k.Kilowatts!.Value, h.Start, h.End)))))];
    }

    /// <summary>The load as steps under its limit; 1 mm to the given minutes.</summary>
    /// <param name="minutesAMillimetre">Minutes to a millimetre, more than 0.</param>
    public Drawing Draw(double minutesAMillimetre = 5)
    {
        const double High = 60;
        const double Room = 8;
        LocalDateTime first = Stretches.IsEmpty ? default : Stretches[0].Start;
        double X(LocalDateTime t) => Period.Between(first, t, PeriodUnits.Seconds).Seconds / 60.0 / minutesAMillimetre;
        double most = Math.Max(Limit, Peak?.Amount ?? 0);
        double Y(double amount) => most > 0 ? Room + High - (amount / most * High) : Room + High;
        double width = Stretches.IsEmpty ? 10 : X(Stretches[^1].End);
        ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();
        marks.AddRange(Stretches.Where(s => s.Amount > 0).Select(s => new RectMark(X(s.Start), Y(s.Amount), X(s.End) - X(s.Start), Room + High - Y(s.Amount), s.Amount > Limit + Slight ? Ink.Trim : Ink.Piece)));
        marks.Add(new LineMark(0, Y(Limit), width, Y(Limit), Ink.Outline));
        marks.Add(new TextMark(width / 2, Y(Limit) - 1.5, FormattableString.Invariant($"limit {Limit:0.##} {Unit}"), 4, Ink.Guide));
        string peak = Peak is { } p ? FormattableString.Invariant($", most {p.Amount:0.##} at {LocalDateTimePattern.CreateWithInvariantCulture("ddd HH:mm").Format(p.Start)}") : "";
        return new(string.Create(CultureInfo.InvariantCulture, $"{Title}: {Unit} over time, limit {Limit:0.##}{peak}"), width, High + (2 * Room), marks.ToImmutable());
    }

    /// <summary>Stretches of the slot in which a segment names the kit: it runs in front of the guests as it does before them.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="code">Code of the kit.</param>
    public static IEnumerable<(LocalDateTime Start, LocalDateTime End)> InSlot(Plan plan, string code)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.RunSheet.Where(s => s.Kit.Contains(code)).Select(s => (plan.SlotStart.PlusSeconds(s.StartSecond), plan.SlotStart.PlusSeconds(s.StartSecond + s.Seconds)));
    }

    // Times when any task or segment holds the kit, joined, so that a moment inside a task does not count twice.
    private static List<(LocalDateTime Start, LocalDateTime End)> Held(Plan plan, string code)
    {
        List<(LocalDateTime Start, LocalDateTime End)> held = [];
        IEnumerable<(LocalDateTime Start, LocalDateTime End)> tasks = plan.Tasks.Where(t => t.Kit.Contains(code)).Select(t => (t.Start, t.End));
        foreach ((LocalDateTime start, LocalDateTime end) in tasks.Concat(InSlot(plan, code)).OrderBy(h => h.Start))
        {
            if (held.Count > 0 && start <= held[^1].End)
            {
                held[^1] = (held[^1].Start, LocalDateTime.Max(held[^1].End, end));
            }
            else
            {
                held.Add((start, end));
            }
        }

        return held;
    }
}
