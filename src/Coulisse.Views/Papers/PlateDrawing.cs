using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coulisse.Cards;
using Coulisse.Cards.Occasions;
using Coulisse.Kitchen.Plating;
using Coulisse.Matter.Shapes;

namespace Coulisse.Views.Papers;

/// <summary>The plate with its clock face, to scale, when the card says how wide it is: parts with a known shape are drawn as they lie, the others are marked where their step puts them; a number is the step.</summary>
public static partial class PlateDrawing
{
    /// <summary>Flat of the plate, mm: as the kit says ("plate 160 mm, flat 120 mm"), else three quarters of the plate (assumed); null when the card states no plate width.</summary>
    public static double? Flat(Dish dish, Component? assembly, IEnumerable<SheetKit> kit)
        => kit.Where(k => k.Type == "plate" && k.Millimetres.Length > 1).Select(k => (double?)k.Millimetres.Min()).FirstOrDefault() ?? (Across(dish, assembly) is { } across ? across * 0.75 : null);

    /// <summary>The drawing; null when the card states no plate width.</summary>
    /// <param name="dish">The card.</param>
    /// <param name="assembly">Its plating.</param>
    /// <param name="reading">Parts with shape and place; null draws none.</param>
    public static Drawing? Of(Dish dish, Component? assembly, PlateReading? reading)
    {
        if (Across(dish, assembly) is not { } across)
        {
            return null;
        }

        double r = across / 2;
        double flat = reading?.Guide.FlatMillimetres ?? across * 0.75;
        List<Mark> marks = [new CircleMark(r, r, r, Ink.Outline), new CircleMark(r, r, flat / 2, Ink.Guide)];
        for (int h = 1; h <= 12; h++)
        {
            (double x, double y) = At(r, r * 0.93, h);
            marks.Add(new TextMark(x, y + 1.3, h.ToString(CultureInfo.InvariantCulture), 3.6, Ink.Guide));
        }

        HashSet<int> drawn = [.. reading?.Parts.Where(p => p.Placed is not null).Select(p => p.Step) ?? []];
        if (reading is { Guide.Parts.IsEmpty: false })
        {
            marks.AddRange(reading.Guide.Draw(across, [.. reading.Guide.Parts.Select(g => reading.Parts.First(p => p.Placed == g).Step.ToString(CultureInfo.InvariantCulture))]).Marks.Skip(2));
        }

        int n = 0;
        foreach (Step step in assembly?.Steps ?? [])
        {
            n++;
            if (drawn.Contains(n))
            {
                continue;
            }

            ImmutableArray<double> hours = PlateClock.Hours(step.Text);
            double out_ = Distance().Match(step.Text) is { Success: true } d && double.TryParse(d.Groups["mm"].Value, CultureInfo.InvariantCulture, out double mm) && mm < r ? mm : r * 0.5;
            if (Stroke().IsMatch(step.Text) && hours.Length == 2)
            {
                double turn = ((hours[1] - hours[0]) % 12 + 12) % 12;
                marks.Add(new PolygonMark([.. Enumerable.Range(0, 25).Select(i => At(r, out_, hours[0] + (turn * i / 24))).Select(p => new DrawnPoint(p.X, p.Y))], Closed: false, Ink.Outline));
            }

            foreach (double hour in hours)
            {
                (double x, double y) = At(r, out_, hour);
                marks.Add(new CircleMark(x, y, 3.4, Ink.Piece));
                marks.Add(new TextMark(x, y + 1.3, n.ToString(CultureInfo.InvariantCulture), 3.6, Ink.Piece));
            }
        }

        return new Drawing(string.Create(CultureInfo.InvariantCulture, $"Plate {across:0.#} mm across, flat {flat:0.#} mm, clock face; a number is the step that puts something there{(drawn.Count > 0 ? "; parts with a known shape are to scale" : "")}"), across, across, [.. marks]);
    }

    private static double? Across(Dish dish, Component? assembly)
    {
        string text = string.Join('\n', dish.Yields.Select(y => y.Text).Concat(dish.Notes.Select(n => n.Text)).Concat(dish.Unread.Select(n => n.Text)).Concat(assembly?.Notes.Select(n => n.Text) ?? []).Append(assembly?.Name ?? ""));
        Match wide = PlateWidth().Match(text);
        return wide.Success && double.TryParse(wide.Groups["mm"].Value, CultureInfo.InvariantCulture, out double across) && across is >= 50 and <= 600 ? across : null;
    }

    private static (double X, double Y) At(double centre, double distance, double hour)
    {
        double angle = hour / 12 * 2 * Math.PI;
        return (centre + (distance * Math.Sin(angle)), centre - (distance * Math.Cos(angle)));
    }

    [GeneratedRegex(@"(?<mm>\d{2,3}(\.\d+)?) mm plates?", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex PlateWidth();

    [GeneratedRegex(@"\b(stroke|swipe|smear|line)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Stroke();

    [GeneratedRegex(@"(?<mm>\d{1,3}) mm from the (middle|centre)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Distance();
}
