using System.Collections.Immutable;

namespace Coulisse.Cards.Reading;

/// <summary>What can be said only when the whole card was seen: links, sizes side by side, steps of a common method, remarks.</summary>
internal static class Finishing
{
    private const int MostUses = 400_000;

    /// <summary>The finished dish.</summary>
    public static Dish Of(Dish dish, List<PlatePart> plate, Footnotes notes, List<Doubt> doubts)
    {
        dish = notes.IsEmpty ? dish : dish with { Components = [.. dish.Components.Select(c => Noted(c, notes))] };
        dish = CountedAmong.Settle(SideBySide.Fold(dish, doubts), doubts);
        dish = RatedLists.Of(PerHead.Of(dish, doubts));
        dish = StepPlacing.Place(SameParts.Joined(dish));
        List<Remark> remarks = [.. dish.Remarks];
        dish = Scales.Of(dish, doubts, remarks);
        ComponentIndex index = new(dish.Components);
        ImmutableArray<Component>.Builder components = ImmutableArray.CreateBuilder<Component>(dish.Components.Length);
        foreach (Component c in dish.Components)
        {
            Component linked = Linking.Components(BakersRow.Of(c, dish.Language), index);
            if ((long)c.Ingredients.Length * c.Steps.Length > MostUses)
            {
                remarks.Add(new Remark(c.Span.Line, "too long to link", $"“{c.Name}” has {c.Ingredients.Length} lines and {c.Steps.Length} steps: what each step takes was not looked for."));
            }
            else
            {
                linked = Linking.Uses(linked);
            }

            components.Add(linked);
        }

        dish = KeptParts.Of(dish with { Components = components.MoveToImmutable() });
        remarks.AddRange(Checks.CrossChecks.Of(dish));
        BareGrams.Settle(dish, doubts);
        remarks.AddRange(PrintedMarks.Of(dish));
        doubts.AddRange(OvenScale.Of(dish));
        doubts.AddRange(StepMisprints.Of(dish));
        doubts.AddRange(BareWaits.Of(dish));
        doubts.AddRange(Rates.Of(dish));
        doubts.AddRange(KiloBases.Of(dish));
        return dish with
        {
            Measures = Reading.Measures.Of(dish), Plate = Linking.Plate(plate, dish.Components), Remarks = [.. remarks.OrderBy(r => r.Line)], Doubts = [.. doubts.OrderByDescending(d => d.Weight).ThenBy(d => d.Line)],
        };
    }

    private static Component Noted(Component c, Footnotes notes) => c with
    {
        Ingredients = [.. c.Ingredients.Select(l => notes.For(l.Span.Line) is { } other && l.Foods.Length > 0 ? l with { Foods = l.Foods.SetItem(0, l.Foods[0] with { Alternative = other }) } : l)],
        // A footnote of a line that names no food stays a sentence.
        Notes = [.. c.Notes, .. c.Ingredients.Where(l => l.Foods.Length == 0 && notes.For(l.Span.Line) is not null).Select(l => new Note($"or {notes.For(l.Span.Line)}", l.Span))],
    };
}
