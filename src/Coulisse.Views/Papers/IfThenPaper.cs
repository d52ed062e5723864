using System.Collections.Immutable;
using Coulisse.Kitchen.Planning;

namespace Coulisse.Views.Papers;

/// <summary>What to do if: each failure of kit, each missing person, each short delay with its solved answer. One page for the wall, cases of one answer together; behind it who then does what.</summary>
public static class IfThenPaper
{
    public const string Kind = "if-then";

    public static IEnumerable<Paper> Of(PaperBundle bundle)
    {
        if (bundle.IfThens.IsEmpty)
        {
            yield break;
        }

        ImmutableArray<PaperRow>.Builder rows = ImmutableArray.CreateBuilder<PaperRow>();
        foreach (IGrouping<string, IfThen> kind in bundle.IfThens.GroupBy(i => i.Case, StringComparer.Ordinal))
        {
            rows.Add(PaperRow.Group(Head(kind.Key)));
            rows.AddRange(kind.GroupBy(i => (i.Answer, i.Holds)).Select(g => new PaperRow([new PaperCell(Together([.. g]), true), g.Key.Answer, g.Key.Holds ? "all holds" : "something is given up"])));
        }

        yield return bundle.Sheet(Kind, "If, then", [.. bundle.Warnings(all: false), new TableBlock([new("If"), new("Then"), new("Outcome")], rows.ToImmutable())]) with { Landscape = true, TextSize = rows.Count > 26 ? 7 : rows.Count > 16 ? 8 : 10 };
        IfThen[] changed = [.. bundle.IfThens.Where(i => !i.Changes.IsEmpty)];
        if (changed.Length > 0)
        {
            List<Block> blocks = [new ParagraphBlock("Only the cases in which somebody’s work changes. Look the case up when it happens; then print new lists.")];
            foreach (IfThen i in changed)
            {
                blocks.Add(new HeadingBlock(2, $"{i.WhatFails}: {i.Answer}"));
                blocks.Add(new ListBlock([.. i.Changes.Select(c => new ListEntry("–", c))]));
            }

            yield return bundle.Sheet(Kind, "If, then: who does what otherwise", [.. blocks]) with { Id = Kind + "-who", TextSize = 9 };
        }
    }

    /// <summary>Cases of one answer in one cell: "segment 1, 2, 3 begins 1:00 late".</summary>
    private static string Together(IfThen[] cases)
    {
        if (cases.Length < 2)
        {
            return cases[0].WhatFails;
        }

        string[] subjects = [.. cases.Select(c => c.Subject)];
        string[][] parts = [.. cases.Select(c => c.Subject.Length > 0 && c.WhatFails.IndexOf(c.Subject, StringComparison.Ordinal) is >= 0 and var at ? new[] { c.WhatFails[..at], c.WhatFails[(at + c.Subject.Length)..] } : [])];
        return parts.All(p => p.Length == 2 && p[0] == parts[0][0] && p[1] == parts[0][1])
            ? parts[0][0] + string.Join(", ", subjects) + parts[0][1]
            : string.Join("; ", cases.Select(c => c.WhatFails));
    }

    private static string Head(string kind) => kind switch { "kit" => "If kit fails", "person" => "If somebody is missing", "delay" => "If it runs late", _ => kind };
}
