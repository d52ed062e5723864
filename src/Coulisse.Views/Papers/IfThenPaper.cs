using System.Collections.Immutable;
using Coulisse.Kitchen.Planning;

namespace Coulisse.Views.Papers;

/// <summary>What to do if: each failure of kit, each missing person, each short delay with its solved answer, on one page.</summary>
public static class IfThenPaper
{
    public const string Kind = "if-then";

    public static Paper? Of(PaperBundle bundle)
    {
        if (bundle.IfThens.IsEmpty)
        {
            return null;
        }

        ImmutableArray<PaperRow>.Builder rows = ImmutableArray.CreateBuilder<PaperRow>();
        foreach (IGrouping<string, IfThen> kind in bundle.IfThens.GroupBy(i => i.Case, StringComparer.Ordinal))
        {
            rows.Add(PaperRow.Group(kind.Key switch { "kit" => "If kit fails", "person" => "If somebody is missing", "delay" => "If it runs late", _ => kind.Key }));
            rows.AddRange(kind.Select(i => new PaperRow([new PaperCell(i.WhatFails, true), i.Answer, string.Join("\n", i.Changes), i.Holds ? "all holds" : "something is given up"])));
        }

        return bundle.Sheet(Kind, "If, then", [.. bundle.Warnings(all: false), new TableBlock([new("If"), new("Then"), new("Who does what otherwise"), new("Outcome")], rows.ToImmutable())]) with { Landscape = true, TextSize = bundle.IfThens.Length > 14 ? 7.5 : 9 };
    }
}
