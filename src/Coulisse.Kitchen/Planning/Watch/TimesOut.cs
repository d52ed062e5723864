using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Safety;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Watch;

/// <summary>Traces every part that needs cold or heat through the tasks of a plan and adds up its minutes out of both: preparation, standing, plating, carrying, the slot.</summary>
/// <remarks>
/// From the last step that cooks it through, else from the first task. Chilling never sets the sum back; time in a chiller or over ice is the cooling rule's. A part takes over what the parts put into it have had.
/// A wait of up to an hour between two steps is counted as standing out; a longer one stands where the step says, else where the card keeps the part, else it is unsaid.
/// </remarks>
public static class TimesOut
{
    private const double ShortWait = 60;      // min: a mix goes straight on within the hour
    private const int Served = 15;            // min: carried out and eaten, assumed (common practice, no source)

    /// <summary>Traces all parts and the twins that are eaten.</summary>
    public static ImmutableArray<TimeOut> Of(Occasion occasion, ImmutableArray<Batch> batches, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        ArgumentNullException.ThrowIfNull(plan);
        List<TimeOut> all = [];
        for (int i = 0; i < occasion.Dishes.Length && i < batches.Length; i++)
        {
            all.AddRange(Dish(occasion, occasion.Dishes[i], batches[i].Weighed, plan));
        }

        all.AddRange(Twins(occasion, plan, all));
        return [.. all.OrderByDescending(t => t.Minutes)];
    }

    private static IEnumerable<TimeOut> Dish(Occasion occasion, OccasionDish dish, WeighedDish weighed, Plan plan)
    {
        PlannedTask[] mine = [.. plan.Tasks.Where(t => (t.Dish is null ? weighed.Components.Any(c => Same(c.Component, t.Component)) : t.Dish == dish.Name) && t.Kind != TaskKind.Moment && t.Kind != TaskKind.Preheat && !t.ForStage).OrderBy(t => t.Start)];
        bool away = dish.Unit is not "plates" && new[] { "box", "take", "bag", "parcel" }.Any(w => dish.For.Contains(w, StringComparison.OrdinalIgnoreCase));
        LocalDateTime eaten = plan.SlotEnd;
        PlannedTask? plate = mine.LastOrDefault(t => t.Kind == TaskKind.Plate);
        bool asOne = weighed.Dish.Plate.IsEmpty;
        WeighedComponent[] parts = [.. weighed.Components.Where(c => !c.Component.IsAssembly && c.Component.Steps.Length > 0)];
        if (asOne)
        {
            if (!parts.Any(c => Perishable.Is(weighed, c)) || Perishable.Crust(weighed))
            {
                yield break;
            }

            PartTrace one = new(occasion, [.. parts.SelectMany(c => c.Component.Steps)], "it", parts.SelectMany(p => p.Component.Keeps).Any(Cold), []);
            one.Run([.. mine.Where(t => t.Kind != TaskKind.Plate)], []);
            yield return one.Until(dish.Name, parts.LastOrDefault()?.Component.Span.Line ?? 0, plate, eaten, away, Served);
            yield break;
        }

        Dictionary<string, PartTrace> traced = new(StringComparer.Ordinal);
        foreach (WeighedComponent c in parts)
        {
            PartTrace trace = new(occasion, [.. c.Component.Steps], c.Component.Name, c.Component.Keeps.Any(Cold), StepPlace.Animal(c));
            OutStretch[] taken = [.. c.Component.Ingredients.SelectMany(l => l.Foods).Select(f => f.FromComponent).OfType<string>().Distinct()
                .Select(n => traced.GetValueOrDefault(n)).OfType<PartTrace>().OrderByDescending(t => t.Minutes).Take(1).SelectMany(t => t.Stretches)];
            PlannedTask[] own = [.. mine.Where(t => Same(c.Component, t.Component) && t.Kind != TaskKind.Plate)];
            trace.Run(own, [.. taken.Where(s => own.Length == 0 || s.To <= own[0].End)]);
            traced[c.Component.Name] = trace;
            if (own.Length > 0 && Perishable.Is(weighed, c))
            {
                yield return trace.Until(dish.Name, c.Component.Steps[^1].Span.Line, plate, eaten, away, Served) with { Part = c.Component.Name };
            }
        }
    }

    // What comes in on the stage and is then eaten: carried cold, then on the table until the end.
    private static IEnumerable<TimeOut> Twins(Occasion occasion, Plan plan, IReadOnlyList<TimeOut> parts)
    {
        LocalDateTime end = plan.SlotEnd;
        PlannedTask? all = plan.Tasks.FirstOrDefault(t => t.Kind == TaskKind.Carry && t.Text.Contains("twins", StringComparison.Ordinal));
        foreach (Twin twin in plan.Twins.Where(t => t.Holds != "–").Where(t => t.Afterwards.Contains("plate", StringComparison.Ordinal) || t.Afterwards.Contains("back to the cold", StringComparison.Ordinal)))
        {
            if (parts.FirstOrDefault(p => p.Part == twin.Component || p.Dish == twin.Component) is not { } part || twin.Holds.Contains("dry", StringComparison.Ordinal))
            {
                continue;
            }

            LocalDateTime cue = plan.SlotStart.PlusSeconds(twin.CueSecond);
            List<OutStretch> s = [.. part.Stretches.Where(x => x.To <= twin.ReadyBy)];
            bool cold = twin.Holds.Contains("°C", StringComparison.Ordinal);
            PlannedTask? carry = all ?? plan.Tasks.FirstOrDefault(t => t.Kind == TaskKind.Carry && t.Id == twin.SetOutBy);
            if (carry is not null && twin.BroughtBy is not "there")
            {
                s.Add(new OutStretch(carry.Start, carry.End, "carried to " + twin.Place, false, carry.Id));
            }

            if (!cold)
            {
                s.Add(new OutStretch(carry?.End ?? twin.ReadyBy, cue, "stands " + twin.Place, true, null));
            }

            s.Add(new OutStretch(cue, end, "on the table in the slot", false, null));
            yield return part with { Part = string.Create(CultureInfo.InvariantCulture, $"twin W{twin.Number} of {twin.Component}"), Stretches = [.. s], Unsaid = [], BackAfter = 0, TakenAway = false, Ends = end };
        }
    }

    // A plan made elsewhere may name a part by its code and leave the dish out.
    private static bool Same(Component c, string? name) => name is not null && (string.Equals(c.Name, name, StringComparison.OrdinalIgnoreCase) || (c.Code is { } code && string.Equals(code, name, StringComparison.OrdinalIgnoreCase)));

    private static bool Cold(Keeping k) => !k.Quality && (k.Celsius is >= -30 and <= 10 || k.Where is "fridge" or "freezer");

    /// <summary>One part on its way through its tasks.</summary>
    private sealed class PartTrace(Occasion occasion, ImmutableArray<Step> steps, string name, bool keptCold, ImmutableArray<string> animal)
    {
        private readonly List<UnsaidPlace> _unsaid = [];
        private readonly List<string> _assumed = [];
        private double _back;
        private Place? _after = Place.Cold;
        private LocalDateTime _at;
        private Step? _step;

        public List<OutStretch> Stretches { get; } = [];

        public double Minutes => Stretches.Sum(s => s.Minutes);

        public void Run(PlannedTask[] tasks, OutStretch[] taken)
        {
            Stretches.AddRange(taken);
            PlannedTask[] counted = [.. tasks.SkipWhile(t => Plain(t))];
            foreach (PlannedTask t in counted.Length > 0 ? counted : tasks)
            {
                Step? now = steps.FirstOrDefault(s => s.Span.Line == t.Line);
                bool elsewhere = t.Kind == TaskKind.Work && (t.Line == 0 || tasks.Any(o => o.Line == t.Line && o.Kind == TaskKind.Unattended));
                Place during = StepPlace.During(t, now, elsewhere, code => occasion.Kit.FirstOrDefault(k => k.Code == code)?.Type ?? "");
                if (now is { Meanwhile: true } && during == Place.Out && StepPlace.After(now) == Place.Cold)
                {
                    // Another lot of the same part, put away before the two come together: the one that was out for longer counts.
                    double beside = Period.Between(t.Start, t.End, PeriodUnits.Seconds).Seconds / 60.0;
                    if (beside > Minutes)
                    {
                        Stretches.Clear();
                        Stretches.Add(new OutStretch(t.Start, t.End, t.Text, false, t.Id));
                    }

                    continue;
                }

                if (_step is not null)
                {
                    Wait(t.Start);
                }

                _step = now ?? _step;
                if (during == Place.Out)
                {
                    // "No cloth stays out longer than 30 min": it is worked in lots, and the card's limit is what one lot has.
                    double most = now is null ? double.PositiveInfinity : StepPlace.LotLimit(now) ?? double.PositiveInfinity;
                    Add(most < Period.Between(t.Start, t.End, PeriodUnits.Seconds).Seconds / 60.0 ? t.End.PlusMinutes(-(long)most) : t.Start, t.End, t.Text, false, t.Id);
                }
                else if (during == Place.Hot && _step is not null && StepPlace.Kills(_step))
                {
                    Stretches.Clear();
                    _unsaid.Clear();
                    _back = 0;
                }

                _at = _at > t.End ? _at : t.End;
                _after = during == Place.Hot ? StepPlace.After(_step!) ?? Place.Out : _step is null ? null : StepPlace.After(_step);
                if (_after == Place.Cold)
                {
                    _back = Math.Max(_back, Minutes);
                }
            }
        }

        // Raw plants by themselves: they count from the step that first puts milk, egg, fish or meat to them.
        private bool Plain(PlannedTask t) => animal.Length > 0 && steps.FirstOrDefault(s => s.Span.Line == t.Line) is var step
            && steps.Any(Names) && (step is null || !Names(step)) && t.Kind == TaskKind.Work && !(step is not null && StepPlace.Kills(step));

        private bool Names(Step s) => animal.Any(w => s.Text.Contains(w, StringComparison.OrdinalIgnoreCase));

        public TimeOut Until(string dish, int line, PlannedTask? plate, LocalDateTime eaten, bool away, int served)
        {
            if (plate is not null && _step is not null)
            {
                Wait(plate.Start);
                Add(plate.Start, plate.End, plate.Text, false, plate.Id);
                _at = plate.End;
                _after = plate.Text.Contains("back to the cold", StringComparison.Ordinal) ? Place.Cold : Place.Out;
                _back = _after == Place.Cold ? Math.Max(_back, Minutes) : _back;
            }

            if (_step is not null)
            {
                LocalDateTime out_ = eaten.PlusMinutes(away ? 0 : -served);
                Wait(out_ > _at ? out_ : _at);
                if (!away && out_ >= _at)
                {
                    Add(out_, eaten, "carried out and eaten (assumed)", false, null);
                }
            }

            return new TimeOut(dish, dish, line, [.. Stretches], [.. _unsaid], _back, [.. _assumed.Distinct()]) { Ends = eaten, TakenAway = away };
        }

        private void Wait(LocalDateTime to)
        {
            double minutes = Period.Between(_at, to, PeriodUnits.Seconds).Seconds / 60.0;
            if (minutes <= 0 || _after is Place.Cold or Place.Hot)
            {
                return;
            }

            double rest = _step!.Times.Where(t => t.Kind == TimeKind.Rest).Sum(t => (t.MinutesMax ?? t.MinutesMin ?? 0) * t.Repeats);
            if (minutes <= Math.Max(ShortWait, rest))
            {
                Add(_at, to, "stands", true, null);
            }
            else if (_after == Place.Out && !keptCold)
            {
                Add(_at, to, "stands as the card says", true, null);
            }
            else if (keptCold)
            {
                // It rests for as long as the card says, then goes where the card keeps it.
                if (rest > 0)
                {
                    Add(_at, _at.PlusMinutes((long)rest), "rests", true, null);
                }

                _back = Math.Max(_back, Minutes);
                _assumed.Add($"Between two steps it stands in the cold, where the card keeps {name}.");
            }
            else
            {
                _unsaid.Add(new UnsaidPlace(_at, to, _step.Span.Line, Slot.TwinStage.Clause(_step.Text)));
            }
        }

        private void Add(LocalDateTime from, LocalDateTime to, string what, bool stood, string? task)
        {
            // Two hands on one part at once count once.
            LocalDateTime start = Stretches.Count > 0 && Stretches[^1].To > from && Stretches[^1].From <= from ? Stretches[^1].To : from;
            if (to > start)
            {
                Stretches.Add(new OutStretch(start, to, what, stood, task));
            }
        }
    }
}
