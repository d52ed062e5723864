using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Matter.Foods;

namespace Coulisse.Kitchen.Plating;

/// <summary>A part of the plate as the card tells it: where, with what, in which step, before or after the chill.</summary>
/// <param name="Part">Part of the plate.</param>
/// <param name="Step">Step of the assembly that puts it there, from 1; 0 when none names it.</param>
/// <param name="Hours">Clock positions named; empty for none.</param>
/// <param name="Tool">Tool; empty when nothing tells it.</param>
/// <param name="AfterChill">True when a chill comes before its step.</param>
/// <param name="Placed">Form and place, when its shape is known; null otherwise.</param>
public sealed record ReadPart(PlatePart Part, int Step, ImmutableArray<double> Hours, string Tool, bool AfterChill, PlatedPart? Placed);

/// <summary>The plating guide read from a card: shapes from the parts, places from the steps.</summary>
/// <param name="Parts">Parts as the card lists them.</param>
/// <param name="Guide">Those with a known shape and place, for the drawing and its check.</param>
/// <param name="Assumed">What was assumed, in words.</param>
public sealed partial record PlateReading(ImmutableArray<ReadPart> Parts, PlateGuide Guide, ImmutableArray<string> Assumed)
{
    /// <summary>Angle between shingled pieces when the card gives none, degrees. Assumed.</summary>
    private const double FanDegrees = 12;

    /// <summary>Density of a gel, cream or purée, g/mL. Assumed.</summary>
    private const double Density = 1.05;

    /// <summary>Reads a card with one plate and a plating component; null when it has none, or no plate width is known.</summary>
    /// <param name="dish">The card.</param>
    /// <param name="flatMillimetres">Diameter of the flat of the plate.</param>
    /// <remarks>Where the card gives no distance from the middle, a part is laid as far out as leaves 2 mm to the edge of the flat, less when parts would touch: assumed, and said so.</remarks>
    public static PlateReading? Of(Dish dish, double flatMillimetres)
    {
        ArgumentNullException.ThrowIfNull(dish);
        if (dish.Plate.IsEmpty || dish.Components.FirstOrDefault(c => c.IsAssembly) is not { Steps.IsEmpty: false } assembly || flatMillimetres is not (> 20 and < 600))
        {
            return null;
        }

        PlateReading? nearest = null;
        foreach (double margin in (ReadOnlySpan<double>)[2, 1.5, 1, 0.5])
        {
            PlateReading read = At(dish, assembly, flatMillimetres, margin);
            if (read.Guide.Overlaps.IsEmpty)
            {
                return read;
            }

            nearest ??= read;
        }

        return nearest;
    }

    private static PlateReading At(Dish dish, Component assembly, double flat, double margin)
    {
        int chill = First(assembly, t => t.Contains("back in the fridge", StringComparison.OrdinalIgnoreCase) || t.Contains("chill", StringComparison.OrdinalIgnoreCase)) is > 0 and var at ? at - 1 : assembly.Steps.Length;
        SortedSet<string> assumed = new(StringComparer.Ordinal);
        ImmutableArray<ReadPart> parts = [.. dish.Plate.Select(p =>
        {
            int step = StepOf(p, assembly);
            string text = step > 0 ? Clause(assembly.Steps[step - 1].Text, p) : "";
            Component? from = dish.Components.FirstOrDefault(c => c.Name.Equals(p.Component, StringComparison.OrdinalIgnoreCase));
            ImmutableArray<double> hours = PlateClock.Hours(text);
            string tool = Tool(p, from, text);
            return new ReadPart(p, step, hours, tool, step > chill + 1, Place(p, from, text, hours, tool, flat, margin, step <= chill + 1, assumed));
        })];
        return new PlateReading(parts, new PlateGuide(flat, [.. parts.OrderBy(p => p.Step).Select(p => p.Placed).OfType<PlatedPart>()]), [.. assumed]);
    }

    private static PlatedPart? Place(PlatePart part, Component? from, string step, ImmutableArray<double> hours, string tool, double flat, double margin, bool before, SortedSet<string> assumed)
    {
        if (hours.IsEmpty || part.Grams is not > 0 and not null || step.Contains("standing", StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }

        double r = flat / 2;
        double? said = Distance().Match(step) is { Success: true } d ? Number(d, "mm") : null;
        double Out(double usual)
        {
            if (said is null)
            {
                assumed.Add(FormattableString.Invariant($"parts without a distance lie {margin:0.#} mm inside the edge of the flat"));
            }

            return Math.Max(0, said ?? usual);
        }

        double grams = part.Grams ?? 0;
        double allowed = Math.Max(0.5, Math.Round(grams * 0.1, 1));
        if (Dots().Match(step) is { Success: true } dots)
        {
            assumed.Add(FormattableString.Invariant($"dots are half-balls of {Density:0.00} g/mL"));
            PlateForm.Dot dot = new(Number(dots, "g"), Density);
            return new(Name(part), grams, allowed, tool, dot, Out(r - (dot.Across / 2) - margin), hours) { BeforeChill = before };
        }

        string shape = from is null ? "" : string.Join(' ', from.Makes.Select(m => m.Text).Concat(from.Ingredients.Select(i => i.Text)).Concat(from.Steps.Select(s => s.Text)));
        if (Folded().IsMatch(shape) && Discs().Match(shape) is { Success: true } disc)
        {
            double radius = Number(disc, "mm") / 2;
            int n = (int)Math.Round(part.Pieces ?? 1);
            assumed.Add(n > 1 ? FormattableString.Invariant($"pieces of a fan stand {FanDegrees:0}° apart") : "");
            return new(Name(part), grams, allowed, tool, new PlateForm.HalfDisc(radius), Out(r - radius - margin), n > 1 && hours.Length == 1 ? PlatedPart.Fan(hours[0], n, FanDegrees) : hours) { BeforeChill = before, Shingled = step.Contains("shingled", StringComparison.OrdinalIgnoreCase) || step.Contains("fan", StringComparison.OrdinalIgnoreCase) };
        }

        if (from is not null && from.Makes.Select(m => Sides().Match(m.Text)).FirstOrDefault(m => m.Success) is { } sides)
        {
            (double a, double b) = (Math.Max(Number(sides, "a"), Number(sides, "b")), Math.Min(Number(sides, "a"), Number(sides, "b")));
            double corner = Math.Sqrt(Math.Max(0, ((r - margin) * (r - margin)) - (a * a / 4))) - b;
            return new(Name(part), grams, allowed, tool, new PlateForm.Bar(a, b), Out(corner), [PlateClock.Middle(hours)]) { BeforeChill = before };
        }

        return null;
    }

    /// <summary>A part's name on the drawing.</summary>
    private static string Name(PlatePart part) => part.Component is { Length: > 0 } c ? c : part.Text;

    // The step that names the part by its last word ("gel" of "7 g apple gel"), the first one that does.
    private static int StepOf(PlatePart part, Component assembly)
    {
        string word = Word(part);
        return First(assembly, t => Says(t, word));
    }

    // Number of the first step that says something, from 1; 0 for none.
    private static int First(Component assembly, Func<string, bool> says) => Array.FindIndex([.. assembly.Steps], s => says(s.Text)) + 1;

    // "crumb between bar and fan, then two crisps standing behind …": the part of the step that speaks of it.
    private static string Clause(string step, PlatePart part) => step.Split(", then ", StringSplitOptions.TrimEntries).FirstOrDefault(c => Says(c, Word(part))) ?? step;

    private static string Word(PlatePart part)
    {
        string bare = part.Text.Split('(')[0].Trim();
        return FoodName.Singular(FoodName.Fold(bare.Split(' ', StringSplitOptions.RemoveEmptyEntries).LastOrDefault() ?? ""));
    }

    private static bool Says(string text, string word) => word.Length > 2 && FoodName.Singular(FoodName.Fold(text)).Contains(word, StringComparison.Ordinal);

    private static string Tool(PlatePart part, Component? from, string step)
    {
        string own = string.Join(' ', (from?.Steps ?? []).Select(s => s.Text));
        return ((string, string)[])[("bottle", "squeeze bottle"), ("piping bag", "piping bag"), ("spoon", "spoon"), ("palette knife", "palette knife"), ("tweezer", "tweezers"), ("ladle", "ladle")] is var words
            && words.FirstOrDefault(w => step.Contains(w.Item1, StringComparison.OrdinalIgnoreCase)).Item2 is { } said ? said
            : part.Pieces is null && own.Contains("bottle", StringComparison.OrdinalIgnoreCase) ? "squeeze bottle" : "";
    }

    private static double Number(Match m, string group) => double.Parse(m.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<mm>\d{1,3}) mm from the (middle|centre)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Distance();

    [GeneratedRegex(@"\bfold(ed)? (it |them |each )?(over|in two|in half)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Folded();

    [GeneratedRegex(@"dots? of (?<g>\d+(\.\d+)?) g", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Dots();

    [GeneratedRegex(@"discs? of (?<mm>\d+(\.\d+)?) mm", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Discs();

    [GeneratedRegex(@"of (?<a>\d+(\.\d+)?) [×x] (?<b>\d+(\.\d+)?)( [×x] \d+(\.\d+)?)? mm", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Sides();
}
