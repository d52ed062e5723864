using System.Collections.Immutable;

namespace Coulisse.Views.Papers;

/// <summary>A copy that somebody has in hand.</summary>
/// <param name="Id">Sheet.</param>
/// <param name="Version">Version mark it bears.</param>
/// <param name="Printed">Hour it bears.</param>
/// <param name="Lines">What it says.</param>
public sealed record HungCopy(string Id, string Version, string Printed, ImmutableArray<string> Lines);

/// <summary>A note for each helper whose brief or list says something else than the copy in their hand: only what changed.</summary>
public static class ChangeNotePaper
{
    public const string Kind = "change-note";

    /// <summary>The notes; none for a helper whose sheets are as they were.</summary>
    /// <param name="bundle">The bundle as it is now.</param>
    /// <param name="hung">Copies in people's hands.</param>
    /// <param name="now">Sheets as they are now.</param>
    public static IEnumerable<Paper> Of(PaperBundle bundle, ImmutableArray<HungCopy> hung, ImmutableArray<Paper> now)
    {
        foreach (IGrouping<string, Paper> person in now.Where(p => p.Person.Length > 0).GroupBy(p => p.Person, StringComparer.Ordinal))
        {
            List<Block> blocks = [];
            foreach (Paper paper in person)
            {
                if (hung.FirstOrDefault(h => h.Id == paper.Id) is not { } copy || Changes(copy.Lines, PaperLines.Of(paper)) is not { Length: > 0 } changes)
                {
                    continue;
                }

                blocks.Add(new HeadingBlock(1, paper.Title));
                blocks.Add(new ParagraphBlock($"Your copy: version {copy.Version}, printed {copy.Printed}.", Small: true));
                blocks.Add(new ListBlock([.. changes.Select(c => new ListEntry(c.New ? "NEW" : "OUT", c.Text))]));
            }

            if (blocks.Count > 0)
            {
                blocks.Insert(0, new ParagraphBlock("Only what changed. OUT no longer holds: strike it. NEW holds from now on. All else stands as on your copy."));
                yield return bundle.Sheet(Kind, $"Changed for {person.Key}", [.. blocks]) with { Id = $"{Kind}-{Slug.Of(person.Key)}", TextSize = 14, Person = person.Key };
            }
        }
    }

    /// <summary>Lines gone and lines come, in the order of the sheet: a longest common row of lines stays.</summary>
    internal static ImmutableArray<(bool New, string Text)> Changes(ImmutableArray<string> before, ImmutableArray<string> after)
    {
        int[,] common = new int[before.Length + 1, after.Length + 1];
        for (int i = before.Length - 1; i >= 0; i--)
        {
            for (int j = after.Length - 1; j >= 0; j--)
            {
                common[i, j] = before[i] == after[j] ? common[i + 1, j + 1] + 1 : Math.Max(common[i + 1, j], common[i, j + 1]);
            }
        }

        ImmutableArray<(bool, string)>.Builder changes = ImmutableArray.CreateBuilder<(bool, string)>();
        for ((int i, int j) = (0, 0); i < before.Length || j < after.Length;)
        {
            if (i < before.Length && j < after.Length && before[i] == after[j])
            {
                (i, j) = (i + 1, j + 1);
            }
            else if (i < before.Length && (j == after.Length || common[i + 1, j] >= common[i, j + 1]))
            {
                changes.Add((false, before[i++]));
            }
            else
            {
                changes.Add((true, after[j++]));
            }
        }

        return changes.ToImmutable();
    }
}
