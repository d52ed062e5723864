using System.Globalization;
using Coulisse.Kitchen.Occasions;
using NodaTime;

namespace Coulisse.Kitchen.Planning.Checking;

/// <summary>The slot can be run from its sheet: silence under loud machines, gates, drops in order, people who are there.</summary>
internal static class SlotRule
{
    /// <summary>A slot this long without a gate leaves its time-keeper nothing to hold on to (our rule).</summary>
    private const int GatesFromSeconds = 600;

    public static IEnumerable<PlanFault> Check(Occasion occasion, Plan plan)
    {
        foreach (RunSegment s in plan.RunSheet)
        {
            string where = s.Number.ToString(CultureInfo.InvariantCulture);
            if (s.Seconds <= 0)
            {
                yield return new("segment-empty", [], -s.Seconds, "s", $"Segment {where} takes no time.", where);
            }

            if (s.DroppableSeconds > s.Seconds)
            {
                yield return new("drop-too-long", [], s.DroppableSeconds - s.Seconds, "s", $"More is to be dropped from segment {where} than it has.", where);
            }

            if (s.DroppableSeconds > 0 && s.DropRank <= 0)
            {
                yield return new("drop-unranked", [], s.DroppableSeconds, "s", $"The drop of segment {where} has no place in the order of drops.", where);
            }

            string? loud = occasion.Kit.FirstOrDefault(k => k.Code.Length > 0 && k.Type == "blender" && s.Kit.Contains(k.Code))?.Code;
            if (loud is not null && !s.Silence)
            {
                yield return new("not-silent", [], 1, "segments", $"{loud} runs in segment {where}, which does not keep silence.", where);
            }

            foreach (string unknown in s.Kit.Where(k => occasion.Kit.All(x => x.Code != k)))
            {
                yield return new("segment-kit-unknown", [], 1, "pieces", $"Segment {where} uses {unknown}, which is not in the kit of the occasion.", where);
            }

            LocalDateTime from = plan.SlotStart.PlusSeconds(s.StartSecond);
            LocalDateTime to = from.PlusSeconds(s.Seconds);
            foreach (string name in s.Who.Keys)
            {
                Person? person = occasion.People.FirstOrDefault(p => p.Name == name);
                double away = person is null ? 0 : Overlap.Between(from, to) - person.Hours.Sum(h => Overlap.Minutes(from, to, h.Start, h.End));
                if (person is null)
                {
                    yield return new("segment-person-unknown", [], 1, "people", $"{name} of segment {where} is not among the hands of the occasion.", where);
                }
                else if (away > 1e-6)
                {
                    yield return new("segment-person-away", [], 60 * away, "s", $"{name} is not there for all of segment {where}.", where);
                }
            }
        }

        foreach (IGrouping<int, RunSegment> rank in plan.RunSheet.Where(s => s.DropRank > 0).GroupBy(s => s.DropRank).Where(g => g.Count() > 1))
        {
            yield return new("drop-rank-twice", [], rank.Count() - 1, "segments", string.Create(CultureInfo.InvariantCulture, $"{rank.Count()} segments would be dropped in place {rank.Key}."), string.Join(", ", rank.Select(s => s.Number)));
        }

        if (!plan.RunSheet.IsEmpty && plan.SlotLength.TotalSeconds >= GatesFromSeconds && plan.RunSheet.All(s => !s.Gate))
        {
            yield return new("no-gate", [], 1, "gates", "No segment of the slot is a gate for the time-keeper.", "run sheet");
        }
    }
}
