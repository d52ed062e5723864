using System.Collections.Immutable;
using System.Globalization;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Occasions;

namespace Coulisse.Kitchen.Planning.Slot;

/// <summary>Writes the run sheet: words, hands, kit, gates, what may be dropped and in which order.</summary>
internal static class SlotSheet
{
    /// <summary>Seconds at the seat of one guest with a diet. Common practice, no source.</summary>
    public const int RoundSeconds = 20;

    public static ImmutableArray<RunSegment> Write(Occasion occasion, SlotCrew crew, ImmutableArray<SegmentDraft> drafts, ImmutableArray<int> starts, ImmutableArray<int> seconds, ImmutableDictionary<int, KitNeed> kit, ImmutableArray<(int Segment, TwinNeed Need)> twins)
    {
        ImmutableDictionary<int, int> rank = DropRanks(drafts, seconds);
        ImmutableArray<RunSegment>.Builder sheet = ImmutableArray.CreateBuilder<RunSegment>();
        for (int i = 0; i < drafts.Length; i++)
        {
            SegmentDraft d = drafts[i];
            Twin[] here = [.. twins.Where(t => t.Segment == i).Select(t => t.Need.Twin)];
            sheet.Add(new RunSegment
            {
                Number = i + 1,
                StartSecond = starts[i],
                Seconds = seconds[i],
                Show = Words(d),
                Component = string.Join(", ", d.Items.Select(x => x.Name).Distinct()),
                Weight = d.Weight,
                Who = Hands(occasion, crew, drafts, i, seconds, kit, here),
                Kit = [.. Kit(occasion, d, kit.GetValueOrDefault(i))],
                Twins = [.. here.Select(t => t.Number)],
                DroppableSeconds = rank.ContainsKey(i) ? Droppable(d, seconds[i]) : 0,
                DropRank = rank.GetValueOrDefault(i),
                Gate = i > 0 && d.Kind != SegmentKind.Close && (d.Kind == SegmentKind.Plate || Crosses(starts, i, occasion)),
                Silence = d.UsesBlender,
            });
        }

        // Where no segment is one by the rule, the first after the opening tells whether the slot has begun in time.
        if (sheet.Count > 1 && !sheet.Any(s => s.Gate))
        {
            sheet[1] = sheet[1] with { Gate = true };
        }

        return sheet.ToImmutable();
    }

    /// <summary>What to do when something fails, from the twins that stand ready.</summary>
    public static ImmutableArray<string> Fallbacks(ImmutableArray<SegmentDraft> drafts, ImmutableArray<(int Segment, TwinNeed Need)> twins, ImmutableDictionary<int, KitNeed> kit)
    {
        ImmutableArray<string>.Builder lines = ImmutableArray.CreateBuilder<string>();
        for (int i = 0; i < drafts.Length; i++)
        {
            Twin[] here = [.. twins.Where(t => t.Segment == i).Select(t => t.Need.Twin)];
            Twin? last = here.Length > 1 ? here[^1] : null;
            if (drafts[i].UsesBlender)
            {
                lines.Add(last is not null
                    ? $"If the blender stops in segment {N(i + 1)}: bring twin {N(last.Number)} forward, {last.State.Split(" (")[0]}, and tell the step."
                    : $"If the blender stops in segment {N(i + 1)}: show the piece from before and after, tell the step, go on.");
            }

            if (kit.TryGetValue(i, out KitNeed? need))
            {
                lines.Add($"If {need.Kit} is not at {need.Celsius?.ToString("0.#", CultureInfo.InvariantCulture)} °C for segment {N(i + 1)}: say where it would go, set the live one in the cold, go on.");
            }
        }

        return lines.ToImmutable();
    }

    private static string Words(SegmentDraft d) => d.Kind switch
    {
        SegmentKind.Opening => "welcome; what there is to learn; who may not eat what",
        SegmentKind.Close => "what was learnt, once more; the handout; first question",
        // One subject once, with all that is shown of it.
        _ => string.Join("; ", d.Items.GroupBy(x => x.Name).Select(g => g.Key + ": " + string.Join("; ", g.Select(Shown)))),
    };

    private static string Shown(ShowItem x)
    {
        bool step = x.Show.StepText is not ("" or "–");
        return x.Show.How == ShowKind.Tell
            ? step ? x.Show.StepText + ", told" : "told over the finished piece"
            : step ? x.Show.StepText : "the finished piece";
    }

    private static ImmutableSortedDictionary<string, string> Hands(Occasion occasion, SlotCrew crew, ImmutableArray<SegmentDraft> drafts, int i, ImmutableArray<int> seconds, ImmutableDictionary<int, KitNeed> kit, Twin[] here)
    {
        ImmutableSortedDictionary<string, string>.Builder who = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        void Say(string person, string what) => who[person] = who.TryGetValue(person, out string? said) ? said + "; " + what : what;
        Say(crew.Presenter.Name, drafts[i].UsesBlender ? "shows; no talking while the blender runs" : drafts[i].Kind is SegmentKind.Opening or SegmentKind.Close ? "speaks" : "shows");
        foreach (IGrouping<string, Twin> by in here.Where(t => t.BroughtBy != "there").GroupBy(t => t.BroughtBy))
        {
            Say(by.Key, "brings " + string.Join(", ", by.Select(t => "twin " + N(t.Number))));
        }

        if (kit.TryGetValue(i, out KitNeed? need))
        {
            string carrier = occasion.Kit.First(k => k.Code == need.Kit).Place == occasion.SlotPlace ? crew.Assistant.Name : crew.Washes.Name;
            Say(carrier, $"into {need.Kit} at {need.Celsius?.ToString("0.#", CultureInfo.InvariantCulture)} °C, timer {need.Minutes.ToString("0", CultureInfo.InvariantCulture)} min");
        }

        // Between two foods the jug is washed, in the segment that lies between.
        if (i > 0 && drafts[i - 1].UsesBlender && drafts.Skip(i).Any(d => d.UsesBlender))
        {
            Say(crew.Washes.Name, "wash jug, lid and blade, back before the next time it runs");
        }

        foreach (string round in Round(occasion, crew, drafts, i, seconds))
        {
            Say(crew.Allergies!.Name, round);
        }

        // Finishing that must be last ("in the last four minutes") goes on behind while the talk goes on.
        foreach ((string text, int from) in Finishing(occasion))
        {
            if (i == Segment(drafts, occasion, from))
            {
                foreach (Person p in crew.Behind.Where(p => !p.Role.Contains("floor", StringComparison.OrdinalIgnoreCase)).Take(2))
                {
                    Say(p.Name, text);
                }
            }
        }

        return who.ToImmutable();
    }

    /// <summary>Once the welcome has said who may not eat what, each such guest is asked at their seat; at the close their plates are handed over by name.</summary>
    private static IEnumerable<string> Round(Occasion occasion, SlotCrew crew, ImmutableArray<SegmentDraft> drafts, int i, ImmutableArray<int> seconds)
    {
        int[] seats = [.. occasion.Diets.SelectMany(d => d.Seats).Distinct().Order()];
        if (crew.Allergies is null || seats.Length == 0 || i == 0 || drafts.Length < 3)
        {
            yield break;
        }

        string named = string.Join(", ", seats.Select(N));
        int before = seconds.Take(i).Skip(1).Sum();
        if (i == 1)
        {
            yield return "allergy round: ask at seats " + named + " whether it is still so, tell the back before a plate leaves";
        }
        else if (i < drafts.Length - 1 && before < seats.Length * RoundSeconds)
        {
            yield return "allergy round goes on";
        }

        if (i == drafts.Length - 1)
        {
            yield return "hand over by name: seats " + named;
        }
    }

    private static IEnumerable<(string Text, int FromSecond)> Finishing(Occasion occasion)
    {
        int slot = (int)occasion.SlotLength.TotalSeconds;
        foreach (OccasionDish dish in occasion.Dishes)
        {
            foreach (Step step in dish.Dish.Components.Where(c => c.IsAssembly).SelectMany(c => c.Steps))
            {
                if (step.Text.Contains("last ", StringComparison.OrdinalIgnoreCase) && step.Times.FirstOrDefault(t => t.MinutesMin is > 0 and < 30) is { } time)
                {
                    yield return ("from the last " + (time.MinutesMin!.Value).ToString("0", CultureInfo.InvariantCulture) + " min: " + step.Text, slot - (int)(time.MinutesMin.Value * 60));
                }
            }
        }
    }

    private static int Segment(ImmutableArray<SegmentDraft> drafts, Occasion occasion, int second)
    {
        ImmutableArray<int> seconds = SegmentLengths.Share(drafts, (int)occasion.SlotLength.TotalSeconds);
        int at = 0;
        for (int i = 0; i < seconds.Length; i++)
        {
            at += seconds[i];
            if (second < at)
            {
                return i;
            }
        }

        return seconds.Length - 1;
    }

    private static IEnumerable<string> Kit(Occasion occasion, SegmentDraft d, KitNeed? need)
    {
        if (need is not null)
        {
            yield return need.Kit;
        }

        if (d.UsesBlender && occasion.Kit.FirstOrDefault(k => k.Type == "blender") is { } blender)
        {
            yield return blender.Code;
        }

        if (d.Items.Any(x => x.Show.StepText.Contains("seal", StringComparison.OrdinalIgnoreCase)) && occasion.Kit.FirstOrDefault(k => k.Type == "sealer") is { } sealer)
        {
            yield return sealer.Code;
        }
    }

    // A gate where a third of the slot, or two, is over: there it shows whether the end will hold.
    private static bool Crosses(ImmutableArray<int> starts, int i, Occasion occasion)
    {
        double slot = occasion.SlotLength.TotalSeconds;
        return new[] { 0.3, 0.5, 0.85 }.Any(share => starts[i] >= share * slot && starts[i - 1] < share * slot);
    }

    private static int Droppable(SegmentDraft d, int seconds) => d.Kind == SegmentKind.Tell ? seconds : Math.Max(0, (seconds - d.Least) / 5 * 5);

    private static ImmutableDictionary<int, int> DropRanks(ImmutableArray<SegmentDraft> drafts, ImmutableArray<int> seconds)
        => Enumerable.Range(0, drafts.Length)
            .Where(i => drafts[i].Kind is SegmentKind.Tell or SegmentKind.Show && Droppable(drafts[i], seconds[i]) > 0)
            .OrderBy(i => drafts[i].Kind != SegmentKind.Tell).ThenBy(i => drafts[i].Weight).ThenByDescending(i => Droppable(drafts[i], seconds[i])).ThenBy(i => i)
            .Select((i, k) => (i, k)).ToImmutableDictionary(x => x.i, x => x.k + 1);

    private static string N(int n) => n.ToString(CultureInfo.InvariantCulture);
}
