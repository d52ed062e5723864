using System.Globalization;
using Coulisse.Kitchen.Occasions;
using Coulisse.Kitchen.Planning.Work;

namespace Coulisse.Kitchen.Planning.Tasks;

/// <summary>What guests take away is packed by somebody: no card has a step for it, since a box holds several dishes.</summary>
internal static class BoxTasks
{
    /// <summary>Adds the packing of each kind of box, after all that goes into it.</summary>
    public static void Add(Occasion occasion, List<PrepTask> tasks, List<PrepLink> links, int cardTasks)
    {
        foreach (IGrouping<string, OccasionDish> boxes in occasion.Dishes.Where(d => d.Unit == "pieces" && d.For.Contains("box", StringComparison.OrdinalIgnoreCase)).GroupBy(d => d.For))
        {
            string[] names = [.. boxes.Select(d => d.Name)];
            int count = boxes.Max(d => d.Count);
            int[] others = [.. occasion.Diets.Where(d => d.ByDish.Any(b => b.Key.StartsWith("box", StringComparison.OrdinalIgnoreCase) && !b.Value.Trim().StartsWith("as the others", StringComparison.OrdinalIgnoreCase))).SelectMany(d => d.Seats).Distinct().Order()];
            Minutes each = WorkStandards.Find("box_portions")!.For(count).Hands;

            // Made late the day before it is still packed on the day: closed boxes in the cold sweat.
            tasks.Add(new PrepTask
            {
                Text = string.Create(CultureInfo.InvariantCulture, $"pack {count} boxes: {string.Join(" + ", names)}{(others.Length > 0 ? "; another box: seats " + string.Join(", ", others) : "")}"),
                Kind = TaskKind.House,
                Minutes = Math.Max(2, (int)Math.Ceiling(each.Best)),
                MinutesWhy = "assumed: common practice, no source",
                People = 1,
                Named = [.. occasion.People.Where(p => p.Skills.Contains("boxes", StringComparer.OrdinalIgnoreCase)).Select(p => p.Name)],
                NotBefore = occasion.SlotStart.Date.AtMidnight(),
                DoneBy = occasion.SlotStart.PlusMinutes(-TaskBuilder.ReadyBefore),
            });
            foreach (int made in Enumerable.Range(0, cardTasks).Where(i => tasks[i].Kind != TaskKind.Moment && names.Contains(tasks[i].Dish)))
            {
                links.Add(new PrepLink(made, false, tasks.Count - 1, false, 0, null, false, "packed when it is cut"));
            }
        }
    }
}
