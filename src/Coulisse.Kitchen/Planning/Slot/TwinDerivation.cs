using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Formulas;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>Derives from what is shown what must stand ready for it: one twin for each place where the showing picks the food up. None is missing, since every row asks for its own; none is unused, since nothing else makes one.</summary>
internal sealed class TwinDerivation(Occasion occasion, SlotCrew crew, ImmutableArray<SegmentDraft> segments, ImmutableArray<int> starts, ImmutableArray<int> seconds, ImmutableDictionary<int, KitNeed> kit)
{
    /// <summary>Share of a batch that is enough to be seen when a step is only begun by hand. Common practice, no source.</summary>
    private const double Glimpse = 10;

    private readonly List<(int Segment, TwinNeed Need)> _needs = [];

    /// <summary>Twins in the order they come in, numbered, each with its segment's position.</summary>
    public ImmutableArray<(int Segment, TwinNeed Need)> Derive()
    {
        for (int i = 0; i < segments.Length; i++)
        {
            Add(i);
        }

        return [.. _needs.OrderBy(n => n.Need.Twin.CueSecond).ThenBy(n => n.Segment)
            .Select((n, k) => (n.Segment, n.Need with { Twin = n.Need.Twin with { Number = k + 1 } }))];
    }

    private void Add(int i)
    {
        SegmentDraft segment = segments[i];
        if (segment.Kind == SegmentKind.Opening && segments.Any(s => s.Kind == SegmentKind.Plate && s.Items.Any(x => x.WholePlate)))
        {
            Plate(i, "one finished plate, shown at the opening", "the whole of it, ready to look at", starts[i] + Math.Min(20, seconds[i] / 3));
        }

        int at = starts[i];
        double scale = segment.Items.IsEmpty ? 1 : (double)seconds[i] / segment.Items.Sum(x => x.Seconds.Best);
        Step? before = null;
        foreach (ShowItem item in segment.Items)
        {
            if (item.WholePlate)
            {
                Parts(i, item, at);
            }
            else
            {
                Item(i, item, before, at);
                before = item.Step ?? before;
            }

            at += (int)(item.Seconds.Best * scale);
        }
    }

    private void Item(int i, ShowItem item, Step? before, int at)
    {
        // A full step that follows straight on from one just shown needs no twin: the live one is there.
        if (item.Show.How == ShowKind.Full && before is not null && item.Step is not null && Adjacent(item, before))
        {
            return;
        }

        TwinStage stage = TwinStage.Of(item, before);
        PlatePart? part = Part(item);
        double pieceShare = part?.Pieces ?? 0;
        // Begun by hand and not gone on with, since the next step shown has a twin of its own: enough to be seen is enough.
        bool glimpse = item.Show.How == ShowKind.Begin && item.Component is not null && item.Dish.Dish.Plate.IsEmpty && GoesOnFromTwin(i, item);
        double componentGrams = glimpse ? Grams([item.Component!]) / Glimpse : ComponentGrams(item);
        (double? grams, double count, string why) = TwinStage.Amount(item, part?.Grams ?? 0, pieceShare, occasion.PlatedLive, componentGrams);
        why = glimpse && why == "one tin" ? "enough to show it: a tenth, assumed" : why;
        bool later = item.Show.How is ShowKind.Begin or ShowKind.Full;
        (string holds, string place, string by) = Keeping(item, stage);
        _needs.Add((i, new TwinNeed(
            new Twin
            {
                Number = 0,
                Component = item.Name,
                State = stage.State + " (" + why + ")",
                Count = stage.Line == 0 ? 1 : count,
                Grams = grams is null ? null : Math.Round(grams.Value, grams < 10 ? 1 : 0),
                ReadyBy = occasion.SlotStart.PlusMinutes(-20),
                Holds = holds,
                Place = place,
                BroughtBy = by,
                CueSecond = at,
                Replaces = stage.Replaces,
                Afterwards = Afterwards(i, item),
            },
            item.Dish.Name, stage.Line, item.Step?.Span.Line ?? 0, later && why != "set aside by the card") { Beyond = later && why == "set aside by the card", Part = glimpse ? item.Component!.Name : null }));
    }

    private void Plate(int i, string state, string replaces, int cue)
    {
        ShowItem plate = segments.SelectMany(s => s.Items).First(x => x.WholePlate);
        double grams = plate.Dish.Dish.Plate.Sum(p => p.Grams ?? 0);
        _needs.Add((i, new TwinNeed(
            new Twin
            {
                Number = 0,
                Component = plate.Dish.Name,
                State = state,
                Grams = grams > 0 ? Math.Round(grams, 1) : null,
                ReadyBy = occasion.SlotStart.PlusMinutes(-15),
                Holds = "covered",
                Place = occasion.SlotPlace + ", in sight",
                BroughtBy = "there",
                CueSecond = cue,
                Replaces = replaces,
                Afterwards = "on show only, then the bin: it stood out of the cold",
            },
            plate.Dish.Name, 0, 0, false) { Plated = true }));
    }

    private void Parts(int i, ShowItem plate, int at)
    {
        if (occasion.PlatedLive == 0)
        {
            return;
        }

        // What an earlier segment has brought on is there already; the rest is weighed out for the live plate.
        HashSet<string> there = [.. segments.Take(i + 1).SelectMany(s => s.Items).Where(x => !x.WholePlate && x.Show.How is ShowKind.Finish or ShowKind.Full or ShowKind.Tell).Select(x => x.Name)];
        PlatePart[] missing = [.. plate.Dish.Dish.Plate.Where(p => p.Component is null || !there.Contains(p.Component))];
        if (missing.Length > 0)
        {
            _needs.Add((i, new TwinNeed(
                new Twin
                {
                    Number = 0,
                    Component = plate.Dish.Name,
                    State = "parts for the live plate, weighed: " + string.Join(", ", missing.Select(p => p.Text)),
                    Grams = Math.Round(missing.Sum(p => p.Grams ?? 0) * occasion.PlatedLive, 1),
                    ReadyBy = occasion.SlotStart.PlusMinutes(-20),
                    Holds = "as each part keeps",
                    Place = Fridge(),
                    BroughtBy = crew.HandsIn.Name,
                    CueSecond = at,
                    Replaces = "making them",
                    Afterwards = "on the live plate",
                },
                plate.Dish.Name, 0, 0, false)));
        }

        _needs.Add((i, new TwinNeed(
            new Twin
            {
                Number = 0,
                Component = plate.Dish.Name,
                State = occasion.PlatedLive == 1 ? "empty plate, spoons, scale" : occasion.PlatedLive.ToString(CultureInfo.InvariantCulture) + " empty plates, spoons, scale",
                Count = occasion.PlatedLive,
                ReadyBy = occasion.SlotStart.PlusMinutes(-20),
                Holds = "–",
                Place = "shelf, " + occasion.SlotPlace,
                BroughtBy = "there",
                CueSecond = at,
                Replaces = "fetching",
                Afterwards = "becomes the live plate",
            },
            plate.Dish.Name, 0, 0, false)));
    }

    private (string Holds, string Place, string By) Keeping(ShowItem item, TwinStage stage)
    {
        // Only a twin whose last step is the hot one stands in the heat; everything after it is kept as the card keeps the component.
        if (stage.Done is { } done && item.Show.How is ShowKind.Full && done.Temperatures.FirstOrDefault(t => t.Of == TemperatureOf.Bath && t.Bound == Bound.At) is { } bath
            && occasion.Kit.FirstOrDefault(k => k.Type == "bath") is { } tank)
        {
            return (bath.Celsius.ToString("0.#", CultureInfo.InvariantCulture) + " °C in the bath", tank.Code, "there");
        }

        // A dish that is no plate is kept as any of its parts says: all its twins alike.
        Keeping[] keeps = [.. (item.Dish.Dish.Plate.IsEmpty ? item.Dish.Dish.Components.Where(c => !c.IsAssembly).SelectMany(c => c.Keeps) : item.Component?.Keeps ?? []).Where(k => !k.Quality)];
        double[] cold = [.. keeps.Where(k => k.Celsius is not null).Select(k => k.Celsius!.Value)];

        // "Cool and dry" is said of what is finished: raw dough with egg and butter is not kept on a shelf by it.
        keeps = stage.Finished ? keeps : [];
        bool dry = keeps.Any(k => k.Where is "airtight" or "dry") && cold.Length == 0;
        bool room = keeps.Any(k => k.Where == "room") && cold.Length == 0;
        if (dry)
        {
            return ("dry and closed", "shelf, " + occasion.SlotPlace, "there");
        }

        if (room)
        {
            return ("room", "shelf, " + occasion.SlotPlace, "there");
        }

        // Nothing said: cold is the cautious side.
        double limit = cold.Length == 0 ? 5 : cold.Min();
        return (limit.ToString("0.#", CultureInfo.InvariantCulture) + " °C or less", Fridge(), crew.HandsIn.Name);
    }

    private string Fridge() => (occasion.Kit.FirstOrDefault(k => k.Type == "fridge" && k.Place == occasion.SlotPlace) ?? occasion.Kit.FirstOrDefault(k => k.Type == "fridge"))?.Code is { Length: > 0 } code
        ? code
        : "cold box, " + occasion.SlotPlace;

    private string Afterwards(int i, ShowItem item)
    {
        string live = item.Show.How switch
        {
            ShowKind.Tell => "nothing is begun live",
            ShowKind.Finish => occasion.PlatedLive > 0 && Part(item) is not null ? "on the live plate" : "shown, then back to the cold at once, else the bin",
            ShowKind.Begin or ShowKind.Full when kit.TryGetValue(i, out KitNeed? need) && segments[i].GoesOn is not null =>
                need.Out(occasion) is { } leaves ? string.Create(CultureInfo.InvariantCulture, $"what is begun live goes on in {need.Kit} until {leaves.At:HH:mm}{(leaves.Done ? "" : ", not done by then: weighed, to the bin")}; it goes to no guest here")
                    : "what is begun live goes on in " + need.Kit + " until " + (need.FromSecond / 60 + need.Minutes).ToString("0", CultureInfo.InvariantCulture) + " min after the start; it goes to no guest here",
            _ => "what is begun live goes to no guest: chilled at once or the bin, weighed",
        };
        return live;
    }

    private static bool Adjacent(ShowItem item, Step before)
    {
        Step[] steps = item.Sequence;
        return Array.IndexOf(steps, item.Step) - Array.IndexOf(steps, before) is 0 or 1 && !before.Times.Any(t => t.MinutesMin >= 10 && t.Kind != TimeKind.Hands && t.Kind != TimeKind.Limit);
    }

    private static PlatePart? Part(ShowItem item) => item.Component is null ? null : item.Dish.Dish.Plate.FirstOrDefault(p => p.Component == item.Component.Name);

    // A later step of the same dish in this segment that does not follow straight on brings its own twin.
    private bool GoesOnFromTwin(int i, ShowItem item)
    {
        ShowItem? next = segments[i].Items.SkipWhile(x => x != item).Skip(1).FirstOrDefault(x => x.Step is not null && x.Show.How is ShowKind.Full or ShowKind.Begin);
        return next is not null && item.Step is not null && item.Step != next.Step && !(next.Show.How == ShowKind.Full && Adjacent(next, item.Step)) && item.Step.Kit.IsEmpty && item.Step.Times.All(t => t.Kind == TimeKind.Hands);
    }

    private double ComponentGrams(ShowItem item)
        => item.Dish.Dish.Plate.IsEmpty ? Grams(OccasionBatches.Only(occasion, item.Dish).Components) : item.Component is null ? 0 : Grams([item.Component]);

    private static double Grams(IEnumerable<Component> components)
        => components.SelectMany(c => c.Ingredients).Where(l => l.Kind == LineKind.Ingredient).SelectMany(l => l.Foods).Where(f => f.FromComponent is null).Sum(f => f.Grams ?? 0);
}
